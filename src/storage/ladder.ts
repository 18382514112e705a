/**
 * Old things climb to the present shape one version at a time. A ladder is a list of pure steps; what a value
 * of the present version must look like is checked by its reader, not here.
 */
import { isFields } from '../core/math/measure.ts';

/** Plain data with names. */
export type Fields = Readonly<Record<string, unknown>>;
/** From one version to the next; the new version number is set by `climb`. */
export type Step = (old: Fields) => Fields;

/** What was read, or why it cannot be. */
export type StoredReading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly code: 'corrupt' | 'newer-version' };

export const CORRUPT = { ok: false, code: 'corrupt' } as const;
export const NEWER = { ok: false, code: 'newer-version' } as const;

/**
 * How data that belong to another room are read: their present version, the steps up to it (the first leads from
 * version 1 to 2) and a check of the present shape that answers null for what does not fit.
 */
export interface Shape<T> {
  readonly schema: number;
  readonly steps?: readonly Step[];
  readonly read: (value: unknown) => T | null;
}

/** The same for data that are kept as records of one kind. */
export interface RecordKind<T> extends Shape<T> {
  readonly kind: string;
}

/** A record of a kind, as it is put. */
export const recordOf = <T>({ kind, schema }: RecordKind<T>, id: string, data: T) => ({
  kind,
  id,
  schema,
  data,
});

/** Walks the steps from version `from` to the last; a step that throws means the old value was broken. */
function climb(steps: readonly Step[], from: unknown, value: unknown): StoredReading<unknown> {
  if (typeof from !== 'number' || !Number.isInteger(from) || from < 1) return CORRUPT;
  if (from > steps.length + 1) return NEWER;
  try {
    return { ok: true, value: steps.slice(from - 1).reduce((old, step) => step(old as Fields), value) };
  } catch {
    return CORRUPT;
  }
}

/** Climbs a value that carries its version as `schema`. */
export function climbFields(steps: readonly Step[], value: unknown): StoredReading<Fields> {
  if (!isFields(value)) return CORRUPT;
  const climbed = climb(steps, value['schema'], value);
  if (!climbed.ok) return climbed;
  return { ok: true, value: { ...(climbed.value as Fields), schema: steps.length + 1 } };
}

/** Reads data of another room, whose version is kept beside them. */
export function readShaped<T>(shape: Shape<T>, version: number, value: unknown): StoredReading<T> {
  const climbed = climb(shape.steps ?? [], version, value);
  if (!climbed.ok) return climbed;
  try {
    const read = shape.read(climbed.value);
    return read === null ? CORRUPT : { ok: true, value: read };
  } catch {
    return CORRUPT;
  }
}
