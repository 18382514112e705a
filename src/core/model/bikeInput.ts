/**
 * Reads what a person types about a bike (`50/34`, `11-32`, `28-622`) and says in a sentence what is wrong
 * with an impossible one. Usual limits are common practice, no source; capacity beyond them only warns.
 */
import { capacityTeeth } from './gears.ts';
import { cassetteFor } from './parts.ts';
import type { Bike } from './types.ts';

/** A reading, or one sentence. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: string; readonly sentence: string };

const SMALLEST_SPROCKET = 9;
const BIGGEST_SPROCKET = 60;
const SMALLEST_RING = 18;
const BIGGEST_RING = 62;
const MOST_RINGS = 3;
const MOST_SPROCKETS = 13;
/** Usual rear derailleurs take up no more than this (teeth; common practice, no source). */
export const USUAL_CAPACITY_TEETH = 47;

/** Chainrings from `34`, `50/34` or `48-36-26`; answered from small to big. */
export function readChainrings(text: string): Reading<readonly number[]> {
  const teeth = numbersIn(text);
  if (teeth === null || teeth.length === 0)
    return no('rings-unreadable', 'Write the teeth of the chainrings, for example 50/34 or 32.');
  if (teeth.length > MOST_RINGS)
    return no(
      'too-many-rings',
      `${teeth.length} chainrings are more than a bike has. Write one to three numbers, like 48/36/26.`,
    );
  const odd = teeth.find((n) => n < SMALLEST_RING || n > BIGGEST_RING);
  if (odd !== undefined)
    return no(
      'ring-size',
      `A chainring of ${odd} teeth is not made. Usual ones have ${SMALLEST_RING} to ${BIGGEST_RING}; count again or look for the number stamped on it.`,
    );
  const falling = teeth.every((n, i) => i === 0 || n < (teeth[i - 1] as number));
  const rising = teeth.every((n, i) => i === 0 || n > (teeth[i - 1] as number));
  if (!falling && !rising)
    return no(
      'rings-order',
      'The chainrings are out of order. Write them from big to small or from small to big, each only once.',
    );
  return { ok: true, value: [...teeth].sort((a, b) => a - b) };
}

/**
 * Sprockets from a range `11-32` (completed with the commonest cassette of `count` sprockets, or evenly
 * stepped where none is known) or one by one: `11 13 15 18 21 24 28 32`.
 */
export function readSprockets(text: string, count: number): Reading<readonly number[]> {
  const teeth = numbersIn(text);
  if (teeth === null || teeth.length === 0)
    return no(
      'sprockets-unreadable',
      'Write the teeth of the sprockets, for example 11-32, or each one: 11 13 15 18 21 24 28 32.',
    );
  const odd = teeth.find((n) => n < SMALLEST_SPROCKET || n > BIGGEST_SPROCKET);
  if (odd !== undefined)
    return no(
      'sprocket-size',
      `A sprocket of ${odd} teeth is not made. Usual ones have ${SMALLEST_SPROCKET} to ${BIGGEST_SPROCKET}; count again or look for the number stamped on it.`,
    );
  if (teeth.length > MOST_SPROCKETS)
    return no(
      'too-many-sprockets',
      `${teeth.length} sprockets are more than a cassette has. Write at most ${MOST_SPROCKETS}.`,
    );
  const sorted = [...teeth].sort((a, b) => a - b);
  if (sorted.some((n, i) => i > 0 && n === sorted[i - 1]))
    return no('sprocket-twice', 'One number stands twice. Every sprocket of a cassette is different.');
  const falling = teeth.every((n, i) => i === 0 || n < (teeth[i - 1] as number));
  const rising = teeth.every((n, i) => i === 0 || n > (teeth[i - 1] as number));
  if (!falling && !rising)
    return no('sprockets-order', 'The sprockets are out of order. Write them from small to big.');
  if (sorted.length !== 2) return { ok: true, value: sorted };
  const [small, big] = sorted as [number, number];
  if (!Number.isInteger(count) || count < 2 || count > MOST_SPROCKETS)
    return no('sprocket-count', `Say how many sprockets there are, from 2 to ${MOST_SPROCKETS}.`);
  if (big - small < count - 1)
    return no(
      'too-narrow',
      `${count} sprockets do not fit between ${small} and ${big} teeth. Write each one, or fewer.`,
    );
  return { ok: true, value: cassetteFor(small, big, count) };
}

/** Tyre width and bead seat diameter (mm) from an ISO 5775 mark such as `28-622`. */
export function readTyre(
  text: string,
): Reading<{ readonly tyreWidthMm: number; readonly beadSeatMm: number }> {
  const match = /^\s*(\d{2,3})\s*[-–]\s*(\d{3})\s*$/.exec(text);
  if (match === null)
    return no(
      'tyre-unreadable',
      'Write the ISO mark from the side of the tyre, for example 28-622 or 47-406.',
    );
  const tyreWidthMm = Number(match[1]);
  const beadSeatMm = Number(match[2]);
  if (tyreWidthMm < 18 || tyreWidthMm > 125 || beadSeatMm < 200 || beadSeatMm > 700)
    return no(
      'tyre-size',
      `${tyreWidthMm}-${beadSeatMm} is no bicycle tyre. The first number is the width (18 to 125 mm), the second the rim (200 to 700 mm).`,
    );
  return { ok: true, value: { tyreWidthMm, beadSeatMm } };
}

/** Things about a possible bike that a mechanic should hear of, as codes with numbers. */
export type BikeWarning =
  | { readonly code: 'capacity'; readonly capacityTeeth: number; readonly usualTeeth: number }
  | { readonly code: 'big-step'; readonly fromTeeth: number; readonly toTeeth: number };

/** Warnings about tooth counts. Ask a mechanic; the maker's documents decide. */
export function bikeWarnings(bike: Pick<Bike, 'chainringsTeeth' | 'sprocketsTeeth'>): BikeWarning[] {
  const warnings: BikeWarning[] = [];
  const capacity = capacityTeeth(bike);
  if (capacity > USUAL_CAPACITY_TEETH)
    warnings.push({ code: 'capacity', capacityTeeth: capacity, usualTeeth: USUAL_CAPACITY_TEETH });
  const { chainringsTeeth: rings } = bike;
  rings.forEach((big, i) => {
    const small = rings[i - 1];
    if (small !== undefined && big - small > 18)
      warnings.push({ code: 'big-step', fromTeeth: small, toTeeth: big });
  });
  return warnings;
}

/** Whole numbers separated by / - , ; or spaces; null if anything else stands there. */
function numbersIn(text: string): number[] | null {
  const parts = text
    .trim()
    .split(/[\s/,;–-]+/)
    .filter((part) => part !== '');
  if (parts.some((part) => !/^\d{1,3}$/.test(part))) return null;
  return parts.map(Number);
}

function no(code: string, sentence: string): { ok: false; code: string; sentence: string } {
  return { ok: false, code, sentence };
}
