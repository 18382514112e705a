/**
 * A thousand seeded streams of random commands on random roads, bikes and riders. Nothing a thumb can do
 * may lead to a number that is none, to a gear that does not exist, or to a recording that cannot be ridden
 * again. A stream that ever failed is kept in `KEPT` and is tried first.
 */
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import { BIKES, RIDERS } from '../../../src/core/model/presets.ts';
import type { Bike } from '../../../src/core/model/types.ts';
import { setupOfJob } from '../../../src/core/ride/job.ts';
import { parseRecording } from '../../../src/core/ride/recording.ts';
import { replayRecording, startRide } from '../../../src/core/ride/run.ts';
import type { RideCommand, RideState, RideWorld } from '../../../src/core/ride/types.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { BUNDLED } from './worlds.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const SEED = 20_260_101;
const STREAMS = 1000;

interface Stream {
  readonly pieces: readonly { readonly lengthM: number; readonly slopePercent: number }[];
  readonly stopM: number | null;
  readonly windMps: number;
  readonly bikeIndex: number;
  readonly electronic: boolean;
  readonly riderIndex: number;
  readonly autoEase: boolean;
  readonly commands: readonly { readonly waitTicks: number; readonly command: RideCommand }[];
}

/** Streams that once failed, as fast-check printed them. None has. */
const KEPT: [Stream][] = [];

const command: fc.Arbitrary<RideCommand> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      kind: fc.constant('shift' as const),
      derailleur: fc.constantFrom('rear' as const, 'front' as const),
      direction: fc.constantFrom('easier' as const, 'harder' as const),
      steps: fc.integer({ min: 1, max: 3 }),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      kind: fc.constant('pressure' as const),
      pressure: fc.constantFrom('coast' as const, 'ease' as const, 'steady' as const, 'press' as const),
    }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('brake' as const), on: fc.boolean() }) },
);

const stream: fc.Arbitrary<Stream> = fc.record({
  pieces: fc.array(
    fc.record({
      lengthM: fc.integer({ min: 10, max: 120 }),
      slopePercent: fc.integer({ min: -20, max: 20 }),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  stopM: fc.option(fc.integer({ min: 40, max: 120 })),
  windMps: fc.integer({ min: -15, max: 15 }),
  bikeIndex: fc.nat(BIKES.length - 1),
  electronic: fc.boolean(),
  riderIndex: fc.nat(RIDERS.length - 1),
  autoEase: fc.boolean(),
  commands: fc.array(fc.record({ waitTicks: fc.integer({ min: 0, max: 240 }), command }), { maxLength: 40 }),
});

function setUp(s: Stream) {
  const road = s.pieces.map(({ lengthM, slopePercent }) => ({
    kind: 'climb',
    lengthM,
    slopeRatio: slopePercent / 100,
  }));
  const pieces = [...road, { kind: 'flat', lengthM: 160 }];
  const parsed = parseLevel({
    ...BUNDLED[0]?.level,
    id: 'random',
    pieces,
    stopLinesM: s.stopM === null ? [] : [s.stopM],
    winds: s.windMps === 0 ? [] : [{ fromM: 20, toM: 90, windMps: s.windMps }],
    surfaces: [],
    hidden: [],
    cues: [],
  });
  if (!parsed.ok) throw new Error(parsed.problems.map((p) => `${p.path} ${sentenceOf(p)}`).join(' '));
  const model = BIKES[s.bikeIndex];
  const rider = RIDERS[s.riderIndex];
  if (model === undefined || rider === undefined) throw new Error('no such bike or rider');
  const bike: Bike = {
    ...model,
    shifter: s.electronic ? 'electronic' : 'mechanical',
    refusesCrossed: s.electronic,
  };
  const { level } = parsed;
  const setup = setupOfJob({ level, seed: level.seed, bike, rider, autoEase: s.autoEase });
  const build = (): RideWorld => buildRideWorld(courseOfLevel(level), bike, rider, { autoEase: s.autoEase });
  return { setup, build };
}

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
}

function lawsOf(world: RideWorld, before: RideState, state: RideState): string | null {
  const { ringCount, sprocketCount, rider } = world.machine;
  if (!(state.speedMps >= 0 && state.speedMps < 25)) return `speed ${state.speedMps}`;
  if (!(state.distanceM >= before.distanceM)) return `rolled back to ${state.distanceM}`;
  if (!(state.cadenceRpm >= 0 && state.cadenceRpm <= 150)) return `cadence ${state.cadenceRpm}`;
  if (!(state.crankTorqueNm >= 0 && state.crankTorqueNm < 300)) return `torque ${state.crankTorqueNm}`;
  if (!(state.pressureRatio >= 0 && state.pressureRatio <= 1.6)) return `pressure ${state.pressureRatio}`;
  if (!(state.reserveJ >= 0 && state.reserveJ <= rider.reserveJ)) return `reserve ${state.reserveJ}`;
  if (!inside(state.ringIndex, ringCount) || !inside(state.sprocketIndex, sprocketCount))
    return 'no such gear';
  if (state.rear !== null && !inside(state.rear.toIndex, sprocketCount)) return 'on the way to no sprocket';
  if (state.front !== null && state.chainOn && !inside(state.front.toIndex, ringCount))
    return 'on the way to no ring';
  if (state.queue.length > 8) return `a queue of ${state.queue.length}`;
  return null;
}

function inside(index: number, count: number): boolean {
  return Number.isInteger(index) && index >= 0 && index < count;
}

/** Rides a stream, then a few seconds more; the first broken law ends it. */
function tryStream(s: Stream): void {
  const { setup, build } = setUp(s);
  const ride = startRide(build());
  const step = (commands: readonly RideCommand[]): void => {
    const before = ride.state();
    ride.step(commands);
    const broken = lawsOf(ride.world, before, ride.state());
    if (broken !== null) throw new Error(`tick ${ride.state().tick}: ${broken}`);
  };
  for (const { waitTicks, command: next } of s.commands) {
    for (let i = 0; i < waitTicks; i += 1) step([]);
    step([next]);
    if (!numbersIn(ride.state()).every(Number.isFinite))
      throw new Error(`tick ${ride.state().tick}: no number`);
  }
  for (let i = 0; i < 360; i += 1) step([]);
  if (!numbersIn(ride.state()).every(Number.isFinite)) throw new Error('no number in the end');
  const parsed = parseRecording(JSON.parse(JSON.stringify(ride.recording(setup))));
  if (!parsed.ok) throw new Error(parsed.code);
  const replay = replayRecording(build(), parsed.recording);
  if (!replay.same) throw new Error(`replay differs at tick ${replay.firstDifferentTick}`);
}

it(`${STREAMS} random streams of commands break no law and leave recordings that ride the same again`, () => {
  let tried = 0;
  fc.assert(
    fc.property(stream, (s) => {
      tried += 1;
      tryStream(s);
    }),
    { seed: SEED, numRuns: STREAMS, examples: KEPT },
  );
  expect(tried).toBeGreaterThanOrEqual(STREAMS);
});
