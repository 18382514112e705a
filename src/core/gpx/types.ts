/**
 * What is kept of a GPX file while a road is made from it: places, heights, and for a later comparison times
 * since the first point and cadence. Names, descriptions, heart rate, device and wall clock are never kept.
 */
import type { Problem } from '../level/problems.ts';

/** Points in the order of the file, as columns of one length. Unknown values are NaN. */
export interface PointColumns {
  readonly latDeg: number[];
  readonly lonDeg: number[];
  readonly heightM: number[];
  /** Seconds since the first time in the file. */
  readonly timeS: number[];
  readonly cadenceRpm: number[];
}

/** A track with its segments, or a route, which has one. */
export interface GpxTrack {
  readonly kind: 'track' | 'route';
  readonly segments: readonly PointColumns[];
}

/** Everything that was read. */
export interface GpxFile {
  readonly tracks: readonly GpxTrack[];
  readonly waypointCount: number;
  /** Points of tracks and routes, readable or not. */
  readonly pointCount: number;
  /** Points whose place could not be read or lies outside of the globe. */
  readonly unreadablePoints: number;
  /** Heights that were written but are no height. */
  readonly unreadableHeights: number;
}

/** A file that could be read, or why not. */
export type GpxResult =
  | { readonly ok: true; readonly file: GpxFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Something to know about an imported road: the numbers in its sentence by name, with units. */
export interface RoadNote extends Problem {
  readonly values: Readonly<Record<string, number>>;
}

/** Something only a person can decide. `taken` is what was done as long as nobody answered. */
export interface RoadQuestion extends RoadNote {
  readonly options: readonly string[];
  readonly taken: string;
}

/** Empty columns. */
export function emptyColumns(): PointColumns {
  return { latDeg: [], lonDeg: [], heightM: [], timeS: [], cadenceRpm: [] };
}

/** A refusal of one sentence. */
export function refused(code: string, sentence: string, path = '') {
  return { ok: false, problems: [{ path, code, sentence }] } as const;
}
