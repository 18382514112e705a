/**
 * The derailleurs' part of a step: lever pushes are queued, wait for cable or motor, and then move the
 * chain as fast as cranks and load allow. Rear and front work side by side.
 */
import { gearAt } from '../model/machine.ts';
import {
  DROP_LOAD,
  HUNG_AFTER_S,
  HUNG_RATE,
  neededTurns,
  RESTORE_TURNS,
  SWEEP_SPROCKETS,
  shiftRate,
} from '../model/shift.ts';
import type { Machine } from '../model/types.ts';
import type {
  Derailleur,
  QueuedShift,
  RideCommand,
  RideEvent,
  RideState,
  RideWorld,
  ShiftDirection,
  ShiftInProgress,
} from './types.ts';

/** Pushes that are remembered; more are ignored, as a rider's thumb would find out. */
const QUEUE_LIMIT = 8;
/** Legs up to here may lift a dropped chain back on. */
const RESTORE_PRESSURE = 0.5;

/** The changing half of the drivetrain while one tick is worked out. */
export interface ChainDraft {
  ringIndex: number;
  sprocketIndex: number;
  rear: ShiftInProgress | null;
  front: ShiftInProgress | null;
  queue: readonly QueuedShift[];
  chainOn: boolean;
}

/** Index change of a direction: easier is a bigger sprocket, but a smaller ring. */
export function indexStep(derailleur: Derailleur, direction: ShiftDirection): 1 | -1 {
  return (derailleur === 'rear') === (direction === 'easier') ? 1 : -1;
}

/** Queues a lever push, or says why not. */
export function queueShift(
  world: RideWorld,
  state: RideState,
  chain: ChainDraft,
  command: Extract<RideCommand, { kind: 'shift' }>,
  events: RideEvent[],
): void {
  const { derailleur, direction } = command;
  const { machine } = world;
  const restoring = !chain.chainOn && derailleur === 'front';
  const wanted = direction === 'easier' && derailleur === 'rear' ? command.steps : 1;
  const planned = plannedIndex(chain, derailleur);
  const room = roomFor(machine, planned, derailleur, direction);
  const steps = Math.min(Math.max(1, Math.round(wanted)), SWEEP_SPROCKETS, room);
  const refuse = (reason: 'no-more' | 'crossed'): void => {
    events.push({
      kind: 'shift-refused',
      derailleur,
      direction,
      reason,
      tick: state.tick,
      distanceM: state.distanceM,
    });
  };
  if (steps < 1 && !restoring) return refuse('no-more');
  if (wouldCross(machine, chain, derailleur, planned + steps * indexStep(derailleur, direction)))
    return refuse('crossed');
  if (chain.queue.length >= QUEUE_LIMIT) return;
  chain.queue = [
    ...chain.queue,
    { derailleur, direction, steps: Math.max(1, steps), delayS: machine.shiftDelayS },
  ];
}

/** Lets delays run, starts what is due and moves the chain by one tick. */
export function advanceShift(
  world: RideWorld,
  state: RideState,
  chain: ChainDraft,
  events: RideEvent[],
): void {
  if (chain.queue.length > 0) {
    chain.queue = chain.queue.map((push) =>
      push.delayS > 0 ? { ...push, delayS: push.delayS - world.tickS } : push,
    );
    startDue(state, chain, 'rear');
    startDue(state, chain, 'front');
  }
  if (chain.rear !== null) move(world, state, chain, 'rear', chain.rear, events);
  if (chain.front !== null) move(world, state, chain, 'front', chain.front, events);
}

function startDue(state: RideState, chain: ChainDraft, derailleur: Derailleur): void {
  if (chain[derailleur] !== null) return;
  const at = chain.queue.findIndex((push) => push.derailleur === derailleur);
  const push = chain.queue[at];
  if (push === undefined || push.delayS > 0) return;
  chain.queue = chain.queue.filter((_, i) => i !== at);
  const fromIndex = derailleur === 'rear' ? chain.sprocketIndex : chain.ringIndex;
  chain[derailleur] = beginMovement(
    chain,
    derailleur,
    push.direction,
    fromIndex,
    push.steps - 1,
    state.distanceM,
  );
}

function beginMovement(
  chain: ChainDraft,
  derailleur: Derailleur,
  direction: ShiftDirection,
  fromIndex: number,
  stepsLeft: number,
  startedAtM: number,
): ShiftInProgress {
  const restoring = !chain.chainOn && derailleur === 'front';
  return {
    direction,
    fromIndex,
    toIndex: fromIndex + indexStep(derailleur, direction),
    stepsLeft,
    neededTurns: restoring ? RESTORE_TURNS : neededTurns(derailleur, direction),
    doneTurns: 0,
    rate: 1,
    movingS: 0,
    loadSecondsSum: 0,
    startedAtM,
    hungReported: false,
    waitReported: false,
  };
}

function move(
  world: RideWorld,
  state: RideState,
  chain: ChainDraft,
  derailleur: Derailleur,
  shift: ShiftInProgress,
  events: RideEvent[],
): void {
  const at = { tick: state.tick, distanceM: state.distanceM };
  const blocked = !chain.chainOn && (derailleur === 'rear' || state.pressureRatio > RESTORE_PRESSURE);
  if (state.cadenceRpm <= 0 || blocked) {
    if (!shift.waitReported) events.push({ kind: 'shift-waiting', derailleur, ...at });
    chain[derailleur] = shift.waitReported ? shift : { ...shift, waitReported: true };
    return;
  }
  const loadRatio = state.crankTorqueNm / world.machine.referenceTorqueNm;
  const rate = shiftRate(loadRatio);
  const movingS = shift.movingS + world.tickS;
  const hung = rate < HUNG_RATE && movingS > HUNG_AFTER_S;
  if (hung && !shift.hungReported) events.push({ kind: 'shift-hung', derailleur, ...at });
  const next: ShiftInProgress = {
    direction: shift.direction,
    fromIndex: shift.fromIndex,
    toIndex: shift.toIndex,
    stepsLeft: shift.stepsLeft,
    neededTurns: shift.neededTurns,
    doneTurns: shift.doneTurns + (state.cadenceRpm / 60) * world.tickS * rate,
    rate,
    movingS,
    loadSecondsSum: shift.loadSecondsSum + loadRatio * world.tickS,
    startedAtM: shift.startedAtM,
    hungReported: shift.hungReported || hung,
    waitReported: shift.waitReported,
  };
  if (next.doneTurns < next.neededTurns) chain[derailleur] = next;
  else finishMovement(world, chain, derailleur, next, at, events);
}

function finishMovement(
  world: RideWorld,
  chain: ChainDraft,
  derailleur: Derailleur,
  shift: ShiftInProgress,
  at: { tick: number; distanceM: number },
  events: RideEvent[],
): void {
  const { machine } = world;
  const load = shift.loadSecondsSum / shift.movingS;
  const last = (derailleur === 'rear' ? machine.sprocketCount : machine.ringCount) - 1;
  const toIndex = Math.min(last, Math.max(0, shift.toIndex));
  const crossedBefore = gearAt(machine, chain.ringIndex, chain.sprocketIndex).crossed;
  if (derailleur === 'rear') chain.sprocketIndex = toIndex;
  else chain.ringIndex = toIndex;
  chain[derailleur] =
    shift.stepsLeft > 0 && toIndex !== last
      ? beginMovement(chain, derailleur, shift.direction, toIndex, shift.stepsLeft - 1, at.distanceM)
      : null;
  if (!chain.chainOn) {
    chain.chainOn = true;
    events.push({ kind: 'chain-restored', ...at });
    return;
  }
  events.push({
    kind: 'shift-done',
    derailleur,
    direction: shift.direction,
    fromIndex: shift.fromIndex,
    toIndex,
    load,
    durationS: shift.movingS,
    startedAtM: shift.startedAtM,
    ...at,
  });
  const crossed = crossedBefore || gearAt(machine, chain.ringIndex, chain.sprocketIndex).crossed;
  if (derailleur === 'front' && load > DROP_LOAD && crossed) {
    chain.chainOn = false;
    events.push({ kind: 'chain-dropped', ...at });
  }
}

/** Where the derailleur will be when everything asked for is done. */
function plannedIndex(chain: ChainDraft, derailleur: Derailleur): number {
  const shift = chain[derailleur];
  let index = derailleur === 'rear' ? chain.sprocketIndex : chain.ringIndex;
  if (shift !== null) index = shift.toIndex + shift.stepsLeft * indexStep(derailleur, shift.direction);
  for (const push of chain.queue)
    if (push.derailleur === derailleur) index += push.steps * indexStep(derailleur, push.direction);
  return index;
}

function roomFor(machine: Machine, index: number, derailleur: Derailleur, direction: ShiftDirection): number {
  const last = (derailleur === 'rear' ? machine.sprocketCount : machine.ringCount) - 1;
  return indexStep(derailleur, direction) === 1 ? last - index : index;
}

/** Electronic derailleurs can be told not to offer crossed gears. */
function wouldCross(machine: Machine, chain: ChainDraft, derailleur: Derailleur, index: number): boolean {
  if (machine.bike.shifter !== 'electronic' || !machine.bike.refusesCrossed) return false;
  const ring = derailleur === 'front' ? index : plannedIndex(chain, 'front');
  const sprocket = derailleur === 'rear' ? index : plannedIndex(chain, 'rear');
  if (ring < 0 || ring >= machine.ringCount || sprocket < 0 || sprocket >= machine.sprocketCount)
    return false;
  return gearAt(machine, ring, sprocket).crossed;
}
