/**
 * Cuts shapes out of coloured paper in one call each: a shape from the text of an SVG path, a polygon, an oval, a
 * line. For pieces that are painted once; what changes with every frame is drawn by its view.
 */

/** What everything is drawn on. */
export type Context = CanvasRenderingContext2D;
type Point = readonly [x: number, y: number];
/** A colour or a gradient. */
type Tone = string | CanvasGradient;

/** An SVG path (absolute commands) whose points are told in lengths of `size` from (x, y). */
function placed(path: string, x: number, y: number, size: number): Path2D {
  const there = new Path2D();
  there.addPath(new Path2D(path), { a: size, d: size, e: x, f: y });
  return there;
}

/** Fills an SVG path, told in the context's own units unless another place and size are named. */
export function blot(context: Context, tone: Tone, path: string, x = 0, y = 0, size = 1): void {
  context.fillStyle = tone;
  context.fill(placed(path, x, y, size));
}

/** Fills a rectangle from its corner (x, y); its corners may be round. */
export function box(
  context: Context,
  tone: Tone,
  x: number,
  y: number,
  width: number,
  height: number,
  radius = 0,
): void {
  context.fillStyle = tone;
  if (radius === 0) return context.fillRect(x, y, width, height);
  context.beginPath();
  context.roundRect(x, y, width, height, radius);
  context.fill();
}

/** Fills a closed polygon and leaves it as the context's path. */
export function polygon(context: Context, tone: Tone, ...points: readonly Point[]): void {
  context.fillStyle = tone;
  context.beginPath();
  for (const [x, y] of points) context.lineTo(x, y);
  context.closePath();
  context.fill();
}

/** Cuts polygons whose points are told in lengths of `size` from (x, y). */
export function cutter(
  context: Context,
  x: number,
  y: number,
  size: number,
): (tone: Tone, ...points: readonly Point[]) => void {
  return (tone, ...points) =>
    polygon(context, tone, ...points.map(([right, down]): Point => [x + right * size, y + down * size]));
}

/** Fills an ellipse round (x, y), turned by `turnRad`, or the piece of it from one angle to another (rad). */
export function oval(
  context: Context,
  tone: Tone,
  x: number,
  y: number,
  radiusX: number,
  radiusY: number,
  turnRad = 0,
  fromRad = 0,
  toRad = Math.PI * 2,
): void {
  context.fillStyle = tone;
  context.beginPath();
  context.ellipse(x, y, radiusX, radiusY, turnRad, fromRad, toRad);
  context.fill();
}

/** Fills a circle round (x, y), or the piece of it from one angle to another (rad). */
export function disc(
  context: Context,
  tone: Tone,
  x: number,
  y: number,
  radius: number,
  fromRad = 0,
  toRad = Math.PI * 2,
): void {
  context.fillStyle = tone;
  context.beginPath();
  context.arc(x, y, radius, fromRad, toRad);
  context.fill();
}

/** Draws a circle round (x, y) as a line of this width. */
export function hoop(
  context: Context,
  tone: Tone,
  width: number,
  x: number,
  y: number,
  radius: number,
): void {
  context.strokeStyle = tone;
  context.lineWidth = width;
  context.beginPath();
  context.arc(x, y, radius, 0, Math.PI * 2);
  context.stroke();
}

/** Fills the eight corners of a stop sign round (x, y) and leaves them as the context's path. */
export function octagon(context: Context, tone: Tone, x: number, y: number, radius: number): void {
  const turns = Array.from({ length: 8 }, (_, corner) => ((corner + 0.5) / 8) * Math.PI * 2);
  polygon(
    context,
    tone,
    ...turns.map((turn): Point => [x + Math.cos(turn) * radius, y + Math.sin(turn) * radius]),
  );
}

/** Draws an SVG path as a line of this width; place and size as for `blot`. */
export function trace(
  context: Context,
  tone: Tone,
  width: number,
  path: string,
  x = 0,
  y = 0,
  size = 1,
): void {
  context.strokeStyle = tone;
  context.lineWidth = width;
  context.stroke(placed(path, x, y, size));
}

/** Draws several runs from point to point in one go, so that they cover each other without a trace. */
export function lines(
  context: Context,
  tone: Tone,
  width: number,
  ...runs: readonly (readonly Point[])[]
): void {
  context.strokeStyle = tone;
  context.lineWidth = width;
  context.beginPath();
  for (const run of runs)
    for (const [i, [x, y]] of run.entries()) {
      if (i === 0) context.moveTo(x, y);
      else context.lineTo(x, y);
    }
  context.stroke();
}

/** Draws straight runs from point to point. */
export function line(context: Context, tone: Tone, width: number, ...points: readonly Point[]): void {
  context.strokeStyle = tone;
  context.lineWidth = width;
  context.beginPath();
  for (const [x, y] of points) context.lineTo(x, y);
  context.stroke();
}
