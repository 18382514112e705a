/**
 * The page's side of counting a group picture: a promise, answered by a worker of its own, so that marking a ride
 * that was just finished never waits for it. Where there is no worker this thread counts, with pauses.
 */
import workerAddress from './group.worker.ts?worker&url';
import { openLine } from './line.ts';
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
    else reject(new Error(answer.reason));
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
        const question: GroupQuestion = { ...job, id: lastId };
        waiting = { question, resolve, reject };
        ask(question);
      }),
  };
}

/** The worker the build made, or null. `trust` turns its address into one that this page may run. */
export function startGroupWorker(trust: Trust): Worker | null {
  return startWorker(workerAddress, trust);
}
