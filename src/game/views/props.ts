/**
 * What people put beside the road, painted into its chunk: plain posts every 50 m, a sign with the percent where a
 * pitch begins, the board and bar of a stop line. Things near a chunk's edge are painted in both.
 */
import { createFormat } from '../../words/format.ts';
import { blot, box, line, octagon, polygon } from '../paint/pen.ts';
import { castShadow, dropShadow, mix } from '../paint/sheet.ts';
import { type ChunkJob, columnOf, inReach, lineOfRoad } from './chunkJob.ts';
import { postPlaces } from './posts.ts';
import { paintRoadside } from './roadside.ts';

/** Trees, posts and boards: everything the rider passes in front of. */
export function paintPropsBehind(job: ChunkJob): void {
  const { course } = job;
  paintRoadside(job);
  const set = (m: number, paint: (job: ChunkJob, m: number) => void): void => {
    if (!inReach(job, m)) return;
    castShadow(job.sheet, job.palette.shadow, 0.32, 5, 3, 2);
    paint(job, m);
  };
  for (const m of postPlaces(course)) set(m, paintPost);
  for (const { footM, steepestRatio } of course.pitches)
    set(footM, () => paintPitchSign(job, footM, steepestRatio));
  for (const lineM of course.stopLinesM) set(lineM, paintStopBoard);
  set(course.lengthM, paintFinish);
  dropShadow(job.context);
}

/** Marks that lie on the road itself. */
export function paintPropsInFront(job: ChunkJob): void {
  const { context, palette, size } = job;
  for (const pitch of job.course.pitches) if (inReach(job, pitch.footM)) paintFoot(job, pitch.footM);
  for (const lineM of job.course.stopLinesM) {
    if (!inReach(job, lineM)) continue;
    context.lineCap = 'butt';
    context.strokeStyle = palette.ink;
    context.lineWidth = 3 * size;
    context.setLineDash([5 * size, 4 * size]);
    context.beginPath();
    for (let m = lineM - 3; m <= lineM; m += 0.5)
      context.lineTo(columnOf(job, m), lineOfRoad(job, m) + 4 * size);
    context.stroke();
    context.setLineDash([]);
    const x = columnOf(job, lineM);
    const y = lineOfRoad(job, lineM);
    line(context, palette.ink, 6 * size, [x + 3 * size, y - 3 * size], [x - size, y + 9 * size]);
  }
}

/**
 * Where a pitch begins, the road says so itself: blocks of ink on the surface that draw together towards the
 * foot, and there a row of kerb stones down through the band.
 */
function paintFoot(job: ChunkJob, footM: number): void {
  const { context, palette, size } = job;
  const onRoad = (m: number) => [columnOf(job, m), lineOfRoad(job, m) + 3 * size] as const;
  context.lineCap = 'butt';
  let m = footM - 0.5;
  for (let block = 0; block < 5; block++) {
    line(context, palette.ink, 4.6 * size, onRoad(m), onRoad(m - 0.42));
    m -= 0.85 + block * 0.32;
  }
  const x = columnOf(job, footM);
  const y = lineOfRoad(job, footM) - 4 * size;
  const tall = 9.5 * size;
  for (let stone = 0; stone < 4; stone++)
    box(
      context,
      stone % 2 === 0 ? palette.ink : palette.paper,
      x - 4 * size,
      y + stone * tall,
      8 * size,
      tall,
    );
  context.strokeStyle = palette.ink;
  context.lineWidth = 1.6 * size;
  context.strokeRect(x - 4 * size, y, 8 * size, tall * 4);
}

function paintPost(job: ChunkJob, distanceM: number): void {
  const { context, size } = job;
  const y = lineOfRoad(job, distanceM) - 2 * size;
  const tall = 44 * size;
  const wide = 9 * size;
  const left = columnOf(job, distanceM) - wide / 2;
  const right = left + wide;
  polygon(
    context,
    job.palette.paper,
    [left, y + 4],
    [left, y - tall + 4 * size],
    [right, y - tall],
    [right, y + 4],
  );
  context.shadowColor = 'transparent';
  box(context, job.palette.ink, left, y - tall * 0.78, wide, tall * 0.2);
}

/** The wood of stout posts. */
function woodOf({ palette }: ChunkJob): string {
  return mix(palette.ink, '#6b5a48', 0.45);
}

/** A board on a stout post at the foot of a pitch: a wedge of ink and the percent. */
function paintPitchSign(job: ChunkJob, footM: number, steepestRatio: number): void {
  const { context, palette } = job;
  const size = Math.max(0.8, job.layout.propScale);
  const x = columnOf(job, footM);
  const y = lineOfRoad(job, footM) - 2;
  box(context, woodOf(job), x - 4 * size, y - 74 * size, 8 * size, 78 * size);
  const wide = (job.scenery.numbers ? (steepestRatio >= 0.095 ? 96 : 82) : 40) * size;
  const tall = 38 * size;
  const top = y - 104 * size;
  const left = x - wide / 2;
  box(context, palette.paper, left, top, wide, tall, 5 * size);
  context.shadowColor = 'transparent';
  context.strokeStyle = palette.ink;
  context.lineWidth = 2.2 * size;
  context.beginPath();
  context.roundRect(left + 3 * size, top + 3 * size, wide - 6 * size, tall - 6 * size, 3 * size);
  context.stroke();
  const rise = Math.min(15, steepestRatio * 110);
  blot(context, palette.ink, `M9 -10 L28 -10 L28 ${-10 - rise} Z`, left, top + tall, size);
  if (job.scenery.numbers) {
    context.font = `800 ${Math.round(19 * size)}px system-ui, sans-serif`;
    context.textAlign = 'center';
    context.textBaseline = 'middle';
    const percent = createFormat('metric').percent(steepestRatio);
    context.fillText(percent, x + 14 * size, top + tall / 2 + 1);
  }
}

/** An eight-sided board with a bar across: attention colour, and a shape nobody mistakes. */
function paintStopBoard(job: ChunkJob, lineM: number): void {
  const { context, palette } = job;
  const size = Math.max(0.8, job.layout.propScale);
  const x = columnOf(job, lineM) + 16 * size;
  const y = lineOfRoad(job, lineM + 0.7) - 2;
  box(context, woodOf(job), x - 3.5 * size, y - 74 * size, 7 * size, 78 * size);
  octagon(context, palette.ink, x, y - 86 * size, 28 * size);
  context.shadowColor = 'transparent';
  octagon(context, palette.attention, x, y - 86 * size, 24.5 * size);
  box(context, palette.ink, x - 15 * size, y - 91 * size, 30 * size, 10 * size);
}

/** Two tall posts with a chequered ribbon where the ride ends. */
function paintFinish(job: ChunkJob, endM: number): void {
  const { context, palette, size } = job;
  const y = lineOfRoad(job, endM) - 2;
  const wide = 92 * size;
  const left = columnOf(job, endM) - wide / 2;
  const right = left + wide;
  for (const x of [left, right])
    box(context, woodOf(job), x - 3 * size, y - 176 * size, 7 * size, 180 * size);
  box(context, palette.paper, left, y - 172 * size, wide, 30 * size);
  context.shadowColor = 'transparent';
  const cell = 10 * size;
  for (let row = 0; row < 3; row++)
    for (let x = left + (row % 2) * cell; x < right - 1; x += 2 * cell)
      box(context, palette.ink, x, y - 172 * size + row * cell, Math.min(cell, right - x), cell);
}
