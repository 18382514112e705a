/** Being the only tab of this browser that does something. What it is decides whoever asks. */

/** What a tab has as long as it is the one. */
export interface Ownership {
  readonly isOwned: () => boolean;
  /** Comes when another tab has taken over. */
  readonly gone: Promise<void>;
}

/**
 * Takes `name` from whichever tab has it and holds it until this one is closed or another takes it. A browser that
 * knows no locks, or forbids them, lets everybody through.
 */
export function takeOver(name: string): Promise<Ownership> {
  let owned = true;
  let lose = (): void => undefined;
  const gone = new Promise<void>((resolve) => {
    lose = resolve;
  });
  const ownership: Ownership = { isOwned: () => owned, gone };
  const locks = navigator.locks as LockManager | undefined;
  if (locks === undefined) return Promise.resolve(ownership);
  return new Promise((resolve) => {
    let held = false;
    const hold = (): Promise<never> => {
      held = true;
      resolve(ownership);
      return new Promise<never>(() => undefined);
    };
    locks.request(name, { steal: true }, hold).catch(() => {
      if (!held) return resolve(ownership);
      owned = false;
      lose();
    });
  });
}
