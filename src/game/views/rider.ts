/**
 * Draws the person on the bike as pieces of cut paper: far limbs, then (after the bike) trunk, near leg, head
 * and near arm, each throwing a small shadow on what lies under it. Where they go comes from `pose.ts`.
 */
import type { RiderTones } from '../paint/palette.ts';
import type { BodyShape } from './bikeShape.ts';
import { HeadView } from './head.ts';
import type { Spot } from './legs.ts';
import type { LegPose, Pose } from './pose.ts';

type Context = CanvasRenderingContext2D;

const SHADOW = 'rgba(18,24,30,0.22)';
const SHADOW_X = 0.011;
const SHADOW_Y = 0.016;

/** A limb that tapers from `startRadius` to `endRadius`. */
export function traceLimb(
  context: Context,
  from: Readonly<Spot>,
  to: Readonly<Spot>,
  startRadius: number,
  endRadius: number,
): void {
  const turn = Math.atan2(to.y - from.y, to.x - from.x);
  context.beginPath();
  context.arc(from.x, from.y, startRadius, turn + Math.PI / 2, turn - Math.PI / 2);
  context.arc(to.x, to.y, endRadius, turn - Math.PI / 2, turn + Math.PI / 2);
  context.closePath();
}

function limb(
  context: Context,
  from: Readonly<Spot>,
  to: Readonly<Spot>,
  startRadius: number,
  endRadius: number,
  tone: string,
  shadow: boolean,
): void {
  if (shadow) {
    context.translate(SHADOW_X, SHADOW_Y);
    traceLimb(context, from, to, startRadius, endRadius);
    context.fillStyle = SHADOW;
    context.fill();
    context.translate(-SHADOW_X, -SHADOW_Y);
  }
  traceLimb(context, from, to, startRadius, endRadius);
  context.fillStyle = tone;
  context.fill();
}

/** The rider of one ride. */
export class RiderView {
  readonly #body: BodyShape;
  readonly #tones: RiderTones;
  readonly #head: HeadView;
  readonly #cut: Spot = { x: 0, y: 0 };

  constructor(body: BodyShape, tones: RiderTones, child: boolean, pxPerM: number) {
    this.#body = body;
    this.#tones = tones;
    this.#head = new HeadView(body.head, tones, child, pxPerM);
  }

  /** Limbs on the far side, drawn before the bike. */
  drawFar(context: Context, pose: Pose): void {
    const tones = this.#tones;
    this.#drawArm(context, pose, true);
    this.#drawLeg(context, pose.far, pose.hip, tones.shortsDark, tones.skinDark, true);
  }

  /** Trunk, near leg, head and near arm, drawn after the bike. */
  drawNear(context: Context, pose: Pose): void {
    this.#drawTrunk(context, pose);
    this.#drawLeg(context, pose.near, pose.hip, this.#tones.shorts, this.#tones.skin, false);
    this.#head.draw(context, pose);
    this.#drawArm(context, pose, false);
  }

  #drawLeg(
    context: Context,
    leg: LegPose,
    hip: Readonly<Spot>,
    shorts: string,
    skin: string,
    far: boolean,
  ): void {
    const { girth } = this.#body;
    const shift = far ? 0.012 : 0;
    this.#drawFoot(context, leg, far);
    limb(context, leg.knee, leg.ankle, 0.054 * girth, 0.034 * girth, skin, !far);
    this.#drawCalf(context, leg, skin);
    this.#along(leg.knee, leg.ankle, 0.78);
    limb(
      context,
      this.#cut,
      leg.ankle,
      0.041 * girth,
      0.037 * girth,
      far ? this.#tones.skinDark : this.#tones.sock,
      false,
    );
    limb(context, hip, leg.knee, 0.094 * girth, 0.057 * girth, skin, !far);
    this.#along(hip, leg.knee, 0.72);
    this.#cut.x += shift;
    limb(context, hip, this.#cut, 0.1 * girth, 0.073 * girth, shorts, false);
  }

  /** The belly of the calf, a little behind the bone. */
  #drawCalf(context: Context, leg: LegPose, skin: string): void {
    const { girth } = this.#body;
    const dx = leg.ankle.x - leg.knee.x;
    const dy = leg.ankle.y - leg.knee.y;
    const length = Math.max(0.01, Math.sqrt(dx * dx + dy * dy));
    const backX = (-dy / length) * 0.017 * girth;
    const backY = (dx / length) * 0.017 * girth;
    context.fillStyle = skin;
    context.beginPath();
    context.ellipse(
      leg.knee.x + dx * 0.36 + backX,
      leg.knee.y + dy * 0.36 + backY,
      length * 0.3,
      0.05 * girth,
      Math.atan2(dy, dx),
      0,
      Math.PI * 2,
    );
    context.fill();
  }

  #drawFoot(context: Context, leg: LegPose, far: boolean): void {
    const { girth } = this.#body;
    context.save();
    context.translate(leg.pedal.x, leg.pedal.y);
    context.rotate(leg.toeDownRad);
    context.scale(girth, girth);
    context.fillStyle = far ? this.#tones.shortsDark : this.#tones.shoe;
    context.beginPath();
    context.moveTo(-0.152, -0.012);
    context.quadraticCurveTo(-0.162, -0.086, -0.112, -0.096);
    context.lineTo(-0.072, -0.088);
    context.quadraticCurveTo(-0.02, -0.05, 0.062, -0.046);
    context.quadraticCurveTo(0.098, -0.034, 0.09, -0.008);
    context.closePath();
    context.fill();
    context.fillStyle = far ? this.#tones.shortsDark : this.#tones.frame;
    context.beginPath();
    context.rect(-0.154, -0.014, 0.244, 0.02);
    context.fill();
    if (!far) {
      context.fillStyle = this.#tones.jersey;
      context.fillRect(-0.06, -0.066, 0.022, 0.052);
    }
    context.restore();
  }

  #drawTrunk(context: Context, pose: Pose): void {
    const { hip, shoulder } = pose;
    const { girth } = this.#body;
    const dx = shoulder.x - hip.x;
    const dy = shoulder.y - hip.y;
    const length = Math.max(0.01, Math.sqrt(dx * dx + dy * dy));
    context.save();
    context.transform(dx / length, dy / length, -dy / length, dx / length, hip.x, hip.y);
    context.scale(length, girth);
    context.translate(0.02, 0.018);
    this.#traceTrunk(context, pose);
    context.fillStyle = SHADOW;
    context.fill();
    context.translate(-0.02, -0.018);
    this.#traceTrunk(context, pose);
    context.fillStyle = this.#tones.jersey;
    context.fill();
    context.fillStyle = this.#tones.jerseyDark;
    context.beginPath();
    context.moveTo(-0.14, 0.1);
    context.quadraticCurveTo(0.4, 0.075, 0.93, 0.11);
    context.quadraticCurveTo(0.5, 0.165, 0.02, 0.13);
    context.fill();
    context.fillStyle = this.#tones.jerseyLight;
    context.beginPath();
    context.moveTo(-0.2, -0.075);
    context.quadraticCurveTo(0.28, -0.2, 0.82, -0.122);
    context.quadraticCurveTo(0.3, -0.155, -0.18, -0.03);
    context.fill();
    this.#drawPocket(context);
    context.restore();
    this.#drawHips(context, pose);
  }

  /** Along the spine x runs 0 to 1 from hip to shoulder; y is minus towards the back, in metres. */
  #traceTrunk(context: Context, pose: Pose): void {
    const puff = pose.breath * 1.4;
    context.beginPath();
    context.moveTo(-0.2, -0.07);
    context.bezierCurveTo(0.08, -0.165 - puff, 0.62, -0.185 - puff, 0.98, -0.092);
    context.quadraticCurveTo(1.14, -0.05, 1.1, 0.03);
    context.quadraticCurveTo(1.04, 0.115, 0.86, 0.118);
    context.quadraticCurveTo(0.45, 0.135 + puff, 0.06, 0.105);
    context.lineTo(-0.16, 0.09);
    context.closePath();
  }

  #drawPocket(context: Context): void {
    context.fillStyle = this.#tones.jerseyDark;
    context.beginPath();
    context.moveTo(-0.1, -0.092);
    context.lineTo(0.2, -0.12);
    context.lineTo(0.19, -0.03);
    context.lineTo(-0.1, -0.01);
    context.closePath();
    context.globalAlpha = 0.55;
    context.fill();
    context.globalAlpha = 1;
  }

  #drawHips(context: Context, pose: Pose): void {
    const { girth } = this.#body;
    context.fillStyle = this.#tones.shorts;
    context.beginPath();
    context.ellipse(
      pose.hip.x - 0.012,
      pose.hip.y + 0.006,
      0.122 * girth,
      0.104 * girth,
      -0.5,
      0,
      Math.PI * 2,
    );
    context.fill();
  }

  #drawArm(context: Context, pose: Pose, far: boolean): void {
    const { girth } = this.#body;
    const tones = this.#tones;
    const shift = far ? 0.05 : 0;
    context.translate(shift, far ? -0.004 : 0);
    const skin = far ? tones.skinDark : tones.skin;
    limb(context, pose.elbow, pose.hand, 0.042 * girth, 0.03 * girth, skin, !far);
    context.fillStyle = far ? tones.shortsDark : tones.shorts;
    context.beginPath();
    context.ellipse(
      pose.hand.x + 0.004,
      pose.hand.y - 0.004,
      0.046 * girth,
      0.035 * girth,
      0.35,
      0,
      Math.PI * 2,
    );
    context.fill();
    limb(context, pose.shoulder, pose.elbow, 0.056 * girth, 0.042 * girth, skin, !far);
    this.#along(pose.shoulder, pose.elbow, 0.62);
    limb(
      context,
      pose.shoulder,
      this.#cut,
      0.072 * girth,
      0.058 * girth,
      far ? tones.jerseyDark : tones.jersey,
      false,
    );
    context.translate(-shift, far ? 0.004 : 0);
  }

  #along(from: Readonly<Spot>, to: Readonly<Spot>, share: number): void {
    this.#cut.x = from.x + (to.x - from.x) * share;
    this.#cut.y = from.y + (to.y - from.y) * share;
  }
}
