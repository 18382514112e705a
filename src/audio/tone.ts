/**
 * One steady tone whose pitch can be moved, for riding by ear. Made by an oscillator of the audio context that the
 * sound library already holds; changes glide, so that nothing clicks.
 */
import { Howler } from 'howler';

/** Seconds in which pitch and loudness follow. */
const GLIDE_S = 0.04;
/** Soft: the clicks of the chain must be heard through it. */
const LOUDNESS = 0.12;

/** Makes a tone in the context of the other sounds; silent where the browser has none. */
export function createTone(context = Howler.ctx as AudioContext | null) {
  if (context === null) return { set: () => undefined, stop: () => undefined };
  const oscillator = context.createOscillator();
  const gain = context.createGain();
  gain.gain.value = 0;
  oscillator.connect(gain).connect(context.destination);
  oscillator.start();
  let now = '';
  return {
    /** Sounds at a frequency (Hz), as loud as its channel (0 to 1); 0 Hz is silence. */
    set(hz: number, volume: number): void {
      const next = `${hz} ${volume}`;
      if (next === now) return;
      now = next;
      const at = context.currentTime;
      gain.gain.setTargetAtTime(hz > 0 ? LOUDNESS * volume : 0, at, GLIDE_S);
      if (hz > 0) oscillator.frequency.setTargetAtTime(hz, at, GLIDE_S);
    },
    stop(): void {
      oscillator.stop();
      gain.disconnect();
    },
  };
}
