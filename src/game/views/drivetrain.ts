/**
 * The drivetrain close-up, drawn true to scale from the drive side on a canvas of its own: every ring and
 * sprocket with its real teeth, turning at the real ratio, and the chain with its links on its real way.
 */
import { hubShellMm } from '../../core/model/hubKinds.ts';
import { RATED_W } from '../../core/model/motor.ts';
import type { Bike } from '../../core/model/types.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import { type Context, disc, hoop } from '../paint/pen.ts';
import type { MachineTones } from '../paint/palette.ts';
import { createSheet, deviceScale, sizeCanvas } from '../paint/sheet.ts';
import { ChainRoute, PULLEY_TEETH, placeDuring, type Wheel } from './chainPath.ts';
import { paintArm, paintCage, paintCogs } from './cogs.ts';
import { isStuck } from './stuck.ts';
import { ScenePlace } from './place.ts';
import type { Sprite } from './sprite.ts';
import { CHAIN_PITCH_MM, pitchRadiusMm } from './toothing.ts';

const NO_DASH: number[] = [];
/** Plates and pins of the chain, and the line round a wheel that is waited for (mm). */
const PLATE_DASH = [CHAIN_PITCH_MM * 0.98, CHAIN_PITCH_MM * 1.02];
const PIN_DASH = [0.01, CHAIN_PITCH_MM - 0.01];
const GOAL_DASH = [9, 11];
/** The shell bulges out behind the sprocket, and is drawn bigger than it is. */
const HUB_SEEN = 1.35;
const FLANGE_HOLES = 18;
/** A chain that only runs round is painted at so many places of its links. */
const LINK_PHASES = 12;

/** The close-up of one bike on one canvas. */
export class DrivetrainView {
  readonly #context: Context;
  readonly #bike: Bike;
  readonly #tones: MachineTones;
  readonly #route: ChainRoute;
  readonly #shellMm: number | null;
  /** Wheels by the one that carries the chain; those of them that were needed so far. */
  readonly #cassettes: Sprite[] = [];
  readonly #ringsBehind: Sprite[] = [];
  readonly #ringsFront: Sprite[] = [];
  readonly #pulley: Sprite;
  readonly #arm: Sprite;
  readonly #cage: Sprite;
  readonly #place = new ScenePlace();
  /** Device pixels for each millimetre. */
  readonly #pxPerMm: number;
  readonly #still: boolean;
  #chainLine = new Path2D();
  /** The chain as it lies now, at each place of its links that was needed so far. */
  #chainPhases: HTMLCanvasElement[] = [];
  #chainShown: HTMLCanvasElement | null = null;
  #ringAt = Number.NaN;
  #sprocketAt = Number.NaN;

  /** `width` and `height` in CSS pixels; `still` when motion is reduced. */
  constructor(
    canvas: HTMLCanvasElement,
    bike: Bike,
    tones: MachineTones,
    width: number,
    height: number,
    still: boolean,
  ) {
    this.#still = still;
    this.#context = sizeCanvas(canvas, width, height);
    this.#bike = bike;
    this.#tones = tones;
    this.#route = new ChainRoute(bike);
    this.#shellMm = hubShellMm(bike);
    const bigRing = pitchRadiusMm(bike.chainringsTeeth.at(-1) ?? 30) + 5;
    const bigSprocket = Math.max(
      pitchRadiusMm(bike.sprocketsTeeth.at(-1) ?? 20) + 5,
      this.#shellMm === null ? 0 : this.#shellMm * HUB_SEEN + 26,
    );
    const top = Math.max(bigSprocket, bigRing - this.#route.ring.y);
    const under = this.#route.hasCage ? this.#route.cageMm + 58 : 10;
    const low = Math.max(bigRing + this.#route.ring.y, bigSprocket + under);
    const long = bike.chainstayMm + bigRing + bigSprocket;
    const scale = Math.min((width - 6) / long, (height - 6) / (top + low));
    const x = (width - long * scale) / 2 + bigSprocket * scale;
    const y = (height - (top + low) * scale) / 2 + top * scale;
    const device = deviceScale();
    const pxPerMm = scale * device;
    this.#pxPerMm = pxPerMm;
    this.#place.set(x * device, y * device, 0, pxPerMm);
    this.#pulley = paintCogs([PULLEY_TEETH], pxPerMm, tones, -1, false);
    this.#arm = paintArm(pitchRadiusMm(bike.chainringsTeeth.at(-1) ?? 30) * 0.78, pxPerMm, tones);
    this.#cage = paintCage(this.#route.cageMm, pxPerMm, tones);
  }

  /**
   * Draws the machine of this frame. `shudder` 0 to 1 shakes the chain; `seated` 1 to 0 is how fresh a clean
   * shift is: the wheel that took the chain stands out for a moment.
   */
  draw(frame: RideFrame, shudder: number, seated: number): void {
    const context = this.#context;
    this.#layChain(frame);
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, context.canvas.width, context.canvas.height);
    if (this.#shellMm !== null) this.#drawHub(frame, this.#shellMm, seated);
    const ratio = frame.ringTeeth / frame.sprocketTeeth;
    const sprocketTurn = frame.crankTurns * ratio * Math.PI * 2;
    this.#lay(this.#cassette(Math.round(frame.chainAtSprocket)), 0, 0, sprocketTurn);
    if (this.#route.hasCage) this.#drawPulleys(frame);
    this.#drawRings(frame, false);
    this.#place.home(context);
    if (frame.chainOn) this.#drawChain(frame, shudder);
    else this.#drawDropped(frame.timeS);
    if (this.#drawRings(frame, true)) this.#place.home(context);
    if (frame.shift !== null && !frame.shift.hub) this.#drawGoal(frame);
    if (seated > 0) drawSeated(context, this.#route.sprocket, this.#tones, this.#still ? 0.6 : seated);
    const { guide, ring, cageRad } = this.#route;
    if (this.#route.hasCage) this.#lay(this.#cage, guide.x, guide.y, cageRad);
    if (frame.motor?.place === 'crank') this.#drawMotor(frame.motor.powerW / RATED_W);
    this.#lay(this.#arm, ring.x, ring.y, crankRad(frame));
  }

  /** A motor at the crank: a ring round the axle that fills with what it gives, and empties when it lets go. */
  #drawMotor(share: number): void {
    const context = this.#context;
    const { ring } = this.#route;
    const radius = pitchRadiusMm(this.#bike.chainringsTeeth[0] ?? 30) * 0.62;
    this.#place.home(context);
    hoop(context, this.#tones.ink, 15, ring.x, ring.y, radius);
    hoop(context, this.#tones.paper, 10, ring.x, ring.y, radius);
    context.strokeStyle = this.#tones.rider;
    context.beginPath();
    context.arc(ring.x, ring.y, radius, -Math.PI / 2, Math.PI * 2 * Math.min(1, share) - Math.PI / 2);
    context.stroke();
  }

  /**
   * The shell of a hub behind its sprocket, turning with the wheel, and round it a tooth for each of its gears: those
   * up to the one that is in are filled. While it waits for the pressure to go, a broken line runs round it.
   */
  #drawHub(frame: RideFrame, shellMm: number, seated: number): void {
    const context = this.#context;
    const { hub } = frame.gear;
    const radius = shellMm * HUB_SEEN;
    this.#place.turn(context, 0, 0, frame.wheelTurns * Math.PI * 2);
    disc(context, this.#tones.sandDark, 0, 0, radius);
    hoop(context, this.#tones.ink, 4, 0, 0, radius);
    context.beginPath();
    for (let hole = 0; hole < FLANGE_HOLES; hole++) {
      const turn = (hole / FLANGE_HOLES) * Math.PI * 2;
      context.moveTo(Math.cos(turn) * (radius - 9), Math.sin(turn) * (radius - 9));
      context.lineTo(Math.cos(turn) * (radius - 4), Math.sin(turn) * (radius - 4));
    }
    context.stroke();
    this.#place.home(context);
    if (hub !== null) this.#drawHubGears(hub, radius + 12 + seated * 5);
    if (frame.shift?.hub !== true) return;
    this.#dashedHoop(0, 0, radius + 4);
  }

  /** A broken line round a wheel that is waited for. */
  #dashedHoop(x: number, y: number, radius: number): void {
    this.#context.setLineDash(GOAL_DASH);
    hoop(this.#context, this.#tones.rider, 5, x, y, radius);
    this.#context.setLineDash(NO_DASH);
  }

  /** Over the hub, from the slowest gear on the left to the fastest on the right. */
  #drawHubGears(hub: { readonly number: number; readonly of: number }, radius: number): void {
    const context = this.#context;
    const stepRad = Math.min(0.42, Math.PI / hub.of);
    const dot = Math.min(8, radius * stepRad * 0.36);
    for (let gear = 1; gear <= hub.of; gear++) {
      const turn = -Math.PI / 2 + (gear - (hub.of + 1) / 2) * stepRad;
      const x = Math.cos(turn) * radius;
      const y = Math.sin(turn) * radius;
      disc(context, gear <= hub.number ? this.#tones.rider : this.#tones.paper, x, y, dot);
      hoop(context, this.#tones.ink, 3, x, y, dot);
    }
  }

  /** The route only changes while a derailleur works. */
  #layChain(frame: RideFrame): void {
    const chatters = !this.#still && isStuck(frame);
    const ringAt = chatters ? chatter(frame.chainAtRing, frame.timeS) : frame.chainAtRing;
    const sprocketAt = chatters ? chatter(frame.chainAtSprocket, frame.timeS) : frame.chainAtSprocket;
    if (ringAt === this.#ringAt && sprocketAt === this.#sprocketAt) return;
    this.#ringAt = ringAt;
    this.#sprocketAt = sprocketAt;
    const easier = frame.shift?.direction === 'easier';
    const ring = placeDuring(ringAt, !easier);
    const sprocket = placeDuring(sprocketAt, easier);
    this.#route.place(ring.on, ring.off, sprocket.on, sprocket.off);
    this.#chainLine = new Path2D();
    this.#traceRoute(this.#chainLine, 0);
    this.#chainPhases = [];
    this.#chainShown = null;
  }

  #lay(part: Sprite, x: number, y: number, turn: number): void {
    this.#place.turn(this.#context, x, y, turn);
    part.draw(this.#context);
  }

  /** All sprockets turn as one, so they are one picture for each that can carry the chain. */
  #cassette(lit: number): Sprite {
    const cogs =
      this.#cassettes[lit] ?? paintCogs(this.#bike.sprocketsTeeth, this.#pxPerMm, this.#tones, lit, false);
    this.#cassettes[lit] = cogs;
    return cogs;
  }

  /** Rings up to the one that carries the chain lie behind it, bigger ones in front. False when there are none. */
  #drawRings(frame: RideFrame, inFront: boolean): boolean {
    const now = Math.round(frame.chainAtRing);
    const { x, y } = this.#route.ring;
    const store = inFront ? this.#ringsFront : this.#ringsBehind;
    const teeth = this.#bike.chainringsTeeth;
    if (inFront && now >= teeth.length - 1) return false;
    let cog = store[now];
    if (!cog) {
      const shown = inFront ? teeth.slice(now + 1) : teeth.slice(0, now + 1);
      cog = paintCogs(shown, this.#pxPerMm, this.#tones, inFront ? -1 : now, true);
      store[now] = cog;
    }
    this.#lay(cog, x, y, crankRad(frame));
    return true;
  }

  #drawPulleys(frame: RideFrame): void {
    const turn = (frame.crankTurns * frame.ringTeeth * Math.PI * 2) / PULLEY_TEETH;
    this.#lay(this.#pulley, this.#route.tension.x, this.#route.tension.y, turn);
    this.#lay(this.#pulley, this.#route.guide.x, this.#route.guide.y, -turn);
  }

  #drawChain(frame: RideFrame, shudder: number): void {
    const travelled = frame.crankTurns * frame.ringTeeth * CHAIN_PITCH_MM;
    if (shudder > 0) {
      const line = new Path2D();
      this.#traceRoute(line, Math.sin(frame.timeS * 95) * 3.2 * shudder);
      this.#strokeChain(this.#context, line, travelled);
    } else if (frame.shift !== null) this.#strokeChain(this.#context, this.#chainLine, travelled);
    else this.#layChainPhase(travelled);
  }

  /**
   * Strokes with gaps cost far more than a picture, so a chain that stays on its wheels is painted once for each phase. A
   * phase that is not there yet is painted for the next time; until then its neighbour is shown.
   */
  #layChainPhase(travelledMm: number): void {
    const round = travelledMm / (2 * CHAIN_PITCH_MM);
    const phase = Math.floor((round - Math.floor(round)) * LINK_PHASES);
    const known = this.#chainPhases[phase];
    const shown = known ?? this.#chainShown;
    if (shown === null) this.#strokeChain(this.#context, this.#chainLine, travelledMm);
    else {
      this.#context.setTransform(1, 0, 0, 1, 0, 0);
      this.#context.drawImage(shown, 0, 0);
      this.#place.home(this.#context);
    }
    this.#chainShown = known ?? this.#paintChainPhase(phase);
  }

  #paintChainPhase(phase: number): HTMLCanvasElement {
    const { width, height } = this.#context.canvas;
    const { canvas, context } = createSheet(width, height, 1);
    this.#place.home(context);
    this.#strokeChain(context, this.#chainLine, (phase / LINK_PHASES) * 2 * CHAIN_PITCH_MM);
    this.#chainPhases[phase] = canvas;
    return canvas;
  }

  #strokeChain(context: Context, line: Path2D, travelledMm: number): void {
    context.lineJoin = 'round';
    context.lineCap = 'butt';
    context.strokeStyle = this.#tones.ink;
    context.lineWidth = 6.4;
    context.stroke(line);
    context.lineWidth = 9.6;
    context.setLineDash(PLATE_DASH);
    context.lineDashOffset = -(travelledMm % (2 * CHAIN_PITCH_MM));
    context.stroke(line);
    context.lineCap = 'round';
    context.strokeStyle = this.#tones.paper;
    context.lineWidth = 3.6;
    context.setLineDash(PIN_DASH);
    context.lineDashOffset = -(travelledMm % CHAIN_PITCH_MM);
    context.stroke(line);
    context.setLineDash(NO_DASH);
  }

  #traceRoute(line: Path2D, shake: number): void {
    const { xs, ys, count } = this.#route;
    line.moveTo(xs[0] ?? 0, ys[0] ?? 0);
    for (let i = 1; i < count; i++) {
      const jitter = i % 2 === 0 ? shake : -shake;
      line.lineTo((xs[i] ?? 0) + jitter * 0.3, (ys[i] ?? 0) + jitter);
    }
  }

  /** While the chain moves, the wheel it is on its way to is ringed by a broken line. */
  #drawGoal(frame: RideFrame): void {
    const { shift } = frame;
    if (shift === null) return;
    const rear = shift.derailleur === 'rear';
    const at = rear ? frame.chainAtSprocket : frame.chainAtRing;
    const climbs = rear === (shift.direction === 'easier');
    const teeth = rear ? this.#bike.sprocketsTeeth : this.#bike.chainringsTeeth;
    const goal = teeth[climbs ? Math.ceil(at) : Math.floor(at)];
    if (goal === undefined) return;
    this.#context.lineCap = 'round';
    const { x, y } = rear ? this.#route.sprocket : this.#route.ring;
    this.#dashedHoop(x, y, pitchRadiusMm(goal) + 1);
  }

  /** A chain that has come off lies on the bottom bracket, hangs below the cage and swings. */
  #drawDropped(timeS: number): void {
    const context = this.#context;
    const { sprocket, ring, tension } = this.#route;
    const swing = this.#still ? 0 : Math.sin(timeS * 4.4) * 16 + Math.sin(timeS * 9.1) * 5;
    const bounce = this.#still ? 0 : Math.sin(timeS * 11) * 5;
    context.strokeStyle = this.#tones.ink;
    context.lineCap = 'round';
    for (let pass = 0; pass < 2; pass++) {
      context.lineWidth = pass === 1 ? 9.6 : 6.4;
      context.setLineDash(pass === 1 ? PLATE_DASH : NO_DASH);
      context.beginPath();
      context.moveTo(tension.x, tension.y + tension.radiusOn);
      context.quadraticCurveTo(ring.x * 0.5 + swing, tension.y + 96, ring.x - 42 + swing, ring.y + 84);
      context.quadraticCurveTo(ring.x - 4 + swing * 0.4, ring.y + 40, ring.x + 26, ring.y + 12);
      context.quadraticCurveTo(ring.x + 30, ring.y - 14, ring.x - 6, ring.y - 26);
      context.quadraticCurveTo(ring.x * 0.5, ring.y + 30 + bounce, 0, -sprocket.radiusOff);
      context.arc(0, 0, sprocket.radiusOff, -Math.PI / 2, Math.PI * 0.7, true);
      context.stroke();
    }
    context.setLineDash(NO_DASH);
  }
}

/** Puffs of paper that fly off the sprocket. */
const PUFFS = 9;

/**
 * The answer to a clean shift: a ring that opens from the sprocket that took the chain, and puffs of paper that fly off it.
 * `fresh` 1 is just now, 0 gone.
 */
function drawSeated(
  context: Context,
  on: Readonly<Wheel>,
  { ink, paper }: Pick<MachineTones, 'ink' | 'paper'>,
  fresh: number,
): void {
  const gone = 1 - fresh;
  context.globalAlpha = Math.min(1, fresh * 1.6);
  hoop(context, ink, 2 + 7 * fresh, on.x, on.y, on.radiusOn + 8 + gone * 18);
  for (let i = 0; i < PUFFS; i += 1) {
    const turn = (i / PUFFS) * Math.PI * 2 + 0.3;
    const away = on.radiusOn + 18 + gone * (26 + (i % 3) * 10);
    const x = on.x + Math.cos(turn) * away;
    const y = on.y + Math.sin(turn) * away;
    const radius = (5 + (i % 3) * 2) * (0.4 + fresh);
    disc(context, paper, x, y, radius);
    hoop(context, ink, 2.5, x, y, radius);
  }
  context.globalAlpha = 1;
}

/** A chain that hangs jumps up to the next wheel and falls back, some seven times a second. */
function chatter(at: number, timeS: number): number {
  const low = Math.floor(at);
  return at === low ? at : low + (Math.sin(timeS * 44) > 0 ? 0.75 : 0.2);
}

/** The near crank arm's direction (rad); at the start of a turn it points up. */
function crankRad(frame: RideFrame): number {
  return frame.crankTurns * Math.PI * 2 - Math.PI / 2;
}
