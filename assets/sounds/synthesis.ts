/**
 * Building blocks for the sounds: seeded noise, filters, ringing bodies and envelopes on arrays of samples.
 * Loops are made on a circle, so their end runs into their beginning without a join; which sound
 * is built from what is decided in the two recipe files.
 */

/** Samples a second of everything rendered. */
export const SAMPLE_RATE_HZ = 48_000;

/** A number in [0, 1). */
export type Chance = () => number;

/** Seeded chance (32 bit state), the same on every machine. */
export function createChance(seed: number): Chance {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export function samplesOf(seconds: number): number {
  return Math.round(seconds * SAMPLE_RATE_HZ);
}

export function silence(seconds: number): Float64Array {
  return new Float64Array(samplesOf(seconds));
}

/** White noise between -1 and 1. */
export function noise(seconds: number, chance: Chance): Float64Array {
  return silence(seconds).map(() => chance() * 2 - 1);
}

export type FilterKind = 'low' | 'high' | 'band';

/** Second-order filter; `q` 0.707 is flat, higher rings. `circular` lets the end flow into the beginning. */
export function filter(
  input: Float64Array,
  kind: FilterKind,
  frequencyHz: number,
  q = 0.707,
  circular = true,
): Float64Array {
  const w = (2 * Math.PI * frequencyHz) / SAMPLE_RATE_HZ;
  const alpha = Math.sin(w) / (2 * q);
  const cos = Math.cos(w);
  const a0 = 1 + alpha;
  const b0 = (kind === 'low' ? (1 - cos) / 2 : kind === 'high' ? (1 + cos) / 2 : alpha) / a0;
  const b1 = (kind === 'low' ? 1 - cos : kind === 'high' ? -(1 + cos) : 0) / a0;
  const b2 = kind === 'band' ? -b0 : b0;
  const a1 = (-2 * cos) / a0;
  const a2 = (1 - alpha) / a0;
  const output = new Float64Array(input.length);
  let [z1, z2] = [0, 0];
  // Once round a circle to settle, then once more to keep.
  for (let pass = circular ? 0 : 1; pass < 2; pass++) {
    for (let i = 0; i < input.length; i++) {
      const x = input[i] ?? 0;
      const y = b0 * x + z1;
      z1 = b1 * x - a1 * y + z2;
      z2 = b2 * x - a2 * y;
      output[i] = y;
    }
  }
  return output;
}

/** Noise between two edges, on a circle. */
export function bandNoise(seconds: number, lowHz: number, highHz: number, chance: Chance): Float64Array {
  return normalise(filter(filter(noise(seconds, chance), 'high', lowHz), 'low', highHz), 0.25);
}

/** Adds `part` times `gain` into `target` from a moment on; on a circle what runs over the end comes in at the front. */
export function add(target: Float64Array, part: Float64Array, atS = 0, gain = 1, circular = false): void {
  const from = samplesOf(atS);
  for (let i = 0; i < part.length; i++) {
    const place = circular ? (from + i) % target.length : from + i;
    if (place < target.length) target[place] = (target[place] ?? 0) + (part[i] ?? 0) * gain;
  }
}

/** Multiplies each sample by a factor that depends on time (s). */
export function shape(input: Float64Array, factor: (timeS: number) => number): Float64Array {
  return input.map((value, i) => value * factor(i / SAMPLE_RATE_HZ));
}

/** Slow wave from `low` to `high` with a whole number of turns in a loop of `seconds`. */
export function sway(seconds: number, turns: number, low: number, high: number, phase = 0) {
  const middle = (low + high) / 2;
  const half = (high - low) / 2;
  return (timeS: number) => middle + half * Math.sin(2 * Math.PI * ((turns * timeS) / seconds + phase));
}

/** Rises smoothly in `attackS`, then dies away, down to a thousandth after `decayS`. */
export function pluck(attackS: number, decayS: number) {
  return (timeS: number) => {
    const rise = timeS < attackS ? 0.5 - 0.5 * Math.cos((Math.PI * timeS) / attackS) : 1;
    return rise * Math.exp((-6.9 * Math.max(0, timeS - attackS)) / decayS);
  };
}

/** One way a struck body rings. */
export interface Mode {
  readonly frequencyHz: number;
  /** Time until it has died away to a thousandth (s). */
  readonly decayS: number;
  readonly gain: number;
}

/** A struck body: its modes, each with a soft start of `attackS` so that nothing clicks digitally. */
export function strike(modes: readonly Mode[], attackS = 0.0006): Float64Array {
  const longest = Math.max(...modes.map((mode) => mode.decayS));
  const out = silence(longest + attackS);
  for (const mode of modes) {
    const envelope = pluck(attackS, mode.decayS);
    for (let i = 0; i < out.length; i++) {
      const timeS = i / SAMPLE_RATE_HZ;
      const wave = Math.sin(2 * Math.PI * mode.frequencyHz * timeS);
      out[i] = (out[i] ?? 0) + mode.gain * envelope(timeS) * wave;
    }
  }
  return fadeEnd(out, longest * 0.15);
}

/** A short breath of band-limited noise. */
export function puff(
  lowHz: number,
  highHz: number,
  attackS: number,
  decayS: number,
  chance: Chance,
): Float64Array {
  const raw = noise(attackS + decayS, chance);
  const band = filter(filter(raw, 'high', lowHz, 0.707, false), 'low', highHz, 0.707, false);
  return fadeEnd(shape(normalise(band, 0.3), pluck(attackS, decayS)), decayS * 0.15);
}

/** Brings the last `seconds` smoothly to nothing. */
export function fadeEnd(input: Float64Array, seconds: number): Float64Array {
  const count = samplesOf(seconds);
  return input.map((value, i) => {
    const left = input.length - 1 - i;
    return left >= count ? value : value * (0.5 - 0.5 * Math.cos((Math.PI * left) / count));
  });
}

/** Rounds off peaks the way a warm amplifier does; small signals pass unchanged. */
export function soften(input: Float64Array, drive: number): Float64Array {
  return input.map((value) => Math.tanh(value * drive) / drive);
}

/** Scales to a root mean square. */
export function normalise(input: Float64Array, rms: number): Float64Array {
  const present = Math.sqrt(input.reduce((sum, value) => sum + value * value, 0) / input.length);
  return present > 0 ? input.map((value) => (value * rms) / present) : input;
}

/** Scales to a highest peak. */
export function peakAt(input: Float64Array, peak: number): Float64Array {
  const present = input.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return present > 0 ? input.map((value) => (value * peak) / present) : input;
}
