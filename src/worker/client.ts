/**
 * The page's side of planning and judging: asks with promises, answers come from a worker, or from this
 * thread where there is no worker or it does not start. Touches nothing of the page.
 */
import type { GearCandidate, GearOutcome } from '../core/coach/gearCheck.ts';
import type { Level } from '../core/level/schema.ts';
import { jobOfRecording, keyOfJob, type RideJob } from '../core/ride/job.ts';
import type { Recording } from '../core/ride/recording.ts';
import {
  type Answer,
  type GearJob,
  type Judged,
  keyOfGearJob,
  type Reference,
  type Request,
} from './messages.ts';
import judgeWorkerAddress from './judge.worker.ts?worker&url';
import { startWorker, type Trust } from './startWorker.ts';
import type { Workshop } from './workshop.ts';

export type { GearJob, Judged, Reference } from './messages.ts';
export { keyOfGearJob } from './messages.ts';

/** Somebody gave up on this request; no fault. */
export class PlannerCancelled extends Error {
  override readonly name = 'PlannerCancelled';
}

/** Told the share of the planning that is done, 0 to 1. */
type OnShare = (share: number) => void;

/** Told what a gear check has found so far. */
interface GearTell {
  /** The own bike; if it comes again, everything before it is to be forgotten. */
  readonly onOwn: (outcome: GearOutcome) => void;
  readonly onCandidate: (candidate: GearCandidate) => void;
}

/** Plans and judges off the main thread. All promises reject with `PlannerCancelled` after a cancel or stop. */
export interface Planner {
  /** Plans a job, or answers at once if it was planned before. */
  prepare(job: RideJob, onShare?: OnShare): Promise<Reference>;
  /** Judges a recording against the reference ride of its own bike, rider and seed. */
  judge(level: Level, recording: Recording, onShare?: OnShare): Promise<Judged>;
  /** Rides the own bike and all other parts over a road; answers with how many other parts there were. */
  checkGears(job: GearJob, tell: GearTell): Promise<number>;
  /** Stops all work on a key (`keyOfJob`, `keyOfGearJob`). */
  cancel(key: string): void;
  /** Ends the worker; the planner cannot be used afterwards. */
  stop(): void;
}

interface Waiting {
  readonly request: Request;
  readonly key: string;
  /** Takes what comes before the last answer. */
  readonly onPart: (answer: Answer) => void;
  readonly onAnswer: (answer: Answer) => void;
  readonly onError: (error: Error) => void;
}

/** Starts a worker, or answers null where that cannot be done. */
type StartWorker = () => Worker | null;

/** How a planner treats a worker that breaks down. */
interface PlannerOptions {
  /** Hears of a worker that broke down or fell silent; somebody else does its work by then. */
  readonly onBroken?: (error: unknown) => void;
  /** A worker that is asked and gives no sign for so long (s, while the page is awake) counts as hanging. */
  readonly patienceS?: number;
}

/** Between two signs a slow phone plans a few metres of road or rides one ride again: seconds at most. */
const PATIENCE_S = 20;
/** A worker that hangs is started anew so often; after that this thread does its work. */
const STARTS = 2;

/** Starts the planner. Nothing is loaded before the first request. */
export function createPlanner(start: StartWorker, options: PlannerOptions = {}): Planner {
  const { ask, cancel, stop } = openCounter(start, options);
  return {
    async prepare(job, onShare) {
      const toRequest = (id: number): Request => ({ kind: 'plan', id, job });
      return (await ask('reference', keyOfJob(job), toRequest, shareOf(onShare))).reference;
    },
    async judge(level, recording, onShare) {
      const key = keyOfJob(jobOfRecording(level, recording));
      const toRequest = (id: number): Request => ({ kind: 'judge', id, level, recording });
      return (await ask('judged', key, toRequest, shareOf(onShare))).judged;
    },
    async checkGears(job, tell) {
      const toRequest = (id: number): Request => ({ kind: 'gears', id, job });
      return (await ask('gears', keyOfGearJob(job), toRequest, partsOf(tell))).count;
    },
    cancel,
    stop,
  };
}

/** Keeps the questions that wait for an answer, and the line to whoever answers. */
function openCounter(start: StartWorker, options: PlannerOptions) {
  const waiting = new Map<number, Waiting>();
  let line: Line | null = null;
  let lastId = 0;
  let stopped = false;

  const receive = (answer: Answer): void => {
    const one = waiting.get(answer.id);
    if (one === undefined) return;
    if (isPart(answer)) return one.onPart(answer);
    waiting.delete(answer.id);
    if (answer.kind === 'cancelled') one.onError(new PlannerCancelled());
    else if (answer.kind === 'failed') one.onError(new Error(answer.reason));
    else one.onAnswer(answer);
  };

  const unanswered = (): readonly Request[] => [...waiting.values()].map((one) => one.request);
  const onLost = (error: Error): void => {
    line = null;
    for (const one of waiting.values()) one.onError(error);
    waiting.clear();
  };

  return {
    ask: <Kind extends Answer['kind']>(
      kind: Kind,
      key: string,
      toRequest: (id: number) => Request,
      onPart: (answer: Answer) => void,
    ): Promise<Extract<Answer, { kind: Kind }>> =>
      new Promise((resolve, reject) => {
        if (stopped) return reject(new PlannerCancelled());
        lastId += 1;
        const request = toRequest(lastId);
        const onAnswer = (answer: Answer): void =>
          answer.kind === kind
            ? resolve(answer as Extract<Answer, { kind: Kind }>)
            : reject(new Error(`expected ${kind}, was told ${answer.kind}`));
        waiting.set(lastId, { request, key, onPart, onAnswer, onError: reject });
        line ??= connect({ ...options, start, receive, unanswered, onLost });
        line.send(request);
      }),
    cancel: (key: string): void => {
      for (const [id, one] of waiting) if (one.key === key) giveUp(waiting, id);
      line?.send({ kind: 'cancel', key });
    },
    stop: (): void => {
      stopped = true;
      for (const [id, one] of waiting) {
        line?.send({ kind: 'cancel', key: one.key });
        giveUp(waiting, id);
      }
      line?.close();
    },
  };
}

/** Whether more answers to the same question will come. */
function isPart({ kind }: Answer): boolean {
  return kind === 'progress' || kind === 'gear-own' || kind === 'gear-candidate';
}

function shareOf(onShare: OnShare | undefined): (answer: Answer) => void {
  return (answer) => answer.kind === 'progress' && onShare?.(answer.share);
}

function partsOf({ onOwn, onCandidate }: GearTell): (answer: Answer) => void {
  return (answer) => {
    if (answer.kind === 'gear-own') onOwn(answer.outcome);
    else if (answer.kind === 'gear-candidate') onCandidate(answer.candidate);
  };
}

/** A line to whoever does the work. */
interface Line {
  send(request: Request): void;
  close(): void;
}

interface LineOptions extends PlannerOptions {
  readonly start: StartWorker;
  readonly receive: (answer: Answer) => void;
  readonly unanswered: () => readonly Request[];
  /** Nobody can do the work: neither a worker nor this thread. */
  readonly onLost: (error: Error) => void;
}

/** Connects to a worker, or to this thread where there is none, it breaks down, or it keeps falling silent. */
function connect(options: LineOptions): Line {
  const { start, receive, unanswered, onLost, onBroken, patienceS = PATIENCE_S } = options;
  let worker: Worker | null = null;
  let send: (request: Request) => void = () => undefined;
  let starts = 0;
  let silentS = 0;
  // Seconds while the page is awake: after a night in a closed laptop nobody has been silent for hours.
  const watch = setInterval(() => {
    if (worker === null || unanswered().length === 0) silentS = 0;
    else silentS += 1;
    if (silentS >= patienceS) replace(new Error('silent'));
  }, 1000);
  const workHere = (): void => {
    clearInterval(watch);
    const workshop = openHere(receive);
    workshop.catch((error: unknown) => onLost(error instanceof Error ? error : new Error('lost')));
    // What is asked after it was lost is asked of a new line.
    send = (request) => void workshop.then((take) => take(request)).catch(() => undefined);
  };
  const begin = (): void => {
    const mine = starts < STARTS ? start() : null;
    starts += 1;
    silentS = 0;
    worker = mine;
    if (mine === null) return workHere();
    send = (request) => mine.postMessage(request);
    mine.addEventListener('message', (event: MessageEvent<Answer>) => {
      silentS = 0;
      receive(event.data);
    });
    mine.addEventListener('error', (event) => {
      event.preventDefault();
      // One that cannot be fetched or run will not be better for another start.
      starts = STARTS;
      if (worker === mine) replace(new Error('broken'));
    });
  };
  /** Whoever takes over was asked nothing yet: everything without an answer is asked again. */
  const replace = (error: Error): void => {
    onBroken?.(error);
    worker?.terminate();
    begin();
    for (const request of unanswered()) send(request);
  };
  begin();
  return {
    send: (request) => send(request),
    close: () => {
      clearInterval(watch);
      worker?.terminate();
    },
  };
}

function giveUp(waiting: Map<number, Waiting>, id: number): void {
  waiting.get(id)?.onError(new PlannerCancelled());
  waiting.delete(id);
}

/** The workshop in this thread, loaded only where it is needed. */
async function openHere(post: (answer: Answer) => void): Promise<Workshop> {
  const { openWorkshop } = await import('./workshop.ts');
  return openWorkshop(post, () => new Promise((resolve) => setTimeout(resolve, 0)));
}

/**
 * Starts the worker the build made, or answers null.
 * @param trust turns its address into one that this page may run
 */
export function startJudgeWorker(trust: Trust): Worker | null {
  return startWorker(judgeWorkerAddress, trust);
}
