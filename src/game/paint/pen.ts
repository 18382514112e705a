/**
 * Cuts shapes out of coloured paper in one call each: a shape from the text of an SVG path, a polygon, an oval, a
 * line. For pieces that are painted once; what changes with every frame is drawn by its view.
 */

/** What everything is drawn on. */
export type Context = CanvasRenderingContext2D;
type Point = readonly [x: number, y: number];
/** A colour or a gradient. */
type Tone = string | CanvasGradient;

/** Fills an SVG path (absolute commands, in the context's own units). */
export function blot(context: Context, tone: Tone, path: string): void {
  context.fillStyle = tone;
  context.fill(new Path2D(path));
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

/** Fills an ellipse round (x, y), turned by `turnRad`. */
export function oval(
  context: Context,
  tone: Tone,
  x: number,
  y: number,
  radiusX: number,
  radiusY: number,
  turnRad = 0,
): void {
  context.fillStyle = tone;
  context.beginPath();
  context.ellipse(x, y, radiusX, radiusY, turnRad, 0, Math.PI * 2);
  context.fill();
}

/** Fills a circle round (x, y). */
export function disc(context: Context, tone: Tone, x: number, y: number, radius: number): void {
  context.fillStyle = tone;
  context.beginPath();
  context.arc(x, y, radius, 0, Math.PI * 2);
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

/** Draws an SVG path as a line of this width. */
export function trace(context: Context, tone: Tone, width: number, path: string): void {
  context.strokeStyle = tone;
  context.lineWidth = width;
  context.stroke(new Path2D(path));
}

/** Draws straight runs from point to point. */
export function line(context: Context, tone: Tone, width: number, ...points: readonly Point[]): void {
  context.strokeStyle = tone;
  context.lineWidth = width;
  context.beginPath();
  for (const [x, y] of points) context.lineTo(x, y);
  context.stroke();
}
