/**
 * A piece drawn once in metres and laid into frames afterwards, wherever the context's own transform puts it.
 * For parts of bike, rider and dog that keep their shape.
 */
import { createSheet, finish, type SheetPicture, type PaintSheet } from '../paint/sheet.ts';

/** A painted piece that knows where it belongs. */
export interface Sprite {
  /** Lays the piece; the context is scaled to metres. */
  draw(context: CanvasRenderingContext2D): void;
}

class PaintedSprite implements Sprite {
  readonly #picture: SheetPicture;
  readonly #left: number;
  readonly #top: number;
  readonly #width: number;
  readonly #height: number;

  constructor(picture: SheetPicture, left: number, top: number, width: number, height: number) {
    this.#picture = picture;
    this.#left = left;
    this.#top = top;
    this.#width = width;
    this.#height = height;
  }

  draw(context: CanvasRenderingContext2D): void {
    context.drawImage(this.#picture.image, this.#left, this.#top, this.#width, this.#height);
  }
}

/** Paints the box `left, top, width, height` (m) at `pxPerM` device pixels per metre. */
export function paintSprite(
  left: number,
  top: number,
  width: number,
  height: number,
  pxPerM: number,
  paint: (context: CanvasRenderingContext2D, sheet: PaintSheet) => void,
): Sprite {
  const sheet = createSheet(width, height, pxPerM);
  const { context, canvas } = sheet;
  context.setTransform(canvas.width / width, 0, 0, canvas.height / height, 0, 0);
  context.translate(-left, -top);
  paint(context, sheet);
  return new PaintedSprite(finish(sheet), left, top, width, height);
}

/** Turned pieces are painted a little finer than they are shown, so that turning does not blur them. */
const FINER = 1.25;

/** Paints a piece that lies along the x axis from the origin to `length` (m), with room of `halfWidth` all round. */
export function paintLimb(
  length: number,
  halfWidth: number,
  pxPerM: number,
  paint: (context: CanvasRenderingContext2D, sheet: PaintSheet) => void,
): Sprite {
  return paintSprite(-halfWidth, -halfWidth, length + halfWidth * 2, halfWidth * 2, pxPerM * FINER, paint);
}
