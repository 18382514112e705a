/**
 * Tall tufts on the near verge that bend: with the wind of the place, in gusts, and away from a rider who passes.
 * A few shapes are painted once and leant over by one matrix each; the short grass around them keeps still.
 */
import type { Course } from '../../core/course/types.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import type { Context } from '../paint/pen.ts';
import type { Palette } from '../paint/palette.ts';
import { traceGrass } from '../paint/plants.ts';
import { seededStream } from '../paint/seeded.ts';
import { mix } from '../paint/sheet.ts';
import { VERGE_DROP_PX } from './chunkPaint.ts';
import { type Layout, roadHeightM } from './layout.ts';
import { firstFrom, sampleAt } from '../../core/math/numbers.ts';
import { paintSprite, type Sprite } from './sprite.ts';
import type { Staging } from './staging.ts';
import { bendRatio } from './wind.ts';

/** Mean distance between two tufts (m), and how many shapes there are. */
const EVERY_M = 7;
const SHAPES = 4;
/** A tuft (CSS px at scale 1): half its width with room to lean, and its height. */
const HALF_PX = 26;
const TALL_PX = 40;
/** Steeper road carries ink that must be read: no tall grass there. */
const STEEP_RATIO = 0.02;
/** How far a rider's draught reaches (m), and how much it bends at 10 m/s. */
const DRAUGHT_M = 1.6;
const DRAUGHT_BEND = 0.5;

/** The moving grass of one road. */
export class Grass {
  readonly #staging: Staging;
  readonly #shapes: readonly Sprite[];
  readonly #placesM: readonly number[];

  constructor(staging: Staging) {
    this.#staging = staging;
    const { layout, palette, course, scenery } = staging;
    this.#placesM = tuftPlaces(course, scenery.seed);
    this.#shapes = Array.from({ length: SHAPES }, (_, shape) =>
      paintTuft(layout, palette, scenery.seed + shape),
    );
  }

  draw(context: Context, frame: RideFrame): void {
    const { layout, course, camera, look } = this.#staging;
    const still = look.reducedMotion;
    const device = layout.deviceScale;
    const left = camera.distanceM - (camera.riderX + HALF_PX) / layout.pxPerM;
    const right = camera.distanceM + (layout.width - camera.riderX + HALF_PX) / layout.pxPerM;
    const drop = VERGE_DROP_PX * layout.propScale;
    const places = this.#placesM;
    for (let i = firstFrom(places.length, (at) => places[at] as number, left); i < places.length; i++) {
      const m = places[i] ?? 0;
      if (m > right) break;
      const windMps = sampleAt(course.windMps, m);
      const bend =
        bendRatio(windMps, still ? 0 : frame.timeS, m) + (still ? 0 : draught(m - frame.distanceM, frame));
      const x = camera.screenX(m) * device;
      const y = (camera.screenY(roadHeightM(course, m)) + drop) * device;
      context.setTransform(device, 0, -bend * device, device, x, y);
      this.#shapes[i % SHAPES]?.draw(context);
    }
    context.setTransform(device, 0, 0, device, 0, 0);
  }
}

/** How far the passing of a rider bends what stands so far ahead of them. */
function draught(aheadM: number, { speedMps }: RideFrame): number {
  const near = aheadM / DRAUGHT_M;
  return (DRAUGHT_BEND * Math.min(1.2, speedMps / 10)) / (1 + near * near * 4);
}

/** Where tufts stand (m), ascending: scattered, but not where the road's ink must be read. */
export function tuftPlaces(course: Course, seed: number): readonly number[] {
  const random = seededStream(seed * 29 + 5);
  const places: number[] = [];
  for (let m = -20; m < course.lengthM + 60; m += EVERY_M * (0.5 + random()))
    if (Math.abs(sampleAt(course.slopeRatio, m)) < STEEP_RATIO) places.push(m);
  return places;
}

function paintTuft(layout: Layout, palette: Palette, seed: number): Sprite {
  const size = layout.propScale;
  const half = HALF_PX * size;
  const tall = TALL_PX * size;
  const random = seededStream(seed * 41 + 3);
  const foot = 4 * size;
  return paintSprite(-half, -tall, half * 2, tall + foot, layout.deviceScale, (context) => {
    for (const share of [0.55, 0.09]) {
      context.fillStyle = mix(palette.verge, share > 0.4 ? palette.earth : palette.paper, share);
      context.beginPath();
      for (let blade = 0; blade < 5; blade++) {
        const x = (random() - 0.5) * half * 0.9;
        const height = tall * (0.5 + random() * 0.45);
        traceGrass(context, x, foot, height, x * 0.5 + (random() - 0.5) * 6 * size, 3.4 * size);
      }
      context.fill();
    }
  });
}
