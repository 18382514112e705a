/** Which land a road leads through. A level says so itself; where it says nothing, its seed does. Pure. */
import type { Scenery } from '../../game/engine/types.ts';
import { type Level, PLACES } from '../../core/level/schema.ts';

export function sceneryOf(level: Level, numbers: boolean): Scenery {
  const { light, seed, company = [], air = 'clear' } = level;
  // Every check ride looks alike, so that nothing but the road tells two of them apart.
  const bySeed = level.teaches === 'check' ? 'valley' : (PLACES[seed % PLACES.length] ?? 'valley');
  return {
    place: level.place ?? bySeed,
    light,
    air,
    company,
    apples: level.carries === 'apples',
    seed,
    numbers,
  };
}
