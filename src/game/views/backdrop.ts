/**
 * All that lies so far away that it hardly moves: sky, clouds and the far sheets of land, laid together as one opaque
 * picture. That is done anew only some fifteen times a second; between, a frame costs one copy.
 */
import type { Context } from '../paint/pen.ts';
import { createSheet, layBetween, type Picture, type PaintSheet } from '../paint/sheet.ts';
import { type Hills, NEAR_SHEET } from './hills.ts';
import { Sky } from './sky.ts';
import type { Staging } from './staging.ts';

/** So long the picture stands (s); what moves in it fastest moves a pixel or two meanwhile. */
const STANDS_S = 0.06;
/** Unless the ride has jumped so far (CSS px of road). */
const JUMP_PX = 80;

/** The picture behind one ride. */
export class Backdrop {
  readonly #staging: Staging;
  readonly #sky: Sky;
  readonly #hills: Hills;
  readonly #sheet: PaintSheet;
  readonly #picture: Picture;
  #laidAtPx = Number.NaN;
  #stoodS = 0;

  constructor(staging: Staging, hills: Hills) {
    this.#staging = staging;
    this.#sky = new Sky(staging);
    this.#hills = hills;
    const { width, height, deviceScale } = staging.layout;
    this.#sheet = createSheet(width, height, deviceScale, 'opaque');
    this.#picture = { image: this.#sheet.canvas, width, height };
  }

  /**
   * `from` is the farthest sheet of land there is time for, the clouds go with the first; below `groundY` the road hides
   * everything (CSS px).
   */
  draw(context: Context, timeS: number, from: number, groundY: number, elapsedS: number): void {
    const isHere = Math.abs(this.#staging.camera.scrollPx - this.#laidAtPx) < JUMP_PX;
    if (!isHere) this.#lay(timeS, from);
    const { width, height } = this.#sheet;
    const hiddenY = Math.min(groundY, this.#hills.coverY(NEAR_SHEET));
    const seen = Math.max(1, Math.min(height, Math.ceil(hiddenY) + 1));
    layBetween(context, this.#picture, 0, 0, 0, seen, width);
    this.#stoodS += elapsedS;
    // For the frames to come: what has been drawn by then need not be waited for.
    if (this.#stoodS >= STANDS_S) this.#lay(timeS, from);
  }

  #lay(timeS: number, from: number): void {
    const { context, height } = this.#sheet;
    this.#sky.draw(context, timeS, from === 0, this.#hills.coverY(from));
    this.#hills.draw(context, from, NEAR_SHEET, height);
    this.#laidAtPx = this.#staging.camera.scrollPx;
    this.#stoodS = 0;
  }
}
