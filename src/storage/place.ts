/**
 * Puts pieces in their places within one transaction, over the database and over memory alike, and decides what happens
 * where a place is taken. Rides never change, so the first one stays, but marks may come to one that was kept without;
 * of things that change the later one stays. The order in which devices meet makes no difference.
 */
import { canonicalJson, hashJson } from '../core/math/hash.ts';
import type { StoreAccess } from './access.ts';
import { READERS, type StoredResult } from './shapes.ts';
import type { StoredPiece } from './types.ts';

export type PlaceOutcome =
  | 'added'
  | 'already'
  | 'newer-version'
  | 'differs'
  /** Everything was deleted between asking and doing; it was not done. */
  | 'deleted';

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

type MergeDecision =
  /** `aside`: what is there cannot be read; it is put aside and not thrown away. */
  | { readonly kind: 'put'; readonly value: unknown; readonly aside: boolean }
  | { readonly kind: 'already' }
  | { readonly kind: 'refused'; readonly code: 'newer-version' | 'differs' };

interface Timed {
  readonly savedAtMs: number;
  readonly version?: number;
  readonly schema: number;
}

/** Decides between what is there (`undefined` for nothing) and what comes. */
export function decideMerge(piece: StoredPiece, existing: unknown): MergeDecision {
  if (existing === undefined) return { kind: 'put', value: piece.value, aside: false };
  const there = READERS[piece.store](existing);
  if (!there.ok)
    return there.code === 'newer-version'
      ? { kind: 'refused', code: 'newer-version' }
      : { kind: 'put', value: piece.value, aside: true };
  const same = canonicalJson(there.value) === canonicalJson(piece.value);
  if (piece.store === 'rides' || piece.store === 'results')
    return same ? { kind: 'already' } : settleRide(there.value as StoredResult, piece.value as StoredResult);
  const old = there.value as Timed;
  const next = piece.value as Timed;
  if (piece.mine) return settleMine(old, next);
  return !same && isLater(next, old) ? { kind: 'put', value: next, aside: false } : { kind: 'already' };
}

/** The same ride with marks takes the place of the one without, whichever comes first. */
function settleRide(old: StoredResult, next: StoredResult): MergeDecision {
  const both = [old.standing, next.standing].toSorted().join();
  if (both !== 'marked,to-mark' || canonicalJson(unmarked(old)) !== canonicalJson(unmarked(next)))
    return { kind: 'refused', code: 'differs' };
  return next.standing === 'marked' ? { kind: 'put', value: next, aside: false } : { kind: 'already' };
}

const MARKED_LATER: readonly string[] = [
  'standing',
  'rulesVersion',
  'total',
  'marks',
  'passed',
] satisfies readonly (keyof StoredResult)[];

/** What marking leaves as it is. */
function unmarked(ride: StoredResult): object {
  return Object.fromEntries(Object.entries(ride).filter(([name]) => !MARKED_LATER.includes(name)));
}

function settleMine(old: Timed, next: Timed): MergeDecision {
  if ((old.version ?? old.schema) > (next.version ?? next.schema))
    return { kind: 'refused', code: 'newer-version' };
  const savedAtMs = Math.max(next.savedAtMs, old.savedAtMs + 1);
  return { kind: 'put', value: { ...next, savedAtMs }, aside: false };
}

/** A total order, so that two devices agree even about things saved in the same millisecond. */
function isLater(one: Timed, other: Timed): boolean {
  if (one.savedAtMs !== other.savedAtMs) return one.savedAtMs > other.savedAtMs;
  return canonicalJson(one) > canonicalJson(other);
}
