/**
 * Draws the bike each frame in its own metres: wheels with turning spokes, frame, fork, bars, saddle and the
 * small drivetrain. The rider's limbs go between the two halves: far parts first, near parts later.
 */
import { sampleAt } from '../../core/math/numbers.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import type { Context } from '../paint/pen.ts';
import {
  type BikeParts,
  paintCrank,
  paintPedal,
  paintRing,
  paintStill,
  SPOKE_M,
  spokesOf,
} from './bikeStill.ts';
import { pedalAt, type Spot } from './legs.ts';
import type { ScenePlace } from './place.ts';
import { type HeldSprite, holdSprite, paintSprite, type Sprite } from './sprite.ts';
import { pitchRadiusM } from './toothing.ts';

/** The bike of one ride: all that keeps its shape is painted once, and the chain anew only while it moves across. */
export class BikeView {
  readonly #parts: BikeParts;
  readonly #spokes: Path2D;
  readonly #standing: HeldSprite;
  /** Chainring and near crank, one for each ring the chain can lie on. */
  readonly #rings: ReadonlyMap<number, Sprite>;
  readonly #farCrank: Sprite;
  readonly #pedalAlone: Sprite;
  readonly #pedal: Spot = { x: 0, y: 0 };
  readonly #chains = new Map<number, HeldSprite>();

  constructor(parts: BikeParts) {
    this.#parts = parts;
    const { bike, shape, palette, pxPerM } = parts;
    const round = (radius: number, paint: (context: Context) => void): Sprite =>
      paintSprite(-radius, -radius, radius * 2, radius * 2, pxPerM * 1.15, paint);
    const radius = shape.wheelRadius + 0.02;
    const left = shape.rear.x - radius;
    const top = Math.min(shape.bar.y, shape.saddle.y) - 0.14;
    const right = shape.front.x + radius;
    this.#spokes = spokesOf(shape);
    this.#standing = holdSprite(left, top, right - left, shape.axleHeight + 0.03 - top, pxPerM, (context) =>
      paintStill(context, parts),
    );
    const reach = Math.max(shape.crank, ...bike.chainringsTeeth.map(pitchRadiusM)) + 0.03;
    const ringWithCrank = (teeth: number): [number, Sprite] => [
      teeth,
      round(reach, (context) => {
        paintRing(context, palette, pitchRadiusM(teeth));
        paintCrank(context, palette, shape.crank, false);
      }),
    ];
    this.#rings = new Map(bike.chainringsTeeth.map(ringWithCrank));
    this.#farCrank = round(reach, (context) => paintCrank(context, palette, shape.crank, true));
    this.#pedalAlone = round(0.06, (context) => paintPedal(context, palette));
  }

  /** Wheels, frame, chain and the far crank. */
  drawFar(context: Context, place: ScenePlace, frame: RideFrame): void {
    const { rear, front } = this.#parts.shape;
    place.turn(context, 0, 0, ((frame.crankTurns + 0.5) % 1) * Math.PI * 2);
    this.#farCrank.draw(context);
    this.#standing.draw(context, place);
    context.strokeStyle = this.#parts.palette.ink;
    context.lineWidth = SPOKE_M;
    context.lineCap = 'butt';
    place.turn(context, rear.x, rear.y, (frame.wheelTurns % 1) * Math.PI * 2);
    context.stroke(this.#spokes);
    place.turn(context, front.x, front.y, ((frame.wheelTurns + 0.037) % 1) * Math.PI * 2);
    context.stroke(this.#spokes);
    place.home(context);
    if (!frame.chainOn || frame.shift !== null) this.#drawChain(context, frame);
    else this.#chainAtRest(frame).draw(context, place);
  }

  /** A chain that stays on its wheels keeps its shape, so it is painted once for each gear that is ridden. */
  #chainAtRest(frame: RideFrame): HeldSprite {
    const gear = frame.ringTeeth * 100 + frame.sprocketTeeth;
    const known = this.#chains.get(gear);
    if (known !== undefined) return known;
    const { rear } = this.#parts.shape;
    const left = rear.x - 0.16;
    const made = holdSprite(left, -0.24, 0.2 - left, 0.56, this.#parts.pxPerM, (context) =>
      this.#drawChain(context, frame),
    );
    this.#chains.set(gear, made);
    return made;
  }

  /** The near crank over the leg behind it and the frame; its pedal too when the foot has left it. */
  drawNear(context: Context, place: ScenePlace, frame: RideFrame): void {
    place.turn(context, 0, 0, (frame.crankTurns % 1) * Math.PI * 2);
    this.#rings.get(frame.ringTeeth)?.draw(context);
    if (frame.phase === 'riding') return;
    pedalAt(frame.crankTurns, this.#parts.shape.crank, this.#pedal);
    place.turn(context, this.#pedal.x, this.#pedal.y, 0);
    this.#pedalAlone.draw(context);
  }

  #drawChain(context: Context, frame: RideFrame): void {
    const { palette, bike, shape } = this.#parts;
    const { rear } = shape;
    const sprockets = bike.sprocketsTeeth;
    const ringRadius = pitchRadiusM(frame.ringTeeth);
    const radius = pitchRadiusM(sampleAt(sprockets, frame.chainAtSprocket));
    // Behind a hub nothing takes up slack: the chain runs straight to the sprocket and back.
    const isStraight = bike.hub !== undefined && frame.chainOn;
    context.strokeStyle = palette.ink;
    context.lineWidth = 0.0105;
    context.lineCap = 'round';
    context.beginPath();
    if (frame.chainOn) {
      context.moveTo(0, -ringRadius);
      context.lineTo(rear.x, rear.y - radius);
    } else this.#traceLoose(context, frame, ringRadius, radius);
    context.arc(rear.x, rear.y, radius, -Math.PI / 2, Math.PI * (isStraight ? 0.5 : 0.62), true);
    if (isStraight) {
      context.lineTo(0, ringRadius);
      context.stroke();
      return;
    }
    const biggest = sprockets[sprockets.length - 1] ?? 20;
    const low = sprockets[Math.floor(frame.chainAtSprocket)] ?? 15;
    const guideY = rear.y + radius + 0.034;
    const tensionX = rear.x + 0.035 + (biggest - low) * -0.0012 + (ringRadius - 0.07) * 0.5;
    context.lineTo(rear.x + 0.032, guideY);
    context.lineTo(tensionX - 0.018, guideY + 0.075);
    if (frame.chainOn) {
      const lowY = Math.max(guideY + 0.09, ringRadius);
      context.quadraticCurveTo(rear.x * 0.5, lowY, 0, ringRadius);
    } else {
      const sway = this.#parts.still ? 0 : Math.sin(frame.timeS * 5.2) * 0.02;
      context.quadraticCurveTo(rear.x * 0.55, guideY + 0.2, -0.1 + sway, ringRadius + 0.07);
      context.lineTo(-0.02 + sway * 1.6, ringRadius + 0.12);
    }
    context.stroke();
    context.lineWidth = 0.02;
    context.beginPath();
    context.moveTo(rear.x + 0.004, rear.y + 0.02);
    context.lineTo(rear.x + 0.018, guideY);
    context.lineTo(tensionX, guideY + 0.078);
    context.stroke();
  }

  /** A chain that came off lies slack over the bottom bracket and bounces with the road. */
  #traceLoose(context: Context, frame: RideFrame, ringRadius: number, radius: number): void {
    const { rear } = this.#parts.shape;
    const bounce = this.#parts.still ? 0 : Math.sin(frame.timeS * 7.4) * 0.012;
    context.moveTo(0.03, 0.045);
    context.quadraticCurveTo(0.05, -0.03, -0.03, -0.03);
    context.quadraticCurveTo(rear.x * 0.5, ringRadius * 0.5 + bounce, rear.x, rear.y - radius);
  }
}
