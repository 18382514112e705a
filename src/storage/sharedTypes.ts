/**
 * A club's own store, as plain types: where it is, who agreed to it, what goes there, how far it has come. Nothing is
 * sent before a person on this device agreed. States are codes; the sentences for them are found by the pages.
 */
import type { ReadFile } from '../core/transfer/rideFile.ts';

/** Where the store is. Kept on this device and sent to nobody but the store. */
export interface SharedAddress {
  /** `https://host[:port][/path]`, without the name of the database. */
  readonly url: string;
  readonly database: string;
  /** Empty for a store that asks for none. */
  readonly name: string;
  readonly password: string;
}

/** A person on this device agreed that rides of group sessions go to just this address. Kept on this device only. */
export interface Agreement {
  readonly schema: 1;
  readonly address: SharedAddress;
  /** When (milliseconds since 1970). */
  readonly atMs: number;
}

/** An address nobody has agreed to: it came with a file or a code, or was kept here before people were asked. */
export interface Offer {
  readonly address: SharedAddress;
  readonly from: 'file' | 'code' | 'before';
}

/** What has gone to the store so far. */
export interface SentSoFar {
  readonly rides: number;
  /** When something went there last (milliseconds since 1970), or null for never. */
  readonly atMs: number | null;
}

/** What stands in the way. */
export type SharedProblem =
  /** No answer: no network, the server is down, or it does not let this page in. */
  | 'unreachable'
  /** It answers, but has no time now. */
  | 'busy'
  | 'disk-full'
  | 'wrong-password'
  | 'not-allowed'
  | 'no-database'
  /** The address cannot be one. */
  | 'bad-address'
  /** Something answers that is no such store. */
  | 'not-a-store'
  /** It gives more than can be taken in at once. */
  | 'endless'
  /** Single rides were refused; the others went through. */
  | 'some-refused';

/** How it stands. */
export interface SharedState {
  readonly phase: 'sending' | 'waiting' | 'stopped' | 'done';
  /** Pieces that are there for certain. */
  readonly there: number;
  readonly left: number;
  readonly problem: SharedProblem | null;
  /** Milliseconds until the next try, while waiting. */
  readonly nextTryMs: number | null;
}

/** One thing that goes there, never changed afterwards. */
export interface SharedPiece {
  readonly id: string;
  readonly body: Readonly<Record<string, unknown>>;
}

/** How far this device has come with one store. Plain data for the owner to keep; losing it costs only time. */
export interface SharedProgress {
  readonly schema: 3;
  /** Which store this is about. */
  readonly store: string;
  /** Ids of pieces that are there for certain. */
  readonly there: readonly string[];
  /** Ids of rides that came from there; this device need not send them. */
  readonly met: readonly string[];
  /** Ids of pieces the store did not take the last time; they are offered again with every new start. */
  readonly refused: readonly string[];
  /** How far has been read for each plan, in the store's own words. */
  readonly since: Readonly<Record<string, string>>;
  /** When pieces went there last (milliseconds since 1970), or null for never. */
  readonly sentAtMs: number | null;
}

/** What was fetched; `problem` is null where everything was read to the end. */
export interface Fetched {
  readonly read: ReadFile;
  readonly progress: SharedProgress;
  readonly problem: SharedProblem | null;
}

/** Problems that go away by themselves; for the others a person has to do something. */
export function passes(problem: SharedProblem): boolean {
  return problem === 'unreachable' || problem === 'busy' || problem === 'disk-full';
}

/** The address of the database, or null where none can be made. */
export function databaseUrl({ url, database }: SharedAddress): string | null {
  // Names as the store itself allows them; anything else would reach into its other parts.
  if (!/^[a-z][a-z0-9_$()+/-]{0,200}$/.test(database)) return null;
  try {
    const parsed = new URL(url.trim());
    if (!['http:', 'https:'].includes(parsed.protocol) || parsed.username !== '' || parsed.hostname === '')
      return null;
    return `${parsed.origin}${parsed.pathname.replace(/\/+$/, '')}/${encodeURIComponent(database)}`;
  } catch {
    return null;
  }
}
