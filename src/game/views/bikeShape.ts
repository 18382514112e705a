/**
 * Proportions of a bike in metres, from its own numbers: wheel, chainstay, cranks, and a frame that fits the
 * rider's legs. Origin is the crank axle, x forwards, y down. Drawing is left to `bike.ts`.
 */
import type { Bike } from '../../core/model/types.ts';
import type { Spot } from './legs.ts';

/** Lengths of a person (m). */
export interface BodyShape {
  readonly thigh: number;
  readonly shank: number;
  readonly torso: number;
  readonly upperArm: number;
  readonly forearm: number;
  readonly head: number;
  /** Thickness of limbs relative to an adult. */
  readonly girth: number;
}

const ADULT: BodyShape = {
  thigh: 0.44,
  shank: 0.43,
  torso: 0.5,
  upperArm: 0.29,
  forearm: 0.28,
  head: 0.124,
  girth: 1,
};

const CHILD: BodyShape = {
  thigh: 0.315,
  shank: 0.305,
  torso: 0.36,
  upperArm: 0.2,
  forearm: 0.2,
  head: 0.125,
  girth: 0.78,
};

/** The body that rides. */
export function bodyFor(child: boolean): BodyShape {
  return child ? CHILD : ADULT;
}

/** Every point of the bike that something is drawn to or held at. */
export type BikeShape = Readonly<ReturnType<typeof bikeShapeFor>>;

const SEAT_ANGLE_RAD = 1.275;
const HEAD_ANGLE_RAD = 1.25;

/** Upright bikes carry a flat bar: small wheels and a drag area of somebody sitting up. */
function hasFlatBar(bike: Bike): boolean {
  return bike.beadSeatMm < 570 || bike.cdaM2 > 0.43 || /kids|town|trek/.test(bike.id);
}

/** So far (m) up a tube that leans back from `from`. */
function upTube(from: Readonly<Spot>, angleRad: number, reach: number): Spot {
  return { x: from.x - Math.cos(angleRad) * reach, y: from.y - Math.sin(angleRad) * reach };
}

/** The shape of `bike` set up for `body`. */
export function bikeShapeFor(bike: Bike, body: BodyShape) {
  const flatBar = hasFlatBar(bike);
  const tyre = bike.tyreWidthMm / 1000;
  const wheelRadius = bike.beadSeatMm / 2000 + tyre;
  const drop = Math.max(-0.015, Math.min(0.068, (wheelRadius - 0.27) * 0.95));
  const crank = bike.crankLengthMm / 1000;
  const stay = bike.chainstayMm / 1000;
  const rear = { x: -Math.sqrt(stay * stay - drop * drop), y: -drop };
  const bodyScale = body.torso / 0.5;
  const front = {
    x: Math.max(0.4, 0.27 + 0.7 * wheelRadius + (bodyScale - 1) * 0.1 + (flatBar ? 0.04 : 0)),
    y: -drop,
  };
  const hipReach = (body.thigh + body.shank) * 0.965 - crank + 0.095 * body.girth;
  const saddleReach = hipReach - 0.104 * body.girth;
  const alongSeat = (reach: number) => upTube({ x: 0, y: 0 }, SEAT_ANGLE_RAD, reach);
  const hip = alongSeat(hipReach);
  const saddle = alongSeat(saddleReach);
  const seatTubeTop = alongSeat(saddleReach * (flatBar ? 0.62 : 0.72));
  const headLow = upTube({ x: front.x - 0.035, y: front.y }, HEAD_ANGLE_RAD, wheelRadius + 0.045);
  const headTop = upTube(headLow, HEAD_ANGLE_RAD, Math.max(0.08, (flatBar ? 0.16 : 0.14) * bodyScale));
  const barLift = flatBar
    ? Math.min(headTop.y - 0.06, saddle.y - 0.06 * bodyScale)
    : Math.min(headTop.y - 0.04, saddle.y + 0.05);
  const stem = { x: headTop.x - (headTop.y - barLift) * 0.33, y: barLift };
  const bar = { x: stem.x + (flatBar ? 0.05 : 0.1) * bodyScale, y: barLift - 0.005 };
  const grip = flatBar ? { x: bar.x - 0.045, y: bar.y - 0.025 } : { x: bar.x + 0.088, y: bar.y - 0.03 };
  return {
    flatBar,
    wheelRadius,
    tyre,
    /** Height of the crank axle over the ground. */
    axleHeight: wheelRadius - drop,
    crank,
    rear,
    front,
    seatTubeTop,
    saddle,
    headTop,
    headLow,
    stem,
    bar,
    /** Where the hands hold. */
    grip,
    hip,
  };
}
