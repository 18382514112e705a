/**
 * Notices that nobody asks for pictures any more: a ride whose picture has died would stand still without a word. What
 * is done about it is for others to say.
 */

/** It is looked for so often (ms). */
const LOOK_EVERY_MS = 1000;
const MOST_LOOKS_WITHOUT_PICTURE = 4;

/** Begins to watch; `isWanted` says whether pictures should be asked for now. */
export function watchPicture(isWanted: () => boolean, onGone: () => void) {
  let looks = 0;
  // A browser that is busy lets looks wait as well, so they are counted and not the time.
  const timer = window.setInterval(() => {
    looks = isWanted() ? looks + 1 : 0;
    if (looks === MOST_LOOKS_WITHOUT_PICTURE) onGone();
  }, LOOK_EVERY_MS);
  return {
    /** A picture was asked for. */
    seen(): void {
      looks = 0;
    },
    stop: (): void => window.clearInterval(timer),
  };
}
