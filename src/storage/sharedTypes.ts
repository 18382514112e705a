/**
 * A club's own store, as it is kept here: who agreed to it, what goes there, how far it has come. Nothing is
 * sent before a person on this device agreed. States are codes; the sentences for them are found by the pages.
 */
import type { StoreAddress, StoreProblem } from '../core/transfer/clubStore.ts';
import type { ReadFile } from '../core/transfer/rideFile.ts';

/** A person on this device agreed that rides of group sessions go to just this address. Kept on this device only. */
export interface Agreement {
  readonly schema: 1;
  readonly address: StoreAddress;
  /** When (milliseconds since 1970). */
  readonly atMs: number;
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
  readonly problem: StoreProblem | null;
}

/** Problems that go away by themselves; for the others a person has to do something. */
export function passes(problem: StoreProblem): boolean {
  return problem === 'unreachable' || problem === 'busy' || problem === 'disk-full';
}

/** The address of the database, or null where none can be made. */
export function databaseUrl({ url, database }: StoreAddress): string | null {
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
