/**
 * Ids for rides: random, so that rides of many devices can be put together without asking anybody.
 */

/** A new id. On a page that is not served securely the browser has no `randomUUID`, but random numbers it has. */
export function newRideId(
  source: Pick<Crypto, 'getRandomValues'> & Partial<Pick<Crypto, 'randomUUID'>> = crypto,
): string {
  if (typeof source.randomUUID === 'function') return source.randomUUID();
  const bytes = source.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
