/**
 * What is kept on this device, and what is answered to those who ask the keeping, as plain types. Everything stays here:
 * no accounts, nothing is sent. Problems are codes; the words for them are found by the pages.
 */
import type { StoreAddress } from '../core/transfer/clubStore.ts';
import type { RecordKind } from './ladder.ts';
import type { KeptRecord, SavedRide, StoredResult, StoreName } from './shapes.ts';

export type { KeptRecord, KeptSettings, OwnLevel, SavedRide, StoredResult, StoreName } from './shapes.ts';

/** What marking adds to a ride that was kept without. */
export type Marking = Pick<StoredResult, 'total' | 'marks' | 'passed' | 'rulesVersion'>;

/** A ride that is to be kept; version and time are added. The id comes from `newId`. */
export type NewRide = Omit<SavedRide, 'schema' | 'savedAtMs'>;

/** A record that is to be put; its time is added. */
export type NewRecord = Omit<KeptRecord, 'savedAtMs'>;

/** The records as they are at the moment of a change. Nothing else may be waited for in between. */
export interface RecordsNow {
  /** False where the database does not answer, and these are only the ones in memory. */
  readonly inDatabase: boolean;
  /** The data of a record, or null where there is none that can be read. */
  data<T>(of: RecordKind<T>, id: string): Promise<T | null>;
  /** All records whose envelope can be read. */
  all(): Promise<readonly KeptRecord[]>;
}

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

export interface OpenedImport {
  readonly pieces: readonly StoredPiece[];
  readonly refused: readonly Refused[];
  /** The club's own store it names, without a password: to be shown and asked about. */
  readonly clubStore: StoreAddress | null;
}

export interface Refused {
  readonly id?: string;
  /**
   * `differs`: another ride is kept under this id. `checksum`: the file was changed after it was saved.
   * `too-much`: more pieces than any device has; none was taken.
   */
  readonly code: 'corrupt' | 'newer-version' | 'differs' | 'checksum' | 'too-much';
}

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
