/**
 * A rider on their bike, laid together in the one order there is: far limbs, bike, near limbs. For the player, for others
 * on the road and for the still on a page.
 */
import type { RideFrame } from '../../core/ride/types.ts';
import type { OutfitLook } from '../../core/settings/outfit.ts';
import { riderTones } from '../paint/palette.ts';
import type { Context } from '../paint/pen.ts';
import { BikeView } from './bike.ts';
import { type BikeShape, bikeShapeFor, bodyFor, type BodyShape } from './bikeShape.ts';
import type { BikeLook } from './bikeStill.ts';
import type { ScenePlace } from './place.ts';
import { type Pose, Poser } from './pose.ts';
import { RiderView } from './rider.ts';

/** Who rides what, and how it is painted. */
interface CyclistLook extends BikeLook {
  readonly child: boolean;
  readonly kit: OutfitLook;
}

export class Cyclist {
  readonly shape: BikeShape;
  readonly body: BodyShape;
  readonly #poser: Poser;
  readonly #rider: RiderView;
  readonly #bike: BikeView;

  constructor(look: CyclistLook) {
    const { child, kit } = look;
    this.body = bodyFor(child);
    this.shape = bikeShapeFor(look.bike, this.body);
    const tones = riderTones(child, kit);
    this.#poser = new Poser(this.shape, this.body, look.still);
    this.#rider = new RiderView(this.body, tones, kit, child, look.pxPerM);
    this.#bike = new BikeView({ ...look, shape: this.shape, tones });
  }

  get pose(): Pose {
    return this.#poser.pose;
  }

  /** Takes the pose of this frame; `slopeRad` is the slope as drawn, `elapsedS` the time since the last one. */
  update(frame: RideFrame, slopeRad: number, elapsedS: number): void {
    this.#poser.update(frame, slopeRad, elapsedS);
  }

  /** `place` is that of the crank axle; without its near arm the rider does something else with it. */
  draw(context: Context, place: ScenePlace, frame: RideFrame, withArm = true): void {
    const { pose } = this.#poser;
    this.#rider.drawFar(context, place, pose);
    this.#bike.drawFar(context, place, frame);
    this.#bike.drawNear(context, place, frame);
    this.#rider.drawNear(context, place, pose, withArm);
  }
}
