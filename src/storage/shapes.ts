/**
 * The doors of what is kept: anything → a ride, a result, an own level, settings or a record of the present
 * version, or the reason why not. Inside, kept things are trusted. A reader changes nothing it was given.
 */
import * as z from 'zod/mini';
import { parseLevel } from '../core/level/parse.ts';
import { fingerprintShape, type Level, LEVEL_SCHEMA, seedShape } from '../core/level/schema.ts';
import { LIMITS } from '../core/math/limits.ts';
import { isFields, isTooDeep } from '../core/math/measure.ts';
import { parseRecording, type Recording, RECORDING_SCHEMA } from '../core/ride/recording.ts';
import { CORRUPT, climbFields, type Fields, NEWER, type StoredReading, type Step } from './ladder.ts';

/** Version of the shape of a kept ride. */
export const RIDE_SCHEMA = 2;

/** Until version 1 only marked rides were kept, all of them ridden and marked by the first physics and rules. */
const markedByTheFirst: Step = (old) => ({
  ...old,
  standing: 'marked',
  physicsVersion: '1',
  rulesVersion: '1',
});

/** The steps of each kind of kept thing; the first leads from version 1 to 2. Older steps are never changed. */
export const LADDERS = {
  rides: [markedByTheFirst],
  results: [markedByTheFirst],
  levels: [],
  settings: [],
  export: [],
  localBackup: [],
} as const satisfies Readonly<Record<string, readonly Step[]>>;

/** 0 to 100. */
const mark = z.nullable(z.number().check(z.gte(0), z.lte(100)));
const shortText = z.string().check(z.maxLength(80));
const id = z.string().check(z.regex(/^[\w-]{1,64}$/));
/** Milliseconds since 1970. */
const timeMs = z.number().check(z.gte(0));
const version = z.int().check(z.gte(1));
const rulesText = z.string().check(z.minLength(1), z.maxLength(40));

const resultSchema = z
  .strictObject({
    schema: z.literal(RIDE_SCHEMA),
    /** Random; the same ride has the same id on every device. */
    id,
    savedAtMs: timeMs,
    levelId: shortText,
    levelTitle: shortText,
    levelHash: fingerprintShape,
    seed: seedShape,
    bikeId: shortText,
    riderId: shortText,
    kind: z.enum(['ride', 'check', 'clinic']),
    /** It has its marks, they are still to be worked out, or it broke off before the finish and never gets any. */
    standing: z.enum(['marked', 'to-mark', 'unfinished']),
    /** Version of the physics it was ridden by. */
    physicsVersion: rulesText,
    /** Version of the rules it was marked by; null without marks. */
    rulesVersion: z.nullable(rulesText),
    /** Null without marks. */
    total: mark,
    /** Null where the ride gave nothing to judge. */
    marks: z.strictObject({ cadence: mark, foresight: mark, easing: mark, chainLine: mark, economy: mark }),
    passed: z.boolean(),
  })
  .check(
    z.refine(
      ({ standing, total, rulesVersion }) =>
        (standing === 'marked') === (total !== null) && (total === null) === (rulesVersion === null),
    ),
  );
const levelSchema = z.strictObject({
  schema: z.literal(1),
  id,
  savedAtMs: timeMs,
  /** Hidden but still here, so that deleting can be undone. */
  deleted: z.boolean(),
  level: z.unknown(),
});
const settingsSchema = z.strictObject({
  schema: z.literal(1),
  savedAtMs: timeMs,
  /** Version of `value`, counted by those who own it. */
  version,
  value: z.unknown(),
});
const recordSchema = z.strictObject({
  kind: z.string().check(z.regex(/^[a-z][a-z-]{0,39}$/)),
  id,
  /** Version of `data`, counted by those who own it. */
  schema: version,
  savedAtMs: timeMs,
  data: z.unknown(),
});

/** What a ride came to, without the ride itself. */
export type StoredResult = Readonly<z.infer<typeof resultSchema>>;

/** A whole kept ride. It has one writer and never changes, but for its marks, which may come later. */
export interface SavedRide extends StoredResult {
  readonly recording: Recording;
  /** The level itself, where it is not one that comes with the game. */
  readonly level?: Level;
}

export interface OwnLevel extends Readonly<z.infer<typeof levelSchema>> {
  readonly level: Level;
}

/** The choices of the person, opaque here. */
export type KeptSettings = Readonly<z.infer<typeof settingsSchema>>;

/** Anything else that is kept by kind and id, such as a clinic; its data are opaque here. */
export type KeptRecord = Readonly<z.infer<typeof recordSchema>>;

/** The parts of the database, and what each holds. */
export interface KeptThings {
  readonly rides: SavedRide;
  readonly results: StoredResult;
  readonly levels: OwnLevel;
  readonly settings: KeptSettings;
  readonly records: KeptRecord;
}
export type StoreName = keyof KeptThings;
export const STORES: readonly StoreName[] = ['rides', 'results', 'levels', 'settings', 'records'];

/** The result part of a ride: everything but what makes it a whole one. */
export function withoutRide(ride: Fields): Fields {
  return Object.fromEntries(
    Object.entries(ride).filter(([name]) => name !== 'recording' && name !== 'level'),
  );
}

/** Reads the result part of a whole ride without looking into its recording, for long lists. */
export function readResultOfRide(value: unknown): StoredReading<StoredResult> {
  const climbed = climbFields(LADDERS.rides, value);
  if (!climbed.ok) return climbed;
  if (!isFields(climbed.value['recording'])) return CORRUPT;
  const parsed = resultSchema.safeParse(withoutRide(climbed.value));
  return parsed.success ? { ok: true, value: parsed.data } : CORRUPT;
}

function readRide(value: unknown): StoredReading<SavedRide> {
  const result = readResultOfRide(value);
  if (!result.ok) return result;
  const climbed = climbFields(LADDERS.rides, value);
  if (!climbed.ok) return climbed;
  const { recording: rawRecording, level: rawLevel } = climbed.value;
  const recording = parseRecording(rawRecording);
  if (!recording.ok) return isNewer(rawRecording, RECORDING_SCHEMA) ? NEWER : CORRUPT;
  if (rawLevel === undefined) return { ok: true, value: { ...result.value, recording: recording.recording } };
  const level = parseLevel(rawLevel);
  if (!level.ok) return isNewer(rawLevel, LEVEL_SCHEMA) ? NEWER : CORRUPT;
  return { ok: true, value: { ...result.value, recording: recording.recording, level: level.level } };
}

/** Reads what climbs a ladder and has a shape at its end. */
function readBy<T>(steps: readonly Step[], shape: z.ZodMiniType<T>, value: unknown): StoredReading<T> {
  const climbed = climbFields(steps, value);
  if (!climbed.ok) return climbed;
  const parsed = shape.safeParse(climbed.value);
  return parsed.success ? { ok: true, value: parsed.data } : CORRUPT;
}

function readLevel(value: unknown): StoredReading<OwnLevel> {
  const read = readBy(LADDERS.levels, levelSchema, value);
  if (!read.ok) return read;
  const level = parseLevel(read.value.level);
  if (!level.ok) return isNewer(read.value.level, LEVEL_SCHEMA) ? NEWER : CORRUPT;
  return level.level.id === read.value.id
    ? { ok: true, value: { ...read.value, level: level.level } }
    : CORRUPT;
}

/** The envelope has no version of its own: `schema` counts the data, whose steps belong to their owner. */
function readRecord(value: unknown): StoredReading<KeptRecord> {
  const parsed = recordSchema.safeParse(value);
  return parsed.success ? { ok: true, value: parsed.data } : CORRUPT;
}

export const READERS: { readonly [S in StoreName]: (value: unknown) => StoredReading<KeptThings[S]> } = {
  rides: notTooDeep(readRide),
  results: notTooDeep((value) => readBy(LADDERS.results, resultSchema, value)),
  levels: notTooDeep(readLevel),
  settings: notTooDeep((value) => readBy(LADDERS.settings, settingsSchema, value)),
  records: notTooDeep(readRecord),
};

/** What lies too deep inside itself can be kept, but neither compared nor written into a file. */
function notTooDeep<T>(read: (value: unknown) => StoredReading<T>): (value: unknown) => StoredReading<T> {
  return (value) => (isTooDeep(value, LIMITS.copy.deep.most) ? CORRUPT : read(value));
}

export const SETTINGS_KEY = 'settings';

/** The key a readable value has in its store. */
export function keyOf(store: StoreName, value: unknown): string {
  if (store === 'settings') return SETTINGS_KEY;
  const { id: key, kind } = value as { id: string; kind?: string };
  return store === 'records' ? recordKey(kind ?? '', key) : key;
}

/** Key of a record: a blank is in neither kind nor id. */
export function recordKey(kind: string, recordId: string): string {
  return `${kind} ${recordId}`;
}

function isNewer(value: unknown, known: number): boolean {
  return isFields(value) && typeof value['schema'] === 'number' && value['schema'] > known;
}
