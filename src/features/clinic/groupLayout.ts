/** Where the tracks of the group strip lie, and paths through series in which a 0 says that there is nothing. */
import { px } from '../../charts/lines.ts';
import { NARROW_PX, type Track } from '../../charts/stripLayout.ts';

/** Room above the names, for the frame round the worst pitch (px). */
const NAMES_TOP = 9;

/** The paper. */
export interface GroupLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly narrow: boolean;
  /** Size of text (px). */
  readonly font: number;
  /** Top of the first line of names (px). */
  readonly namesTop: number;
  readonly road: Track;
  readonly shifts: Track | null;
  readonly gear: Track | null;
  readonly cadence: Track | null;
  /** Place of a distance on a road of some length (px). */
  readonly x: (distanceM: number, lengthM: number) => number;
}

/** The paper for a width and for what is to be on it. */
export function groupLayout(width: number, tracks: 'road' | 'caught' | 'shifts' | 'all'): GroupLayout {
  const narrow = width < NARROW_PX;
  const font = narrow ? 14 : width > 1000 ? 21 : 17;
  const left = narrow ? 8 : font * 8;
  const right = width - (narrow ? 8 : 14);
  const label = narrow ? 20 : 0;
  let at = NAMES_TOP;
  let first = true;
  const take = (height: number): Track => {
    const top = at + (first ? 0 : label);
    first = false;
    at = top + height + 12;
    return { top, bottom: top + height };
  };
  // Names of the pitches stand above the road, how many were caught in a second line.
  const names = font * (tracks === 'caught' ? 2.6 : 1.4);
  at += names;
  const road = take(tracks === 'road' ? 220 : tracks === 'caught' ? 110 : tracks === 'shifts' ? 140 : 72);
  const shifts = tracks === 'all' || tracks === 'shifts' ? take(tracks === 'shifts' ? 140 : 70) : null;
  const gear = tracks === 'all' ? take(70) : null;
  const cadence = tracks === 'all' ? take(70) : null;
  return {
    width,
    height: at + 20,
    left,
    right,
    narrow,
    font,
    namesTop: NAMES_TOP,
    road,
    shifts,
    gear,
    cadence,
    x: (distanceM, lengthM) => left + (distanceM / lengthM) * (right - left),
  };
}

/** From a value to its place (px). */
export type ValueScale = (value: number) => number;

/** A scale that holds all values but the zeros; on a scale of factors equal steps are equal factors. */
export function scaleOf(series: readonly Uint8Array[], track: Track, factors: boolean): ValueScale {
  const to = factors ? Math.log : (value: number): number => value;
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const values of series)
    for (const value of values) {
      if (value === 0) continue;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  const range = Math.max(1e-6, to(high) - to(low));
  return (value) => track.bottom - ((to(value) - to(low)) / range) * (track.bottom - track.top);
}

/** A line through a series; it breaks where there is nothing. */
export function linePath(values: Uint8Array, x: (index: number) => number, y: ValueScale): string {
  let path = '';
  let pen = 'M';
  for (const [i, value] of values.entries()) {
    if (value === 0) {
      pen = 'M';
      continue;
    }
    path += `${pen}${px(x(i))} ${px(y(value))}`;
    pen = 'L';
  }
  return path;
}

/** The area between two series, in pieces where there is nothing between. */
export function bandPath(
  low: Uint8Array,
  high: Uint8Array,
  x: (index: number) => number,
  y: ValueScale,
): string {
  let path = '';
  let upper: string[] = [];
  let lower: string[] = [];
  const close = (): void => {
    if (upper.length > 1) path += `M${upper.join('L')}L${lower.toReversed().join('L')}Z`;
    upper = [];
    lower = [];
  };
  for (const [i, value] of low.entries()) {
    const above = high[i] ?? 0;
    if (value === 0 || above === 0) {
      close();
      continue;
    }
    upper.push(`${px(x(i))} ${px(y(above))}`);
    lower.push(`${px(x(i))} ${px(y(value))}`);
  }
  close();
  return path;
}
