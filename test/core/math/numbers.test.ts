/** Arithmetic of our own against the arithmetic of the engine, within what the comments promise. */
import { describe, expect, it } from 'vitest';
import {
  clamp,
  cosOfSlope,
  lerp,
  PI,
  rpmToRadPerS,
  sampleAt,
  smallAtanDeg,
} from '../../../src/core/math/numbers.ts';
import { wholePercents } from '../../../src/core/math/wholePercents.ts';

describe('numbers', () => {
  it('the circle constant is the nearest double', () => {
    expect(PI).toBe(Math.PI);
    expect(rpmToRadPerS(60)).toBeCloseTo(2 * Math.PI, 14);
  });

  it('the small arc tangent is off by less than 1.1e-7 degrees up to a ratio of 0.2', () => {
    for (let ratio = -0.2; ratio <= 0.2; ratio += 0.001)
      expect(Math.abs(smallAtanDeg(ratio) - (Math.atan(ratio) * 180) / Math.PI)).toBeLessThan(1.1e-7);
  });

  it('the cosine of a slope is that of its angle', () => {
    for (const slope of [-0.2, -0.05, 0, 0.08, 0.2])
      expect(cosOfSlope(slope)).toBeCloseTo(Math.cos(Math.atan(slope)), 14);
  });

  it('shares in whole percent add up to 100, and none is more than one off', () => {
    expect(wholePercents([1, 1, 1])).toEqual([34, 33, 33]);
    // Rounded one by one these are 13, 13 and 75.
    expect(wholePercents([1, 1, 6])).toEqual([13, 12, 75]);
    expect(wholePercents([0, 0])).toEqual([0, 0]);
    for (let all = 1; all <= 40; all += 1)
      for (let one = 0; one <= all; one += 1)
        for (let two = 0; two <= all - one; two += 1) {
          const counts = [one, two, all - one - two];
          const percents = wholePercents(counts);
          expect(percents.reduce((sum, percent) => sum + percent)).toBe(100);
          for (const [i, percent] of percents.entries())
            expect(Math.abs(percent - (100 * counts[i]!) / all)).toBeLessThan(1);
        }
  });

  it('clamp and lerp keep their ends', () => {
    expect([clamp(-1, 0, 1), clamp(0.5, 0, 1), clamp(2, 0, 1)]).toEqual([0, 0.5, 1]);
    expect([lerp(2, 4, 0), lerp(2, 4, 0.25), lerp(2, 4, 1)]).toEqual([2, 2.5, 4]);
  });

  it('a table is read between its metres and holds its ends', () => {
    const table = [0, 10, 30];
    expect([-5, 0, 0.5, 1, 1.25, 2, 9].map((x) => sampleAt(table, x))).toEqual([0, 0, 5, 10, 15, 30, 30]);
  });
});
