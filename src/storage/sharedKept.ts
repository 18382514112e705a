/**
 * A club's own store, as it is kept here: who agreed to it, what goes there, how far it has come, and the doors through
 * which that comes back after a reload. Nothing is sent before a person on this device agreed, and none of it ever
 * travels in a copy of everything. States are codes; the sentences for them are found by the pages.
 */
import type { StoreAddress, StoreProblem } from '../core/transfer/clubStore.ts';
import type { ReadFile } from '../core/transfer/rideFile.ts';
import * as z from 'zod/mini';
import type { RecordKind } from './ladder.ts';

const text = z.string().check(z.maxLength(400));
const addressSchema = z.strictObject({ url: text, database: text, name: text, password: text });
const agreementSchema = z.strictObject({
  schema: z.literal(1),
  address: addressSchema,
  /** When (milliseconds since 1970). */
  atMs: z.number().check(z.gte(0)),
});
const progressSchema = z.strictObject({
  schema: z.literal(3),
  /** Which store this is about. */
  store: z.string(),
  /** Ids of pieces that are there for certain. */
  there: z.array(z.string()),
  /** Ids of rides that came from there; this device need not send them. */
  met: z.array(z.string()),
  /** Ids of pieces the store did not take the last time; they are offered again with every new start. */
  refused: z.array(z.string()),
  /** How far has been read for each plan, in the store's own words. */
  since: z.record(z.string(), z.string()),
  /** When pieces went there last (milliseconds since 1970), or null for never. */
  sentAtMs: z.nullable(z.number().check(z.gte(0))),
});

/** A person on this device agreed that rides of group sessions go to just this address. Kept on this device only. */
export type Agreement = Readonly<z.infer<typeof agreementSchema>>;

/** How far this device has come with one store. Plain data for the owner to keep; losing it costs only time. */
export type SharedProgress = Readonly<z.infer<typeof progressSchema>>;

/** In such records an address was kept before it had to be agreed to; now it is only asked about. */
export const OLD_ADDRESS: RecordKind<StoreAddress> = {
  kind: 'clinic-store',
  schema: 1,
  read: (value) => addressSchema.safeParse(value).data ?? null,
};

export const PROGRESS: RecordKind<SharedProgress> = {
  kind: 'clinic-store-progress',
  schema: 3,
  steps: [
    // When something went there last was not noted before.
    (old) => ({ ...old, schema: 2, sentAtMs: null }),
    // Nor which rides came from there: everything is read once more.
    (old) => ({ ...old, schema: 3, met: [], since: {} }),
  ],
  read: (value) => progressSchema.safeParse(value).data ?? null,
};

/** Kind of the note that a ride of a group was marked on this device. */
export const OWN_RIDE = 'clinic-own';

/**
 * Kinds of records that are neither put into a copy nor taken out of one; besides a store's, which tab has the group
 * sessions, which rides are about to go and which were marked here.
 */
export const STAYS_HERE: ReadonlySet<string> = new Set([
  OLD_ADDRESS.kind,
  PROGRESS.kind,
  'clinic-owner',
  'clinic-undone',
  OWN_RIDE,
]);

/** The agreement, or null where it cannot be read: then nobody has agreed. */
export function readAgreement(value: unknown): Agreement | null {
  return agreementSchema.safeParse(value).data ?? null;
}

/** What a copy says about a store, to be shown: only an address that can be one, and never a password. */
export function readOffer(record: { readonly kind: string; readonly data: unknown }): StoreAddress | null {
  const address = record.kind === OLD_ADDRESS.kind ? OLD_ADDRESS.read(record.data) : null;
  return address === null || databaseUrl(address) === null ? null : { ...address, password: '' };
}

/** One thing that goes there, never changed afterwards. */
export interface SharedPiece {
  readonly id: string;
  readonly body: Readonly<Record<string, unknown>>;
}

/** What was fetched; `problem` is null where everything was read to the end. */
export interface Fetched {
  readonly read: ReadFile;
  readonly progress: SharedProgress;
  readonly problem: StoreProblem | null;
}

/** Problems that go away by themselves; for the others a person has to do something. */
export function passes(problem: StoreProblem): boolean {
  return problem === 'unreachable' || problem === 'busy' || problem === 'disk-full';
}

export function databaseUrl({ url, database }: StoreAddress): string | null {
  // Names as the store itself allows them; anything else would reach into its other parts.
  if (!/^[a-z][a-z0-9_$()+/-]{0,200}$/.test(database)) return null;
  try {
    const parsed = new URL(url.trim());
    if (!['http:', 'https:'].includes(parsed.protocol) || parsed.username !== '' || parsed.hostname === '')
      return null;
    return `${parsed.origin}${parsed.pathname.replace(/\/+$/, '')}/${encodeURIComponent(database)}`;
  } catch {
    return null;
  }
}
