/**
 * Collects the points a reader finds into columns. Knows which values are usable and counts those that are
 * not; knows nothing of XML. Times become seconds since the first one at once, so that no wall clock is kept.
 */
import { type Damage, emptyColumns, type GpxFile, type GpxTrack, type PointColumns } from './types.ts';
import { readCadenceRpm, readDegrees, readHeightM, readLongitude, readPowerW, readTimeS } from './values.ts';

/** What a reader reports, in the order of the file. Values belong to the point reported last. */
export interface PointSink {
  track(kind: GpxTrack['kind']): void;
  segment(): void;
  waypoint(): void;
  /** Returns how many points there are now. */
  point(lat: string | undefined, lon: string | undefined): number;
  /** `spare` where it stands in extensions: it counts only as long as there is no other. */
  height(text: string, spare: boolean): void;
  time(text: string): void;
  cadence(text: string): void;
  power(text: string): void;
  /** Takes the last point back: the file stopped within it. */
  dropLast(): void;
  file(damage: Damage | null): GpxFile;
}

export function pointSink(): PointSink {
  const tracks: { kind: GpxTrack['kind']; segments: PointColumns[] }[] = [];
  const counts = { waypointCount: 0, pointCount: 0, unreadablePoints: 0, unreadableHeights: 0 };
  let columns = emptyColumns();
  let usable = false;
  let spareHeight = false;
  let firstTimeS = Number.NaN;
  let month: string | null = null;
  /** Sets a value of the last point, unless it has one: the first of two is kept. */
  const put = (column: number[], value: number): void => {
    const last = column.length - 1;
    if (usable && Number.isNaN(column[last])) column[last] = value;
  };
  const segment = (): void => {
    columns = emptyColumns();
    const segments = tracks.at(-1)?.segments;
    if (segments?.at(-1)?.latDeg.length === 0) segments.pop();
    segments?.push(columns);
  };
  return {
    track(kind) {
      tracks.push({ kind, segments: [] });
      segment();
    },
    segment,
    waypoint() {
      counts.waypointCount += 1;
    },
    point(lat, lon) {
      counts.pointCount += 1;
      const latDeg = readDegrees(lat, 90);
      const lonDeg = readLongitude(lon);
      spareHeight = false;
      usable = !Number.isNaN(latDeg + lonDeg);
      if (!usable) {
        counts.unreadablePoints += 1;
        return counts.pointCount;
      }
      columns.latDeg.push(latDeg);
      columns.lonDeg.push(lonDeg);
      for (const column of [columns.heightM, columns.timeS, columns.cadenceRpm, columns.powerW])
        column.push(Number.NaN);
      return counts.pointCount;
    },
    height(text, spare) {
      const value = readHeightM(text);
      if (Number.isNaN(value) && text.trim() !== '' && !spare) counts.unreadableHeights += 1;
      if (Number.isNaN(value)) return;
      const isFirst = Number.isNaN(columns.heightM.at(-1));
      if (spareHeight && !spare) columns.heightM[columns.heightM.length - 1] = value;
      else put(columns.heightM, value);
      spareHeight = spare && (isFirst || spareHeight);
    },
    time(text) {
      const value = readTimeS(text);
      if (Number.isNaN(firstTimeS)) firstTimeS = value;
      if (!Number.isNaN(value)) month = monthOf(text);
      put(columns.timeS, value - firstTimeS);
    },
    cadence(text) {
      put(columns.cadenceRpm, readCadenceRpm(text));
    },
    power(text) {
      put(columns.powerW, readPowerW(text));
    },
    dropLast() {
      if (usable) for (const column of Object.values(columns) as number[][]) column.pop();
      usable = false;
      counts.pointCount -= 1;
    },
    file: (damage) => ({ tracks, ...counts, month, damage }),
  };
}

/** Year and month of a time that could be read, as they are written. */
function monthOf(text: string): string | null {
  return /^\s*(\d{4}-\d\d)-/.exec(text)?.[1] ?? null;
}
