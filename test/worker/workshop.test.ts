/** Planning and judging away from the page: the same as the core, each plan once for all who wait for it. */
import { describe, expect, it } from 'vitest';
import { groundOfJob, markRecording } from '../../src/core/coach/ground.ts';
import { keyOfJob } from '../../src/core/ride/job.ts';
import { replayRecording } from '../../src/core/ride/run.ts';
import { type Call, Cancelled } from '../../src/worker/rpc.ts';
import { createWorkshop } from '../../src/worker/workshop.ts';
import { levelById } from '../core/ride/worlds.ts';
import { lateRecording, someJob } from './rides.ts';

const job = someJob();

/** Somebody who waits, is told shares, counts the pauses, and may have enough. */
function waiting() {
  const stopping = new AbortController();
  const shares: number[] = [];
  let pauses = 0;
  const call: Call<number> = {
    signal: stopping.signal,
    tell: (share) => shares.push(share),
    async pause() {
      pauses += 1;
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (stopping.signal.aborted) throw new Cancelled();
    },
  };
  return { call, shares, stop: () => stopping.abort(), pauses: () => pauses };
}

describe('planning', () => {
  it('tells growing shares and then the reference ride the core rides', async () => {
    const { call, shares } = waiting();
    const reference = await createWorkshop().prepare(job, call);
    expect(shares.length).toBeGreaterThan(0);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));

    const own = groundOfJob(job);
    expect(reference.trace).toEqual(own.reference);
    expect(reference.key).toBe(keyOfJob(job));
    expect(replayRecording(own.world, reference.recording).same).toBe(true);
    expect(reference.report.total).toBeGreaterThan(95);
  });

  it('plans a job once for all who ask', async () => {
    const workshop = createWorkshop();
    const [first, second, third] = [waiting(), waiting(), waiting()];
    const [one, two] = await Promise.all([
      workshop.prepare(job, first.call),
      workshop.prepare(job, second.call),
    ]);
    expect(two).toBe(one);
    expect(second.shares).toEqual(first.shares);
    expect(await workshop.prepare(job, third.call)).toBe(one);
    expect(third.pauses()).toBe(0);
  });

  it('goes on for one when another has enough', async () => {
    const workshop = createWorkshop();
    const [first, second] = [waiting(), waiting()];
    const plans = Promise.all([workshop.prepare(job, first.call), workshop.prepare(job, second.call)]);
    first.stop();
    expect((await plans)[1].key).toBe(keyOfJob(job));
  });

  it('keeps four plans and plans a forgotten one again', async () => {
    const workshop = createWorkshop();
    for (let seed = 1; seed <= 6; seed += 1) await workshop.prepare({ ...job, seed }, waiting().call);
    const [kept, forgotten] = [waiting(), waiting()];
    await workshop.prepare({ ...job, seed: 6 }, kept.call);
    await workshop.prepare({ ...job, seed: 1 }, forgotten.call);
    expect(kept.pauses()).toBe(0);
    expect(forgotten.pauses()).toBeGreaterThan(0);
  });

  it('stops between two pieces when nobody waits any more, and can begin anew', async () => {
    const workshop = createWorkshop();
    const long = { ...job, level: { ...job.level, pieces: [{ kind: 'flat' as const, lengthM: 20_000 }] } };
    const { call, shares, stop } = waiting();
    const plan = workshop.prepare(long, call);
    stop();
    await expect(plan).rejects.toBeInstanceOf(Cancelled);
    expect(Math.max(0, ...shares)).toBeLessThan(0.9);
    expect((await workshop.prepare(job, waiting().call)).key).toBe(keyOfJob(job));
  });

  it('says why a job cannot be planned', async () => {
    const bike = { ...job.bike, sprocketsTeeth: [] };
    await expect(createWorkshop().prepare({ ...job, bike }, waiting().call)).rejects.toThrow(/./);
  });
});

describe('judging', () => {
  const recording = lateRecording(job);
  const workshop = createWorkshop();

  it('gives the report of the core and the ride that was recorded', async () => {
    const judged = await workshop.judge({ level: job.level, recording }, waiting().call);
    const marked = markRecording(job.level, recording);
    expect(judged.trace).toEqual(marked.ride.trace);
    expect(judged.report).toEqual(marked.report);
    expect(judged.same).toBe(true);
  });

  it('says so when riding again gives other fingerprints', async () => {
    const checkpoints = recording.checkpoints.map((print, i) => (i === 1 ? '0000000000000000' : print));
    const changed = { level: job.level, recording: { ...recording, checkpoints } };
    const judged = await workshop.judge(changed, waiting().call);
    expect(judged.same).toBe(false);
  });

  it('says so when the recording was made on another road', async () => {
    const judged = await workshop.judge({ level: levelById('hold-your-rhythm'), recording }, waiting().call);
    expect(judged.same).toBe(false);
  });
});
