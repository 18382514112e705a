/** What may be said of check rides: a retest on another day counts, and chance is not called progress. */
import { expect, test } from 'vitest';
import { chancePoints, findProgress } from '../../../src/core/coach/progress.ts';

const day = 86_400_000;
const ride = (id: string, atMs: number, total: number) => ({ id, atMs, total });

test('without rides, and with one, there is nothing to compare', () => {
  expect(findProgress([])).toEqual({ code: 'need-first' });
  expect(findProgress([ride('a', 0, 40)])).toEqual({ code: 'need-second', first: 40 });
});

test('two rides on one day are a difference, not yet learning', () => {
  expect(findProgress([ride('b', 3_600_000, 70), ride('a', 0, 40)])).toEqual({
    code: 'same-day',
    first: 40,
    latest: 70,
    change: 30,
    chance: 12,
    certain: true,
    before: 1,
    after: 1,
  });
});

test('a retest on another day says after how many days', () => {
  expect(findProgress([ride('a', 0, 40), ride('b', 3 * day, 62)])).toMatchObject({
    code: 'retest',
    change: 22,
    days: 3,
    certain: true,
  });
});

test('a change smaller than chance is not called certain', () => {
  expect(findProgress([ride('a', 0, 60), ride('b', 2 * day, 60 + chancePoints(1, 1) - 1)])).toMatchObject({
    certain: false,
  });
});

test('rides of a day are taken together, at most three, and three on each side see a smaller change', () => {
  const hour = 3_600_000;
  const rides = [60, 62, 64, 90].map((total, i) => ride(`a${i}`, i * hour, total));
  const later = [0, 73, 74, 75].map((total, i) => ride(`b${i}`, 3 * day + i * hour, total));
  expect(findProgress([...rides, ...later])).toEqual({
    code: 'retest',
    first: 62,
    latest: 74,
    change: 12,
    chance: 8,
    certain: true,
    before: 3,
    after: 3,
    days: 3,
  });
  expect(findProgress([rides[2]!, later[1]!])).toMatchObject({ change: 9, chance: 12, certain: false });
});

test('chance falls with the number of rides as a standard error does, but not below that of the day', () => {
  // Standard error of the difference of two means of n: the single one over the root of n (any textbook of statistics).
  const squared = (before: number, after: number): number => chancePoints(before, after) ** 2;
  const day = squared(1e9, 1e9);
  expect(day).toBeGreaterThan(0);
  const single = squared(1, 1) - day;
  // In whole points: half a point either way.
  expect(Math.sqrt(single / 4 + day) - chancePoints(4, 4)).toBeCloseTo(0, -0.3);
  expect(Math.sqrt(single / 2 + day) - chancePoints(1, 1e9)).toBeCloseTo(0, -0.3);
});
