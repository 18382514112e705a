/**
 * Which levers a virtual rider pushes to get some steps easier or harder, with or without a mind for the
 * chain line. When to shift is decided in `riders.ts`; nothing here looks at the road.
 */
import { gearAt } from '../model/machine.ts';
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
  const step = direction === 'easier' ? 1 : -1;
  const next = state.sprocketIndex + step;
  const inside = next >= 0 && next < machine.sprocketCount;
  const straight = (count: number): boolean =>
    !(minds && gearAt(machine, state.ringIndex, state.sprocketIndex + step * count).crossed);
  const room = direction === 'easier' ? machine.sprocketCount - 1 - state.sprocketIndex : state.sprocketIndex;
  let count = Math.min(steps, room);
  while (count > 1 && !straight(count)) count -= 1;
  if (inside && straight(count)) return rearPushes(direction, count);
  const ring = state.ringIndex - step;
  if (ring < 0 || ring >= machine.ringCount) return inside ? rearPushes(direction, 1) : [];
  const front: RideCommand = { kind: 'shift', derailleur: 'front', direction, steps: 1 };
  return [front, ...compensation(world, state, ring, direction, minds)];
}

/** Sprockets to move the other way, so that a ring change is one small step and not a big one. */
function compensation(
  world: RideWorld,
  state: RideState,
  ring: number,
  direction: ShiftDirection,
  minds: boolean,
): RideCommand[] {
  if (!minds) return [];
  const { machine } = world;
  const now = gearAt(machine, state.ringIndex, state.sprocketIndex).developmentM;
  const wanted = direction === 'easier' ? now * 0.9 : now * 1.1;
  const back = direction === 'easier' ? -1 : 1;
  let best = 0;
  let bestMiss = Number.POSITIVE_INFINITY;
  for (let count = 0; count <= 3; count += 1) {
    const sprocket = state.sprocketIndex + back * count;
    if (sprocket < 0 || sprocket >= machine.sprocketCount) break;
    const miss = Math.abs(gearAt(machine, ring, sprocket).developmentM - wanted);
    if (miss < bestMiss) {
      bestMiss = miss;
      best = count;
    }
  }
  const other: ShiftDirection = direction === 'easier' ? 'harder' : 'easier';
  return best === 0 ? [] : rearPushes(other, best);
}

/** Pushes of the rear lever: towards easier one push sweeps, towards harder each click is one sprocket. */
function rearPushes(direction: ShiftDirection, count: number): RideCommand[] {
  if (direction === 'easier') return [{ kind: 'shift', derailleur: 'rear', direction, steps: count }];
  return Array.from({ length: count }, () => ({
    kind: 'shift' as const,
    derailleur: 'rear' as const,
    direction,
    steps: 1,
  }));
}
