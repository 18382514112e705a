/** Asking a worker that falls silent, breaks or is not there: every question comes to an end. */
import { describe, expect, it, vi } from 'vitest';
import { createGpxImporter } from '../../src/worker/gpxClient.ts';
import { createGpxDesk } from '../../src/worker/gpxDesk.ts';
import { connect, partsOf } from '../../src/worker/asking.ts';
import { Cancelled, type Method, telling } from '../../src/worker/rpc.ts';
import { BrokenWorker, NearWorker, SilentWorker, workplaceOf } from './nearWorker.ts';

/** Twice of a number; all numbers up to one, each told. */
interface Numbers {
  readonly twice: Method<number, never, number>;
  readonly count: Method<number, number, void>;
}

const numbers: Numbers = {
  twice: async (number) => 2 * number,
  count: telling(async function* count(to: number) {
    for (let i = 1; i <= to; i += 1) yield i;
  }),
};
const SILENCE_S = 5;

/** Those who do the work, one after the other, and which of them were started. */
function workers(all: readonly (SilentWorker | null)[]) {
  const started: (SilentWorker | null)[] = [];
  const start = (): Worker | null => {
    const next = all[started.length] ?? null;
    started.push(next);
    return next === null ? null : next.worker;
  };
  const here = () => Promise.resolve(numbers);
  return { started, options: { start, here, afterSilence: 'nobody' as const, silenceS: SILENCE_S } };
}

/** What became of a question by the end of so many seconds, which pass at once. */
async function after<Answer>(
  seconds: number,
  ask: () => Promise<Answer>,
): Promise<Answer | 'no answer' | 'still waits'> {
  vi.useFakeTimers();
  try {
    const answer = ask().catch(() => 'no answer' as const);
    await vi.advanceTimersByTimeAsync(seconds * 1000);
    return await Promise.race([answer, Promise.resolve('still waits' as const)]);
  } finally {
    vi.useRealTimers();
  }
}

describe('a worker that is asked', () => {
  it('is started anew when it falls silent, and asked again', async () => {
    const silent = new SilentWorker();
    const { options } = workers([silent, new NearWorker(numbers)]);
    expect(await after(8, () => connect<Numbers>(options).ask('twice', 1))).toBe(2);
    expect(silent.ended).toBe(true);
  });

  it('is given up after the second silence, and started again for the next question', async () => {
    const all = [new SilentWorker(), new SilentWorker(), new NearWorker(numbers)];
    const { options, started } = workers(all);
    const worker = connect<Numbers>(options);
    expect(await after(12, () => worker.ask('twice', 1))).toBe('no answer');
    expect([started.length, all[1]?.ended]).toEqual([2, true]);
    expect(await after(1, () => worker.ask('twice', 2))).toBe(4);
  });

  it('is replaced by this thread after the second silence where that is wished', async () => {
    const { options, started } = workers([new SilentWorker(), new SilentWorker()]);
    const worker = connect<Numbers>({ ...options, afterSilence: 'here' });
    expect(await after(12, () => worker.ask('twice', 1))).toBe(2);
    expect(started).toHaveLength(2);
  });

  it.each([
    ['breaks', new BrokenWorker()],
    ['is not there', null],
  ])('is replaced by this thread where it %s', async (_, worker) => {
    const { options } = workers([worker]);
    expect(await after(1, () => connect<Numbers>(options).ask('twice', 1))).toBe(2);
  });

  it('is left alone while it owes nothing', async () => {
    const { options, started } = workers([new NearWorker(numbers)]);
    expect(await after(60, () => connect<Numbers>(options).ask('twice', 1))).toBe(2);
    expect(started).toHaveLength(1);
  });

  it('tells nothing twice to whoever asked, although another began anew', async () => {
    const near = new NearWorker(numbers);
    const { options } = workers([near]);
    const told: number[] = [];
    const onPart = (part: number): void => {
      told.push(part);
      if (part === 2) near.breakDown();
    };
    await after(1, () => connect<Numbers>(options).ask('count', 4, { onPart }));
    expect(told).toEqual([1, 2, 3, 4]);
  });

  it('hears that nobody waits any more, and whoever asked hears it at once', async () => {
    const silent = new SilentWorker();
    const { options } = workers([silent]);
    const stopping = new AbortController();
    const answer = connect<Numbers>(options).ask('twice', 1, { signal: stopping.signal });
    stopping.abort();
    await expect(answer).rejects.toBeInstanceOf(Cancelled);
    expect(silent.asked.at(-1)).toEqual({ id: 1, name: null });
  });
});

/** Everything that comes, at the end. */
async function allOf<Part>(parts: AsyncIterable<Part>): Promise<readonly Part[]> {
  const all: Part[] = [];
  for await (const part of parts) all.push(part);
  return all;
}

describe('the parts of one answer', () => {
  it('come as they are told, and the worker ends with the last', async () => {
    const near = new NearWorker(numbers);
    const { options } = workers([near]);
    const { signal } = new AbortController();
    const told = await allOf(partsOf<Numbers, 'count'>(options, 'count', 3, signal));
    expect([told, near.ended]).toEqual([[1, 2, 3], true]);
  });

  it('end without a word when nobody waits any more, and the worker with them', async () => {
    const silent = new SilentWorker();
    const { options } = workers([silent]);
    const stopping = new AbortController();
    const asking = allOf(partsOf<Numbers, 'count'>(options, 'count', 3, stopping.signal));
    stopping.abort();
    expect([await asking, silent.ended]).toEqual([[], true]);
  });
});

it('somebody whose file nobody reads is told so', async () => {
  const silent = (): Worker => new SilentWorker().worker;
  const outcome = await after(
    50,
    () =>
      createGpxImporter(workplaceOf(createGpxDesk, silent)).read(new Blob(['x']), () => undefined).outcome,
  );
  expect(outcome).toMatchObject({ kind: 'refused', problems: [{ code: 'no-reader' }] });
});
