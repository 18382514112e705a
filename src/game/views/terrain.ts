/**
 * How the four hill sheets of each land are cut and what stands on them: woods and a village in the valley, rows of
 * trunks, the sea with sails and a lighthouse, heather and standing stones, peaks with snow, roofs with lit windows.
 */
import type { Place } from '../../core/level/schema.ts';
import type { Context } from '../paint/pen.ts';
import {
  drawHeather,
  drawLamp,
  drawLighthouse,
  drawRock,
  drawSail,
  drawSnowCap,
  drawStandingStone,
  drawTallTree,
  drawTownHouse,
  drawWindTree,
} from '../paint/landmarks.ts';
import { drawBush, drawChurch, drawConifer, drawLeafTree } from '../paint/plants.ts';
import { castShadow, dropShadow, mix, withAlpha } from '../paint/sheet.ts';
import { scattered, type SheetJob, wrapped } from './sheetJob.ts';
import { paintGrove, paintVillage, paintWoods } from './woods.ts';

/** How one sheet is cut. */
export interface Recipe {
  /** Mean height of the crest above the ground line, as a share of it, and how far the outline strays from it. */
  readonly crest: number;
  readonly rough: number;
  readonly form: 'waves' | 'peaks' | 'flat';
  /** Lower sheets glued on in front. */
  readonly folds: 0 | 1 | 2;
  /** Room above the crest for what stands on it (CSS px at scale 1). */
  readonly roomPx: number;
}

/** A land. */
interface Terrain {
  /** From the farthest sheet to the nearest. */
  readonly recipes: readonly [Recipe, Recipe, Recipe, Recipe];
  /** What stands on the crest, half hidden behind the sheet that is laid over it. */
  readonly behind: (job: SheetJob) => void;
  /** What lies on the sheet. */
  readonly front: (job: SheetJob) => void;
}

const at = <T>(list: readonly T[], index: number): T => list[index] as T;

const VALLEY: Terrain = {
  recipes: [
    { crest: 0.44, rough: 0.105, form: 'waves', folds: 2, roomPx: 90 },
    { crest: 0.3, rough: 0.085, form: 'waves', folds: 2, roomPx: 90 },
    { crest: 0.165, rough: 0.066, form: 'waves', folds: 2, roomPx: 90 },
    { crest: 0.03, rough: 0.045, form: 'waves', folds: 2, roomPx: 90 },
  ],
  behind: (job) => {
    paintWoods(job, job.shaded(job.depth === 3 ? 0.02 : 0.1));
    if (job.depth === 1) paintVillage(job);
  },
  front: (job) => paintGrove(job, job.shaded(job.depth === 3 ? 0.06 : 0.18)),
};

/** Rows of trees without a gap; the nearer ones are trunks whose crowns leave the picture. */
const FOREST: Terrain = {
  recipes: [
    { crest: 0.36, rough: 0.05, form: 'waves', folds: 0, roomPx: 110 },
    { crest: 0.26, rough: 0.045, form: 'waves', folds: 0, roomPx: 150 },
    { crest: 0.13, rough: 0.035, form: 'waves', folds: 1, roomPx: 330 },
    { crest: 0.02, rough: 0.03, form: 'waves', folds: 1, roomPx: 400 },
  ],
  behind: (job) => {
    const { sheet, context, depth, size, random, shaded } = job;
    if (depth < 2) {
      const tall = at([46, 84], depth) * size;
      scattered(job, Math.round(sheet.width / (tall * 0.34)), tall, (x, crestY, i) => {
        const height = tall * (0.7 + ((i * 7) % 10) / 18);
        drawConifer(context, x, crestY + 8, height, shaded(((i * 3) % 5) * 0.035));
      });
      return;
    }
    const tall = at([0, 0, 250, 380], depth) * size;
    castShadow(sheet, job.palette.shadow, 0.2, 8, 4, 1);
    scattered(job, at([0, 0, 22, 9], depth), tall * 0.3, (x, crestY, i) => {
      const height = tall * (0.82 + ((i * 5) % 7) / 22);
      drawTallTree(context, x + random() * 4, crestY + 10, height, shaded(((i * 3) % 4) * 0.05));
    });
    dropShadow(context);
  },
  front: (job) => {
    const { context, depth, tone, palette } = job;
    if (depth < 2) return;
    const size = at([0, 0, 22, 34], depth) * job.size;
    scattered(job, 16, size, (x, crestY, i) => {
      const y = crestY + size * (0.5 + ((i * 3) % 4) * 0.3);
      drawBush(context, x, y, size, mix(tone, palette.verge, 0.2 + (i % 3) * 0.12));
    });
  },
};

const COAST: Terrain = {
  recipes: [
    { crest: 0.3, rough: 0.035, form: 'waves', folds: 1, roomPx: 120 },
    { crest: 0.25, rough: 0, form: 'flat', folds: 0, roomPx: 60 },
    { crest: 0.075, rough: 0.045, form: 'waves', folds: 1, roomPx: 60 },
    { crest: 0, rough: 0.04, form: 'waves', folds: 1, roomPx: 90 },
  ],
  behind: (job) => {
    const { sheet, context, depth, size, palette, tone } = job;
    if (depth === 0) {
      const wall = mix(palette.paper, tone, 0.1);
      wrapped(job, sheet.width * 0.34, 80 * size, (x, crestY) =>
        drawLighthouse(context, x, crestY + 6, 96 * size, wall, mix('#b8472e', tone, 0.25)),
      );
    }
    if (depth === 3)
      scattered(job, 7, 60 * size, (x, crestY) =>
        drawWindTree(context, x, crestY + 4, 52 * size, mix(tone, palette.vergeDark, 0.6)),
      );
  },
  front: (job) => {
    const { context, depth, size, palette, tone } = job;
    if (depth === 1) paintSea(job);
    if (depth < 2) return;
    const tall = (12 + depth * 5) * size;
    scattered(job, depth === 2 ? 26 : 20, 30 * size, (x, crestY, i) => {
      const y = crestY + (3 + (i % 4) * 7) * size;
      tuftOfMarram(context, x, y, tall, mix(tone, palette.vergeDark, 0.45));
    });
  },
};

function tuftOfMarram(context: Context, x: number, y: number, size: number, tone: string): void {
  context.strokeStyle = tone;
  context.lineWidth = Math.max(1, size * 0.07);
  context.lineCap = 'round';
  context.beginPath();
  for (let blade = -3; blade <= 3; blade += 1) {
    context.moveTo(x + blade * size * 0.06, y + 2);
    context.quadraticCurveTo(
      x + blade * size * 0.1,
      y - size * 0.6,
      x + blade * size * 0.24 - size * 0.2,
      y - size * (1 - Math.abs(blade) * 0.1),
    );
  }
  context.stroke();
}

/** Rows of short waves, denser towards the horizon, and two boats. */
function paintSea(job: SheetJob): void {
  const { sheet, context, random, palette, tone, size } = job;
  const { width } = sheet;
  const top = job.crestY(0);
  context.lineCap = 'round';
  for (let row = 0; row < 9; row += 1) {
    const y = top + (4 + row * row * 1.7 + row * 3) * size;
    context.strokeStyle = withAlpha(row % 3 === 1 ? job.shaded(0.2) : mix(tone, '#ffffff', 0.55), 0.75);
    context.lineWidth = (1 + row * 0.22) * size;
    context.beginPath();
    for (let i = 0; i < 26; i += 1) {
      const x = 20 + random() * (width - 90);
      const long = (10 + random() * 26) * size * (0.5 + row * 0.12);
      context.moveTo(x, y);
      context.quadraticCurveTo(x + long * 0.5, y - 2.4 * size, x + long, y);
    }
    context.stroke();
  }
  castShadow(sheet, palette.shadow, 0.2, 5, 1, 2);
  const sail = mix(palette.paper, tone, 0.08);
  const hull = mix(palette.ink, tone, 0.35);
  drawSail(context, width * 0.17, top + 10 * size, 34 * size, sail, hull);
  drawSail(context, width * 0.52, top + 4 * size, 22 * size, sail, hull);
  drawSail(context, width * 0.78, top + 22 * size, 46 * size, sail, hull);
  dropShadow(context);
}

const MOOR: Terrain = {
  recipes: [
    { crest: 0.27, rough: 0.028, form: 'waves', folds: 1, roomPx: 70 },
    { crest: 0.19, rough: 0.03, form: 'waves', folds: 1, roomPx: 60 },
    { crest: 0.1, rough: 0.032, form: 'waves', folds: 2, roomPx: 90 },
    { crest: 0.015, rough: 0.03, form: 'waves', folds: 1, roomPx: 100 },
  ],
  behind: (job) => {
    const { sheet, context, depth, size, palette, tone, shaded } = job;
    const stone = mix(mix(palette.inkSoft, palette.paper, 0.35), tone, 0.35);
    if (depth === 0)
      scattered(job, 3, 60, (x, crestY) => {
        drawRock(context, x - 16 * size, crestY + 3, 16 * size, shaded(0.1));
        drawRock(context, x, crestY + 3, 26 * size, shaded(0.1));
        drawRock(context, x + 15 * size, crestY + 3, 18 * size, shaded(0.1));
      });
    if (depth !== 2) return;
    // A ring of stones, and one tree that stands alone.
    for (let i = 0; i < 7; i += 1)
      wrapped(job, sheet.width * 0.3 + (i - 3) * 34 * size, 40, (x, crestY) =>
        drawStandingStone(context, x, crestY + 3, (30 + ((i * 5) % 4) * 7) * size, stone),
      );
    wrapped(job, sheet.width * 0.74, 90, (x, crestY) =>
      drawWindTree(context, x, crestY + 3, 78 * size, shaded(0.35)),
    );
  },
  front: (job) => {
    const { context, depth, palette, tone } = job;
    if (depth < 1) return;
    const size = at([0, 9, 15, 24], depth) * job.size;
    const bloom = mix(tone, depth === 3 ? '#c06ab0' : '#b979b4', 0.55);
    scattered(job, at([0, 46, 40, 26], depth), size * 2, (x, crestY, i) => {
      const y = crestY + (4 + ((i * 7) % 5) * size * 0.55);
      drawHeather(context, x, y, size, mix(bloom, palette.shadow, ((i * 3) % 4) * 0.07));
    });
  },
};

const PASS: Terrain = {
  recipes: [
    { crest: 0.5, rough: 0.2, form: 'peaks', folds: 0, roomPx: 30 },
    { crest: 0.3, rough: 0.15, form: 'peaks', folds: 0, roomPx: 30 },
    { crest: 0.14, rough: 0.06, form: 'waves', folds: 1, roomPx: 80 },
    { crest: 0.01, rough: 0.04, form: 'waves', folds: 1, roomPx: 70 },
  ],
  behind: (job) => {
    const { context, depth, shaded } = job;
    if (depth !== 2) return;
    const tall = 34 * job.size;
    scattered(job, 22, tall, (x, crestY, i) => {
      drawConifer(context, x, crestY + 5, tall * (0.8 + (i % 4) * 0.16), shaded(0.3));
      if (i % 2 === 0) drawSnowCap(context, x, crestY - tall * 0.34, tall * 0.17);
    });
  },
  front: (job) => {
    const { context, depth, size, shaded } = job;
    if (depth < 2) return paintSnowFields(job);
    scattered(job, 13, 40 * size, (x, crestY, i) => {
      const big = (9 + ((i * 5) % 4) * 5) * size * (depth === 3 ? 1.5 : 1);
      const y = crestY + (8 + (i % 3) * 16) * size;
      drawRock(context, x, y, big, shaded(0.26));
      drawSnowCap(context, x - big * 0.1, y - big * 0.62, big * 0.62);
    });
  },
};

/** Snow down from the tops, with a torn lower edge, brighter on the side the light comes from. */
function paintSnowFields(job: SheetJob): void {
  const { context, layout, palette, depth, crestY } = job;
  const { width } = job.sheet;
  const line = (depth === 0 ? 0.16 : 0.09) * layout.groundY;
  const middle = crestAverage(job);
  context.fillStyle = mix('#ffffff', palette.skyMiddle, 0.25);
  context.beginPath();
  for (let x = -8; x <= width + 8; x += 8) context.lineTo(x, crestY(x) - 1);
  for (let x = width + 8; x >= -8; x -= 8) {
    const high = Math.max(0, middle + line * 0.3 - crestY(x));
    const torn =
      Math.abs(((x * 0.043) % 1) - 0.5) * line * 0.7 + Math.abs(((x * 0.017) % 1) - 0.5) * line * 0.5;
    context.lineTo(x, crestY(x) + Math.max(0, high * 0.62 - torn * 0.5));
  }
  context.closePath();
  context.fill();
}

function crestAverage({ sheet, crestY }: SheetJob): number {
  let sum = 0;
  for (let i = 0; i < 32; i += 1) sum += crestY((i / 32) * sheet.width);
  return sum / 32;
}

const TOWN: Terrain = {
  recipes: [
    { crest: 0.36, rough: 0.012, form: 'waves', folds: 0, roomPx: 150 },
    { crest: 0.25, rough: 0.01, form: 'waves', folds: 0, roomPx: 150 },
    { crest: 0.1, rough: 0.008, form: 'waves', folds: 0, roomPx: 250 },
    { crest: 0, rough: 0.012, form: 'waves', folds: 1, roomPx: 130 },
  ],
  behind: (job) => {
    const { context, depth, size, palette, tone, shaded } = job;
    if (depth === 0)
      scattered(job, 4, 80 * size, (x, crestY) =>
        drawChurch(context, x, crestY + 6, 52 * size, { wall: shaded(0.08), roof: shaded(0.22) }),
      );
    if (depth < 3) return paintHouses(job);
    scattered(job, 8, 120 * size, (x, crestY, i) => {
      if (i % 2 === 0) drawLeafTree(context, x, crestY + 6, 92 * size, mix(tone, palette.vergeDark, 0.5));
      else drawLamp(context, x, crestY + 4, 108 * size, mix(palette.ink, tone, 0.2), job.lit);
    });
  },
  front: (job) => {
    const { context, depth, size, palette, tone } = job;
    if (depth !== 3) return;
    scattered(job, 22, 40, (x, crestY, i) => {
      const y = crestY + (10 + (i % 2) * 14) * size;
      drawBush(context, x, y, 26 * size, mix(tone, palette.vergeDark, 0.25 + (i % 3) * 0.15));
    });
  },
};

/** A street of narrow houses, wall to wall, each a little other than its neighbours. */
function paintHouses(job: SheetJob): void {
  const { depth, context, palette, random, sheet, tone, lit, crestY } = job;
  const wide = at([26, 42, 78], depth) * job.size;
  const count = Math.round(sheet.width / wide);
  const step = sheet.width / count;
  castShadow(sheet, palette.shadow, palette.shadowAlpha * 0.5, 8, -2, -1);
  for (let i = 0; i < count; i += 1) {
    const luck = [random(), random(), random(), random(), random(), random(), random(), random()];
    const tall = wide * (0.7 + at(luck, 0) * (depth === 2 ? 0.75 : 0.6));
    const plaster = at(['#c98a6a', '#8c9aa8', '#d8c9a8', '#a87c86'], Math.floor(at(luck, 1) * 4));
    const wall = mix(mix(tone, plaster, lit ? 0.2 : 0.42), palette.paper, lit ? 0.02 : 0.12);
    const tiles = at(['#7a4a3e', '#4d5566', '#6a4050'], Math.floor(at(luck, 2) * 3));
    const roof = mix(tone, tiles, lit ? 0.35 : 0.6);
    // A gap here and there lets the street behind be seen.
    if (at(luck, 3) < 0.12) continue;
    const windows = luck.map((one) => lit && one < 0.55);
    const y = crestY(i * step) + 8;
    drawTownHouse(context, i * step, y, step * 0.98, tall, wall, roof, windows);
    if (i === count - 1)
      drawTownHouse(context, i * step - sheet.width, y, step * 0.98, tall, wall, roof, windows);
  }
  dropShadow(context);
}

export const TERRAINS: Readonly<Record<Place, Terrain>> = {
  valley: VALLEY,
  forest: FOREST,
  coast: COAST,
  moor: MOOR,
  pass: PASS,
  town: TOWN,
};
