/** Gear check away from the page: the same as the core, in order, and stoppable. */
import { describe, expect, it } from 'vitest';
import { gearCandidates, gearOutcome } from '../../src/core/coach/gearCheck.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { createPlanner } from '../../src/worker/client.ts';
import type { GearJob } from '../../src/worker/jobs.ts';
import { Cancelled } from '../../src/worker/rpc.ts';
import { createWorkshop } from '../../src/worker/workshop.ts';
import { NearWorker, workplaceOf } from './nearWorker.ts';
import { someJob } from './rides.ts';

const { level, seed, bike, rider } = someJob();
const job: GearJob = { level, seed, bike, rider };
const course = courseOfLevel(level, seed);
const own = { kind: 'own', outcome: gearOutcome(course, bike, rider) };
const others = [...gearCandidates(course, bike, rider)].map((candidate) => ({ kind: 'other', candidate }));

const planner = createPlanner(workplaceOf(createWorkshop, () => new NearWorker(createWorkshop()).worker));
const tellTo = (found: unknown[], onFound: () => void = () => undefined) => ({
  onOwn: (outcome: unknown) => void found.push({ kind: 'own', outcome }),
  onCandidate: (candidate: unknown) => {
    found.push({ kind: 'other', candidate });
    onFound();
  },
});

describe('a gear check', () => {
  it('tells the own bike first, then every candidate of the core, then how many', async () => {
    const found: unknown[] = [];
    expect(await planner.checkGears(job, tellTo(found))).toBe(others.length);
    expect(others.length).toBeGreaterThan(2);
    expect(found).toEqual([own, ...others]);
  });

  it('stops before the next candidate when nobody waits any more', async () => {
    const found: unknown[] = [];
    const stopping = new AbortController();
    const count = planner.checkGears(
      job,
      tellTo(found, () => stopping.abort()),
      stopping.signal,
    );
    await expect(count).rejects.toBeInstanceOf(Cancelled);
    expect(found).toEqual([own, others[0]]);
  });

  it('goes on when another one is stopped', async () => {
    const stopping = new AbortController();
    const [mine, theirs]: unknown[][] = [[], []];
    const count = planner.checkGears(job, tellTo(mine ?? []));
    const other = planner.checkGears({ ...job, seed: 2 }, tellTo(theirs ?? []), stopping.signal);
    stopping.abort();
    await expect(other).rejects.toBeInstanceOf(Cancelled);
    expect(await count).toBe(others.length);
    expect([mine?.length, theirs]).toEqual([others.length + 1, []]);
  });

  it('says why when a bike has no sprockets', async () => {
    const none = planner.checkGears({ ...job, bike: { ...bike, sprocketsTeeth: [] } }, tellTo([]));
    await expect(none).rejects.toThrow(/./);
  });
});
