/** The doors through which the address of a shared store and the progress with it come back after a reload. */
import * as z from 'zod/mini';
import type { Shape } from '../ladder.ts';
import type { SharedAddress, SharedProgress } from './types.ts';

const text = z.string().check(z.maxLength(400));
const addressSchema = z.strictObject({ url: text, database: text, name: text, password: text });
const progressSchema = z.strictObject({
  schema: z.literal(1),
  store: z.string(),
  there: z.array(z.string()),
  refused: z.array(z.string()),
  since: z.record(z.string(), z.string()),
});

export const ADDRESS_SHAPE: Shape<SharedAddress> = {
  schema: 1,
  steps: [],
  read: (value) => addressSchema.safeParse(value).data ?? null,
};

export const PROGRESS_SHAPE: Shape<SharedProgress> = {
  schema: 1,
  steps: [],
  read: (value) => progressSchema.safeParse(value).data ?? null,
};
