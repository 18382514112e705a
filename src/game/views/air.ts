/**
 * What is in the air: rain, snow, leaves or fluff, over the whole picture. Cut paper of a fixed number; where each bit is
 * follows from time and road, so nothing is kept between frames. Where motion is not wanted it hangs still.
 */
import type { RideFrame } from '../../core/ride/types.ts';
import type { Air } from '../../core/level/schema.ts';
import type { Context } from '../paint/pen.ts';
import { mix } from '../paint/sheet.ts';
import type { Staging } from './staging.ts';
import { remainder } from './tiles.ts';

interface Kind {
  readonly bits: number;
  /** Pace downwards (px/s), and how far a bit swings to and fro (px). */
  readonly fallPxS: number;
  readonly swayPx: number;
  /** How much of the road's own movement is seen in it. */
  readonly slide: number;
  readonly draw: (context: Context, x: number, y: number, size: number, turn: number, slant: number) => void;
  readonly stroked: boolean;
  /** Width of the strokes of each tone (px). */
  readonly thickPx?: readonly [number, number];
}

const rain: Kind = {
  bits: 84,
  fallPxS: 760,
  swayPx: 0,
  slide: 0.9,
  stroked: true,
  draw: (context, x, y, size, _turn, slant) => {
    context.moveTo(x, y);
    context.lineTo(x - slant * 22 * size, y + 22 * size);
  },
};

const snow: Kind = {
  bits: 62,
  fallPxS: 74,
  swayPx: 16,
  slide: 0.8,
  stroked: true,
  thickPx: [4.6, 6.4],
  // A stroke of no length with round ends is a dot, and asks less of a browser than an arc.
  draw: (context, x, y) => {
    context.moveTo(x, y);
    context.lineTo(x + 0.01, y);
  },
};

const leaves: Kind = {
  bits: 26,
  fallPxS: 62,
  swayPx: 34,
  slide: 0.85,
  stroked: false,
  draw: (context, x, y, size, turn) => {
    const cos = Math.cos(turn) * 10 * size;
    const sin = Math.sin(turn) * 10 * size;
    context.moveTo(x + cos, y + sin);
    context.quadraticCurveTo(x - sin * 0.62, y + cos * 0.62, x - cos, y - sin);
    context.quadraticCurveTo(x + sin * 0.62, y - cos * 0.62, x + cos, y + sin);
  },
};

const fluff: Kind = {
  bits: 18,
  fallPxS: -13,
  swayPx: 26,
  slide: 0.7,
  stroked: true,
  draw: (context, x, y, size, turn) => {
    const lean = Math.cos(turn) * 2.4 * size;
    context.moveTo(x, y + 7 * size);
    context.lineTo(x + lean, y);
    context.lineTo(x + lean - 4.4 * size, y - 4 * size);
    context.moveTo(x + lean, y);
    context.lineTo(x + lean, y - 5.6 * size);
    context.moveTo(x + lean, y);
    context.lineTo(x + lean + 4.4 * size, y - 4 * size);
  },
};

const KINDS: Readonly<Record<Exclude<Air, 'clear'>, Kind>> = { rain, snow, leaves, fluff };

/** The air of one ride. */
export class AirView {
  readonly #staging: Staging;
  readonly #kind: Kind | null;
  readonly #tones: readonly [string, string];

  constructor(staging: Staging) {
    this.#staging = staging;
    const { palette, look, scenery } = staging;
    const { air } = scenery;
    this.#kind = air === 'clear' ? null : KINDS[air];
    const pale = look.theme === 'field' ? mix(palette.inkSoft, '#ffffff', 0.45) : '#ffffff';
    this.#tones =
      air === 'leaves'
        ? [mix('#c9722b', palette.skyMiddle, 0.1), mix('#e0a53a', palette.skyMiddle, 0.1)]
        : air === 'rain'
          ? [mix(palette.inkSoft, palette.paper, 0.2), pale]
          : [pale, pale];
  }

  /** `share` of the bits is drawn, 0 to 1. */
  draw(context: Context, frame: RideFrame, share: number): void {
    const kind = this.#kind;
    if (kind === null || share <= 0) return;
    const { layout, camera, look } = this.#staging;
    const { width, height, propScale } = layout;
    const still = look.reducedMotion;
    const timeS = still ? 0 : frame.timeS;
    const gone = still ? 0 : camera.scrollPx * kind.slide;
    const slant = still ? 0.12 : Math.max(-0.9, Math.min(1.2, (frame.speedMps + frame.windMps) * 0.07));
    const bits = Math.round(kind.bits * share);
    context.lineCap = 'round';
    context.globalAlpha = kind === snow || !kind.stroked ? 0.94 : 0.72;
    for (let tone = 0; tone < 2; tone += 1) {
      context.beginPath();
      for (let i = tone; i < bits; i += 2) {
        // Fractions of whole numbers times irrational ones lie everywhere and never in rows.
        const near = 0.62 + ((i * 0.732051) % 1) * 0.6;
        const span = width + 120;
        const drift = Math.sin(timeS * (0.7 + near) + i) * kind.swayPx;
        const x =
          remainder(
            ((i * 0.618034) % 1) * span - gone * near - timeS * slant * kind.fallPxS * 0.3 + drift,
            span,
          ) - 60;
        const y =
          remainder(((i * 0.414214) % 1) * (height + 80) + timeS * kind.fallPxS * near, height + 80) - 40;
        kind.draw(context, x, y, near * propScale, timeS * 2.4 * near + i, slant);
      }
      if (kind.stroked) {
        context.strokeStyle = this.#tones[tone] ?? '';
        context.lineWidth = (kind.thickPx?.[tone] ?? 1.8) * propScale;
        context.stroke();
      } else {
        context.fillStyle = this.#tones[tone] ?? '';
        context.fill();
      }
    }
    context.globalAlpha = 1;
  }
}
