/**
 * Collects the points a reader finds into columns. Knows which values are usable and counts those that are
 * not; knows nothing of XML. Times become seconds since the first one at once, so that no wall clock is kept.
 */
import { type Damage, emptyColumns, type GpxFile, type GpxTrack, type PointColumns } from './types.ts';
import { readCadenceRpm, readDegrees, readHeightM, readLongitude, readPowerW, readTimeS } from './values.ts';

/** An empty collection of what a reader reports, in the order of the file. Values belong to the point reported last. */
export function pointSink() {
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
    track(kind: GpxTrack['kind']): void {
      tracks.push({ kind, segments: [] });
      segment();
    },
    segment,
    waypoint(): void {
      counts.waypointCount += 1;
    },
    /** Returns how many points there are now. */
    point(lat: string | undefined, lon: string | undefined): number {
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
    /** `spare` where it stands in extensions: it counts only as long as there is no other. */
    height(text: string, spare: boolean): void {
      const value = readHeightM(text);
      if (Number.isNaN(value) && text.trim() !== '' && !spare) counts.unreadableHeights += 1;
      if (Number.isNaN(value)) return;
      const isFirst = Number.isNaN(columns.heightM.at(-1));
      if (spareHeight && !spare) columns.heightM[columns.heightM.length - 1] = value;
      else put(columns.heightM, value);
      spareHeight = spare && (isFirst || spareHeight);
    },
    time(text: string): void {
      const value = readTimeS(text);
      if (Number.isNaN(firstTimeS)) firstTimeS = value;
      if (!Number.isNaN(value)) month = monthOf(text);
      put(columns.timeS, value - firstTimeS);
    },
    cadence(text: string): void {
      put(columns.cadenceRpm, readCadenceRpm(text));
    },
    power(text: string): void {
      put(columns.powerW, readPowerW(text));
    },
    /** Takes the last point back: the file stopped within it. */
    dropLast(): void {
      if (usable) for (const column of Object.values(columns) as number[][]) column.pop();
      usable = false;
      counts.pointCount -= 1;
    },
    file: (damage: Damage | null): GpxFile => ({ tracks, ...counts, month, damage }),
  };
}
export type PointSink = ReturnType<typeof pointSink>;

/** Year and month of a time that could be read, as they are written. */
function monthOf(text: string): string | null {
  return /^\s*(\d{4}-\d\d)-/.exec(text)?.[1] ?? null;
}
