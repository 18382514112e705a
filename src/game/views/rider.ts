/**
 * Lays the person on the bike together from pieces of cut paper: far limbs, then (after the bike) trunk, near
 * leg, head and near arm. The pieces are painted once; where they go in a frame comes from `pose.ts`.
 */
import type { Context } from '../paint/pen.ts';
import type { RiderTones } from '../paint/palette.ts';
import type { OutfitLook } from '../../core/settings/outfit.ts';
import type { BodyShape } from './bikeShape.ts';
import { HeadView } from './head.ts';
import type { Spot } from './legs.ts';
import type { ScenePlace } from './place.ts';
import type { LegPose, Pose } from './pose.ts';
import { paintSide, paintTrunk, type SidePieces } from './riderPieces.ts';
import type { Sprite } from './sprite.ts';

/** How far the far arm reaches ahead of the near one, and lies above it (m). */
const FAR_ARM_X = 0.05;
const FAR_ARM_Y = -0.004;

/** The rider of one ride. */
export class RiderView {
  readonly #body: BodyShape;
  readonly #head: HeadView;
  readonly #near: SidePieces;
  readonly #far: SidePieces;
  readonly #trunk: Sprite;

  /** `pxPerM` in device pixels. */
  constructor(body: BodyShape, tones: RiderTones, kit: OutfitLook, child: boolean, pxPerM: number) {
    this.#body = body;
    this.#head = new HeadView(body.head, tones, kit.helmet, child, pxPerM);
    this.#near = paintSide(body, tones, false, pxPerM);
    this.#far = paintSide(body, tones, true, pxPerM);
    this.#trunk = paintTrunk(body, tones, kit.pattern, pxPerM);
  }

  /** Limbs on the far side, drawn before the bike. */
  drawFar(context: Context, place: ScenePlace, pose: Pose): void {
    this.#drawArm(context, place, pose, this.#far, FAR_ARM_X, FAR_ARM_Y);
    this.#drawLeg(context, place, pose.far, pose.hip, this.#far);
  }

  /** Trunk, near leg, head and near arm (unless that does something else), drawn after the bike. */
  drawNear(context: Context, place: ScenePlace, pose: Pose, withArm = true): void {
    const { torso } = this.#body;
    const { hip, shoulder } = pose;
    const alongX = (shoulder.x - hip.x) / torso;
    const alongY = (shoulder.y - hip.y) / torso;
    // A breath widens the chest.
    place.aim(context, hip.x, hip.y, alongX, alongY, 1 + pose.breath * 5);
    this.#trunk.draw(context);
    this.#drawLeg(context, place, pose.near, hip, this.#near);
    this.#head.draw(context, place, pose);
    if (withArm) this.#drawArm(context, place, pose, this.#near);
  }

  #drawLeg(context: Context, place: ScenePlace, leg: LegPose, hip: Readonly<Spot>, pieces: SidePieces): void {
    const { thigh, shank } = this.#body;
    place.turn(context, leg.pedal.x, leg.pedal.y, leg.toeDownRad);
    pieces.foot.draw(context);
    bone(context, place, leg.knee, leg.ankle, shank, pieces.shank);
    bone(context, place, hip, leg.knee, thigh, pieces.thigh);
  }

  #drawArm(context: Context, place: ScenePlace, pose: Pose, pieces: SidePieces, x = 0, y = 0): void {
    const { upperArm, forearm } = this.#body;
    bone(context, place, pose.elbow, pose.hand, forearm, pieces.forearm, x, y);
    bone(context, place, pose.shoulder, pose.elbow, upperArm, pieces.upperArm, x, y);
  }
}

/** Lays a piece painted `length` long from one joint to the next, both moved by (x, y). */
function bone(
  context: Context,
  place: ScenePlace,
  from: Readonly<Spot>,
  to: Readonly<Spot>,
  length: number,
  piece: Sprite,
  x = 0,
  y = 0,
): void {
  place.aim(context, from.x + x, from.y + y, (to.x - from.x) / length, (to.y - from.y) / length, 1);
  piece.draw(context);
}
