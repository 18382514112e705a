/**
 * How the rider holds themselves in this frame: hips, back, head, hands and feet, from pressure, slope, speed
 * and the cranks. Smooths between moods; knows nothing of colours or canvases.
 */
import type { RideFrame } from '../../core/ride/types.ts';
import type { BikeShape, BodyShape } from './bikeShape.ts';
import { bendTwoBones, footAngle, pedalAt, type Spot } from './legs.ts';
import { isStuck } from './stuck.ts';

/** Arms reach so much of their length. */
const MOST_REACH = 0.97;

function spot(): Spot {
  return { x: 0, y: 0 };
}

function leg() {
  return { knee: spot(), ankle: spot(), pedal: spot(), toeDownRad: 0 };
}

/** One leg, changed in place. */
export type LegPose = ReturnType<typeof leg>;

function wholeBody() {
  return {
    hip: spot(),
    shoulder: spot(),
    head: spot(),
    elbow: spot(),
    hand: spot(),
    near: leg(),
    far: leg(),
    /** Direction of the face, clockwise from looking straight ahead (rad). */
    faceRad: 0,
    /** How far the bike rocks under a standing rider (rad). */
    rockRad: 0,
    /** 0 seated to 1 standing on the pedals. */
    standing: 0,
    /** How far the chest is out (m); deeper and faster when little is left in the legs. */
    breath: 0,
    /** Swing of long hair, clockwise (rad). */
    hairRad: 0,
  };
}

/** The whole body, changed in place; metres, origin at the crank axle, y down. */
export type Pose = ReturnType<typeof wholeBody>;

function approach(from: number, to: number, elapsedS: number, perS: number): number {
  return from + (to - from) * (1 - 1 / (1 + elapsedS * perS));
}

/** Keeps the pose of one rider from frame to frame. */
export class Poser {
  readonly pose = wholeBody();
  readonly #bike: BikeShape;
  readonly #body: BodyShape;
  readonly #still: boolean;
  #lean = 0;
  #tuck = 0;
  #footDown = 0;
  #winded = 0;
  #breathTurns = 0;
  /** 1 under a chain that hangs. */
  #strain = 0;
  /** 1 when the chain has just come to rest, falling to 0. */
  #relief = 0;
  #wasMoving = false;

  constructor(bike: BikeShape, body: BodyShape, reducedMotion: boolean) {
    this.#bike = bike;
    this.#body = body;
    this.#still = reducedMotion;
  }

  /** `slopeRad` is the slope as drawn; `elapsedS` the time since the last frame. */
  update(frame: RideFrame, slopeRad: number, elapsedS: number): void {
    this.#moods(frame, elapsedS);
    this.#placeBody(frame, slopeRad);
    this.#placeLeg(this.pose.near, frame.crankTurns, this.#footDown);
    this.#placeLeg(this.pose.far, frame.crankTurns + 0.5, 0);
  }

  #moods(frame: RideFrame, elapsedS: number): void {
    const riding = frame.phase === 'riding';
    const tucks = riding && frame.slopeRatio < -0.025 && frame.speedMps > 7.5;
    const stopped = frame.phase === 'foot-down' || frame.phase === 'standing';
    const push = Math.max(0, Math.min(1, (frame.pressureRatio - 0.5) / 1.1));
    const climb = Math.max(0, Math.min(1, frame.slopeRatio / 0.12));
    this.pose.standing = approach(this.pose.standing, frame.outOfSaddle ? 1 : 0, elapsedS, 4.5);
    this.#tuck = approach(this.#tuck, tucks ? (frame.pressure === 'coast' ? 1 : 0.6) : 0, elapsedS, 2.5);
    this.#lean = approach(this.#lean, riding ? push * 0.45 + climb * 0.75 : 0, elapsedS, 3.5);
    this.#footDown = approach(this.#footDown, stopped ? 1 : 0, elapsedS, 7);
    // Winded from a third of the reserve downwards; a spent rider stays so until some is back.
    const winded = frame.spent ? 1 : Math.max(0, Math.min(1, (0.35 - frame.reserveRatio) / 0.3));
    this.#winded = approach(this.#winded, winded, elapsedS, 1.5);
    const effort = riding ? Math.min(1.3, frame.pressureRatio) : 0;
    const moves = frame.shift !== null && frame.chainOn;
    this.#strain = approach(this.#strain, isStuck(frame) ? 1 : 0, elapsedS, 14);
    this.#relief = this.#wasMoving && !moves ? 1 : approach(this.#relief, 0, elapsedS, 3);
    this.#wasMoving = moves;
    this.#breathTurns = (this.#breathTurns + elapsedS * (0.34 + effort * 0.25 + this.#winded * 0.5)) % 1;
    this.pose.hairRad = this.#still
      ? 0
      : Math.min(0.9, frame.speedMps * 0.055) + Math.sin(frame.crankTurns * Math.PI * 4) * 0.09;
  }

  #breath(effort: number): number {
    const depth = 0.005 + effort * 0.003 + this.#winded * 0.014;
    return Math.sin(this.#breathTurns * Math.PI * 2) * depth * (this.#body.torso / 0.5);
  }

  #placeBody(frame: RideFrame, slopeRad: number): void {
    const { pose } = this;
    const bike = this.#bike;
    const body = this.#body;
    const scale = body.torso / 0.5;
    const turn = frame.crankTurns * Math.PI * 2;
    const effort = frame.phase === 'riding' ? Math.min(1.3, frame.pressureRatio) : 0;
    const beat = this.#still ? 0 : Math.sin(turn * 2 + 0.6) * effort;
    const sway = this.#still ? 0 : Math.sin(turn + 0.4) * pose.standing;
    pose.breath = this.#still ? 0 : this.#breath(effort);
    pose.rockRad = sway * 0.036;
    const up = pose.standing * (0.125 + 0.03 * beat) * scale;
    pose.hip.x =
      bike.hip.x +
      (pose.standing * 0.29 + this.#lean * 0.018 - this.#footDown * -0.13 - this.#tuck * 0.025) * scale;
    pose.hip.y = bike.hip.y - up + beat * 0.0035 + this.#footDown * 0.1 * scale;
    const upright = bike.flatBar ? 1.06 : 0.8;
    const angle =
      upright -
      this.#lean * 0.15 -
      this.#tuck * (bike.flatBar ? 0.34 : 0.36) -
      pose.standing * 0.1 +
      this.#footDown * 0.26 -
      this.#winded * 0.06 -
      this.#strain * 0.16 +
      slopeRad * -0.12;
    const length = body.torso + pose.breath;
    pose.shoulder.x = pose.hip.x + Math.cos(angle) * length + sway * 0.012;
    // Shoulders drop when the chain has moved, and are pulled up while it does not.
    const shoulders = (this.#still ? 0 : this.#relief * 0.03) - this.#strain * 0.022;
    pose.shoulder.y = pose.hip.y - Math.sin(angle) * length + beat * 0.006 + shoulders * scale;
    this.#placeHead(angle, slopeRad, beat);
    pose.hand.x = bike.grip.x;
    pose.hand.y = bike.grip.y;
    const reach = bendTwoBones(pose.shoulder, pose.hand, body.upperArm, body.forearm, -1, pose.elbow);
    if (reach > MOST_REACH) this.#bringShoulder(body);
  }

  /** Long arms only reach so far: the shoulder comes down to the bar instead of the arm coming off. */
  #bringShoulder(body: BodyShape): void {
    const { pose } = this;
    const dx = pose.shoulder.x - pose.hand.x;
    const dy = pose.shoulder.y - pose.hand.y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    const most = (body.upperArm + body.forearm) * MOST_REACH;
    pose.shoulder.x = pose.hand.x + (dx / distance) * most;
    pose.shoulder.y = pose.hand.y + (dy / distance) * most;
    bendTwoBones(pose.shoulder, pose.hand, body.upperArm, body.forearm, -1, pose.elbow);
  }

  #placeHead(angle: number, slopeRad: number, beat: number): void {
    const { pose } = this;
    const { head } = this.#body;
    const neck = angle * 0.62 + 0.42 - this.#tuck * 0.12;
    pose.head.x = pose.shoulder.x + Math.cos(neck) * head * 1.55;
    pose.head.y = pose.shoulder.y - Math.sin(neck) * head * 1.62 + beat * 0.003;
    const nod = this.#winded * 0.16 - pose.breath * this.#winded * 6;
    pose.faceRad =
      -slopeRad * 0.25 +
      0.1 +
      this.#lean * 0.1 -
      this.#tuck * 0.06 +
      this.#footDown * 0.1 +
      nod +
      this.#strain * 0.36;
  }

  #placeLeg(target: LegPose, turns: number, footDown: number): void {
    const body = this.#body;
    pedalAt(turns, this.#bike.crank, target.pedal);
    target.toeDownRad = footAngle(turns) + this.pose.standing * 0.3;
    if (footDown > 0.01) {
      const groundX = 0.1;
      const groundY = this.#bike.axleHeight - 0.012;
      target.pedal.x += (groundX - target.pedal.x) * footDown;
      target.pedal.y += (groundY - target.pedal.y) * footDown;
      target.toeDownRad *= 1 - footDown;
    }
    const back = 0.112 * body.girth;
    const up = 0.088 * body.girth;
    const cos = Math.cos(target.toeDownRad);
    const sin = Math.sin(target.toeDownRad);
    target.ankle.x = target.pedal.x - back * cos + up * sin;
    target.ankle.y = target.pedal.y - back * sin - up * cos;
    bendTwoBones(this.pose.hip, target.ankle, body.thigh, body.shank, 1, target.knee);
  }
}
