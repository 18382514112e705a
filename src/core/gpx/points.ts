/**
 * Collects the points a reader finds into columns. Knows which values are usable and counts those that are
 * not; knows nothing of XML. Times become seconds since the first one at once, so that no wall clock is kept.
 */
import { emptyColumns, type GpxFile, type GpxTrack, type PointColumns } from './types.ts';
import { readCadenceRpm, readDegrees, readHeightM, readTimeS } from './values.ts';

/** What a reader reports, in the order of the file. Values belong to the point reported last. */
export interface PointSink {
  track(kind: GpxTrack['kind']): void;
  segment(): void;
  waypoint(): void;
  /** Returns how many points there are now. */
  point(lat: string | undefined, lon: string | undefined): number;
  height(text: string): void;
  time(text: string): void;
  cadence(text: string): void;
  file(): GpxFile;
}

/** An empty collection. */
export function pointSink(): PointSink {
  const tracks: { kind: GpxTrack['kind']; segments: PointColumns[] }[] = [];
  const counts = { waypointCount: 0, pointCount: 0, unreadablePoints: 0, unreadableHeights: 0 };
  let columns = emptyColumns();
  let usable = false;
  let firstTimeS = Number.NaN;
  let month: string | null = null;
  /** Sets a value of the last point, unless it has one: the first of two is kept. */
  const put = (column: number[], value: number): void => {
    const last = column.length - 1;
    if (usable && Number.isNaN(column[last])) column[last] = value;
  };
  const segment = (): void => {
    columns = emptyColumns();
    tracks.at(-1)?.segments.push(columns);
  };
  return {
    track(kind) {
      tracks.push({ kind, segments: [] });
      if (kind === 'route') segment();
    },
    segment,
    waypoint() {
      counts.waypointCount += 1;
    },
    point(lat, lon) {
      counts.pointCount += 1;
      const latDeg = readDegrees(lat, 90);
      const lonDeg = readDegrees(lon, 180);
      usable = !Number.isNaN(latDeg + lonDeg);
      if (!usable) {
        counts.unreadablePoints += 1;
        return counts.pointCount;
      }
      columns.latDeg.push(latDeg);
      columns.lonDeg.push(lonDeg);
      for (const column of [columns.heightM, columns.timeS, columns.cadenceRpm]) column.push(Number.NaN);
      return counts.pointCount;
    },
    height(text) {
      const value = readHeightM(text);
      if (Number.isNaN(value) && text.trim() !== '') counts.unreadableHeights += 1;
      put(columns.heightM, value);
    },
    time(text) {
      const value = readTimeS(text);
      if (Number.isNaN(firstTimeS)) {
        firstTimeS = value;
        month = Number.isNaN(value) ? null : monthOf(text);
      }
      put(columns.timeS, value - firstTimeS);
    },
    cadence(text) {
      put(columns.cadenceRpm, readCadenceRpm(text));
    },
    file: () => ({ tracks, ...counts, month }),
  };
}

/** Year and month of a time that could be read, as they are written. */
function monthOf(text: string): string | null {
  return /^\s*(\d{4}-\d\d)-/.exec(text)?.[1] ?? null;
}
