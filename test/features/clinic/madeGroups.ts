/**
 * Groups that are late, early, mixed or right on purpose, on roads of three pitches, with lines that fit: every number
 * from the seed. No expectation lives here.
 */
import type { GroupRide } from '../../../src/core/group/picture/groupRide.ts';
import { type PitchDigest, type RideRecord, sealRecord } from '../../../src/core/group/records/record.ts';
import type { RoadReference } from '../../../src/core/group/records/remark.ts';
import type { RideLine } from '../../../src/core/group/records/rideLine.ts';
import { courseOfLevel, levelHash } from '../../../src/core/level/build.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { between, type Random, seededRandom } from '../../../src/core/math/random.ts';
import { madeUpRecord } from '../../core/group/rides.ts';
import file from '../../../levels/click-before-the-hill.json' with { type: 'json' };

export const TENDENCIES = ['late', 'early', 'mixed', 'right', 'any'] as const;
export type Tendency = (typeof TENDENCIES)[number];

/** A road of three pitches; `n` makes it another one. */
export function roadOf(n: number): Level {
  const pitch = { kind: 'pitch', lengthM: 40, slopeRatio: 0.06 + n / 100 };
  const flat = { kind: 'flat', lengthM: 150 };
  const parsed = parseLevel({
    ...file,
    id: `made-road-${n}`,
    title: `Made road ${n}`,
    cues: [],
    pieces: [flat, pitch, flat, pitch, flat, pitch, flat],
  });
  if (!parsed.ok) throw new Error('the made road does not parse');
  return parsed.level;
}

const STEP_M = 2;
const HARD = 80;
const EASY = 40;

/** A line that is in the easy gear from so many metres before each foot until its end. */
function lineThrough(level: Level, readyM: readonly (number | null)[]): RideLine {
  const { lengthM, pitches } = courseOfLevel(level);
  const places = Math.floor(lengthM / STEP_M) + 1;
  const development = new Uint8Array(places).fill(HARD);
  pitches.forEach(({ footM, endM }, i) => {
    const ready = readyM[i];
    if (ready === null || ready === undefined) return;
    development.fill(EASY, Math.ceil((footM - ready) / STEP_M), Math.floor(endM / STEP_M) + 1);
  });
  const none = new Uint16Array();
  const cadenceRpm = new Uint8Array(places).fill(75);
  return { stepM: STEP_M, cadenceRpm, development, easierAtM: none, harderAtM: none };
}

function referenceOf(level: Level): RoadReference {
  const { lengthM, pitches } = courseOfLevel(level);
  return {
    levelHash: levelHash(level),
    seed: level.seed,
    bikeId: 'kids-24-1x8',
    riderId: 'child-9',
    lengthM,
    line: lineThrough(level, [15, 15, 15]),
    pitches: pitches.map((pitch) => ({ ...pitch, firstShiftBeforeFootM: 20 })),
  };
}

function drawn(tendency: Tendency, random: Random): PitchDigest['timing'] {
  const at = random();
  if (tendency === 'right') return 'about-right';
  if (tendency === 'any') return at < 0.34 ? 'too-early' : at < 0.67 ? 'about-right' : 'too-late';
  if (tendency === 'mixed') return at < 0.4 ? 'too-early' : at < 0.6 ? 'about-right' : 'too-late';
  const usual = tendency === 'late' ? 'too-late' : 'too-early';
  const other = tendency === 'late' ? 'too-early' : 'too-late';
  return at < 0.6 ? usual : at < 0.94 ? 'about-right' : other;
}

const READY: Readonly<Record<PitchDigest['timing'], readonly [number, number]>> = {
  'too-early': [60, 100],
  'about-right': [4, 30],
  'too-late': [-30, -4],
};
const CREDIT: Readonly<Record<PitchDigest['timing'], readonly [number, number]>> = {
  'too-early': [10, 69],
  'about-right': [70, 100],
  'too-late': [0, 69],
};

/** All rides of one group over one road, everybody as often. */
function ridesOver(level: Level, rideIndex: number, tendency: Tendency, random: Random): GroupRide[] {
  const riders = Math.floor(between(random, 3, 13));
  const attempts = Math.floor(between(random, 1, 3.99));
  const reference = referenceOf(level);
  return Array.from({ length: riders * attempts }, (_, i): GroupRide => {
    const timings = [0, 1, 2].map(() => drawn(tendency, random));
    const ready = timings.map((timing) =>
      timing === 'too-late' && random() < 0.3 ? null : between(random, ...READY[timing]),
    );
    const who = { deviceId: 'a', seq: rideIndex * 1000 + i + 1, nickname: `~Rider ${i % riders}` };
    const record: RideRecord = sealRecord({
      ...madeUpRecord({ ...who, attempt: Math.floor(i / riders) + 1 }, random, 3),
      planId: 'session-1',
      rideIndex,
      levelId: level.id,
      levelHash: levelHash(level),
      seed: level.seed,
      pitches: timings.map((timing) => ({
        creditPercent: Math.floor(between(random, ...CREDIT[timing])),
        timing,
        firstShiftBeforeFootM: null,
        stepsBeforeFoot: 0,
      })),
    });
    return { record, line: lineThrough(level, ready), reference };
  });
}

/** One group. On two roads it may take the second one the other way round. */
export interface MadeGroup {
  readonly name: string;
  readonly levels: readonly Level[];
  readonly rides: readonly GroupRide[];
}

/** A group from a seed. */
export function madeGroup(tendency: Tendency, roads: 1 | 2, seed: number): MadeGroup {
  const random = seededRandom(seed);
  const levels = Array.from({ length: roads }, (_, i) => roadOf(i + 1));
  const second: Tendency = tendency === 'late' ? 'early' : tendency === 'early' ? 'late' : tendency;
  return {
    name: `${tendency}, ${roads} ${roads === 1 ? 'road' : 'roads'}, seed ${seed}`,
    levels,
    rides: levels.flatMap((level, i) => ridesOver(level, i, i === 0 ? tendency : second, random)),
  };
}
