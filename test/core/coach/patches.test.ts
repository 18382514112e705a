/** Which patches a child has earned. */
import { describe, expect, it } from 'vitest';
import { earnedPatches } from '../../../src/core/coach/patches.ts';
import type { KeptResult } from '../../../src/core/coach/results.ts';
import { BUNDLED } from '../ride/worlds.ts';

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
});
