/** Levels made from a seed: valid, repeatable, and equally hard where they must be. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkedApart } from '../../../src/core/coach/ladder.ts';
import { bikeById } from '../../../src/core/model/presets.ts';
import { courseOfLevel, levelHash } from '../../../src/core/level/build.ts';
import { checkLevel, freeLevel, nextDifficultyStep, levelAtStep } from '../../../src/core/level/generate.ts';
import { levelLengthM, parseLevel } from '../../../src/core/level/parse.ts';

const seeds = fc.integer({ min: 0, max: 4_294_967_295 });

describe('check rides', () => {
  test('every seed has the same pitches in another order', () => {
    const steepness = (seed: number) =>
      courseOfLevel(checkLevel(seed, 'everyone'))
        .pitches.map((pitch) => Math.round(pitch.steepestRatio * 1000))
        .sort((a, b) => a - b);
    const first = steepness(1);
    expect(first.length).toBeGreaterThanOrEqual(8);
    fc.assert(
      fc.property(seeds, (seed) => {
        expect(steepness(seed)).toEqual(first);
      }),
    );
  });

  test('another seed is another road', () => {
    const a = courseOfLevel(checkLevel(1, 'everyone')).slopeRatio;
    const b = courseOfLevel(checkLevel(2, 'everyone')).slopeRatio;
    expect([...a]).not.toEqual([...b]);
  });

  test('no aid is on', () => {
    for (const audience of ['everyone', 'children'] as const)
      expect(Object.values(checkLevel(5, audience).aids).every((on) => !on)).toBe(true);
  });

  test.each([
    ['hub', 'everyone'],
    ['hub', 'children'],
    ['crank-motor', 'everyone'],
    ['wheel-motor', 'everyone'],
  ] as const)('that of a %s for %s is let in, and has the same hills from every seed', (needs, audience) => {
    const hills = (seed: number) =>
      courseOfLevel(checkLevel(seed, audience, 'alone', needs))
        .pitches.map((pitch) => Math.round(pitch.steepestRatio * 1000))
        .sort((a, b) => a - b);
    const level = checkLevel(1, audience, 'alone', needs);
    expect(parseLevel(JSON.parse(JSON.stringify(level)))).toMatchObject({ ok: true });
    expect(hills(1).length).toBeGreaterThanOrEqual(10);
    expect([2, 7_777, 4_294_967_295].map(hills)).toEqual([hills(1), hills(1), hills(1)]);
    expect(levelHash(checkLevel(2, audience, 'alone', needs))).toBe(levelHash(level));
    expect(levelHash(level)).not.toBe(levelHash(checkLevel(1, audience)));
    const { pitches } = courseOfLevel(level);
    expect(level.stopLinesM).toHaveLength(needs === 'hub' ? 2 : 0);
    for (const lineM of level.stopLinesM)
      expect(pitches.some(({ footM }) => footM > lineM && footM < lineM + 30)).toBe(true);
  });

  test('each bike gets the one it needs; no child’s is about a motor', () => {
    const asked = (id: string, audience: 'everyone' | 'children') => checkedApart(bikeById(id)!, audience);
    expect(asked('road-2x11', 'everyone')).toBeUndefined();
    expect([asked('kids-20-hub-3', 'children'), asked('town-hub-7', 'everyone')]).toEqual(['hub', 'hub']);
    expect(asked('trekking-hub-8-crank', 'everyone')).toBe('crank-motor');
    expect(asked('town-hub-7-wheel', 'everyone')).toBe('wheel-motor');
    expect(asked('trekking-1x10-crank', 'children')).toBeUndefined();
  });
});

describe('free rides', () => {
  test('any wish gives a level that the door lets in, of about the length asked for', () => {
    fc.assert(
      fc.property(
        seeds,
        fc.double({ min: -1, max: 2, noNaN: true }),
        fc.integer({ min: 0, max: 20_000 }),
        (seed, hilliness, lengthM) => {
          const level = freeLevel({ seed, hilliness, lengthM });
          expect(parseLevel(JSON.parse(JSON.stringify(level)))).toMatchObject({ ok: true });
          const wanted = Math.min(10_000, Math.max(500, lengthM));
          expect(Math.abs(levelLengthM(level) - wanted)).toBeLessThan(40);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('hillier means more climbing', () => {
    const ascent = (hilliness: number) => {
      const { heightM } = courseOfLevel(freeLevel({ seed: 3, hilliness, lengthM: 3000 }));
      let up = 0;
      for (let i = 1; i < heightM.length; i += 1) up += Math.max(0, heightM[i]! - heightM[i - 1]!);
      return up;
    };
    expect(ascent(1)).toBeGreaterThan(ascent(0.5));
    expect(ascent(0.5)).toBeGreaterThan(ascent(0));
  });
});

describe('difficulty that follows the rider', () => {
  test('two good rides go up one step, two poor ones down, one of each stays', () => {
    expect(nextDifficultyStep(0, [80, 85], 70)).toBe(1);
    expect(nextDifficultyStep(0, [40, 30], 70)).toBe(-1);
    expect(nextDifficultyStep(0, [85, 30], 70)).toBe(0);
    expect(nextDifficultyStep(0, [85], 70)).toBe(0);
    expect(nextDifficultyStep(3, [99, 99], 70)).toBe(3);
    expect(nextDifficultyStep(-2, [1, 1], 70)).toBe(-2);
  });

  test('a harder version is steeper and hides the feet of its pitches; a gentler one is flatter', () => {
    const level = checkLevel(7, 'everyone');
    const steepest = (difficultyStep: number) =>
      Math.max(...courseOfLevel(levelAtStep(level, difficultyStep, 7)).slopeRatio);
    expect(steepest(2)).toBeGreaterThan(steepest(0) * 1.2);
    expect(steepest(-2)).toBeLessThan(steepest(0) * 0.8);
    expect(levelAtStep(level, 2, 7).hidden.length).toBeGreaterThan(0);
    expect(levelAtStep(level, -2, 7).hidden).toEqual(level.hidden);
  });

  test('every notch of a valid level is a valid level with a fingerprint of its own', () => {
    const level = checkLevel(9, 'everyone');
    const hashes = [-2, -1, 0, 1, 2, 3].map((difficultyStep) => {
      const other = levelAtStep(level, difficultyStep, 9);
      expect(parseLevel(JSON.parse(JSON.stringify(other)))).toMatchObject({ ok: true });
      return levelHash(other);
    });
    expect(new Set(hashes).size).toBe(6);
  });
});
