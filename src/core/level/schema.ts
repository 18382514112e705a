/**
 * The shape of a level file, as a schema. It only says what may stand where; what makes sense together
 * (stretches that overlap, a stop line beyond the end) is checked in `parse.ts`.
 */
import * as z from 'zod/mini';
import { LIMITS } from '../math/limits.ts';
import { BIGGEST_SEED } from '../math/random.ts';

// The faster way writes code at run time, which a page with a strict policy forbids and would report.
z.config({ jitless: true });

/** Version of the level format this build reads and writes. */
export const LEVEL_SCHEMA = 1;

export const LONGEST_LEVEL_M = 20_000;
export const SHORTEST_LEVEL_M = 100;
export const STEEPEST_RATIO = 0.2;
/** Room a rider needs between two stop lines, before the first and behind the last (m). */
export const STOP_SPACING_M = 40;

/** What a level teaches; the words for it are in the pages. */
export const LESSONS = [
  'levers',
  'cadence',
  'easing',
  'look-ahead',
  'rolling',
  'chain-line',
  'ring-change',
  'ride-over',
  'hidden',
  'stop-gear',
  'wind-and-gravel',
  'everything',
  'check',
  'free',
] as const;

/** Things the game can say at a place; the words for them are in the pages. */
export const CUES = [
  'hill-ahead',
  'ease-then-shift',
  'two-easier-now',
  'one-at-a-time',
  'rest-on-the-way-up',
  'harder-again',
  'hold-rhythm',
  'ride-over',
  'small-ring',
  'big-ring',
  'straight-chain',
  'stop-ahead',
  'easy-before-stop',
  'wind-ahead',
  'gravel-ahead',
  'look-far',
  'last-pitch',
  'easier-lever',
  'harder-lever',
] as const;

/** Land a road leads through. It is seen and changes nothing about the ride, like all that is in the air or beside the road. */
export const PLACES = ['valley', 'forest', 'coast', 'moor', 'pass', 'town'] as const;
const AIRS = ['clear', 'rain', 'snow', 'leaves', 'fluff'] as const;
const COMPANIONS = ['sheep', 'tractor', 'friend'] as const;

/** Kinds of bikes that a level can be about. */
const NEEDS = ['derailleur', 'hub', 'motor', 'crank-motor', 'wheel-motor'] as const;

/** Names of levels, plans and sessions. */
export const ID_TEXT = /^[a-z0-9][a-z0-9-]{0,59}$/;
export const idShape = z.string().check(z.regex(ID_TEXT));
/** Fingerprints, as `math/hash.ts` makes them. */
export const fingerprintShape = z.string().check(z.regex(/^[0-9a-f]{16}$/));
export const seedShape = z.int().check(z.gte(0), z.lte(BIGGEST_SEED));

/** A list that may be left out; it is empty then. */
function listOf<T extends z.ZodMiniType>(entry: T, most = 100) {
  return z._default(z.array(entry).check(z.maxLength(most)), []);
}

const metres = z.number().check(z.gte(0), z.lte(LONGEST_LEVEL_M));
const pieceLength = z.int().check(z.gte(1), z.lte(LONGEST_LEVEL_M));
const upRatio = z.number().check(z.gte(0), z.lte(STEEPEST_RATIO));
const anyRatio = z.number().check(z.gte(-STEEPEST_RATIO), z.lte(STEEPEST_RATIO));

const piece = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('flat'), lengthM: pieceLength }),
  z.strictObject({ kind: z.literal('climb'), lengthM: pieceLength, slopeRatio: anyRatio }),
  z.strictObject({ kind: z.literal('pitch'), lengthM: pieceLength, slopeRatio: upRatio }),
  z.strictObject({ kind: z.literal('descent'), lengthM: pieceLength, slopeRatio: anyRatio }),
  z.strictObject({
    kind: z.literal('rollers'),
    lengthM: pieceLength,
    waveM: z.number().check(z.gte(40), z.lte(2_000)),
    steepestRatio: upRatio,
  }),
  z.strictObject({
    kind: z.literal('random-pitches'),
    lengthM: pieceLength,
    pitchCount: z.int().check(z.gte(1), z.lte(40)),
    gentlestRatio: upRatio,
    steepestRatio: upRatio,
    beforeM: z.optional(z.number().check(z.gte(20), z.lte(500))),
  }),
  z.strictObject({
    kind: z.literal('recorded'),
    stepM: z.int().check(z.gte(1), z.lte(100)),
    heightsM: z
      .array(z.number().check(z.gte(-500), z.lte(9_000)))
      .check(z.minLength(2), z.maxLength(LIMITS.level.heights.most)),
  }),
]);

const stretch = { fromM: metres, toM: metres };
const weight = z.number().check(z.gte(0), z.lte(10));
const flag = z.boolean();

export const levelSchema = z.strictObject({
  schema: z.literal(LEVEL_SCHEMA),
  id: idShape,
  title: z.string().check(z.minLength(1), z.maxLength(80)),
  sentence: z.string().check(z.minLength(1), z.maxLength(240)),
  /** The language its own words are written in (BCP 47); bundled levels need none, theirs are translated. */
  lang: z.optional(z.string().check(z.regex(/^[A-Za-z]{2,3}(-[A-Za-z0-9]{1,8}){0,4}$/))),
  teaches: z.enum(LESSONS),
  audience: z.enum(['everyone', 'children']),
  /** The kind of bike it is about; absent where any will do. Riding it on another is allowed, and teaches less. */
  needs: z.optional(z.enum(NEEDS)),
  /** Place on the ladder of its audience, from 1; 0 for a level that stands beside the ladder. */
  rung: z._default(z.int().check(z.gte(0), z.lte(99)), 0),
  seed: seedShape,
  joinM: z._default(z.number().check(z.gte(6), z.lte(20)), 10),
  pieces: z.array(piece).check(z.minLength(1), z.maxLength(LIMITS.level.pieces.most)),
  stopLinesM: listOf(metres, 50),
  winds: listOf(z.strictObject({ ...stretch, windMps: z.number().check(z.gte(-15), z.lte(15)) })),
  surfaces: listOf(z.strictObject({ ...stretch, surface: z.enum(['gravel', 'grass', 'cobbles']) })),
  hidden: listOf(z.strictObject({ ...stretch, sightM: z.number().check(z.gte(5), z.lte(250)) })),
  cues: listOf(
    z.union([
      z.strictObject({ atM: metres, cue: z.enum(CUES) }),
      z.strictObject({ atM: metres, text: z.string().check(z.minLength(1), z.maxLength(76)) }),
    ]),
  ),
  aids: z.strictObject({
    roadAhead: flag,
    nextStep: flag,
    clickTrack: flag,
    pressureHint: flag,
    liveMarks: flag,
    chainView: flag,
    cues: flag,
  }),
  weights: z.strictObject({
    cadence: weight,
    foresight: weight,
    easing: weight,
    chainLine: weight,
    economy: weight,
  }),
  passMark: z.number().check(z.gte(0), z.lte(100)),
  light: z._default(z.enum(['day', 'evening', 'mist']), 'day'),
  /** Chosen by the seed where nothing stands. */
  place: z.optional(z.enum(PLACES)),
  air: z.optional(z.enum(AIRS)),
  /** Others beside the road, never in the way. */
  company: z.optional(
    z.array(z.strictObject({ atM: metres, who: z.enum(COMPANIONS) })).check(z.maxLength(40)),
  ),
  /** What a child carries up the hills and tries not to spill; such a road is play and has no marks to pass. */
  carries: z.optional(z.enum(['apples'])),
});

/** What came through a schema: plain data that nobody changes. */
export type Unchanging<T> = T extends object ? { readonly [Key in keyof T]: Unchanging<T[Key]> } : T;

/** A level after parsing: every optional part has its value. */
export type Level = z.infer<typeof levelSchema>;
export type Lesson = (typeof LESSONS)[number];
export type CueCode = (typeof CUES)[number];
export type Place = (typeof PLACES)[number];
export type Air = (typeof AIRS)[number];
export type Companion = NonNullable<Level['company']>[number];
export type Aids = Level['aids'];
export type MarkWeights = Level['weights'];

/** All help on, or none. */
export function allAids(on: boolean): Aids {
  return {
    roadAhead: on,
    nextStep: on,
    clickTrack: on,
    pressureHint: on,
    liveMarks: on,
    chainView: on,
    cues: on,
  };
}
