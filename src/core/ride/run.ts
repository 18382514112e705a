/**
 * Rides: live (a player or a virtual rider gives commands) and again (from a recording). A thin holder
 * around the step that keeps commands, trace and fingerprints; it adds no rule of its own.
 */
import { copyOfState } from './draft.ts';
import {
  CHECKPOINT_TICKS,
  commandsByTick,
  hashState,
  LONGEST_RIDE_TICKS,
  PHYSICS_VERSION,
  RECORDING_SCHEMA,
  type Recording,
  type RideSetup,
} from './recording.ts';
import { advanceRide } from './step.ts';
import { type RideTrace, TraceLog } from './trace.ts';
import type { RideCommand, RideEvent, RideState, RideWorld, TimedCommand } from './types.ts';
import { startState } from './world.ts';

export interface LiveRide {
  readonly world: RideWorld;
  /** Samples and events up to this moment; read it anew for later ones. */
  readonly trace: RideTrace;
  /** The state now, to keep: it stays as it is while the ride goes on. */
  state(): RideState;
  /** The same without a copy: it changes with every step, so it is read at once and never kept. */
  readonly now: RideState;
  /** Steps once with these commands; returns what happened. */
  step(commands: readonly RideCommand[]): readonly RideEvent[];
  /** The recording so far. */
  recording(setup: RideSetup): Recording;
  /** Only what was added after so many commands and fingerprints; for whoever keeps the rest already. */
  recordedSince(commandCount: number, checkpointCount: number): RecordedPart;
}

/** The end of a recording that is still going on. */
export interface RecordedPart {
  /** Ticks ridden so far. */
  readonly ticks: number;
  readonly commands: readonly TimedCommand[];
  /** Fingerprints after every `CHECKPOINT_TICKS`. */
  readonly checkpoints: readonly string[];
  /** Fingerprint of this moment. */
  readonly hash: string;
}

/** Somebody who rides: asked before every tick, answers with commands. Reads the state, but never keeps it. */
export type Controller = (state: RideState) => readonly RideCommand[];

const NOTHING: readonly RideEvent[] = [];

export function startRide(world: RideWorld, from: RideState = startState(world)): LiveRide {
  const now = copyOfState(from);
  let kept: RideState | null = from;
  let fresh: RideEvent[] = [];
  const log = new TraceLog(world);
  const commandLog: TimedCommand[] = [];
  const checkpoints: string[] = [];
  log.record(now, NOTHING);
  return {
    world,
    get trace() {
      return log.trace;
    },
    now,
    state: () => {
      kept ??= copyOfState(now);
      return kept;
    },
    step(commands) {
      // What is pressed behind the finish is no part of the ride.
      if (now.phase === 'finished') return NOTHING;
      if (commands.length > 0) for (const command of commands) commandLog.push({ tick: now.tick, command });
      advanceRide(world, now, commands, fresh);
      kept = null;
      // Most ticks bring nothing; those share one empty list.
      const events = fresh.length > 0 ? fresh : NOTHING;
      if (fresh.length > 0) fresh = [];
      log.record(now, events);
      if (now.tick % CHECKPOINT_TICKS === 0) checkpoints.push(hashState(now));
      return events;
    },
    recording: (setup) => ({
      schema: RECORDING_SCHEMA,
      ...setup,
      physicsVersion: PHYSICS_VERSION,
      ticks: now.tick,
      commands: [...commandLog],
      checkpoints: [...checkpoints, hashState(now)],
    }),
    recordedSince: (commandCount, checkpointCount) => ({
      ticks: now.tick,
      commands: commandLog.slice(commandCount),
      checkpoints: checkpoints.slice(checkpointCount),
      hash: hashState(now),
    }),
  };
}

/** Hears the state after every tick, and what happened in it. */
export type TickListener = (state: RideState, events: readonly RideEvent[]) => void;

/** Lets a controller ride to the finish, or until `stopWhen` says so. */
export function rideThrough(
  world: RideWorld,
  controller: Controller,
  options: {
    readonly from?: RideState;
    readonly stopWhen?: (state: RideState) => boolean;
    readonly onTick?: TickListener;
  } = {},
): LiveRide {
  const ride = startRide(world, options.from);
  const { now } = ride;
  const lastTick = now.tick + LONGEST_RIDE_TICKS;
  while (now.phase !== 'finished' && now.tick < lastTick) {
    const events = ride.step(controller(now));
    options.onTick?.(ride.state(), events);
    if (options.stopWhen?.(now) === true) break;
  }
  return ride;
}

/** Result of riding a recording again. */
export type Replay = Readonly<ReturnType<typeof replayRecording>>;

/** Rides a recording again on a world built from its own setup, and compares fingerprints. */
export function replayRecording(world: RideWorld, recording: Recording, onTick?: TickListener) {
  const ride = startRide(world);
  const { now } = ride;
  const commandsAt = commandsByTick(recording.commands);
  let firstDifferentTick: number | null = null;
  let checked = 0;
  const compare = (): void => {
    if (firstDifferentTick === null && recording.checkpoints[checked] !== hashState(now))
      firstDifferentTick = now.tick;
    checked += 1;
  };
  while (now.tick < recording.ticks && now.phase !== 'finished') {
    const events = ride.step(commandsAt(now.tick));
    onTick?.(ride.state(), events);
    if (now.tick % CHECKPOINT_TICKS === 0) compare();
  }
  compare();
  if (
    firstDifferentTick === null &&
    (now.tick !== recording.ticks || checked !== recording.checkpoints.length)
  )
    firstDifferentTick = now.tick;
  // The same if every fingerprint came out the same; else the first tick whose fingerprint differs.
  return { ride, same: firstDifferentTick === null, firstDifferentTick };
}
