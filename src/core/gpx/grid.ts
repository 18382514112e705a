/**
 * Heights every 10 m along a line: known ones joined by straight lines, lone spikes taken out by a median, and
 * slopes no road has bridged. What is left is still as noisy as the device was; smoothing is done elsewhere.
 */

/** Distance between samples (m). */
export const GRID_M = 10;
/** Steeper than any road: such a stretch is a fault of the device. */
const IMPOSSIBLE_RATIO = 0.35;
/** Heights are written in whole centimetres at best, so a road of just that slope may seem a little steeper. */
const ROUNDING_M = 0.02;

/**
 * Heights at 0, 10, 20 … m. Before the first and behind the last known height the road is level.
 * @param atM ascending distances; `heightM` may hold NaN, but not only
 */
export function resample(atM: readonly number[], heightM: readonly number[]): Float64Array {
  const known = atM.map((_, i) => i).filter((i) => !Number.isNaN(heightM[i]));
  const count = Math.floor((atM.at(-1) ?? 0) / GRID_M + 1e-9) + 1;
  const samples = new Float64Array(count);
  let k = 0;
  for (let i = 0; i < count; i += 1) {
    const x = i * GRID_M;
    while (k < known.length - 1 && (atM[known[k + 1] as number] as number) <= x) k += 1;
    const a = known[k] as number;
    const b = known[Math.min(k + 1, known.length - 1)] as number;
    const fromM = atM[a] as number;
    const spanM = (atM[b] as number) - fromM;
    const t = spanM > 0 && x > fromM ? (x - fromM) / spanM : 0;
    samples[i] = (heightM[a] as number) + ((heightM[b] as number) - (heightM[a] as number)) * t;
  }
  return samples;
}

/** Median of five samples; nearer to an end of three or one. */
export function medianOfFive(samples: Float64Array): Float64Array {
  return samples.map((_, i) => {
    const half = Math.min(2, i, samples.length - 1 - i);
    return samples.slice(i - half, i + half + 1).sort()[half] as number;
  });
}

/** A jump whose bridge would be longer than so many samples is one of the device: it was set anew, or lost its way. */
const LONGEST_BRIDGE = 10;

/**
 * Bridges slopes beyond ±35 %: from the sample before such a step a straight line leads to the next sample that can
 * be reached without one (or back from the sample behind it, where that is the shorter bridge). A spike is cut
 * off that way, and a small lasting jump spread; behind a great one the road goes on at the height it came with. Says how
 * many samples had to be made up, and how many such great jumps there were.
 */
export function bridgeImpossible(heights: Float64Array) {
  const samples = heights.slice();
  // A sample that several bridges cross is made up once.
  const madeUp = new Uint8Array(samples.length);
  let jumpCount = 0;
  for (let i = 0; i + 1 < samples.length; i += 1) {
    if (isPossible(samples, i, i + 1)) continue;
    const forward = reach(samples, i, 1);
    const backward = reach(samples, i + 1, -1);
    // A bridge that leads off the road gives up one end of it, so it must be a good deal shorter.
    const forwardCost = (forward - i) * (forward < samples.length ? 1 : 2);
    const backwardCost = (i + 1 - backward) * (backward >= 0 ? 1 : 2);
    if (Math.min(forwardCost, backwardCost) > LONGEST_BRIDGE) {
      // A sample may lie halfway, so the next but one is put where the road came with.
      const behind = Math.min(i + 2, samples.length - 1);
      const jumpM = (samples[behind] as number) - (samples[i] as number);
      for (let k = behind; k < samples.length; k += 1) samples[k] = (samples[k] as number) - jumpM;
      samples[i + 1] = samples[i] as number;
      jumpCount += 1;
      continue;
    }
    const [from, to] = forwardCost <= backwardCost ? [i, forward] : [backward, i + 1];
    drawLine(samples, from, to);
    madeUp.fill(1, Math.max(0, from + 1), Math.min(to, samples.length));
  }
  const bridgedCount = madeUp.reduce((sum, one) => sum + one, 0);
  return { samples, bridgedCount, jumpCount };
}

function isPossible(samples: Float64Array, a: number, b: number): boolean {
  const rise = Math.abs((samples[b] as number) - (samples[a] as number));
  return rise <= IMPOSSIBLE_RATIO * GRID_M * Math.abs(b - a) + ROUNDING_M;
}

/** The nearest sample that a possible slope reaches; one beyond the end if there is none. */
function reach(samples: Float64Array, from: number, direction: 1 | -1): number {
  let to = from + direction;
  while (to >= 0 && to < samples.length && !isPossible(samples, from, to)) to += direction;
  return to;
}

/** A straight line over the samples in between; level where one end lies beyond the road. */
function drawLine(samples: Float64Array, from: number, to: number): void {
  const last = samples.length - 1;
  const a = samples[Math.max(0, from)] as number;
  const b = samples[Math.min(last, to)] as number;
  const startM = from < 0 ? b : a;
  const endM = to > last ? a : b;
  for (let i = Math.max(0, from + 1); i < Math.min(to, last + 1); i += 1)
    samples[i] = startM + ((endM - startM) * (i - from)) / (to - from);
}

/** Heights without lone spikes and impossible slopes. */
export function cleanHeights(raw: Float64Array) {
  return bridgeImpossible(medianOfFive(raw));
}
