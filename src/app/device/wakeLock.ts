/**
 * Keeps the screen from going dark while somebody rides: hands are on the levers, not on the glass. A browser that
 * cannot or will not is left alone; the ride is the same without.
 */

/** The screen's wakefulness. */
interface Awake {
  /** Whether somebody rides now. */
  want(riding: boolean): void;
}

/** Follows what is wanted; browsers let go by themselves when the page is hidden, so it is asked for again. */
export function keepAwake(): Awake {
  let wanted = false;
  let asking = false;
  let lock: WakeLockSentinel | null = null;

  const ask = async (): Promise<void> => {
    if (!wanted || asking || (lock !== null && !lock.released) || document.hidden) return;
    asking = true;
    try {
      lock = await navigator.wakeLock.request('screen');
    } catch {
      lock = null;
    } finally {
      asking = false;
    }
    // The ride may have ended while the browser was thinking.
    if (!wanted) letGo();
  };
  const letGo = (): void => {
    lock?.release().catch(() => undefined);
    lock = null;
  };
  document.addEventListener('visibilitychange', () => void ask());

  return {
    want(riding) {
      if (riding === wanted) return;
      wanted = riding;
      if (riding) void ask();
      else letGo();
    },
  };
}
