/** Where the tracks of a group's road lie, and paths through series in which a 0 says that there is nothing. */
import { px } from '../../charts/paths.ts';
import type { Track } from '../../charts/stripLayout.ts';

/** How much is drawn: the bare road, how the group took its pitches, and for paper gear and cadence as well. */
export type ShownTracks = 'road' | 'taken' | 'all';

export interface GroupLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** Size of text (px). */
  readonly font: number;
  readonly road: Track;
  /** Bars stand on its bottom. */
  readonly bars: Track | null;
  readonly gear: Track | null;
  readonly cadence: Track | null;
  /** Place of a distance on a road of some length (px). */
  readonly x: (distanceM: number, lengthM: number) => number;
}

/** Room above the names, for the frame round the pitch that is named (px). */
const NAMES_TOP = 8;

/** The paper for a size and for what is to be on it (px). Tracks for paper have their names beside them. */
export function groupLayout(width: number, height: number, font: number, tracks: ShownTracks): GroupLayout {
  const left = tracks === 'all' ? font * 8 : 10;
  const right = width - 12;
  const gap = font * 0.6;
  const top = NAMES_TOP + font * 1.5;
  // Below the tracks stands one line of distances.
  const room = height - top - font * 1.5;
  const shares = tracks === 'road' ? [1] : tracks === 'taken' ? [0.58, 0.42] : [0.3, 0.22, 0.24, 0.24];
  let at = top;
  const [road = { top, bottom: top + room }, bars = null, gear = null, cadence = null] = shares.map(
    (share): Track => {
      const track = { top: at, bottom: at + share * room - gap };
      at += share * room;
      return track;
    },
  );
  return {
    width,
    height,
    left,
    right,
    font,
    road,
    bars,
    gear,
    cadence,
    x: (distanceM, lengthM) => left + (distanceM / lengthM) * (right - left),
  };
}

/** Size of text that the last row of a room can read: a 34th of the height of the window, less on a phone (px). */
export function boardFont(width: number): number {
  return Math.max(14, Math.min(window.innerHeight / 34, width / 22));
}

/** From a value to its place (px). */
type ValueScale = (value: number) => number;

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
