/**
 * What the level bench asks of the rest of the game: keeping levels, planning, reading recorded roads. `main` gives
 * the real ones. Plain types only.
 */
import type { RideReport } from '../../core/coach/types.ts';
import type { RoadAnswers } from '../../core/gpx/choose.ts';
import type { RoadStretch } from '../../core/gpx/types.ts';
import type { LevelWishes } from '../../core/gpx/level.ts';
import type { RecordedSample } from '../../core/gpx/recorded.ts';
import type { GpxOutcome } from '../../core/gpx/summary.ts';
import type { ParseResult } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import type { RideTrace } from '../../core/ride/trace.ts';

/** Who rides, on what. */
export interface Who {
  readonly bike: Bike;
  readonly rider: Rider;
}

/** The road that is to be ridden as well as can be, on which bike and by whom. */
export interface ReferenceJob extends Who {
  readonly level: Level;
}

/** The best ride over a level. */
export interface ReferenceRide {
  readonly trace: RideTrace;
  readonly report: RideReport;
}

/** Whether something was kept, and why not as a code. */
export type KeepAnswer = { readonly saved: true } | { readonly saved: false; readonly code: string };

/** A file that is being read. */
export interface RoadReading {
  readonly outcome: Promise<GpxOutcome>;
  cancel(): void;
}

/** What was ridden on an own level, kept because somebody asked for it. */
interface KeptRecorded {
  readonly levelId: string;
  readonly samples: readonly RecordedSample[];
}

/** What a bench is laid with. */
export interface Laying {
  readonly level: Level;
  /** The level as it is kept on this device, or null while it never was. */
  readonly kept: Level | null;
  /** What was ridden on its road, where that is known. */
  readonly recorded: readonly RecordedSample[] | null;
}

/** Keeping what lies on the bench. Rides are not kept with it: that is done only when asked for. */
export interface DraftStore {
  /** Keeps the level in the place of the one before; false where that did not work. */
  keepUnfinished(level: Level): Promise<boolean>;
  /** There is nothing unfinished any more. */
  dropUnfinished(): Promise<void>;
  /** What lay on the bench last; null where there was nothing unfinished. */
  unfinished(): Promise<Laying | null>;
}

/** What the page asks of the app. */
export interface BenchPageServices {
  /** What the level bench needs; fetched when it is opened. */
  bench(): Promise<BenchServices>;
}

/** What a bench is worked with. */
export interface BenchServices extends DraftStore {
  /** Keeps a level under its id. */
  keep(level: Level): Promise<KeepAnswer>;
  /** Hides a level; `restore` brings it back. */
  remove(id: string): Promise<KeepAnswer>;
  restore(id: string): Promise<KeepAnswer>;
  /** Plans the reference ride; null where `signal` said that nobody waits any more. Rejects where it cannot be planned. */
  plan(
    job: ReferenceJob,
    onShare: (share: number) => void,
    signal: AbortSignal,
  ): Promise<ReferenceRide | null>;
  /** A file is going to be read: fetches what is needed for that. */
  prepareRoad(): void;
  readRoad(file: Blob, onShare: (share: number) => void): RoadReading;
  answerRoad(answers: RoadAnswers): Promise<GpxOutcome>;
  cutRoad(wishes: LevelWishes): Promise<ParseResult>;
  /** What was ridden on a stretch of the road read last; null where the file does not say. */
  recordedOn(stretch: RoadStretch): Promise<readonly RecordedSample[] | null>;
  keepRecorded(record: KeptRecorded): Promise<KeepAnswer>;
  recordedOf(levelId: string): Promise<readonly RecordedSample[] | null>;
  /** Removes what was kept of it for good. */
  forgetRecorded(levelId: string): Promise<boolean>;
}
