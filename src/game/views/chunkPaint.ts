/**
 * Paints one stretch of road with everything that stands still on it: bank, strata, the inked sand band, the
 * road sheet, verge and grass. What stands beside the road is added by `props.ts`.
 */
import { cutter, oval } from '../paint/pen.ts';
import { drawBush, traceGrass } from '../paint/plants.ts';
import { seededStream } from '../paint/seeded.ts';
import { castShadow, dropShadow, layGrain, mix, withAlpha } from '../paint/sheet.ts';
import { type ChunkJob, columnOf, lineOfRoad } from './chunkJob.ts';
import { sampleAt } from '../../core/math/numbers.ts';
import { paintPropsBehind, paintPropsInFront } from './props.ts';
import { strokesBetween } from './roadInk.ts';

/** Thickness of the road sheet and of the band that carries the ink, in CSS pixels at scale 1. */
const ROAD_PX = 9;
const BAND_PX = 30;
/** Where the grass of the near verge has its feet, below the road's line (CSS px at scale 1). */
export const VERGE_DROP_PX = ROAD_PX + BAND_PX + 7;

/**
 * The painting of a chunk in order, each step short enough for one frame: a stretch that is still ahead is
 * painted while others are ridden, without a hitch.
 */
export const PAINT_STEPS: readonly ((job: ChunkJob) => void)[] = [
  (job) => {
    job.context.clearRect(0, 0, job.sheet.width, job.sheet.height);
    paintFarVerge(job);
  },
  paintPropsBehind,
  paintStrata,
  paintStones,
  paintBand,
  paintHatching,
  paintRoad,
  (job) => {
    paintNearVerge(job);
    paintPropsInFront(job);
  },
  (job) => layGrain(job.sheet, job.palette.grainAlpha * 0.9),
];

/** The cut earth: three sheets, the lower ones with wavy edges. */
function paintStrata(job: ChunkJob): void {
  const { palette, size } = job;
  const middle = mix(palette.earth, palette.earthDeep, 0.5);
  strip(job, () => 5 * size, palette.earth, 0, 0, 0);
  strip(job, (m) => (74 + wavy(m, 0.21, 9) + wavy(m, 0.067, 12)) * size, middle, 0.36, 14, -3);
  strip(job, (m) => (142 + wavy(m, 0.17, 11) + wavy(m, 0.05, 17)) * size, palette.earthDeep, 0.36, 16, -3);
}

/** A wave along the road that does not depend on the chunk (radians per metre, pixels). */
function wavy(distanceM: number, radPerM: number, heightPx: number): number {
  return Math.sin(distanceM * radPerM + radPerM * 40) * heightPx;
}

/** A sheet from `dropPx` below the road to the bottom, with a lit cut edge if it throws a shadow. */
function strip(
  job: ChunkJob,
  dropPx: (distanceM: number) => number,
  tone: string,
  alpha: number,
  blur: number,
  dy: number,
): void {
  const { context } = job;
  const low = job.sheet.height + 30;
  context.fillStyle = tone;
  if (alpha > 0) castShadow(job.sheet, '#0b1416', alpha, blur, 0, dy);
  context.beginPath();
  traceAlong(job, dropPx);
  context.lineTo(columnOf(job, job.toM + 3), low);
  context.lineTo(columnOf(job, job.fromM - 3), low);
  context.closePath();
  context.fill();
  dropShadow(context);
  if (alpha === 0) return;
  seam(job, withAlpha(mix(tone, '#ffffff', 0.3), 0.5), 1.2, dropPx);
}

function traceAlong(job: ChunkJob, dropPx: (distanceM: number) => number, backwards = false): void {
  const from = job.fromM - 3;
  const count = Math.ceil((job.toM + 3 - from) / 0.5);
  for (let i = 0; i <= count; i++) {
    const m = from + (backwards ? count - i : i) * 0.5;
    const x = columnOf(job, m);
    const y = lineOfRoad(job, m) + dropPx(m);
    if (i === 0 && !backwards) job.context.moveTo(x, y);
    else job.context.lineTo(x, y);
  }
}

/** A band along the road between two lines, told in pixels below it. */
function ribbon(
  job: ChunkJob,
  tone: string,
  topPx: (distanceM: number) => number,
  bottomPx: (distanceM: number) => number,
): void {
  job.context.fillStyle = tone;
  job.context.beginPath();
  traceAlong(job, topPx);
  traceAlong(job, bottomPx, true);
  job.context.fill();
  dropShadow(job.context);
}

/** A line along the road, `dropPx` below it. */
function seam(job: ChunkJob, tone: string, width: number, dropPx: (distanceM: number) => number): void {
  job.context.strokeStyle = tone;
  job.context.lineWidth = width;
  job.context.beginPath();
  traceAlong(job, dropPx);
  job.context.stroke();
}

/** The meadow that looks over the road from behind, with its fringe of grass and a few bushes. */
function paintFarVerge(job: ChunkJob): void {
  const { context, palette, size } = job;
  const random = seededStream(job.scenery.seed * 31 + Math.round(job.fromM) * 7);
  castShadow(job.sheet, palette.shadow, palette.shadowAlpha * 0.9, 13, -2, -2);
  const rise = (m: number): number => (-13 + wavy(m, 0.33, 3.5) + wavy(m, 0.9, 1.4)) * size;
  ribbon(job, palette.verge, rise, () => 40);
  context.fillStyle = mix(palette.verge, palette.vergeDark, 0.35);
  context.beginPath();
  for (let m = job.fromM; m < job.toM; m += 0.55 + random() * 0.9) {
    const lean = -sampleAt(job.course.windMps, m) * 1.1 + random() * 3 - 1.5;
    const foot = lineOfRoad(job, m) + (-11 + wavy(m, 0.33, 3.5)) * size;
    traceGrass(context, columnOf(job, m), foot + 3, (7 + random() * 9) * size, lean * size, 2.6 * size);
  }
  context.fill();
  castShadow(job.sheet, palette.shadow, 0.2, 5, 2, 1);
  for (let i = 0; i < 2; i++) {
    const m = job.fromM + random() * (job.toM - job.fromM);
    const tone = mix(palette.verge, palette.vergeDark, 0.3 + random() * 0.4);
    if (random() < 0.55)
      drawBush(context, columnOf(job, m), lineOfRoad(job, m) - 5 * size, (14 + random() * 12) * size, tone);
  }
  dropShadow(context);
  ribbon(
    job,
    palette.vergeDark,
    () => -4.5 * size,
    () => 12,
  );
}

/** Stones in the cut earth, each a folded piece of paper; they keep clear of the chunk's edges. */
function paintStones(job: ChunkJob): void {
  const { context, palette, size } = job;
  const random = seededStream(job.scenery.seed * 53 + Math.round(job.fromM) * 11);
  castShadow(job.sheet, '#0b1416', 0.4, 5, 1, 2);
  for (let i = 0; i < 7; i++) {
    const m = job.fromM + 1.5 + random() * (job.toM - job.fromM - 3);
    const x = columnOf(job, m);
    const y = lineOfRoad(job, m) + (62 + random() * 110) * size;
    const wide = (5 + random() * 13) * size;
    const flat = 0.5 + random() * 0.2;
    const tone = mix(palette.earth, palette.verge, 0.2 + random() * 0.35);
    const cut = cutter(context, x, y, wide);
    const [low, foot] = [flat * 0.8, flat * 0.9];
    cut(tone, [-1, flat * 0.3], [-0.55, -low], [0.3, -flat], [1, -flat * 0.1], [0.6, low], [-0.5, foot]);
    context.shadowColor = 'transparent';
    cut(mix(tone, '#0b1416', 0.2), [-0.1, 0], [1, -flat * 0.1], [0.6, low], [-0.5, foot]);
    castShadow(job.sheet, '#0b1416', 0.4, 5, 1, 2);
  }
  dropShadow(context);
}

/** The sand band under the road; its lower edge is torn a little. */
function paintBand(job: ChunkJob): void {
  const { palette, size } = job;
  castShadow(job.sheet, '#0b1416', 0.42, 11, 0, 4);
  const torn = (m: number): number => (ROAD_PX + BAND_PX + wavy(m, 0.5, 2.2) + wavy(m, 1.7, 0.9)) * size;
  ribbon(job, palette.sand, () => 0, torn);
  seam(job, withAlpha(mix(palette.sand, '#ffffff', 0.6), 0.8), 1.3, (m) => torn(m) - size);
}

/** Strokes of ink: their density is the gradient, full length uphill, short and leaning back downhill. */
function paintHatching(job: ChunkJob): void {
  const { context, palette, size } = job;
  context.strokeStyle = palette.hatch;
  context.lineCap = 'round';
  context.lineWidth = 2 * Math.max(0.8, size);
  context.beginPath();
  for (const m of strokesBetween(job.strokes, job.fromM - 1, job.toM + 1)) {
    const slope = sampleAt(job.course.slopeRatio, m);
    const x = columnOf(job, m);
    const y = lineOfRoad(job, m) + (ROAD_PX + 4) * size;
    const wobble = Math.sin(m * 12.9) * 1.4;
    if (slope > 0) {
      context.moveTo(x + 4 * size, y);
      context.lineTo(x - 4 * size, y + (BAND_PX - 9 + wobble) * size);
    } else {
      context.moveTo(x - 2.5 * size, y + 5 * size);
      context.lineTo(x + 2.5 * size, y + (14 + wobble) * size);
    }
  }
  context.stroke();
}

/** The road sheet with its lit upper edge; loose ground is strewn with stones. */
function paintRoad(job: ChunkJob): void {
  const { context, palette, size } = job;
  castShadow(job.sheet, '#0b1416', 0.38, 6, 0, 3);
  ribbon(
    job,
    palette.road,
    () => -3 * size,
    () => ROAD_PX * size,
  );
  seam(job, palette.roadEdge, 1.6 * size, () => -2.4 * size);
  seam(job, withAlpha(palette.ink, 0.85), 1.5 * size, () => ROAD_PX * size);
  const random = seededStream(job.scenery.seed + Math.round(job.fromM) * 13);
  for (let m = job.fromM; m < job.toM; m += 0.16) {
    const rough = sampleAt(job.course.rollingFactor, m) - 1;
    if (rough < 0.12 || random() > 0.35 + rough * 0.5) continue;
    const radius = (1 + random() * 2.1) * size;
    const tone = random() > 0.5 ? withAlpha(palette.inkSoft, 0.75) : mix(palette.sand, palette.ink, 0.3);
    const y = lineOfRoad(job, m) + (random() * 11 - 3.5) * size;
    oval(context, tone, columnOf(job, m), y, radius * 1.3, radius);
  }
}

/** Tufts that lap over the lower edge of the band; fewer where ink has to be read. */
function paintNearVerge(job: ChunkJob): void {
  const { context, palette, size } = job;
  const random = seededStream(job.scenery.seed * 17 + Math.round(job.fromM) * 3);
  for (const share of [0.45, 0.1]) {
    context.fillStyle = mix(palette.verge, palette.earth, share);
    context.beginPath();
    for (let m = job.fromM; m < job.toM; m += 0.5 + random() * 1.5) {
      const steep = Math.abs(sampleAt(job.course.slopeRatio, m)) > 0.02;
      const lean = (-sampleAt(job.course.windMps, m) * 1.2 + random() * 4 - 2) * size;
      const height = (steep ? 8 + random() * 5 : 11 + random() * 14) * size;
      const foot = lineOfRoad(job, m) + (ROAD_PX + BAND_PX + 5 + random() * 5) * size;
      traceGrass(context, columnOf(job, m), foot, height, lean, 3 * size);
    }
    context.fill();
  }
}
