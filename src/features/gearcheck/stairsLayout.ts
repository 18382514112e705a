/** Where the paper steps of the staircase lie. Equal steps in proportion are equally high. Numbers only. */
import type { GearStep } from '../../core/model/gearStairs.ts';

/**
 * Widths of a step (a narrower one could not hold its gear; a long staircase scrolls instead), room above, height of the
 * paper below the lowest step, and how high the staircase rises in all (px).
 */
const PAPER = { narrowest: 62, widest: 110, top: 6, floor: 62, rise: 190 };
/** Height of a slip that lies on a step (px). */
export const SLIP_PX = 17;

/** A step as it is drawn; `y` is its tread. */
export interface PaperStep {
  readonly step: GearStep;
  readonly x: number;
  readonly y: number;
}

export interface StairsLayout {
  readonly width: number;
  readonly height: number;
  readonly stepWidth: number;
  readonly floorY: number;
  readonly steps: readonly PaperStep[];
}

/** Lays the staircase out in a room so wide (px); it may come out wider. */
export function stairsLayout(steps: readonly GearStep[], room: number): StairsLayout {
  const stepWidth = Math.min(PAPER.widest, Math.max(PAPER.narrowest, room / Math.max(1, steps.length)));
  const low = steps[0]?.gear.developmentM ?? 1;
  const high = Math.max(low * 1.2, steps.at(-1)?.gear.developmentM ?? 1);
  const drops = steps.map(
    ({ gear }) => PAPER.rise * (1 - Math.log(gear.developmentM / low) / Math.log(high / low)),
  );
  // As much room above as the highest pile of slips needs.
  const topY =
    PAPER.top + Math.max(0, ...steps.map(({ others }, i) => others.length * SLIP_PX - (drops[i] ?? 0)));
  const floorY = topY + PAPER.rise + PAPER.floor;
  return {
    width: stepWidth * steps.length,
    height: floorY + 4,
    stepWidth,
    floorY,
    steps: steps.map((step, i) => ({ step, x: i * stepWidth, y: topY + (drops[i] ?? 0) })),
  };
}
