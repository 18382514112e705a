/** Where the marks of the gear chart lie. Equal steps in proportion are equally far apart. Numbers only. */
import type { GearRow } from '../../core/coach/gearCheck.ts';

/** How a gear is drawn: its shape tells it apart, not its colour. */
export type GearShape = 'single' | 'twin' | 'crossed';

export interface GearMark {
  readonly row: GearRow;
  readonly shape: GearShape;
  readonly x: number;
  readonly y: number;
  /** The number stands above or below its mark, so that neighbours do not touch. */
  readonly labelY: number;
}

export interface ChartLayout {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly GearMark[];
  /** Rows of the rings, biggest on top. */
  readonly lanes: readonly { readonly ringTeeth: number; readonly y: number }[];
  /** Developments with a line (m). */
  readonly ticks: readonly { readonly developmentM: number; readonly x: number }[];
  readonly axisY: number;
}

const LABEL_PX = 40;
const EDGE_PX = 16;
const LANE_PX = 58;
const TOP_PX = 20;
/** Numbers nearer than this stand alternately above and below (px). */
const CLOSE_PX = 17;
const TICKS_M = [1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12];

/** The shape of a gear; a crossed one is that before anything else. */
export function shapeOf({ gear, twin }: GearRow): GearShape {
  return gear.crossed ? 'crossed' : twin === null ? 'single' : 'twin';
}

/** Gears that differ: a pair of twins counts once. */
export function differentGears(rows: readonly GearRow[]): number {
  return rows.filter(({ gear, twin }) => twin === null || gear.ringTeeth < twin.ringTeeth).length;
}

/** Lays the chart out for a width (px). */
export function chartLayout(rows: readonly GearRow[], width: number): ChartLayout {
  const low = rows[0]?.gear.developmentM ?? 1;
  const high = Math.max(low * 1.2, rows.at(-1)?.gear.developmentM ?? 1);
  const perUnit = (width - LABEL_PX - EDGE_PX) / Math.log(high / low);
  const x = (developmentM: number): number => LABEL_PX + Math.log(developmentM / low) * perUnit;
  const rings = [...new Set(rows.map(({ gear }) => gear.ringTeeth))].toSorted((a, b) => b - a);
  const lanes = rings.map((ringTeeth, i) => ({ ringTeeth, y: TOP_PX + i * LANE_PX + LANE_PX / 2 }));
  const marks = lanes.flatMap(({ ringTeeth, y }) => {
    const own = rows.filter(({ gear }) => gear.ringTeeth === ringTeeth);
    const places = own.map(({ gear }) => x(gear.developmentM));
    const crowded = places.some((place, i) => i > 0 && place - (places[i - 1] as number) < CLOSE_PX);
    return own.map((row, i) => ({
      row,
      shape: shapeOf(row),
      x: places[i] as number,
      y,
      labelY: crowded && i % 2 === 1 ? y + 22 : y - 12,
    }));
  });
  const axisY = TOP_PX + lanes.length * LANE_PX + 6;
  return {
    width,
    height: axisY + 24,
    marks,
    lanes,
    ticks: TICKS_M.filter((m) => m >= low && m <= high).map((m) => ({ developmentM: m, x: x(m) })),
    axisY,
  };
}
