/**
 * The page's side of reading GPX files: promises over a worker, or over this thread where there is none. Holds no
 * file itself. Every question gets an answer, also where nobody can read.
 */
import type { RoadAnswers } from '../core/gpx/choose.ts';
import type { RoadStretch } from '../core/gpx/types.ts';
import type { LevelWishes } from '../core/gpx/level.ts';
import type { GpxOutcome } from '../core/gpx/summary.ts';
import { refused } from '../core/gpx/types.ts';
import type { RoadPitch, RoadRider } from '../core/recorded/rideFigures.ts';
import type { AgainQuestion, GpxDesk } from './gpxDesk.ts';
import { connect } from './asking.ts';
import type { Workplace } from './line.ts';
import { Cancelled } from './rpc.ts';

/** A file that is being read. */
interface GpxReading {
  /** Never rejects; a cancelled reading answers `cancelled` at once. */
  readonly outcome: Promise<GpxOutcome>;
  cancel(): void;
}

const NO_READER = refused('no-reader');

/** What is answered where nobody reads, or nobody waits any more. */
const lostOutcome = (error: unknown): GpxOutcome =>
  error instanceof Cancelled ? { kind: 'cancelled' } : { kind: 'refused', problems: NO_READER.problems };

/** Starts nothing before it is asked for. Work that hangs in a worker would hang the page as well, so it is given up. */
export function createGpxImporter(workplace: Workplace<GpxDesk>) {
  const worker = connect<GpxDesk>({ ...workplace, afterSilence: 'nobody' });
  return {
    /** Fetches the worker, so that nothing is fetched while a file is read. */
    prepare: (): void => worker.prepare(),
    read(file: Blob, onPart: (share: number) => void): GpxReading {
      const stopping = new AbortController();
      const asked = worker.ask('read', file, { onPart, signal: stopping.signal });
      return { outcome: asked.catch(lostOutcome), cancel: () => stopping.abort() };
    },
    answer: (answers: RoadAnswers) => worker.ask('answer', answers).catch(lostOutcome),
    cut: (wishes: LevelWishes) => worker.ask('cut', wishes).catch(() => NO_READER),
    recorded: (stretch: RoadStretch) => worker.ask('recorded', stretch).catch(() => null),
    ridden: (who: RoadRider) =>
      worker.ask('ridden', who).catch(() => ({ ok: false, why: 'no-road' }) as const),
    best: (who: RoadRider, pitch: RoadPitch) => worker.ask('best', { who, pitch }).catch(() => pitch),
    again: (pitch: RoadPitch, words: AgainQuestion['words']) =>
      worker.ask('again', { pitch, words }).catch(() => NO_READER),
  };
}
