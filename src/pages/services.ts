/**
 * What pages can ask for that is not a change of state: planning, files, keeping. `main` gives the real ones;
 * tests give their own. Nothing here leaves the device unless a person saves a file and carries it.
 */

import type { BenchServices } from './bench/types.ts';

/** Outcome of an action that a page tells about in words. */
export interface Told {
  readonly ok: boolean;
  readonly sentence: string;
}

/** The services. */
export interface Services {
  /** Everything kept on this device as one file, offered for saving. */
  saveEverything(): Promise<Told>;
  /** Takes back a file made by `saveEverything`; what is already here stays once. */
  takeBack(file: Blob): Promise<Told>;
  /** Deletes everything of the game on this device. */
  deleteEverything(): Promise<Told>;
  /** What the level bench needs; fetched when it is opened. */
  bench(): Promise<BenchServices>;
}
