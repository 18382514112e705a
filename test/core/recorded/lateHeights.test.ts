/**
 * Heights that a device wrote down late: found by the power of the ride within a second, moved back, and left alone where
 * there is no power. The rides are those of the core, so where every hill is and what was done there is known.
 */
import { describe, expect, it } from 'vitest';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { heightLagS } from '../../../src/core/recorded/lateHeights.ts';
import { roadRide } from '../../../src/core/recorded/rideFigures.ts';
import { secondsOf } from '../../../src/core/recorded/seconds.ts';
import { NAMED_HABITS } from '../../../src/core/virtual/riders.ts';
import { type MadeRide, madeRide, roadOfPitches } from './made.ts';

const PITCHES = 8;
const WHO = [
  ['road-2x11', 'adult-weekly', 'early'],
  ['trekking-3x8', 'adult-new', 'late'],
] as const;

function ride(
  [bikeId, riderId, habit]: readonly [string, string, 'late' | 'early'],
  lateS: number,
  power: boolean,
) {
  const made = madeRide(roadOfPitches(PITCHES, 41), bikeId, riderId, NAMED_HABITS[habit], 9, {
    lateS,
    power,
  });
  const bike = bikeById(bikeId)!;
  const rider = riderById(riderId)!;
  const result = roadRide(made.road, null, { bike, rider, teethKnown: true });
  if (!result.ok) throw new Error(result.why);
  return { made, ...result };
}

/** How far the feet that were found lie behind those of the road, in the mean (m). */
function feetBehindM(made: MadeRide, feetM: readonly number[]): number {
  const stretch = made.road.lengthM / made.course.lengthM;
  const offM = made.course.pitches.flatMap(({ footM }) => {
    const near = feetM.filter((one) => Math.abs(one - footM * stretch) < 80);
    return near.length === 0 ? [] : [near[0]! - footM * stretch];
  });
  expect(offM.length).toBeGreaterThan(PITCHES / 2);
  return offM.reduce((a, b) => a + b, 0) / offM.length;
}

describe.each(WHO)('the heights of a ride on %s by %s, %s', (...who) => {
  it.each([0, 3, 6])('written down %i s late are found within a second and moved back', (lateS) => {
    const { made, figures } = ride(who, lateS, true);
    expect(Math.abs((figures.heightsLateS ?? Number.NaN) - lateS)).toBeLessThanOrEqual(1);
    const feetM = figures.pitches.map(({ footM }) => footM);
    expect(Math.abs(feetBehindM(made, feetM))).toBeLessThan(10);
  });

  it('stay as they are without power, and what is said lies within more', () => {
    const [late, told] = [ride(who, 6, false), ride(who, 6, true)];
    expect(late.figures.heightsLateS).toBeNull();
    expect(late.road).toBe(late.made.road);
    const feetM = late.figures.pitches.map(({ footM }) => footM);
    expect(feetBehindM(late.made, feetM)).toBeGreaterThan(15);
    const within = (pitches: typeof late.figures.pitches): number =>
      Math.min(...pitches.flatMap(({ plusMinusM }) => plusMinusM ?? []));
    expect(within(late.figures.pitches)).toBeGreaterThan(within(told.figures.pitches) + 8);
  });
});

describe('too little to tell', () => {
  const seconds = secondsOf(ride(WHO[0], 6, true).made.road)!;

  it.each([
    ['three minutes', seconds.slice(0, 180)],
    ['a flat road', seconds.map((second) => ({ ...second, slopeRatio: 0 }))],
    [
      'hills of another road',
      seconds.map((second, i) => ({ ...second, slopeRatio: seconds.at(-1 - i)!.slopeRatio })),
    ],
    [
      'heights late by 9 s in one half and in time in the other',
      seconds.map((second, i) => ({
        ...second,
        slopeRatio: (seconds[i < seconds.length / 2 ? i + 6 : Math.max(0, i - 3)] ?? second).slopeRatio,
      })),
    ],
  ])('is %s', (_, few) => expect(heightLagS(few)).toBeNull());
});
