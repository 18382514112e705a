/**
 * Small arithmetic used everywhere in the core. Only + − × ÷, square root and comparisons, because
 * those give the same bits in every browser; anything transcendental is a polynomial of our own.
 */

/** Circle constant; the literal is the nearest double. */
export const PI = 3.141592653589793;

/** Limits `value` to the closed range, 0 to 1 where none is named. */
export function clamp(value: number, low = 0, high = 1): number {
  return value < low ? low : value > high ? high : value;
}

/** Mean of a list; 0 for an empty one. */
export function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Whether each number of a list is bigger than the one before. */
export function isRising(values: readonly number[]): boolean {
  return values.every((value, i) => i === 0 || value > (values[i - 1] as number));
}

/** The biggest value between two for which something holds that holds up to it and not beyond, halved to so many bits. */
export function lastWhere(
  low: number,
  high: number,
  bits: number,
  holds: (value: number) => boolean,
): number {
  let [from, to] = [low, high];
  for (let i = 0; i < bits; i += 1) {
    const middle = (from + to) / 2;
    if (holds(middle)) from = middle;
    else to = middle;
  }
  return from;
}

/** Straight line from `a` (t = 0) to `b` (t = 1). */
export function lerp(a: number, b: number, t: number): number {
  return a + (b - a) * t;
}

/** Cosine of the angle whose tangent is `slopeRatio`: horizontal metres per metre along the road. */
export function cosOfSlope(slopeRatio: number): number {
  return 1 / Math.sqrt(1 + slopeRatio * slopeRatio);
}

/**
 * Arc tangent in degrees for the small angles of a chain (|ratio| up to 0.2).
 * Series to the ninth power: off by less than 1.1e-7 degrees there.
 */
export function smallAtanDeg(ratio: number): number {
  const q = ratio * ratio;
  return (180 / PI) * ratio * (1 - q * (1 / 3 - q * (1 / 5 - q * (1 / 7 - q / 9))));
}

/** Revolutions per minute to radians per second. */
export function rpmToRadPerS(rpm: number): number {
  return (rpm * PI) / 30;
}

/** Linear interpolation in a table sampled at whole metres; ends are held. */
export function sampleAt(table: ArrayLike<number>, positionM: number): number {
  const last = table.length - 1;
  if (positionM <= 0) return table[0] as number;
  if (positionM >= last) return table[last] as number;
  const i = Math.floor(positionM);
  const a = table[i] as number;
  return a + ((table[i + 1] as number) - a) * (positionM - i);
}

/**
 * The window of so many values in a row with the greatest sum: where it begins, and the sum. A later one must be greater
 * by more than `beyond`, so that what rounding leaves decides nothing.
 */
export function greatestWindow(
  values: ArrayLike<number>,
  width: number,
  beyond = 0,
): { readonly from: number; readonly sum: number } {
  let sum = 0;
  for (let i = 0; i < width; i += 1) sum += values[i] as number;
  let best = { from: 0, sum };
  for (let i = width; i < values.length; i += 1) {
    sum += (values[i] as number) - (values[i - width] as number);
    if (sum > best.sum + beyond) best = { from: i - width + 1, sum };
  }
  return best;
}

/** Index of the first of `count` ascending values that is not below `least`, found by halving; `count` where all are. */
export function firstFrom(count: number, valueAt: (index: number) => number, least: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (valueAt(middle) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
