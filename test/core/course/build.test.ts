/** Roads out of pieces: lengths, joins, heights, things laid over, and seeds. */
import { describe, expect, it } from 'vitest';
import {
  buildCourse,
  LONGEST_JOIN_M,
  OPEN_SIGHT_M,
  SHORTEST_JOIN_M,
} from '../../../src/core/course/build.ts';
import { type Piece, pieceLengthM } from '../../../src/core/course/pieces.ts';

type CoursePlan = Parameters<typeof buildCourse>[0];

function plan(pieces: readonly Piece[], more: Partial<CoursePlan> = {}): CoursePlan {
  return { pieces, joinM: 10, seed: 1, stopLinesM: [], winds: [], surfaces: [], hidden: [], ...more };
}

const flat = (lengthM: number): Piece => ({ kind: 'flat', lengthM });
const climb = (lengthM: number, slopeRatio: number): Piece => ({ kind: 'climb', lengthM, slopeRatio });

describe('a road out of pieces', () => {
  it('is as long as its pieces and has a sample for every metre and one more', () => {
    const course = buildCourse(plan([flat(100), climb(50, 0.05), flat(30)]));
    expect([course.lengthM, course.slopeRatio.length, course.heightM.length]).toEqual([180, 181, 181]);
  });

  it('100 m at 8 % climb 100 × sin(atan 0.08) m', () => {
    const course = buildCourse(plan([climb(100, 0.08)]));
    expect(course.heightM[100]).toBeCloseTo(100 * Math.sin(Math.atan(0.08)), 9);
  });

  it.each([
    [6, 6],
    [10, 10],
    [20, 20],
    [2, SHORTEST_JOIN_M],
    [50, LONGEST_JOIN_M],
  ])(
    'a join of %d m changes slope over %d m in even steps, half before and half behind the corner',
    (joinM, really) => {
      const course = buildCourse(plan([flat(100), climb(100, 0.08)], { joinM }));
      const from = 100 - really / 2;
      for (let i = 0; i <= really; i += 1)
        expect(course.slopeRatio[from + i]).toBeCloseTo((0.08 * i) / really, 12);
      expect(
        [course.slopeRatio[from - 1], course.slopeRatio[100 + really / 2 + 1]].map((s) => s?.toFixed(9)),
      ).toEqual(['0.000000000', '0.080000000']);
    },
  );

  it('a descent goes down whichever sign it is given', () => {
    const down = (slopeRatio: number) => buildCourse(plan([{ kind: 'descent', lengthM: 100, slopeRatio }]));
    expect(down(0.04).heightM[100]).toBeLessThan(-3.9);
    expect(down(-0.04)).toEqual(down(0.04));
  });

  it('recorded heights are met where they were recorded, but for the joins', () => {
    const heightsM = [0, 1, 3, 4, 4, 2, 0, 0];
    const piece: Piece = { kind: 'recorded', stepM: 20, heightsM };
    const course = buildCourse(plan([piece], { joinM: 6 }));
    expect([course.lengthM, pieceLengthM(piece)]).toEqual([140, 140]);
    heightsM.forEach((height, k) =>
      expect(Math.abs((course.heightM[k * 20] ?? 0) - height)).toBeLessThan(0.12),
    );
  });

  it('waves never exceed their steepest, start level, and go up as well as down', () => {
    for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const course = buildCourse(
        plan([{ kind: 'rollers', lengthM: 1200, waveM: 200, steepestRatio: 0.05 }], { seed }),
      );
      const slopes = [...course.slopeRatio];
      expect(Math.max(...slopes.map(Math.abs))).toBeLessThanOrEqual(0.05);
      expect(Math.max(...slopes)).toBeGreaterThan(0.02);
      expect(Math.min(...slopes)).toBeLessThan(-0.02);
      expect(Math.abs(slopes[0] ?? 1)).toBeLessThan(0.005);
    }
  });

  it('seeded pitches have the same set of steepnesses for every seed, in another order and place', () => {
    const course = (seed: number) =>
      buildCourse(
        plan(
          [
            {
              kind: 'random-pitches',
              lengthM: 1500,
              pitchCount: 5,
              gentlestRatio: 0.05,
              steepestRatio: 0.11,
            },
          ],
          { seed },
        ),
      );
    const steep = (seed: number) => course(seed).pitches.map((p) => p.steepestRatio.toFixed(6));
    const feet = (seed: number) => course(seed).pitches.map((p) => p.footM);
    for (const seed of [2, 3, 4, 5]) {
      expect([...steep(seed)].sort()).toEqual([...steep(1)].sort());
      expect(feet(seed)).not.toEqual(feet(1));
      expect(Math.abs((course(seed).heightM[1500] ?? 0) - (course(1).heightM[1500] ?? 0))).toBeLessThan(0.5);
    }
  });

  it('the same plan gives the same road, bit for bit', () => {
    const p = plan([{ kind: 'rollers', lengthM: 900, waveM: 150, steepestRatio: 0.06 }], { seed: 99 });
    expect(buildCourse(p)).toEqual(buildCourse(p));
  });

  it('changing one piece leaves the chance in the others alone', () => {
    const waves: Piece = { kind: 'rollers', lengthM: 400, waveM: 150, steepestRatio: 0.06 };
    const a = buildCourse(plan([flat(100), waves]));
    const b = buildCourse(plan([flat(200), waves]));
    for (let i = 30; i < 400; i += 10) expect(b.slopeRatio[200 + i]).toBe(a.slopeRatio[100 + i]);
  });
});

describe('things laid over a road', () => {
  const course = buildCourse(
    plan([flat(200)], {
      stopLinesM: [150, 50],
      winds: [{ fromM: 20, toM: 40, windMps: 3 }],
      surfaces: [{ fromM: 60, toM: 70, rollingFactor: 2 }],
      hidden: [{ fromM: 190, toM: 400, sightM: 15 }],
    }),
  );

  it('hold from their beginning to their end, and nowhere else', () => {
    expect([19, 20, 40, 41].map((i) => course.windMps[i])).toEqual([0, 3, 3, 0]);
    expect([59, 60, 70, 71].map((i) => course.rollingFactor[i])).toEqual([1, 2, 2, 1]);
    expect([189, 190, 200].map((i) => course.sightM[i])).toEqual([OPEN_SIGHT_M, 15, 15]);
  });

  it('stop lines come in riding order', () => {
    expect(course.stopLinesM).toEqual([50, 150]);
  });
});
