/**
 * Where things sit for a given canvas size, and the camera that follows the road. Pure numbers: it turns
 * metres along the road into CSS pixels and leaves all drawing to the views.
 */
import type { Course } from '../../core/course/types.ts';
import { clamp, sampleAt } from '../../core/math/numbers.ts';
import { VERTICAL_EXAGGERATION } from '../engine/types.ts';

/** Length of road on one texture (m); whole pixels wide, so that textures meet without a seam. */
export const CHUNK_M = 24;
const AHEAD_WIDE_M = 40;
const AHEAD_NARROW_M = 26;
/** On a phone on its side the road lies higher, above the pads, which would cover the hill that is coming. */
const LOW_SCREEN_PX = 480;

/** Fixed measures of a picture. */
export type Layout = Readonly<ReturnType<typeof layoutFor>>;

/**
 * Measures for a canvas of `width` x `height` CSS pixels; a child is drawn nearer than an adult so that its face can be
 * seen; a portrait screen keeps its lower half for instruments and pads.
 */
export function layoutFor(width: number, height: number, deviceScale: number, childRider = false) {
  const portrait = height > width;
  const riderX = width * (portrait ? 0.31 : 0.32);
  const narrow = clamp((1280 - width) / 890, 0, 1);
  const aheadM = AHEAD_WIDE_M + (AHEAD_NARROW_M - AHEAD_WIDE_M) * narrow;
  const chunkPx = Math.round(((width - riderX) / aheadM) * CHUNK_M);
  const pxPerM = chunkPx / CHUNK_M;
  const riderPxPerM = clamp(
    Math.min(width / (portrait ? 5.9 : 9.2), height / (portrait ? 8.8 : 5.5)),
    58,
    150,
  );
  return {
    width,
    height,
    deviceScale,
    pxPerM,
    heightPxPerM: pxPerM * VERTICAL_EXAGGERATION,
    /** Size of bike and rider: CSS pixels per metre of theirs. */
    riderPxPerM: riderPxPerM * (childRider ? 1.22 : 1),
    /** Scale of roadside things, 1 at 1280 x 720. */
    propScale: clamp(riderPxPerM / 126, 0.62, 1.2),
    riderX,
    groundY: height * (portrait ? 0.45 : height < LOW_SCREEN_PX ? 0.58 : 0.665),
  };
}

/** Road height with the road carried on straight before its start and past its end (m). */
export function roadHeightM(course: Course, distanceM: number): number {
  const height = sampleAt(course.heightM, distanceM);
  if (distanceM < 0) return height + distanceM * (course.slopeRatio[0] ?? 0) * 0.4;
  const over = distanceM - (course.heightM.length - 1);
  return over > 0 ? height + over * sampleAt(course.slopeRatio, course.heightM.length) * 0.4 : height;
}

/** Follows the rider: height smoothly, a little ahead of slope and speed. One per picture, changed in place. */
export class Camera {
  distanceM = 0;
  heightM = 0;
  /** Where the rider stands on screen (CSS pixels). */
  riderX = 0;
  /** Road left of the picture (CSS pixels), on whole device pixels: unfiltered drawing is crisper and cheaper. */
  scrollPx = 0;
  #settled = false;
  readonly #layout: Layout;
  readonly #course: Course;
  readonly #reducedMotion: boolean;

  constructor(layout: Layout, course: Course, reducedMotion: boolean) {
    this.#layout = layout;
    this.#course = course;
    this.#reducedMotion = reducedMotion;
  }

  /** Goes where the rider is; the first time it jumps there. */
  update(distanceM: number, speedMps: number, elapsedS: number): void {
    const layout = this.#layout;
    const here = roadHeightM(this.#course, distanceM);
    const ahead =
      (roadHeightM(this.#course, distanceM + 12) + roadHeightM(this.#course, distanceM + 30)) * 0.5 - here;
    const targetHeight = here + ahead * (ahead < 0 ? 0.8 : 0.45);
    const speedShare = clamp(speedMps / 14, 0, 1);
    // Close up behind the rider on a climb; downhill it lets go, and the road ahead opens.
    const slope = sampleAt(this.#course.slopeRatio, distanceM);
    const lean = clamp(slope / 0.08, -1, 1) * (slope > 0 ? 0.022 : 0.03);
    const targetX =
      layout.riderX + (this.#reducedMotion ? 0 : layout.width * (lean - 0.045 * (speedShare - 0.4)));
    const hold = this.#reducedMotion ? 3.2 : slope > 0 ? 4 : 2.4;
    const share = this.#settled ? 1 - 1 / (1 + elapsedS * hold) : 1;
    const shareX = this.#settled ? 1 - 1 / (1 + elapsedS * 0.9) : 1;
    this.distanceM = distanceM;
    this.heightM += (targetHeight - this.heightM) * share;
    this.riderX = this.#settled ? this.riderX + (targetX - this.riderX) * shareX : targetX;
    const scale = layout.deviceScale;
    this.scrollPx = Math.round((distanceM * layout.pxPerM - this.riderX) * scale) / scale;
    this.#settled = true;
  }

  /** How far it stands above the start of the road (m). */
  get riseM(): number {
    return this.heightM - (this.#course.heightM[0] ?? 0);
  }

  /** The road at the left and at the right edge of the picture (m). */
  get leftM(): number {
    return this.distanceM - this.riderX / this.#layout.pxPerM;
  }

  get rightM(): number {
    return this.distanceM + (this.#layout.width - this.riderX) / this.#layout.pxPerM;
  }

  screenX(distanceM: number): number {
    return distanceM * this.#layout.pxPerM - this.scrollPx;
  }

  screenY(heightM: number): number {
    return this.#layout.groundY - (heightM - this.heightM) * this.#layout.heightPxPerM;
  }

  /** Road under a screen column (CSS pixels from the top). */
  roadY(x: number): number {
    return this.screenY(roadHeightM(this.#course, (x + this.scrollPx) / this.#layout.pxPerM));
  }
}
