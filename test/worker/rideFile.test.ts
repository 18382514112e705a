/** A long text of rides, read by the handful: with its share, and stopped at once. */
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/math/random.ts';
import { readRideFile, writeRideFile } from '../../src/core/transfer/rideFile.ts';
import { readRidesAway } from '../../src/worker/rideFileClient.ts';
import { rideFileService } from '../../src/worker/rideFileWork.ts';
import { workplaceOf } from './nearWorker.ts';
import { madeUpRecord } from '../core/group/rides.ts';

const records = Array.from({ length: 450 }, (_, i) =>
  madeUpRecord({ deviceId: 't1', seq: i + 1, nickname: 'red-fox', attempt: 1 }, seededRandom(i)),
);
const text = `${writeRideFile({ planId: 'tuesday', deviceId: 't1', lastSeq: 450, withdrawn: [], records })}{"torn\n`;
const noWorker = workplaceOf(() => rideFileService);

describe('a long text of rides', () => {
  it('comes out as it does in one go, and tells how far it is', async () => {
    const shares: number[] = [];
    const read = await readRidesAway(
      noWorker,
      text,
      (share) => shares.push(share),
      new AbortController().signal,
    );
    expect(read).toEqual(readRideFile(text));
    expect(read?.set.records).toHaveLength(450);
    expect(shares.length).toBeGreaterThan(3);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
  });

  it('is stopped between two handfuls, and nothing of it is given', async () => {
    const stopping = new AbortController();
    const shares: number[] = [];
    const read = await readRidesAway(
      noWorker,
      text,
      (share) => {
        shares.push(share);
        stopping.abort();
      },
      stopping.signal,
    );
    expect(read).toBeNull();
    expect(shares).toHaveLength(1);
  });
});
