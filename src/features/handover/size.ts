/** How much is carried, in words. */
import { createFormat } from '../../words/format.ts';
import { words } from '../../words/words.ts';

const say = words('handover');

/** A number of bytes. */
export function sizeOf(bytes: number): string {
  if (bytes < 1_000) return say('size-bytes', { bytes });
  return say('size-kilobytes', { size: createFormat('metric').number(bytes / 1_000, 1) });
}

/** A number of bytes, and in how many codes they go. */
export function sizeAndCodes(bytes: number, codes: number): string {
  return say('handOut-size', { size: sizeOf(bytes), codes });
}
