/**
 * Four sheets of land, each a seamless tile painted once; how they are cut and what stands on them is `terrain.ts`.
 * Every frame they only slide: far ones slowly, near ones faster, and a little up and down with the road.
 */
import type { Context } from '../paint/pen.ts';
import { seededStream } from '../paint/seeded.ts';
import { castShadow, dropShadow, layBetween, mix, paintPicture, snap, withAlpha } from '../paint/sheet.ts';
import type { PaintSheet } from '../paint/sheet.ts';
import type { SheetJob } from './sheetJob.ts';
import type { Staging } from './staging.ts';
import { type Recipe, TERRAINS } from './terrain.ts';
import { outlineAt, peaksAt, TILE_PX, type Wave, wrapOffset } from './tiles.ts';

/** Sheets nearer than this slide so fast that they are laid anew in every frame. */
export const NEAR_SHEET = 2;
/** Sheets are laid a little further down than needed: the one in front may have moved since (CSS px). */
const SPARE_PX = 6;

/** How far each sheet slides and sinks with the road, from the farthest to the nearest. */
const SLIDES = [
  { slide: 0.05, sink: 0.03 },
  { slide: 0.11, sink: 0.07 },
  { slide: 0.22, sink: 0.15 },
  { slide: 0.42, sink: 0.3 },
] as const;

type HillSheet = ReturnType<typeof paintHill>;

/** Draws the hill sheets from far to near. */
export class Hills {
  readonly #staging: Staging;
  readonly #layers: readonly HillSheet[];

  constructor(staging: Staging) {
    this.#staging = staging;
    this.#layers = TERRAINS[staging.scenery.place].recipes.map((recipe, depth) =>
      paintHill(staging, recipe, depth as 0 | 1 | 2 | 3),
    );
  }

  /**
   * `from` is the farthest sheet to draw and `to` the nearest one, which is left away; below `groundY` the road hides
   * everything. Of each sheet only what no nearer one hides is drawn.
   */
  draw(context: Context, from: number, to: number, groundY: number): void {
    for (let i = from; i < to; i++) {
      const layer = this.#layers[i];
      const nearer = this.#layers[i + 1];
      if (!layer) continue;
      const hiddenY = nearer ? this.#topY(nearer) + nearer.solidPx + SPARE_PX : groundY;
      this.#drawSheet(context, layer, Math.min(hiddenY, groundY));
    }
  }

  get count(): number {
    return this.#layers.length;
  }

  /** Below this line sheet `from` hides everything behind it (CSS px). */
  coverY(from: number): number {
    const layer = this.#layers[from];
    return layer ? this.#topY(layer) + layer.solidPx : this.#staging.layout.height;
  }

  #topY(layer: HillSheet): number {
    const { layout, camera } = this.#staging;
    const risePx = camera.riseM * layer.sink * layout.heightPxPerM;
    const y = layer.topY + layout.height * 0.16 * softened(risePx, layout.height * 0.3);
    return snap(y, layout.deviceScale);
  }

  #drawSheet(context: Context, layer: HillSheet, hiddenY: number): void {
    const { layout, camera } = this.#staging;
    const { width, height } = layer.picture;
    const y = this.#topY(layer);
    const bottom = Math.min(y + height, Math.ceil(hiddenY) + 1);
    if (bottom <= y) return;
    for (let x = wrapOffset(camera.scrollPx * layer.slide, width); x < layout.width; x += width)
      layBetween(context, layer.picture, snap(x, layout.deviceScale), y, y, bottom, layout.width);
    const below = y + height - 1;
    if (below >= hiddenY) return;
    context.fillStyle = layer.tone;
    context.fillRect(0, below, layout.width, hiddenY - below);
  }
}

/** Grows like its input and levels off at 1, so that a long climb cannot push a sheet off the picture. */
function softened(px: number, limitPx: number): number {
  return px / (limitPx + Math.abs(px));
}

/** Turns per tile of the waves of an outline, and their share of its roughness. */
const WAVES = [
  [2, 0.62],
  [3, 0.5],
  [5, 0.24],
  [7, 0.13],
  [11, 0.06],
] as const;

function wavesFor(random: () => number, roughPx: number, depth: number): Wave[] {
  return WAVES.map(([turnsPerTile, share], i) => ({
    turnsPerTile: turnsPerTile + (depth === 0 && i > 2 ? 2 : 0),
    heightPx: roughPx * share * (0.75 + random() * 0.5),
    startTurns: random(),
  }));
}

function paintHill({ layout, palette, scenery }: Staging, recipe: Recipe, depth: 0 | 1 | 2 | 3) {
  const random = seededStream(scenery.seed * 7 + depth * 131 + 3);
  const waves = wavesFor(random, layout.groundY * recipe.rough, depth);
  const outline = recipe.form === 'peaks' ? peaksAt : outlineAt;
  const size = layout.propScale;
  const crestRoom = Math.round(layout.groundY * recipe.rough * 2.1 + recipe.roomPx * size);
  const tone = palette.hills[depth];
  const foot = mix(tone, palette.haze, ([0.5, 0.38, 0.3, 0.3] as const)[depth]);
  const crestY = (x: number) => crestRoom - outline(waves, x);
  const shaded = (share: number) => mix(tone, palette.shadow, share);
  const lit = scenery.light === 'evening';
  const terrain = TERRAINS[scenery.place];
  const paint = (sheet: PaintSheet): void => {
    const { context } = sheet;
    const job = { sheet, context, layout, size, palette, random, crestY, depth, tone, shaded, lit };
    terrain.behind(job);
    paintStrip(job, crestY, tone, 0.5 + depth * 0.14, 15);
    for (let fold = 1; fold <= recipe.folds; fold++) paintFold(job, waves, crestRoom, fold);
    terrain.front(job);
    veilFoot(sheet, crestRoom, foot);
  };
  const height = Math.round(crestRoom + layout.groundY * 0.42);
  let solidPx = 0;
  for (let x = 0; x < TILE_PX; x += 4) solidPx = Math.max(solidPx, crestY(x) + 3);
  return {
    ...SLIDES[depth],
    picture: paintPicture(TILE_PX, height, Math.min(layout.deviceScale, 1.5), palette.grainAlpha, paint),
    topY: layout.groundY * (1 - recipe.crest) - crestRoom,
    /** From this line of the picture on nothing shows through (CSS px from its top). */
    solidPx,
    tone: foot,
  };
}

/** One sheet of paper with a lit cut edge and the shadow it throws behind itself. */
function paintStrip(
  { sheet, context, palette }: SheetJob,
  edgeY: (x: number) => number,
  tone: string,
  strength: number,
  blur: number,
): void {
  const { height } = sheet;
  castShadow(sheet, palette.shadow, palette.shadowAlpha * strength, blur, -2, -2);
  context.fillStyle = tone;
  context.beginPath();
  traceEdge(context, edgeY);
  context.lineTo(TILE_PX + 80, height + 60);
  context.lineTo(-80, height + 60);
  context.closePath();
  context.fill();
  dropShadow(context);
  context.strokeStyle = withAlpha(mix(tone, '#ffffff', 0.55), 0.7);
  context.lineWidth = 1.5;
  context.beginPath();
  traceEdge(context, (x) => edgeY(x) + 0.7);
  context.stroke();
}

function traceEdge(context: Context, edgeY: (x: number) => number): void {
  context.moveTo(-80, edgeY(-80));
  for (let x = -72; x <= TILE_PX + 80; x += 8) context.lineTo(x, edgeY(x));
}

/** A lower sheet of the same hill, glued on in front with its own soft edge. */
function paintFold(job: SheetJob, waves: readonly Wave[], crestRoom: number, fold: number): void {
  const { layout, palette, depth, tone } = job;
  const own = waves.map((wave, i) => ({
    ...wave,
    startTurns: wave.startTurns + 0.13 * fold * (i + 1),
    heightPx: wave.heightPx * 0.7,
  }));
  const drop = layout.groundY * 0.075 * fold;
  const edge = (x: number) => crestRoom + drop - outlineAt(own, x);
  const behind = mix(tone, palette.hills[Math.max(0, depth - 1)] ?? tone, 0.55);
  paintStrip(job, edge, fold === 1 ? mix(tone, behind, 0.3) : job.shaded(0.07), 0.42, 10);
}

/** Pale air gathers at the foot of a sheet, which lifts the next one off it. */
function veilFoot({ context, height }: PaintSheet, crestRoom: number, foot: string): void {
  const gradient = context.createLinearGradient(0, crestRoom, 0, height);
  gradient.addColorStop(0, withAlpha(foot, 0));
  gradient.addColorStop(1, withAlpha(foot, 1));
  context.globalCompositeOperation = 'source-atop';
  context.fillStyle = gradient;
  context.fillRect(0, 0, TILE_PX, height);
  context.globalCompositeOperation = 'source-over';
}
