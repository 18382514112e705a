/**
 * What the strip says about one place, as short pairs of a name and a value. Pure.
 */
import type { ShiftReport } from '../core/coach/types.ts';
import type { Pitch } from '../core/course/types.ts';
import { sampleAt as tableAt } from '../core/math/numbers.ts';
import { gearOf, numbersOfMovement } from '../core/model/transmission.ts';
import type { GearPlace, Machine } from '../core/model/types.ts';
import type { TraceSample } from '../core/ride/trace.ts';
import type { Format } from '../words/format.ts';
import { words } from '../words/words.ts';
import { nearestSample } from './lookup.ts';
import type { StripData } from './tracks.tsx';

const say = words('charts');

/** A place near a foot: `metres` is written, `side` says on which side. */
interface FootPlace {
  readonly metres: string;
  readonly side: 'before' | 'at' | 'after';
}

/** One pair. */
export interface ReadItem {
  readonly name: 'place' | 'gear' | 'cadence' | 'pressure' | 'best' | 'shift';
  readonly label: string;
  readonly value: string;
  /** Quieter words behind the value. */
  readonly aside?: string;
}

/** A foot nearer than this is worth naming (m). */
const NEAR_FOOT_M = 60;
/** Nearer than this counts as at the foot (m). */
const AT_FOOT_M = 2;
/** A shift is read out at the place where it began, give or take this (m). */
const AT_SHIFT_M = 0.8;
/** Gentler than this reads as flat. */
const FLAT_RATIO = 0.005;

/** Where a place is, seen from a foot. `beforeM` is positive before it. */
export function footPlace(beforeM: number, format: Format): FootPlace {
  const side = Math.abs(beforeM) < AT_FOOT_M ? 'at' : beforeM > 0 ? 'before' : 'after';
  return { metres: format.distance(Math.abs(beforeM)), side };
}

/** "50 × 17". */
export function gearText(machine: Machine, place: GearPlace, format: Format): string {
  return format.gear(gearOf(machine, place));
}

/** What the shifter showed before and after a shift. */
export function shiftText(machine: Machine, shift: ShiftReport, format: Format): readonly [string, string] {
  const [from, to] = numbersOfMovement(machine, shift);
  return [format.number(from), format.number(to)];
}

/** The shift that began at this sample, or null. */
function shiftAt(data: StripData, sample: TraceSample): ShiftReport | null {
  const near =
    data.shifts?.filter((shift) => Math.abs(shift.startedAtM - sample.distanceM) <= AT_SHIFT_M) ?? [];
  const distance = (shift: ShiftReport): number => Math.abs(shift.startedAtM - sample.distanceM);
  return near.sort((a, b) => distance(a) - distance(b))[0] ?? null;
}

/** Everything to be read out at a sample of the ride. */
export function readPlace(data: StripData, index: number, format: Format): readonly ReadItem[] {
  const sample = data.trace.samples[index];
  if (sample === undefined) return [];
  const { machine } = data;
  const items: ReadItem[] = [
    {
      name: 'place',
      label: say('read-at'),
      value: format.distance(sample.distanceM),
      aside: whereText(data, sample.distanceM, format),
    },
    {
      name: 'gear',
      label: say('gear'),
      value: gearText(machine, sample, format),
    },
    {
      name: 'cadence',
      label: say('cadence'),
      value: cadenceText(sample),
      aside: say('read-band', {
        low: Math.round(sample.bandLowRpm),
        high: Math.round(sample.bandHighRpm),
      }),
    },
    { name: 'pressure', label: say('pressure'), value: pressureText(sample, format) },
  ];
  const best = data.reference?.samples[nearestSample(data.reference.samples, sample.distanceM)];
  if (best !== undefined) {
    const gear = gearText(machine, best, format);
    items.push({
      name: 'best',
      label: say('read-best'),
      value: say('read-bestHere', { gear, cadence: cadenceText(best) }),
    });
  }
  const shift = shiftAt(data, sample);
  if (shift !== null) {
    const { kind, direction } = shift;
    const [from, to] = numbersOfMovement(machine, shift);
    items.push({
      name: 'shift',
      label: say('read-shift'),
      value: say('read-shiftSays', { kind, direction, from, to }),
    });
  }
  return items;
}

function whereText({ course, audience }: StripData, distanceM: number, format: Format): string {
  const ratio = tableAt(course.slopeRatio, distanceM);
  const way = Math.abs(ratio) < FLAT_RATIO ? 'flat' : ratio > 0 ? 'up' : 'down';
  const slope = { way, percent: format.percent(Math.abs(ratio)) } as const;
  const { pitches } = course;
  const pitch = nearestPitch(pitches, distanceM);
  if (pitch === null) return say('read-slope', slope);
  const which = { audience, pitch: pitches.indexOf(pitch) + 1, pitches: pitches.length };
  return say('read-slopeNear', { ...slope, ...which, ...footPlace(pitch.footM - distanceM, format) });
}

/** The pitch one is on or near the foot of; the next foot counts before the last. */
function nearestPitch(pitches: readonly Pitch[], distanceM: number): Pitch | null {
  const near = pitches.filter(
    ({ footM, endM }) => distanceM >= footM - NEAR_FOOT_M && distanceM <= Math.max(endM, footM + NEAR_FOOT_M),
  );
  return near.at(-1) ?? null;
}

/** A cadence, or why there is none. */
function cadenceText(sample: TraceSample): string {
  if (sample.speedMps < 0.1) return say('read-standing');
  if (sample.cadenceRpm <= 0) return say('read-coasting');
  return say('read-rpm', { rpm: Math.round(sample.cadenceRpm) });
}

function pressureText({ pressureRatio: ratio }: TraceSample, format: Format): string {
  const how = ratio < 0.15 ? 'coast' : ratio < 0.75 ? 'ease' : ratio <= 1.2 ? 'steady' : 'press';
  return say('read-pressure', { how, percent: format.percent(ratio) });
}
