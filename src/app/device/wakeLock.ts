/** Follows what is wanted; browsers let go by themselves when the page is hidden, so it is asked for again. */
export function keepAwake() {
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
    want(riding: boolean): void {
      if (riding === wanted) return;
      wanted = riding;
      if (riding) void ask();
      else letGo();
    },
  };
}
