/** Ids: random, so that what many devices make can be put together without asking anybody. */

/** Sixteen random bytes as small letters and digits; a page that is not served securely has no `randomUUID`. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
