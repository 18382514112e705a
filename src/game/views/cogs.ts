/**
 * The parts of the close-up that keep their shape, painted once: chainrings and sprockets with their own teeth,
 * openings and soft edge, crank arm and cage. A frame only turns and lays them. Sizes in millimetres.
 */
import { line } from '../paint/pen.ts';
import type { MachineTones } from '../paint/palette.ts';
import { paintSprite, type Sprite } from './sprite.ts';
import { pitchRadiusMm, toothOutline, traceTeeth } from './toothing.ts';

/**
 * Paints wheels of one hub over each other, big ones at the back, at `pxPerMm` device pixels. `lit` is the
 * index of the one that carries the chain, -1 for none; `ring` says whether they are chainrings.
 */
export function paintCogs(
  teeth: readonly number[],
  pxPerMm: number,
  tones: MachineTones,
  lit: number,
  ring: boolean,
): Sprite {
  const halfMm = pitchRadiusMm(Math.max(...teeth)) + 10;
  return paintSprite(-halfMm, -halfMm, halfMm * 2, halfMm * 2, pxPerMm, (context) => {
    const order = [...teeth.entries()];
    if (!ring) order.reverse();
    for (const [index, count] of order) {
      const isLit = index === lit;
      const radius = pitchRadiusMm(count);
      const shape = new Path2D();
      traceTeeth(shape, toothOutline(count));
      if (ring) cutRing(shape, radius);
      else cutSprocket(shape, radius, count);
      context.shadowColor = 'rgba(20,28,32,0.3)';
      context.shadowBlur = 4 * pxPerMm;
      context.fillStyle = isLit ? tones.rider : tones.sand;
      context.fill(shape, 'evenodd');
      context.shadowColor = 'transparent';
      context.strokeStyle = isLit || ring ? tones.ink : tones.sandDark;
      context.lineWidth = Math.max(0.9 / pxPerMm, 1.5);
      context.stroke(shape);
    }
  });
}

/** How a bar between two pivots looks: rim and body with their widths, pivots with their radii (mm). */
interface BarLook {
  readonly rim: readonly [tone: string, widthMm: number];
  readonly body: readonly [tone: string, widthMm: number];
  readonly pivots: readonly [tone: string, firstMm: number, secondMm: number];
}

/** The crank arm of the drive side, from the axle along x to the pedal. */
export function paintArm(reachMm: number, pxPerMm: number, { paper, ink }: MachineTones): Sprite {
  return paintBar(reachMm, pxPerMm, { rim: [paper, 24], body: [ink, 18], pivots: [paper, 5, 3.4] });
}

/** The cage between both pulleys, from one along x to the other. */
export function paintCage(lengthMm: number, pxPerMm: number, { ink, sandDark }: MachineTones): Sprite {
  return paintBar(lengthMm, pxPerMm, { rim: [ink, 15], body: [sandDark, 9], pivots: [ink, 4, 4] });
}

function paintBar(lengthMm: number, pxPerMm: number, { rim, body, pivots }: BarLook): Sprite {
  const room = rim[1] / 2 + 2;
  return paintSprite(-room, -room, lengthMm + room * 2, room * 2, pxPerMm, (context) => {
    context.lineCap = 'round';
    for (const [tone, width] of [rim, body]) line(context, tone, width, [0, 0], [lengthMm, 0]);
    const [tone, first, second] = pivots;
    context.fillStyle = tone;
    context.beginPath();
    context.arc(0, 0, first, 0, Math.PI * 2);
    context.arc(lengthMm, 0, second, 0, Math.PI * 2);
    context.fill();
  });
}

/** A chainring is a hoop held by four arms. */
function cutRing(shape: Path2D, radius: number): void {
  const hoop = radius - 15;
  const hub = 22;
  for (let window = 0; window < 4; window++) {
    const from = (window / 4) * Math.PI * 2 + 0.2;
    const to = from + Math.PI / 2 - 0.4;
    if (hoop - hub < 6) continue;
    shape.moveTo(Math.cos(from) * hoop, Math.sin(from) * hoop);
    shape.arc(0, 0, hoop, from, to);
    shape.arc(0, 0, hub, to - 0.15, from + 0.15, true);
    shape.closePath();
  }
}

/** A sprocket has round openings if it is big enough, and a hole for the hub. */
function cutSprocket(shape: Path2D, radius: number, teeth: number): void {
  const hole = Math.min(11, radius * 0.42);
  shape.moveTo(hole, 0);
  shape.arc(0, 0, hole, 0, Math.PI * 2);
  if (radius < 40) return;
  const openings = Math.max(5, Math.round(teeth / 4));
  const middle = radius - 16;
  for (let i = 0; i < openings; i++) {
    const turn = (i / openings) * Math.PI * 2;
    const x = Math.cos(turn) * middle;
    const y = Math.sin(turn) * middle;
    shape.moveTo(x + 5, y);
    shape.arc(x, y, 5, 0, Math.PI * 2);
  }
}
