/** Gear check through the workshop and through the client: the same as the core, in order, and stoppable. */
import { describe, expect, it } from 'vitest';
import {
  type GearCandidate,
  gearCandidates,
  type GearOutcome,
  gearOutcome,
} from '../../src/core/coach/gearCheck.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { createPlanner, keyOfGearJob, PlannerCancelled } from '../../src/worker/client.ts';
import { keyOfJob } from '../../src/core/ride/job.ts';
import type { Answer, GearJob } from '../../src/worker/messages.ts';
import { openWorkshop } from '../../src/worker/workshop.ts';
import { someJob } from './rides.ts';

const { level, seed, bike, rider } = someJob();
const job: GearJob = { level, seed, bike, rider };
const course = courseOfLevel(level, seed);
const candidates = [...gearCandidates(course, bike, rider)];

const LAST: readonly Answer['kind'][] = ['gears', 'cancelled', 'failed'];

/** Asks a workshop and collects until the last answer; `onAnswer` may send more. */
function answersTo(
  asked: GearJob,
  onAnswer: (answer: Answer, cancel: () => void) => void = () => undefined,
): Promise<Answer[]> {
  return new Promise((resolve) => {
    const answers: Answer[] = [];
    const receive = openWorkshop(
      (answer) => {
        answers.push(structuredClone(answer));
        onAnswer(answer, () => receive({ kind: 'cancel', key: keyOfGearJob(asked) }));
        if (LAST.includes(answer.kind)) resolve(answers);
      },
      () => new Promise((next) => setTimeout(next, 0)),
    );
    receive(structuredClone({ kind: 'gears' as const, id: 7, job: asked }));
  });
}

describe('the workshop', () => {
  it('tells the own bike first, then every candidate of the core, then how many', async () => {
    const answers = await answersTo(job);
    expect(candidates.length).toBeGreaterThan(2);
    expect(answers).toEqual([
      { kind: 'gear-own', id: 7, outcome: gearOutcome(course, bike, rider) },
      ...candidates.map((candidate) => ({ kind: 'gear-candidate', id: 7, candidate })),
      { kind: 'gears', id: 7, count: candidates.length },
    ]);
  });

  it('stops before the next candidate when cancelled', async () => {
    const answers = await answersTo(job, (answer, cancel) => answer.kind === 'gear-candidate' && cancel());
    expect(answers.map(({ kind }) => kind)).toEqual(['gear-own', 'gear-candidate', 'cancelled']);
  });

  it('goes on when another job is cancelled', async () => {
    const others: Answer[] = [];
    const receive = openWorkshop(
      (answer) => others.push(answer),
      () => new Promise((next) => setTimeout(next, 0)),
    );
    receive({ kind: 'gears', id: 1, job });
    receive({ kind: 'gears', id: 2, job: { ...job, seed: 2 } });
    receive({ kind: 'cancel', key: keyOfGearJob({ ...job, seed: 2 }) });
    await expect
      .poll(() => others.filter(({ kind }) => LAST.includes(kind)).length, { timeout: 9_000 })
      .toBe(2);
    expect(others.filter(({ id }) => id === 2)).toEqual([{ kind: 'cancelled', id: 2 }]);
    expect(others.at(-1)).toEqual({ kind: 'gears', id: 1, count: candidates.length });
  });

  it('answers with the reason when a bike has no sprockets', async () => {
    const answers = await answersTo({ ...job, bike: { ...bike, sprocketsTeeth: [] } });
    expect(answers.at(-1)).toMatchObject({
      kind: 'failed',
      id: 7,
      reason: expect.stringMatching(/./) as string,
    });
  });
});

describe('the client', () => {
  it('hands on what comes and ends with the count', async () => {
    const planner = createPlanner(() => null);
    const own: GearOutcome[] = [];
    const found: GearCandidate[] = [];
    const tell = {
      onOwn: (outcome: GearOutcome) => own.push(outcome),
      onCandidate: (one: GearCandidate) => found.push(one),
    };
    expect(await planner.checkGears(job, tell)).toBe(candidates.length);
    expect(own).toEqual([gearOutcome(course, bike, rider)]);
    expect(found).toEqual(candidates);
    planner.stop();
  });

  it('rejects what was cancelled and tells nothing more', async () => {
    const planner = createPlanner(() => null);
    let told = 0;
    const count = planner.checkGears(job, {
      onOwn: () => planner.cancel(keyOfGearJob(job)),
      onCandidate: () => {
        told += 1;
      },
    });
    await expect(count).rejects.toBeInstanceOf(PlannerCancelled);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(told).toBe(0);
    planner.stop();
  });
});

it('the key of a gear check is not the key of a ride, and changes with the bike', () => {
  const key = keyOfGearJob(job);
  expect(key).not.toBe(keyOfJob(someJob()));
  expect(keyOfGearJob({ ...job, bike: { ...bike, massKg: 20 } })).not.toBe(key);
  expect(keyOfGearJob({ ...job, level: { ...level, title: 'Other' } })).toBe(key);
});
