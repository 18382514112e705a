/**
 * What grows and stands on a sheet of hills: woods on its crest, groves on its folds, a village. Everything is
 * painted at its wrapped places too, so that the tile repeats without a seam.
 */
import type { Palette } from '../paint/palette.ts';
import { drawChurch, drawConifer, drawHouse, drawLeafTree, drawPoplar } from '../paint/plants.ts';
import { castShadow, dropShadow, mix, type PaintSheet } from '../paint/sheet.ts';
import type { Layout } from './layout.ts';

/** Trees standing on the crest, half hidden behind it. */
export function paintWoods(
  sheet: PaintSheet,
  layout: Layout,
  random: () => number,
  crestY: (x: number) => number,
  depth: number,
  tone: string,
): void {
  const size = [13, 20, 34, 60][depth] ?? 20;
  const clumps = [7, 8, 7, 5][depth] ?? 6;
  for (let clump = 0; clump < clumps; clump++) {
    const middle = random() * sheet.width;
    const members = 2 + Math.floor(random() * 6);
    const kind = random();
    for (let i = 0; i < members; i++) {
      const x = middle + (i - members / 2) * size * (0.5 + random() * 0.3);
      const height = size * layout.propScale * (0.75 + random() * 0.6);
      plantWrapped(sheet, x, crestY, height, kind, tone, 3);
    }
  }
}

/** Trees in front of the lower folds, in small groups. */
export function paintGrove(
  sheet: PaintSheet,
  layout: Layout,
  random: () => number,
  crestY: (x: number) => number,
  depth: number,
  tone: string,
): void {
  if (depth === 0) return;
  const size = [10, 19, 32, 54][depth] ?? 20;
  castShadow(sheet, '#10222a', 0.16, 5, 2, 2);
  for (let group = 0; group < 9; group++) {
    const middle = random() * sheet.width;
    const drop = layout.groundY * (0.035 + random() * 0.11);
    const kind = random();
    const members = 1 + Math.floor(random() * 4);
    for (let i = 0; i < members; i++) {
      const x = middle + i * size * (0.55 + random() * 0.3);
      const height = size * layout.propScale * (0.8 + random() * 0.5);
      plantWrapped(sheet, x, (at) => crestY(at) + drop + i * 2, height, kind, tone, 0);
    }
  }
  dropShadow(sheet.context);
}

function plantWrapped(
  sheet: PaintSheet,
  x: number,
  footY: (x: number) => number,
  height: number,
  kind: number,
  tone: string,
  bury: number,
): void {
  for (let wrap = -1; wrap <= 1; wrap++) {
    const at = x + wrap * sheet.width;
    if (at < -height || at > sheet.width + height) continue;
    const y = footY(at) + bury;
    if (kind < 0.42) drawConifer(sheet.context, at, y, height * 1.1, tone);
    else if (kind < 0.8) drawLeafTree(sheet.context, at, y, height, tone);
    else drawPoplar(sheet.context, at, y, height * 1.3, tone);
  }
}

/** Houses round a church on the crest. */
export function paintVillage(
  sheet: PaintSheet,
  layout: Layout,
  random: () => number,
  crestY: (x: number) => number,
  palette: Palette,
  tone: string,
): void {
  const middle = sheet.width * (0.35 + random() * 0.3);
  const wall = mix(palette.paper, tone, 0.38);
  const roof = mix(palette.ink, tone, 0.52);
  const size = 15 * layout.propScale;
  for (let i = 0; i < 6; i++) {
    const x = middle + (i - 3) * size * 1.5;
    const y = crestY(x + size / 2) + 5;
    if (i === 3) drawChurch(sheet.context, x, y, size * 1.05, wall, roof);
    else drawHouse(sheet.context, x, y, size * (0.8 + random() * 0.35), wall, roof);
  }
}
