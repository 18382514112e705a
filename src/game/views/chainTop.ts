/**
 * The chain seen from above: rings and sprockets as bars at their true places across the bike, the chain
 * between them. Across is drawn wider than along; the factor is exported so that the page can say so.
 */
import { type Context, line } from '../paint/pen.ts';
import { sampleAt } from '../../core/math/numbers.ts';
import { ringPlaceMm, sprocketPlaceMm } from '../../core/model/gears.ts';
import type { Bike } from '../../core/model/types.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import type { MachineTones } from '../paint/palette.ts';
import { deviceScale, sizeCanvas } from '../paint/sheet.ts';
import { pitchRadiusMm } from './toothing.ts';

/** Places of all rings and sprockets across the bike, from its mid plane outwards (mm). */
interface AcrossMm {
  readonly rings: readonly number[];
  readonly sprockets: readonly number[];
}

/** Smallest ring lies innermost, smallest sprocket outermost. */
export function acrossOf(bike: Bike): AcrossMm {
  return {
    rings: bike.chainringsTeeth.map((_, index) => ringPlaceMm(bike, index)),
    sprockets: bike.sprocketsTeeth.map((_, index) => sprocketPlaceMm(bike, index)),
  };
}

export class ChainTopView {
  readonly #context: Context;
  readonly #canvas: HTMLCanvasElement;
  readonly #deviceScale: number;
  readonly #bike: Bike;
  readonly #tones: MachineTones;
  readonly #across: AcrossMm;
  readonly #width: number;
  readonly #height: number;
  readonly #along: number;
  readonly #middleMm: number;
  /** How much wider than long the picture is drawn, rounded. */
  readonly widening: number;

  /** `width` and `height` in CSS pixels; the front of the bike is to the right. */
  constructor(canvas: HTMLCanvasElement, bike: Bike, tones: MachineTones, width: number, height: number) {
    this.#deviceScale = deviceScale();
    this.#context = sizeCanvas(canvas, width, height);
    this.#canvas = canvas;
    this.#bike = bike;
    this.#tones = tones;
    this.#width = width;
    this.#height = height;
    this.#across = acrossOf(bike);
    const all = [...this.#across.rings, ...this.#across.sprockets];
    const low = Math.min(...all);
    const high = Math.max(...all);
    this.#middleMm = (low + high) / 2;
    const front = this.#ringHalf(bike.chainringsTeeth.length - 1);
    const back = this.#sprocketHalf(bike.sprocketsTeeth.length - 1);
    this.#along = (width - 8) / (bike.chainstayMm + front + back);
    this.widening = Math.max(1, Math.round((height - 16) / Math.max(20, high - low) / this.#along));
  }

  #ringHalf(index: number): number {
    return pitchRadiusMm(this.#bike.chainringsTeeth[index] ?? 30);
  }

  #sprocketHalf(index: number): number {
    return pitchRadiusMm(this.#bike.sprocketsTeeth[index] ?? 15);
  }

  /** Screen line of a place across the bike: outwards is down, as seen by the rider looking at the right side. */
  #line(acrossMm: number): number {
    return this.#height / 2 + (acrossMm - this.#middleMm) * this.#along * this.widening;
  }

  draw(frame: RideFrame): void {
    const context = this.#context;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, this.#canvas.width, this.#canvas.height);
    context.setTransform(this.#deviceScale, 0, 0, this.#deviceScale, 0, 0);
    const ringX = this.#width - 4 - this.#ringHalf(this.#bike.chainringsTeeth.length - 1) * this.#along;
    const rearX = 4 + this.#sprocketHalf(this.#bike.sprocketsTeeth.length - 1) * this.#along;
    context.lineCap = 'round';
    const sprocketNow = Math.round(frame.chainAtSprocket);
    const ringNow = Math.round(frame.chainAtRing);
    for (let i = 0; i < this.#across.sprockets.length; i++) {
      this.#bar(rearX, this.#across.sprockets[i] ?? 0, this.#sprocketHalf(i), i === sprocketNow);
    }
    for (let i = 0; i < this.#across.rings.length; i++) {
      this.#bar(ringX, this.#across.rings[i] ?? 0, this.#ringHalf(i), i === ringNow);
    }
    if (!frame.chainOn) return;
    const fromY = this.#line(sampleAt(this.#across.sprockets, frame.chainAtSprocket));
    const toY = this.#line(sampleAt(this.#across.rings, frame.chainAtRing));
    this.#drawChain(rearX, fromY, ringX, toY, frame.crossed);
  }

  #bar(x: number, acrossMm: number, halfMm: number, lit: boolean): void {
    const context = this.#context;
    const y = this.#line(acrossMm);
    line(
      context,
      lit ? this.#tones.rider : this.#tones.sandDark,
      lit ? 3.4 : 2,
      [x - halfMm * this.#along, y],
      [x + halfMm * this.#along, y],
    );
  }

  /** Straight it is plain ink; crossed it gets an attention edge and rub marks where it scrapes. */
  #drawChain(fromX: number, fromY: number, toX: number, toY: number, crossed: boolean): void {
    const context = this.#context;
    if (crossed) {
      line(context, this.#tones.attention, 8, [fromX, fromY], [toX, toY]);
    }
    line(context, this.#tones.ink, 3, [fromX, fromY], [toX, toY]);
    if (!crossed) return;
    const side = toY > fromY ? -1 : 1;
    context.lineWidth = 1.8;
    context.beginPath();
    for (let i = 0; i < 4; i++) {
      const share = 0.68 + i * 0.07;
      const x = fromX + (toX - fromX) * share;
      const y = fromY + (toY - fromY) * share;
      context.moveTo(x - 3, y + side * 4);
      context.lineTo(x + 3, y + side * 12);
    }
    context.stroke();
  }
}
