/**
 * Dark leaves along the lower rim of the picture, nearer than the road and sliding faster: depth in front of
 * the rider. One seamless tile, painted once; low enough never to cover the road.
 */
import type { Palette } from '../paint/palette.ts';
import { traceGrass } from '../paint/plants.ts';
import { seededStream } from '../paint/seeded.ts';
import {
  castShadow,
  createSheet,
  dropShadow,
  finish,
  layGrain,
  mix,
  type SheetPicture,
  type PaintSheet,
  snap,
} from '../paint/sheet.ts';
import type { Layout } from './layout.ts';
import { wrapOffset } from './tiles.ts';

const TILE_PX = 1792;
/** Slides this much faster than the road. */
const SLIDE = 1.45;

export class Foreground {
  readonly #picture: SheetPicture;

  constructor(layout: Layout, palette: Palette, seed: number) {
    this.#picture = finish(paintLeaves(layout, palette, seed));
  }

  /** `bend` leans all leaves over their feet, as a share of their height. */
  draw(context: CanvasRenderingContext2D, layout: Layout, scrollPx: number, bend: number): void {
    const { width, height, image } = this.#picture;
    const device = layout.deviceScale;
    const reach = Math.abs(bend) * height;
    context.setTransform(device, 0, -bend * device, device, 0, layout.height * device);
    // One tile more on the left, for leaves that lean in from there.
    for (let x = wrapOffset(scrollPx * SLIDE, width) - width; x - reach < layout.width; x += width)
      if (x + width + reach > 0) context.drawImage(image, snap(x, device), -height, width, height);
    context.setTransform(device, 0, 0, device, 0, 0);
  }
}

function paintLeaves(layout: Layout, palette: Palette, seed: number): PaintSheet {
  const size = layout.propScale;
  const height = 112 * size;
  const sheet = createSheet(TILE_PX, height, 1);
  const { context } = sheet;
  const random = seededStream(seed + 211);
  const tone = mix(palette.earthDeep, '#081012', 0.45);
  castShadow(sheet, '#05090a', 0.5, 12, 0, -2);
  for (let clump = 0; clump < 9; clump++) {
    const middle = ((clump + random() * 0.7) / 9) * TILE_PX;
    const fern = random() < 0.5;
    const tall = (46 + random() * 50) * size;
    const lean = (random() - 0.5) * 26 * size;
    for (const wrap of [-TILE_PX, 0, TILE_PX]) {
      context.fillStyle = tone;
      if (fern) drawFern(context, middle + wrap, height, tall, lean);
      else drawBlades(context, middle + wrap, height, tall, lean, size);
    }
  }
  dropShadow(context);
  layGrain(sheet, palette.grainAlpha);
  return sheet;
}

function drawBlades(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  tall: number,
  lean: number,
  size: number,
): void {
  context.beginPath();
  for (let i = -2; i <= 2; i++) {
    const spread = Math.abs(i);
    traceGrass(context, x + i * 11 * size, y + 4, tall * (1 - spread * 0.16), lean + i * 7 * size, 7 * size);
  }
  context.fill();
}

/** A frond: a bent rib with paired leaflets that shrink towards its tip. */
function drawFern(context: CanvasRenderingContext2D, x: number, y: number, tall: number, lean: number): void {
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
