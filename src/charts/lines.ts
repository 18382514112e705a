/**
 * Curves of thousands of samples as short path data: the least and the most of every pixel column, so that no
 * peak is lost and no point is drawn twice. Pure; scales are handed in.
 */
import type { TraceSample } from '../core/ride/trace.ts';

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
