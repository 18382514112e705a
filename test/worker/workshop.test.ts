/** The workshop with a port that only remembers, and pauses that are real tasks. */
import { describe, expect, it } from 'vitest';
import { groundOfJob, markRecording } from '../../src/core/coach/ground.ts';
import { keyOfJob } from '../../src/core/ride/job.ts';
import { replayRecording } from '../../src/core/ride/run.ts';
import type { Answer, Request } from '../../src/worker/messages.ts';
import { openWorkshop } from '../../src/worker/workshop.ts';
import { lateRecording, levelById, someJob } from './rides.ts';

const job = someJob();

interface Desk {
  readonly answers: Answer[];
  readonly receive: (request: Request) => void;
  readonly ended: (id: number) => Promise<Answer>;
  pauses: number;
}

/** Requests and answers pass through a structured clone, as between threads. */
function openDesk(): Desk {
  const listeners = new Set<() => void>();
  const answers: Answer[] = [];
  const receive = openWorkshop(
    (answer) => {
      answers.push(structuredClone(answer));
      for (const listener of listeners) listener();
    },
    () => {
      desk.pauses += 1;
      return new Promise((resolve) => setTimeout(resolve, 0));
    },
  );
  const endOf = (id: number): Answer | undefined =>
    answers.find((answer) => answer.id === id && answer.kind !== 'progress');
  const desk: Desk = {
    answers,
    pauses: 0,
    receive: (request) => receive(structuredClone(request)),
    ended: (id) =>
      new Promise((resolve) => {
        const look = (): void => {
          const answer = endOf(id);
          if (answer !== undefined) resolve(answer);
        };
        listeners.add(look);
        look();
      }),
  };
  return desk;
}

function expectKind<Kind extends Answer['kind']>(
  answer: Answer,
  kind: Kind,
): Extract<Answer, { kind: Kind }> {
  expect(answer.kind).toBe(kind);
  return answer as Extract<Answer, { kind: Kind }>;
}

describe('planning', () => {
  it('tells growing shares and then the reference ride the core rides', async () => {
    const desk = openDesk();
    desk.receive({ kind: 'plan', id: 1, job });
    const { reference } = expectKind(await desk.ended(1), 'reference');
    const shares = desk.answers.flatMap((answer) => (answer.kind === 'progress' ? [answer.share] : []));
    expect(shares.length).toBeGreaterThan(0);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));

    const own = groundOfJob(job);
    expect(reference.trace).toEqual(own.reference);
    expect(reference.key).toBe(keyOfJob(job));
    expect(replayRecording(own.world, reference.recording).same).toBe(true);
    expect(reference.report.total).toBeGreaterThan(95);
  });

  it('plans a job once for all who ask', async () => {
    const desk = openDesk();
    desk.receive({ kind: 'plan', id: 1, job });
    desk.receive({ kind: 'plan', id: 2, job });
    await Promise.all([desk.ended(1), desk.ended(2)]);
    const pauses = desk.pauses;
    desk.receive({ kind: 'plan', id: 3, job });
    const third = expectKind(await desk.ended(3), 'reference');
    expect(third.reference.trace).toEqual(expectKind(await desk.ended(1), 'reference').reference.trace);
    expect(desk.pauses).toBe(pauses);
  });

  it('keeps four plans and plans a forgotten one again', async () => {
    const desk = openDesk();
    for (let seed = 1; seed <= 6; seed += 1) {
      desk.receive({ kind: 'plan', id: seed, job: { ...job, seed } });
      await desk.ended(seed);
    }
    const pauses = desk.pauses;
    desk.receive({ kind: 'plan', id: 7, job: { ...job, seed: 6 } });
    await desk.ended(7);
    expect(desk.pauses).toBe(pauses);
    desk.receive({ kind: 'plan', id: 8, job: { ...job, seed: 1 } });
    await desk.ended(8);
    expect(desk.pauses).toBeGreaterThan(pauses);
  });

  it('stops between two pieces when cancelled, and can begin anew', async () => {
    const desk = openDesk();
    const long = { ...job, level: { ...job.level, pieces: [{ kind: 'flat' as const, lengthM: 20_000 }] } };
    desk.receive({ kind: 'plan', id: 1, job: long });
    await new Promise((resolve) => setTimeout(resolve, 30));
    desk.receive({ kind: 'cancel', key: keyOfJob(long) });
    expectKind(await desk.ended(1), 'cancelled');
    const shares = desk.answers.flatMap((answer) => (answer.kind === 'progress' ? [answer.share] : []));
    expect(Math.max(0, ...shares)).toBeLessThan(0.9);
    desk.receive({ kind: 'plan', id: 2, job });
    expectKind(await desk.ended(2), 'reference');
  });

  it('answers with the reason when a job cannot be planned', async () => {
    const desk = openDesk();
    desk.receive({ kind: 'plan', id: 1, job: { ...job, bike: { ...job.bike, sprocketsTeeth: [] } } });
    expect(expectKind(await desk.ended(1), 'failed').reason).not.toBe('');
  });
});

describe('judging', () => {
  const recording = lateRecording(job);

  it('gives the report of the core and the ride that was recorded', async () => {
    const desk = openDesk();
    desk.receive({ kind: 'judge', id: 1, level: job.level, recording });
    const { judged } = expectKind(await desk.ended(1), 'judged');
    const marked = markRecording(job.level, recording);
    expect(judged.trace).toEqual(marked.ride.trace);
    expect(judged.report).toEqual(marked.report);
    expect([judged.same, judged.firstDifferentTick, judged.sameLevel]).toEqual([true, null, true]);
  });

  it('says so when riding again gives other fingerprints', async () => {
    const desk = openDesk();
    const checkpoints = recording.checkpoints.map((print, i) => (i === 1 ? '0000000000000000' : print));
    desk.receive({ kind: 'judge', id: 1, level: job.level, recording: { ...recording, checkpoints } });
    const { judged } = expectKind(await desk.ended(1), 'judged');
    expect([judged.same, judged.firstDifferentTick]).toEqual([false, 1200]);
  });

  it('says so when the recording was made on another road', async () => {
    const desk = openDesk();
    desk.receive({ kind: 'judge', id: 1, level: levelById('hold-your-rhythm'), recording });
    const { judged } = expectKind(await desk.ended(1), 'judged');
    expect(judged.sameLevel).toBe(false);
    expect(judged.same).toBe(false);
  });
});
