/**
 * The doors through which the address of a shared store and the progress with it come back after a reload, and the
 * names they had in the database. Neither ever travels in a copy of everything.
 */
import type { StoreAddress } from '../core/transfer/clubStore.ts';
import * as z from 'zod/mini';
import type { Shape } from './ladder.ts';
import { type Agreement, databaseUrl, type SharedProgress } from './sharedTypes.ts';

/** Kind of the record in which an address was kept before it had to be agreed to; now it is only asked about. */
export const OLD_ADDRESS = 'clinic-store';
export const PROGRESS = 'clinic-store-progress';
/** Kind of the note that a ride of a group was marked on this device. */
export const OWN_RIDE = 'clinic-own';

/**
 * Kinds of records that are neither put into a copy nor taken out of one; besides a store's, which tab has the group
 * sessions, which rides are about to go and which were marked here.
 */
export const STAYS_HERE: ReadonlySet<string> = new Set([
  OLD_ADDRESS,
  PROGRESS,
  'clinic-owner',
  'clinic-undone',
  OWN_RIDE,
]);

const text = z.string().check(z.maxLength(400));
const addressSchema = z.strictObject({ url: text, database: text, name: text, password: text });
const agreementSchema = z.strictObject({
  schema: z.literal(1),
  address: addressSchema,
  atMs: z.number().check(z.gte(0)),
});
const progressSchema = z.strictObject({
  schema: z.literal(3),
  store: z.string(),
  there: z.array(z.string()),
  met: z.array(z.string()),
  refused: z.array(z.string()),
  since: z.record(z.string(), z.string()),
  sentAtMs: z.nullable(z.number().check(z.gte(0))),
});

export const ADDRESS_SHAPE: Shape<StoreAddress> = {
  schema: 1,
  steps: [],
  read: (value) => addressSchema.safeParse(value).data ?? null,
};

/** The agreement, or null where it cannot be read: then nobody has agreed. */
export function readAgreement(value: unknown): Agreement | null {
  return agreementSchema.safeParse(value).data ?? null;
}

/** What a copy says about a store, to be shown: only an address that can be one, and never a password. */
export function readOffer(record: { readonly kind: string; readonly data: unknown }): StoreAddress | null {
  const address = record.kind === OLD_ADDRESS ? ADDRESS_SHAPE.read(record.data) : null;
  return address === null || databaseUrl(address) === null ? null : { ...address, password: '' };
}

export const PROGRESS_SHAPE: Shape<SharedProgress> = {
  schema: 3,
  steps: [
    // When something went there last was not noted before.
    (old) => ({ ...old, schema: 2, sentAtMs: null }),
    // Nor which rides came from there: everything is read once more.
    (old) => ({ ...old, schema: 3, met: [], since: {} }),
  ],
  read: (value) => progressSchema.safeParse(value).data ?? null,
};
