/**
 * Which levers a virtual rider pushes to get some steps easier or harder, with or without a mind for the
 * chain line. When to shift is decided in `riders.ts`; nothing here looks at the road.
 */
import { afterPush, gearOf, type Push, pushed, pushesFor, roomFor } from '../model/transmission.ts';
import type { GearPlace } from '../model/types.ts';
import type { RideCommand, RideState, RideWorld, ShiftDirection } from './types.ts';

/** The lever pushes for some steps easier or harder; those who mind the chain line change rings in good time. */
export function shiftCommands(
  world: RideWorld,
  state: RideState,
  direction: ShiftDirection,
  minds: boolean,
  steps = 1,
): RideCommand[] {
  const { machine } = world;
  const behind = (count: number): Push => ({ derailleur: 'rear', direction, steps: count });
  const room = roomFor(machine, state, 'rear', direction);
  const straight = (count: number): boolean =>
    !(minds && gearOf(machine, afterPush(state, behind(count))).crossed);
  let count = Math.min(steps, room);
  while (count > 1 && !straight(count)) count -= 1;
  if (room > 0 && straight(count)) return rearPushes(direction, count);
  const front: Push = { derailleur: 'front', direction, steps: 1 };
  const ring = pushed(machine, state, front);
  if (ring === null) return room > 0 ? rearPushes(direction, 1) : [];
  return [{ kind: 'shift', ...front }, ...compensation(world, state, ring, direction, minds)];
}

/** Sprockets to move the other way, so that a ring change is one small step and not a big one. */
function compensation(
  world: RideWorld,
  state: RideState,
  onRing: GearPlace,
  direction: ShiftDirection,
  minds: boolean,
): RideCommand[] {
  if (!minds) return [];
  const { machine } = world;
  const now = gearOf(machine, state).developmentM;
  const wanted = direction === 'easier' ? now * 0.9 : now * 1.1;
  const other: ShiftDirection = direction === 'easier' ? 'harder' : 'easier';
  let best = 0;
  let bestMiss = Number.POSITIVE_INFINITY;
  for (let count = 0; count <= 3; count += 1) {
    const place = pushed(machine, onRing, { derailleur: 'rear', direction: other, steps: count });
    if (place === null) break;
    const miss = Math.abs(gearOf(machine, place).developmentM - wanted);
    if (miss < bestMiss) {
      bestMiss = miss;
      best = count;
    }
  }
  return best === 0 ? [] : rearPushes(other, best);
}

function rearPushes(direction: ShiftDirection, count: number): RideCommand[] {
  const rearSteps = direction === 'easier' ? count : -count;
  return pushesFor({ rearSteps, ringSteps: 0 }).map((push) => ({ kind: 'shift', ...push }));
}
