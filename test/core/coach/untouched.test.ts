/** A ride on which no lever was touched: what it is told is about the hills, and it is not asked how it timed its shifts. */
import { expect, test } from 'vitest';
import { groundOf, LEVELS, PAIRS } from './riding.ts';

test.each(PAIRS)(
  '$bikeId: who touched no lever hears of the hills, not of easing, and is asked nothing',
  ({ bikeId, riderId }) => {
    const level = LEVELS.find(({ id }) => id === 'three-little-hills')!;
    const report = groundOf(level, bikeId, riderId).named('never');
    expect(report.shifts).toEqual([]);
    expect(report.guessPitch).toBeNull();
    expect(report.holds[0]).toMatchObject({ code: 'weakest', mark: 'foresight' });
    expect(report.verdict.change.code).not.toBe('easing');
  },
);
