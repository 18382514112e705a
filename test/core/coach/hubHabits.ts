/** Riders with the habits of the other kind of bike: pedalling on through the shift of a hub, resting through that of a chain. */
import { habitsForSkill, NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import type { Controller } from '../../../src/core/ride/run.ts';
import type { RideCommand, RideWorld } from '../../../src/core/ride/types.ts';

/** Somebody who looks ahead and pedals on through every shift. */
export function pedalsOn(world: RideWorld, skill: number, seed: number): Controller {
  return virtualRider(world, { ...habitsForSkill(skill), easingShare: 0, fidgetsPerMinute: 0 }, seed);
}

/** Legs must have come to rest before the lever is pushed, and rest so long after it (ticks). */
const REST_BEFORE = 60;
const REST_AFTER = 24;

/** Somebody who looks ahead, stops the legs for every shift and then pushes on, whatever the chain does. */
export function restsForShifts(world: RideWorld, seed: number): Controller {
  const rider = virtualRider(world, { ...NAMED_HABITS.early, easingShare: 1 }, seed);
  let held: RideCommand[] = [];
  let pushTick = -1;
  return (state) => {
    const out: RideCommand[] = [];
    for (const command of rider(state)) {
      if (command.kind === 'shift') held.push(command);
      else if (command.kind === 'brake' || pushTick < 0) out.push(command);
    }
    if (held.length > 0 && pushTick < 0) {
      out.push({ kind: 'pressure', pressure: 'coast' });
      pushTick = state.tick + REST_BEFORE;
    }
    if (state.tick === pushTick) {
      out.push(...held);
      held = [];
    }
    if (pushTick >= 0 && state.tick === pushTick + REST_AFTER) {
      out.push({ kind: 'pressure', pressure: 'steady' });
      pushTick = -1;
    }
    return out;
  };
}
