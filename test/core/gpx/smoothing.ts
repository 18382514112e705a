/** The independent smoothing under one name, whichever way its package hands it out. */
import * as handedOut from 'ml-savitzky-golay';

type Smoothing = typeof handedOut.default;

function unwrap(value: unknown): Smoothing {
  if (typeof value === 'function') return value as Smoothing;
  return unwrap((value as { readonly default: unknown }).default);
}

export const SavitzkyGolay = unwrap(handedOut);
