/**
 * A quiet music that the legs play: one plucked note for each push of a pedal, so that its beat is the cadence, and a root
 * that rises with an easier gear and sinks with a harder one. Made by oscillators while riding; legs that rest let it ring
 * out. It tells nothing that cadence and gear do not show.
 */
import { Howler } from 'howler';
import type { RideFrame } from '../core/ride/types.ts';

/** The lowest root (Hz, D3), and five steps of the octave that always sound well together (semitones). */
const ROOT_HZ = 146.83;
const SCALE = [0, 2, 4, 7, 9] as const;
/** Steps of the scale, one for each push: two bars that answer each other. */
const TUNE = [0, 4, 2, 5, 3, 5, 2, 4, 0, 3, 2, 6, 5, 3, 4, 2] as const;
/** Soft: everything the machine says is heard through it. */
const LOUDNESS = 0.055;
const RING_S = 0.7;
/** More pushes than this between two frames are a jump of the ride and no music. */
const MOST_PUSHES = 2;
/** Gears of usual bikes differ by about this much (m), from the easiest one on. */
const EASIEST_M = 1.6;
const GEAR_STEP_M = 0.8;

/** The note of a push (Hz), from the gear it is pushed in. Pure. */
export function noteHz(push: number, developmentM: number): number {
  const gear = Math.max(0, Math.min(6, Math.round((developmentM - EASIEST_M) / GEAR_STEP_M)));
  const step = (TUNE[((push % TUNE.length) + TUNE.length) % TUNE.length] ?? 0) + 6 - gear;
  const semitones = 12 * Math.floor(step / SCALE.length) + (SCALE[step % SCALE.length] ?? 0);
  return ROOT_HZ * 2 ** (semitones / 12);
}

/** Makes it in the context of the other sounds; silent where the browser has none. */
export function createMusic(context = Howler.ctx as AudioContext | null) {
  if (context === null || context === undefined) return { frame: () => undefined, stop: () => undefined };
  const out = context.createGain();
  out.gain.value = LOUDNESS;
  out.connect(context.destination);
  let pushes = Number.NaN;
  return {
    /** Plays what the pedals have done since the last frame, as loud as its channel (0 to 1). */
    frame({ crankTurns, developmentM, phase, pressure }: RideFrame, volume: number): void {
      const now = Math.floor(crankTurns * 2);
      const fresh = now - pushes;
      pushes = now;
      const plays = phase === 'riding' && pressure !== 'coast' && context.state === 'running';
      if (!plays || volume <= 0 || !(fresh > 0 && fresh <= MOST_PUSHES)) return;
      pluck(context, out, noteHz(now, developmentM), volume);
      // The first push of a bar has its root below it.
      if (now % 8 === 0) pluck(context, out, noteHz(0, developmentM) / 2, volume * 0.8);
    },
    stop(): void {
      out.disconnect();
    },
  };
}

/** A tongue of wood: a round tone with a short bright start. */
function pluck(context: AudioContext, out: GainNode, hz: number, volume: number): void {
  const at = context.currentTime;
  for (const [times, gain, ringS] of [
    [1, 1, RING_S],
    [3.01, 0.22, RING_S * 0.25],
  ] as const) {
    const oscillator = context.createOscillator();
    const envelope = context.createGain();
    oscillator.frequency.value = hz * times;
    envelope.gain.setValueAtTime(0.0001, at);
    envelope.gain.exponentialRampToValueAtTime(gain * volume, at + 0.012);
    envelope.gain.exponentialRampToValueAtTime(0.0001, at + ringS);
    oscillator.connect(envelope).connect(out);
    oscillator.start(at);
    oscillator.stop(at + ringS + 0.02);
    oscillator.onended = () => envelope.disconnect();
  }
}
