/**
 * A piece drawn once in metres and laid into frames afterwards, wherever the context's own transform puts it.
 * For parts of bike, rider and dog that keep their shape.
 */
import type { Context } from '../paint/pen.ts';
import { createSheet, finish, type PaintSheet } from '../paint/sheet.ts';
import type { ScenePlace } from './place.ts';

/** A painted piece that knows where it belongs. */
export interface Sprite {
  /** Lays the piece; the context is scaled to metres. */
  draw(context: Context): void;
}

/** Paints the box `left, top, width, height` (m) at `pxPerM` device pixels per metre. */
export function paintSprite(
  left: number,
  top: number,
  width: number,
  height: number,
  pxPerM: number,
  paint: (context: Context, sheet: PaintSheet) => void,
): Sprite {
  const sheet = createSheet(width, height, pxPerM);
  const { context, canvas } = sheet;
  context.setTransform(canvas.width / width, 0, 0, canvas.height / height, 0, 0);
  context.translate(-left, -top);
  paint(context, sheet);
  const { image } = finish(sheet);
  return { draw: (onto) => onto.drawImage(image, left, top, width, height) };
}

/** A painted piece that is big and seldom turns by much. */
export interface HeldSprite {
  /** Lays the piece where `place` is, on whole device pixels. */
  draw(context: Context, place: ScenePlace): void;
}

/** A kept copy is good until its direction is off by so much (rad): a third of a pixel at its far end. */
const TURNED_ANEW_RAD = 0.0025;

/**
 * Like `paintSprite`, for a piece that costs too much to be turned in every frame: a turned copy is kept for as long as
 * the direction stays, and laid without turning.
 */
export function holdSprite(...box: Parameters<typeof paintSprite>): HeldSprite {
  const [left, top, width, height, pxPerM] = box;
  const farX = Math.max(-left, left + width);
  const farY = Math.max(-top, top + height);
  const middle = Math.ceil(Math.sqrt(farX * farX + farY * farY) * pxPerM) + 2;
  const sprite = paintSprite(...box);
  const { canvas, context: kept } = createSheet(middle * 2, middle * 2, 1);
  let turnRad = Number.NaN;
  return {
    draw(context, place) {
      if (!(Math.abs(place.turnRad - turnRad) < TURNED_ANEW_RAD)) {
        turnRad = place.turnRad;
        kept.setTransform(1, 0, 0, 1, 0, 0);
        kept.clearRect(0, 0, middle * 2, middle * 2);
        place.homeAt(kept, middle, middle);
        sprite.draw(kept);
      }
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.drawImage(canvas, Math.round(place.x) - middle, Math.round(place.y) - middle);
    },
  };
}

/** Turned pieces are painted a little finer than they are shown, so that turning does not blur them. */
const FINER = 1.25;

/** Paints a piece that lies along the x axis from the origin to `length` (m), with room of `halfWidth` all round. */
export function paintLimb(
  length: number,
  halfWidth: number,
  pxPerM: number,
  paint: (context: Context, sheet: PaintSheet) => void,
): Sprite {
  return paintSprite(-halfWidth, -halfWidth, length + halfWidth * 2, halfWidth * 2, pxPerM * FINER, paint);
}
