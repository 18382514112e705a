/**
 * Apples in a basket on the handlebar, and what becomes of those that hop out: they bounce down the road, and a hedgehog
 * who comes along behind picks them up on its back. How many have gone is decided outside; nothing here knows why.
 */
import type { RideFrame } from '../../core/ride/types.ts';
import type { Palette } from '../paint/palette.ts';
import { blot, type Context, oval, polygon, trace } from '../paint/pen.ts';
import { castShadow, dropShadow, mix } from '../paint/sheet.ts';
import type { BikeShape } from './bikeShape.ts';
import type { ScenePlace } from './place.ts';
import { paintSprite, type Sprite } from './sprite.ts';
import type { Staging } from './staging.ts';

const APPLE_M = 0.062;
/** Places of the apples in the basket, the first to go last (m from its middle). */
const SLOTS = [
  [-0.12, -0.03],
  [0, -0.04],
  [0.12, -0.03],
  [-0.06, -0.1],
  [0.06, -0.1],
  [-0.11, -0.12],
  [0.12, -0.12],
  [0, -0.17],
] as const;
/** Places on the hedgehog's back (m from its middle). */
const BACK = [
  [-0.06, -0.3],
  [0.07, -0.27],
  [-0.17, -0.22],
  [0.01, -0.4],
  [0.15, -0.17],
  [-0.12, -0.37],
  [0.1, -0.38],
  [-0.24, -0.12],
] as const;
const GRAVITY_MPS2 = 6.2;
/** So long an apple is in the air and on the road before it is picked up (s). */
const LOOSE_S = 1.15;
/** How far behind the rear wheel the hedgehog trots (m of the rider's): so far, or less where the picture is narrow. */
const BEHIND_M = 1.75;
const ROOM_M = 0.34;

interface Loose {
  x: number;
  y: number;
  speedX: number;
  speedY: number;
  ageS: number;
}

/** Basket, apples and hedgehog of one ride. */
export class Cargo {
  readonly #staging: Staging;
  readonly #shape: BikeShape;
  readonly #basket: Sprite;
  readonly #apple: Sprite;
  readonly #piles: Sprite[] = [];
  readonly #pxPerM: number;
  readonly #hedgehog: Sprite;
  readonly #behindM: number;
  #spilled = 0;
  #picked = 0;
  readonly #loose: Loose[] = [];
  /** 0 out of the picture, 1 in its place behind the rider. */
  #here = 0;
  #wobble = 0;

  constructor(staging: Staging, shape: BikeShape) {
    this.#staging = staging;
    this.#shape = shape;
    const { layout, palette } = staging;
    this.#behindM = Math.min(BEHIND_M, layout.riderX / layout.riderPxPerM + shape.rear.x - ROOM_M);
    const pxPerM = layout.riderPxPerM * layout.deviceScale * 1.15;
    this.#pxPerM = pxPerM;
    this.#basket = paintSprite(-0.26, -0.12, 0.52, 0.34, pxPerM, (context) => paintBasket(context, palette));
    this.#apple = paintSprite(-0.1, -0.13, 0.2, 0.22, pxPerM, (context) => paintApple(context, palette));
    this.#hedgehog = paintSprite(-0.42, -0.4, 0.86, 0.46, pxPerM, (context, sheet) => {
      castShadow(sheet, '#12181e', 0.3, 0.02, 0.008, 0.012);
      paintHedgehog(context, palette);
      dropShadow(context);
    });
  }

  /** So many apples have hopped out since the start. */
  spill(count: number): void {
    // After a jump of the ride they are simply where they would be by now.
    if (count > this.#spilled + 3 || count < this.#spilled) {
      this.#picked = count;
      this.#loose.length = 0;
    } else
      for (let i = this.#spilled; i < count; i += 1) {
        const { x, y } = this.#home();
        this.#loose.push({
          x,
          y: y - 0.2,
          speedX: -0.5 - (i % 3) * 0.2,
          speedY: -1.9 - (i % 2) * 0.4,
          ageS: 0,
        });
        this.#wobble = 1;
      }
    this.#spilled = count;
  }

  /** Middle of the basket (m, origin at the crank axle). */
  #home(): { x: number; y: number } {
    const { bar, front } = this.#shape;
    return { x: Math.max(bar.x + 0.2, front.x - 0.02), y: bar.y + 0.12 };
  }

  update(elapsedS: number): void {
    const ground = this.#shape.axleHeight - APPLE_M;
    const goalX = this.#shape.rear.x - this.#behindM;
    this.#wobble = Math.max(0, this.#wobble - elapsedS * 1.6);
    this.#here += ((this.#spilled > 0 ? 1 : 0) - this.#here) * (1 - 1 / (1 + elapsedS * 2.6));
    for (const one of this.#loose) {
      one.ageS += elapsedS;
      one.speedY += GRAVITY_MPS2 * elapsedS;
      one.x += one.speedX * elapsedS;
      one.y += one.speedY * elapsedS;
      if (one.y > ground) {
        one.y = ground;
        one.speedY *= -0.62;
        // Touching the road it is left behind.
        one.speedX = -2.3;
      }
      if (one.ageS > LOOSE_S) one.x += (goalX - one.x) * Math.min(1, elapsedS * 7);
    }
    while (this.#loose[0] !== undefined && this.#loose[0].ageS > LOOSE_S + 0.5) {
      this.#loose.shift();
      this.#picked += 1;
    }
  }

  /** Basket and what is in it; `place` is that of the bike. */
  drawOnBike(context: Context, place: ScenePlace, frame: RideFrame): void {
    const { x, y } = this.#home();
    const still = this.#staging.look.reducedMotion;
    const shake = still ? 0 : Math.sin(frame.timeS * 26) * 0.01 * this.#wobble;
    const hop = still ? 0 : Math.abs(Math.sin(frame.timeS * 6)) * 0.012 * (0.3 + this.#wobble);
    place.turn(context, x, y - 0.03 - hop, 0);
    this.#pile(SLOTS.length - this.#spilled)?.draw(context);
    place.turn(context, x + shake, y, 0);
    this.#basket.draw(context);
  }

  /** The apples that are left, painted as one. */
  #pile(count: number): Sprite | null {
    if (count <= 0) return null;
    const known = this.#piles[count];
    if (known) return known;
    const made = paintSprite(-0.24, -0.34, 0.48, 0.42, this.#pxPerM, (context) => {
      for (const [i, [x, y]] of SLOTS.slice(0, count).entries()) {
        context.save();
        context.translate(x, y);
        context.rotate(i * 0.7);
        this.#apple.draw(context);
        context.restore();
      }
    });
    this.#piles[count] = made;
    return made;
  }

  /** Apples on their way, and the hedgehog; `place` stands on the road at the crank axle's height. */
  drawBehind(context: Context, place: ScenePlace, frame: RideFrame): void {
    const { layout, camera, look } = this.#staging;
    const still = look.reducedMotion;
    for (const one of this.#loose) {
      place.turn(context, one.x, one.y, still ? 0 : one.ageS * -7);
      this.#apple.draw(context);
    }
    if (this.#here < 0.02) return;
    const scale = layout.riderPxPerM;
    const device = layout.deviceScale;
    const x = camera.riderX + (this.#shape.rear.x - this.#behindM - (1 - this.#here) * 2.4) * scale;
    if (x < -scale) return;
    const turn = still ? 0 : frame.wheelTurns * 9;
    const hop = Math.abs(Math.sin(turn)) * 0.03 * Math.min(1, frame.speedMps);
    const slope = Math.atan2(camera.roadY(x + 30) - camera.roadY(x - 30), 60);
    const y = camera.roadY(x) - 2 * layout.propScale - hop * scale;
    place.set(x * device, y * device, slope, scale * device);
    this.#legs(context, place, turn);
    place.turn(context, 0, 0, Math.sin(turn) * 0.05);
    this.#hedgehog.draw(context);
    for (let i = 0; i < Math.min(this.#picked, BACK.length); i += 1) {
      const [backX, backY] = BACK[i] ?? [0, 0];
      place.turn(context, backX, backY, Math.sin(turn) * 0.05 + i);
      this.#apple.draw(context);
    }
  }

  #legs(context: Context, place: ScenePlace, turn: number): void {
    place.home(context);
    context.strokeStyle = '#5b4636';
    context.lineWidth = 0.055;
    context.lineCap = 'round';
    context.beginPath();
    for (const [x, phase] of [
      [-0.16, 0],
      [-0.06, 2],
      [0.1, 1],
      [0.18, 3],
    ] as const) {
      context.moveTo(x, -0.08);
      context.lineTo(x + Math.sin(turn * 1.5 + phase * 1.6) * 0.07, 0.02);
    }
    context.stroke();
  }
}

function paintBasket(context: Context, palette: Palette): void {
  const cane = '#c99a58';
  polygon(context, cane, [-0.22, -0.06], [0.22, -0.06], [0.17, 0.2], [-0.17, 0.2]);
  context.strokeStyle = mix(cane, palette.ink, 0.45);
  context.lineWidth = 0.013;
  context.beginPath();
  for (let row = 0; row < 3; row += 1) {
    const y = 0.0 + row * 0.065;
    for (let i = 0; i < 6; i += 1) {
      const x = -0.19 + i * 0.065 + (row % 2) * 0.03;
      context.moveTo(x, y);
      context.quadraticCurveTo(x + 0.025, y - 0.024, x + 0.05, y);
    }
  }
  context.stroke();
  trace(context, mix(cane, palette.paper, 0.25), 0.05, 'M-0.23 -0.07 L0.23 -0.07');
}

function paintApple(context: Context, palette: Palette): void {
  const red = '#cf3a2c';
  oval(context, red, 0, 0, APPLE_M, APPLE_M * 0.94);
  context.save();
  context.beginPath();
  context.ellipse(0, 0, APPLE_M, APPLE_M * 0.94, 0, 0, 7);
  context.clip();
  oval(context, mix(red, palette.ink, 0.22), APPLE_M * 0.6, APPLE_M * 0.3, APPLE_M * 0.7, APPLE_M);
  oval(
    context,
    mix(red, palette.paper, 0.55),
    -APPLE_M * 0.45,
    -APPLE_M * 0.4,
    APPLE_M * 0.2,
    APPLE_M * 0.26,
    0.6,
  );
  context.restore();
  context.lineCap = 'round';
  trace(context, '#4a352b', 0.014, 'M0 -0.045 Q0.004 -0.075 0.018 -0.09');
  oval(context, '#4f8a3f', 0.04, -0.078, 0.028, 0.014, -0.4);
}

/** Looks to the right; stands on the origin. */
function paintHedgehog(context: Context, palette: Palette): void {
  const spine = '#6d5544';
  context.fillStyle = spine;
  context.beginPath();
  context.moveTo(-0.32, -0.05);
  for (let i = 0; i <= 11; i += 1) {
    const turn = Math.PI + (i / 11) * Math.PI * 0.94;
    const reach = i % 2 === 0 ? 1 : 0.84;
    context.lineTo(-0.03 + Math.cos(turn) * 0.33 * reach, -0.05 + Math.sin(turn) * 0.31 * reach);
  }
  context.lineTo(0.26, -0.05);
  context.closePath();
  context.fill();
  blot(context, '#e2bf94', 'M0.12 -0.2 Q0.3 -0.2 0.39 -0.075 Q0.3 -0.03 0.1 -0.045 Z');
  oval(context, palette.ink, 0.39, -0.085, 0.026, 0.022);
  oval(context, palette.ink, 0.25, -0.125, 0.017, 0.02);
  oval(context, '#c99d70', 0.14, -0.18, 0.035, 0.042, -0.3);
  context.lineCap = 'round';
  trace(context, palette.ink, 0.012, 'M0.35 -0.055 Q0.31 -0.04 0.27 -0.058');
  trace(
    context,
    mix(spine, palette.paper, 0.35),
    0.012,
    'M-0.2 -0.16 L-0.24 -0.22 M-0.08 -0.22 L-0.1 -0.29 M0.03 -0.2 L0.03 -0.27 M-0.14 -0.1 L-0.19 -0.15 M-0.02 -0.13 L-0.05 -0.19',
  );
}
