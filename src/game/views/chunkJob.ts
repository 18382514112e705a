/**
 * One stretch of road to be painted, and where its places lie on the sheet. Shared by everything that paints
 * onto it.
 */
import type { Context } from '../paint/pen.ts';
import type { PaintSheet } from '../paint/sheet.ts';
import { roadHeightM } from './layout.ts';
import type { Staging } from './staging.ts';

/** Everything a painter needs to know about the stretch it works on. */
export interface ChunkJob extends Staging {
  readonly sheet: PaintSheet;
  readonly context: Context;
  /** Scale of what stands beside the road, that of the layout's props. */
  readonly size: number;
  readonly strokes: Float64Array;
  readonly fromM: number;
  readonly toM: number;
  /** Height (m) of the sheet's line `roomPx`. */
  readonly topM: number;
  readonly roomPx: number;
}

/** Things this close to a chunk still reach into it (m). */
export const REACH_M = 9;

export function inReach(job: ChunkJob, distanceM: number): boolean {
  return distanceM > job.fromM - REACH_M && distanceM < job.toM + REACH_M;
}

/** Sheet column of a distance. */
export function columnOf(job: ChunkJob, distanceM: number): number {
  return (distanceM - job.fromM) * job.layout.pxPerM;
}

/** Sheet line of the road at a distance. */
export function lineOfRoad(job: ChunkJob, distanceM: number): number {
  return job.roomPx + (job.topM - roadHeightM(job.course, distanceM)) * job.layout.heightPxPerM;
}
