/**
 * The road as a ring of textures, each a 24 m stretch painted ahead of time, one step per frame. Decides
 * which stretch sits in which slot; what a stretch looks like is `chunkPaint.ts`.
 */
import type { Course } from '../../core/course/types.ts';
import type { Context } from '../paint/pen.ts';
import { createSheet, type PaintSheet, snap } from '../paint/sheet.ts';
import type { ChunkJob } from './chunkJob.ts';
import { PAINT_STEPS } from './chunkPaint.ts';
import { CHUNK_M, roadHeightM } from './layout.ts';
import { strokesBefore } from './roadInk.ts';
import type { Staging } from './staging.ts';
import { chunkAt, remainder, slotsNeeded } from './tiles.ts';

interface Slot {
  readonly sheet: PaintSheet;
  chunk: number;
  topM: number;
  job: ChunkJob | null;
  /** Painting steps done; the stretch is complete when there are none left. */
  steps: number;
}

/** Draws the road; `prepare` before the first frame fills every slot at once. */
export class Ground {
  readonly #staging: Staging;
  readonly #slots: Slot[] = [];
  readonly #strokes: Float64Array;
  readonly #roomPx: number;

  constructor(staging: Staging) {
    this.#staging = staging;
    const { layout, course } = staging;
    this.#strokes = strokesBefore(course, layout.pxPerM);
    this.#roomPx = Math.round(190 * layout.propScale);
    // As much room below the road as above it.
    const height = this.#roomPx * 2 + Math.ceil(largestRangeM(course) * layout.heightPxPerM);
    const count = slotsNeeded(layout.width / layout.pxPerM);
    for (let i = 0; i < count; i++) {
      const sheet = createSheet(CHUNK_M * layout.pxPerM, height, layout.deviceScale);
      this.#slots.push({ sheet, chunk: Number.NaN, topM: 0, job: null, steps: 0 });
    }
  }

  /** Paints what can be seen and the next stretch now, so that the ride does not begin with painting. */
  prepare(): void {
    const { leftM, rightM } = this.#staging.camera;
    for (let chunk = chunkAt(leftM); chunk <= chunkAt(rightM) + 1; chunk++)
      this.#paint(chunk, PAINT_STEPS.length);
  }

  draw(context: Context): void {
    const { layout, palette, camera } = this.#staging;
    const last = chunkAt(camera.rightM);
    this.#paint(last + 1, 1);
    context.fillStyle = palette.earthDeep;
    for (let chunk = chunkAt(camera.leftM); chunk <= last; chunk++) {
      const slot = this.#paint(chunk, PAINT_STEPS.length);
      if (!slot) continue;
      const x = camera.screenX(chunk * CHUNK_M);
      const y = snap(camera.screenY(slot.topM) - this.#roomPx, layout.deviceScale);
      const { width, height, canvas } = slot.sheet;
      const bottom = y + height - 2;
      if (bottom < layout.height) context.fillRect(x, bottom, width, layout.height - bottom);
      context.drawImage(canvas, x, y, width, height);
    }
  }

  /** Does at most `most` of the steps that are left of a stretch, and returns its slot. */
  #paint(chunk: number, most: number): Slot | undefined {
    const slot = this.#slots[remainder(chunk, this.#slots.length)];
    if (!slot) return undefined;
    if (slot.chunk !== chunk) this.#assign(slot, chunk);
    for (let done = 0; done < most && slot.steps < PAINT_STEPS.length && slot.job; done++) {
      PAINT_STEPS[slot.steps]?.(slot.job);
      slot.steps++;
    }
    return slot;
  }

  #assign(slot: Slot, chunk: number): void {
    const { layout, course } = this.#staging;
    const line = layout.heightPxPerM * layout.deviceScale;
    slot.chunk = chunk;
    slot.steps = 0;
    // On whole device pixels, so that neighbouring stretches round alike and meet without a step.
    slot.topM = Math.ceil(highestM(course, chunk) * line) / line;
    slot.job = {
      ...this.#staging,
      sheet: slot.sheet,
      context: slot.sheet.context,
      size: layout.propScale,
      strokes: this.#strokes,
      fromM: chunk * CHUNK_M,
      toM: (chunk + 1) * CHUNK_M,
      topM: slot.topM,
      roomPx: this.#roomPx,
    };
  }
}

function highestM(course: Course, chunk: number): number {
  let highest = Number.NEGATIVE_INFINITY;
  for (let m = chunk * CHUNK_M; m <= (chunk + 1) * CHUNK_M; m++)
    highest = Math.max(highest, roadHeightM(course, m));
  return highest;
}

/** Largest difference of height within any one stretch (m). */
function largestRangeM(course: Course): number {
  let largest = 0.5;
  const last = chunkAt(course.lengthM) + 2;
  for (let chunk = -2; chunk <= last; chunk++) {
    const top = highestM(course, chunk);
    for (let m = chunk * CHUNK_M; m <= (chunk + 1) * CHUNK_M; m++) {
      largest = Math.max(largest, top - roadHeightM(course, m));
    }
  }
  return largest;
}
