/** What is kept of a best ride, for judging others against it, holds for the world it was found on and for no other. */
import { expect, test } from 'vitest';
import { judgePitches } from '../../../src/core/coach/foresight.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { groundOf, LEVELS } from './riding.ts';

test('a best ride that was asked about on one world answers anew for another', () => {
  const { world, reference } = groundOf(LEVELS[0]!, 'trekking-3x8', 'adult-weekly');
  const stronger = buildRideWorld(world.course, bikeById('trekking-3x8')!, riderById('adult-strong')!);
  const here = judgePitches(world, reference, reference);
  const there = judgePitches(stronger, reference, reference);
  expect(there).toEqual(judgePitches(stronger, reference, { ...reference }));
  expect(there).not.toEqual(here);
  expect(judgePitches(world, reference, reference)).toEqual(here);
});
