/**
 * What happens when something is to be kept under a key that may be taken. Rides never change, so the first one
 * stays; of things that change the later one stays. The order in which devices meet makes no difference.
 */
import { canonicalJson } from '../core/math/hash.ts';
import { READERS } from './shapes.ts';
import type { StoreName } from './types.ts';

/** One thing on its way into a store. It has passed the reader of the store. */
export interface Piece {
  readonly store: StoreName;
  readonly key: string;
  readonly value: unknown;
  /** Made by this person just now, so it comes after what is there, whatever the clock says. */
  readonly mine: boolean;
}

/** What is to be done. */
export type Settlement =
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
export function settle(piece: Piece, existing: unknown): Settlement {
  if (existing === undefined) return { kind: 'put', value: piece.value, aside: false };
  const there = READERS[piece.store](existing);
  if (!there.ok)
    return there.code === 'newer-version'
      ? { kind: 'refused', code: 'newer-version' }
      : { kind: 'put', value: piece.value, aside: true };
  const same = canonicalJson(there.value) === canonicalJson(piece.value);
  if (piece.store === 'rides' || piece.store === 'results')
    return same ? { kind: 'already' } : { kind: 'refused', code: 'differs' };
  const old = there.value as Timed;
  const next = piece.value as Timed;
  if (piece.mine) return settleMine(old, next);
  return !same && isLater(next, old) ? { kind: 'put', value: next, aside: false } : { kind: 'already' };
}

function settleMine(old: Timed, next: Timed): Settlement {
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
