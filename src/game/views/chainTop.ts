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

/** Places of all rings and sprockets across the bike, from its mid plane outwards (mm): the smallest ring lies innermost, the smallest sprocket outermost. */
export function acrossOf(bike: Bike) {
  return {
    rings: bike.chainringsTeeth.map((_, index) => ringPlaceMm(bike, index)),
    sprockets: bike.sprocketsTeeth.map((_, index) => sprocketPlaceMm(bike, index)),
  };
}

/** The wheels on one axle: where it lies on the screen (CSS px), their places across and their radii (mm). */
interface Axle {
  readonly x: number;
  readonly acrossMm: readonly number[];
  readonly radiiMm: readonly number[];
}

export class ChainTopView {
  readonly #context: Context;
  readonly #deviceScale = deviceScale();
  readonly #tones: MachineTones;
  readonly #height: number;
  readonly #rings: Axle;
  readonly #sprockets: Axle;
  /** CSS pixels for each millimetre along the bike. */
  readonly #along: number;
  readonly #middleMm: number;
  /** How much wider than long the picture is drawn, rounded. */
  readonly widening: number;

  /** `width` and `height` in CSS pixels; the front of the bike is to the right. */
  constructor(canvas: HTMLCanvasElement, bike: Bike, tones: MachineTones, width: number, height: number) {
    this.#context = sizeCanvas(canvas, width, height);
    this.#tones = tones;
    this.#height = height;
    const { rings, sprockets } = acrossOf(bike);
    const low = Math.min(...rings, ...sprockets);
    const high = Math.max(...rings, ...sprockets);
    this.#middleMm = (low + high) / 2;
    const ringsMm = bike.chainringsTeeth.map(pitchRadiusMm);
    const sprocketsMm = bike.sprocketsTeeth.map(pitchRadiusMm);
    const front = ringsMm.at(-1) ?? 0;
    const back = sprocketsMm.at(-1) ?? 0;
    this.#along = (width - 8) / (bike.chainstayMm + front + back);
    this.#rings = { x: width - 4 - front * this.#along, acrossMm: rings, radiiMm: ringsMm };
    this.#sprockets = { x: 4 + back * this.#along, acrossMm: sprockets, radiiMm: sprocketsMm };
    this.widening = Math.max(1, Math.round((height - 16) / Math.max(20, high - low) / this.#along));
  }

  /** Screen line of a place across the bike: outwards is down, as seen by the rider looking at the right side. */
  #line(acrossMm: number): number {
    return this.#height / 2 + (acrossMm - this.#middleMm) * this.#along * this.widening;
  }

  draw(frame: RideFrame): void {
    const context = this.#context;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, context.canvas.width, context.canvas.height);
    context.setTransform(this.#deviceScale, 0, 0, this.#deviceScale, 0, 0);
    context.lineCap = 'round';
    this.#bars(this.#sprockets, frame.chainAtSprocket);
    this.#bars(this.#rings, frame.chainAtRing);
    if (!frame.chainOn) return;
    const fromY = this.#line(sampleAt(this.#sprockets.acrossMm, frame.chainAtSprocket));
    const toY = this.#line(sampleAt(this.#rings.acrossMm, frame.chainAtRing));
    this.#drawChain(this.#sprockets.x, fromY, this.#rings.x, toY, frame.crossed);
  }

  /** All wheels of an axle; the one that carries the chain, at index `chainAt`, stands out. */
  #bars({ x, acrossMm, radiiMm }: Axle, chainAt: number): void {
    const { rider, sandDark } = this.#tones;
    for (let i = 0; i < acrossMm.length; i++) {
      const y = this.#line(acrossMm[i] ?? 0);
      const half = (radiiMm[i] ?? 0) * this.#along;
      const isLit = i === Math.round(chainAt);
      line(this.#context, isLit ? rider : sandDark, isLit ? 3.4 : 2, [x - half, y], [x + half, y]);
    }
  }

  /** Straight it is plain ink; crossed it gets an attention edge and rub marks where it scrapes. */
  #drawChain(fromX: number, fromY: number, toX: number, toY: number, crossed: boolean): void {
    const context = this.#context;
    if (crossed) line(context, this.#tones.attention, 8, [fromX, fromY], [toX, toY]);
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
