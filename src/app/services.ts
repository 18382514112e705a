/**
 * What pages can ask for that is not a change of state: planning, files, keeping. `main` gives the real ones;
 * tests give their own. Nothing here leaves the device unless a person saves a file and carries it, or has agreed to
 * a club's own store on this device.
 */

import type { JudgedRide, RideResult } from '../core/coach/results.ts';
import type { TwoRides, TwoWish } from '../pages/two/types.ts';
import type { GearQuestion, GearTold } from '../features/gearcheck/types.ts';
import type { CarryServices } from '../pages/handover/types.ts';
import type { ClinicDesk } from '../pages/clinic/types.ts';
import type { BenchServices } from '../pages/bench/types.ts';
import type { Settings } from '../core/settings/settings.ts';
import type { UnfinishedRide } from './unfinished.ts';

/** Outcome of an action that a page tells about in words. */
export interface Told {
  readonly ok: boolean;
  readonly sentence: string;
  /** The file was changed after it was saved; nothing was taken before a person says so. */
  readonly askAboutChanged?: boolean;
  /** A page that has more to say. */
  readonly more?: { readonly href: string; readonly word: string };
}

/** How a copy is taken back. */
export interface TakingBack {
  readonly evenIfChanged: boolean;
  /** Told how far it is (0 to 1). */
  readonly onShare: (share: number) => void;
  readonly signal: AbortSignal;
}

/** The services. */
export interface Services {
  /** Works on a gear check; the answer gives it up. */
  readonly checkGears: (question: GearQuestion, told: GearTold) => () => void;
  /** Two rides side by side; they go on until they are stopped. */
  readonly rideTwo: (wish: TwoWish) => TwoRides;
  /** Marks a ride that is over; rejects where it cannot be done. */
  readonly judgeRide: (result: RideResult) => Promise<JudgedRide>;
  /** Everything kept on this device as one file, offered for saving. */
  saveEverything(): Promise<Told>;
  /**
   * Takes back a file made by `saveEverything`; what is already here stays once. Of a file that was changed since
   * nothing is taken unless `evenIfChanged` is true. What was taken before it is stopped stays.
   */
  takeBack(file: Blob, how: TakingBack): Promise<Told>;
  /** Deletes everything of the game on this device. */
  deleteEverything(): Promise<Told>;
  /** The owner of group sessions, fetched when it is first wanted. */
  clinic(): Promise<ClinicDesk>;
  /** Plans and rides that are carried between devices. */
  readonly carry: CarryServices;
  /** Keeps what was ridden of a ride that broke off. */
  keepUnfinished(ride: UnfinishedRide): Promise<Told>;
  /** Forgets a ride that broke off. */
  letUnfinishedGo(ride: UnfinishedRide): Promise<void>;
  /** Offers a report of what went wrong as a file; it holds no person. */
  saveReport(): void;
  /** Loads the newer version that waits on this device. */
  loadNewer(): void;
  /**
   * Draws the rider of these settings into a canvas, if that is still wanted when the drawing has been fetched;
   * rejects where it cannot be fetched.
   */
  readonly paintRider: (
    canvas: HTMLCanvasElement,
    settings: Settings,
    isWanted: () => boolean,
  ) => Promise<void>;
  /** What the level bench needs; fetched when it is opened. */
  bench(): Promise<BenchServices>;
}
