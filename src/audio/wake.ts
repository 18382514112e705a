/** Wakes the audio context, which browsers keep asleep until somebody has touched the page. */
import { Howler } from 'howler';
import { isAwake } from './voice.ts';

const GESTURES = ['pointerup', 'touchend', 'keydown'] as const;

/** Wakes it on a gesture, whenever the browser has put it to sleep. Returns how to stop doing so. */
export function wakeOnGesture(): () => void {
  const wake = (): void => {
    if (isAwake()) return;
    try {
      // What a browser says against it is no trouble of the ride; the next gesture asks again.
      (Howler.ctx as AudioContext | null)?.resume().catch(() => undefined);
    } catch {
      return;
    }
  };
  // The gesture that began the ride may still count.
  wake();
  for (const gesture of GESTURES) document.addEventListener(gesture, wake, true);
  return () => {
    for (const gesture of GESTURES) document.removeEventListener(gesture, wake, true);
  };
}
