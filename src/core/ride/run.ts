/**
 * Rides: live (a player or a virtual rider gives commands) and again (from a recording). A thin holder
 * around `stepRide` that keeps commands, trace and fingerprints; it adds no rule of its own.
 */
import {
  CHECKPOINT_TICKS,
  commandsByTick,
  hashState,
  RECORDING_SCHEMA,
  type Recording,
  type RideSetup,
} from './recording.ts';
import { stepRide } from './step.ts';
import { emptyTrace, type RideTrace, recordTick } from './trace.ts';
import type { RideCommand, RideEvent, RideState, RideWorld, TimedCommand } from './types.ts';
import { startState } from './world.ts';

/** A ride that is going on. */
export interface LiveRide {
  readonly world: RideWorld;
  readonly trace: RideTrace;
  state(): RideState;
  /** Steps once with these commands; returns what happened. */
  step(commands: readonly RideCommand[]): readonly RideEvent[];
  /** The recording so far. */
  recording(setup: RideSetup): Recording;
}

/** Somebody who rides: asked before every tick, answers with commands. */
export type Controller = (state: RideState) => readonly RideCommand[];

/** A ride takes at most this long (ticks): one hour, so that nothing can hang. */
export const LONGEST_RIDE_TICKS = 3600 * 120;

/** Starts a ride. */
export function startRide(world: RideWorld, from: RideState = startState(world)): LiveRide {
  let state = from;
  const trace = emptyTrace();
  const commandLog: TimedCommand[] = [];
  const checkpoints: string[] = [];
  recordTick(trace, world, state, []);
  return {
    world,
    trace,
    state: () => state,
    step(commands) {
      // What is pressed behind the finish is no part of the ride.
      if (state.phase === 'finished') return [];
      for (const command of commands) commandLog.push({ tick: state.tick, command });
      const result = stepRide(world, state, commands);
      state = result.state;
      recordTick(trace, world, state, result.events);
      if (state.tick % CHECKPOINT_TICKS === 0) checkpoints.push(hashState(state));
      return result.events;
    },
    recording: (setup) => ({
      schema: RECORDING_SCHEMA,
      ...setup,
      ticks: state.tick,
      commands: [...commandLog],
      checkpoints: [...checkpoints, hashState(state)],
    }),
  };
}

/** Lets a controller ride to the finish, or until `stopWhen` says so. */
export function rideThrough(
  world: RideWorld,
  controller: Controller,
  options: {
    readonly from?: RideState;
    readonly stopWhen?: (state: RideState) => boolean;
    readonly onTick?: (state: RideState) => void;
  } = {},
): LiveRide {
  const ride = startRide(world, options.from);
  const lastTick = ride.state().tick + LONGEST_RIDE_TICKS;
  while (ride.state().phase !== 'finished' && ride.state().tick < lastTick) {
    ride.step(controller(ride.state()));
    options.onTick?.(ride.state());
    if (options.stopWhen?.(ride.state()) === true) break;
  }
  return ride;
}

/** Result of riding a recording again. */
export interface Replay {
  readonly ride: LiveRide;
  /** True if every fingerprint came out the same. */
  readonly same: boolean;
  /** First tick whose fingerprint differs, or null. */
  readonly firstDifferentTick: number | null;
}

/** Rides a recording again on a world built from its own setup, and compares fingerprints. */
export function replayRecording(
  world: RideWorld,
  recording: Recording,
  onTick?: (state: RideState, events: readonly RideEvent[]) => void,
): Replay {
  const ride = startRide(world);
  const commandsAt = commandsByTick(recording.commands);
  let firstDifferentTick: number | null = null;
  let checked = 0;
  const compare = (): void => {
    if (firstDifferentTick === null && recording.checkpoints[checked] !== hashState(ride.state()))
      firstDifferentTick = ride.state().tick;
    checked += 1;
  };
  while (ride.state().tick < recording.ticks && ride.state().phase !== 'finished') {
    const events = ride.step(commandsAt(ride.state().tick));
    onTick?.(ride.state(), events);
    if (ride.state().tick % CHECKPOINT_TICKS === 0) compare();
  }
  compare();
  if (
    firstDifferentTick === null &&
    (ride.state().tick !== recording.ticks || checked !== recording.checkpoints.length)
  )
    firstDifferentTick = ride.state().tick;
  return { ride, same: firstDifferentTick === null, firstDifferentTick };
}
