/**
 * The sheet behind everything: a graded sky with a paper sun in cut rings, and clouds that drift. The sky is
 * painted once per size, the clouds once as a seamless tile.
 */
import { type Context, disc, oval } from '../paint/pen.ts';
import type { Palette } from '../paint/palette.ts';
import { seededStream } from '../paint/seeded.ts';
import { castShadow, layBetween, mix, paintPicture, snap, withAlpha } from '../paint/sheet.ts';
import type { PaintSheet, Picture } from '../paint/sheet.ts';
import type { Layout } from './layout.ts';
import type { Staging } from './staging.ts';
import { TILE_PX, wrapOffset } from './tiles.ts';

/** Draws sky (down to `coverY`) and clouds; clouds move with the road and, unless motion is reduced, with time. */
export class Sky {
  readonly #staging: Staging;
  readonly #sky: Picture;
  readonly #clouds: Picture;

  constructor(staging: Staging) {
    this.#staging = staging;
    const { layout, palette } = staging;
    const { width, height, deviceScale, groundY } = layout;
    const fine = Math.min(deviceScale, 1.5);
    const paint = (sheet: PaintSheet): void => paintSky(sheet, staging);
    this.#sky = paintPicture(width, height, fine, palette.grainAlpha, paint, 'opaque');
    this.#clouds = paintPicture(TILE_PX, Math.round(groundY * 0.72), 1, palette.grainAlpha * 0.8, (sheet) =>
      paintClouds(sheet, staging),
    );
  }

  draw(context: Context, timeS: number, clouds: boolean, coverY: number): void {
    const { layout, look, camera } = this.#staging;
    // Further down the hills hide it.
    const seen = Math.max(1, Math.min(layout.height, Math.ceil(coverY) + 1));
    layBetween(context, this.#sky, 0, 0, 0, seen, layout.width);
    if (!clouds) return;
    const travelled = camera.scrollPx * 0.018 + (look.reducedMotion ? 0 : timeS * 3);
    const { width, height, image } = this.#clouds;
    for (let x = wrapOffset(travelled, width); x < layout.width; x += width) {
      context.drawImage(image, snap(x, layout.deviceScale), 0, width, height);
    }
  }
}

function paintSky(sheet: PaintSheet, { layout, palette, scenery }: Staging): void {
  const { context } = sheet;
  const gradient = context.createLinearGradient(0, 0, 0, layout.groundY);
  gradient.addColorStop(0, palette.skyTop);
  gradient.addColorStop(0.5, palette.skyMiddle);
  gradient.addColorStop(1, palette.skyLow);
  context.fillStyle = gradient;
  context.fillRect(0, 0, layout.width, layout.height);
  const low = scenery.light === 'evening';
  const x = layout.width * (low ? 0.7 : 0.76);
  const y = layout.groundY * (low ? 0.66 : 0.42);
  const size = Math.max(34, Math.min(layout.width, layout.height) * (low ? 0.1 : 0.085));
  if (low && scenery.place === 'town') paintStars(context, layout, palette, scenery.seed);
  const rings = scenery.light === 'mist' ? 1 : 4;
  for (let ring = rings; ring >= 0; ring--) {
    const radius = size * (1 + ring * 0.62);
    castShadow(sheet, palette.shadow, ring === 0 ? 0.2 : 0.07, 12, 1, 3);
    const tone = ring === 0 ? palette.sun : withAlpha(mix(palette.sun, palette.skyLow, 0.25), 0.26);
    oval(context, tone, x, y, radius, radius);
  }
}

/** First stars, pricked through the upper part of the sheet. */
function paintStars(context: Context, layout: Layout, palette: Palette, seed: number): void {
  const random = seededStream(seed + 41);
  const tone = withAlpha(palette.sun, 0.85);
  for (let i = 0; i < 46; i++) {
    const radius = (0.7 + random() * 1.2) * layout.propScale;
    disc(context, tone, random() * layout.width, random() * layout.groundY * 0.46, radius);
  }
}

function paintClouds(sheet: PaintSheet, { layout, palette, scenery }: Staging): void {
  const { height } = sheet;
  const random = seededStream(scenery.seed + 5);
  const count = scenery.light === 'mist' ? 3 : 5;
  for (let i = 0; i < count; i++) {
    const x = ((i + 0.2 + random() * 0.6) / count) * TILE_PX;
    const y = height * (0.24 + random() * 0.56);
    const size = layout.propScale * (26 + random() * 30) * (0.6 + (y / height) * 0.4);
    const lobes = 3 + Math.floor(random() * 3);
    for (const wrap of [-TILE_PX, 0, TILE_PX]) paintCloud(sheet, palette, x + wrap, y, size, lobes);
  }
}

/** A cloud cut from one strip: flat below, lobes above, with a second thinner strip tucked behind. */
function paintCloud(sheet: PaintSheet, palette: Palette, x: number, y: number, size: number, lobes: number) {
  const { context } = sheet;
  for (const front of [false, true]) {
    const shift = front ? 0 : size * 0.7;
    const lift = front ? 0 : -size * 0.16;
    castShadow(sheet, palette.shadow, 0.13, 9, 0, 4);
    context.fillStyle = front ? palette.cloud : mix(palette.cloud, palette.skyMiddle, 0.45);
    context.beginPath();
    const step = size * 0.82;
    const start = x + shift - (lobes * step) / 2;
    context.moveTo(start - size * 0.5, y + lift);
    for (let lobe = 0; lobe < lobes; lobe++) {
      const middle = 1 - Math.abs(lobe - (lobes - 1) / 2) / lobes;
      context.arc(start + (lobe + 0.5) * step, y + lift, size * (0.34 + middle * 0.34), Math.PI, 0);
    }
    context.lineTo(start + lobes * step + size * 0.5, y + lift);
    context.quadraticCurveTo(start + lobes * step * 0.5, y + lift + size * 0.2, start - size * 0.5, y + lift);
    context.fill();
  }
}
