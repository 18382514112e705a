/**
 * Pitches of real roads against marks made by hand. Two lists: the hardest 2 km of five open roads, and of all of them
 * 2 km more that share nothing with those, drawn from unsmoothed heights and marked before anybody looked at what the code
 * finds there. The definition was mended between the two lists, so the second one is the harder judge.
 */
import { describe, expect, it } from 'vitest';
import { levelFromRoad } from '../../../src/core/gpx/level.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { collected, collectionIsHere, roadOf } from './files.ts';

/** Where the drawn 2 km begin (m), how much of the road before them was seen, and the feet marked by hand (m from there). */
interface Marked {
  readonly file: string;
  readonly fromM: number;
  readonly leadM: number;
  readonly feetM: readonly number[];
}

const HARDEST: readonly Marked[] = [
  { file: 'hills_climb_27km', fromM: 3_680, leadM: 0, feetM: [90, 430, 730, 1_370] },
  { file: 'undulating_24km', fromM: 7_210, leadM: 0, feetM: [165, 395, 1_300, 1_440] },
  {
    file: 'offroad_noisy_33km',
    fromM: 7_810,
    leadM: 0,
    feetM: [125, 230, 320, 490, 625, 750, 795, 960, 1_360, 1_605, 1_690, 1_810, 1_920],
  },
  {
    file: 'steep_short_5km',
    fromM: 0,
    leadM: 0,
    feetM: [115, 350, 755, 1_140, 1_430, 1_730, 1_930],
  },
  { file: 'rolling_road_40km', fromM: 9_680, leadM: 0, feetM: [325] },
];

const ELSEWHERE: readonly Marked[] = [
  { file: 'hills_climb_27km', fromM: 13_680, leadM: 100, feetM: [5, 405, 1_540] },
  {
    file: 'offroad_noisy_33km',
    fromM: 14_510,
    leadM: 100,
    feetM: [207, 410, 595, 852, 1_062, 1_145, 1_215, 1_282, 1_375, 1_568, 1_620, 1_722, 1_800],
  },
  { file: 'rolling_road_40km', fromM: 23_990, leadM: 100, feetM: [192] },
  { file: 'steep_short_5km', fromM: 2_010, leadM: 100, feetM: [] },
  {
    file: 'undulating_24km',
    fromM: 2_000,
    leadM: 100,
    feetM: [32, 102, 388, 808, 1_112, 1_283],
  },
];

/** Walked, not ridden: their heights jump by tens of metres, and marks of such walls would be marks of the device. */
const POOR = ['gap_segments_27km', 'multitrack_52km'];

/** A found foot further off than this is that of another hill (m). */
const SAME_HILL_M = 40;

function compared(marked: readonly Marked[]) {
  const offM: number[] = [];
  let found = 0;
  for (const { file, fromM, leadM, feetM } of marked) {
    const stretch = { fromM: fromM - leadM, toM: fromM + 2_000 };
    const made = levelFromRoad(roadOf(collected(`${file}.gpx`)), { ...stretch, title: 'R', sentence: 'R.' });
    if (!made.ok) throw new Error('no level');
    const feet = courseOfLevel(made.level)
      .pitches.map(({ footM }) => footM - leadM)
      .filter((footM) => leadM === 0 || footM >= -15);
    found += feet.length;
    const pairs = feetM
      .flatMap((mark) => feet.map((foot) => ({ mark, foot, off: Math.abs(foot - mark) })))
      .filter(({ off }) => off <= SAME_HILL_M)
      .toSorted((a, b) => a.off - b.off);
    const taken = new Set<string>();
    for (const { mark, foot, off } of pairs) {
      if (taken.has(`mark ${mark}`) || taken.has(`foot ${foot}`)) continue;
      taken.add(`mark ${mark}`).add(`foot ${foot}`);
      offM.push(off);
    }
  }
  const count = marked.reduce((sum, { feetM }) => sum + feetM.length, 0);
  offM.sort((a, b) => a - b);
  return { count, found, offM, foundShare: offM.length / count, falseShare: 1 - offM.length / found };
}

describe.skipIf(!collectionIsHere)('pitches of real roads', () => {
  const hardest = collectionIsHere ? compared(HARDEST) : null;
  const both = collectionIsHere ? compared([...HARDEST, ...ELSEWHERE]) : null;

  it('of the hardest stretches nine of ten that a hand marked are found, and at most one of ten is no such', () => {
    expect(hardest?.count).toBe(29);
    expect(hardest?.foundShare).toBeGreaterThanOrEqual(0.9);
    expect(hardest?.falseShare).toBeLessThanOrEqual(0.1);
  });

  it('with stretches elsewhere nine of ten are found as well, and one in nine is no such', () => {
    expect(both?.count).toBe(52);
    expect(both?.foundShare).toBeGreaterThanOrEqual(0.9);
    expect(both?.falseShare).toBeLessThanOrEqual(0.12);
  });

  it('their feet lie within 15 m of the hand, as a median, and nine of ten within 25 m', () => {
    const offM = both?.offM ?? [];
    expect(offM[Math.floor(offM.length / 2)]).toBeLessThanOrEqual(15);
    expect(offM[Math.floor(offM.length * 0.9)]).toBeLessThanOrEqual(25);
  });

  it('the two roads that were left out, and only they, are called poor', () => {
    const grade = (file: string): string => roadOf(collected(`${file}.gpx`)).quality.grade;
    expect(POOR.map(grade)).toEqual(['poor', 'poor']);
    expect(HARDEST.map(({ file }) => grade(file))).not.toContain('poor');
  });
});
