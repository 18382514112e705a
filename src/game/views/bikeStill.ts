/**
 * The parts of the bike that keep their shape: wheel, frame, fork, saddle, bars, bottle, painted once into
 * sprites by `bike.ts`. Metres, origin at the crank axle, y down.
 */
import { hubShellMm } from '../../core/model/hubKinds.ts';
import type { Bike, Motor } from '../../core/model/types.ts';
import { blot, box, type Context, disc, hoop, line, lines, oval, trace } from '../paint/pen.ts';
import type { Palette, RiderTones } from '../paint/palette.ts';
import type { BikeShape } from './bikeShape.ts';
import type { Spot } from './legs.ts';
import { pitchRadiusM } from './toothing.ts';

/** The shell bulges out behind the sprocket, and is drawn a little bigger than it is. */
const HUB_SEEN = 1.5;
const SPOKE_PAIRS = 9;
/** Roller chain pitch (m). */
const LINK_M = 0.0127;

/** The crank axle. */
const AXLE = [0, 0] as const;

/** A point of the bike, or one so far to the right of it and below. */
function at({ x, y }: Readonly<Spot>, right = 0, down = 0) {
  return [x + right, y + down] as const;
}

/** What is ridden, and how it is painted. */
export interface BikeLook {
  readonly bike: Bike;
  readonly palette: Palette;
  /** Strength of the paper rim round wheels and frame, 0 to 1. */
  readonly haloAlpha: number;
  /** Device pixels for each metre. */
  readonly pxPerM: number;
  /** Nothing sways or bobs: a chain that came off hangs quietly. */
  readonly still: boolean;
}

/** What the painters need to know. */
export interface BikeParts extends BikeLook {
  readonly shape: BikeShape;
  readonly tones: RiderTones;
}

/** Everything but spokes, cranks and chain. */
export function paintStill(context: Context, parts: BikeParts): void {
  const { rear, front } = parts.shape;
  drawHalo(context, parts);
  drawFrame(context, parts);
  drawRound(context, parts, rear);
  context.translate(rear.x, rear.y);
  paintRear(context, parts);
  context.translate(-rear.x, -rear.y);
  drawRound(context, parts, front);
  if (parts.bike.motor?.place !== 'wheel') return;
  // The thick hub of a motor in a wheel.
  disc(context, parts.palette.ink, front.x, front.y, 0.092);
  disc(context, parts.palette.inkSoft, front.x, front.y, 0.082);
}

/** A thin rim of paper round wheels and frame lifts the bike off dark woods. */
function drawHalo(context: Context, parts: BikeParts): void {
  const { rear, front, seatTubeTop, saddle, headTop, headLow, stem, bar, wheelRadius } = parts.shape;
  const { paper } = parts.palette;
  context.globalAlpha = parts.haloAlpha;
  context.strokeStyle = paper;
  context.lineCap = 'round';
  context.lineJoin = 'round';
  context.lineWidth = 0.03;
  context.beginPath();
  context.arc(rear.x, rear.y, wheelRadius, 0, Math.PI * 2);
  context.moveTo(front.x + wheelRadius, front.y);
  context.arc(front.x, front.y, wheelRadius, 0, Math.PI * 2);
  context.stroke();
  line(context, paper, 0.056, at(seatTubeTop), AXLE, at(headLow), at(headTop, 0, 0.03), at(seatTubeTop));
  lines(
    context,
    paper,
    0.038,
    [AXLE, at(rear), at(seatTubeTop), at(saddle)],
    [at(front), at(headLow), at(stem), at(bar)],
  );
  context.globalAlpha = 1;
}

/** What of a wheel turns to be seen, as one line: spokes, and the valve at the rim. */
export function spokesOf(shape: BikeShape): Path2D {
  const rim = rimOf(shape);
  const path = new Path2D();
  for (let i = 0; i < SPOKE_PAIRS; i++) {
    const turn = (i / SPOKE_PAIRS) * Math.PI * 2;
    for (let side = -1; side <= 1; side += 2) {
      const hubTurn = turn + side * 1.25;
      path.moveTo(Math.cos(hubTurn) * 0.021, Math.sin(hubTurn) * 0.021);
      path.lineTo(Math.cos(turn + side * 0.1) * rim, Math.sin(turn + side * 0.1) * rim);
    }
  }
  for (const beside of [-0.004, 0, 0.004]) {
    path.moveTo(rim - 0.03, beside);
    path.lineTo(rim - 0.008, beside);
  }
  return path;
}

/** Width of the lines of `spokesOf` (m). */
export const SPOKE_M = 0.0052;

function tyreOf({ tyre }: BikeShape): number {
  return Math.max(0.026, tyre * 0.92);
}

function rimOf(shape: BikeShape): number {
  return shape.wheelRadius - tyreOf(shape);
}

/** What of a wheel looks the same however it has turned: tyre, rim and axle. */
function drawRound(context: Context, { shape, palette }: BikeParts, hub: Readonly<Spot>): void {
  const tyre = tyreOf(shape);
  hoop(context, palette.sand, 0.02, hub.x, hub.y, rimOf(shape) - 0.006);
  hoop(context, palette.ink, tyre, hub.x, hub.y, shape.wheelRadius - tyre / 2);
  disc(context, palette.ink, hub.x, hub.y, 0.024);
}

function drawFrame(context: Context, parts: BikeParts): void {
  const { rear, front, seatTubeTop, saddle, headTop, headLow } = parts.shape;
  const thick = parts.shape.wheelRadius > 0.3 ? 1 : 1.12;
  context.lineCap = 'round';
  context.lineJoin = 'round';
  const { frame, frameLight } = parts.tones;
  line(context, frame, 0.019 * thick, at(seatTubeTop, 0, 0.03), at(rear), AXLE);
  context.lineWidth = 0.03 * thick;
  context.beginPath();
  context.moveTo(headLow.x, headLow.y);
  context.quadraticCurveTo(front.x - 0.052, front.y - 0.12, front.x, front.y);
  context.stroke();
  lines(
    context,
    frame,
    0.037 * thick,
    [AXLE, at(seatTubeTop), at(headTop, 0.008, 0.03)],
    [AXLE, at(headLow, -0.008, -0.03)],
  );
  line(context, frame, 0.046 * thick, at(headTop), at(headLow));
  lines(
    context,
    frameLight,
    0.008,
    [[0.014, -0.026], at(headLow, -0.024, -0.028)],
    [at(seatTubeTop, 0.03, -0.01), at(headTop, -0.012, 0.022)],
  );
  line(context, parts.palette.inkSoft, 0.025, at(seatTubeTop), at(saddle));
  if (parts.bike.motor === undefined) drawBottle(context, parts);
  else drawBattery(context, parts, parts.bike.motor.place);
  drawSaddle(context, parts);
  drawBars(context, parts);
}

/** A bottle on the down tube; on a small frame it stays away. */
function drawBottle(context: Context, parts: BikeParts): void {
  const { headLow } = parts.shape;
  if (parts.shape.wheelRadius < 0.3) return;
  const length = Math.sqrt(headLow.x * headLow.x + headLow.y * headLow.y);
  context.save();
  context.transform(headLow.x / length, headLow.y / length, -headLow.y / length, headLow.x / length, 0, 0);
  context.translate(0.16, -0.052);
  context.fillStyle = parts.palette.paper;
  context.beginPath();
  context.roundRect(0, -0.032, 0.15, 0.064, 0.014);
  context.roundRect(0.146, -0.018, 0.04, 0.036, 0.01);
  context.fill();
  box(context, parts.tones.jersey, 0.05, -0.032, 0.034, 0.064);
  context.restore();
}

/** The battery of a crank motor lies on the down tube, that of a wheel motor behind the seat tube; the crank motor round the axle. */
function drawBattery(context: Context, { shape, palette }: BikeParts, place: Motor['place']): void {
  const { x, y } = place === 'crank' ? shape.headLow : shape.seatTubeTop;
  const length = Math.sqrt(x * x + y * y);
  context.save();
  context.transform(x / length, y / length, -y / length, x / length, 0, 0);
  const low = place === 'crank' ? -0.088 : -0.1;
  box(context, palette.ink, length * 0.28, low, length * 0.54, 0.076, 0.022);
  box(context, palette.inkSoft, length * 0.28 + 0.01, low + 0.01, length * 0.54 - 0.02, 0.056, 0.016);
  context.restore();
  if (place === 'wheel') return;
  oval(context, palette.ink, 0.004, -0.02, 0.108, 0.088, -0.3);
  oval(context, palette.inkSoft, 0.004, -0.02, 0.098, 0.078, -0.3);
}

function drawSaddle(context: Context, parts: BikeParts): void {
  const { saddle } = parts.shape;
  const seat = 'M-0.125 -0.022 Q-0.02 -0.012 0.15 -0.006 Q0.155 0.018 0.04 0.018 Q-0.06 0.05 -0.125 0.016 Z';
  blot(context, parts.palette.ink, seat, saddle.x, saddle.y);
}

function drawBars(context: Context, parts: BikeParts): void {
  const { headTop, stem, bar, grip, flatBar } = parts.shape;
  const { ink, inkSoft } = parts.palette;
  line(context, inkSoft, 0.03, at(headTop), at(stem, 0, 0.008), at(bar));
  if (flatBar) {
    const bend = `M0 0 Q0.01 -0.02 ${grip.x - 0.045 - bar.x} ${grip.y + 0.008 - bar.y}`;
    trace(context, ink, 0.027, bend, bar.x, bar.y);
    trace(context, ink, 0.014, 'M0.01 -0.006 L0.05 0.035', bar.x, bar.y);
    return;
  }
  trace(context, ink, 0.027, 'M0 0 L0.05 -0.002 C0.15 0.005 0.12 0.135 0.01 0.125', bar.x, bar.y);
  line(context, ink, 0.034, at(bar, 0.06, 0.002), at(grip, 0.018, -0.018));
  trace(context, ink, 0.013, 'M0.016 0 Q0.045 0.07 0.012 0.125', grip.x, grip.y);
}

/** What sits on the rear axle: the shell of a hub before which its one sprocket lies, or the biggest sprocket of many. */
function paintRear(context: Context, { bike, palette }: BikeParts): void {
  const shellMm = hubShellMm(bike);
  const radius = pitchRadiusM(bike.sprocketsTeeth.at(-1) ?? 20);
  if (shellMm !== null) {
    disc(context, palette.inkSoft, 0, 0, (shellMm / 1000) * HUB_SEEN);
    hoop(context, palette.ink, 0.008, 0, 0, radius - 0.003);
    return;
  }
  // A hoop with a few spokes behind the chain.
  hoop(context, palette.inkSoft, 0.012, 0, 0, radius - 0.006);
  context.lineWidth = 0.006;
  drawArms(context, 5, 0, radius - 0.008);
}

/** Arms from the axle outwards, in the line that is set. */
function drawArms(context: Context, count: number, firstRad: number, reach: number): void {
  context.beginPath();
  for (let arm = 0; arm < count; arm++) {
    const turn = (arm / count) * Math.PI * 2 + firstRad;
    context.moveTo(0, 0);
    context.lineTo(Math.cos(turn) * reach, Math.sin(turn) * reach);
  }
  context.stroke();
}

/** A chainring with the links that lie on it, its arms and the axle. */
export function paintRing(context: Context, palette: Palette, radius: number): void {
  hoop(context, palette.ink, 0.011, 0, 0, radius - 0.008);
  context.setLineDash([LINK_M, LINK_M]);
  hoop(context, palette.ink, 0.007, 0, 0, radius + 0.002);
  context.setLineDash([]);
  context.lineWidth = 0.014;
  drawArms(context, 4, 0.4, radius - 0.01);
  disc(context, palette.ink, 0, 0, 0.027);
  disc(context, palette.sand, 0, 0, 0.01);
}

/** A crank arm that points up. */
export function paintCrank(context: Context, palette: Palette, lengthM: number, far: boolean): void {
  context.lineCap = 'round';
  line(context, far ? palette.inkSoft : palette.ink, far ? 0.022 : 0.028, [0, 0], [0, -lengthM]);
}

/** A pedal round its spindle; it stays level. */
export function paintPedal(context: Context, palette: Palette): void {
  context.lineCap = 'round';
  line(context, palette.ink, 0.024, [-0.036, 0.012], [0.04, 0.006]);
}
