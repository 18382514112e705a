/**
 * Hub gears: planetary sets in the rear wheel, one ring and one sprocket before them. Ratios are published ones, what
 * each gear wastes is a choice between figures that contradict each other; MODEL.md says which and why.
 */
import type { HubKind } from './hubKinds.ts';

/** One kind of hub: turns of the wheel for one of the sprocket, slowest gear first, and what of the power arrives. */
interface Hub {
  readonly ratios: readonly number[];
  readonly efficiencies: readonly number[];
}

/**
 * Turns of the annulus for one of the planet carrier with the sun held (Willis): 1 + sun ÷ annulus. Driven at the
 * carrier it is the high gear of a three-speed; driven at the annulus, its inverse, the low one.
 */
export function planetaryRatio(sunTeeth: number, annulusTeeth: number): number {
  return 1 + sunTeeth / annulusTeeth;
}

/** Sun and annulus of the plainest planetary set. */
const THREE_HIGH = planetaryRatio(20, 60);
/** The straight gear goes through no planets; what is left are bearings and seals. */
const DIRECT = 0.995;

export const HUBS: Readonly<Record<HubKind, Hub>> = {
  three: { ratios: [1 / THREE_HIGH, 1, THREE_HIGH], efficiencies: [0.975, DIRECT, 0.965] },
  'three-wide': { ratios: [47 / 64, 1, 64 / 47], efficiencies: [0.975, DIRECT, 0.965] },
  five: {
    ratios: [2 / 3, 7 / 9, 1, 9 / 7, 3 / 2],
    efficiencies: [0.955, 0.965, DIRECT, 0.96, 0.945],
  },
  'five-wide': {
    ratios: [19 / 30, 1 / 1.281, 1, 1.281, 30 / 19],
    efficiencies: [0.95, 0.965, DIRECT, 0.96, 0.94],
  },
  seven: {
    ratios: [252 / 439, 0.677, 0.809, 1, 1.236, 1.476, 439 / 252],
    efficiencies: [0.91, 0.925, 0.945, DIRECT, 0.935, 0.91, 0.89],
  },
  eight: {
    ratios: [14 / 23, 0.7101, 0.8028, 0.9031, 1.0536, 1.2042, 1.3547, 49 / 31],
    efficiencies: [0.91, 0.92, 0.93, 0.95, 0.94, 0.93, 0.91, 0.9],
  },
  'eight-wide': {
    ratios: [0.527, 0.644, 0.748, 0.851, 1, 1.223, 1.419, 1.615],
    efficiencies: [0.9, 0.91, 0.92, 0.93, DIRECT, 0.93, 0.91, 0.895],
  },
  fourteen: {
    ratios: [
      0.2785, 0.3165, 0.3596, 0.4086, 0.4643, 0.5276, 0.5996, 0.6813, 0.7742, 0.8797, 0.9996, 1.1359, 1.2907,
      1.4667,
    ],
    // The eleventh goes through no planets.
    efficiencies: [
      0.955, 0.955, 0.965, 0.965, 0.97, 0.97, 0.96, 0.975, 0.975, 0.98, 0.995, 0.98, 0.975, 0.97,
    ],
  },
};
