/**
 * Reads what a person types about a bike (`50/34`, `11-32`, `28-622`) and says by a code what is
 * wrong with an impossible one. Usual limits are common practice, no source; capacity beyond them only warns.
 */
import { isRising } from '../math/numbers.ts';
import { capacityTeeth } from './gears.ts';
import { cassetteFor } from './parts.ts';
import type { GearParts } from './types.ts';

type BikeCode =
  | 'rings-unreadable'
  | 'too-many-rings'
  | 'ring-size'
  | 'rings-order'
  | 'sprockets-unreadable'
  | 'sprocket-size'
  | 'too-many-sprockets'
  | 'sprocket-twice'
  | 'sprockets-order'
  | 'sprocket-count'
  | 'too-narrow'
  | 'tyre-unreadable'
  | 'tyre-size';

/** Why nothing can be read, with the numbers that a sentence about it needs. */
export interface BikeProblem {
  readonly ok: false;
  readonly code: BikeCode;
  readonly values: Readonly<Record<string, number>>;
}

export type Reading<T> = { readonly ok: true; readonly value: T } | BikeProblem;

const SMALLEST_SPROCKET = 9;
const BIGGEST_SPROCKET = 60;
const SMALLEST_RING = 18;
const BIGGEST_RING = 62;
const MOST_RINGS = 3;
const MOST_SPROCKETS = 13;
/** Usual rear derailleurs take up no more than this (teeth; common practice, no source). */
const USUAL_CAPACITY_TEETH = 47;

/** Chainrings from `34`, `50/34` or `48-36-26`; answered from small to big. */
export function readChainrings(text: string): Reading<readonly number[]> {
  const teeth = numbersIn(text);
  if (teeth === null || teeth.length === 0) return no('rings-unreadable');
  if (teeth.length > MOST_RINGS) return no('too-many-rings', { count: teeth.length });
  const odd = teeth.find((n) => n < SMALLEST_RING || n > BIGGEST_RING);
  if (odd !== undefined)
    return no('ring-size', { teeth: odd, leastTeeth: SMALLEST_RING, mostTeeth: BIGGEST_RING });
  if (!isRising(teeth) && !isRising(teeth.toReversed())) return no('rings-order');
  return { ok: true, value: [...teeth].sort((a, b) => a - b) };
}

/**
 * Sprockets from a range `11-32` (completed with the commonest cassette of `count` sprockets, or evenly
 * stepped where none is known) or one by one: `11 13 15 18 21 24 28 32`.
 */
export function readSprockets(text: string, count: number): Reading<readonly number[]> {
  const teeth = numbersIn(text);
  if (teeth === null || teeth.length === 0) return no('sprockets-unreadable');
  const odd = teeth.find((n) => n < SMALLEST_SPROCKET || n > BIGGEST_SPROCKET);
  if (odd !== undefined)
    return no('sprocket-size', { teeth: odd, leastTeeth: SMALLEST_SPROCKET, mostTeeth: BIGGEST_SPROCKET });
  if (teeth.length > MOST_SPROCKETS)
    return no('too-many-sprockets', { count: teeth.length, most: MOST_SPROCKETS });
  const sorted = [...teeth].sort((a, b) => a - b);
  if (sorted.some((n, i) => i > 0 && n === sorted[i - 1])) return no('sprocket-twice');
  if (!isRising(teeth) && !isRising(teeth.toReversed())) return no('sprockets-order');
  if (sorted.length !== 2) return { ok: true, value: sorted };
  const [small, big] = sorted as [number, number];
  if (!Number.isInteger(count) || count < 2 || count > MOST_SPROCKETS)
    return no('sprocket-count', { least: 2, most: MOST_SPROCKETS });
  if (big - small < count - 1) return no('too-narrow', { count, leastTeeth: small, mostTeeth: big });
  return { ok: true, value: cassetteFor(small, big, count) };
}

/**
 * Bead seats (mm) of the older names of wheels, as they are printed beside the ISO mark; of inches only those whose
 * width is written with a point, for `26 × 1 3/8` is another wheel than `26 × 1.75`. Common practice, from memory.
 */
const BEAD_SEATS_MM: Readonly<Record<string, number>> = {
  '700': 622,
  '700c': 622,
  '650b': 584,
  '29': 622,
  '28': 622,
  '27.5': 584,
  '26': 559,
  '24': 507,
  '20': 406,
  '16': 305,
  '12': 203,
};
const MM_PER_INCH = 25.4;

/** `700x28c` as `28-622`, `20 × 1.75` as `44-406`; anything else as it is. */
function asIsoMark(text: string): string {
  const match = /^\s*(\d+(?:\.\d)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*([a-c]?)\s*$/i.exec(text);
  if (match === null) return text;
  const [, wheel = '', width = '', letter = ''] = match;
  const inMm = /^(700|650)$/.test(wheel);
  const beadSeatMm = BEAD_SEATS_MM[inMm ? wheel + letter.toLowerCase() : wheel];
  if (beadSeatMm === undefined || (!inMm && !width.includes('.'))) return text;
  return `${Math.round(Number(width) * (inMm ? 1 : MM_PER_INCH))}-${beadSeatMm}`;
}

/** Tyre width and bead seat diameter (mm) from an ISO 5775 mark such as `28-622`, or an older name that says the same. */
export function readTyre(
  text: string,
): Reading<{ readonly tyreWidthMm: number; readonly beadSeatMm: number }> {
  const match = /^\s*(\d{2,3})\s*[-–]\s*(\d{3})\s*$/.exec(asIsoMark(text));
  if (match === null) return no('tyre-unreadable');
  const tyreWidthMm = Number(match[1]);
  const beadSeatMm = Number(match[2]);
  if (tyreWidthMm < 18 || tyreWidthMm > 125 || beadSeatMm < 200 || beadSeatMm > 700)
    return no('tyre-size', { tyreWidthMm, beadSeatMm });
  return { ok: true, value: { tyreWidthMm, beadSeatMm } };
}

/** Things about a possible bike that a mechanic should hear of, as codes with numbers. */
type BikeWarning =
  | { readonly code: 'capacity'; readonly capacityTeeth: number; readonly usualTeeth: number }
  | { readonly code: 'big-step'; readonly fromTeeth: number; readonly toTeeth: number };

/** Warnings about tooth counts. Ask a mechanic; the maker's documents decide. */
export function bikeWarnings(bike: GearParts): BikeWarning[] {
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

function no(code: BikeCode, values: BikeProblem['values'] = {}): BikeProblem {
  return { ok: false, code, values };
}
