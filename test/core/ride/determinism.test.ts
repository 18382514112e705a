/**
 * A ride is its recording: whatever the screen did meanwhile, the same commands at the same ticks give the
 * same fingerprints, and a recording survives being written and read.
 */
import { describe, expect, it } from 'vitest';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { between, type Random, seededRandom } from '../../../src/core/math/random.ts';
import { setupOfJob } from '../../../src/core/ride/job.ts';
import { FRESH_CLOCK, ticksDue } from '../../../src/core/ride/clock.ts';
import { commandsByTick, parseRecording, type Recording } from '../../../src/core/ride/recording.ts';
import { NAMED_HABITS, type NamedRider, virtualRider } from '../../../src/core/virtual/riders.ts';
import { replayRecording, rideThrough, startRide } from '../../../src/core/ride/run.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { bike, levelById, EASIER, literalCourse, PRESS, rider, worldOn } from './worlds.ts';
import { recordingSentence } from '../../../src/cli/common/print.ts';

/** A virtual rider's ride on a bundled level, as a recording. */
function record(levelId: string, name: NamedRider, bikeId: string, riderId: string, autoEase = false) {
  const level = levelById(levelId);
  const setup = setupOfJob({ level, seed: level.seed, bike: bike(bikeId), rider: rider(riderId), autoEase });
  const build = () =>
    buildRideWorld(courseOfLevel(level, setup.seed), setup.bike, setup.rider, { autoEase: setup.autoEase });
  const world = build();
  const ride = rideThrough(world, virtualRider(world, NAMED_HABITS[name], 11));
  return { recording: ride.recording(setup), trace: ride.trace, build };
}

/** Frame times (ms) of a screen at a rate, with jitter and now and then 3 s of nothing. */
function* frames(hz: number, random: Random): Generator<number> {
  let ms = 1000;
  for (;;) {
    yield ms;
    ms += (1000 / hz) * between(random, 0.6, 1.4);
    if (random() < 0.002) ms += 3000;
  }
}

/** Plays a recording as a screen would: so many ticks a frame, commands at their ticks. */
function playOnScreen(
  recording: Recording,
  build: () => ReturnType<typeof buildRideWorld>,
  hz: number,
  seed: number,
) {
  const ride = startRide(build());
  const at = commandsByTick(recording.commands);
  let clock = FRESH_CLOCK;
  const perFrame = new Set<number>();
  for (const ms of frames(hz, seededRandom(seed))) {
    const due = ticksDue(clock, ms);
    clock = due.clock;
    perFrame.add(due.ticks);
    for (let i = 0; i < due.ticks && ride.state().tick < recording.ticks; i += 1)
      ride.step(at(ride.state().tick));
    if (ride.state().tick >= recording.ticks) break;
  }
  return { ride, perFrame };
}

const RIDES = [
  ['click-before-the-hill', 'late', 'road-2x11', 'adult-weekly', false],
  ['feather-feet', 'early', 'trekking-3x8', 'adult-weekly', true],
  ['soft-feet', 'late-easing', 'gravel-1x12', 'adult-strong', false],
  ['one-pitch-announced', 'early', 'kids-24-1x8', 'child-9', true],
] as const;

describe.each(RIDES)('%s: %s on %s', (...[levelId, name, bikeId, riderId, autoEase]) => {
  const { recording, trace, build } = record(levelId, name, bikeId, riderId, autoEase);

  it.each([30, 60, 144])('comes out with the same fingerprints on a jittering screen of %d Hz', (hz) => {
    const { ride, perFrame } = playOnScreen(recording, build, hz, hz * 17);
    const again = ride.recording({ ...recording });
    expect(recording.checkpoints.length).toBeGreaterThan(5);
    expect(again.checkpoints).toEqual(recording.checkpoints);
    expect(again.commands).toEqual(recording.commands);
    // The screen really was uneven: frames of different length, one of them a hiccup.
    expect(perFrame.size).toBeGreaterThan(2);
    expect(Math.max(...perFrame)).toBeGreaterThan(25);
  });

  it('replays the same after being written as JSON and read again, down to events and samples', () => {
    const parsed = parseRecording(JSON.parse(JSON.stringify(recording)));
    if (!parsed.ok) throw new Error(parsed.code);
    const replay = replayRecording(build(), parsed.recording);
    expect([replay.same, replay.firstDifferentTick]).toEqual([true, null]);
    expect(replay.ride.trace).toEqual(trace);
  });

  it('does not replay the same if a shift is moved by a tenth of a second, and says from where', () => {
    const k = recording.commands.findIndex((item) => item.command.kind === 'shift');
    expect(k).toBeGreaterThanOrEqual(0);
    const moved = recording.commands.map((item, i) => (i === k ? { ...item, tick: item.tick + 12 } : item));
    const sorted = [...moved].sort((a, b) => a.tick - b.tick);
    const replay = replayRecording(build(), { ...recording, commands: sorted });
    expect(replay.same).toBe(false);
    expect(replay.firstDifferentTick).toBeGreaterThan(recording.commands[k]?.tick ?? 0);
  });
});

it('what is pressed behind the finish is no part of the recording', () => {
  const world = worldOn(literalCourse(60, 0));
  const ride = rideThrough(world, () => []);
  const setup = { ...record('click-before-the-hill', 'never', 'road-2x11', 'adult-weekly').recording };
  const before = ride.recording(setup);
  expect(ride.step([PRESS, EASIER])).toEqual([]);
  expect(ride.recording(setup)).toEqual(before);
});

describe('recordings from outside', () => {
  const { recording } = record('click-before-the-hill', 'late', 'road-2x11', 'adult-weekly');
  const broken: [string, unknown][] = [
    ['nothing', null],
    ['a word', 'ride'],
    ['a list', []],
    ['an empty object', {}],
    ['a newer version', { ...recording, schema: 2 }],
    ['an unknown key', { ...recording, extra: 1 }],
    ['a tick that is no whole number', { ...recording, ticks: 1.5 }],
    ['endless ticks', { ...recording, ticks: 1e12 }],
    ['commands out of order', { ...recording, commands: [...recording.commands].reverse() }],
    ['a command nobody knows', { ...recording, commands: [{ tick: 1, command: { kind: 'fly' } }] }],
    [
      'a shift of nine sprockets',
      {
        ...recording,
        commands: [
          { tick: 1, command: { kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 9 } },
        ],
      },
    ],
    ['a fingerprint that is none', { ...recording, checkpoints: ['zz'] }],
    ['a bike without sprockets', { ...recording, bike: { ...recording.bike, sprocketsTeeth: [] } }],
    ['a rider without mass', { ...recording, rider: { ...recording.rider, massKg: 0 } }],
  ];

  it.each(broken)('%s is refused with a sentence', (_what, value) => {
    const parsed = parseRecording(value);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(recordingSentence(parsed)).toMatch(/^[A-Z].{20,}\.$/);
  });
});
