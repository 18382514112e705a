/** What may be said of check rides: a retest on another day counts, and chance is not called progress. */
import { expect, test } from 'vitest';
import { CHANCE_POINTS, findProgress } from '../../../src/core/coach/progress.ts';

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
    certain: true,
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
  expect(findProgress([ride('a', 0, 60), ride('b', 2 * day, 60 + CHANCE_POINTS - 1)])).toMatchObject({
    certain: false,
  });
});
