/**
 * Others beside the road: sheep that look up when somebody passes, a tractor in its field, a friend who waits and waves.
 * None of them is ever in the way: sheep and tractor stand behind the verge, the friend rides ahead.
 */
import type { RideFrame } from '../../core/ride/types.ts';
import type { Companion } from '../../core/level/schema.ts';
import type { Palette } from '../paint/palette.ts';
import { box, type Context, line, oval, polygon, trace } from '../paint/pen.ts';
import { castShadow, dropShadow, mix } from '../paint/sheet.ts';
import { Figure } from './figure.ts';
import { FriendMind } from './friendMind.ts';
import { paintLimb, paintSprite, type Sprite } from './sprite.ts';
import type { Staging } from './staging.ts';

/** A flock: where its sheep stand round their place (m), and how big they are. */
const FLOCK = [
  [-3.1, 0.9],
  [0, 1.08],
  [2.9, 0.8],
  [6.2, 0.97],
] as const;
/** Sheep look up at whoever is this near (m). */
const LOOKS_M = 11;
/** Pace of a tractor (m/s); it goes the rider's way and is passed. */
const TRACTOR_MPS = 1.5;
const WHEEL_PX = 25;
const ARM_M = 0.4;
/** Behind the finish the friend waits so far ahead: a bike and a little more, in metres of the rider, who is drawn larger than the road. */
const AHEAD_AT_FINISH_M = 1.95;

export class Company {
  readonly #staging: Staging;
  readonly #sheep: readonly { readonly atM: number; readonly size: number }[];
  readonly #tractorsM: readonly number[];
  readonly #grazing: Sprite;
  readonly #looking: Sprite;
  readonly #tractor: Sprite;
  readonly #wheel: Sprite;
  readonly #arm: Sprite;
  readonly #friend: FriendMind | null;
  #figure: Figure | null = null;

  constructor(staging: Staging) {
    this.#staging = staging;
    const { layout, palette, scenery, course, look } = staging;
    const of = (who: Companion['who']): number[] =>
      scenery.company.filter((one) => one.who === who).map(({ atM }) => atM);
    this.#sheep = of('sheep').flatMap((atM) => FLOCK.map(([byM, size]) => ({ atM: atM + byM, size })));
    this.#tractorsM = of('tractor');
    const friends = of('friend').toSorted((a, b) => a - b);
    const waitsM = course.lengthM + (AHEAD_AT_FINISH_M * layout.riderPxPerM) / layout.pxPerM;
    this.#friend = friends.length === 0 ? null : new FriendMind([...friends, waitsM]);
    const size = layout.propScale * layout.deviceScale;
    this.#grazing = paintSheep(palette, false, size);
    this.#looking = paintSheep(palette, true, size);
    this.#tractor = paintTractor(palette, size);
    this.#wheel = paintSprite(-1.1, -1.1, 2.2, 2.2, WHEEL_PX * size, (context) =>
      paintTractorWheel(context, palette),
    );
    this.#arm = paintLimb(ARM_M, 0.06, layout.riderPxPerM * layout.deviceScale, (context) => {
      context.lineCap = 'round';
      line(context, look.friendKit.jersey.tone, 0.09, [0, 0], [ARM_M * 0.5, 0]);
      line(context, '#c78d66', 0.07, [ARM_M * 0.5, 0], [ARM_M - 0.04, 0]);
      oval(context, '#c78d66', ARM_M - 0.02, 0, 0.055, 0.05);
    });
  }

  update(frame: RideFrame, elapsedS: number): void {
    if (this.#friend === null) return;
    this.#figure ??= new Figure(this.#staging, this.#staging.look.friendKit, null, frame);
    this.#friend.update(frame.distanceM, frame.speedMps, elapsedS);
  }

  /** What stands behind the verge; drawn before the road, whose grass covers the feet. */
  drawBehind(context: Context, frame: RideFrame): void {
    const { layout, camera, look } = this.#staging;
    const { reducedMotion } = look;
    const device = layout.deviceScale;
    const size = layout.propScale;
    const sees = (m: number): number | null => {
      const x = camera.screenX(m);
      return x < -140 || x > layout.width + 140 ? null : x;
    };
    for (let i = 0; i < this.#sheep.length; i += 1) {
      const one = this.#sheep[i];
      const x = one ? sees(one.atM) : null;
      if (!one || x === null) continue;
      const isLooking = Math.abs(one.atM - frame.distanceM) < LOOKS_M;
      const chews = isLooking && !reducedMotion ? Math.sin(frame.timeS * 7 + i) * 0.6 : 0;
      const facing = one.atM < frame.distanceM ? 1 : -1;
      const y = camera.roadY(x) - 9 * size + chews;
      context.setTransform(facing * one.size * device, 0, 0, one.size * device, x * device, y * device);
      (isLooking ? this.#looking : this.#grazing).draw(context);
    }
    for (const fromM of this.#tractorsM) {
      const m = fromM + (reducedMotion ? 0 : frame.timeS * TRACTOR_MPS * 0.35);
      const x = sees(m);
      if (x === null) continue;
      const shake = reducedMotion ? 0 : Math.sin(frame.timeS * 31) * 0.5;
      const y = camera.roadY(x) - 10 * size;
      context.setTransform(device, 0, 0, device, x * device, (y + shake) * device);
      this.#tractor.draw(context);
      const turn = reducedMotion ? 0 : frame.timeS * 1.7;
      for (const [wheelX, radius] of [
        [-26, 1],
        [37, 0.62],
      ] as const) {
        const r = radius * WHEEL_PX * size * device;
        const cos = Math.cos(turn / radius) * r;
        const sin = Math.sin(turn / radius) * r;
        context.setTransform(
          cos,
          sin,
          -sin,
          cos,
          (x + wheelX * size) * device,
          (y - radius * WHEEL_PX * size) * device,
        );
        this.#wheel.draw(context);
      }
    }
    context.setTransform(device, 0, 0, device, 0, 0);
  }

  /** The friend, on the road ahead. */
  drawFriend(context: Context, frame: RideFrame): void {
    const { layout, look } = this.#staging;
    const friend = this.#friend;
    const figure = this.#figure;
    if (friend === null || figure === null) return;
    const isSeen = figure.draw(context, friend.distanceM, friend.waits ? 'waving' : friend.crankTurns);
    if (isSeen && friend.waits) {
      context.translate(figure.shoulder.x, figure.shoulder.y);
      context.rotate(-1.9 + (look.reducedMotion ? 0 : Math.sin(frame.timeS * 8) * 0.45));
      this.#arm.draw(context);
    }
    context.setTransform(layout.deviceScale, 0, 0, layout.deviceScale, 0, 0);
  }
}

/** A woolly sheep standing on the origin and looking to the left, or grazing. */
function paintSheep(palette: Palette, looking: boolean, pxPerPx: number): Sprite {
  const wool = mix(palette.paper, palette.skyLow, 0.12);
  const shade = mix(wool, palette.shadow, 0.18);
  return paintSprite(-44, -58, 92, 64, pxPerPx, (context, sheet) => {
    for (const x of [-16, -7, 12, 20]) box(context, palette.inkSoft, x, -16, 4.5, 20);
    castShadow(sheet, palette.shadow, 0.3, 4, 2, 1);
    paintWool(context, shade, 3, -27, 20, 10, 10);
    dropShadow(context);
    paintWool(context, wool, 2, -30, 18, 8, 9);
    context.fillRect(-16, -36, 36, 13);
    const headX = looking ? -25 : -29;
    const headY = looking ? -42 : -12;
    oval(context, palette.inkSoft, headX, headY, 9.5, 7, looking ? 0.25 : -0.9);
    oval(context, palette.inkSoft, headX + 8, headY - 5, 6, 2.6, looking ? -0.5 : 0.6);
    oval(context, wool, headX + 6, headY - 6, 6, 4.4);
    oval(context, palette.paper, headX - 3, headY - 1.6, 2, 2.2);
    oval(context, palette.ink, headX - 3.5, headY - 1.4, 1.1, 1.3);
  });
}

/** A ring of nine lobes. */
function paintWool(
  context: Context,
  tone: string,
  x: number,
  y: number,
  reachX: number,
  reachY: number,
  lobe: number,
): void {
  context.fillStyle = tone;
  context.beginPath();
  for (let i = 0; i < 9; i += 1) {
    const turn = (i / 9) * Math.PI * 2;
    const lobeX = x + Math.cos(turn) * reachX;
    const lobeY = y + Math.sin(turn) * reachY;
    context.moveTo(lobeX + lobe, lobeY);
    context.arc(lobeX, lobeY, lobe, 0, 7);
  }
  context.fill();
}

/** A tractor standing on the origin and driving to the right, without its wheels. */
function paintTractor(palette: Palette, pxPerPx: number): Sprite {
  const body = '#b8442e';
  const dark = mix(body, palette.shadow, 0.3);
  return paintSprite(-70, -104, 148, 110, pxPerPx, (context, sheet) => {
    castShadow(sheet, palette.shadow, 0.32, 6, 3, 2);
    polygon(context, body, [-6, -50], [50, -46], [54, -20], [-6, -18]);
    polygon(context, dark, [-52, -44], [-4, -44], [-4, -16], [-46, -16]);
    dropShadow(context);
    polygon(
      context,
      mix(palette.skyMiddle, palette.paper, 0.4),
      [-40, -46],
      [-34, -84],
      [-6, -84],
      [-2, -46],
    );
    line(context, palette.ink, 4, [-42, -46], [-36, -86], [-5, -86], [0, -46]);
    box(context, dark, -42, -92, 44, 7);
    oval(context, '#d9a27c', -20, -66, 8, 9);
    polygon(context, '#e8ae1f', [-31, -70], [-9, -70], [-14, -79], [-27, -79]);
    trace(context, '#2b62b8', 13, 'M-22 -52 Q-20 -48 -12 -48');
    line(context, palette.ink, 5, [38, -48], [38, -74]);
    for (let bar = 0; bar < 4; bar += 1)
      line(context, dark, 2.4, [32 + bar * 5.4, -40], [32 + bar * 5.4, -27]);
  });
}

/** A lugged wheel of radius 1. */
function paintTractorWheel(context: Context, palette: Palette): void {
  context.fillStyle = palette.ink;
  context.beginPath();
  for (let lug = 0; lug < 24; lug += 1) {
    const turn = (lug / 24) * Math.PI * 2;
    const reach = lug % 2 === 0 ? 1.05 : 0.93;
    context.lineTo(Math.cos(turn) * reach, Math.sin(turn) * reach);
  }
  context.closePath();
  context.fill();
  oval(context, '#e0b04a', 0, 0, 0.5, 0.5);
  oval(context, palette.ink, 0, 0, 0.16, 0.16);
  for (let bolt = 0; bolt < 5; bolt += 1) {
    const turn = (bolt / 5) * Math.PI * 2;
    oval(context, palette.ink, Math.cos(turn) * 0.34, Math.sin(turn) * 0.34, 0.06, 0.06);
  }
}
