/**
 * Cut paper thrown over whoever has reached the finish: falls once, from above the arch. Where motion is not wanted
 * it hangs in the air. Nothing is created per frame.
 */
import type { Context } from '../paint/pen.ts';
import type { Staging } from './staging.ts';

const BITS = 54;
/** Spread to both sides, height from which it falls, and its pace (px of the props, px, px/s). */
const WIDE_PX = 420;
const HIGH_PX = 240;
const FALL_PX_S = 230;

/** The paper of one ride. */
export class Confetti {
  readonly #tones: readonly string[];
  readonly #still: boolean;
  #sinceS = Number.NaN;

  constructor({ palette: { paper, attention, vergeDark }, look }: Staging) {
    this.#tones = [look.kit.jersey.tone, paper, attention, vergeDark];
    this.#still = look.reducedMotion;
  }

  throw(): void {
    this.#sinceS = 0;
  }

  /** Around (x, y), the rear axle on screen (CSS pixels). */
  draw(context: Context, x: number, y: number, scale: number, elapsedS: number): void {
    if (Number.isNaN(this.#sinceS)) return;
    this.#sinceS += elapsedS;
    const timeS = this.#still ? 0.8 : this.#sinceS;
    for (let i = 0; i < BITS; i += 1) {
      // Fractions of whole numbers times irrational ones lie everywhere and never in rows.
      const side = ((i * 0.618034) % 1) * 2 - 1;
      const late = (i * 0.414214) % 1;
      const above = ((i * 0.732051) % 1) * HIGH_PX;
      const fallen = timeS * (0.7 + late * 0.6) * FALL_PX_S - above;
      const turn = timeS * (3 + late * 5) + i;
      const bitX = x + (60 + side * WIDE_PX + Math.sin(turn) * 9) * scale;
      const bitY = y + (fallen - HIGH_PX) * scale;
      const long = (5 + late * 4) * scale;
      const wide = (3 + late * 2) * scale * Math.abs(Math.cos(turn * 0.8));
      const cos = Math.cos(turn);
      const sin = Math.sin(turn);
      context.fillStyle = this.#tones[i % this.#tones.length] ?? '';
      context.beginPath();
      context.moveTo(bitX + cos * long - sin * wide, bitY + sin * long + cos * wide);
      context.lineTo(bitX + cos * long + sin * wide, bitY + sin * long - cos * wide);
      context.lineTo(bitX - cos * long + sin * wide, bitY - sin * long - cos * wide);
      context.lineTo(bitX - cos * long - sin * wide, bitY - sin * long + cos * wide);
      context.closePath();
      context.fill();
    }
  }
}
