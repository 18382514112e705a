/**
 * Path data. Curves of thousands of samples: the least and the most of every pixel column, so that no peak is lost and no
 * point is drawn twice. A road from the side: outline, paper below it, and ink hatching that gets denser with the
 * gradient. Pure; scales are handed in.
 */
import type { TraceSample } from '../core/ride/trace.ts';
import type { Course } from '../core/course/types.ts';
import { sampleAt } from '../core/math/numbers.ts';
import { HATCHED_RATIO } from '../ui/pictures/profile.tsx';

/** From a sample to a height on the paper (px), or null where the curve has a gap. */
type HeightOf = (sample: TraceSample) => number | null;

/** One decimal is finer than any screen. */
export function px(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** Up to so many samples of one pixel column are drawn as they are. */
const FEW = 3;

/** What fell into one pixel column. */
interface Column {
  readonly index: number;
  readonly points: [x: number, y: number][];
  low: number;
  high: number;
}

/** A flowing curve, at most four points for each pixel column. */
export function columnLine(
  samples: readonly TraceSample[],
  x: (distanceM: number) => number,
  heightOf: HeightOf,
): string {
  let path = '';
  let column: Column | null = null;
  let penDown = false;
  const flush = (): void => {
    for (const [atX, y] of column === null ? [] : pointsOf(column)) {
      path += `${penDown ? 'L' : 'M'}${px(atX)} ${px(y)}`;
      penDown = true;
    }
    column = null;
  };
  for (const sample of samples) {
    const y = heightOf(sample);
    if (y === null) {
      flush();
      penDown = false;
      continue;
    }
    const atX = x(sample.distanceM);
    const index = Math.floor(atX);
    if (column === null || column.index !== index) {
      flush();
      column = { index, points: [], low: y, high: y };
    }
    if (column.points.length > FEW) column.points.pop();
    column.points.push([atX, y]);
    column.low = Math.min(column.low, y);
    column.high = Math.max(column.high, y);
  }
  flush();
  return path;
}

/** Few points as they are; of many the first, the least, the most and the last. */
function pointsOf({ points, low, high }: Column): readonly (readonly [number, number])[] {
  const first = points[0];
  const last = points.at(-1);
  if (points.length <= FEW || first === undefined || last === undefined) return points;
  return [first, [first[0], low], [first[0], high], last];
}

/** A curve of steps: level until it changes, then straight up or down. */
export function stepLine(
  samples: readonly TraceSample[],
  x: (distanceM: number) => number,
  heightOf: (sample: TraceSample) => number,
): string {
  const start = samples[0];
  const end = samples.at(-1);
  if (start === undefined || end === undefined) return '';
  let at = heightOf(start);
  let path = `M${px(x(start.distanceM))} ${px(at)}`;
  for (const sample of samples) {
    const y = heightOf(sample);
    if (y === at) continue;
    path += `H${px(x(sample.distanceM))}V${px(y)}`;
    at = y;
  }
  return `${path}H${px(x(end.distanceM))}`;
}

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
