/**
 * What can be measured on a sound: peak, loudness, offset and the step across a loop's seam. The render
 * script refuses to write what fails, and the tests ask the same questions.
 */
import { SAMPLE_RATE_HZ, samplesOf } from './synthesis.ts';

/** Largest sample, whatever its sign. */
export function peakOf(samples: Float64Array): number {
  return samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}

export function rmsOf(samples: Float64Array): number {
  return Math.sqrt(samples.reduce((sum, value) => sum + value * value, 0) / samples.length);
}

/** Mean of all samples; anything but about 0 wastes room and clicks at the ends. */
export function offsetOf(samples: Float64Array): number {
  return samples.reduce((sum, value) => sum + value, 0) / samples.length;
}

/** Root mean square of the loudest stretch of `windowS`: what an ear takes as how loud it is. */
export function loudestRmsOf(samples: Float64Array, windowS = 0.05): number {
  const window = Math.min(samples.length, samplesOf(windowS));
  let sum = 0;
  let most = 0;
  for (let i = 0; i < samples.length; i++) {
    sum += (samples[i] ?? 0) ** 2;
    if (i >= window) sum -= (samples[i - window] ?? 0) ** 2;
    most = Math.max(most, sum);
  }
  return Math.sqrt(most / window);
}

/** The step a loop makes from its last sample to its first, beside the steps it makes anyway. */
export interface Seam {
  /** Step across the seam. */
  readonly jump: number;
  /** How far that step departs from the one before it: a kink, where both ends meet at another slope. */
  readonly kink: number;
  /** Root mean square of all steps, and of all changes from step to step. */
  readonly typicalStep: number;
  readonly typicalKink: number;
}

export function seamOf(period: Float64Array): Seam {
  const at = (i: number) => period[(i + period.length) % period.length] ?? 0;
  const steps = period.map((_, i) => at(i) - at(i - 1));
  const kinks = steps.map((step, i) => step - (steps[(i - 1 + steps.length) % steps.length] ?? 0));
  return {
    jump: Math.abs(steps[0] ?? 0),
    kink: Math.max(Math.abs(kinks[0] ?? 0), Math.abs(kinks[1] ?? 0)),
    typicalStep: rmsOf(steps),
    typicalKink: rmsOf(kinks),
  };
}

/** Decibels below full scale. */
export function decibels(value: number): number {
  return 20 * Math.log10(Math.max(value, 1e-9));
}

/** Sixteen-bit samples, little end first. */
export function pcmOf(samples: Float64Array): Uint8Array {
  const bytes = new DataView(new ArrayBuffer(samples.length * 2));
  samples.forEach((value, i) =>
    bytes.setInt16(i * 2, Math.round(Math.min(1, Math.max(-1, value)) * 32_767), true),
  );
  return new Uint8Array(bytes.buffer);
}

/** Samples of sixteen-bit PCM as an encoder gives it back. */
export function samplesOfPcm(pcm: Uint8Array): Float64Array {
  const view = new DataView(pcm.buffer, pcm.byteOffset, pcm.byteLength);
  return new Float64Array(pcm.byteLength >> 1).map((_, i) => view.getInt16(i * 2, true) / 32_768);
}

/** A WAV file, one channel. */
export function wavOf(samples: Float64Array): Uint8Array {
  const pcm = pcmOf(samples);
  const file = new DataView(new ArrayBuffer(44 + pcm.length));
  const text = (offset: number, word: string) =>
    [...word].forEach((letter, i) => file.setUint8(offset + i, letter.charCodeAt(0)));
  text(0, 'RIFF');
  file.setUint32(4, 36 + pcm.length, true);
  text(8, 'WAVEfmt ');
  file.setUint32(16, 16, true);
  file.setUint16(20, 1, true);
  file.setUint16(22, 1, true);
  file.setUint32(24, SAMPLE_RATE_HZ, true);
  file.setUint32(28, SAMPLE_RATE_HZ * 2, true);
  file.setUint16(32, 2, true);
  file.setUint16(34, 16, true);
  text(36, 'data');
  file.setUint32(40, pcm.length, true);
  const bytes = new Uint8Array(file.buffer);
  bytes.set(pcm, 44);
  return bytes;
}
