/**
 * Sine and cosine of angles in degrees from + − × ÷ alone, so that a place on the globe comes out the same in
 * every browser. What the angles mean is left to those who ask.
 */
import { PI } from './numbers.ts';

const RAD_PER_DEG = PI / 180;

/** Sine of an angle in degrees; off by less than 1e-15 between −720 and 720. */
export function sinDeg(angleDeg: number): number {
  return quarterTurn(angleDeg, 0);
}

/** Cosine of an angle in degrees; off by less than 1e-15 between −720 and 720. */
export function cosDeg(angleDeg: number): number {
  return quarterTurn(angleDeg, 1);
}

/** Takes whole quarter turns off, which is exact in degrees, and picks the series for what is left (±45°). */
function quarterTurn(angleDeg: number, more: number): number {
  const quarters = Math.round(angleDeg / 90);
  const x = (angleDeg - quarters * 90) * RAD_PER_DEG;
  const place = (((quarters + more) % 4) + 4) % 4;
  const value = place % 2 === 0 ? sinSeries(x) : cosSeries(x);
  return place < 2 ? value : -value;
}

/** Taylor series to the 17th power; the next term is below 4e-19 at 45°. */
function sinSeries(x: number): number {
  const q = x * x;
  let sum = 1;
  for (let n = 16; n >= 2; n -= 2) sum = 1 - (q / (n * (n + 1))) * sum;
  return x * sum;
}

/** Taylor series to the 16th power; the next term is below 3e-18 at 45°. */
function cosSeries(x: number): number {
  const q = x * x;
  let sum = 1;
  for (let n = 16; n >= 2; n -= 2) sum = 1 - (q / (n * (n - 1))) * sum;
  return sum;
}
