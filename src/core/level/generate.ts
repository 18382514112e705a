/**
 * Levels that nobody draws: the check ride (equal difficulty from every seed), the free ride, and harder or
 * gentler versions of a level. All of them are ordinary levels that pass `parseLevel`.
 */
import type { Piece } from '../course/pieces.ts';
import { clamp } from '../math/numbers.ts';
import { courseOfLevel } from './build.ts';
import { BARE_ROAD } from './own.ts';
import { type Aids, allAids, type Level, LEVEL_SCHEMA, STEEPEST_RATIO } from './schema.ts';

const BLANK = {
  schema: LEVEL_SCHEMA,
  ...BARE_ROAD,
  weights: { cadence: 1.5, foresight: 2, easing: 1, chainLine: 0.5, economy: 0.5 },
} as const;

const NO_AIDS = allAids(false);

/** Every aid that tells about the machine, none that tells what to do. */
const FREE_AIDS: Aids = { ...NO_AIDS, roadAhead: true, chainView: true };

/** What every metre and every shift decides weighs more than what a few pitches decide: it is more alike from ride to ride. */
const CHECK_WEIGHTS: Level['weights'] = {
  cadence: 2.5,
  foresight: 1.5,
  easing: 2,
  chainLine: 0.5,
  economy: 0.5,
};

/** Bikes that ask for something else than a chain under the legs alone, and so have a check ride of their own. */
export const CHECKED_APART = ['hub', 'crank-motor', 'wheel-motor'] as const;
export type CheckedApart = (typeof CHECKED_APART)[number];

/**
 * Pitches of a check ride. One rider alone is told apart by more of them; a group counts its mean, and eight riders on
 * one device have an hour.
 */
const CHECK_PITCHES = { alone: { everyone: 15, children: 13 }, group: { everyone: 11, children: 10 } };

/**
 * The check ride: unaided, on ground nobody has seen. Every seed has the same pitches, each with the same road before it
 * to a few metres, in another order: what a pitch asks depends on how one arrives. A hub is checked at stop lines as
 * well, a motor at the crank on hills that steepen while it pulls, and one in a wheel where its help is gone at the foot.
 */
export function checkLevel(
  seed: number,
  audience: Level['audience'],
  riders: keyof typeof CHECK_PITCHES = 'alone',
  needs?: CheckedApart,
): Level {
  const children = audience === 'children';
  return {
    ...BLANK,
    id: ['check-ride', needs, children && 'children'].filter(Boolean).join('-'),
    title: 'Check ride',
    sentence: 'A road you have not seen, without help.',
    teaches: 'check',
    audience,
    ...(needs === undefined ? {} : { needs }),
    seed,
    ...checkRoad(CHECK_PITCHES[riders][audience], children, needs),
    weights: CHECK_WEIGHTS,
    aids: NO_AIDS,
    passMark: 70,
  };
}

function checkRoad(
  hills: number,
  children: boolean,
  needs: CheckedApart | undefined,
): Pick<Level, 'pieces' | 'stopLinesM'> {
  const pitches = (pitchCount: number) => ({
    kind: 'random-pitches' as const,
    lengthM: Math.round((children ? 159 : 193.2) * pitchCount),
    pitchCount,
    gentlestRatio: children ? 0.045 : 0.065,
    steepestRatio: children ? 0.065 : 0.11,
    beforeM: children ? 88 : 122,
  });
  const start = { kind: 'flat', lengthM: 60 } as const;
  const end = { kind: 'flat', lengthM: 40 } as const;
  if (needs === undefined) return { pieces: [start, pitches(hills), end], stopLinesM: [] };
  // Two hills that every road has, each behind half of the others.
  const place = APART_HILLS[needs];
  const gentlest = needs !== 'hub' ? 0.07 : children ? 0.04 : 0.055;
  const half = pitches(Math.floor(hills / 2) - 1);
  const pieces = [start, half, ...place(gentlest), half, ...place(gentlest + 0.015), end];
  if (needs !== 'hub') return { pieces, stopLinesM: [] };
  const lineM = start.lengthM + half.lengthM + LINE_AT_M;
  return { pieces, stopLinesM: [lineM, lineM + LINE_PLACE_M + half.lengthM] };
}

/** A way down, a stop line in so many metres, and a hill behind it; the length of it all (m). */
const LINE_AT_M = 135;
const LINE_PLACE_M = 300;

function lineBeforeHill(slopeRatio: number): Level['pieces'] {
  return [
    { kind: 'descent', lengthM: 110, slopeRatio: -0.03 },
    { kind: 'flat', lengthM: 40 },
    { kind: 'pitch', lengthM: 70, slopeRatio },
    { kind: 'flat', lengthM: LINE_PLACE_M - 220 },
  ];
}

/** A hill on which one must change again while legs and motor pull. */
function hillThatSteepens(slopeRatio: number): Level['pieces'] {
  return [
    { kind: 'flat', lengthM: 110 },
    { kind: 'climb', lengthM: 70, slopeRatio: slopeRatio - 0.03 },
    { kind: 'pitch', lengthM: 60, slopeRatio: slopeRatio + 0.02 },
    { kind: 'flat', lengthM: 60 },
  ];
}

const APART_HILLS = {
  hub: lineBeforeHill,
  'crank-motor': hillThatSteepens,
  'wheel-motor': speedBeforeHill,
};

/** A descent on which a motor has nothing to add, and a hill at its foot. */
function speedBeforeHill(slopeRatio: number): Level['pieces'] {
  return [
    { kind: 'descent', lengthM: 160, slopeRatio: -0.045 },
    { kind: 'flat', lengthM: 30 },
    { kind: 'pitch', lengthM: 60, slopeRatio },
    { kind: 'flat', lengthM: 80 },
  ];
}

/** What a free ride may be asked for. */
export interface FreeRideWish {
  readonly seed: number;
  /** 0 nearly flat to 1 very hilly. */
  readonly hilliness: number;
  readonly lengthM: number;
}

export const FREE_RIDE_SHORTEST_M = 500;
export const FREE_RIDE_LONGEST_M = 10_000;

/** A free ride: rolling ground with pitches, any seed. Numbers out of range are brought into it. */
export function freeLevel(wish: FreeRideWish): Level {
  const hilliness = clamp(wish.hilliness, 0, 1);
  const lengthM = Math.round(clamp(wish.lengthM, FREE_RIDE_SHORTEST_M, FREE_RIDE_LONGEST_M));
  const middleM = lengthM - 120;
  const sections = Math.max(1, Math.round(middleM / 700));
  const pieces: Level['pieces'] = [{ kind: 'flat', lengthM: 80 }];
  for (let i = 0; i < sections; i += 1) {
    const sectionM = Math.floor(middleM / sections);
    const rollersM = Math.floor(sectionM * 0.45);
    pieces.push(
      { kind: 'rollers', lengthM: rollersM, waveM: 220, steepestRatio: 0.015 + 0.055 * hilliness },
      {
        kind: 'random-pitches',
        lengthM: sectionM - rollersM,
        pitchCount: Math.max(1, Math.floor((sectionM - rollersM) / 190)),
        gentlestRatio: 0.03 + 0.03 * hilliness,
        steepestRatio: 0.04 + 0.08 * hilliness,
      },
    );
  }
  pieces.push({ kind: 'flat', lengthM: 40 });
  return {
    ...BLANK,
    id: 'free-ride',
    title: 'Free ride',
    sentence: 'Any road you like, as long and as hilly as you like.',
    teaches: 'free',
    audience: 'everyone',
    seed: wish.seed >>> 0,
    pieces,
    aids: FREE_AIDS,
    passMark: 60,
    light: (['day', 'evening', 'mist'] as const)[(wish.seed >>> 0) % 3] ?? 'day',
  };
}

/** Gentlest and hardest version of a level. */
const GENTLEST_NOTCH = -2;
const HARDEST_NOTCH = 3;
const STEEPER_PER_NOTCH = 0.12;
const HIDDEN_BEFORE_FOOT_M = 80;

/**
 * A harder (positive) or gentler (negative) version of a level with another seed: slopes change by 12 % a
 * step, and above 0 the feet of pitches come into sight later.
 */
export function levelAtStep(level: Level, difficultyStep: number, seed: number): Level {
  const n = Math.round(clamp(difficultyStep, GENTLEST_NOTCH, HARDEST_NOTCH));
  if (n === 0 && seed === level.seed) return level;
  const factor = 1 + STEEPER_PER_NOTCH * n;
  const steeper = (ratio: number): number => clamp(ratio * factor, -STEEPEST_RATIO, STEEPEST_RATIO);
  const changed: Level = {
    ...level,
    seed: seed >>> 0,
    pieces: level.pieces.map((piece) => withSlopes(piece, steeper)),
  };
  return n > 0 ? { ...changed, hidden: hideFeet(changed, 75 - 15 * n) } : changed;
}

/** A piece with other slopes: every number of it that is called a ratio is a slope. */
function withSlopes<Kind extends Piece>(piece: Kind, change: (ratio: number) => number): Kind {
  const parts = Object.entries(piece).map(([name, value]: [string, unknown]) => [
    name,
    typeof value === 'number' && name.endsWith('Ratio') ? change(value) : value,
  ]);
  return Object.fromEntries(parts) as Kind;
}

/** Next difficulty step after the latest totals (newest last): two good rides in a row go up, two poor ones down. */
export function nextDifficultyStep(
  difficultyStep: number,
  totals: readonly number[],
  passMark: number,
): number {
  const last = totals.slice(-2);
  if (last.length < 2) return difficultyStep;
  if (last.every((total) => total >= Math.min(95, passMark + 10)))
    return Math.min(HARDEST_NOTCH, difficultyStep + 1);
  if (last.every((total) => total < passMark - 15)) return Math.max(GENTLEST_NOTCH, difficultyStep - 1);
  return difficultyStep;
}

function hideFeet(level: Level, sightM: number): Level['hidden'] {
  const added = courseOfLevel(level)
    .pitches.map((pitch) => ({
      fromM: Math.max(0, pitch.footM - HIDDEN_BEFORE_FOOT_M),
      toM: pitch.footM,
      sightM,
    }))
    .filter((stretch) => stretch.toM > stretch.fromM);
  return added.reduce<Level['hidden']>(
    (list, stretch) =>
      list.some((other) => other.fromM < stretch.toM && stretch.fromM < other.toM)
        ? list
        : [...list, stretch],
    level.hidden,
  );
}
