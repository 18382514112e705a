/**
 * What tells one land from another, as folded paper: trunks, standing stones, a lighthouse, sails, town houses, street
 * lamps, snow poles. Drawn only into textures; where they stand is decided by the views.
 */
import { blot, box, type Context, cutter, oval, trace } from './pen.ts';
import { DARK } from './plants.ts';
import { mix } from './sheet.ts';

const LIT = '#ffd98a';

/** A tall trunk with a crown that begins high up; (x, y) is its foot. */
export function drawTallTree(context: Context, x: number, y: number, height: number, tone: string): void {
  const dark = mix(tone, DARK, 0.22);
  const cut = cutter(context, x, y, height);
  const foot = 6 / height;
  cut(tone, [-0.026, foot], [-0.0182, -0.62], [0, -0.62], [0, foot]);
  cut(dark, [0, foot], [0, -0.62], [0.0182, -0.62], [0.026, foot]);
  cut(dark, [0, -0.36], [-0.075, -0.41], [0, -0.38]);
  cut(dark, [0, -0.47], [0.055, -0.52], [0, -0.49]);
  for (let tier = 0; tier < 3; tier += 1) {
    const base = -0.52 - tier * 0.13;
    const half = 0.13 - tier * 0.03;
    cut(tone, [-half, base], [0, base - 0.24], [0, base + 0.02]);
    cut(dark, [half, base], [0, base - 0.24], [0, base + 0.02]);
  }
}

/** A stone set on end, folded along its edge. */
export function drawStandingStone(
  context: Context,
  x: number,
  y: number,
  height: number,
  tone: string,
): void {
  const cut = cutter(context, x, y, height);
  const foot = 3 / height;
  cut(tone, [-0.24, foot], [-0.132, -0.86], [0.06, -1], [0, foot]);
  cut(mix(tone, DARK, 0.24), [0, foot], [0.06, -1], [0.228, -0.8], [0.24, foot]);
}

/** A rock that lies. */
export function drawRock(context: Context, x: number, y: number, size: number, tone: string): void {
  const cut = cutter(context, x, y, size);
  const foot = 2 / size;
  cut(tone, [-1, foot], [-0.62, -0.62], [0.1, -0.8], [0.05, foot]);
  cut(mix(tone, DARK, 0.22), [0.05, foot], [0.1, -0.8], [0.75, -0.42], [1, foot]);
}

/** Snow lying on something: a soft cap. */
export function drawSnowCap(context: Context, x: number, y: number, half: number): void {
  blot(context, '#ffffff', 'M-1 0 A1 0.34 0 0 1 1 0 Q0.5 0.24 0 0.1 Q-0.5 0.3 -1 0', x, y, half);
}

/** A tree the wind has combed to one side. */
export function drawWindTree(context: Context, x: number, y: number, height: number, tone: string): void {
  const limbs = `M0 ${2 / height} Q0.02 -0.4 -0.22 -0.66 M0.01 -0.34 Q-0.04 -0.5 -0.36 -0.5`;
  context.lineCap = 'round';
  trace(context, mix(tone, DARK, 0.4), Math.max(1.4, height * 0.05), limbs, x, y, height);
  for (const [dx, dy, wide] of [
    [-0.3, 0.74, 0.34],
    [-0.42, 0.55, 0.26],
  ] as const) {
    const crownX = x + height * dx;
    const crownY = y - height * dy;
    oval(context, tone, crownX, crownY, height * wide, height * 0.12, 0.16, Math.PI, 0);
    oval(context, mix(tone, DARK, 0.18), crownX, crownY, height * wide, height * 0.06, 0.16, 0, Math.PI);
  }
}

/** A banded lighthouse. */
export function drawLighthouse(
  context: Context,
  x: number,
  y: number,
  height: number,
  wall: string,
  band: string,
): void {
  const cut = cutter(context, x, y, height);
  const halfAt = (share: number): number => 0.13 - 0.045 * share;
  for (let ring = 0; ring < 5; ring += 1) {
    const wide = halfAt(ring / 5);
    const narrow = halfAt((ring + 1) / 5);
    const tone = ring % 2 === 0 ? wall : band;
    const bottom = 3 / height - (0.78 * ring) / 5;
    const top = bottom - 0.78 / 5;
    cut(tone, [-wide, bottom], [-narrow, top], [narrow, top], [wide, bottom]);
    cut(mix(tone, DARK, 0.16), [wide / 4, bottom], [narrow / 4, top], [narrow, top], [wide, bottom]);
  }
  cut(LIT, [-0.0595, -0.89], [0.0595, -0.89], [0.0595, -0.76], [-0.0595, -0.76]);
  cut(band, [-0.0935, -0.88], [0, -1], [0.0935, -0.88]);
}

/** A boat under sail. */
export function drawSail(
  context: Context,
  x: number,
  y: number,
  height: number,
  sail: string,
  hull: string,
): void {
  const cut = cutter(context, x, y, height);
  cut(sail, [-0.04, -0.14], [-0.04, -1], [-0.42, -0.14]);
  cut(mix(sail, DARK, 0.12), [0.02, -0.14], [0.02, -0.9], [0.34, -0.14]);
  cut(hull, [-0.42, -0.1], [0.42, -0.1], [0.28, 0.04], [-0.3, 0.04]);
}

/** A narrow house with its gable to the street; `lit` windows glow, others are dark. Its left foot is at (x, y). */
export function drawTownHouse(
  context: Context,
  x: number,
  y: number,
  wide: number,
  tall: number,
  wall: string,
  roof: string,
  windows: readonly boolean[],
): void {
  box(context, wall, x, y - tall, wide, tall + 8);
  box(context, mix(wall, DARK, 0.1), x + wide * 0.72, y - tall, wide * 0.28, tall + 8);
  const cut = cutter(context, x, y - tall, wide);
  const eaves = 1 / wide;
  cut(roof, [-0.06, eaves], [0.5, -0.52], [0.5, eaves]);
  cut(mix(roof, DARK, 0.2), [1.06, eaves], [0.5, -0.52], [0.5, eaves]);
  const chimneyY = y - tall - wide * 0.46;
  box(context, mix(roof, DARK, 0.3), x + wide * 0.7, chimneyY, wide * 0.1, wide * 0.28);
  const rows = Math.max(1, Math.floor(tall / (wide * 0.46)));
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < 2; column += 1) {
      const lit = windows[(row * 2 + column) % Math.max(1, windows.length)] === true;
      const left = x + wide * (0.2 + column * 0.36);
      const top = y - tall + wide * (0.14 + row * 0.46);
      box(context, lit ? LIT : mix(wall, DARK, 0.42), left, top, wide * 0.2, wide * 0.26);
    }
}

/** A street lamp; in the evening with its light around it. */
export function drawLamp(
  context: Context,
  x: number,
  y: number,
  height: number,
  tone: string,
  lit: boolean,
): void {
  const headX = x + height * 0.13;
  const headY = y - height * 0.94;
  if (lit) {
    const glow = context.createRadialGradient(headX, headY, 2, headX, headY, height * 0.4);
    glow.addColorStop(0, 'rgba(255,217,138,0.75)');
    glow.addColorStop(1, 'rgba(255,217,138,0)');
    oval(context, glow, headX, headY, height * 0.4, height * 0.4);
  }
  context.lineCap = 'round';
  const pole = `M0 ${4 / height} L0 -0.86 Q0 -1 0.13 -1`;
  trace(context, tone, Math.max(2, height * 0.035), pole, x, y, height);
  const cut = cutter(context, headX, headY, height);
  const lamp = lit ? LIT : mix(tone, '#ffffff', 0.5);
  cut(lamp, [-0.045, 0], [0.045, 0], [0.03, -0.06], [-0.03, -0.06]);
}

/** A tall banded pole that shows the road when snow lies. */
export function drawSnowPole(
  context: Context,
  x: number,
  y: number,
  height: number,
  ink: string,
  band: string,
): void {
  const wide = Math.max(3, height * 0.035);
  for (let part = 0; part < 5; part += 1) {
    const top = y + 4 - (height * (part + 1)) / 5;
    box(context, part % 2 === 0 ? ink : band, x - wide / 2, top, wide, height / 5 + 0.5);
  }
}

/** A few sprigs of heather, added in two tones. */
export function drawHeather(context: Context, x: number, y: number, size: number, tone: string): void {
  context.strokeStyle = mix(tone, DARK, 0.35);
  context.lineWidth = Math.max(1, size * 0.07);
  context.beginPath();
  for (let sprig = -2; sprig <= 2; sprig += 1) {
    context.moveTo(x + sprig * size * 0.1, y + 2);
    context.lineTo(x + sprig * size * 0.26, y - size * (0.9 - Math.abs(sprig) * 0.16));
  }
  context.stroke();
  context.fillStyle = tone;
  context.beginPath();
  for (let sprig = -2; sprig <= 2; sprig += 1)
    for (let bell = 0; bell < 4; bell += 1) {
      const share = 0.5 + bell * 0.15;
      const bellX = x + sprig * size * (0.1 + 0.16 * share) + (bell % 2 === 0 ? 1 : -1) * size * 0.05;
      const bellY = y - size * (0.9 - Math.abs(sprig) * 0.16) * share;
      context.moveTo(bellX + size * 0.08, bellY);
      context.arc(bellX, bellY, size * 0.08, 0, Math.PI * 2);
    }
  context.fill();
}
