/**
 * All that lies so far away that it hardly moves: sky, clouds and the far sheets of land, laid together as one opaque
 * picture. That is done anew only some fifteen times a second; between, a frame costs one copy.
 */
import type { Context } from '../paint/pen.ts';
import { createSheet, layBetween, type Picture, type PaintSheet } from '../paint/sheet.ts';
import { type Hills, NEAR_SHEET } from './hills.ts';
import type { Layout } from './layout.ts';
import type { Sky } from './sky.ts';

/** So long the picture stands (s); what moves in it fastest moves a pixel or two meanwhile. */
const STANDS_S = 0.06;
/** Unless the ride has jumped so far (CSS px of road). */
const JUMP_PX = 80;

/** What a frame shows. */
interface BackdropView {
  readonly scrollPx: number;
  /** How far the camera stands above the start of the road (m). */
  readonly riseM: number;
  readonly timeS: number;
  /** The farthest sheet of land there is time for; the clouds go with the first. */
  readonly from: number;
  /** Below this line the road hides everything (CSS px). */
  readonly groundY: number;
  readonly elapsedS: number;
}

/** The picture behind one ride. */
export class Backdrop {
  readonly #layout: Layout;
  readonly #sky: Sky;
  readonly #hills: Hills;
  readonly #sheet: PaintSheet;
  readonly #picture: Picture;
  #laidAtPx = Number.NaN;
  #stoodS = 0;

  constructor(layout: Layout, sky: Sky, hills: Hills) {
    this.#layout = layout;
    this.#sky = sky;
    this.#hills = hills;
    this.#sheet = createSheet(layout.width, layout.height, layout.deviceScale, 'opaque');
    this.#picture = { image: this.#sheet.canvas, width: layout.width, height: layout.height };
  }

  draw(context: Context, view: BackdropView): void {
    const isHere = Math.abs(view.scrollPx - this.#laidAtPx) < JUMP_PX;
    if (!isHere) this.#lay(view);
    const { width, height } = this.#sheet;
    const hiddenY = Math.min(view.groundY, this.#hills.coverY(this.#layout, view.riseM, NEAR_SHEET));
    const seen = Math.max(1, Math.min(height, Math.ceil(hiddenY) + 1));
    layBetween(context, this.#picture, 0, 0, 0, seen, width);
    this.#stoodS += view.elapsedS;
    // For the frames to come: what has been drawn by then need not be waited for.
    if (this.#stoodS >= STANDS_S) this.#lay(view);
  }

  #lay({ scrollPx, riseM, timeS, from }: BackdropView): void {
    const layout = this.#layout;
    const { context } = this.#sheet;
    const coverY = this.#hills.coverY(layout, riseM, from);
    this.#sky.draw(context, layout, scrollPx, timeS, from === 0, coverY);
    this.#hills.draw(context, layout, scrollPx, riseM, from, NEAR_SHEET, layout.height);
    this.#laidAtPx = scrollPx;
    this.#stoodS = 0;
  }
}
