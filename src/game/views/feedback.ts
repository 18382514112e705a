/**
 * Small answers of the picture to what just happened: a crisp ring and tick for a clean shift, dark crumbs of
 * paper for one under load, a bar where a lever met its stop. A fixed set of bits is reused; nothing is created per frame.
 */
import { CLEAN_LOAD, HEAVY_LOAD } from '../../core/model/shift.ts';
import type { RideEvent, RideFrame } from '../../core/ride/types.ts';
import type { Context } from '../paint/pen.ts';
import type { Palette } from '../paint/palette.ts';
import type { Staging } from './staging.ts';
import { isStuck } from './stuck.ts';

const CRUMBS = 18;
const TICK_S = 0.55;
const CRUMB_S = 0.7;
const SHUDDER_S = 0.4;
const STOP_S = 0.5;
/** Puffs of a clean shift, blown back from the wheel. */
const PUFFS = 6;
/** A chain that hangs throws off paper this often (s). */
const GRIND_EVERY_S = 0.2;
/** Points of the jagged star behind the sprockets of a chain that hangs, and how often it jumps (a second). */
const STAR_POINTS = 9;
const STAR_JUMPS = 12;
/** How far it jerks the bike (CSS px). */
const JERK_PX = 4.5;

/** Feedback of one ride, drawn around the rear sprockets. */
export class Feedback {
  readonly #palette: Palette;
  readonly #still: boolean;
  readonly #crumbs = Array.from({ length: CRUMBS }, () => {
    return { x: 0, y: 0, speedX: 0, speedY: 0, turn: 0, size: 0, leftS: 0 };
  });
  #tickLeftS = 0;
  #shudderLeftS = 0;
  #crumbsLeftS = 0;
  #stopLeftS = 0;
  #stopSide = 1;
  #nextCrumb = 0;
  #grindDueS = 0;
  #jerkPx = 0;
  #stuck = 0;
  #timeS = 0;

  constructor({ palette, look }: Staging) {
    this.#palette = palette;
    this.#still = look.reducedMotion;
  }

  apply(event: RideEvent): void {
    switch (event.kind) {
      case 'shift-done':
        if (event.load >= HEAVY_LOAD) this.#grind(9);
        else if (event.load <= CLEAN_LOAD) this.#tickLeftS = TICK_S;
        return;
      case 'shift-hung':
        this.#grind(5);
        return;
      case 'chain-dropped':
        this.#grind(CRUMBS);
        return;
      case 'shift-refused':
        this.#stopLeftS = STOP_S;
        this.#stopSide = event.direction === 'easier' ? -1 : 1;
        return;
      case 'shift-waiting':
      case 'chain-crossed':
      case 'chain-restored':
      case 'foot-down':
      case 'pushed-off':
      case 'stopped-at-line':
      case 'line-missed':
      case 'reserve-empty':
      case 'battery-empty':
      case 'reserve-back':
      case 'finished':
        return;
    }
  }

  /** Follows a chain that hangs: it jerks the bike and throws off paper until it moves. */
  update(frame: RideFrame, elapsedS: number): void {
    const stuck = isStuck(frame);
    const share = Math.max(stuck ? 1 : 0, this.#shudderLeftS / SHUDDER_S);
    this.#timeS = frame.timeS;
    this.#stuck += ((stuck ? 1 : 0) - this.#stuck) * (1 - 1 / (1 + elapsedS * 16));
    this.#jerkPx = this.#still ? 0 : Math.sin(frame.timeS * 43) * JERK_PX * share;
    this.#grindDueS = stuck ? this.#grindDueS - elapsedS : 0;
    if (!stuck || this.#grindDueS > 0) return;
    this.#grindDueS = GRIND_EVERY_S;
    this.#grind(3);
  }

  /** Shift of bike and rider: forwards after a clean one, to and fro under a chain that hangs (CSS pixels). */
  get nudgePx(): number {
    const share = this.#tickLeftS / TICK_S;
    return this.#jerkPx + (this.#still ? 0 : 3 * share * share);
  }

  #grind(count: number): void {
    this.#shudderLeftS = SHUDDER_S;
    this.#crumbsLeftS = CRUMB_S;
    for (let i = 0; i < count; i++) {
      const crumb = this.#crumbs[this.#nextCrumb];
      this.#nextCrumb = (this.#nextCrumb + 1) % CRUMBS;
      if (!crumb) continue;
      const spread = i / count;
      crumb.x = (spread - 0.5) * 14;
      crumb.y = 4;
      crumb.speedX = (spread - 0.7) * 120;
      crumb.speedY = -40 - ((i * 37) % 60);
      crumb.turn = i;
      crumb.size = 3 + ((i * 13) % 5);
      crumb.leftS = CRUMB_S;
    }
  }

  /** Draws around (x, y), the rear axle on screen (CSS pixels). */
  draw(context: Context, x: number, y: number, scale: number, elapsedS: number): void {
    this.#shudderLeftS = Math.max(0, this.#shudderLeftS - elapsedS);
    if (this.#stuck > 0.05) this.#drawStar(context, x, y, scale);
    if (this.#tickLeftS > 0) this.#drawTick(context, x, y, scale, elapsedS);
    if (this.#stopLeftS > 0) this.#drawStop(context, x, y, scale, elapsedS);
    if (this.#crumbsLeftS <= 0) return;
    this.#crumbsLeftS -= elapsedS;
    context.fillStyle = this.#palette.ink;
    for (const crumb of this.#crumbs) {
      if (crumb.leftS <= 0) continue;
      crumb.leftS -= elapsedS;
      if (this.#still) continue;
      crumb.speedY += 420 * elapsedS;
      crumb.x += crumb.speedX * elapsedS;
      crumb.y += crumb.speedY * elapsedS;
      crumb.turn += elapsedS * 7;
      const cos = Math.cos(crumb.turn) * crumb.size * scale;
      const sin = Math.sin(crumb.turn) * crumb.size * scale;
      const cx = x + crumb.x * scale;
      const cy = y + crumb.y * scale;
      context.beginPath();
      context.moveTo(cx + cos, cy + sin);
      context.lineTo(cx - sin, cy + cos);
      context.lineTo(cx - cos * 0.5, cy - sin);
      context.closePath();
      context.fill();
    }
  }

  /** Teeth against teeth: a jagged star round the sprockets, jumping from one shape to another. */
  #drawStar(context: Context, x: number, y: number, scale: number): void {
    const jump = this.#still ? 0 : Math.floor(this.#timeS * STAR_JUMPS);
    context.globalAlpha = this.#stuck;
    context.beginPath();
    for (let i = 0; i < STAR_POINTS * 2; i++) {
      const turn = (i / STAR_POINTS) * Math.PI + (jump % 3) * 0.21;
      const reach = (i % 2 === 0 ? 36 + ((i * 5 + jump * 7) % 13) : 22) * scale;
      context.lineTo(x + Math.cos(turn) * reach, y + Math.sin(turn) * reach);
    }
    context.closePath();
    context.lineJoin = 'miter';
    const { ink, attention } = this.#palette;
    strokeTwice(context, ink, 6 * scale, attention, 3.2 * scale);
    context.globalAlpha = 1;
  }

  #drawStop(context: Context, x: number, y: number, scale: number, elapsedS: number): void {
    const share = this.#stopLeftS / STOP_S;
    this.#stopLeftS = Math.max(0, this.#stopLeftS - elapsedS);
    const push = this.#still ? 0 : this.#stopSide * share * share * 3 * scale;
    const top = y - 46 * scale;
    context.globalAlpha = Math.min(1, share * 2.5);
    context.lineCap = 'round';
    context.lineJoin = 'round';
    traceStop(context, x + push, top, this.#stopSide, scale);
    strokeTwice(context, this.#palette.paper, 7 * scale, this.#palette.ink, 3 * scale);
    context.globalAlpha = 1;
  }

  #drawTick(context: Context, x: number, y: number, scale: number, elapsedS: number): void {
    const share = this.#tickLeftS / TICK_S;
    this.#tickLeftS = Math.max(0, this.#tickLeftS - elapsedS);
    const radius = (this.#still ? 20 : 16 + (1 - share) * 16) * scale;
    context.globalAlpha = Math.min(1, share * 1.6);
    traceTick(context, x, y, radius, scale);
    strokeTwice(context, this.#palette.paper, 4.5 * scale, this.#palette.ink, 2 * scale);
    this.#drawPuffs(context, x, y, scale, share);
    context.globalAlpha = 1;
  }

  #drawPuffs(context: Context, x: number, y: number, scale: number, share: number): void {
    const gone = this.#still ? 0.4 : 1 - share;
    context.fillStyle = this.#palette.paper;
    for (let i = 0; i < PUFFS; i++) {
      const back = (18 + gone * (34 + i * 9)) * scale;
      const size = (3.5 + (i % 3) * 2) * (1.2 - gone * 0.7) * scale;
      context.beginPath();
      context.arc(x - back, y + ((i % 3) - 1) * (5 + gone * 12) * scale, size, 0, Math.PI * 2);
      context.fill();
      context.stroke();
    }
  }
}

/** Strokes the path as a thin line on a wide one. */
function strokeTwice(context: Context, rim: string, rimPx: number, core: string, corePx: number): void {
  context.strokeStyle = rim;
  context.lineWidth = rimPx;
  context.stroke();
  context.strokeStyle = core;
  context.lineWidth = corePx;
  context.stroke();
}

/** An arrow against a bar: no sprocket further that way. */
function traceStop(context: Context, x: number, y: number, side: number, scale: number): void {
  context.beginPath();
  context.moveTo(x + 13 * side * scale, y - 10 * scale);
  context.lineTo(x + 13 * side * scale, y + 10 * scale);
  context.moveTo(x - 12 * side * scale, y);
  context.lineTo(x + 7 * side * scale, y);
  context.moveTo(x + 1 * side * scale, y - 6 * scale);
  context.lineTo(x + 7 * side * scale, y);
  context.lineTo(x + 1 * side * scale, y + 6 * scale);
}

function traceTick(context: Context, x: number, y: number, radius: number, scale: number): void {
  context.beginPath();
  context.arc(x, y, radius, 0, Math.PI * 2);
  context.moveTo(x - 5 * scale, y - radius - 12 * scale);
  context.lineTo(x - 1 * scale, y - radius - 7 * scale);
  context.lineTo(x + 7 * scale, y - radius - 17 * scale);
}
