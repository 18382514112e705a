/**
 * What grows along the lower rim of the picture, nearer than the road and sliding faster: depth in front of the rider;
 * and, the faster they are, smeared shapes that whip past nearer still. Seamless tiles, painted once; low enough never to
 * cover the road.
 */
import { drawHeather, drawRock, drawSnowCap } from '../paint/landmarks.ts';
import { type Context, disc, oval } from '../paint/pen.ts';
import { traceGrass } from '../paint/plants.ts';
import { seededStream } from '../paint/seeded.ts';
import { castShadow, mix, paintPicture, snap, withAlpha } from '../paint/sheet.ts';
import type { PaintSheet, Picture } from '../paint/sheet.ts';
import type { Staging } from './staging.ts';
import { TILE_PX, wrapOffset } from './tiles.ts';

/** Slide this much faster than the road: what grows there, and what whips past. */
const SLIDE = 1.45;
const WHIP_SLIDE = 2.9;
/** Speed from which things whip past, and at which all of it is seen (m/s). */
const WHIP_FROM_MPS = 5;
const WHIP_FULL_MPS = 9;
/** Leaves that lean are drawn in strips, each moved so much further than the one below; and in at most so many. */
const STRIP_STEP_PX = 2;
const MOST_STRIPS = 24;
const TUFTS = 6;
const STROKES = 24;

export class Foreground {
  readonly #staging: Staging;
  readonly #leaves: Picture;
  readonly #whip: Picture;

  constructor(staging: Staging) {
    this.#staging = staging;
    const { layout, palette } = staging;
    const size = layout.propScale;
    this.#leaves = paintPicture(TILE_PX, Math.round(112 * size), 1, palette.grainAlpha, (sheet) =>
      paintLeaves(sheet, staging),
    );
    this.#whip = paintPicture(TILE_PX, Math.round(132 * size), 1, 0, (sheet) => paintWhip(sheet, staging));
  }

  /** Shapes too near to be seen sharply, from a certain speed on. */
  drawWhip(context: Context, speedMps: number): void {
    const share = (speedMps - WHIP_FROM_MPS) / (WHIP_FULL_MPS - WHIP_FROM_MPS);
    if (share <= 0) return;
    const { layout, camera } = this.#staging;
    const { width, height, image } = this.#whip;
    context.globalAlpha = Math.min(1, share);
    for (let x = wrapOffset(camera.scrollPx * WHIP_SLIDE, width); x < layout.width; x += width)
      context.drawImage(image, snap(x, layout.deviceScale), layout.height - height, width, height);
    context.globalAlpha = 1;
  }

  /**
   * `bend` leans all leaves over their feet, as a share of their height: strip by strip, each moved by whole pixels, which
   * costs a browser far less than slanting the picture.
   */
  draw(context: Context, bend: number): void {
    const { layout, camera } = this.#staging;
    const { width, height, image } = this.#leaves;
    const device = layout.deviceScale;
    const rows = Math.ceil(height);
    const strips = Math.max(1, Math.min(MOST_STRIPS, Math.round((Math.abs(bend) * rows) / STRIP_STEP_PX)));
    const feet = snap(wrapOffset(camera.scrollPx * SLIDE, width), device);
    for (let strip = 0; strip < strips; strip += 1) {
      const top = Math.round((strip * rows) / strips);
      const tall = Math.round(((strip + 1) * rows) / strips) - top;
      const y = layout.height - rows + top;
      const left = feet + snap(bend * (rows - top - tall / 2), device);
      for (let x = left > 0 ? left - width : left; x < layout.width; x += width)
        if (x + width > 0) context.drawImage(image, 0, top, width, tall, x, y, width, tall);
    }
  }
}

/** Tufts too near to be seen sharply, and pale strokes between them: gone before one knows which. */
function paintWhip({ context, height }: PaintSheet, { layout, palette, scenery }: Staging): void {
  const size = layout.propScale;
  const random = seededStream(scenery.seed + 97);
  const pale = mix(palette.verge, palette.paper, 0.62);
  const dark = mix(palette.earthDeep, '#05090a', 0.6);
  for (let i = 0; i < TUFTS + STROKES; i++) {
    const isTuft = i < TUFTS;
    const x = ((i * 0.618034) % 1) * TILE_PX;
    const wide = (isTuft ? 130 + random() * 90 : 170 + random() * 240) * size;
    const tall = (isTuft ? 46 + random() * 60 : 2.5 + random() * 5) * size;
    const y = isTuft ? height + 6 : (18 + random() * 96) * size;
    for (const wrap of [-TILE_PX, 0, TILE_PX]) {
      const middle = x + wrap;
      const faded = context.createLinearGradient(middle - wide, 0, middle + wide, 0);
      const tone = isTuft ? dark : pale;
      faded.addColorStop(0, withAlpha(tone, 0));
      faded.addColorStop(0.5, withAlpha(tone, isTuft ? 0.8 : 0.85));
      faded.addColorStop(1, withAlpha(tone, 0));
      oval(context, faded, middle, y, wide, tall);
    }
  }
}

function paintLeaves(sheet: PaintSheet, { layout, palette, scenery }: Staging): void {
  const { context, height } = sheet;
  const { place } = scenery;
  const size = layout.propScale;
  const random = seededStream(scenery.seed + 211);
  const tone = mix(palette.earthDeep, '#081012', 0.45);
  castShadow(sheet, '#05090a', 0.5, 12, 0, -2);
  for (let clump = 0; clump < 9; clump++) {
    const middle = ((clump + random() * 0.7) / 9) * TILE_PX;
    const fern = random() < 0.5;
    const tall = (46 + random() * 50) * size;
    const lean = (random() - 0.5) * 26 * size;
    for (const wrap of [-TILE_PX, 0, TILE_PX]) {
      context.fillStyle = tone;
      const x = middle + wrap;
      if (place === 'moor') drawHeather(context, x, height + 4, tall * 0.9, mix(tone, '#a3609a', 0.35));
      else if (place === 'pass') drawSnowyRock(context, x, height, tall * 0.7, mix(tone, palette.earth, 0.5));
      else if (place === 'town') drawRailing(context, x, height, tall, size, tone);
      else if (fern && place !== 'coast') drawFern(context, x, height, tall, lean);
      else drawBlades(context, x, height, tall, lean, size);
    }
  }
}

function drawSnowyRock(context: Context, x: number, y: number, size: number, tone: string): void {
  drawRock(context, x, y + 4, size, tone);
  drawSnowCap(context, x - size * 0.12, y - size * 0.6, size * 0.66);
}

/** Iron bars with rounded tops along a pavement. */
function drawRailing(context: Context, x: number, y: number, tall: number, size: number, tone: string): void {
  const top = y - tall * 0.62;
  for (let bar = 0; bar < 7; bar += 1) {
    const barX = x + (bar - 3) * 17 * size;
    context.fillRect(barX - 2 * size, top - 5 * size, 4 * size, y - top + 8 * size);
    disc(context, tone, barX, top - 7 * size, 4.4 * size);
  }
  context.fillRect(x - 60 * size, top + 6 * size, 120 * size, 4 * size);
}

function drawBlades(context: Context, x: number, y: number, tall: number, lean: number, size: number): void {
  context.beginPath();
  for (let i = -2; i <= 2; i++) {
    const spread = Math.abs(i);
    traceGrass(context, x + i * 11 * size, y + 4, tall * (1 - spread * 0.16), lean + i * 7 * size, 7 * size);
  }
  context.fill();
}

/** A frond: a bent rib with paired leaflets that shrink towards its tip. */
function drawFern(context: Context, x: number, y: number, tall: number, lean: number): void {
  for (const side of [-1, 1]) {
    context.beginPath();
    for (let i = 1; i <= 9; i++) {
      const share = i / 10;
      const ribX = x + side * tall * 0.5 * share * share + lean * share + side * 8;
      const ribY = y - tall * share * (1.1 - share * 0.25);
      const leaf = tall * 0.2 * (1.1 - share);
      for (const wing of [-1, 1]) {
        context.moveTo(ribX, ribY);
        context.quadraticCurveTo(
          ribX + wing * leaf * 0.6,
          ribY - leaf * 0.75,
          ribX + wing * leaf * 1.3 + side * 3,
          ribY - leaf * 0.35,
        );
        context.quadraticCurveTo(ribX + wing * leaf * 0.5, ribY + leaf * 0.1, ribX, ribY);
      }
      context.rect(ribX - 1.2, ribY - 1, 2.4, tall * 0.12);
    }
    context.fill();
  }
}
