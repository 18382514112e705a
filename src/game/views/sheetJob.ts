/**
 * One sheet of hills to be painted, and how things are set on it so that the tile repeats without a seam. Shared by
 * everything that paints onto it.
 */
import type { Palette } from '../paint/palette.ts';
import type { Context } from '../paint/pen.ts';
import type { PaintSheet } from '../paint/sheet.ts';
import type { Layout } from './layout.ts';

/** What a painter of a sheet is given. */
export interface SheetJob {
  readonly sheet: PaintSheet;
  readonly context: Context;
  readonly layout: Layout;
  /** Scale of what stands on the sheet, that of the layout's props. */
  readonly size: number;
  readonly palette: Palette;
  readonly random: () => number;
  readonly crestY: (x: number) => number;
  /** 0 the farthest to 3 the nearest. */
  readonly depth: number;
  readonly tone: string;
  /** The sheet's tone with a share of its shadow. */
  readonly shaded: (share: number) => string;
  /** Lamps and windows are lit. */
  readonly lit: boolean;
}

/** Draws something that may hang over an end of the tile at its wrapped places too. */
export function wrapped(
  { sheet: { width }, crestY }: SheetJob,
  x: number,
  reach: number,
  draw: (x: number, crestY: number) => void,
): void {
  for (let turn = -1; turn <= 1; turn += 1) {
    const placed = x + turn * width;
    if (placed > -reach && placed < width + reach) draw(placed, crestY(placed));
  }
}

/** Draws so many things, one in each equal piece of the tile. */
export function scattered(
  job: SheetJob,
  count: number,
  reach: number,
  draw: (x: number, crestY: number, i: number) => void,
): void {
  for (let i = 0; i < count; i += 1) {
    const x = ((i + job.random() * 0.8) / count) * job.sheet.width;
    wrapped(job, x, reach, (placed, crestY) => draw(placed, crestY, i));
  }
}
