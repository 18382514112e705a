/**
 * Puts pieces in their places within one transaction, over the database and over memory alike.
 */
import { hashJson } from '../core/math/hash.ts';
import type { StoreAccess } from './access.ts';
import { decideMerge } from './mergePolicy.ts';
import type { StoredPiece } from './types.ts';

/** What became of a piece. */
export type PlaceOutcome =
  | 'added'
  | 'already'
  | 'newer-version'
  | 'differs'
  /** Everything was deleted between asking and doing; it was not done. */
  | 'deleted';

/** Puts pieces in their places, in order. */
export async function placeAll(
  access: StoreAccess,
  pieces: readonly StoredPiece[],
): Promise<readonly PlaceOutcome[]> {
  const outcomes: PlaceOutcome[] = [];
  for (const piece of pieces) outcomes.push(await place(access, piece));
  return outcomes;
}

/** Puts one piece in its place, or says why it does not belong there. */
async function place(access: StoreAccess, piece: StoredPiece): Promise<PlaceOutcome> {
  // A result alone adds nothing to a whole ride.
  if (piece.store === 'results' && (await access.get('rides', piece.key)) !== undefined) return 'already';
  const existing = await access.get(piece.store, piece.key);
  const decision = decideMerge(piece, existing);
  if (decision.kind === 'refused') return decision.code;
  if (decision.kind === 'already') return 'already';
  if (decision.aside) await access.setAside(`${piece.store} ${piece.key} ${hashJson(existing)}`, existing);
  await access.put(piece.store, piece.key, decision.value);
  return 'added';
}
