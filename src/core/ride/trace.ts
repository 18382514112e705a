/**
 * What a ride leaves behind for marks and charts: ten samples a second of what matters, and all events.
 * Collected while riding, so that the debrief need not ride again; a replay collects exactly the same.
 */
import { sampleAt } from '../math/numbers.ts';
import { bandLowRpm } from '../model/legs.ts';
import { gearAt } from '../model/machine.ts';
import { copyOfState } from './draft.ts';
import { roadLoadRatio } from './frame.ts';
import type { RideEvent, RideState, RideWorld } from './types.ts';

/** Ticks between two samples (a tenth of a second). */
export const SAMPLE_TICKS = 12;

/** One sample. */
export interface TraceSample {
  readonly timeS: number;
  readonly distanceM: number;
  readonly speedMps: number;
  readonly cadenceRpm: number;
  readonly bandLowRpm: number;
  readonly bandHighRpm: number;
  readonly pressureRatio: number;
  /** Crank torque over reference torque. */
  readonly torqueRatio: number;
  /** Load the road puts on the pedals in this gear at this speed, over reference torque. */
  readonly loadRatio: number;
  readonly ringIndex: number;
  readonly sprocketIndex: number;
  readonly developmentM: number;
  readonly crossedS: number;
  /** True while cranks turn under the rider: not coasting, standing or with a foot down. */
  readonly pedalling: boolean;
  /** True while braking, standing, or with a foot down. */
  readonly held: boolean;
}

/** A growing list of samples and events. */
export interface RideTrace {
  readonly samples: TraceSample[];
  readonly events: RideEvent[];
  /** State at the decision point of each pitch passed so far, 30 m before its foot. */
  readonly beforePitch: RideState[];
}

/** Where a pitch begins to be judged: this far before its foot (m). */
export const DECISION_M = 30;

/** An empty trace. */
export function emptyTrace(): RideTrace {
  return { samples: [], events: [], beforePitch: [] };
}

/** Adds a state (every 12th tick) and the events of its tick. The state may be a draft that rides on. */
export function recordTick(
  trace: RideTrace,
  world: RideWorld,
  state: RideState,
  events: readonly RideEvent[],
): void {
  if (events.length > 0) trace.events.push(...events);
  const pitch = world.course.pitches[trace.beforePitch.length];
  if (pitch !== undefined && state.distanceM >= pitch.footM - DECISION_M)
    trace.beforePitch.push(copyOfState(state));
  if (state.tick % SAMPLE_TICKS === 0) trace.samples.push(sampleOf(world, state));
}

function sampleOf(world: RideWorld, state: RideState): TraceSample {
  const { rider } = world.machine;
  const slopeRatio = sampleAt(world.course.slopeRatio, state.distanceM);
  const gear = gearAt(world.machine, state.ringIndex, state.sprocketIndex);
  return {
    timeS: state.tick * world.tickS,
    distanceM: state.distanceM,
    speedMps: state.speedMps,
    cadenceRpm: state.cadenceRpm,
    bandLowRpm: bandLowRpm(rider, slopeRatio),
    bandHighRpm: rider.cadenceHighRpm,
    pressureRatio: state.pressureRatio,
    torqueRatio: state.crankTorqueNm / world.machine.referenceTorqueNm,
    loadRatio: roadLoadRatio(world, state),
    ringIndex: state.ringIndex,
    sprocketIndex: state.sprocketIndex,
    developmentM: gear.developmentM,
    crossedS: state.crossedS,
    pedalling: state.phase === 'riding' && state.chainOn && state.cadenceRpm > 0 && state.speedMps > 0.5,
    held: state.braking || state.phase !== 'riding',
  };
}
