/**
 * The page's side of reading GPX files: promises over a worker, or over this thread where there is none. Holds no
 * file itself. Every question gets an answer, also where nobody can read.
 */
import workerAddress from './gpx.worker.ts?worker&url';
import { refused } from '../core/gpx/types.ts';
import { openLine } from './line.ts';
import { startWorker, type Trust } from './startWorker.ts';
import type { RoadAnswers } from '../core/gpx/choose.ts';
import type { RoadStretch } from '../core/gpx/hardest.ts';
import type { LevelWishes } from '../core/gpx/level.ts';
import type { RecordedSample } from '../core/gpx/recorded.ts';
import type { GpxOutcome } from '../core/gpx/summary.ts';
import type { ParseResult } from '../core/level/parse.ts';
import type { GpxAnswer, GpxRequest } from './gpxMessages.ts';

/** A file that is being read. */
interface GpxReading {
  /** Never rejects; a cancelled reading answers `cancelled` at once. */
  readonly outcome: Promise<GpxOutcome>;
  cancel(): void;
}

/** Reads files one at a time; questions are about the one read last. */
interface GpxImporter {
  /** Fetches the worker, so that nothing is fetched while a file is read. */
  prepare(): void;
  read(file: Blob, onShare: (share: number) => void): GpxReading;
  answer(answers: RoadAnswers): Promise<GpxOutcome>;
  cut(wishes: LevelWishes): Promise<ParseResult>;
  recorded(stretch: RoadStretch): Promise<readonly RecordedSample[] | null>;
}

/** A question without an answer yet. */
interface Waiting {
  readonly request: GpxRequest;
  readonly take: (answer: GpxAnswer) => void;
}

/** A task of its own lets a cancel get through. */
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** What is answered where nobody reads. */
function lostAnswer({ id, kind }: GpxRequest): GpxAnswer {
  const lost = refused('no-reader');
  if (kind === 'cut') return { kind: 'level', id, level: lost };
  if (kind === 'recorded') return { kind: 'samples', id, samples: null };
  return { kind: 'outcome', id, outcome: { kind: 'refused', problems: lost.problems } };
}

/** Keeps the questions that wait for an answer, and the line to whoever answers. */
function openCounter(start: () => Worker | null) {
  const waiting = new Map<number, Waiting>();
  let lastId = 0;
  const receive = (answer: GpxAnswer): void => waiting.get(answer.id)?.take(answer);
  const send = openLine<GpxRequest, GpxAnswer>({
    start,
    here: async () => (await import('./gpxDesk.ts')).openGpxDesk(receive, pause),
    receive,
    unanswered: () => [...waiting.values()].map((one) => one.request),
    onLost: () => {
      for (const { request } of waiting.values()) receive(lostAnswer(request));
    },
  });
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
    send(request);
    return { id, result };
  };
  return { ask, receive, send } as const;
}

/** Starts nothing before it is asked for. */
export function createGpxImporter(start: () => Worker | null): GpxImporter {
  const { ask, receive, send } = openCounter(start);
  const outcomeOf = (answer: GpxAnswer): GpxOutcome | undefined =>
    answer.kind === 'outcome' ? answer.outcome : undefined;
  return {
    prepare: () => send(null),
    read(file, onShare) {
      const { id, result } = ask<GpxOutcome>(
        (one) => ({ kind: 'read', id: one, file }),
        (answer) => {
          if (answer.kind === 'progress') onShare(answer.share);
          return outcomeOf(answer);
        },
      );
      const cancel = (): void => {
        send({ kind: 'cancel', id });
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

/** The worker the build made, or null. `trust` turns its address into one that this page may run. */
export function startGpxWorker(trust: Trust): Worker | null {
  return startWorker(workerAddress, trust);
}
