/**
 * The page's side of reading GPX files: promises over a worker, or over this thread where there is none. Holds no
 * file itself.
 */
import workerAddress from './gpx.worker.ts?worker&url';
import { startWorker, type Trust } from './startWorker.ts';
import type { RoadAnswers } from '../core/gpx/choose.ts';
import type { RoadStretch } from '../core/gpx/hardest.ts';
import type { LevelWishes } from '../core/gpx/level.ts';
import type { RecordedSample } from '../core/gpx/recorded.ts';
import type { GpxOutcome } from '../core/gpx/summary.ts';
import type { ParseResult } from '../core/level/parse.ts';
import type { GpxAnswer, GpxRequest } from './gpxMessages.ts';

/** A file that is being read. */
export interface GpxReading {
  /** Never rejects; a cancelled reading answers `cancelled` at once. */
  readonly outcome: Promise<GpxOutcome>;
  cancel(): void;
}

/** Reads files one at a time; questions are about the one read last. */
export interface GpxImporter {
  /** Fetches the worker, so that nothing is fetched while a file is read. */
  prepare(): void;
  read(file: Blob, onShare: (share: number) => void): GpxReading;
  answer(answers: RoadAnswers): Promise<GpxOutcome>;
  cut(wishes: LevelWishes): Promise<ParseResult>;
  recorded(stretch: RoadStretch): Promise<readonly RecordedSample[] | null>;
}

type Line = (request: GpxRequest) => void;

/** A question without an answer yet. */
interface Waiting {
  readonly request: GpxRequest;
  readonly take: (answer: GpxAnswer) => void;
}

/** Keeps the questions that wait for an answer, and the line to whoever answers. */
function openCounter(start: () => Worker | null) {
  const waiting = new Map<number, Waiting>();
  let line: Line | null = null;
  let lastId = 0;
  const receive = (answer: GpxAnswer): void => waiting.get(answer.id)?.take(answer);
  const lineNow = (): Line => {
    line ??= connect(start, receive, () => [...waiting.values()].map((one) => one.request));
    return line;
  };
  const ask = <Result>(
    toRequest: (id: number) => GpxRequest,
    pick: (answer: GpxAnswer) => Result | undefined,
  ): { readonly id: number; readonly result: Promise<Result> } => {
    lastId += 1;
    const id = lastId;
    const request = toRequest(id);
    const result = new Promise<Result>((resolve) => {
      const take = (answer: GpxAnswer): void => {
        const picked = pick(answer);
        if (picked === undefined) return;
        waiting.delete(id);
        resolve(picked);
      };
      waiting.set(id, { request, take });
    });
    lineNow()(request);
    return { id, result };
  };
  return { ask, receive, lineNow } as const;
}

/** Starts nothing before it is asked for. */
export function createGpxImporter(start: () => Worker | null): GpxImporter {
  const { ask, receive, lineNow } = openCounter(start);
  const outcomeOf = (answer: GpxAnswer): GpxOutcome | undefined =>
    answer.kind === 'outcome' ? answer.outcome : undefined;
  return {
    prepare: () => void lineNow(),
    read(file, onShare) {
      const { id, result } = ask<GpxOutcome>(
        (one) => ({ kind: 'read', id: one, file }),
        (answer) => {
          if (answer.kind === 'progress') onShare(answer.share);
          return outcomeOf(answer);
        },
      );
      const cancel = (): void => {
        lineNow()({ kind: 'cancel', id });
        receive({ kind: 'outcome', id, outcome: { kind: 'cancelled' } });
      };
      return { outcome: result, cancel };
    },
    answer: (answers) => ask((id) => ({ kind: 'answer', id, answers }), outcomeOf).result,
    cut: (wishes) =>
      ask(
        (id) => ({ kind: 'cut', id, wishes }),
        (answer) => (answer.kind === 'level' ? answer.level : undefined),
      ).result,
    recorded: async (stretch) => {
      const { result } = ask(
        (id) => ({ kind: 'recorded', id, stretch }),
        (answer) => (answer.kind === 'samples' ? { samples: answer.samples } : undefined),
      );
      return (await result).samples;
    },
  };
}

/** Connects to a worker; where it does not start or breaks down, what it did not answer is asked again here. */
function connect(
  start: () => Worker | null,
  receive: (answer: GpxAnswer) => void,
  unanswered: () => readonly GpxRequest[],
): Line {
  const worker = start();
  if (worker === null) return workHere(receive);
  let send: Line = (request) => worker.postMessage(request);
  worker.addEventListener('message', (event: MessageEvent<GpxAnswer>) => receive(event.data));
  worker.addEventListener('error', () => {
    worker.terminate();
    send = workHere(receive);
    for (const request of unanswered()) send(request);
  });
  return (request) => send(request);
}

function workHere(receive: (answer: GpxAnswer) => void): Line {
  const desk = import('./gpxDesk.ts').then(({ openGpxDesk }) =>
    openGpxDesk(receive, () => new Promise((resolve) => setTimeout(resolve, 0))),
  );
  return (request) => void desk.then((take) => take(request));
}

/** The worker the build made, or null. `trust` turns its address into one that this page may run. */
export function startGpxWorker(trust: Trust): Worker | null {
  return startWorker(workerAddress, trust);
}
