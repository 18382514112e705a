/**
 * Others who rode this road, as silhouettes of one sheet of paper on its far side: the best ride in pale paper, the
 * rider's own last one in ink with a pennant. They are seen through, and nothing of the road is hidden by them.
 */
import type { RideFrame } from '../../core/ride/types.ts';
import type { Beside } from '../engine/types.ts';
import type { Context } from '../paint/pen.ts';
import { Figure } from './figure.ts';
import type { Staging } from './staging.ts';

const SEEN_THROUGH = 0.52;

/** Everybody who rides beside. */
export class Ghosts {
  readonly #staging: Staging;
  readonly #beside: readonly Beside[];
  #figures: readonly Figure[] = [];

  constructor(staging: Staging, beside: readonly Beside[]) {
    this.#staging = staging;
    this.#beside = beside;
  }

  /** Paints them before the first frame. */
  update(frame: RideFrame): void {
    if (this.#figures.length > 0) return;
    const { palette, look } = this.#staging;
    this.#figures = this.#beside.map(
      ({ who }) => new Figure(this.#staging, look.kit, who === 'best' ? palette.paper : palette.ink, frame),
    );
  }

  draw(context: Context, frame: RideFrame): void {
    const { layout, palette } = this.#staging;
    const device = layout.deviceScale;
    for (let i = 0; i < this.#beside.length; i += 1) {
      const one = this.#beside[i];
      const spot = one?.at(frame.timeS) ?? null;
      if (!one || spot === null) continue;
      context.globalAlpha = SEEN_THROUGH;
      const isSeen = this.#figures[i]?.draw(context, spot.distanceM, spot.crankTurns) === true;
      if (isSeen && one.who === 'last') {
        // Told apart by shape too: it carries a pennant.
        context.fillStyle = palette.ink;
        context.fillRect(-0.4, -1.15, 0.02, 0.75);
        context.beginPath();
        context.moveTo(-0.39, -1.15);
        context.lineTo(-0.64, -1.07);
        context.lineTo(-0.39, -0.99);
        context.fill();
      }
      context.globalAlpha = 1;
      context.setTransform(device, 0, 0, device, 0, 0);
    }
  }
}
