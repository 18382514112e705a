/** Sending to a store in the tests: what was said on the way, and what is there at the end. */
import type { StoreAddress, StoreStanding } from '../../../src/core/transfer/clubStore.ts';
import { expect } from 'vitest';
import type { RideRecord } from '../../../src/core/group/records/record.ts';
import { canonicalJson } from '../../../src/core/math/hash.ts';
import {
  fetchRides,
  sendPieces,
  type SendTools,
  type SharedPiece,
  type SharedProgress,
} from '../../../src/storage/shared/index.ts';
import { madeUpRecord } from '../../core/group/rides.ts';
import type { StoreServer } from './server.ts';

export const ridesOf = (deviceId: string, count: number): RideRecord[] =>
  Array.from({ length: count }, (_, i) => madeUpRecord({ deviceId, seq: i + 1 }));
export const handOver = (deviceId: string, records: readonly RideRecord[], withdrawn: string[] = []) => ({
  planId: 'tuesday',
  deviceId,
  lastSeq: records.length,
  withdrawn,
  records,
});

/** What came of sending. */
export interface Sent {
  readonly progress: SharedProgress;
  readonly states: readonly StoreStanding[];
  readonly pausesMs: readonly number[];
}

/** Sends; `onPause` is what happens while the sender waits, and false ends the waiting. */
export async function send(
  store: StoreServer,
  pieces: readonly SharedPiece[],
  onPause: (count: number) => Promise<boolean> = async () => false,
  kept: SharedProgress | null = null,
  address: StoreAddress = store.address,
): Promise<Sent> {
  const states: StoreStanding[] = [];
  const pausesMs: number[] = [];
  const tools: SendTools = {
    fetch,
    sleep: async (ms) => {
      pausesMs.push(ms);
      if (!(await onPause(pausesMs.length))) throw new Error('nobody waits any longer');
    },
    onState: (state) => states.push(state),
    now: () => 1_800_000_000_000,
  };
  return { progress: await sendPieces(address, pieces, kept, tools), states, pausesMs };
}

export const fetched = (store: StoreServer, kept: SharedProgress | null = null) =>
  fetchRides(store.address, 'tuesday', kept, fetch);
export const texts = (records: readonly RideRecord[]): string[] =>
  records.map((record) => canonicalJson(record)).sort();

/** Just these rides are there, each once, and come back the same. */
export async function expectExactly(
  store: StoreServer,
  records: readonly RideRecord[],
  heads = 1,
): Promise<void> {
  const documents = await store.documents();
  expect(documents.filter(({ id }) => id.startsWith('ride:'))).toHaveLength(records.length);
  expect(documents).toHaveLength(records.length + heads);
  const { read, problem } = await fetched(store);
  expect(problem).toBeNull();
  expect(texts(read.set.records)).toEqual(texts(records));
  expect(read.set.damaged).toEqual([]);
}
