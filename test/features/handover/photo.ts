/**
 * Pictures of codes as a camera in the field would take them: turned, out of focus, lit from one side, noisy.
 * Made here from the squares alone, so that nothing of the reader helps to make them.
 */
import { seededRandom } from '../../../src/core/math/random.ts';
import { type codeOf, QUIET_ZONE } from '../../../src/ui/pictures/code.ts';
import type { CameraPicture } from '../../../src/features/handover/decode.ts';

type Code = ReturnType<typeof codeOf>;

/** How a picture is taken. */
export interface Shot {
  /** Pixels a square. */
  readonly squarePx: number;
  readonly angleDeg?: number;
  /** How far a point is smeared (pixels, standard deviation). */
  readonly blurPx?: number;
  /** Light at the left and right edge, 1 is full. */
  readonly lightFrom?: number;
  readonly lightTo?: number;
  /** Brightness lifted by a reflection in one place, 0 to 1. */
  readonly glare?: number;
  /** Noise in steps of 255. */
  readonly noise?: number;
}

/** Samples along a pixel's side. */
const FINE = 3;

/** The picture. */
export function photo(code: Code, shot: Shot, seed = 1): CameraPicture {
  const { squarePx, angleDeg = 0, blurPx = 0, noise = 0 } = shot;
  const angle = (angleDeg * Math.PI) / 180;
  const sheet = (code.size + 2 * QUIET_ZONE) * squarePx;
  const side = Math.ceil(sheet * (Math.abs(Math.cos(angle)) + Math.abs(Math.sin(angle)))) + 20;
  const light = squares(code, squarePx, angle, side);
  const soft = blurPx > 0 ? blurred(light, side, blurPx) : light;
  const random = seededRandom(seed);
  const data = new Uint8ClampedArray(side * side * 4);
  for (let i = 0; i < soft.length; i += 1) {
    const value = lit(soft[i] ?? 0, (i % side) / side, Math.floor(i / side) / side, shot);
    const shown = value * 255 + (random() + random() - 1) * noise;
    data.set([shown, shown * 0.97, shown * 0.92, 255], 4 * i);
  }
  return { data, width: side, height: side };
}

/** Black ink still reflects a little, and a reflection lies over black and white alike. */
function lit(value: number, x: number, y: number, shot: Shot): number {
  const { lightFrom = 1, lightTo = 1, glare = 0 } = shot;
  const lamp = lightFrom + (lightTo - lightFrom) * (0.8 * x + 0.2 * y);
  const far = Math.hypot(x - 0.6, y - 0.4) / 0.25;
  return (0.06 + 0.9 * value) * lamp + glare * Math.exp(-far * far);
}

function squares(code: Code, squarePx: number, angle: number, side: number): Float32Array {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const out = new Float32Array(side * side);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1) {
      let white = 0;
      for (let k = 0; k < FINE * FINE; k += 1) {
        const dx = x + ((k % FINE) + 0.5) / FINE - side / 2;
        const dy = y + (Math.floor(k / FINE) + 0.5) / FINE - side / 2;
        const u = Math.floor((cos * dx + sin * dy) / squarePx + code.size / 2);
        const v = Math.floor((-sin * dx + cos * dy) / squarePx + code.size / 2);
        if (!code.isBlack(u, v)) white += 1;
      }
      out[y * side + x] = white / (FINE * FINE);
    }
  return out;
}

function blurred(light: Float32Array, side: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const sum = kernel.reduce((a, b) => a + b, 0);
  const pass = (from: Float32Array, step: number): Float32Array =>
    from.map((_, i) => {
      const along = step === 1 ? i % side : Math.floor(i / side);
      return (
        kernel.reduce((total, weight, k) => {
          const place = Math.min(side - 1, Math.max(0, along + k - reach));
          return total + weight * (from[i + (place - along) * step] ?? 0);
        }, 0) / sum
      );
    });
  return pass(pass(light, 1), side);
}
