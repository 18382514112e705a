/**
 * Trees, bushes, houses and grass as folded paper: each has a lit and a shaded half along its crease.
 * Drawn only into textures; where they stand is decided by the views.
 */
import { polygon } from './pen.ts';
import { mix } from './sheet.ts';

type Context = CanvasRenderingContext2D;

/** A conifer of two or three folded tiers standing on (x, y); sizes in CSS pixels. */
export function drawConifer(context: Context, x: number, y: number, height: number, tone: string): void {
  const half = height * 0.24;
  const dark = mix(tone, '#10222a', 0.2);
  context.fillStyle = dark;
  context.fillRect(x - height * 0.025, y - height * 0.16, height * 0.05, height * 0.18);
  for (let tier = 0; tier < 3; tier++) {
    const base = y - height * (0.12 + tier * 0.24);
    const top = base - height * (0.42 - tier * 0.02);
    const wide = half * (1 - tier * 0.24);
    context.fillStyle = tone;
    triangle(context, x - wide, base, x, top, x, base + height * 0.025);
    context.fillStyle = dark;
    triangle(context, x + wide, base, x, top, x, base + height * 0.025);
  }
}

function triangle(
  context: Context,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
): void {
  context.beginPath();
  context.moveTo(ax, ay);
  context.lineTo(bx, by);
  context.lineTo(cx, cy);
  context.closePath();
  context.fill();
}

/** A broad-leaved tree: an egg folded down the middle, with a trunk and two limbs. */
export function drawLeafTree(context: Context, x: number, y: number, height: number, tone: string): void {
  const dark = mix(tone, '#10222a', 0.18);
  const middle = y - height * 0.6;
  const wide = height * 0.29;
  const tall = height * 0.4;
  context.fillStyle = tone;
  context.beginPath();
  context.ellipse(x, middle, wide, tall, 0, Math.PI / 2, Math.PI * 1.5);
  context.fill();
  context.fillStyle = dark;
  context.beginPath();
  context.ellipse(x, middle, wide, tall, 0, -Math.PI / 2, Math.PI / 2);
  context.fill();
  context.strokeStyle = mix(tone, '#10222a', 0.42);
  context.lineWidth = Math.max(1, height * 0.032);
  context.beginPath();
  context.moveTo(x, y + 1);
  context.lineTo(x, middle - tall * 0.3);
  context.moveTo(x, middle + tall * 0.35);
  context.lineTo(x - wide * 0.42, middle + tall * 0.02);
  context.moveTo(x, middle + tall * 0.1);
  context.lineTo(x + wide * 0.4, middle - tall * 0.25);
  context.stroke();
}

/** A slim poplar, for rows along lanes. */
export function drawPoplar(context: Context, x: number, y: number, height: number, tone: string): void {
  const dark = mix(tone, '#10222a', 0.18);
  for (const side of [-1, 1]) {
    context.fillStyle = side < 0 ? tone : dark;
    context.beginPath();
    context.moveTo(x, y - height);
    context.quadraticCurveTo(x + side * height * 0.2, y - height * 0.42, x, y - height * 0.08);
    context.closePath();
    context.fill();
  }
  context.fillStyle = mix(tone, '#10222a', 0.42);
  context.fillRect(x - height * 0.012, y - height * 0.3, height * 0.024, height * 0.31);
}

/** A little house with a folded roof; `wall` is its paper. */
export function drawHouse(
  context: Context,
  x: number,
  y: number,
  size: number,
  wall: string,
  roof: string,
): void {
  context.fillStyle = wall;
  context.fillRect(x, y - size * 0.55, size, size * 0.6);
  context.fillStyle = mix(wall, '#10222a', 0.12);
  context.fillRect(x + size * 0.66, y - size * 0.55, size * 0.34, size * 0.6);
  context.fillStyle = roof;
  triangle(
    context,
    x - size * 0.1,
    y - size * 0.5,
    x + size * 0.33,
    y - size * 0.98,
    x + size * 0.76,
    y - size * 0.5,
  );
  polygon(
    context,
    mix(roof, '#10222a', 0.2),
    [x + size * 0.33, y - size * 0.98],
    [x + size * 0.82, y - size * 0.98],
    [x + size * 1.1, y - size * 0.5],
    [x + size * 0.76, y - size * 0.5],
  );
  context.fillStyle = mix(wall, '#10222a', 0.5);
  context.fillRect(x + size * 0.26, y - size * 0.36, size * 0.13, size * 0.18);
}

/** A church with a pointed tower; it gives a valley a middle. */
export function drawChurch(
  context: Context,
  x: number,
  y: number,
  size: number,
  wall: string,
  roof: string,
): void {
  drawHouse(context, x, y, size, wall, roof);
  context.fillStyle = wall;
  context.fillRect(x - size * 0.42, y - size * 1.15, size * 0.36, size * 1.2);
  context.fillStyle = roof;
  triangle(
    context,
    x - size * 0.47,
    y - size * 1.12,
    x - size * 0.24,
    y - size * 1.95,
    x - size * 0.24,
    y - size * 1.12,
  );
  context.fillStyle = mix(roof, '#10222a', 0.22);
  triangle(
    context,
    x - size * 0.01,
    y - size * 1.12,
    x - size * 0.24,
    y - size * 1.95,
    x - size * 0.24,
    y - size * 1.12,
  );
}

/** A round bush of three folded lobes. */
export function drawBush(context: Context, x: number, y: number, size: number, tone: string): void {
  const dark = mix(tone, '#10222a', 0.16);
  for (let lobe = 0; lobe < 3; lobe++) {
    const cx = x + (lobe - 1) * size * 0.42;
    const radius = size * (lobe === 1 ? 0.5 : 0.36);
    context.fillStyle = tone;
    context.beginPath();
    context.arc(cx, y - radius * 0.55, radius, Math.PI * 0.9, Math.PI * 2.1);
    context.fill();
    context.fillStyle = dark;
    context.beginPath();
    context.moveTo(cx, y - radius * 1.55);
    context.arc(cx, y - radius * 0.55, radius, -Math.PI / 2, Math.PI * 0.1);
    context.lineTo(cx, y - radius * 0.1);
    context.closePath();
    context.fill();
  }
}

/** Blades of grass leaning by `lean` (CSS pixels at their tips), added to the current path as filled slivers. */
export function traceGrass(
  context: Context,
  x: number,
  y: number,
  height: number,
  lean: number,
  spread: number,
): void {
  for (let blade = -1; blade <= 1; blade++) {
    const foot = x + blade * spread * 0.35;
    const tip = foot + blade * spread + lean;
    const top = y - height * (blade === 0 ? 1 : 0.72);
    context.moveTo(foot - 1.1, y + 1);
    context.quadraticCurveTo(foot + (tip - foot) * 0.3 - 0.8, y - height * 0.55, tip, top);
    context.quadraticCurveTo(foot + (tip - foot) * 0.3 + 1.2, y - height * 0.4, foot + 1.3, y + 1);
  }
}
