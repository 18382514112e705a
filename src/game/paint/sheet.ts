/**
 * Helpers for drawing-once canvases: make a sheet in device pixels, give a shape a paper edge and a soft
 * shadow, lay grain over it. Used while textures are built, never per frame.
 */
import type { Context } from './pen.ts';
import { seededStream } from './seeded.ts';

/** A canvas with its context, measured in CSS pixels and scaled to device pixels. */
export interface PaintSheet {
  readonly canvas: HTMLCanvasElement;
  readonly context: Context;
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly kind: 'paper' | 'opaque';
}

/** Finer canvases cost more than the eye gains. */
const MOST_DEVICE_SCALE = 2;

/** Device pixels for each CSS pixel of a canvas. */
export function deviceScale(): number {
  return Math.max(1, Math.min(MOST_DEVICE_SCALE, window.devicePixelRatio || 1));
}

/** Gives a canvas of the page a size (CSS pixels) in device pixels, and answers with what draws on it. */
export function sizeCanvas(canvas: HTMLCanvasElement, width: number, height: number): Context {
  const scale = deviceScale();
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  return contextOf(canvas);
}

function contextOf(canvas: HTMLCanvasElement, settings?: CanvasRenderingContext2DSettings): Context {
  const context = canvas.getContext('2d', settings);
  if (!context) throw new Error('This browser offers no 2D canvas.');
  return context;
}

/**
 * Blank sheet of `width` x `height` CSS pixels at `scale` device pixels each; nothing shows through an opaque one, which
 * browsers copy instead of mixing it with what lies below.
 */
export function createSheet(
  width: number,
  height: number,
  scale: number,
  kind: PaintSheet['kind'] = 'paper',
): PaintSheet {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  const context = contextOf(canvas, { alpha: kind === 'paper' });
  context.scale(scale, scale);
  return { canvas, context, width, height, scale, kind };
}

/** A finished sheet: only drawn from now on. */
export interface Picture {
  readonly image: CanvasImageSource;
  readonly width: number;
  readonly height: number;
}

/** Ends the painting of a sheet; browsers draw a bitmap with less ado than a canvas that might still change. */
export function finish(sheet: PaintSheet): Picture {
  const { canvas, width, height, kind } = sheet;
  if (typeof OffscreenCanvas === 'undefined') return { image: canvas, width, height };
  const copy = new OffscreenCanvas(canvas.width, canvas.height);
  const context = copy.getContext('2d', { alpha: kind === 'paper' });
  if (!context) return { image: canvas, width, height };
  context.drawImage(canvas, 0, 0);
  const image = copy.transferToImageBitmap();
  canvas.width = 0;
  return { image, width, height };
}

/** Paints a sheet, lays grain over it (alpha 0 to 1) and ends it; a shadow that is still cast ends with the painting. */
export function paintPicture(
  width: number,
  height: number,
  scale: number,
  grainAlpha: number,
  paint: (sheet: PaintSheet) => void,
  kind?: PaintSheet['kind'],
): Picture {
  const sheet = createSheet(width, height, scale, kind);
  paint(sheet);
  dropShadow(sheet.context);
  if (grainAlpha > 0) layGrain(sheet, grainAlpha);
  return finish(sheet);
}

/**
 * Lays a picture of `width` x `height` at (x, y), but only what of it lies between the lines `top` and `bottom`. Without a
 * graphics processor a browser copies whole pictures into a frame that lets less through nearly twice as fast as parts of them.
 */
export function layBetween(
  context: Context,
  { image, width, height }: Picture,
  x: number,
  y: number,
  top: number,
  bottom: number,
  rimX: number,
): void {
  if (bottom <= top) return;
  context.save();
  context.beginPath();
  context.rect(0, top, rimX, bottom - top);
  context.clip();
  context.drawImage(image, x, y, width, height);
  context.restore();
}

/** Nearest place that falls on a device pixel. */
export function snap(px: number, deviceScale: number): number {
  return Math.round(px * deviceScale) / deviceScale;
}

/** Shadow settings for the next fill; blur and offsets in CSS pixels (contexts ignore their own scale here). */
export function castShadow(
  sheet: PaintSheet,
  colour: string,
  alpha: number,
  blur: number,
  dx: number,
  dy: number,
): void {
  const { context, scale } = sheet;
  context.shadowColor = withAlpha(colour, alpha);
  context.shadowBlur = blur * scale;
  context.shadowOffsetX = dx * scale;
  context.shadowOffsetY = dy * scale;
}

export function dropShadow(context: Context): void {
  context.shadowColor = 'transparent';
  context.shadowBlur = 0;
  context.shadowOffsetX = 0;
  context.shadowOffsetY = 0;
}

/** `#rrggbb` with an alpha from 0 to 1. */
export function withAlpha(hex: string, alpha: number): string {
  const value = Number.parseInt(hex.slice(1), 16);
  return `rgba(${value >> 16},${(value >> 8) & 255},${value & 255},${alpha})`;
}

/** Mix of two `#rrggbb` colours; `share` 0 is the first, 1 the second. */
export function mix(first: string, second: string, share: number): string {
  const a = Number.parseInt(first.slice(1), 16);
  const b = Number.parseInt(second.slice(1), 16);
  const part = (shift: number) => {
    const from = (a >> shift) & 255;
    return Math.round(from + (((b >> shift) & 255) - from) * share);
  };
  return `#${((1 << 24) | (part(16) << 16) | (part(8) << 8) | part(0)).toString(16).slice(1)}`;
}

let grainTile: HTMLCanvasElement | null = null;

/** Size of the repeating grain tile (device pixels); sheet widths that are multiples of it stay seamless. */
const GRAIN_TILE_PX = 256;

function buildGrain(): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = GRAIN_TILE_PX;
  canvas.height = GRAIN_TILE_PX;
  const context = contextOf(canvas);
  const random = seededStream(71);
  const image = context.createImageData(GRAIN_TILE_PX, GRAIN_TILE_PX);
  for (let i = 0; i < image.data.length; i += 4) {
    const light = random() > 0.5 ? 255 : 0;
    image.data[i] = light;
    image.data[i + 1] = light;
    image.data[i + 2] = light;
    image.data[i + 3] = random() * random() * 150;
  }
  context.putImageData(image, 0, 0);
  context.lineWidth = 0.7;
  for (let i = 0; i < 260; i++) drawFibre(context, random);
  return canvas;
}

/** One paper fibre, drawn at its wrapped places too so that the tile repeats without a seam. */
function drawFibre(context: Context, random: () => number): void {
  const x = random() * GRAIN_TILE_PX;
  const y = random() * GRAIN_TILE_PX;
  const turn = random() * Math.PI * 2;
  const length = 5 + random() * 16;
  context.strokeStyle = random() > 0.5 ? 'rgba(255,255,255,0.34)' : 'rgba(0,0,0,0.24)';
  for (let wrap = 0; wrap < 9; wrap++) {
    const ox = x + ((wrap % 3) - 1) * GRAIN_TILE_PX;
    const oy = y + (Math.floor(wrap / 3) - 1) * GRAIN_TILE_PX;
    context.beginPath();
    context.moveTo(ox, oy);
    context.quadraticCurveTo(
      ox + Math.cos(turn) * length * 0.5 + 3,
      oy + Math.sin(turn) * length * 0.5,
      ox + Math.cos(turn) * length,
      oy + Math.sin(turn) * length,
    );
    context.stroke();
  }
}

/** Lays paper grain over what is already painted (never outside it). */
export function layGrain(sheet: PaintSheet, alpha: number): void {
  grainTile ??= buildGrain();
  const { context, canvas } = sheet;
  const pattern = context.createPattern(grainTile, 'repeat');
  if (!pattern) return;
  context.save();
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.globalCompositeOperation = 'source-atop';
  context.globalAlpha = alpha;
  context.fillStyle = pattern;
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.restore();
}
