/**
 * A road from the side as path data: outline, paper below it, and ink hatching that gets denser with the
 * gradient. Used by the strip and by the small pictures of pitches.
 */
import type { Course } from '../core/course/types.ts';
import { sampleAt } from '../core/math/numbers.ts';
import { HATCHED_RATIO } from '../ui/pictures/profile.tsx';
import { px } from './lines.ts';

/** Lines of hatching per pixel and slope. */
const INK = 2.2;
/** A picture never makes less than this many metres as high as itself, or a flat road would look hilly (m). */
const LEAST_RISE_M = 6;

/** The window through which a road is seen. */
interface RoadBox {
  readonly fromM: number;
  readonly toM: number;
  readonly left: number;
  readonly right: number;
  /** The highest ground comes up to `top`; paper goes down to `bottom`. */
  readonly top: number;
  readonly bottom: number;
}

/** Path data, and the height of the road's line at a place (px). */
interface RoadPaths {
  readonly outline: string;
  readonly ground: string;
  readonly hatching: string;
  y(distanceM: number): number;
}

/** Draws the road into its box. */
export function roadPaths(course: Course, box: RoadBox): RoadPaths {
  const { fromM, toM, left, right, top, bottom } = box;
  const perPx = (toM - fromM) / (right - left);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let m = fromM; m <= toM; m += 1) {
    const height = sampleAt(course.heightM, m);
    low = Math.min(low, height);
    high = Math.max(high, height);
  }
  const foot = (bottom - top) * 0.28;
  const scale = (bottom - top - foot) / Math.max(LEAST_RISE_M, high - low);
  const y = (m: number): number => bottom - foot - (sampleAt(course.heightM, m) - low) * scale;
  const points: string[] = [];
  for (let at = left; at < right; at += 2) points.push(`${px(at)} ${px(y(fromM + (at - left) * perPx))}`);
  points.push(`${px(right)} ${px(y(toM))}`);
  const outline = `M${points.join('L')}`;
  let hatching = '';
  let ink = 0;
  for (let at = left + 1; at < right; at += 1) {
    const m = fromM + (at - left) * perPx;
    const slope = sampleAt(course.slopeRatio, m);
    ink = slope < HATCHED_RATIO ? 0.5 : ink + slope * INK;
    if (ink < 1) continue;
    ink -= 1;
    hatching += `M${px(at)} ${px(y(m) + 2)}V${px(bottom)}`;
  }
  return { outline, ground: `${outline}V${px(bottom)}H${px(left)}Z`, hatching, y };
}
