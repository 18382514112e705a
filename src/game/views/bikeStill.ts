/**
 * The parts of the bike that keep their shape: wheel, frame, fork, saddle, bars, bottle, painted once into
 * sprites by `bike.ts`. Metres, origin at the crank axle, y down.
 */
import { type Context, disc, hoop, line, oval } from '../paint/pen.ts';
import type { Palette, RiderTones } from '../paint/palette.ts';
import type { BikeShape } from './bikeShape.ts';
import type { Spot } from './legs.ts';

const SPOKE_PAIRS = 9;
/** Roller chain pitch (m). */
const LINK_M = 0.0127;

/** What the painters need to know. */
interface StillParts {
  readonly shape: BikeShape;
  readonly palette: Palette;
  readonly tones: RiderTones;
  /** Strength of the paper rim round wheels and frame, 0 to 1. */
  readonly haloAlpha: number;
  /** Where a motor sits, or null. */
  readonly motor: 'crank' | 'wheel' | null;
}

/** Everything but spokes, cranks and chain. `paintRear` and `paintFront` draw what sits on the axles, round the origin. */
export function paintStill(
  context: Context,
  parts: StillParts,
  paintRear: () => void,
  paintFront: () => void,
): void {
  const { rear, front } = parts.shape;
  drawHalo(context, parts);
  drawFrame(context, parts);
  for (const [at, paint] of [
    [rear, paintRear],
    [front, paintFront],
  ] as const) {
    drawRound(context, parts, at);
    context.translate(at.x, at.y);
    paint();
    context.translate(-at.x, -at.y);
  }
}

/** A thin rim of paper round wheels and frame lifts the bike off dark woods. */
function drawHalo(context: Context, parts: StillParts): void {
  const { rear, front, seatTubeTop, saddle, headTop, headLow, stem, bar, wheelRadius } = parts.shape;
  context.globalAlpha = parts.haloAlpha;
  context.strokeStyle = parts.palette.paper;
  context.lineCap = 'round';
  context.lineJoin = 'round';
  context.lineWidth = 0.03;
  context.beginPath();
  context.arc(rear.x, rear.y, wheelRadius, 0, Math.PI * 2);
  context.moveTo(front.x + wheelRadius, front.y);
  context.arc(front.x, front.y, wheelRadius, 0, Math.PI * 2);
  context.stroke();
  context.lineWidth = 0.056;
  context.beginPath();
  context.moveTo(seatTubeTop.x, seatTubeTop.y);
  context.lineTo(0, 0);
  context.lineTo(headLow.x, headLow.y);
  context.lineTo(headTop.x, headTop.y + 0.03);
  context.lineTo(seatTubeTop.x, seatTubeTop.y);
  context.stroke();
  context.lineWidth = 0.038;
  context.beginPath();
  context.moveTo(0, 0);
  context.lineTo(rear.x, rear.y);
  context.lineTo(seatTubeTop.x, seatTubeTop.y);
  context.lineTo(saddle.x, saddle.y);
  context.moveTo(front.x, front.y);
  context.lineTo(headLow.x, headLow.y);
  context.lineTo(stem.x, stem.y);
  context.lineTo(bar.x, bar.y);
  context.stroke();
  context.globalAlpha = 1;
}

/** What of a wheel turns to be seen, as one line: spokes, and the valve at the rim. */
export function spokesOf({ shape }: Pick<StillParts, 'shape'>): Path2D {
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
function drawRound(context: Context, { shape, palette }: StillParts, at: Readonly<Spot>): void {
  const tyre = tyreOf(shape);
  hoop(context, palette.sand, 0.02, at.x, at.y, rimOf(shape) - 0.006);
  hoop(context, palette.ink, tyre, at.x, at.y, shape.wheelRadius - tyre / 2);
  disc(context, palette.ink, at.x, at.y, 0.024);
}

function drawFrame(context: Context, parts: StillParts): void {
  const { rear, front, seatTubeTop, saddle, headTop, headLow } = parts.shape;
  const thick = parts.shape.wheelRadius > 0.3 ? 1 : 1.12;
  context.lineCap = 'round';
  context.lineJoin = 'round';
  line(
    context,
    parts.tones.frame,
    0.019 * thick,
    [seatTubeTop.x, seatTubeTop.y + 0.03],
    [rear.x, rear.y],
    [0, 0],
  );
  context.lineWidth = 0.03 * thick;
  context.beginPath();
  context.moveTo(headLow.x, headLow.y);
  context.quadraticCurveTo(front.x - 0.052, front.y - 0.12, front.x, front.y);
  context.stroke();
  context.lineWidth = 0.037 * thick;
  context.beginPath();
  context.moveTo(0, 0);
  context.lineTo(seatTubeTop.x, seatTubeTop.y);
  context.lineTo(headTop.x + 0.008, headTop.y + 0.03);
  context.moveTo(0, 0);
  context.lineTo(headLow.x - 0.008, headLow.y - 0.03);
  context.stroke();
  line(context, parts.tones.frame, 0.046 * thick, [headTop.x, headTop.y], [headLow.x, headLow.y]);
  context.strokeStyle = parts.tones.frameLight;
  context.lineWidth = 0.008;
  context.beginPath();
  context.moveTo(0.014, -0.026);
  context.lineTo(headLow.x - 0.024, headLow.y - 0.028);
  context.moveTo(seatTubeTop.x + 0.03, seatTubeTop.y - 0.01);
  context.lineTo(headTop.x - 0.012, headTop.y + 0.022);
  context.stroke();
  line(context, parts.palette.inkSoft, 0.025, [seatTubeTop.x, seatTubeTop.y], [saddle.x, saddle.y]);
  if (parts.motor === null) drawBottle(context, parts);
  else drawBattery(context, parts, parts.motor);
  drawSaddle(context, parts);
  drawBars(context, parts);
}

/** A bottle on the down tube; on a small frame it stays away. */
function drawBottle(context: Context, parts: StillParts): void {
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
  context.fillStyle = parts.tones.jersey;
  context.fillRect(0.05, -0.032, 0.034, 0.064);
  context.restore();
}

/** The battery of a crank motor lies on the down tube, that of a wheel motor behind the seat tube; the crank motor round the axle. */
function drawBattery(
  context: Context,
  { shape, palette }: StillParts,
  place: NonNullable<StillParts['motor']>,
): void {
  const { x, y } = place === 'crank' ? shape.headLow : shape.seatTubeTop;
  const length = Math.sqrt(x * x + y * y);
  context.save();
  context.transform(x / length, y / length, -y / length, x / length, 0, 0);
  const low = place === 'crank' ? -0.088 : -0.1;
  context.fillStyle = palette.ink;
  context.beginPath();
  context.roundRect(length * 0.28, low, length * 0.54, 0.076, 0.022);
  context.fill();
  context.fillStyle = palette.inkSoft;
  context.beginPath();
  context.roundRect(length * 0.28 + 0.01, low + 0.01, length * 0.54 - 0.02, 0.056, 0.016);
  context.fill();
  context.restore();
  if (place === 'wheel') return;
  oval(context, palette.ink, 0.004, -0.02, 0.108, 0.088, -0.3);
  oval(context, palette.inkSoft, 0.004, -0.02, 0.098, 0.078, -0.3);
}

function drawSaddle(context: Context, parts: StillParts): void {
  const { saddle } = parts.shape;
  context.fillStyle = parts.palette.ink;
  context.beginPath();
  context.moveTo(saddle.x - 0.125, saddle.y - 0.022);
  context.quadraticCurveTo(saddle.x - 0.02, saddle.y - 0.012, saddle.x + 0.15, saddle.y - 0.006);
  context.quadraticCurveTo(saddle.x + 0.155, saddle.y + 0.018, saddle.x + 0.04, saddle.y + 0.018);
  context.quadraticCurveTo(saddle.x - 0.06, saddle.y + 0.05, saddle.x - 0.125, saddle.y + 0.016);
  context.closePath();
  context.fill();
}

function drawBars(context: Context, parts: StillParts): void {
  const { headTop, stem, bar, grip, flatBar } = parts.shape;
  line(
    context,
    parts.palette.inkSoft,
    0.03,
    [headTop.x, headTop.y],
    [stem.x, stem.y + 0.008],
    [bar.x, bar.y],
  );
  context.strokeStyle = parts.palette.ink;
  context.lineWidth = 0.027;
  context.beginPath();
  context.moveTo(bar.x, bar.y);
  if (flatBar) {
    context.quadraticCurveTo(bar.x + 0.01, bar.y - 0.02, grip.x - 0.045, grip.y + 0.008);
  } else {
    context.lineTo(bar.x + 0.05, bar.y - 0.002);
    context.bezierCurveTo(
      bar.x + 0.15,
      bar.y + 0.005,
      bar.x + 0.12,
      bar.y + 0.135,
      bar.x + 0.01,
      bar.y + 0.125,
    );
  }
  context.stroke();
  context.lineWidth = flatBar ? 0.014 : 0.034;
  context.beginPath();
  if (flatBar) {
    context.moveTo(bar.x + 0.01, bar.y - 0.006);
    context.lineTo(bar.x + 0.05, bar.y + 0.035);
  } else {
    context.moveTo(bar.x + 0.06, bar.y + 0.002);
    context.lineTo(grip.x + 0.018, grip.y - 0.018);
    context.moveTo(grip.x + 0.016, grip.y + 0.005);
  }
  context.stroke();
  if (!flatBar) {
    context.lineWidth = 0.013;
    context.beginPath();
    context.moveTo(grip.x + 0.016, grip.y);
    context.quadraticCurveTo(grip.x + 0.045, grip.y + 0.07, grip.x + 0.012, grip.y + 0.125);
    context.stroke();
  }
}

/** The biggest sprocket, seen as a hoop with a few spokes behind the chain. */
export function paintCassette(context: Context, palette: Palette, radius: number): void {
  hoop(context, palette.inkSoft, 0.012, 0, 0, radius - 0.006);
  context.lineWidth = 0.006;
  context.beginPath();
  for (let arm = 0; arm < 5; arm++) {
    const turn = (arm / 5) * Math.PI * 2;
    context.moveTo(0, 0);
    context.lineTo(Math.cos(turn) * (radius - 0.008), Math.sin(turn) * (radius - 0.008));
  }
  context.stroke();
}

/** The shell of a hub with its spokes' flange, and the one sprocket before it. */
export function paintHub(context: Context, palette: Palette, shell: number, sprocket: number): void {
  disc(context, palette.inkSoft, 0, 0, shell);
  hoop(context, palette.ink, 0.008, 0, 0, sprocket - 0.003);
}

/** The thick hub of a motor in a wheel. */
export function paintWheelMotor(context: Context, palette: Palette): void {
  disc(context, palette.ink, 0, 0, 0.092);
  disc(context, palette.inkSoft, 0, 0, 0.082);
}

/** A chainring with the links that lie on it, its arms and the axle. */
export function paintRing(context: Context, palette: Palette, radius: number): void {
  hoop(context, palette.ink, 0.011, 0, 0, radius - 0.008);
  context.setLineDash([LINK_M, LINK_M]);
  hoop(context, palette.ink, 0.007, 0, 0, radius + 0.002);
  context.setLineDash([]);
  context.lineWidth = 0.014;
  context.beginPath();
  for (let arm = 0; arm < 4; arm++) {
    const turn = (arm / 4) * Math.PI * 2 + 0.4;
    context.moveTo(0, 0);
    context.lineTo(Math.cos(turn) * (radius - 0.01), Math.sin(turn) * (radius - 0.01));
  }
  context.stroke();
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
