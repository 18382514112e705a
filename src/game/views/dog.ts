/**
 * Draws the dog of the children's levels from a few painted pieces: galloping beside the rider, or sitting with
 * a wagging tail. What it does is decided in `dogMind.ts`.
 */
import { type Context, blot, line, oval, trace } from '../paint/pen.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import type { Palette } from '../paint/palette.ts';
import { castShadow, dropShadow, mix } from '../paint/sheet.ts';
import { DogMind } from './dogMind.ts';
import { ScenePlace } from './place.ts';
import { paintLimb, paintSprite, type Sprite } from './sprite.ts';
import type { Staging } from './staging.ts';

/** Lengths of the dog (m of the rider's). */
const LEG_M = 0.3;
const BACK_M = 0.46;
const COAT = '#c98a4b';
const COAT_DARK = '#8f5c30';
const PALE = '#f6e3c4';

export class DogView {
  readonly #staging: Staging;
  readonly #mind: DogMind;
  readonly #place = new ScenePlace();
  readonly #body: Sprite;
  readonly #head: Sprite;
  readonly #tail: Sprite;
  readonly #nearLeg: Sprite;
  readonly #farLeg: Sprite;

  constructor(staging: Staging) {
    this.#staging = staging;
    const { layout, palette } = staging;
    const visibleM = (layout.width - layout.riderX) / layout.pxPerM;
    const besideM = (layout.riderPxPerM * 1.5) / layout.pxPerM;
    this.#mind = new DogMind({ besideM, waitingM: Math.max(besideM + 4, visibleM * 0.62) });
    const pxPerM = layout.riderPxPerM * layout.deviceScale;
    this.#body = paintLimb(BACK_M, 0.2, pxPerM, (context, sheet) => {
      castShadow(sheet, '#12181e', 0.3, 0.02, 0.008, 0.012);
      paintBody(context, palette);
      dropShadow(context);
    });
    this.#head = paintSprite(-0.2, -0.24, 0.5, 0.44, pxPerM * 1.25, (context) => paintHead(context, palette));
    this.#tail = paintSprite(-0.26, -0.2, 0.32, 0.28, pxPerM * 1.25, paintTail);
    this.#nearLeg = paintLimb(LEG_M, 0.06, pxPerM, (context) => paintLeg(context, COAT, PALE));
    this.#farLeg = paintLimb(LEG_M, 0.06, pxPerM, (context) => paintLeg(context, COAT_DARK, COAT_DARK));
  }

  update(frame: RideFrame, elapsedS: number): void {
    this.#mind.update(frame, elapsedS);
  }

  draw(context: Context, timeS: number): void {
    const { layout, camera, look } = this.#staging;
    const still = look.reducedMotion;
    const { distanceM, sitting, strides, jumps, paceMps } = this.#mind;
    const scale = layout.riderPxPerM;
    const x = camera.screenX(distanceM);
    if (x < -scale || x > layout.width + scale) return;
    const slopeRad = Math.atan2(camera.roadY(x + scale * 0.25) - camera.roadY(x - scale * 0.25), scale * 0.5);
    const runs = Math.min(1, paceMps / 3);
    const turn = strides * Math.PI * 2;
    const joy = Math.abs(Math.sin(jumps * Math.PI)) * 0.34;
    const hop = still ? 0 : Math.max(0, Math.sin(turn)) * 0.05 * runs + joy;
    const y = camera.roadY(x) - 5 * layout.propScale - hop * scale;
    const device = layout.deviceScale;
    const place = this.#place;
    place.set(x * device, y * device, slopeRad, scale * device);
    // Sitting, the rump comes down and the back rises; sitters look back at the rider.
    const pitch = (still ? 0 : Math.sin(turn + 0.8) * 0.1 * runs) - sitting * 0.85;
    const hipX = -0.2;
    const hipY = -LEG_M + 0.02 + sitting * 0.19;
    const cos = Math.cos(pitch);
    const sin = Math.sin(pitch);
    const chestX = hipX + cos * BACK_M;
    const chestY = hipY + sin * BACK_M;
    const wag = still ? 0 : Math.sin(timeS * (8 + sitting * 4)) * 0.3;
    this.#legs(context, hipX, hipY, chestX, chestY, turn + 0.5, runs, sitting, this.#farLeg);
    place.turn(context, hipX - 0.06 * cos, hipY - 0.06 * sin - 0.02, wag - sitting * 0.3);
    this.#tail.draw(context);
    place.turn(context, hipX, hipY, pitch);
    this.#body.draw(context);
    this.#legs(context, hipX, hipY, chestX, chestY, turn, runs, sitting, this.#nearLeg);
    // Waiting, the head is turned round: mirrored, it looks back along the road.
    const facing = sitting > 0.5 ? -1 : 1;
    place.aim(context, chestX + 0.04 * facing, chestY - 0.1, facing, 0, facing);
    this.#head.draw(context);
    context.setTransform(device, 0, 0, device, 0, 0);
  }

  /** Fore and hind leg of one side, swinging against each other; folded under when sitting. */
  #legs(
    context: Context,
    hipX: number,
    hipY: number,
    chestX: number,
    chestY: number,
    turn: number,
    runs: number,
    sitting: number,
    leg: Sprite,
  ): void {
    const swing = Math.sin(turn) * 0.85 * runs * (1 - sitting);
    const stretch = (-chestY - 0.01) / LEG_M;
    const fore = Math.PI / 2 - swing;
    const foreLength = 1 + (stretch - 1) * sitting;
    this.#place.aim(
      context,
      chestX - 0.05,
      chestY,
      Math.cos(fore) * foreLength,
      Math.sin(fore) * foreLength,
      1,
    );
    leg.draw(context);
    const hind = Math.PI / 2 + swing - sitting * 1.25;
    this.#place.aim(context, hipX + 0.02, hipY, Math.cos(hind), Math.sin(hind), 1);
    leg.draw(context);
  }
}

function paintBody(context: Context, palette: Palette): void {
  blot(
    context,
    COAT,
    'M-0.1 -0.02 C-0.1 -0.14 0.1 -0.12 0.24 -0.13 C0.4 -0.15 0.54 -0.14 0.55 -0.02 C0.55 0.12 0.42 0.14 0.32 0.1 C0.2 0.05 0.1 0.1 0 0.09 C-0.08 0.08 -0.1 0.04 -0.1 -0.02',
  );
  oval(context, PALE, 0.47, 0.05, 0.07, 0.085, 0.3);
  oval(context, COAT_DARK, 0.16, -0.07, 0.11, 0.055, -0.05);
  trace(context, mix('#e2552c', palette.paper, 0.05), 0.035, 'M0.44 -0.14 Q0.53 -0.06 0.54 0.03');
}

/** Looks to the right; origin is the neck. */
function paintHead(context: Context, palette: Palette): void {
  blot(
    context,
    COAT,
    'M-0.09 0.1 C-0.14 -0.12 0 -0.2 0.1 -0.15 Q0.16 -0.1 0.25 -0.07 Q0.27 0.02 0.18 0.04 Q0.08 0.05 0.05 0.12 Z',
  );
  oval(context, PALE, 0.19, -0.012, 0.075, 0.048, 0.15);
  context.fillStyle = palette.ink;
  context.beginPath();
  context.ellipse(0.25, -0.045, 0.027, 0.022, 0, 0, Math.PI * 2);
  context.moveTo(0.12, -0.085);
  context.arc(0.1, -0.085, 0.018, 0, Math.PI * 2);
  context.fill();
  context.lineCap = 'round';
  trace(context, palette.ink, 0.012, 'M0.23 -0.005 Q0.2 0.025 0.15 0.012');
  oval(context, '#e58a7a', 0.18, 0.04, 0.02, 0.035, 0.2);
  blot(
    context,
    COAT_DARK,
    'M-0.01 -0.15 C-0.13 -0.16 -0.15 0 -0.09 0.06 C-0.03 0.04 0.02 -0.05 0.03 -0.12 Z',
  );
}

function paintTail(context: Context): void {
  context.lineCap = 'round';
  trace(context, COAT, 0.055, 'M0 0 Q-0.14 -0.02 -0.19 -0.14');
}

function paintLeg(context: Context, tone: string, paw: string): void {
  context.lineCap = 'round';
  line(context, tone, 0.068, [0, 0], [LEG_M - 0.04, 0]);
  oval(context, paw, LEG_M - 0.03, -0.012, 0.034, 0.045);
}
