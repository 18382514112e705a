/**
 * Rides for the tests of a group session: real ones by virtual riders on bundled levels, made once per
 * process, and made-up records in any number for what does not look at recordings. No expectation lives here.
 */
import type { ClinicPlan } from '../../../src/core/group/plan.ts';
import { RULES_VERSION } from '../../../src/core/coach/rules.ts';
import {
  makeRecord,
  type RideRecord,
  sealRecord,
  usualRecordId,
} from '../../../src/core/group/records/record.ts';
import { createRemarker, type Remarker } from '../../../src/core/group/records/remark.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { between, type Random, seededRandom } from '../../../src/core/math/random.ts';
import { setupOfJob } from '../../../src/core/ride/job.ts';
import type { Recording } from '../../../src/core/ride/recording.ts';
import { habitsForSkill, virtualRider } from '../../../src/core/virtual/riders.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { BUNDLED, bike, levelById, rider } from '../ride/worlds.ts';

export const VERSION = RULES_VERSION;

/** The same ride as a device hands it on that keeps no recordings. */
export const marksOnly = (record: RideRecord): RideRecord => ({ ...record, recording: null });

/** A sound plan, with some parts changed. */
export function planWith(changes: Partial<ClinicPlan> = {}): ClinicPlan {
  return {
    schema: 1,
    id: 'tuesday',
    title: 'Tuesday',
    rides: [{ kind: 'bundled', levelId: 'one-pitch-announced' }],
    seedRule: 'same',
    seed: 5,
    bike: 'kids-24-1x8',
    riderId: 'by-bike',
    attempts: 3,
    aids: 'as-level',
    shows: 'group-picture',
    order: 'rotate',
    audience: 'everyone',
    ...changes,
  };
}

/** The recording of a virtual rider of some skill. */
export function recordingOf(level: Level, skill: number, seed: number, bikeId = 'kids-24-1x8'): Recording {
  const riderId = bikeId.startsWith('kids') ? 'child-9' : 'adult-weekly';
  const job = { level, seed: level.seed, bike: bike(bikeId), rider: rider(riderId), autoEase: false };
  const world = buildRideWorld(courseOfLevel(level), job.bike, job.rider);
  return rideThrough(world, virtualRider(world, habitsForSkill(skill), seed)).recording(setupOfJob(job));
}

/** A remarker that knows the bundled levels. */
export function bundledRemarker(version = VERSION): Remarker {
  return createRemarker((record) => BUNDLED.find(({ level }) => level.id === record.levelId)?.level, version);
}

/** A real record: ridden by a virtual rider, marked like any ride. */
export function realRecord(
  who: {
    readonly deviceId: string;
    readonly seq: number;
    readonly nickname: string;
    readonly attempt: number;
  },
  skill: number,
  levelId = 'one-pitch-announced',
  bikeId = 'kids-24-1x8',
): RideRecord {
  const level = levelById(levelId);
  const recording = recordingOf(level, skill, who.seq * 31 + who.deviceId.length, bikeId);
  const report = remarkerForMaking.mark(level, recording);
  if (report === null) throw new Error('the virtual rider never finished');
  const id = usualRecordId(who.deviceId, who.seq);
  return makeRecord({ id, planId: 'tuesday', rideIndex: 0, version: VERSION, ...who, recording, report });
}

const remarkerForMaking = bundledRemarker();

const TIMINGS = ['too-early', 'about-right', 'too-late'] as const;

/** A made-up record without a recording; every number from the seed. */
export function madeUpRecord(
  who: {
    readonly deviceId: string;
    readonly seq: number;
    readonly nickname?: string;
    readonly attempt?: number;
  },
  random: Random = seededRandom(who.seq),
  pitchCount = 9,
): RideRecord {
  const tenth = (low: number, high: number): number => Math.round(between(random, low, high) * 10) / 10 + 0;
  const whole = (low: number, high: number): number => Math.floor(between(random, low, high + 1));
  return sealRecord({
    schema: 1,
    id: usualRecordId(who.deviceId, who.seq),
    planId: 'tuesday',
    deviceId: who.deviceId,
    seq: who.seq,
    nickname: who.nickname ?? 'red-fox',
    attempt: who.attempt ?? 1,
    rideIndex: 0,
    levelId: 'check-ride',
    levelHash: '0123456789abcdef',
    seed: 5,
    bikeId: 'kids-24-1x8',
    riderId: 'child-9',
    total: tenth(0, 100),
    marks: {
      cadence: tenth(0, 100),
      foresight: tenth(0, 100),
      easing: random() < 0.1 ? null : tenth(0, 100),
      chainLine: null,
      economy: tenth(0, 100),
    },
    pitches: Array.from({ length: pitchCount }, () => ({
      creditPercent: random() < 0.1 ? null : whole(0, 100),
      timing: TIMINGS[whole(0, 2)] ?? 'about-right',
      firstShiftBeforeFootM: random() < 0.1 ? null : tenth(-40, 40),
      stepsBeforeFoot: whole(0, 4),
    })),
    ticks: whole(8_000, 40_000),
    version: VERSION,
    recordingHash: whole(0, 0xffffffff).toString(16).padStart(8, '0').repeat(2),
    recording: null,
  });
}

/** A 3 km road as a recorder would give it: a height every 5 m, to a tenth of a metre. */
export function ownLevel(): Level {
  const random = seededRandom(9);
  let slope = 0;
  let height = 120;
  const heightsM = Array.from({ length: 601 }, () => {
    slope = Math.max(-0.07, Math.min(0.09, slope + (random() - 0.5) * 0.03));
    height += slope * 5;
    return Math.round(height * 10) / 10;
  });
  const parsed = parseLevel({
    ...levelById('one-pitch-announced'),
    id: 'our-sunday-road',
    title: 'Our Sunday road – Käsbühl',
    pieces: [{ kind: 'recorded', stepM: 5, heightsM }],
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.level;
}
