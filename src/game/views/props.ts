/**
 * What people put beside the road, painted into its chunk: plain posts every 50 m, a sign with the percent where a
 * pitch begins, the board and bar of a stop line. Things near a chunk's edge are painted in both.
 */
import { createFormat } from '../../words/format.ts';
import { octagon, polygon } from '../paint/pen.ts';
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
  const { context, size } = job;
  for (const pitch of job.course.pitches) if (inReach(job, pitch.footM)) paintFoot(job, pitch.footM);
  for (const lineM of job.course.stopLinesM) {
    if (!inReach(job, lineM)) continue;
    context.lineCap = 'butt';
    context.strokeStyle = job.palette.ink;
    context.lineWidth = 3 * size;
    context.setLineDash([5 * size, 4 * size]);
    context.beginPath();
    for (let m = lineM - 3; m <= lineM; m += 0.5)
      context.lineTo(columnOf(job, m), lineOfRoad(job, m) + 4 * size);
    context.stroke();
    context.setLineDash([]);
    context.lineWidth = 6 * size;
    context.beginPath();
    context.moveTo(columnOf(job, lineM) + 3 * size, lineOfRoad(job, lineM) - 3 * size);
    context.lineTo(columnOf(job, lineM) - 1 * size, lineOfRoad(job, lineM) + 9 * size);
    context.stroke();
  }
}

/**
 * Where a pitch begins, the road says so itself: blocks of ink on the surface that draw together towards the
 * foot, and there a row of kerb stones down through the band.
 */
function paintFoot(job: ChunkJob, footM: number): void {
  const { context, palette, size } = job;
  context.lineCap = 'butt';
  context.strokeStyle = palette.ink;
  context.lineWidth = 4.6 * size;
  let m = footM - 0.5;
  for (let block = 0; block < 5; block++) {
    context.beginPath();
    context.moveTo(columnOf(job, m), lineOfRoad(job, m) + 3 * size);
    context.lineTo(columnOf(job, m - 0.42), lineOfRoad(job, m - 0.42) + 3 * size);
    context.stroke();
    m -= 0.85 + block * 0.32;
  }
  const x = columnOf(job, footM);
  const y = lineOfRoad(job, footM) - 4 * size;
  const tall = 9.5 * size;
  for (let stone = 0; stone < 4; stone++) {
    context.fillStyle = stone % 2 === 0 ? palette.ink : palette.paper;
    context.fillRect(x - 4 * size, y + stone * tall, 8 * size, tall);
  }
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
  context.fillStyle = job.palette.ink;
  context.fillRect(left, y - tall * 0.78, wide, tall * 0.2);
}

/** The wood of stout posts. */
function woodOf({ palette }: ChunkJob): string {
  return mix(palette.ink, '#6b5a48', 0.45);
}

/** A board on a stout post at the foot of a pitch: a wedge of ink and the percent. */
function paintPitchSign(job: ChunkJob, footM: number, steepestRatio: number): void {
  const { context } = job;
  const size = Math.max(0.8, job.layout.propScale);
  const x = columnOf(job, footM);
  const y = lineOfRoad(job, footM) - 2;
  context.fillStyle = woodOf(job);
  context.fillRect(x - 4 * size, y - 74 * size, 8 * size, 78 * size);
  const wide = (job.scenery.numbers ? (steepestRatio >= 0.095 ? 96 : 82) : 40) * size;
  const tall = 38 * size;
  const top = y - 104 * size;
  context.fillStyle = job.palette.paper;
  context.beginPath();
  context.roundRect(x - wide / 2, top, wide, tall, 5 * size);
  context.fill();
  context.shadowColor = 'transparent';
  context.strokeStyle = job.palette.ink;
  context.lineWidth = 2.2 * size;
  context.beginPath();
  context.roundRect(x - wide / 2 + 3 * size, top + 3 * size, wide - 6 * size, tall - 6 * size, 3 * size);
  context.stroke();
  context.fillStyle = job.palette.ink;
  const rise = Math.min(15, steepestRatio * 110) * size;
  context.beginPath();
  context.moveTo(x - wide / 2 + 9 * size, top + tall - 10 * size);
  context.lineTo(x - wide / 2 + 28 * size, top + tall - 10 * size);
  context.lineTo(x - wide / 2 + 28 * size, top + tall - 10 * size - rise);
  context.closePath();
  context.fill();
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
  const { context } = job;
  const size = Math.max(0.8, job.layout.propScale);
  const x = columnOf(job, lineM) + 16 * size;
  const y = lineOfRoad(job, lineM + 0.7) - 2;
  context.fillStyle = woodOf(job);
  context.fillRect(x - 3.5 * size, y - 74 * size, 7 * size, 78 * size);
  octagon(context, job.palette.ink, x, y - 86 * size, 28 * size);
  context.shadowColor = 'transparent';
  octagon(context, job.palette.attention, x, y - 86 * size, 24.5 * size);
  context.fillStyle = job.palette.ink;
  context.fillRect(x - 15 * size, y - 91 * size, 30 * size, 10 * size);
}

/** Two tall posts with a chequered ribbon where the ride ends. */
function paintFinish(job: ChunkJob, endM: number): void {
  const { context, size } = job;
  const x = columnOf(job, endM);
  const y = lineOfRoad(job, endM) - 2;
  const wide = 92 * size;
  context.fillStyle = woodOf(job);
  context.fillRect(x - wide / 2 - 3 * size, y - 176 * size, 7 * size, 180 * size);
  context.fillRect(x + wide / 2 - 3 * size, y - 176 * size, 7 * size, 180 * size);
  context.fillStyle = job.palette.paper;
  context.fillRect(x - wide / 2, y - 172 * size, wide, 30 * size);
  context.shadowColor = 'transparent';
  context.fillStyle = job.palette.ink;
  const cell = 10 * size;
  for (let row = 0; row < 3; row++) {
    for (let column = row % 2; column * cell < wide - 1; column += 2) {
      context.fillRect(
        x - wide / 2 + column * cell,
        y - 172 * size + row * cell,
        Math.min(cell, wide - column * cell),
        cell,
      );
    }
  }
}
