/**
 * The derailleurs' part of a step: lever pushes are queued, wait for cable or motor, and then move the
 * chain as fast as cranks and load allow. Rear and front work side by side.
 */
import {
  chainPull,
  DROP_PULL,
  HEAVY_LOAD,
  hubAnswer,
  HUNG_AFTER_S,
  HUNG_PULL,
  neededTurns,
  pullAtAngle,
  RESTORE_TURNS,
  shiftRate,
} from '../model/shift.ts';
import { loadsChain } from '../model/motor.ts';
import { gearOf, indexStep, lastIndex, pushed, roomFor, SWEEP_SPROCKETS } from '../model/transmission.ts';
import type { GearPlace, Machine } from '../model/types.ts';
import { momentOf, type RideDraft } from './draft.ts';
import type {
  Derailleur,
  RideCommand,
  RideEvent,
  QueuedShift,
  RideState,
  RideWorld,
  ShiftDirection,
  ShiftInProgress,
} from './types.ts';

/** Pushes that are remembered; more are ignored, as a rider's thumb would find out. */
const QUEUE_LIMIT = 8;
/** Legs up to here may lift a dropped chain back on. */
const RESTORE_PRESSURE = 0.5;

/** Queues a lever push, or says why not. */
export function queueShift(
  world: RideWorld,
  ride: RideDraft,
  command: Extract<RideCommand, { kind: 'shift' }>,
  events: RideEvent[],
): void {
  const { derailleur, direction } = command;
  const { machine } = world;
  const restoring = !ride.chainOn && derailleur === 'front';
  const wanted = direction === 'easier' && derailleur === 'rear' ? command.steps : 1;
  const planned = plannedPlace(ride);
  const room = roomFor(machine, planned, derailleur, direction);
  const steps = Math.min(Math.max(1, Math.round(wanted)), SWEEP_SPROCKETS, room);
  const refuse = (reason: 'no-more' | 'crossed'): void => {
    events.push({ kind: 'shift-refused', derailleur, direction, reason, ...momentOf(ride) });
  };
  if (steps < 1 && !restoring) return refuse('no-more');
  if (wouldCross(machine, pushed(machine, planned, { derailleur, direction, steps })))
    return refuse('crossed');
  if (ride.queue.length >= QUEUE_LIMIT) return;
  ride.queue = [
    ...ride.queue,
    { derailleur, direction, steps: Math.max(1, steps), delayS: machine.shiftDelayS },
  ];
}

/** Lets delays run, starts what is due and moves the chain by one tick. */
export function advanceShift(world: RideWorld, ride: RideDraft, events: RideEvent[]): void {
  if (ride.queue.length > 0) {
    ride.queue = runDelays(ride.queue, world.tickS);
    startDue(ride, 'rear');
    startDue(ride, 'front');
  }
  if (ride.rear !== null && world.machine.bike.hub !== undefined) moveHub(world, ride, ride.rear, events);
  else move(world, ride, 'rear', events);
  move(world, ride, 'front', events);
}

/** Pushes whose delay has run out wait unchanged; while nothing changes the queue stays the same one. */
function runDelays(queue: readonly QueuedShift[], tickS: number): readonly QueuedShift[] {
  let changed: QueuedShift[] | null = null;
  for (let i = 0; i < queue.length; i += 1) {
    const { derailleur, direction, steps, delayS } = queue[i] as QueuedShift;
    if (delayS <= 0) continue;
    changed ??= queue.slice();
    changed[i] = { derailleur, direction, steps, delayS: delayS - tickS };
  }
  return changed ?? queue;
}

function startDue(ride: RideDraft, derailleur: Derailleur): void {
  if (ride[derailleur] !== null) return;
  const { queue } = ride;
  let at = 0;
  while (at < queue.length && queue[at]?.derailleur !== derailleur) at += 1;
  const push = queue[at];
  if (push === undefined || push.delayS > 0) return;
  ride.queue = queue.filter((_, i) => i !== at);
  const fromIndex = derailleur === 'rear' ? ride.sprocketIndex : ride.ringIndex;
  ride[derailleur] = beginMovement(ride, derailleur, push.direction, fromIndex, push.steps - 1);
}

function beginMovement(
  ride: RideDraft,
  derailleur: Derailleur,
  direction: ShiftDirection,
  fromIndex: number,
  stepsLeft: number,
): ShiftInProgress {
  const restoring = !ride.chainOn && derailleur === 'front';
  return {
    direction,
    fromIndex,
    toIndex: fromIndex + indexStep(derailleur, direction),
    stepsLeft,
    neededTurns: restoring ? RESTORE_TURNS : neededTurns(derailleur, direction),
    doneTurns: 0,
    waitedTurns: 0,
    rate: 1,
    movingS: 0,
    loadSecondsSum: 0,
    motorSecondsSum: 0,
    startedAtM: ride.distanceM,
    hungReported: false,
    waitReported: false,
  };
}

function move(world: RideWorld, ride: RideDraft, derailleur: Derailleur, events: RideEvent[]): void {
  const shift = ride[derailleur];
  if (shift === null) return;
  const blocked = !ride.chainOn && (derailleur === 'rear' || ride.pressureRatio > RESTORE_PRESSURE);
  if (ride.cadenceRpm <= 0 || blocked) {
    if (!shift.waitReported) events.push({ kind: 'shift-waiting', derailleur, ...momentOf(ride) });
    ride[derailleur] = shift.waitReported ? shift : { ...shift, waitReported: true };
    return;
  }
  const { machine } = world;
  const motorNm = pullOfMotorNm(machine, ride);
  const loadRatio = (ride.crankTorqueNm + motorNm) / machine.referenceTorqueNm;
  const pull = pullOnRing(machine, ride.crankTorqueNm + motorNm, ride.ringIndex);
  const rate = shiftRate(pull * pullAtAngle(ride.crankTurns));
  const movingS = shift.movingS + world.tickS;
  const hung = pull > HUNG_PULL && movingS > HUNG_AFTER_S;
  if (hung && !shift.hungReported) events.push({ kind: 'shift-hung', derailleur, ...momentOf(ride) });
  // Written out: spreading takes a good part of the time of a whole ride.
  const next: ShiftInProgress = {
    direction: shift.direction,
    fromIndex: shift.fromIndex,
    toIndex: shift.toIndex,
    stepsLeft: shift.stepsLeft,
    neededTurns: shift.neededTurns,
    doneTurns: shift.doneTurns + (ride.cadenceRpm / 60) * world.tickS * rate,
    waitedTurns: shift.waitedTurns,
    rate,
    movingS,
    loadSecondsSum: shift.loadSecondsSum + loadRatio * world.tickS,
    motorSecondsSum: shift.motorSecondsSum + (motorNm / machine.referenceTorqueNm) * world.tickS,
    startedAtM: shift.startedAtM,
    hungReported: shift.hungReported || hung,
    waitReported: shift.waitReported,
  };
  if (next.doneTurns < next.neededTurns) ride[derailleur] = next;
  else finishMovement(world, ride, derailleur, next, next.loadSecondsSum / movingS, events);
}

/** A hub waits for the pressure to fall and then has the gear; who pushes on hears it slip in, or waits on. */
function moveHub(world: RideWorld, ride: RideDraft, shift: ShiftInProgress, events: RideEvent[]): void {
  const { machine, tickS } = world;
  const motorNm = pullOfMotorNm(machine, ride);
  const loadRatio = (ride.crankTorqueNm + motorNm) / machine.referenceTorqueNm;
  const answer = hubAnswer(loadRatio, shift.waitedTurns, ride.crankTurns);
  const movingS = shift.movingS + tickS;
  const loadSecondsSum = shift.loadSecondsSum + loadRatio * tickS;
  const motorSecondsSum = shift.motorSecondsSum + (motorNm / machine.referenceTorqueNm) * tickS;
  if (answer === 'waits') {
    const hung = movingS > HUNG_AFTER_S;
    if (hung && !shift.hungReported)
      events.push({ kind: 'shift-hung', derailleur: 'rear', hub: true, ...momentOf(ride) });
    const waitedTurns = shift.waitedTurns + (ride.cadenceRpm / 60) * tickS;
    const hungReported = shift.hungReported || hung;
    ride.rear = { ...shift, waitedTurns, rate: 0, movingS, loadSecondsSum, motorSecondsSum, hungReported };
    return;
  }
  // What counts is the load as it takes; a knock is never a light one.
  const felt = answer === 'takes' ? loadRatio : Math.max(HEAVY_LOAD, loadSecondsSum / movingS);
  finishMovement(world, ride, 'rear', { ...shift, movingS, motorSecondsSum }, felt, events);
}

function pullOnRing(machine: Machine, crankTorqueNm: number, ringIndex: number): number {
  return chainPull(machine, crankTorqueNm, machine.bike.chainringsTeeth[ringIndex] as number);
}

/** What a crank motor adds to the pull of the legs (N m at the crank); nothing elsewhere. */
function pullOfMotorNm({ bike }: Machine, { motor }: RideDraft): number {
  return motor !== null && loadsChain(bike) ? motor.torqueNm : 0;
}

function finishMovement(
  world: RideWorld,
  ride: RideDraft,
  derailleur: Derailleur,
  shift: Omit<ShiftInProgress, 'loadSecondsSum'>,
  load: number,
  events: RideEvent[],
): void {
  const { machine } = world;
  const at = momentOf(ride);
  const last = lastIndex(machine, derailleur);
  const toIndex = Math.min(last, Math.max(0, shift.toIndex));
  const crossedBefore = gearOf(machine, ride).crossed;
  if (derailleur === 'rear') ride.sprocketIndex = toIndex;
  else ride.ringIndex = toIndex;
  ride[derailleur] =
    shift.stepsLeft > 0 && toIndex !== last
      ? {
          ...beginMovement(ride, derailleur, shift.direction, toIndex, shift.stepsLeft - 1),
          // One push waits once, however many sprockets it goes over.
          waitReported: shift.waitReported,
        }
      : null;
  if (!ride.chainOn) {
    ride.chainOn = true;
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
    ...(loadsChain(machine.bike) ? { motorLoad: shift.motorSecondsSum / shift.movingS } : {}),
    ...(shift.waitReported ? { waited: true as const } : {}),
    ...(derailleur === 'rear' && machine.bike.hub !== undefined ? { hub: true as const } : {}),
    ...at,
  });
  const crossed = crossedBefore || gearOf(machine, ride).crossed;
  if (derailleur !== 'front' || !crossed) return;
  if (pullOnRing(machine, load * machine.referenceTorqueNm, shift.fromIndex) > DROP_PULL) {
    ride.chainOn = false;
    events.push({ kind: 'chain-dropped', ...at });
  }
}

/** Where the derailleur will be when everything asked for is done. */
function plannedIndex(
  ride: Pick<RideState, 'sprocketIndex' | 'ringIndex' | 'rear' | 'front' | 'queue'>,
  derailleur: Derailleur,
): number {
  const shift = ride[derailleur];
  let index = derailleur === 'rear' ? ride.sprocketIndex : ride.ringIndex;
  if (shift !== null) index = shift.toIndex + shift.stepsLeft * indexStep(derailleur, shift.direction);
  for (const push of ride.queue)
    if (push.derailleur === derailleur) index += push.steps * indexStep(derailleur, push.direction);
  return index;
}

/** Where both shifters will be then. */
export function plannedPlace(ride: Parameters<typeof plannedIndex>[0]): GearPlace {
  return { ringIndex: plannedIndex(ride, 'front'), sprocketIndex: plannedIndex(ride, 'rear') };
}

/** Electronic derailleurs can be told not to offer crossed gears. A push that lifts a chain back on leads nowhere. */
function wouldCross(machine: Machine, to: GearPlace | null): boolean {
  if (machine.bike.shifter !== 'electronic' || !machine.bike.refusesCrossed || to === null) return false;
  return gearOf(machine, to).crossed;
}
