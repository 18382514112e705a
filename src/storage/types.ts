/**
 * What is kept on this device, and what can be asked of the keeping, as plain types. Everything stays here:
 * no accounts, nothing is sent. Problems are codes; the words for them are found by the pages.
 */
import type { StoreAddress } from '../core/transfer/clubStore.ts';
import type { MarkName } from '../core/coach/types.ts';
import type { Level } from '../core/level/schema.ts';
import type { Recording } from '../core/ride/recording.ts';
import type { Shape } from './ladder.ts';

/** Version of the shape of a kept ride. */
export const RIDE_SCHEMA = 2;

/**
 * How a ride stands with its marks: it has them, they are still to be worked out, or it broke off before the finish
 * and never gets any.
 */
type RideStanding = 'marked' | 'to-mark' | 'unfinished';

/** What a ride came to, without the ride itself. */
export interface StoredResult {
  readonly schema: typeof RIDE_SCHEMA;
  /** Random; the same ride has the same id on every device. */
  readonly id: string;
  /** Milliseconds since 1970. */
  readonly savedAtMs: number;
  readonly levelId: string;
  readonly levelTitle: string;
  readonly levelHash: string;
  readonly seed: number;
  readonly bikeId: string;
  readonly riderId: string;
  readonly kind: 'ride' | 'check' | 'clinic';
  readonly standing: RideStanding;
  /** Version of the physics it was ridden by. */
  readonly physicsVersion: string;
  /** Version of the rules it was marked by; null without marks. */
  readonly rulesVersion: string | null;
  /** 0 to 100; null without marks. */
  readonly total: number | null;
  /** 0 to 100 each, or null where the ride gave nothing to judge. */
  readonly marks: Readonly<Record<MarkName, number | null>>;
  readonly passed: boolean;
}

/** What marking adds to a ride that was kept without. */
export type Marking = Pick<StoredResult, 'total' | 'marks' | 'passed' | 'rulesVersion'>;

/** A whole kept ride. It has one writer and never changes, but for its marks, which may come later. */
export interface SavedRide extends StoredResult {
  readonly recording: Recording;
  /** The level itself, where it is not one that comes with the game. */
  readonly level?: Level;
}

/** A ride that is to be kept; version and time are added. The id comes from `newRideId`. */
export type NewRide = Omit<SavedRide, 'schema' | 'savedAtMs'>;

/** A ride in the list. Without a recording it can be counted but not watched. */
export interface ListedRide extends StoredResult {
  readonly hasRecording: boolean;
}

/** A level made or imported on this device. */
export interface OwnLevel {
  readonly schema: 1;
  readonly id: string;
  readonly savedAtMs: number;
  /** Hidden but still here, so that deleting can be undone. */
  readonly deleted: boolean;
  readonly level: Level;
}

/** The choices of the person, opaque here. */
export interface KeptSettings {
  readonly schema: 1;
  readonly savedAtMs: number;
  /** Version of `value`, counted by those who own it. */
  readonly version: number;
  readonly value: unknown;
}

/** Anything else that is kept by kind and id, such as a clinic; its data are opaque here. */
export interface KeptRecord {
  readonly kind: string;
  readonly id: string;
  /** Version of `data`, counted by those who own it. */
  readonly schema: number;
  readonly savedAtMs: number;
  readonly data: unknown;
}

/** A record that is to be put; its time is added. */
export type NewRecord = Omit<KeptRecord, 'savedAtMs'>;

/** The records as they are at the moment of a change. Nothing else may be waited for in between. */
export interface RecordsNow {
  /** False where the database does not answer, and these are only the ones in memory. */
  readonly inDatabase: boolean;
  /** The data of a record, or null where there is none that can be read. */
  data<T>(kind: string, id: string, shape: Shape<T>): Promise<T | null>;
  /** All records whose envelope can be read. */
  all(): Promise<readonly KeptRecord[]>;
}

/** What is put and removed in one step. */
export interface RecordChange {
  readonly put?: readonly NewRecord[];
  readonly drop?: readonly Pick<KeptRecord, 'kind' | 'id'>[];
}

/** Why keeping does not work as it should. */
export type ProblemCode =
  /** The browser gives no database, as in some private windows. */
  | 'private-window'
  | 'disk-full'
  | 'connection-lost'
  /** What is kept was written by a newer version of the game; it is left as it is. */
  | 'newer-version'
  /** Another tab holds the database and does not let go. */
  | 'blocked'
  /** The database does not answer. */
  | 'hangs'
  /** The browser lost rides; only their results are left. */
  | 'recordings-lost'
  /** Something kept cannot be read. */
  | 'corrupt';

/** Where new things are kept now. */
export interface Health {
  /**
   * `kept`: in the database and, where the browser gives caches, in a second copy. `small-copy`: results of the
   * newest rides and the settings survive a reload, nothing else does. `memory`: all is gone with the tab.
   */
  readonly kind: 'kept' | 'small-copy' | 'memory';
  readonly problem: ProblemCode | null;
}

/** Answer to keeping something. `saved` is true only after the database has completed the transaction. */
export type SaveAnswer =
  | { readonly saved: true }
  | {
      readonly saved: false;
      readonly code: ProblemCode;
      /** The result (or the settings) was written to the small copy and read back from it. */
      readonly localBackup: boolean;
    };

/** The parts of the database. */
export type StoreName = 'rides' | 'results' | 'levels' | 'settings' | 'records';

/** Something kept that this version cannot read. It is left where it is. */
export interface Damaged {
  readonly store: StoreName;
  readonly id: string;
  readonly code: 'corrupt' | 'newer-version';
}

/** Version of the shape of an export. */
export const EXPORT_SCHEMA = 1;

/** Everything on this device as one JSON value. */
export interface ExportFile {
  readonly schema: typeof EXPORT_SCHEMA;
  readonly exportedAtMs: number;
  readonly rides: readonly unknown[];
  /** Results whose recording is lost. */
  readonly results: readonly unknown[];
  readonly levels: readonly unknown[];
  readonly settings: unknown;
  readonly records: readonly unknown[];
  /** What could not be read and is therefore not in here. */
  readonly leftOut: readonly Damaged[];
  /** False where the database did not answer and only what is in memory is in here. */
  readonly complete: boolean;
  /** Fingerprint of all the rest. */
  readonly checksum: string;
}

/** One thing on its way into a store. It has passed the reader of the store. */
export interface StoredPiece {
  readonly store: StoreName;
  readonly key: string;
  readonly value: unknown;
  /** Made by this person just now, so it comes after what is there, whatever the clock says. */
  readonly mine: boolean;
}

/** The good pieces of an import and the refused ones. */
export interface OpenedImport {
  readonly pieces: readonly StoredPiece[];
  readonly refused: readonly Refused[];
  /** The club's own store it names, without a password: to be shown and asked about. */
  readonly clubStore: StoreAddress | null;
}

/** A piece of an import that was not taken. */
export interface Refused {
  readonly id?: string;
  /**
   * `differs`: another ride is kept under this id. `checksum`: the file was changed after it was saved.
   * `too-much`: more pieces than any device has; none was taken.
   */
  readonly code: 'corrupt' | 'newer-version' | 'differs' | 'checksum' | 'too-much';
}

/** What became of an import. */
export interface ImportReport {
  /** Pieces that are in the database now and were not before. */
  readonly added: number;
  readonly already: number;
  /** Pieces that are in memory only, for the reason in `problem`. */
  readonly unsaved: number;
  readonly refused: readonly Refused[];
  readonly problem: ProblemCode | null;
  /** The club's own store it names, without a password. It was not taken over: a person has to be asked. */
  readonly clubStore: StoreAddress | null;
}

/** What became of deleting everything. `left` names what is still there. */
export type DeleteAnswer =
  | { readonly deleted: true }
  | {
      readonly deleted: false;
      readonly code: ProblemCode;
      readonly left: readonly ('database' | 'small-copy' | 'caches')[];
    };

/** What the browser says to "please do not clear this by yourself". */
export type Persistence = 'granted' | 'refused' | 'unknown';

/** The keeping. No method rejects; reading gives what can be read. */
export interface Storage {
  readonly health: Health;
  /** What was found unreadable so far. */
  readonly damaged: readonly Damaged[];
  /** Calls back when `health` has changed; the answer stops it. */
  subscribe(listener: (health: Health) => void): () => void;
  /**
   * Calls back when another tab deletes everything, before it is gone: whatever is still in memory must not be
   * written back. The answer stops it.
   */
  onDeletedElsewhere(listener: () => void): () => void;
  saveRide(ride: NewRide): Promise<SaveAnswer>;
  /** Adds the marks to a ride that was kept without; null where there is no such ride. */
  markRide(id: string, marking: Marking): Promise<SaveAnswer | null>;
  /** Newest first. */
  listRides(): Promise<readonly ListedRide[]>;
  /** The whole ride, or null where it is unknown, unreadable or only its result is left. */
  getRide(id: string): Promise<SavedRide | null>;
  /** Keeps the settings; refuses where settings of a newer version are kept. */
  saveSettings(value: unknown, version: number): Promise<SaveAnswer>;
  /** The settings, or null where there are none that can be read. */
  loadSettings<T>(shape: Shape<T>): Promise<T | null>;
  /** Keeps a level under its id, also one that was deleted. */
  saveLevel(level: Level): Promise<SaveAnswer>;
  /** Hides a level; null where there is none. `restoreLevel` brings it back. */
  deleteLevel(id: string): Promise<SaveAnswer | null>;
  restoreLevel(id: string): Promise<SaveAnswer | null>;
  /** Own levels that are not deleted, last saved first. */
  listLevels(): Promise<readonly OwnLevel[]>;
  putRecord(record: NewRecord): Promise<SaveAnswer>;
  /**
   * Looks at the records and changes them in one transaction: all of it or nothing. `work` may be called several
   * times; where it answers null nothing is changed, and so is the answer.
   */
  changeRecords(work: (now: RecordsNow) => Promise<RecordChange | null>): Promise<SaveAnswer | null>;
  /** Records of a kind whose data can be read, last saved first. */
  listRecords<T>(
    kind: string,
    shape: Shape<T>,
  ): Promise<readonly { readonly id: string; readonly savedAtMs: number; readonly data: T }[]>;
  /** Removes records of a kind for good: those with these ids, or all. Null when done, else why not. */
  deleteRecords(kind: string, ids?: readonly string[]): Promise<ProblemCode | null>;
  exportAll(): Promise<ExportFile>;
  /** Takes in a copy that was opened elsewhere, part by part; rejects where the parts do. What came before is kept. */
  importOpened(parts: AsyncIterable<OpenedImport>): Promise<ImportReport>;
  /** Takes a copy in. One that was changed after it was saved changes nothing here unless `evenIfChanged` is set. */
  importAll(value: unknown, options?: { readonly evenIfChanged: boolean }): Promise<ImportReport>;
  deleteEverything(): Promise<DeleteAnswer>;
  /** Asks the browser to keep the data; call it after the first saved ride, when the person has a reason to agree. */
  requestPersistence(): Promise<Persistence>;
}
