/**
 * Puts pieces in their places within one transaction, over the database and over memory alike.
 */
import { hashJson } from '../core/math/hash.ts';
import type { Desk } from './desk.ts';
import { settle } from './settle.ts';
import type { Piece } from './types.ts';

/** What became of a piece. */
export type Outcome =
  | 'added'
  | 'already'
  | 'newer-version'
  | 'differs'
  /** Everything was deleted between asking and doing; it was not done. */
  | 'deleted';

/** Puts pieces in their places, in order. */
export async function placeAll(desk: Desk, pieces: readonly Piece[]): Promise<readonly Outcome[]> {
  const outcomes: Outcome[] = [];
  for (const piece of pieces) outcomes.push(await place(desk, piece));
  return outcomes;
}

/** Puts one piece in its place, or says why it does not belong there. */
export async function place(desk: Desk, piece: Piece): Promise<Outcome> {
  // A result alone adds nothing to a whole ride.
  if (piece.store === 'results' && (await desk.get('rides', piece.key)) !== undefined) return 'already';
  const existing = await desk.get(piece.store, piece.key);
  const settlement = settle(piece, existing);
  if (settlement.kind === 'refused') return settlement.code;
  if (settlement.kind === 'already') return 'already';
  if (settlement.aside) await desk.setAside(`${piece.store} ${piece.key} ${hashJson(existing)}`, existing);
  await desk.put(piece.store, piece.key, settlement.value);
  return 'added';
}
