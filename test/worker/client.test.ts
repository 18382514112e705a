/** The client against workers that work, that break and that are not there. */
import { describe, expect, it } from 'vitest';
import { keyOfJob } from '../../src/core/ride/job.ts';
import { createPlanner, PlannerCancelled } from '../../src/worker/client.ts';
import type { Answer, Request } from '../../src/worker/messages.ts';
import { openWorkshop } from '../../src/worker/workshop.ts';
import { lateRecording, someJob } from './rides.ts';

const job = someJob();

/** A worker's two ends in one thread: messages are cloned and arrive in a task of their own. */
class ThreadlessWorker extends EventTarget {
  ended = false;
  readonly asked: Request[] = [];
  private readonly works: boolean;
  private readonly workshop = openWorkshop(
    (answer) => this.say('message', answer),
    () => new Promise((resolve) => setTimeout(resolve, 0)),
  );

  constructor(works = true) {
    super();
    this.works = works;
  }

  postMessage(request: Request): void {
    this.asked.push(request);
    if (!this.works) setTimeout(() => this.dispatchEvent(new Event('error')), 0);
    else setTimeout(() => this.ended || this.workshop(structuredClone(request)), 0);
  }

  terminate(): void {
    this.ended = true;
  }

  private say(type: string, answer: Answer): void {
    const data = structuredClone(answer);
    setTimeout(() => this.ended || this.dispatchEvent(new MessageEvent(type, { data })), 0);
  }
}

function asWorker(worker: ThreadlessWorker): Worker {
  return worker as unknown as Worker;
}

describe('a planner', () => {
  it('starts no worker before it is asked, and then one', async () => {
    let started = 0;
    const planner = createPlanner(() => {
      started += 1;
      return asWorker(new ThreadlessWorker());
    });
    expect(started).toBe(0);
    const shares: number[] = [];
    const [reference, again] = await Promise.all([
      planner.prepare(job, (share) => shares.push(share)),
      planner.prepare(job),
    ]);
    expect(started).toBe(1);
    expect(reference.key).toBe(keyOfJob(job));
    expect(again.trace).toEqual(reference.trace);
    expect(shares.length).toBeGreaterThan(0);
    planner.stop();
  });

  it.each([
    ['without a worker', () => null],
    ['with a worker that breaks', () => asWorker(new ThreadlessWorker(false))],
  ])('works in the page %s', async (_, start) => {
    const planner = createPlanner(start);
    const judged = await planner.judge(job.level, lateRecording(job));
    expect(judged.same).toBe(true);
    expect(judged.report.total).toBeLessThan(judged.reference.report.total);
    planner.stop();
  });

  it('starts a worker that falls silent anew once, and then works in the page', async () => {
    const mute: ThreadlessWorker[] = [];
    const broken: unknown[] = [];
    const start = (): Worker => {
      const worker = new ThreadlessWorker();
      // It takes what it is asked and answers nothing.
      worker.ended = true;
      mute.push(worker);
      return asWorker(worker);
    };
    const planner = createPlanner(start, { patienceS: 1, onBroken: (error) => broken.push(error) });
    const judged = await planner.judge(job.level, lateRecording(job));
    expect(judged.same).toBe(true);
    expect([mute.length, broken.length]).toEqual([2, 2]);
    expect(mute.every(({ asked }) => asked.length === 1)).toBe(true);
    planner.stop();
  }, 30_000);

  it('rejects what was cancelled and tells the worker', async () => {
    const worker = new ThreadlessWorker();
    const planner = createPlanner(() => asWorker(worker));
    const plan = planner.prepare(job);
    const other = planner.prepare({ ...job, seed: 5 });
    planner.cancel(keyOfJob(job));
    await expect(plan).rejects.toBeInstanceOf(PlannerCancelled);
    expect(worker.asked.at(-1)).toEqual({ kind: 'cancel', key: keyOfJob(job) });
    expect((await other).key).toBe(keyOfJob({ ...job, seed: 5 }));
    planner.stop();
  });

  it('rejects everything once stopped', async () => {
    const worker = new ThreadlessWorker();
    const planner = createPlanner(() => asWorker(worker));
    const plan = planner.prepare(job);
    planner.stop();
    await expect(plan).rejects.toBeInstanceOf(PlannerCancelled);
    await expect(planner.prepare(job)).rejects.toBeInstanceOf(PlannerCancelled);
    expect(worker.ended).toBe(true);
  });

  it('passes on why a job cannot be planned', async () => {
    const planner = createPlanner(() => asWorker(new ThreadlessWorker()));
    const bike = { ...job.bike, chainringsTeeth: [] };
    await expect(planner.prepare({ ...job, bike })).rejects.toThrow(/./);
    planner.stop();
  });
});

describe('the key of a job', () => {
  it('changes with everything that changes the reference ride, and with nothing else', () => {
    const key = keyOfJob(job);
    expect(keyOfJob({ ...job, level: { ...job.level, title: 'Another name', passMark: 1 } })).toBe(key);
    const others = [
      { ...job, seed: 2 },
      { ...job, autoEase: true },
      { ...job, rider: { ...job.rider, massKg: 40 } },
      { ...job, bike: { ...job.bike, massKg: 8 } },
      { ...job, level: { ...job.level, stopLinesM: [60] } },
    ].map(keyOfJob);
    expect(new Set([key, ...others]).size).toBe(6);
  });
});
