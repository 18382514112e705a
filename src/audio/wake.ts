/** Wakes the audio context, which browsers keep asleep until somebody has touched the page. */
import { Howler } from 'howler';
import { isAwake } from './voice.ts';

const GESTURES = ['pointerup', 'touchend', 'keydown'] as const;

/** Contexts of which a refusal to wake is heard. */
const heard = new WeakSet<AudioContext>();

/** The sound library wakes its context as well, and nobody there hears when a browser refuses. */
function hearRefusals(context: AudioContext): void {
  if (heard.has(context)) return;
  heard.add(context);
  const resume = context.resume.bind(context);
  context.resume = async () => {
    try {
      await resume();
    } catch {
      // It stays asleep until the next gesture.
    }
  };
}

/** Wakes it on a gesture, whenever the browser has put it to sleep. Returns how to stop doing so. */
export function wakeOnGesture(): () => void {
  const wake = (): void => {
    if (isAwake()) return;
    try {
      const context = Howler.ctx as AudioContext | null;
      if (context === null) return;
      // What a browser says against it is no trouble of the ride; the next gesture asks again.
      hearRefusals(context);
      void context.resume();
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
