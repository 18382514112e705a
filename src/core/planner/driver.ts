/**
 * Rides a policy through the real step like a practised person: looks a moment ahead, eases, pushes the
 * lever, lets the chain settle, presses on. What comes out is an ordinary ride with an ordinary recording.
 */
import { brakeForLine, mayShiftStanding, softFeet, waitForMotorS } from '../ride/pilot.ts';
import type { Controller } from '../ride/run.ts';
import { TICKS_PER_S } from '../ride/clock.ts';
import { isShifting } from '../ride/step.ts';
import type { RideCommand, RideState, RideWorld } from '../ride/types.ts';
import { gearNumber, type Move, pushesFor } from '../model/transmission.ts';
import type { Policy } from './plan.ts';
import { EASE_BEFORE_S, LONGEST_MANOEUVRE_S, SETTLE_S } from './script.ts';

/** The policy is asked about the state this much later, because easing and cable take time (s). */
const FORESEE_S = 0.3;
/**
 * A manoeuvre must save at least this much per metre against waiting; keeps the driver from dithering between
 * equals. The policy tells what is saved against waiting one stage, so the length of a stage comes in.
 */
const WORTH_IT_PER_M = 0.033;
/** Ticks between two questions to the policy. */
const ASK_EVERY = 4;

interface Going {
  readonly move: Move;
  readonly pushTick: number;
  readonly giveUpTick: number;
}

export function policyDriver(world: RideWorld, policy: Policy): Controller {
  const brake = brakeForLine(world);
  let manoeuvre: Going | null = null;
  let restUntilTick = 0;
  return (state) => {
    const braked = brake(state);
    if (manoeuvre !== null) {
      const commands: RideCommand[] = [...braked];
      if (state.tick === manoeuvre.pushTick) commands.push(...pushes(manoeuvre.move));
      if (isDone(state, manoeuvre)) {
        commands.push({ kind: 'pressure', pressure: 'steady' });
        manoeuvre = null;
        restUntilTick = state.tick + Math.round(SETTLE_S * TICKS_PER_S);
      }
      return commands;
    }
    const braking = state.braking || braked.length > 0;
    const standing = mayShiftStanding(world, state);
    if ((state.phase !== 'riding' && !standing) || braking || state.startingUp) return braked;
    if (state.tick < restUntilTick || state.tick % ASK_EVERY !== 0 || isShifting(state)) return braked;
    const gear = gearNumber(world.machine, state);
    const askedM = standing
      ? lastStageBefore(world, state, policy.grid.stepM)
      : state.distanceM + state.speedMps * FORESEE_S;
    const advice = policy.advise(askedM, state.speedMps, gear);
    if (advice.move === null || advice.saving < WORTH_IT_PER_M * policy.grid.stepM) return braked;
    manoeuvre = {
      move: advice.move,
      pushTick: state.tick + Math.round((EASE_BEFORE_S + waitForMotorS(world)) * TICKS_PER_S),
      giveUpTick: state.tick + Math.round(LONGEST_MANOEUVRE_S * TICKS_PER_S),
    };
    return [...braked, { kind: 'pressure', pressure: softFeet(world, state) }];
  };
}

/** The beginning of the stage in which the line lies that one waits at (m). */
function lastStageBefore({ course }: RideWorld, state: RideState, stepM: number): number {
  const lineM = course.stopLinesM[state.nextStopIndex - 1] ?? state.distanceM;
  return (Math.ceil(lineM / stepM) - 1) * stepM;
}

function isDone(state: RideState, manoeuvre: Going): boolean {
  if (state.tick > manoeuvre.giveUpTick) return true;
  return state.tick > manoeuvre.pushTick && !isShifting(state);
}

function pushes(move: Move): RideCommand[] {
  return pushesFor(move).map((push) => ({ kind: 'shift', ...push }));
}
