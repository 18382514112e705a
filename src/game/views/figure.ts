/**
 * Somebody else on a bike, painted in advance at a few places of the cranks, so that a frame costs one picture: a friend in
 * their own colours, or a silhouette of one sheet of paper.
 */
import type { Bike } from '../../core/model/types.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import type { OutfitLook } from '../../core/settings/outfit.ts';
import type { Context } from '../paint/pen.ts';
import { type Palette, riderTones } from '../paint/palette.ts';
import { createSheet, finish, type Picture } from '../paint/sheet.ts';
import { BikeView } from './bike.ts';
import { bikeShapeFor, bodyFor } from './bikeShape.ts';
import type { Camera, Layout } from './layout.ts';
import { ScenePlace } from './place.ts';
import { Poser } from './pose.ts';
import { RiderView } from './rider.ts';

/** Places of the cranks that are painted. */
const PHASES = 10;
/** Who waves stands with the near foot low. */
const WAVING_PHASE = 4;
const ROOM_M = 0.16;

interface FigureLook {
  readonly bike: Bike;
  readonly child: boolean;
  readonly kit: OutfitLook;
  /** The paper of a silhouette, or null for all colours. */
  readonly silhouette: string | null;
}

/** One other rider. */
export class Figure {
  readonly #pictures: readonly Picture[];
  readonly #left: number;
  readonly #top: number;
  readonly #width: number;
  readonly #height: number;
  readonly #rearX: number;
  readonly #frontX: number;
  readonly #axleHeight: number;
  /** Where a shoulder is, to wave from (m, origin at the crank axle). */
  readonly shoulder: Readonly<{ x: number; y: number }>;
  readonly #place = new ScenePlace();

  /** `frame` is any frame of a ride on this bike; what it shows beyond the cranks is painted in all phases. */
  constructor(layout: Layout, palette: Palette, look: FigureLook, frame: RideFrame) {
    const { bike, child, kit, silhouette } = look;
    const body = bodyFor(child);
    const shape = bikeShapeFor(bike, body);
    const tones = riderTones(child, kit);
    const pxPerM = layout.riderPxPerM * layout.deviceScale;
    this.#left = shape.rear.x - shape.wheelRadius - ROOM_M;
    this.#top = shape.bar.y - body.torso - 0.34 - ROOM_M;
    this.#width = shape.front.x + shape.wheelRadius + ROOM_M - this.#left;
    this.#height = shape.axleHeight + 0.04 - this.#top;
    this.#rearX = shape.rear.x;
    this.#frontX = shape.front.x;
    this.#axleHeight = shape.axleHeight;
    const poser = new Poser(shape, body, true);
    const rider = new RiderView(body, tones, kit, child, pxPerM);
    const ridden = new BikeView(shape, bike, palette, tones, 0.34, pxPerM);
    // The last one has an arm to wave with.
    this.#pictures = Array.from({ length: PHASES + 1 }, (_, i) => {
      const phase = i < PHASES ? i : WAVING_PHASE;
      const sheet = createSheet(this.#width, this.#height, pxPerM);
      const now: RideFrame = {
        ...frame,
        crankTurns: phase / PHASES,
        wheelTurns: phase / PHASES,
        phase: 'riding',
        outOfSaddle: false,
        shift: null,
        chainOn: true,
        pressureRatio: 0.6,
        slopeRatio: 0,
      };
      poser.update(now, 0, 1);
      const { context } = sheet;
      const place = new ScenePlace();
      place.set(-this.#left * pxPerM, -this.#top * pxPerM, 0, pxPerM);
      rider.drawFar(context, place, poser.pose);
      ridden.drawFar(context, place, now);
      ridden.drawNear(context, place, now);
      rider.drawNear(context, place, poser.pose, i < PHASES);
      if (silhouette !== null) {
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.globalCompositeOperation = 'source-in';
        context.fillStyle = silhouette;
        context.fillRect(0, 0, sheet.canvas.width, sheet.canvas.height);
      }
      return finish(sheet);
    });
    this.shoulder = { x: poser.pose.shoulder.x, y: poser.pose.shoulder.y };
  }

  /**
   * Lays the figure on the road at `distanceM`, and leaves the context in its metres round the crank axle; false where it
   * is out of the picture. The caller sets the transform back.
   */
  draw(
    context: Context,
    layout: Layout,
    camera: Camera,
    distanceM: number,
    crankTurns: number | 'waving',
  ): boolean {
    const scale = layout.riderPxPerM;
    const x = camera.screenX(layout, distanceM);
    if (x < -scale * 1.4 || x > layout.width + scale * 1.4) return false;
    const device = layout.deviceScale;
    const rearY = camera.roadY(layout, x + this.#rearX * scale);
    const frontY = camera.roadY(layout, x + this.#frontX * scale);
    const tilt = Math.atan2(frontY - rearY, (this.#frontX - this.#rearX) * scale);
    const share = -this.#rearX / (this.#frontX - this.#rearX);
    const roadY = rearY + (frontY - rearY) * share - 3 * layout.propScale;
    const upX = Math.sin(tilt) * this.#axleHeight * scale;
    const upY = -Math.cos(tilt) * this.#axleHeight * scale;
    this.#place.set((x + upX) * device, (roadY + upY) * device, tilt, scale * device);
    this.#place.home(context);
    const phase =
      crankTurns === 'waving' ? PHASES : Math.floor((crankTurns - Math.floor(crankTurns)) * PHASES) % PHASES;
    const picture = this.#pictures[phase];
    if (picture) context.drawImage(picture.image, this.#left, this.#top, this.#width, this.#height);
    return true;
  }
}
