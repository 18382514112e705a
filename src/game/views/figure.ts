/**
 * Somebody else on a bike, painted in advance at a few places of the cranks, so that a frame costs one picture: a friend in
 * their own colours, or a silhouette of one sheet of paper.
 */
import type { RideFrame } from '../../core/ride/types.ts';
import type { OutfitLook } from '../../core/settings/outfit.ts';
import { box, type Context } from '../paint/pen.ts';
import type { BikeShape } from './bikeShape.ts';
import { Cyclist } from './cyclist.ts';
import type { Spot } from './legs.ts';
import { ScenePlace } from './place.ts';
import { paintSprite, type Sprite } from './sprite.ts';
import type { Staging } from './staging.ts';

/** Places of the cranks that are painted. */
const PHASES = 10;
/** Who waves stands with the near foot low. */
const WAVING_PHASE = 4;
const ROOM_M = 0.16;

/** One other rider. */
export class Figure {
  readonly #staging: Staging;
  /** The figure at each place of the cranks, and waving. */
  readonly #phases: readonly Sprite[];
  readonly #shape: BikeShape;
  /** Where a shoulder is, to wave from (m, origin at the crank axle). */
  readonly shoulder: Readonly<Spot>;
  readonly #place = new ScenePlace();

  /**
   * Rides the player's bike. `silhouette` is the paper of a silhouette, or null for all colours; `frame` any frame of the
   * ride: what it shows beyond the cranks is painted in all phases.
   */
  constructor(staging: Staging, kit: OutfitLook, silhouette: string | null, frame: RideFrame) {
    this.#staging = staging;
    const { layout, palette, bike, look } = staging;
    const pxPerM = layout.riderPxPerM * layout.deviceScale;
    const child = look.childRider;
    const cyclist = new Cyclist({ bike, child, kit, palette, haloAlpha: 0.34, pxPerM, still: true });
    const { shape, body } = cyclist;
    this.#shape = shape;
    const left = shape.rear.x - shape.wheelRadius - ROOM_M;
    const top = shape.bar.y - body.torso - 0.34 - ROOM_M;
    const width = shape.front.x + shape.wheelRadius + ROOM_M - left;
    const height = shape.axleHeight + 0.04 - top;
    const place = new ScenePlace();
    place.set(-left * pxPerM, -top * pxPerM, 0, pxPerM);
    // The last one has an arm to wave with.
    this.#phases = Array.from({ length: PHASES + 1 }, (_, i) => {
      const phase = i < PHASES ? i : WAVING_PHASE;
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
      cyclist.update(now, 0, 1);
      return paintSprite(left, top, width, height, pxPerM, (context, { canvas }) => {
        cyclist.draw(context, place, now, i < PHASES);
        if (silhouette === null) return;
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.globalCompositeOperation = 'source-in';
        box(context, silhouette, 0, 0, canvas.width, canvas.height);
      });
    });
    this.shoulder = { ...cyclist.pose.shoulder };
  }

  /**
   * Lays the figure on the road at `distanceM`, and leaves the context in its metres round the crank axle; false where it
   * is out of the picture. The caller sets the transform back.
   */
  draw(context: Context, distanceM: number, crankTurns: number | 'waving'): boolean {
    const { layout, camera } = this.#staging;
    const { rear, front, axleHeight } = this.#shape;
    const scale = layout.riderPxPerM;
    const x = camera.screenX(distanceM);
    if (x < -scale * 1.4 || x > layout.width + scale * 1.4) return false;
    const device = layout.deviceScale;
    const rearY = camera.roadY(x + rear.x * scale);
    const frontY = camera.roadY(x + front.x * scale);
    const tilt = Math.atan2(frontY - rearY, (front.x - rear.x) * scale);
    const share = -rear.x / (front.x - rear.x);
    const roadY = rearY + (frontY - rearY) * share - 3 * layout.propScale;
    const upX = Math.sin(tilt) * axleHeight * scale;
    const upY = -Math.cos(tilt) * axleHeight * scale;
    this.#place.set((x + upX) * device, (roadY + upY) * device, tilt, scale * device);
    this.#place.home(context);
    const phase =
      crankTurns === 'waving' ? PHASES : Math.floor((crankTurns - Math.floor(crankTurns)) * PHASES) % PHASES;
    this.#phases[phase]?.draw(context);
    return true;
  }
}
