/** The line to a worker, with workers that fall silent, break and are not there: every question comes to an end. */
import { describe, expect, it, vi } from 'vitest';
import { createGpxImporter } from '../../src/worker/gpxClient.ts';
import { openLine } from '../../src/worker/line.ts';

/** A worker of which nothing is ever heard. */
class SilentWorker extends EventTarget {
  ended = false;
  postMessage(): void {}
  terminate(): void {
    this.ended = true;
  }
}

/** One that answers. */
class EchoWorker extends SilentWorker {
  override postMessage(...message: unknown[]): void {
    setTimeout(() => this.ended || this.dispatchEvent(new MessageEvent('message', { data: message[0] })), 0);
  }
}

const asWorker = (worker: SilentWorker): Worker => worker as unknown as Worker;

/** A line that numbers what it is asked and forgets what was answered. */
function lineOver(workers: readonly (SilentWorker | null)[]) {
  const started: (SilentWorker | null)[] = [];
  const open = new Set<number>();
  const answers: number[] = [];
  let lost = 0;
  const receive = (id: number): void => {
    open.delete(id);
    answers.push(id);
  };
  const line = openLine<number, number>({
    start: () => {
      const worker = workers[started.length] ?? null;
      started.push(worker);
      return worker === null ? null : asWorker(worker);
    },
    here: async () => (id) => receive(id),
    receive,
    unanswered: () => [...open],
    onLost: () => {
      lost += 1;
      open.clear();
    },
    silenceS: 5,
  });
  const ask = (id: number): void => {
    open.add(id);
    line(id);
  };
  return { ask, answers, started, lost: () => lost };
}

async function atDoubleQuick(seconds: number, work: () => void): Promise<void> {
  vi.useFakeTimers();
  try {
    work();
    await vi.advanceTimersByTimeAsync(seconds * 1000);
  } finally {
    vi.useRealTimers();
  }
}

describe('a line', () => {
  it('starts a worker that fell silent anew, and asks it again', async () => {
    const silent = new SilentWorker();
    const { ask, answers, lost } = lineOver([silent, new EchoWorker()]);
    await atDoubleQuick(8, () => ask(1));
    expect([answers, silent.ended, lost()]).toEqual([[1], true, 0]);
  });

  it('gives up after the second silence, does not let the work hang the page, and tries again when asked again', async () => {
    const workers = [new SilentWorker(), new SilentWorker(), new EchoWorker()];
    const { ask, answers, started, lost } = lineOver(workers);
    await atDoubleQuick(12, () => ask(1));
    expect([answers, lost(), workers[1]?.ended]).toEqual([[], 1, true]);
    await atDoubleQuick(1, () => ask(2));
    expect([answers, started.length]).toEqual([[2], 3]);
  });

  it('works here where a worker breaks or is not there', async () => {
    const broken = new SilentWorker();
    const { ask, answers } = lineOver([broken]);
    await atDoubleQuick(1, () => {
      ask(1);
      broken.dispatchEvent(new Event('error'));
    });
    const none = lineOver([null]);
    await atDoubleQuick(1, () => none.ask(1));
    expect([answers, none.answers]).toEqual([[1], [1]]);
  });

  it('leaves a worker alone that owes nothing', async () => {
    const { ask, started } = lineOver([new EchoWorker()]);
    await atDoubleQuick(60, () => ask(1));
    expect(started).toHaveLength(1);
  });
});

describe('those who ask', () => {
  it('are told in a sentence when nobody reads their file', async () => {
    let outcome: Promise<unknown> = Promise.resolve(null);
    await atDoubleQuick(50, () => {
      outcome = createGpxImporter(() => asWorker(new SilentWorker())).read(
        new Blob(['x']),
        () => undefined,
      ).outcome;
    });
    expect(await outcome).toMatchObject({ kind: 'refused', problems: [{ code: 'no-reader' }] });
  });
});
