/**
 * Pitches of real roads against marks made by hand, and of made roads against feet that are known. Three lists by hand: the
 * hardest 2 km of five open roads; of all of them 2 km more that share nothing with those; and what was hardest of the rest,
 * drawn larger, a point every 13 px. The last two were marked before anybody looked at what the code finds there. The
 * definition was mended between the first two lists and not since, so the last one and the made roads are the clean judges.
 */
import { describe, expect, it } from 'vitest';
import { levelFromRoad } from '../../../src/core/gpx/level.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { collected, collectionIsHere, gpxText, northward, roadOf, trackText } from './files.ts';

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

const REST: readonly Marked[] = [
  { file: 'hills_climb_27km', fromM: 11_220, leadM: 100, feetM: [313, 673, 932, 1_310, 1_407, 1_777] },
  { file: 'hills_climb_27km', fromM: 5_780, leadM: 100, feetM: [167, 447, 1_081, 1_363, 1_853, 1_923] },
  { file: 'undulating_24km', fromM: 4_510, leadM: 100, feetM: [11, 161, 1_733, 1_820] },
  {
    file: 'undulating_24km',
    fromM: 21_500,
    leadM: 100,
    feetM: [250, 425, 690, 1_147, 1_432, 1_528, 1_640, 1_888],
  },
  {
    file: 'offroad_noisy_33km',
    fromM: 11_450,
    leadM: 100,
    feetM: [18, 90, 217, 1_145, 1_190, 1_255, 1_687, 1_908],
  },
  { file: 'rolling_road_40km', fromM: 100, leadM: 100, feetM: [] },
  { file: 'rolling_road_40km', fromM: 36_360, leadM: 100, feetM: [] },
];

/** Walked, not ridden: their heights jump by tens of metres, and marks of such walls would be marks of the device. */
const POOR = ['gap_segments_27km', 'multitrack_52km'];

/** A found foot further off than this is that of another hill (m). */
const SAME_HILL_M = 40;

/** Feet found on a stretch of a road, in metres from its beginning. */
function feetOf(source: Parameters<typeof roadOf>[0], fromM: number, toM: number): number[] {
  const made = levelFromRoad(roadOf(source), { fromM, toM, title: 'R', sentence: 'R.' });
  if (!made.ok) throw new Error('no level');
  return courseOfLevel(made.level).pitches.map(({ footM }) => footM);
}

/** Feet that are known and feet that were found, on one stretch. */
interface Stretch {
  readonly known: readonly number[];
  readonly found: readonly number[];
}

/** Each foot is that of one other at most; the nearest go together first. */
function compared(stretches: readonly Stretch[]) {
  const offM = stretches.flatMap(({ known, found }) => {
    const pairs = known
      .flatMap((mark) => found.map((foot) => ({ mark, foot, off: Math.abs(foot - mark) })))
      .filter(({ off }) => off <= SAME_HILL_M)
      .toSorted((a, b) => a.off - b.off);
    const taken = { marks: new Set<number>(), feet: new Set<number>() };
    return pairs.flatMap(({ mark, foot, off }) => {
      if (taken.marks.has(mark) || taken.feet.has(foot)) return [];
      taken.marks.add(mark);
      taken.feet.add(foot);
      return [off];
    });
  });
  const count = stretches.reduce((sum, { known }) => sum + known.length, 0);
  const found = stretches.reduce((sum, one) => sum + one.found.length, 0);
  return {
    count,
    offM: offM.toSorted((a, b) => a - b),
    foundShare: offM.length / count,
    falseShare: 1 - offM.length / found,
    nearShare: offM.filter((off) => off <= 15).length / offM.length,
  };
}

const byHand = (marked: readonly Marked[]): Stretch[] =>
  marked.map(({ file, fromM, leadM, feetM }) => ({
    known: feetM,
    found: feetOf(collected(`${file}.gpx`), fromM - leadM, fromM + 2_000)
      .map((footM) => footM - leadM)
      .filter((footM) => leadM === 0 || footM >= -15),
  }));

/** How a device wrote heights down: points every `stepM`, white noise and a slow drift (standard deviations), steps of `unitM`. */
interface Device {
  readonly stepM: number;
  readonly whiteM: number;
  readonly driftM: number;
  readonly unitM: number;
}

/**
 * A road of some 4.5 km whose feet are known: gentle pieces, pitches of 5 to 12 %, real steps of 4.5 points and more within
 * climbs; and, to be passed over, steps of two points and dips of 20 m. Corners are rounded over 20 m.
 */
function madeRoad(seed: number, { stepM, whiteM, driftM, unitM }: Device): Stretch {
  const random = seededRandom(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const known: number[] = [];
  const slopes: number[] = [];
  const add = (lengthM: number, slope: number): void => {
    for (let k = 0; k < Math.round(lengthM); k += 1) slopes.push(slope);
  };
  const stepUp = (lengthM: number, slope: number): void => {
    known.push(slopes.length);
    add(lengthM, slope);
  };
  while (slopes.length < 4_500) {
    const gentle = between(-0.04, 0.02);
    const pitch = between(0.05, 0.12) + (gentle > 0 ? 0.04 : 0);
    add(between(60, 200), gentle);
    stepUp(between(60, 200), pitch);
    const next = random();
    if (next < 0.3) add(between(60, 120), pitch + 0.02);
    else if (next < 0.6 && pitch < 0.11) stepUp(between(60, 150), pitch + between(0.045, 0.07));
    else if (next < 0.8) {
      add(20, pitch - 0.03);
      add(60, pitch);
    }
  }
  const heights = [300];
  for (let i = 1; i < slopes.length; i += 1) {
    const round = slopes.slice(Math.max(0, i - 10), i + 11);
    heights.push((heights[i - 1] as number) + round.reduce((a, b) => a + b, 0) / round.length);
  }
  const bell = (): number => Array.from({ length: 12 }, random).reduce((a, b) => a + b, -6);
  // A drift forgets itself within some 200 m.
  const kept = 1 - stepM / 200;
  let drift = 0;
  const points = northward(Math.floor(slopes.length / stepM), stepM, (x) => {
    drift = kept * drift + Math.sqrt(1 - kept * kept) * driftM * bell();
    return Math.round(((heights[x] ?? 0) + whiteM * bell() + drift) / unitM) * unitM;
  });
  return { known, found: feetOf(gpxText(trackText(points)), 0, slopes.length) };
}

const madeRoads = (device: Device): Stretch[] =>
  Array.from({ length: 10 }, (_, k) => madeRoad(101 + k, device));

describe.skipIf(!collectionIsHere)('pitches of real roads', () => {
  const hardest = collectionIsHere ? compared(byHand(HARDEST)) : null;
  const rest = collectionIsHere ? compared(byHand(REST)) : null;
  const all = collectionIsHere ? compared(byHand([...HARDEST, ...ELSEWHERE, ...REST])) : null;

  it('of the hardest stretches nine of ten that a hand marked are found, and at most one of ten is no such', () => {
    expect(hardest?.count).toBe(29);
    expect(hardest?.foundShare).toBeGreaterThanOrEqual(0.9);
    expect(hardest?.falseShare).toBeLessThanOrEqual(0.1);
  });

  it('with gentler ones nearly nine of ten are found, and one in eight is no such', () => {
    expect(all?.count).toBe(84);
    expect(all?.foundShare).toBeGreaterThanOrEqual(0.88);
    expect(all?.falseShare).toBeLessThanOrEqual(0.125);
  });

  it('their feet lie within 15 m of the hand where it was drawn large, and within 25 m elsewhere', () => {
    expect(rest?.count).toBe(32);
    expect(rest?.nearShare).toBe(1);
    const offM = all?.offM ?? [];
    expect(all?.nearShare).toBeGreaterThanOrEqual(0.8);
    expect(offM[Math.floor(offM.length * 0.9)]).toBeLessThanOrEqual(25);
  });

  it('the two roads that were left out, and only they, are called poor', () => {
    const grade = (file: string): string => roadOf(collected(`${file}.gpx`)).quality.grade;
    expect(POOR.map(grade)).toEqual(['poor', 'poor']);
    expect(HARDEST.map(({ file }) => grade(file))).not.toContain('poor');
  });
});

/** Noise of devices: orders of magnitude, common practice, no source. */
describe('pitches of made roads, whose feet are known', () => {
  it.each<readonly [string, Device, number]>([
    ['without noise', { stepM: 5, whiteM: 0, driftM: 0, unitM: 0.001 }, 0.03],
    ['as a barometer writes them', { stepM: 5, whiteM: 0.1, driftM: 0.4, unitM: 0.2 }, 0.1],
    ['as one does at 30 km/h', { stepM: 9, whiteM: 0.1, driftM: 0.4, unitM: 0.2 }, 0.1],
  ])(
    '%s: all but one in fifty are found, few others, and 95 of 100 feet lie within 15 m',
    (_, device, others) => {
      const { count, foundShare, falseShare, nearShare } = compared(madeRoads(device));
      expect(count).toBeGreaterThan(150);
      expect(foundShare).toBeGreaterThanOrEqual(0.98);
      expect(falseShare).toBeLessThanOrEqual(others);
      expect(nearShare).toBeGreaterThanOrEqual(0.95);
    },
  );
});
