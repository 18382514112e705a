/** What grows and stands on a sheet of hills in the valley: woods on its crest, groves on its folds, a village. */
import { DARK, drawChurch, drawConifer, drawHouse, drawLeafTree, drawPoplar } from '../paint/plants.ts';
import { castShadow, dropShadow, mix } from '../paint/sheet.ts';
import { type SheetJob, wrapped } from './sheetJob.ts';

/** Trees standing on the crest, half hidden behind it. */
export function paintWoods(job: SheetJob, tone: string): void {
  const { sheet, random, depth } = job;
  const usual = [13, 20, 34, 60][depth] ?? 20;
  const clumps = [7, 8, 7, 5][depth] ?? 6;
  for (let clump = 0; clump < clumps; clump++) {
    const middle = random() * sheet.width;
    const members = 2 + Math.floor(random() * 6);
    const kind = random();
    for (let i = 0; i < members; i++) {
      const x = middle + (i - members / 2) * usual * (0.5 + random() * 0.3);
      const height = usual * job.size * (0.75 + random() * 0.6);
      plant(job, x, 3, height, kind, tone);
    }
  }
}

/** Trees in front of the lower folds, in small groups. */
export function paintGrove(job: SheetJob, tone: string): void {
  const { sheet, context, random, depth, layout } = job;
  if (depth === 0) return;
  const usual = [10, 19, 32, 54][depth] ?? 20;
  castShadow(sheet, DARK, 0.16, 5, 2, 2);
  for (let group = 0; group < 9; group++) {
    const middle = random() * sheet.width;
    const drop = layout.groundY * (0.035 + random() * 0.11);
    const kind = random();
    const members = 1 + Math.floor(random() * 4);
    for (let i = 0; i < members; i++) {
      const x = middle + i * usual * (0.55 + random() * 0.3);
      const height = usual * job.size * (0.8 + random() * 0.5);
      plant(job, x, drop + i * 2, height, kind, tone);
    }
  }
  dropShadow(context);
}

/** A tree whose foot is `drop` pixels below the crest. */
function plant(job: SheetJob, x: number, drop: number, height: number, kind: number, tone: string): void {
  const { context } = job;
  wrapped(job, x, height, (at, crestY) => {
    if (kind < 0.42) drawConifer(context, at, crestY + drop, height * 1.1, tone);
    else if (kind < 0.8) drawLeafTree(context, at, crestY + drop, height, tone);
    else drawPoplar(context, at, crestY + drop, height * 1.3, tone);
  });
}

/** Houses round a church on the crest. */
export function paintVillage(job: SheetJob): void {
  const { sheet, context, random, crestY, palette, tone } = job;
  const middle = sheet.width * (0.35 + random() * 0.3);
  const tones = { wall: mix(palette.paper, tone, 0.38), roof: mix(palette.ink, tone, 0.52) };
  const size = 15 * job.size;
  for (let i = 0; i < 6; i++) {
    const x = middle + (i - 3) * size * 1.5;
    const y = crestY(x + size / 2) + 5;
    if (i === 3) drawChurch(context, x, y, size * 1.05, tones);
    else drawHouse(context, x, y, size * (0.8 + random() * 0.35), tones);
  }
}
