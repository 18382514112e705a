/**
 * The page's side of counting a group picture and of checking rides: promises, answered by workers of their own, so
 * that marking a ride that was just finished never waits for them. Where there is no worker this thread does it, with
 * pauses.
 */
import workerAddress from './group.worker.ts?worker&url';
import { openLine } from './line.ts';
import type { ClinicPlan } from '../core/group/plan.ts';
import type { RideRecord } from '../core/group/records/record.ts';
import type { Remark } from '../core/group/records/remark.ts';
import type { Level } from '../core/level/schema.ts';
import { startWorker, type Trust } from './startWorker.ts';
import type { GroupAnswer, GroupCount, GroupJob, GroupQuestion } from './groupWorkshop.ts';

export type { GroupCount, GroupJob } from './groupWorkshop.ts';

/** A task of its own lets a newer question get through. */
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Counts group pictures. */
export interface GroupCounter {
  /** Never settles for a question that a newer one has replaced. Rejects where it cannot be counted. */
  count(job: GroupJob): Promise<GroupCount>;
}

/** Starts the counter; nothing is loaded before the first question. */
export function createGroupCounter(start: () => Worker | null): GroupCounter {
  let lastId = 0;
  let waiting: {
    readonly question: GroupQuestion;
    readonly resolve: (count: GroupCount) => void;
    readonly reject: (error: Error) => void;
  } | null = null;

  const receive = (answer: GroupAnswer): void => {
    if (waiting === null || waiting.question.id !== answer.id || answer.kind === 'working') return;
    const { resolve, reject } = waiting;
    waiting = null;
    if (answer.kind === 'counted') resolve(answer.count);
    else reject(new Error(answer.kind === 'failed' ? answer.reason : answer.kind));
  };

  const ask = openLine<GroupQuestion, GroupAnswer>({
    start,
    here: async () => (await import('./groupWorkshop.ts')).openGroupWorkshop(receive, pause),
    receive,
    unanswered: () => (waiting === null ? [] : [waiting.question]),
    onLost: () => {
      waiting?.reject(new Error('nobody counts'));
      waiting = null;
    },
  });

  return {
    count: (job) =>
      new Promise((resolve, reject) => {
        lastId += 1;
        const question: GroupQuestion = { ...job, kind: 'count', id: lastId };
        waiting = { question, resolve, reject };
        ask(question);
      }),
  };
}

/** Rides records of other devices again; rejects where that cannot be done now. */
export type CheckRides = (plan: ClinicPlan, records: readonly RideRecord[]) => Promise<readonly Remark[]>;

/** Checks over bundled levels and those of a plan; nothing is loaded before the first question. */
export function createGroupChecker(start: () => Worker | null, levels: readonly Level[]): CheckRides {
  let lastId = 0;
  const waiting = new Map<
    number,
    {
      readonly question: GroupQuestion;
      readonly resolve: (remarks: readonly Remark[]) => void;
      readonly reject: (error: Error) => void;
    }
  >();
  const receive = (answer: GroupAnswer): void => {
    const one = waiting.get(answer.id);
    if (one === undefined || answer.kind === 'working') return;
    waiting.delete(answer.id);
    if (answer.kind === 'checked') one.resolve(answer.remarks);
    else one.reject(new Error(answer.kind === 'failed' ? answer.reason : answer.kind));
  };
  const ask = openLine<GroupQuestion, GroupAnswer>({
    start,
    here: async () => (await import('./groupWorkshop.ts')).openGroupWorkshop(receive, pause),
    receive,
    unanswered: () => [...waiting.values()].map(({ question }) => question),
    onLost: () => {
      for (const { reject } of waiting.values()) reject(new Error('nobody checks'));
      waiting.clear();
    },
  });
  return (plan, records) =>
    new Promise((resolve, reject) => {
      lastId += 1;
      const question: GroupQuestion = { kind: 'check', id: lastId, plan, levels, records };
      waiting.set(lastId, { question, resolve, reject });
      ask(question);
    });
}

/** The worker the build made, or null. `trust` turns its address into one that this page may run. */
export function startGroupWorker(trust: Trust): Worker | null {
  return startWorker(workerAddress, trust);
}
