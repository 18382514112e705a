/** The client against workers that work, that break and that are not there. */
import { describe, expect, it } from 'vitest';
import { keyOfJob } from '../../src/core/ride/job.ts';
import { createPlanner } from '../../src/worker/client.ts';
import { Cancelled } from '../../src/worker/rpc.ts';
import { createWorkshop } from '../../src/worker/workshop.ts';
import { BrokenWorker, NearWorker, SilentWorker, workplaceOf } from './nearWorker.ts';
import { lateRecording, someJob } from './rides.ts';

const job = someJob();
const worker = (): Worker => new NearWorker(createWorkshop()).worker;
const plannerOf = (start: () => Worker | null) => createPlanner(workplaceOf(createWorkshop, start));

describe('a planner', () => {
  it('starts no worker before it is asked, and then one', async () => {
    let started = 0;
    const planner = plannerOf(() => {
      started += 1;
      return worker();
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
    ['with a worker that breaks', () => new BrokenWorker().worker],
  ])('works in the page %s', async (_, start) => {
    const planner = plannerOf(start);
    const judged = await planner.judge(job.level, lateRecording(job));
    expect(judged.same).toBe(true);
    expect(judged.report.total).toBeLessThan(judged.reference.report.total);
    planner.stop();
  });

  it('starts a worker that falls silent anew once, and then works in the page', async () => {
    const mute: SilentWorker[] = [];
    const broken: unknown[] = [];
    const start = (): Worker => {
      const silent = new SilentWorker();
      mute.push(silent);
      return silent.worker;
    };
    const planner = createPlanner(workplaceOf(createWorkshop, start), {
      patienceS: 1,
      onBroken: (error) => broken.push(error),
    });
    const judged = await planner.judge(job.level, lateRecording(job));
    expect(judged.same).toBe(true);
    expect([mute.length, broken.length]).toEqual([2, 2]);
    expect(mute.every(({ asked }) => asked.length === 1)).toBe(true);
    planner.stop();
  });

  it('rejects what nobody waits for any more, and goes on with the rest', async () => {
    const planner = plannerOf(worker);
    const stopping = new AbortController();
    const plan = planner.prepare(job, undefined, stopping.signal);
    const other = planner.prepare({ ...job, seed: 5 });
    stopping.abort();
    await expect(plan).rejects.toBeInstanceOf(Cancelled);
    expect((await other).key).toBe(keyOfJob({ ...job, seed: 5 }));
    planner.stop();
  });

  it('rejects everything once stopped', async () => {
    const near = new NearWorker(createWorkshop());
    const planner = plannerOf(() => near.worker);
    const plan = planner.prepare(job);
    planner.stop();
    await expect(plan).rejects.toBeInstanceOf(Cancelled);
    await expect(planner.prepare(job)).rejects.toBeInstanceOf(Cancelled);
    expect(near.ended).toBe(true);
  });

  it('passes on why a job cannot be planned', async () => {
    const planner = plannerOf(worker);
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
