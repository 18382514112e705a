/**
 * Draws the bike each frame in its own metres: wheels with turning spokes, frame, fork, bars, saddle and the
 * small drivetrain. The rider's limbs go between the two halves: far parts first, near parts later.
 */
import type { Bike } from '../../core/model/types.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import type { Palette, RiderTones } from '../paint/palette.ts';
import type { BikeShape } from './bikeShape.ts';
import { disc, ORIGIN, paintStill, paintWheel, ring } from './bikeStill.ts';
import { pedalAt, type Spot } from './legs.ts';
import { paintSprite, type Sprite } from './sprite.ts';

type Context = CanvasRenderingContext2D;

const LINK_DASH = [0.0127, 0.0127];
const NO_DASH: number[] = [];
/** Roller chain pitch (m). */
const PITCH_M = 0.0127;

/** Pitch radius of a sprocket (m). */
export function pitchRadiusM(teeth: number): number {
  return PITCH_M / (2 * Math.sin(Math.PI / teeth));
}

/** The bike of one ride: wheels and still parts are painted once, only cranks and chain anew each frame. */
export class BikeView {
  readonly #shape: BikeShape;
  readonly #bike: Bike;
  readonly #palette: Palette;
  readonly #wheel: Sprite;
  readonly #still: Sprite;
  readonly #pedal: Spot = { x: 0, y: 0 };

  constructor(
    shape: BikeShape,
    bike: Bike,
    palette: Palette,
    tones: RiderTones,
    haloAlpha: number,
    pxPerM: number,
  ) {
    this.#shape = shape;
    this.#bike = bike;
    this.#palette = palette;
    const parts = { shape, palette, tones, haloAlpha };
    const radius = shape.wheelRadius + 0.02;
    this.#wheel = paintSprite(-radius, -radius, radius * 2, radius * 2, pxPerM, (context) =>
      paintWheel(context, parts),
    );
    const left = shape.rear.x - radius;
    const top = Math.min(shape.bar.y, shape.saddle.y) - 0.14;
    const right = shape.front.x + radius;
    this.#still = paintSprite(left, top, right - left, shape.axleHeight + 0.03 - top, pxPerM, (context) =>
      paintStill(context, parts),
    );
  }

  /** Wheels, frame, chain and the far crank. */
  drawFar(context: Context, frame: RideFrame): void {
    const { rear, front } = this.#shape;
    this.#drawCrank(context, frame.crankTurns + 0.5, true);
    this.#still.draw(context);
    this.#turnWheel(context, rear, frame.wheelTurns);
    this.#turnWheel(context, front, frame.wheelTurns + 0.037);
    this.#drawChain(context, frame);
  }

  #turnWheel(context: Context, hub: Readonly<Spot>, turns: number): void {
    const turn = (turns % 1) * Math.PI * 2;
    context.translate(hub.x, hub.y);
    context.rotate(turn);
    this.#wheel.draw(context);
    context.rotate(-turn);
    context.translate(-hub.x, -hub.y);
  }

  /** The near crank over the leg behind it and the frame. */
  drawNear(context: Context, frame: RideFrame): void {
    this.#drawRing(context, frame);
    this.#drawCrank(context, frame.crankTurns, false);
  }

  #drawCrank(context: Context, turns: number, far: boolean): void {
    pedalAt(turns, this.#shape.crank, this.#pedal);
    context.lineCap = 'round';
    context.strokeStyle = far ? this.#palette.inkSoft : this.#palette.ink;
    context.lineWidth = far ? 0.022 : 0.028;
    context.beginPath();
    context.moveTo(0, 0);
    context.lineTo(this.#pedal.x, this.#pedal.y);
    context.stroke();
    context.lineWidth = 0.024;
    context.beginPath();
    context.moveTo(this.#pedal.x - 0.036, this.#pedal.y + 0.012);
    context.lineTo(this.#pedal.x + 0.04, this.#pedal.y + 0.006);
    context.stroke();
  }

  #drawRing(context: Context, frame: RideFrame): void {
    const radius = pitchRadiusM(frame.ringTeeth);
    context.strokeStyle = this.#palette.ink;
    context.lineWidth = 0.011;
    ring(context, ORIGIN, radius - 0.008);
    context.lineWidth = 0.007;
    context.setLineDash(LINK_DASH);
    context.lineDashOffset = -frame.crankTurns * radius * 2 * Math.PI;
    ring(context, ORIGIN, radius + 0.002);
    context.setLineDash(NO_DASH);
    context.lineWidth = 0.014;
    context.beginPath();
    for (let arm = 0; arm < 4; arm++) {
      const turn = frame.crankTurns * Math.PI * 2 + (arm / 4) * Math.PI * 2 + 0.4;
      context.moveTo(0, 0);
      context.lineTo(Math.cos(turn) * (radius - 0.01), Math.sin(turn) * (radius - 0.01));
    }
    context.stroke();
    context.fillStyle = this.#palette.ink;
    disc(context, 0, 0, 0.027);
    context.fillStyle = this.#palette.sand;
    disc(context, 0, 0, 0.01);
  }

  #drawChain(context: Context, frame: RideFrame): void {
    const { rear } = this.#shape;
    const ringRadius = pitchRadiusM(frame.ringTeeth);
    const sprockets = this.#bike.sprocketsTeeth;
    const biggest = sprockets[sprockets.length - 1] ?? 20;
    context.strokeStyle = this.#palette.inkSoft;
    context.lineWidth = 0.012;
    ring(context, rear, pitchRadiusM(biggest) - 0.006);
    const index = Math.max(0, Math.min(sprockets.length - 1, frame.chainAtSprocket));
    const low = sprockets[Math.floor(index)] ?? 15;
    const high = sprockets[Math.ceil(index)] ?? low;
    const radius = pitchRadiusM(low + (high - low) * (index - Math.floor(index)));
    const guideY = rear.y + radius + 0.034;
    const tensionX = rear.x + 0.035 + (biggest - low) * -0.0012 + (ringRadius - 0.07) * 0.5;
    context.strokeStyle = this.#palette.ink;
    context.lineWidth = 0.0105;
    context.beginPath();
    context.moveTo(0, -ringRadius);
    context.lineTo(rear.x, rear.y - radius);
    context.arc(rear.x, rear.y, radius, -Math.PI / 2, Math.PI * 0.62, true);
    context.lineTo(rear.x + 0.032, guideY);
    context.lineTo(tensionX - 0.018, guideY + 0.075);
    const sag = frame.chainOn ? 0 : 0.12;
    context.quadraticCurveTo(
      rear.x * 0.5,
      Math.max(guideY + 0.09, ringRadius) + sag,
      0,
      ringRadius + sag * 0.3,
    );
    context.stroke();
    context.lineWidth = 0.02;
    context.beginPath();
    context.moveTo(rear.x + 0.004, rear.y + 0.02);
    context.lineTo(rear.x + 0.018, guideY);
    context.lineTo(tensionX, guideY + 0.078);
    context.stroke();
  }
}
