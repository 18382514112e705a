/**
 * The page's side of reading GPX files: promises over a worker, or over this thread where there is none. Holds no
 * file itself. Every question gets an answer, also where nobody can read.
 */
import type { RoadAnswers } from '../core/gpx/choose.ts';
import type { RoadStretch } from '../core/gpx/types.ts';
import type { LevelWishes } from '../core/gpx/level.ts';
import type { RecordedSample } from '../core/gpx/recorded.ts';
import type { GpxOutcome } from '../core/gpx/summary.ts';
import { refused } from '../core/gpx/types.ts';
import type { ParseResult } from '../core/level/parse.ts';
import type { RoadPitch, RoadRider } from '../core/recorded/rideFigures.ts';
import type { AgainQuestion, GpxDesk, RiddenAnswer } from './gpxDesk.ts';
import { connect } from './asking.ts';
import type { Workplace } from './line.ts';
import { Cancelled } from './rpc.ts';

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
  /** What was ridden on the road, pitch by pitch. */
  ridden(who: RoadRider): Promise<RiddenAnswer>;
  /** The same pitch with what the best ride does there; as it was where that cannot be worked out. */
  best(who: RoadRider, pitch: RoadPitch): Promise<RoadPitch>;
  /** A pitch with the way to it as a level. */
  again(pitch: RoadPitch, words: AgainQuestion['words']): Promise<ParseResult>;
}

const NO_READER = refused('no-reader');

/** What is answered where nobody reads, or nobody waits any more. */
const lostOutcome = (error: unknown): GpxOutcome =>
  error instanceof Cancelled ? { kind: 'cancelled' } : { kind: 'refused', problems: NO_READER.problems };

/** Starts nothing before it is asked for. Work that hangs in a worker would hang the page as well, so it is given up. */
export function createGpxImporter(workplace: Workplace<GpxDesk>): GpxImporter {
  const worker = connect<GpxDesk>({ ...workplace, afterSilence: 'nobody' });
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
    ridden: (who) => worker.ask('ridden', who).catch(() => ({ ok: false, why: 'no-road' })),
    best: (who, pitch) => worker.ask('best', { who, pitch }).catch(() => pitch),
    again: (pitch, words) => worker.ask('again', { pitch, words }).catch(() => NO_READER),
  };
}
