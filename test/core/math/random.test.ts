/** Seeded chance: the same seed gives the same numbers, spread as they should be. */
import { describe, expect, it } from 'vitest';
import { between, deriveSeed, seededRandom } from '../../../src/core/math/random.ts';
import { roughNormal } from './roughNormal.ts';

const take = (seed: number, count: number): number[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => random());
};

describe('seeded chance', () => {
  it('repeats itself for a seed and differs between seeds', () => {
    expect(take(42, 100)).toEqual(take(42, 100));
    expect(take(42, 100)).not.toEqual(take(43, 100));
  });

  it('keeps its first numbers for ever, since roads are made of them', () => {
    expect(take(1, 3)).toEqual([0.6270739405881613, 0.002735721180215478, 0.5274470399599522]);
  });

  it('lies in [0, 1) and is spread evenly over ten bins', () => {
    const bins = new Array<number>(10).fill(0);
    for (const value of take(5, 20_000)) {
      expect(value >= 0 && value < 1).toBe(true);
      bins[Math.floor(value * 10)]! += 1;
    }
    for (const count of bins) expect(Math.abs(count - 2000)).toBeLessThan(200);
  });

  it('the rough normal has mean 0 and standard deviation 1 and stays within 6', () => {
    const random = seededRandom(9);
    const values = Array.from({ length: 20_000 }, () => roughNormal(random));
    const mean = values.reduce((a, b) => a + b, 0) / values.length;
    const sd = Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / values.length);
    expect(Math.abs(mean)).toBeLessThan(0.03);
    expect(Math.abs(sd - 1)).toBeLessThan(0.03);
    expect(Math.max(...values.map(Math.abs))).toBeLessThanOrEqual(6);
  });

  it('purposes draw from streams of their own', () => {
    const seeds = ['piece 0', 'piece 1', 'virtual rider'].flatMap((p) => [
      deriveSeed(1, p),
      deriveSeed(2, p),
    ]);
    expect(new Set(seeds).size).toBe(6);
    expect(seeds.every(Number.isInteger)).toBe(true);
  });

  it('between stays between', () => {
    const random = seededRandom(3);
    for (let i = 0; i < 1000; i += 1) {
      const value = between(random, -2, 5);
      expect(value >= -2 && value < 5).toBe(true);
    }
  });
});
