/**
 * What the wind moves: how far stalks bend, pennants on the roadside posts, and a few pale streaks past the rider
 * on a fast descent. Drawn each frame with a handful of curves.
 */
import type { RideFrame } from '../../core/ride/types.ts';
import type { Context } from '../paint/pen.ts';
import { roadHeightM } from './layout.ts';
import { postPlaces } from './posts.ts';
import type { Staging } from './staging.ts';

/**
 * How far a stalk leans over, as a share of its height, positive to the right: steadily away from the wind (a head
 * wind, positive, blows to the left), more and quicker in gusts. `phase` keeps neighbours from nodding together.
 */
export function bendRatio(windMps: number, timeS: number, phase: number): number {
  const strong = Math.min(9, Math.abs(windMps));
  const steady = Math.max(-0.5, Math.min(0.5, windMps * -0.06));
  const quick = 1.5 + strong * 0.3;
  const gust = Math.sin(timeS * quick + phase) * 0.7 + Math.sin(timeS * quick * 2.3 + phase * 1.7) * 0.3;
  return steady + gust * (0.05 + strong * 0.018);
}

/** Speed from which the air is seen (m/s). */
const STREAKS_FROM_MPS = 6.5;

/** Everything that sways. */
export class Wind {
  readonly #staging: Staging;
  readonly #posts: readonly number[];

  constructor(staging: Staging) {
    this.#staging = staging;
    this.#posts = postPlaces(staging.course);
  }

  /** Pennants stream away from the wind: a head wind blows them towards the rider. */
  drawPennants(context: Context, frame: RideFrame): void {
    const { layout, palette, course, camera, look } = this.#staging;
    const strength = Math.min(1, Math.abs(frame.windMps) / 6);
    if (strength < 0.08) return;
    const direction = frame.windMps > 0 ? -1 : 1;
    const { leftM, rightM } = camera;
    const size = layout.propScale;
    context.fillStyle = palette.ink;
    context.strokeStyle = palette.ink;
    context.lineWidth = 1.3 * size;
    for (const m of this.#posts) {
      if (m < leftM || m > rightM) continue;
      const x = camera.screenX(m);
      const y = camera.screenY(roadHeightM(course, m)) - 62 * size;
      context.fillRect(x - size, y - 2 * size, 2 * size, 24 * size);
      const wave = look.reducedMotion ? 0 : Math.sin(frame.timeS * (3 + strength * 7) + m) * 4 * size;
      const length = (12 + 20 * strength) * size;
      const sag = (1 - strength) * 16 * size;
      context.fillStyle = palette.paper;
      context.beginPath();
      context.moveTo(x, y);
      context.quadraticCurveTo(
        x + direction * length * 0.5,
        y + sag * 0.4 + wave,
        x + direction * length,
        y + sag + 6 * size - wave,
      );
      context.quadraticCurveTo(
        x + direction * length * 0.5,
        y + sag * 0.6 + 9 * size + wave,
        x,
        y + 12 * size,
      );
      context.closePath();
      context.fill();
      context.stroke();
      context.fillStyle = palette.ink;
    }
  }

  /** Streaks of air past the rider, more and longer the faster they are; none when motion is reduced. */
  drawStreaks(context: Context, riderX: number, roadY: number, frame: RideFrame): void {
    const strength = Math.min(1, (frame.speedMps - STREAKS_FROM_MPS) / 8);
    const { layout, palette, look } = this.#staging;
    if (look.reducedMotion || strength <= 0) return;
    const scale = layout.riderPxPerM;
    context.lineCap = 'round';
    context.beginPath();
    const count = 6 + Math.round(strength * 8);
    for (let i = 0; i < count; i++) {
      const run = (frame.timeS * (1.3 + (i % 3) * 0.11) + i * 0.618) % 1;
      const x = riderX + (1.1 - run * 2.9) * scale;
      const y = roadY - (0.3 + ((i * 0.414) % 1) * 1.75) * scale;
      context.moveTo(x, y);
      context.lineTo(x - (0.45 + strength * 1.1) * scale * (1 - run * 0.5), y);
    }
    // Pale with a dark rim: seen before a bright sky and before dark woods.
    const wide = Math.max(1.6, 0.022 * scale);
    context.strokeStyle = palette.ink;
    context.lineWidth = wide * 2;
    context.globalAlpha = 0.14 + 0.16 * strength;
    context.stroke();
    context.strokeStyle = palette.paper;
    context.lineWidth = wide;
    context.globalAlpha = 0.55 + 0.35 * strength;
    context.stroke();
    context.globalAlpha = 1;
  }
}
