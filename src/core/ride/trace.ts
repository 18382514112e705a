/**
 * What a ride leaves behind for marks and charts: ten samples a second of what matters, and all events.
 * Collected while riding, so that the debrief need not ride again; a replay collects exactly the same.
 */
import type { Course, Pitch } from '../course/types.ts';
import { sampleAt } from '../math/numbers.ts';
import { bandLowRpm } from '../model/legs.ts';
import { gearOf } from '../model/transmission.ts';
import type { GearPlace } from '../model/types.ts';
import { copyOfState } from './draft.ts';
import { isUnhelped, overloadRatio, roadLoadRatio } from './load.ts';
import { TICKS_PER_S } from './clock.ts';
import type { RideEvent, RideState, RideWorld } from './types.ts';

/** A movement that the same derailleur takes back within so long (s) is undone: a lever without a reason. */
export const UNDONE_WITHIN_S = 2;

/** Ticks between two samples (a tenth of a second). */
export const SAMPLE_TICKS = 12;
export const SAMPLE_S = SAMPLE_TICKS / TICKS_PER_S;

export interface TraceSample extends GearPlace {
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
  /** What the road asks beyond what the band carries, here or two seconds on; 0 where nothing. */
  readonly overloadRatio: number;
  readonly developmentM: number;
  readonly crossedS: number;
  /** True while cranks turn under the rider: not coasting, standing or with a foot down. */
  readonly pedalling: boolean;
  /** True while braking, standing, or with a foot down. */
  readonly held: boolean;
  /** There is a motor, but its battery is empty. */
  readonly unhelped?: true;
}

/** A growing list of samples and events. */
export interface RideTrace {
  readonly samples: TraceSample[];
  readonly events: RideEvent[];
  /** State at the decision point of each pitch passed so far. */
  readonly beforePitch: RideState[];
}

/** How often something happened in a ride. */
export function countEvents({ events }: Pick<RideTrace, 'events'>, kind: RideEvent['kind']): number {
  return events.filter((event) => event.kind === kind).length;
}

/** A movement of the chain that came to its end. */
export type ShiftDone = Extract<RideEvent, { kind: 'shift-done' }>;

/** All movements of the chain in a ride, in order. */
export function doneShifts(trace: Pick<RideTrace, 'events'>): ShiftDone[] {
  return trace.events.filter((event): event is ShiftDone => event.kind === 'shift-done');
}

/** The tick in which a movement of the chain began; between two ticks where it took no whole number of them. */
export function beganTick(shift: ShiftDone): number {
  return shift.tick - shift.durationS * TICKS_PER_S;
}

/** Where a pitch begins to be judged: this far before its foot, or before a stop line that lies on the way to it (m). */
const DECISION_M = 50;

/** The decision point of a pitch (m along the road): who must stop before a hill chooses the gear before the stop. */
export function decisionPlaceM(course: Pick<Course, 'stopLinesM'>, pitch: Pick<Pitch, 'footM'>): number {
  const line = course.stopLinesM.find(
    (lineM) => lineM > pitch.footM - 1.5 * DECISION_M && lineM <= pitch.footM,
  );
  return Math.max(0, (line ?? pitch.footM) - DECISION_M);
}

/** Numbers kept of a sample until somebody asks; the rest of it follows from these and the world. */
const COLUMNS = 7;
/** Samples of one block: a minute of riding. */
const BLOCK_SAMPLES = 600;
/** More rings and sprockets than any bike has, so that gear, flags and tick fit into one whole number. */
const MOST_RINGS = 16;
const MOST_SPROCKETS = 32;

/**
 * Collects the trace of one ride. Samples wait as plain numbers in blocks, a quarter of the memory of objects, and
 * become objects when the trace is asked for, which most rides do once, at the end.
 */
export class TraceLog {
  readonly #world: RideWorld;
  readonly #trace: RideTrace = { samples: [], events: [], beforePitch: [] };
  #blocks: Float64Array[] = [];
  #waiting = 0;

  constructor(world: RideWorld) {
    this.#world = world;
  }

  /** Everything up to now; always the same lists, which are complete when this is read and not between. */
  get trace(): RideTrace {
    for (let i = 0; i < this.#waiting; i += 1) this.#trace.samples.push(this.#unpack(i));
    this.#waiting = 0;
    this.#blocks = [];
    return this.#trace;
  }

  /** Adds a state (every 12th tick) and the events of its tick. The state may be a draft that rides on. */
  record(state: RideState, events: readonly RideEvent[]): void {
    const { course } = this.#world;
    const { beforePitch } = this.#trace;
    if (events.length > 0) this.#trace.events.push(...events);
    const pitch = course.pitches[beforePitch.length];
    if (pitch !== undefined && state.distanceM >= decisionPlaceM(course, pitch))
      beforePitch.push(copyOfState(state));
    if (state.tick % SAMPLE_TICKS === 0) this.#pack(state);
  }

  #pack(state: RideState): void {
    const block = Math.floor(this.#waiting / BLOCK_SAMPLES);
    const numbers = (this.#blocks[block] ??= new Float64Array(BLOCK_SAMPLES * COLUMNS));
    const at = (this.#waiting % BLOCK_SAMPLES) * COLUMNS;
    const gear = (state.tick * MOST_RINGS + state.ringIndex) * MOST_SPROCKETS + state.sprocketIndex;
    numbers[at] = state.distanceM;
    numbers[at + 1] = state.speedMps;
    numbers[at + 2] = state.cadenceRpm;
    numbers[at + 3] = state.pressureRatio;
    numbers[at + 4] = state.crankTorqueNm;
    numbers[at + 5] = state.crossedS;
    numbers[at + 6] =
      gear * 8 + (isUnhelped(state) ? 4 : 0) + (isPedalling(state) ? 2 : 0) + (isHeld(state) ? 1 : 0);
    this.#waiting += 1;
  }

  #unpack(index: number): TraceSample {
    const numbers = this.#blocks[Math.floor(index / BLOCK_SAMPLES)] as Float64Array;
    const at = (index % BLOCK_SAMPLES) * COLUMNS;
    const packed = numbers[at + 6] as number;
    const flags = packed % 8;
    const gear = Math.floor(packed / 8);
    const place = {
      tick: Math.floor(gear / (MOST_SPROCKETS * MOST_RINGS)),
      distanceM: numbers[at] as number,
      speedMps: numbers[at + 1] as number,
      cadenceRpm: numbers[at + 2] as number,
      pressureRatio: numbers[at + 3] as number,
      crankTorqueNm: numbers[at + 4] as number,
      ringIndex: Math.floor(gear / MOST_SPROCKETS) % MOST_RINGS,
      sprocketIndex: gear % MOST_SPROCKETS,
      crossedS: numbers[at + 5] as number,
    };
    return completed(this.#world, place, flags % 4 >= 2, flags % 2 === 1, flags >= 4);
  }
}

type Sampled = Pick<
  RideState,
  | 'tick'
  | 'distanceM'
  | 'speedMps'
  | 'cadenceRpm'
  | 'pressureRatio'
  | 'crankTorqueNm'
  | 'ringIndex'
  | 'sprocketIndex'
  | 'crossedS'
>;

/** The sample of a state, as a trace would hold it. Asked for ten times a second in a thousand rides: no copy is made of the state. */
export function sampleOf(world: RideWorld, state: RideState): TraceSample {
  return completed(world, state, isPedalling(state), isHeld(state), isUnhelped(state));
}

function completed(
  world: RideWorld,
  sampled: Sampled,
  pedalling: boolean,
  held: boolean,
  unhelped: boolean,
): TraceSample {
  const { machine, course, tickS } = world;
  const { distanceM, ringIndex, sprocketIndex } = sampled;
  return {
    timeS: sampled.tick * tickS,
    distanceM,
    speedMps: sampled.speedMps,
    cadenceRpm: sampled.cadenceRpm,
    bandLowRpm: bandLowRpm(machine.rider, sampleAt(course.slopeRatio, distanceM)),
    bandHighRpm: machine.rider.cadenceHighRpm,
    pressureRatio: sampled.pressureRatio,
    torqueRatio: sampled.crankTorqueNm / machine.referenceTorqueNm,
    loadRatio: roadLoadRatio(world, sampled),
    overloadRatio: overloadRatio(world, sampled),
    ringIndex,
    sprocketIndex,
    developmentM: gearOf(machine, sampled).developmentM,
    crossedS: sampled.crossedS,
    pedalling,
    held,
    ...(unhelped ? { unhelped: true as const } : {}),
  };
}

function isHeld(state: RideState): boolean {
  return state.braking || state.phase !== 'riding';
}

function isPedalling(state: RideState): boolean {
  return state.phase === 'riding' && state.chainOn && state.cadenceRpm > 0 && state.speedMps > 0.5;
}
