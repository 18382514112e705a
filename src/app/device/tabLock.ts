/**
 * Being the only tab of this browser that does something. Who it is stands as a token beside what is kept, and every
 * change looks there (`storage/sessions.ts`); here a tab gets its token and hears early that it has lost, so that it can
 * say so before somebody does something in vain. Works the same where a browser knows no locks.
 */

import type { SessionOwner } from '../../storage/sessions.ts';

/** What a tab has as long as it is the one. */
interface Ownership extends SessionOwner {
  /** Comes when another tab has taken over. */
  readonly gone: Promise<void>;
}

/** A part in the taking over of `name`; nobody knows of it before `tell`. */
export function takePart(name: string, token: string): Ownership {
  let owned = true;
  const { promise: gone, resolve } = withResolver();
  let look = (): void => undefined;
  const hear = ({ key, newValue }: StorageEvent): void => {
    if (key === name && newValue !== null) look();
  };
  const lose = (): void => {
    owned = false;
    window.removeEventListener('storage', hear);
    resolve();
  };
  window.addEventListener('storage', hear);
  return {
    token,
    gone,
    lose,
    onTold(listener) {
      look = listener;
    },
    isOwned: () => owned,
    tell() {
      try {
        localStorage.setItem(name, token);
        localStorage.removeItem(name);
      } catch {
        // The others see it at their next change.
      }
    },
  };
}

function withResolver(): { readonly promise: Promise<void>; readonly resolve: () => void } {
  let resolve = (): void => undefined;
  const promise = new Promise<void>((done) => {
    resolve = done;
  });
  return { promise, resolve };
}
