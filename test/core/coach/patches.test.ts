/** Which patches a child has earned. */
import { describe, expect, it } from 'vitest';
import { changedGear, earnedPatches, earnsPatch } from '../../../src/core/coach/patches.ts';
import type { KeptResult } from '../../../src/core/coach/results.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import { BUNDLED } from '../ride/worlds.ts';
import { groundOf } from './riding.ts';

const LEVELS = BUNDLED.map(({ level }) => level);
const levelFor = (audience: string, teaches: string) =>
  LEVELS.find((level) => level.audience === audience && level.teaches === teaches)!.id;
/** A kept ride of a level with this lesson, so many ms after the first. */
const ride = (teaches: string, atMs: number, audience = 'children'): KeptResult => ({
  id: `ride-${atMs}`,
  atMs,
  levelId: levelFor(audience, teaches),
  levelTitle: '',
  kind: 'ride',
  bikeId: 'kids-20-1x7',
  total: 50,
  marks: { cadence: 50, foresight: null, easing: null, chainLine: null, economy: null },
  passed: false,
});

describe('patches', () => {
  it('are none before the first ride', () => {
    expect(earnedPatches(LEVELS, [])).toEqual([]);
  });

  it('come one a lesson, in the order they were earned, however often a level is ridden', () => {
    const rides = [ride('look-ahead', 4), ride('easing', 1), ride('easing', 3), ride('cadence', 2)];
    expect(earnedPatches(LEVELS, rides)).toEqual(['easing', 'cadence', 'look-ahead']);
  });

  it("belong to the children's levels, and to levels that are here", () => {
    const gone = { ...ride('easing', 1), levelId: 'nobody-has-this' };
    expect(earnedPatches(LEVELS, [ride('cadence', 1, 'everyone'), gone])).toEqual([]);
  });

  const LATER_MS = Date.UTC(2027, 0, 1);
  const EARLIER_MS = Date.UTC(2026, 0, 1);

  it.each(
    LEVELS.filter(({ audience }) => audience === 'children').map((level) => [level.id, level] as const),
  )('%s: are earned by whoever changes gear, and not by whoever presses nothing', (_id, level) => {
    const { world, reference, judge } = groundOf(level, 'kids-20-1x7', 'child-9');
    const idle = rideThrough({ ...world, autoEase: true }, () => []).trace;
    const kept = (trace: typeof idle, atMs: number) => {
      const { cadence, foresight, easing, chainLine, economy } = judge(trace).marks;
      const marks = { cadence, foresight, easing, chainLine, economy };
      const values = Object.entries(marks).map(([name, mark]) => [name, mark.value]);
      return { atMs, marks: Object.fromEntries(values) as KeptResult['marks'] };
    };
    expect([changedGear(idle), changedGear(reference)]).toEqual([false, true]);
    expect(earnsPatch(kept(idle, LATER_MS))).toBe(false);
    expect(earnsPatch(kept(reference, LATER_MS))).toBe(true);
    expect(earnsPatch(kept(idle, EARLIER_MS)), 'what was given before stays').toBe(true);
  });

  it('of a lesson come with the first ride that changed gear', () => {
    const [idle, ridden] = [ride('easing', LATER_MS), ride('easing', LATER_MS + 1)];
    const shifted = { ...ridden, marks: { ...ridden.marks, easing: 0, economy: 100 } };
    expect(earnedPatches(LEVELS, [idle])).toEqual([]);
    expect(earnedPatches(LEVELS, [idle, shifted])).toEqual(['easing']);
  });
});
