/** Which address of the game another device can open: never that of the computer it stands on under its own name. */

/** Names under which a computer calls itself. */
const LOOPBACK = /^(localhost|127(\.\d+){3}|\[::1\])$/;

/** Whether an address leads nowhere but to the computer it is opened on. */
export function isOnlyHere(address: string): boolean {
  return LOOPBACK.test(new URL(address).hostname);
}

/**
 * The address to hand out, without what stands behind `#`; null where there is none.
 * @param here address of this page
 * @param tablets what the server says that tablets can open, surest first
 */
export function siteForOthers(here: string, tablets: unknown): string | null {
  const own = here.replace(/#.*$/, '');
  if (!isOnlyHere(own)) return own;
  if (!Array.isArray(tablets)) return null;
  const [surest] = tablets as readonly unknown[];
  return typeof surest === 'string' && /^https?:\/\//.test(surest) && URL.canParse(surest) ? surest : null;
}
