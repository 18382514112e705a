/**
 * What is kept of a GPX file while a road is made from it: places, heights, and for a later comparison times
 * since the first point, cadence and power. Names, descriptions, heart rate, device and wall clock are never kept.
 */
import type { Problem } from '../level/problems.ts';
import type { PackedFault } from './packed.ts';

/** Points in the order of the file, as columns of one length. Unknown values are NaN. */
export interface PointColumns {
  readonly latDeg: number[];
  readonly lonDeg: number[];
  readonly heightM: number[];
  /** Seconds since the first time in the file. */
  readonly timeS: number[];
  readonly cadenceRpm: number[];
  readonly powerW: number[];
}

/** A track with its segments, or a route, which has one. */
export interface GpxTrack {
  readonly kind: 'track' | 'route';
  readonly segments: readonly PointColumns[];
}

export interface GpxFile {
  readonly tracks: readonly GpxTrack[];
  readonly waypointCount: number;
  /** Points of tracks and routes, readable or not. */
  readonly pointCount: number;
  /** Points whose place could not be read or lies outside of the globe. */
  readonly unreadablePoints: number;
  /** Heights that were written but are no height. */
  readonly unreadableHeights: number;
  /** Month of the last time in the file, like `2026-05`: the first may come from a clock nobody had set. It is the only thing that is kept of when it was. */
  readonly month: string | null;
  /** Where the file is damaged; the points are those that could be read all the same. */
  readonly damage: Damage | null;
}

/** A fault in the file itself, with the first line it was found in. */
export interface Damage {
  readonly code: 'truncated' | 'not-well-formed';
  readonly line: number;
}

export type GpxResult =
  | { readonly ok: true; readonly file: GpxFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A stretch of a road (m from its start). */
export interface RoadStretch {
  readonly fromM: number;
  readonly toM: number;
}

/** What can be wrong with a recorded road, or should be known about it. */
export type RoadCode =
  // No road can be made.
  | 'too-big'
  | 'truncated'
  | 'empty'
  | 'not-gpx'
  | 'not-xml'
  | 'packed'
  | PackedFault
  | 'encoding'
  | 'not-well-formed'
  | 'doctype'
  | 'too-deep'
  | 'too-many-points'
  | 'no-such-track'
  | 'no-readable-points'
  | 'only-waypoints'
  | 'no-points'
  | 'no-length'
  | 'too-short'
  | 'too-long'
  | 'no-elevation'
  | 'no-readable-elevation'
  | 'backwards'
  | 'unreadable'
  | 'no-reader'
  | 'no-road'
  // What a person decides; holes are also a reason why elevations are no better.
  | 'several-tracks'
  | 'perhaps-feet'
  // What was done.
  | 'salvaged'
  | 'stops'
  | 'zero-elevations'
  | 'impossible-points'
  | 'unreadable-points'
  | 'unreadable-elevations'
  | 'unwritten-elevations'
  | 'elevation-spikes'
  | 'time-backwards'
  | 'cadence-halved'
  | 'cadence-stuck'
  | 'capped'
  | QualityCode;

/** Why the elevations of a road are no better. */
export type QualityCode =
  | 'sparse'
  | 'rounded-places'
  | 'elevation-missing'
  | 'holes'
  | 'bridged'
  | 'jumps'
  | 'noisy'
  | 'spikes'
  | 'whole-metres'
  | 'all-equal';

/** Something to know about an imported road. */
export type RoadNote = Problem;

/** Something only a person can decide. `taken` is what was done as long as nobody answered. */
export interface RoadQuestion extends RoadNote {
  readonly options: readonly string[];
  readonly taken: string;
}

export function emptyColumns(): PointColumns {
  return { latDeg: [], lonDeg: [], heightM: [], timeS: [], cadenceRpm: [], powerW: [] };
}

/** A problem, note or question about a road. */
export function roadNote(path: string, code: RoadCode, values: Problem['values']): RoadNote {
  return { about: 'road', path, code, values };
}

export function refused(code: RoadCode, values: Problem['values'] = {}, path = '') {
  return { ok: false, problems: [roadNote(path, code, values)] } as const;
}
