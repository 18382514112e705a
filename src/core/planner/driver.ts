/**
 * Rides a policy through the real step like a practised person: looks a moment ahead, eases, pushes the
 * lever, lets the chain settle, presses on. What comes out is an ordinary ride with an ordinary recording.
 */
import { brakeForLine } from '../ride/pilot.ts';
import type { Controller } from '../ride/run.ts';
import type { RideCommand, RideState, RideWorld } from '../ride/types.ts';
import { gearNumber, type Move, pushesFor } from '../model/transmission.ts';
import type { Policy } from './plan.ts';

/** Pedals are eased this long before the lever is pushed (s). */
const EASE_BEFORE_S = 0.25;
/** The policy is asked about the state this much later, because easing and cable take time (s). */
const FORESEE_S = 0.3;
/**
 * A manoeuvre must save at least this much per metre against waiting; keeps the driver from dithering between
 * equals. The policy tells what is saved against waiting one stage, so the length of a stage comes in.
 */
const WORTH_IT_PER_M = 0.033;
/** After a manoeuvre the legs settle for so long before the next (s). */
const SETTLE_S = 0.3;
/** Ticks between two questions to the policy. */
const ASK_EVERY = 4;
/** Easing is only ended early to push on where the chain has long been waiting (s). */
const LONGEST_MANOEUVRE_S = 6;

interface Manoeuvre {
  readonly move: Move;
  readonly pushTick: number;
  readonly giveUpTick: number;
}

/** A controller that follows the policy. */
export function policyDriver(world: RideWorld, policy: Policy): Controller {
  const brake = brakeForLine(world);
  let manoeuvre: Manoeuvre | null = null;
  let restUntilTick = 0;
  return (state) => {
    const braked = brake(state);
    if (manoeuvre !== null) {
      const commands: RideCommand[] = [...braked];
      if (state.tick === manoeuvre.pushTick) commands.push(...pushes(manoeuvre.move));
      if (isDone(state, manoeuvre)) {
        commands.push({ kind: 'pressure', pressure: 'steady' });
        manoeuvre = null;
        restUntilTick = state.tick + Math.round(SETTLE_S * 120);
      }
      return commands;
    }
    const braking = state.braking || braked.length > 0;
    if (state.phase !== 'riding' || braking || state.startingUp) return braked;
    if (state.tick < restUntilTick || state.tick % ASK_EVERY !== 0 || busy(state)) return braked;
    const gear = gearNumber(world.machine, state);
    const advice = policy.advise(state.distanceM + state.speedMps * FORESEE_S, state.speedMps, gear);
    if (advice.move === null || advice.saving < WORTH_IT_PER_M * policy.grid.stepM) return braked;
    manoeuvre = {
      move: advice.move,
      pushTick: state.tick + Math.round(EASE_BEFORE_S * 120),
      giveUpTick: state.tick + Math.round(LONGEST_MANOEUVRE_S * 120),
    };
    return [...braked, { kind: 'pressure', pressure: 'ease' }];
  };
}

function busy(state: RideState): boolean {
  return state.rear !== null || state.front !== null || state.queue.length > 0;
}

function isDone(state: RideState, manoeuvre: Manoeuvre): boolean {
  if (state.tick > manoeuvre.giveUpTick) return true;
  return state.tick > manoeuvre.pushTick && !busy(state);
}

/** Lever pushes of a manoeuvre. */
function pushes(move: Move): RideCommand[] {
  return pushesFor(move).map((push) => ({ kind: 'shift', ...push }));
}
