/**
 * Being the only tab of this browser that does something. Who it is stands as a token beside what is kept, and every
 * change looks there (`storage/sessions.ts`); here a tab gets its token and hears early that it has lost, so that it can
 * say so before somebody does something in vain. Works the same where a browser knows no locks.
 */

/** What a tab has as long as it is the one. */
interface Ownership {
  /** Of this tab alone. */
  readonly token: string;
  readonly isOwned: () => boolean;
  /** Comes when another tab has taken over. */
  readonly gone: Promise<void>;
  /** Tells the other tabs that this one has taken over. */
  readonly tell: () => void;
  /** Calls back when another tab says that it has taken over. It may be late, and this one have taken over since. */
  readonly onTold: (look: () => void) => void;
  /** It was seen that another tab has taken over. */
  readonly lose: () => void;
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
