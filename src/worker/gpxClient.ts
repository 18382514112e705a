/**
 * The page's side of reading GPX files: promises over a worker, or over this thread where there is none. Holds no
 * file itself. Every question gets an answer, also where nobody can read.
 */
import workerAddress from './gpx.worker.ts?worker&url';
import type { RoadAnswers } from '../core/gpx/choose.ts';
import type { RoadStretch } from '../core/gpx/hardest.ts';
import type { LevelWishes } from '../core/gpx/level.ts';
import type { RecordedSample } from '../core/gpx/recorded.ts';
import type { GpxOutcome } from '../core/gpx/summary.ts';
import { refused } from '../core/gpx/types.ts';
import type { ParseResult } from '../core/level/parse.ts';
import type { GpxDesk } from './gpxDesk.ts';
import { Cancelled, connect } from './rpc.ts';
import { startWorker, type Trust } from './startWorker.ts';

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

const NO_READER = refused('no-reader');

/** What is answered where nobody reads, or nobody waits any more. */
const lostOutcome = (error: unknown): GpxOutcome =>
  error instanceof Cancelled ? { kind: 'cancelled' } : { kind: 'refused', problems: NO_READER.problems };

/** Starts nothing before it is asked for. Work that hangs in a worker would hang the page as well, so it is given up. */
export function createGpxImporter(start: () => Worker | null): GpxImporter {
  const worker = connect<GpxDesk>({
    start,
    here: async () => (await import('./gpxDesk.ts')).createGpxDesk(),
    afterSilence: 'nobody',
  });
  return {
    prepare: () => worker.prepare(),
    read(file, onPart) {
      const stopping = new AbortController();
      const asked = worker.ask('read', file, { onPart, signal: stopping.signal });
      return { outcome: asked.catch(lostOutcome), cancel: () => stopping.abort() };
    },
    answer: (answers) => worker.ask('answer', answers).catch(lostOutcome),
    cut: (wishes) => worker.ask('cut', wishes).catch(() => NO_READER),
    recorded: (stretch) => worker.ask('recorded', stretch).catch(() => null),
  };
}

/** The worker the build made, or null. `trust` turns its address into one that this page may run. */
export function startGpxWorker(trust: Trust): Worker | null {
  return startWorker(workerAddress, trust);
}
