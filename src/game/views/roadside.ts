/**
 * What grows and stands beside the road of each land, painted into its chunk behind the verge. Cells of a fixed length
 * hold one thing at most; their luck depends only on the seed and the place.
 */
import type { Place } from '../../core/level/schema.ts';
import {
  drawHeather,
  drawLamp,
  drawRock,
  drawSnowCap,
  drawSnowPole,
  drawStandingStone,
  drawTallTree,
  drawTownHouse,
  drawWindTree,
} from '../paint/landmarks.ts';
import { drawBush, drawConifer, drawLeafTree } from '../paint/plants.ts';
import { seededStream } from '../paint/seeded.ts';
import { castShadow, dropShadow, mix } from '../paint/sheet.ts';
import { type ChunkJob, columnOf, inReach, lineOfRoad, REACH_M } from './chunkJob.ts';
import { nearBoard } from './posts.ts';

/** One thing beside the road: where it stands on the sheet and its luck. */
interface Spot {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly tone: string;
  readonly kind: number;
  readonly grown: number;
}

interface Growth {
  readonly cellM: number;
  /** Share of the cells that hold something. */
  readonly luck: number;
  readonly draw: (job: ChunkJob, spot: Spot) => void;
}

const valley: Growth['draw'] = ({ context, palette }, { x, y, size, tone, kind, grown }) => {
  const height = (66 + grown * 74) * size;
  if (kind < 0.5) return drawLeafTree(context, x, y, height, tone);
  drawConifer(context, x, y, height * 1.05, tone);
  if (kind > 0.75) drawConifer(context, x + height * 0.32, y, height * 0.66, mix(tone, palette.verge, 0.3));
};

const forest: Growth['draw'] = ({ context, palette }, { x, y, size, tone, kind, grown }) => {
  const height = (126 + grown * 48) * size;
  if (kind < 0.62) return drawTallTree(context, x, y, height, mix(tone, palette.earth, 0.3));
  if (kind < 0.85) return drawConifer(context, x, y, height * 0.72, tone);
  drawBush(context, x, y, (16 + grown * 14) * size, tone);
};

const coast: Growth['draw'] = ({ context, palette }, { x, y, size, tone, kind, grown }) => {
  if (kind < 0.3)
    return drawWindTree(context, x, y + 3, (52 + grown * 34) * size, mix(tone, palette.vergeDark, 0.5));
  // A fence against drifting sand.
  context.strokeStyle = mix(palette.earthDeep, palette.paper, 0.25);
  context.lineCap = 'round';
  context.lineWidth = 3 * size;
  context.beginPath();
  for (let pale = 0; pale < 7; pale += 1) {
    const lean = ((pale * 37) % 5) - 2;
    context.moveTo(x + pale * 11 * size, y + 3);
    context.lineTo(x + (pale * 11 + lean) * size, y - (24 + ((pale * 13) % 4) * 3) * size);
  }
  context.stroke();
  context.lineWidth = 1.4 * size;
  context.beginPath();
  context.moveTo(x - 4 * size, y - 15 * size);
  context.quadraticCurveTo(x + 33 * size, y - 11 * size, x + 70 * size, y - 16 * size);
  context.stroke();
};

const moor: Growth['draw'] = ({ context, palette }, { x, y, size, tone, kind, grown }) => {
  const stone = mix(palette.inkSoft, palette.paper, 0.42);
  if (kind < 0.16) return drawStandingStone(context, x, y, (52 + grown * 44) * size, stone);
  if (kind < 0.3)
    return drawWindTree(context, x, y, (64 + grown * 30) * size, mix(tone, palette.shadow, 0.25));
  for (let i = 0; i < 3; i += 1) {
    const tall = (19 + ((i * 7) % 3) * 5 + grown * 8) * size;
    drawHeather(context, x + i * 19 * size, y + 2, tall, mix('#b56aa8', tone, 0.3));
  }
};

const pass: Growth['draw'] = ({ context, palette }, { x, y, size, kind, grown }) => {
  if (kind < 0.42) return drawSnowPole(context, x, y, 86 * size, palette.ink, palette.attention);
  const stone = mix(palette.earth, palette.paper, 0.18);
  if (kind < 0.7) {
    const big = (17 + grown * 20) * size;
    drawRock(context, x, y, big, stone);
    drawSnowCap(context, x - big * 0.12, y - big * 0.62, big * 0.66);
    return;
  }
  const height = (58 + grown * 44) * size;
  drawConifer(context, x, y, height, mix('#3f5f5c', palette.shadow, 0.1));
  drawSnowCap(context, x - height * 0.06, y - height * 0.34, height * 0.17);
  drawSnowCap(context, x - height * 0.02, y - height * 0.62, height * 0.12);
};

const town: Growth['draw'] = (job, { x, y, size, tone, kind, grown }) => {
  const { context, palette, scenery } = job;
  const lit = scenery.light === 'evening';
  if (kind < 0.4) return drawLamp(context, x, y, 118 * size, palette.ink, lit);
  if (kind < 0.62)
    return drawLeafTree(context, x, y, (74 + grown * 34) * size, mix('#5b7f5c', tone, lit ? 0.6 : 0.3));
  const plaster = ['#c98a6a', '#9aa7b2', '#dccaa4'][Math.floor(grown * 3)] ?? '#c98a6a';
  const wall = mix(plaster, palette.vergeDark, lit ? 0.55 : 0.2);
  const roof = mix('#6f463c', palette.ink, lit ? 0.4 : 0.15);
  const windows = [0, 1, 2, 3, 4, 5].map((one) => lit && (one * 7 + Math.floor(grown * 50)) % 3 !== 0);
  drawTownHouse(context, x, y, 62 * size, (78 + grown * 34) * size, wall, roof, windows);
};

const GROWTHS: Readonly<Record<Place, Growth>> = {
  valley: { cellM: 12, luck: 0.42, draw: valley },
  forest: { cellM: 5, luck: 0.62, draw: forest },
  coast: { cellM: 14, luck: 0.36, draw: coast },
  moor: { cellM: 7, luck: 0.5, draw: moor },
  pass: { cellM: 10, luck: 0.5, draw: pass },
  town: { cellM: 9, luck: 0.52, draw: town },
};

/** Everything of the land beside this stretch. */
export function paintRoadside(job: ChunkJob): void {
  const { palette, size, scenery } = job;
  const { cellM, luck, draw } = GROWTHS[scenery.place];
  castShadow(job.sheet, palette.shadow, 0.28, 8, 4, 2);
  for (let cell = Math.floor((job.fromM - REACH_M) / cellM); cell * cellM < job.toM + REACH_M; cell++) {
    const random = seededStream(scenery.seed * 101 + cell * 977);
    if (random() > luck) continue;
    const m = (cell + 0.2 + random() * 0.6) * cellM;
    const grown = random();
    const tone = mix(palette.verge, palette.vergeDark, 0.35 + random() * 0.5);
    const kind = random();
    if (!inReach(job, m) || nearBoard(job.course, m)) continue;
    draw(job, { x: columnOf(job, m), y: lineOfRoad(job, m) - 6 * size, size, tone, kind, grown });
  }
  dropShadow(job.context);
}
