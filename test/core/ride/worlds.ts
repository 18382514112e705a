/**
 * Roads, bikes and worlds for tests: literal courses whose slope is exactly known, bundled bikes by name,
 * and small loops around the step. No expectation lives here.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { buildCourse } from '../../../src/core/course/build.ts';
import type { Course } from '../../../src/core/course/types.ts';
import { parseLevelText } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import type { Bike, Rider } from '../../../src/core/model/types.ts';
import { stepRide } from '../../../src/core/ride/step.ts';
import type { RideCommand, RideEvent, RideState, RideWorld } from '../../../src/core/ride/types.ts';
import { buildRideWorld, startState } from '../../../src/core/ride/world.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

// Not by address: in tests with a document that would be an address of the page.
const levelsFolder = join(import.meta.dirname, '../../../levels/');

/** Every bundled level with the name of its file. */
export const BUNDLED: readonly { readonly file: string; readonly text: string; readonly level: Level }[] =
  readdirSync(levelsFolder)
    .filter((name) => name.endsWith('.json') && name !== 'level.schema.json')
    .sort()
    .map((file) => {
      const text = readFileSync(levelsFolder + file, 'utf8');
      const parsed = parseLevelText(text);
      if (!parsed.ok) throw new Error(`${file}: ${parsed.problems.map(sentenceOf).join(' ')}`);
      return { file, text, level: parsed.level };
    });

/** A bundled level by its id. */
export function levelById(id: string): Level {
  const found = BUNDLED.find(({ level }) => level.id === id);
  if (found === undefined) throw new Error(`no bundled level ${id}`);
  return found.level;
}

/** What a road is made of besides its pieces: nothing. */
export const PLAIN: Omit<Parameters<typeof buildCourse>[0], 'pieces'> = {
  joinM: 10,
  seed: 1,
  stopLinesM: [],
  winds: [],
  surfaces: [],
  hidden: [],
};

/** A road of one slope from end to end, without any join, or with a slope for every metre. */
export function literalCourse(
  lengthM: number,
  slopeAt: number | ((positionM: number) => number),
  extra: Partial<Course> = {},
): Course {
  const slopeRatio = Float64Array.from({ length: lengthM + 1 }, (_, i) =>
    typeof slopeAt === 'number' ? slopeAt : slopeAt(i),
  );
  const heightM = new Float64Array(lengthM + 1);
  const sine = (s: number): number => Math.sin(Math.atan(s));
  for (let i = 1; i <= lengthM; i += 1) {
    const a = slopeRatio[i - 1] ?? 0;
    const b = slopeRatio[i] ?? 0;
    heightM[i] = (heightM[i - 1] ?? 0) + (sine(a) + 4 * sine((a + b) / 2) + sine(b)) / 6;
  }
  return {
    lengthM,
    slopeRatio,
    heightM,
    windMps: new Float64Array(lengthM + 1),
    rollingFactor: new Float64Array(lengthM + 1).fill(1),
    sightM: new Float64Array(lengthM + 1).fill(250),
    stopLinesM: [],
    pitches: [],
    ...extra,
  };
}

/** A bundled bike that must exist. */
export function bike(id: string): Bike {
  const found = bikeById(id);
  if (found === undefined) throw new Error(`no bike ${id}`);
  return found;
}

/** A bundled rider who must exist. */
export function rider(id: string): Rider {
  const found = riderById(id);
  if (found === undefined) throw new Error(`no rider ${id}`);
  return found;
}

/** The road bike with the weekly rider, or others, on a course. */
export function worldOn(
  course: Course,
  bikeOrId: Bike | string = 'road-2x11',
  riderId = 'adult-weekly',
  options: Parameters<typeof buildRideWorld>[3] = {},
): RideWorld {
  return buildRideWorld(
    course,
    typeof bikeOrId === 'string' ? bike(bikeOrId) : bikeOrId,
    rider(riderId),
    options,
  );
}

/** A ride by hand: state, everything that happened, and a way to go on. */
export interface HandRide {
  state: RideState;
  readonly events: RideEvent[];
  /** Gives commands at once and then lets time pass. */
  go(seconds: number, ...commands: RideCommand[]): void;
  /** Lets time pass until something happens; throws if it does not within the time. */
  until(done: (ride: HandRide) => boolean, atMostS: number, ...commands: RideCommand[]): void;
}

/** Starts a ride by hand from any state. */
export function handRide(world: RideWorld, from: RideState = startState(world)): HandRide {
  const step = (commands: readonly RideCommand[]): void => {
    const result = stepRide(world, ride.state, commands);
    ride.events.push(...result.events);
    ride.state = result.state;
  };
  const ride: HandRide = {
    state: from,
    events: [],
    go(seconds, ...commands) {
      const ticks = Math.round(seconds / world.tickS);
      for (let i = 0; i < ticks; i += 1) step(i === 0 ? commands : []);
    },
    until(done, atMostS, ...commands) {
      const ticks = Math.round(atMostS / world.tickS);
      for (let i = 0; i < ticks; i += 1) {
        step(i === 0 ? commands : []);
        if (done(ride)) return;
      }
      throw new Error(`it did not happen within ${atMostS} s`);
    },
  };
  return ride;
}

/** Rides to the finish without keeping anything but what happened; for many rides in a row. */
export function rideBare(
  world: RideWorld,
  controller: (state: RideState) => readonly RideCommand[],
  from: RideState = startState(world),
): { readonly before: RideState; readonly last: RideState; readonly events: readonly RideEvent[] } {
  const events: RideEvent[] = [];
  let before = from;
  let last = from;
  // An hour at any tick; a ride that takes longer hangs.
  while (last.phase !== 'finished' && last.tick * world.tickS < 3600) {
    before = last;
    const result = stepRide(world, before, controller(before));
    if (result.events.length > 0) events.push(...result.events);
    last = result.state;
  }
  return { before, last, events };
}

/** Events of one kind, with their own type. */
export function eventsOf<K extends RideEvent['kind']>(
  events: readonly RideEvent[],
  kind: K,
): Extract<RideEvent, { kind: K }>[] {
  return events.filter((event): event is Extract<RideEvent, { kind: K }> => event.kind === kind);
}

/** Shorthand for commands. */
export const EASIER: RideCommand = { kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 };
export const HARDER: RideCommand = { kind: 'shift', derailleur: 'rear', direction: 'harder', steps: 1 };
export const SMALLER_RING: RideCommand = {
  kind: 'shift',
  derailleur: 'front',
  direction: 'easier',
  steps: 1,
};
export const BIGGER_RING: RideCommand = { kind: 'shift', derailleur: 'front', direction: 'harder', steps: 1 };
export const COAST: RideCommand = { kind: 'pressure', pressure: 'coast' };
export const EASE: RideCommand = { kind: 'pressure', pressure: 'ease' };
export const STEADY: RideCommand = { kind: 'pressure', pressure: 'steady' };
export const PRESS: RideCommand = { kind: 'pressure', pressure: 'press' };
