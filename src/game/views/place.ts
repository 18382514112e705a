/**
 * Where bike and rider stand in a frame, and how to lay a painted piece there: one matrix set in one call
 * instead of a chain of moves and turns that must be undone. Lengths are metres of theirs.
 */
import type { Context } from '../paint/pen.ts';

/** A place with a direction and a scale; changed in place, one per picture. */
export class ScenePlace {
  #x = 0;
  #y = 0;
  #cos = 1;
  #sin = 0;
  #turnRad = 0;

  /** Device pixels of the origin, direction of its x axis (rad) and device pixels per metre. */
  set(x: number, y: number, turnRad: number, pxPerM: number): void {
    this.#x = x;
    this.#y = y;
    this.#cos = Math.cos(turnRad) * pxPerM;
    this.#sin = Math.sin(turnRad) * pxPerM;
    this.#turnRad = turnRad;
  }

  /** Device pixels of the origin. */
  get x(): number {
    return this.#x;
  }

  get y(): number {
    return this.#y;
  }

  get turnRad(): number {
    return this.#turnRad;
  }

  /** Draws in metres round the origin from now on. */
  home(context: Context): void {
    context.setTransform(this.#cos, this.#sin, -this.#sin, this.#cos, this.#x, this.#y);
  }

  /** The same on another canvas, with the origin at its device pixel (x, y). */
  homeAt(context: Context, x: number, y: number): void {
    context.setTransform(this.#cos, this.#sin, -this.#sin, this.#cos, x, y);
  }

  /** Draws round (x, y) from now on, with the x axis towards (`alongX`, `alongY`), whose length scales x. */
  aim(context: Context, x: number, y: number, alongX: number, alongY: number, acrossScale: number): void {
    const length = Math.sqrt(alongX * alongX + alongY * alongY) || 1;
    const share = acrossScale / length;
    context.setTransform(
      this.#cos * alongX - this.#sin * alongY,
      this.#sin * alongX + this.#cos * alongY,
      (-this.#cos * alongY - this.#sin * alongX) * share,
      (-this.#sin * alongY + this.#cos * alongX) * share,
      this.#cos * x - this.#sin * y + this.#x,
      this.#sin * x + this.#cos * y + this.#y,
    );
  }

  /** Draws round (x, y) turned by an angle (rad). */
  turn(context: Context, x: number, y: number, turnRad: number): void {
    this.aim(context, x, y, Math.cos(turnRad), Math.sin(turnRad), 1);
  }
}
