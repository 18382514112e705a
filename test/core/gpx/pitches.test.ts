/**
 * Pitches of real roads against marks made by hand: the hardest 2 km of each open road were drawn from their unsmoothed
 * heights, and a coach's eye marked where the road stands up, before anybody looked at what the code finds there. Roads
 * whose heights are called poor are left out: on them the page itself says that hills may lie elsewhere.
 */
import { describe, expect, it } from 'vitest';
import { levelFromRoad } from '../../../src/core/gpx/level.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { collected, collectionIsHere, roadOf } from './files.ts';

/** Where the drawn 2 km begin (m), and the feet marked by hand from the profile (m from there). */
const MARKED = [
  { file: 'hills_climb_27km.gpx', fromM: 3_680, feetM: [90, 430, 730, 1_370] },
  { file: 'undulating_24km.gpx', fromM: 7_210, feetM: [165, 395, 1_300, 1_440] },
  {
    file: 'offroad_noisy_33km.gpx',
    fromM: 7_810,
    feetM: [125, 230, 320, 490, 625, 750, 795, 960, 1_360, 1_605, 1_690, 1_810, 1_920],
  },
  { file: 'steep_short_5km.gpx', fromM: 0, feetM: [115, 350, 755, 1_140, 1_430, 1_730, 1_930] },
  { file: 'rolling_road_40km.gpx', fromM: 9_680, feetM: [325] },
] as const;

/** A found foot further off than this is that of another hill (m). */
const SAME_HILL_M = 40;

function compared({ file, fromM, feetM }: (typeof MARKED)[number]) {
  const made = levelFromRoad(roadOf(collected(file)), {
    fromM,
    toM: fromM + 2_000,
    title: 'R',
    sentence: 'R.',
  });
  if (!made.ok) throw new Error('no level');
  const found = courseOfLevel(made.level).pitches.map(({ footM }) => footM);
  const taken = new Set<number>();
  const offM: number[] = [];
  for (const mark of feetM) {
    const near = found
      .filter((m) => !taken.has(m))
      .toSorted((a, b) => Math.abs(a - mark) - Math.abs(b - mark))[0];
    if (near === undefined || Math.abs(near - mark) > SAME_HILL_M) continue;
    taken.add(near);
    offM.push(Math.abs(near - mark));
  }
  return { marked: feetM.length, found: found.length, offM };
}

describe.skipIf(!collectionIsHere)('pitches of real roads', () => {
  const all = collectionIsHere ? MARKED.map(compared) : [];
  const marked = all.reduce((sum, one) => sum + one.marked, 0);
  const found = all.reduce((sum, one) => sum + one.found, 0);
  const offM = all.flatMap((one) => one.offM).toSorted((a, b) => a - b);

  it('nine of ten that a hand marked are found', () => {
    expect(marked).toBe(29);
    expect(offM.length / marked).toBeGreaterThanOrEqual(0.9);
  });

  it('few are found that no hand marked: small steps within a climb', () => {
    expect((found - offM.length) / found).toBeLessThanOrEqual(0.16);
  });

  it('their feet lie within 15 m of the hand, as a median, and nine of ten within 25 m', () => {
    expect(offM[Math.floor(offM.length / 2)]).toBeLessThanOrEqual(15);
    expect(offM[Math.floor(offM.length * 0.9)]).toBeLessThanOrEqual(25);
  });
});
