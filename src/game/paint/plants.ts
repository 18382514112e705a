/**
 * Trees, bushes, houses and grass as folded paper: each has a lit and a shaded half along its crease.
 * Drawn only into textures; where they stand is decided by the views.
 */
import { blot, box, type Context, cutter, disc, oval, trace } from './pen.ts';
import { mix } from './sheet.ts';

/** What shaded halves are mixed with. */
export const DARK = '#10222a';

/** A conifer of two or three folded tiers standing on (x, y); sizes in CSS pixels. */
export function drawConifer(context: Context, x: number, y: number, height: number, tone: string): void {
  const dark = mix(tone, DARK, 0.2);
  box(context, dark, x - height * 0.025, y - height * 0.16, height * 0.05, height * 0.18);
  const cut = cutter(context, x, y, height);
  for (let tier = 0; tier < 3; tier++) {
    const base = -0.12 - tier * 0.24;
    const top = base - 0.42 + tier * 0.02;
    const half = 0.24 * (1 - tier * 0.24);
    cut(tone, [-half, base], [0, top], [0, base + 0.025]);
    cut(dark, [half, base], [0, top], [0, base + 0.025]);
  }
}

/** A broad-leaved tree: an egg folded down the middle, with a trunk and two limbs. */
export function drawLeafTree(context: Context, x: number, y: number, height: number, tone: string): void {
  const middle = y - height * 0.6;
  const wide = height * 0.29;
  const tall = height * 0.4;
  oval(context, tone, x, middle, wide, tall, 0, Math.PI / 2, Math.PI * 1.5);
  oval(context, mix(tone, DARK, 0.18), x, middle, wide, tall, 0, -Math.PI / 2, Math.PI / 2);
  const wood = `M0 ${1 / height} L0 -0.72 M0 -0.46 L-0.1218 -0.592 M0 -0.56 L0.116 -0.7`;
  trace(context, mix(tone, DARK, 0.42), Math.max(1, height * 0.032), wood, x, y, height);
}

/** A slim poplar, for rows along lanes. */
export function drawPoplar(context: Context, x: number, y: number, height: number, tone: string): void {
  blot(context, tone, 'M0 -1 Q-0.2 -0.42 0 -0.08 Z', x, y, height);
  blot(context, mix(tone, DARK, 0.18), 'M0 -1 Q0.2 -0.42 0 -0.08 Z', x, y, height);
  const trunk = mix(tone, DARK, 0.42);
  box(context, trunk, x - height * 0.012, y - height * 0.3, height * 0.024, height * 0.31);
}

/** The papers of a house. */
type HouseTones = Readonly<Record<'wall' | 'roof', string>>;

/** A little house with a folded roof. */
export function drawHouse(context: Context, x: number, y: number, size: number, tones: HouseTones): void {
  const { wall, roof } = tones;
  box(context, wall, x, y - size * 0.55, size, size * 0.6);
  box(context, mix(wall, DARK, 0.12), x + size * 0.66, y - size * 0.55, size * 0.34, size * 0.6);
  const cut = cutter(context, x, y, size);
  cut(roof, [-0.1, -0.5], [0.33, -0.98], [0.76, -0.5]);
  cut(mix(roof, DARK, 0.2), [0.33, -0.98], [0.82, -0.98], [1.1, -0.5], [0.76, -0.5]);
  box(context, mix(wall, DARK, 0.5), x + size * 0.26, y - size * 0.36, size * 0.13, size * 0.18);
}

/** A church with a pointed tower; it gives a valley a middle. */
export function drawChurch(context: Context, x: number, y: number, size: number, tones: HouseTones): void {
  const { wall, roof } = tones;
  drawHouse(context, x, y, size, tones);
  box(context, wall, x - size * 0.42, y - size * 1.15, size * 0.36, size * 1.2);
  const cut = cutter(context, x, y, size);
  cut(roof, [-0.47, -1.12], [-0.24, -1.95], [-0.24, -1.12]);
  cut(mix(roof, DARK, 0.22), [-0.01, -1.12], [-0.24, -1.95], [-0.24, -1.12]);
}

/** A round bush of three folded lobes. */
export function drawBush(context: Context, x: number, y: number, size: number, tone: string): void {
  const dark = mix(tone, DARK, 0.16);
  for (let lobe = 0; lobe < 3; lobe++) {
    const cx = x + (lobe - 1) * size * 0.42;
    const radius = size * (lobe === 1 ? 0.5 : 0.36);
    disc(context, tone, cx, y - radius * 0.55, radius, Math.PI * 0.9, Math.PI * 2.1);
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
