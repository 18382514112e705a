/** Long work away from the page: piece by piece with its share, stopped at once, and done here where no worker is. */
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/math/random.ts';
import { readRideFile, writeRideFile } from '../../src/core/transfer/rideFile.ts';
import { askFor, type Made } from '../../src/worker/longWork.ts';
import { readRidesAway } from '../../src/worker/rideFileClient.ts';
import { madeUpRecord } from '../core/group/rides.ts';

const records = Array.from({ length: 450 }, (_, i) =>
  madeUpRecord({ deviceId: 't1', seq: i + 1, nickname: 'red-fox', attempt: 1 }, seededRandom(i)),
);
const text = `${writeRideFile({ planId: 'tuesday', deviceId: 't1', lastSeq: 450, withdrawn: [], records })}{"torn\n`;
const noWorker = (): null => null;

async function* counting(to: number): AsyncGenerator<Made<number>> {
  for (let i = 1; i <= to; i += 1) yield { share: i / to, value: i };
}
const here = () => Promise.resolve(counting);

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

describe('asking', () => {
  /** A worker of a host that lost its script. */
  class Broken extends EventTarget {
    ended = false;
    postMessage(): void {
      queueMicrotask(() => this.dispatchEvent(new Event('error')));
    }
    terminate(): void {
      this.ended = true;
    }
  }

  it('does the work here where the worker cannot be loaded, and ends that one', async () => {
    const broken = new Broken();
    const made: number[] = [];
    const start = (): Worker => broken as unknown as Worker;
    for await (const { value } of askFor({ start, here }, 3, new AbortController().signal)) made.push(value);
    expect(made).toEqual([1, 2, 3]);
    expect(broken.ended).toBe(true);
  });

  it('ends the worker when nobody waits any more', async () => {
    const silent = new EventTarget() as EventTarget & { ended?: boolean };
    const worker = Object.assign(silent, {
      postMessage: () => undefined,
      terminate: () => void (silent.ended = true),
    }) as unknown as Worker;
    const stopping = new AbortController();
    const made: number[] = [];
    const asking = (async () => {
      for await (const { value } of askFor({ start: () => worker, here }, 3, stopping.signal))
        made.push(value);
    })();
    stopping.abort();
    await asking;
    expect(made).toEqual([]);
    expect(silent.ended).toBe(true);
  });
});
