/**
 * Reads a GPX file in slices, tells how far it is, and keeps the road until the next file. The file goes in; only heights,
 * distances and codes come out, and speed and cadence where somebody asks to compare. Knows no worker.
 */
import type { RoadAnswers } from '../core/gpx/choose.ts';
import { createGpxBytes } from '../core/gpx/file.ts';
import type { RoadStretch } from '../core/gpx/types.ts';
import { type LevelWishes, levelFromRoad } from '../core/gpx/level.ts';
import { type RecordedSample, recordedRide } from '../core/gpx/recorded.ts';
import { importRoad, type Road } from '../core/gpx/road.ts';
import { type GpxOutcome, summaryOf } from '../core/gpx/summary.ts';
import { type GpxFile, type GpxResult, refused } from '../core/gpx/types.ts';
import type { ParseResult } from '../core/level/parse.ts';
import type { Level } from '../core/level/schema.ts';
import { levelOfPitch } from '../core/recorded/again.ts';
import {
  riderOf,
  type RoadPitch,
  roadRide,
  type RoadRider,
  type RoadRideFigures,
  type RoadRideProblem,
  type RoadRideResult,
  withBest,
} from '../core/recorded/rideFigures.ts';
import { LIMITS } from '../core/math/limits.ts';
import { type Call, Cancelled, type Method } from './rpc.ts';

/** So much is read before a pause (bytes). */
const SLICE_BYTES = 128 * 1024;

/** What can be asked. All but `read` are about the file that was read last. */
export interface GpxDesk {
  /** Tells the share of the file that has been read (0 to 1). A newer file takes the place of an older one. */
  readonly read: Method<Blob, number, GpxOutcome>;
  readonly answer: Method<RoadAnswers, never, GpxOutcome>;
  readonly cut: Method<LevelWishes, never, ParseResult>;
  /** What was ridden on a stretch; null where the file does not say. */
  readonly recorded: Method<RoadStretch, never, readonly RecordedSample[] | null>;
  /** What was ridden on the whole road, pitch by pitch, or why that cannot be told. */
  readonly ridden: Method<RoadRider, never, RiddenAnswer>;
  /** A pitch of it with what the best ride does there; as it was where that cannot be worked out. */
  readonly best: Method<PitchQuestion, never, RoadPitch>;
  /** A pitch of it with the way to it as a level. */
  readonly again: Method<AgainQuestion, never, ParseResult>;
}

/** What was ridden, or why that cannot be told. */
type RiddenAnswer =
  | { readonly ok: true; readonly figures: RoadRideFigures }
  | { readonly ok: false; readonly why: RoadRideProblem | 'no-road' };

/** A pitch of the ride that was looked at last. */
interface PitchQuestion {
  readonly who: RoadRider;
  readonly pitch: RoadPitch;
}

/** The same as a level, and what that is called. */
export interface AgainQuestion {
  readonly pitch: RoadPitch;
  readonly words: Pick<Level, 'id' | 'title' | 'sentence'>;
}

/** Opens a desk without a road. */
export function createGpxDesk(): GpxDesk {
  let reading: Call<number> | null = null;
  let file: GpxFile | null = null;
  let road: Road | null = null;
  const make = (answers: RoadAnswers): GpxOutcome => {
    if (file === null) return { kind: 'cancelled' };
    const made = importRoad(file, answers);
    road = made.ok ? made.road : null;
    return made.ok
      ? { kind: 'road', road: summaryOf(made.road) }
      : { kind: 'refused', problems: made.problems };
  };
  return {
    async read(source, call) {
      reading = call;
      file = null;
      road = null;
      try {
        const result = await readSlices(source, call, () => reading === call);
        if (result === null) return { kind: 'cancelled' };
        if (!result.ok) return { kind: 'refused', problems: result.problems };
        file = result.file;
        return make({});
      } catch (error) {
        if (error instanceof Cancelled) throw error;
        return { kind: 'refused', problems: refused('unreadable').problems };
      }
    },
    answer: async (answers) => make(answers),
    cut: async (wishes) => (road === null ? refused('no-road') : levelFromRoad(road, wishes)),
    recorded: async (stretch) => (road === null ? null : recordedRide(road, stretch)),
    ...riddenDesk(() => ({ road, month: file?.month ?? null })),
  };
}

/** Answers what was ridden on the road that was read last. */
function riddenDesk(
  read: () => { readonly road: Road | null; readonly month: string | null },
): Pick<GpxDesk, 'ridden' | 'best' | 'again'> {
  let looked: { readonly road: Road; readonly result: RoadRideResult } | null = null;
  return {
    async ridden(who) {
      const { road, month } = read();
      if (road === null) return { ok: false, why: 'no-road' };
      const result = roadRide(road, month, who);
      looked = { road, result };
      return result.ok ? { ok: true, figures: result.figures } : result;
    },
    async best({ who, pitch }) {
      const { road } = read();
      if (road === null || looked?.road !== road || !looked.result.ok) return pitch;
      const { result } = looked;
      return withBest(result.road, pitch, who.bike, riderOf(result.figures, who.rider));
    },
    async again({ pitch, words }) {
      const { road } = read();
      if (road === null || looked?.road !== road || !looked.result.ok) return refused('no-road');
      return levelOfPitch(looked.result.road, looked.result.seconds, pitch, words);
    },
  };
}

/** Reads to the end, to a refusal, or until another file is wanted (null). */
async function readSlices(
  source: Blob,
  call: Call<number>,
  isWanted: () => boolean,
): Promise<GpxResult | null> {
  const bytes = createGpxBytes((label) => new TextDecoder(label));
  // Of longer files no more is read; the reader has long refused them by then.
  const size = Math.min(source.size, LIMITS.gpx.bytes.most);
  for (let at = 0; at < size; at += SLICE_BYTES) {
    const slice = source.slice(at, Math.min(size, at + SLICE_BYTES));
    const goesOn = bytes.push(new Uint8Array(await slice.arrayBuffer()));
    call.tell(Math.min(1, (at + SLICE_BYTES) / size));
    await call.pause();
    if (!isWanted()) return null;
    if (!goesOn) break;
  }
  return bytes.end();
}
