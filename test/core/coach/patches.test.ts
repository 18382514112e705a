/** Which patches a child has earned. */
import { describe, expect, it } from 'vitest';
import { type PatchResult, patchesOf } from '../../../src/core/coach/patches.ts';

const ride = (teaches: PatchResult['teaches'], rest: Partial<PatchResult> = {}): PatchResult => ({
  audience: 'children',
  teaches,
  finished: true,
  ...rest,
});

describe('patches', () => {
  it('are none before the first ride', () => {
    expect(patchesOf([])).toEqual([]);
  });

  it('come one a lesson, in the order they were earned, however often a level is ridden', () => {
    const rides = [ride('easing'), ride('levers'), ride('easing'), ride('look-ahead')];
    expect(patchesOf(rides)).toEqual(['easing', 'levers', 'look-ahead']);
  });

  it('are not earned by a ride that was broken off, and not lost by one either', () => {
    expect(patchesOf([ride('easing', { finished: false })])).toEqual([]);
    expect(patchesOf([ride('easing'), ride('easing', { finished: false })])).toEqual(['easing']);
  });

  it("belong to the children's levels", () => {
    expect(patchesOf([ride('cadence', { audience: 'everyone' })])).toEqual([]);
  });
});
