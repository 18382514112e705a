/**
 * Rides without a screen and sums up what happened: shifts with the speed they were made at, feet down,
 * chains dropped, time. Judging a ride is the coach's business, not this file's.
 */
import { frameOf } from '../../core/ride/frame.ts';
import { roadLoadRatio } from '../../core/ride/load.ts';
import { type Controller, rideThrough } from '../../core/ride/run.ts';
import { movementOf, placeOf } from '../../core/model/transmission.ts';
import type { ShiftDone } from '../../core/ride/trace.ts';
import type { RideEvent, RideState, RideWorld } from '../../core/ride/types.ts';
import type { LineFile } from './files.ts';

type ShiftLine = ReturnType<typeof shiftLine>;
/** What a ride comes to, apart from marks. */
export type RideSummary = ReturnType<ReturnType<typeof startTally>['summary']>;

/** Listens to a ride and keeps what the summary needs. */
export function startTally() {
  const shifts: ShiftLine[] = [];
  let footDowns = 0;
  let chainDrops = 0;
  return {
    note: (state: RideState, events: readonly RideEvent[]): void => {
      for (const event of events) {
        if (event.kind === 'foot-down') footDowns += 1;
        else if (event.kind === 'chain-dropped') chainDrops += 1;
        else if (event.kind === 'shift-done') shifts.push(shiftLine(event, state.speedMps));
      }
    },
    summary: (world: RideWorld, last: RideState) => ({
      shifts,
      pitches: world.course.pitches,
      footDowns,
      chainDrops,
      /** Time of the finish, or null if the rider never got there. */
      finishedS: last.phase === 'finished' ? last.tick * world.tickS : null,
    }),
  };
}

/** One shift of a ride as it is printed. */
function shiftLine(event: ShiftDone, speedMps: number) {
  const { load, durationS, distanceM, startedAtM } = event;
  return { ...movementOf(event), load, durationS, distanceM, startedAtM, speedMps };
}

/** Rides to the finish, or for an hour; the trace gets one line for the state after every tick. */
export function rideHeadless(world: RideWorld, controller: Controller, trace: LineFile | null) {
  const tally = startTally();
  const ride = rideThrough(world, controller, {
    onTick(state, events) {
      tally.note(state, events);
      trace?.line(JSON.stringify(traceLine(world, state)));
    },
  });
  return { ride, summary: tally.summary(world, ride.state()) };
}

function traceLine(world: RideWorld, state: RideState) {
  const frame = frameOf(world, state);
  return {
    tick: state.tick,
    distanceM: state.distanceM,
    speedMps: state.speedMps,
    slopeRatio: frame.slopeRatio,
    cadenceRpm: state.cadenceRpm,
    crankTorqueNm: state.crankTorqueNm,
    pressure: state.pressure,
    ...placeOf(state),
    loadRatio: roadLoadRatio(world, state),
    torqueRatio: frame.torqueRatio,
    chainAngleDeg: frame.chainAngleDeg,
    crossed: frame.crossed,
  };
}
