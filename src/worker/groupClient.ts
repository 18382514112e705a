/**
 * The page's side of counting a group picture: a promise, answered by a worker of its own, so that marking a ride
 * that was just finished never waits for it. Where there is no worker this thread counts, with pauses.
 */
import workerAddress from './group.worker.ts?worker&url';
import { startWorker, type Trust } from './startWorker.ts';
import type { GroupAnswer, GroupCount, GroupJob, GroupQuestion } from './groupWorkshop.ts';

export type { GroupCount, GroupJob } from './groupWorkshop.ts';

/** Counts group pictures. */
export interface GroupCounter {
  /** Never settles for a question that a newer one has replaced. Rejects where it cannot be counted. */
  count(job: GroupJob): Promise<GroupCount>;
}

/** Starts the counter; nothing is loaded before the first question. */
export function createGroupCounter(start: () => Worker | null): GroupCounter {
  let ask: ((question: GroupQuestion) => void) | null = null;
  let lastId = 0;
  let waiting: {
    readonly question: GroupQuestion;
    readonly resolve: (count: GroupCount) => void;
    readonly reject: (error: Error) => void;
  } | null = null;

  const receive = (answer: GroupAnswer): void => {
    if (waiting === null || waiting.question.id !== answer.id) return;
    const { resolve, reject } = waiting;
    waiting = null;
    if (answer.kind === 'counted') resolve(answer.count);
    else reject(new Error(answer.reason));
  };

  const connect = (): ((question: GroupQuestion) => void) => {
    const worker = start();
    if (worker === null) return workHere(receive);
    worker.addEventListener('message', (event: MessageEvent<GroupAnswer>) => receive(event.data));
    worker.addEventListener('error', () => {
      // A worker that fails to load or breaks down loses what it was asked: ask again here.
      worker.terminate();
      ask = workHere(receive);
      if (waiting !== null) ask(waiting.question);
    });
    return (question) => worker.postMessage(question);
  };

  return {
    count: (job) =>
      new Promise((resolve, reject) => {
        lastId += 1;
        const question: GroupQuestion = { ...job, id: lastId };
        waiting = { question, resolve, reject };
        ask ??= connect();
        ask(question);
      }),
  };
}

function workHere(receive: (answer: GroupAnswer) => void): (question: GroupQuestion) => void {
  const workshop = import('./groupWorkshop.ts').then(({ openGroupWorkshop }) =>
    openGroupWorkshop(receive, () => new Promise((resolve) => setTimeout(resolve, 0))),
  );
  return (question) => void workshop.then((take) => take(question));
}

/** The worker the build made, or null. `trust` turns its address into one that this page may run. */
export function startGroupWorker(trust: Trust): Worker | null {
  return startWorker(workerAddress, trust);
}
