/**
 * Road load against the world: a published worked example, steady speeds and powers worked out from the
 * published formula, and the geometry of a slope. Sources stand beside each check.
 */
import { describe, expect, it } from 'vitest';
import { cosOfSlope } from '../../src/core/math/numbers.ts';
import {
  AIR_DENSITY_KG_M3,
  airForceN,
  bearingForceN,
  climbingForceN,
  GRAVITY,
  roadLoad,
  rollingForceN,
  rotationalMassKg,
  totalForceN,
} from '../../src/core/model/load.ts';
import { powerForSpeedW, steadySpeedMps } from '../../src/core/model/machine.ts';

const KMH = 1 / 3.6;

/** Three bikes with riders: upright adult, sporty adult, child. */
const SETS = {
  A: { massKg: 80, cdaM2: 0.4, rollingCoefficient: 0.005 },
  B: { massKg: 80, cdaM2: 0.32, rollingCoefficient: 0.004 },
  D: { massKg: 40, cdaM2: 0.3, rollingCoefficient: 0.007 },
} as const;

function question(set: keyof typeof SETS, slopeRatio: number) {
  // Reference values are without bearings.
  const leftForLegsN = (forceN: number, speedMps: number): number => forceN - bearingForceN(speedMps);
  return { ...SETS[set], windMps: 0, efficiency: 0.977, leftForLegsN, slopeRatio };
}

describe('constants', () => {
  it('gravity is the conventional 9.80665 m/s² (General Conference on Weights and Measures)', () => {
    expect(GRAVITY).toBe(9.80665);
  });

  it('air is that of the standard atmosphere at 15 °C: 101325 / (287.05287 × 288.15) (ISO 2533)', () => {
    expect(AIR_DENSITY_KG_M3).toBeCloseTo(101_325 / (287.05287 * 288.15), 4);
  });

  it('8 % is 4.574° with a sine of 0.079745 (exact geometry)', () => {
    expect(0.08 * cosOfSlope(0.08)).toBeCloseTo(0.079745, 6);
    expect((Math.acos(cosOfSlope(0.08)) * 180) / Math.PI).toBeCloseTo(4.574, 3);
    expect(climbingForceN(1, 0.08) / GRAVITY).toBeCloseTo(0.079745, 6);
  });
});

/** Martin, Milliken, Cobb, McFadden, Coggan 1998, J Appl Biomech 14:276–291, worked example. */
describe('the worked example of Martin et al. 1998', () => {
  const massKg = 90;
  const speedMps = 471.8 / 56.42;
  const windMps = 2.94 * Math.cos(((340 - 310) * Math.PI) / 180);
  const efficiency = 0.977;
  const wheelsKg = rotationalMassKg(0.14, 0.311);
  // The drag of the spinning wheels enters the formula as further drag area; the air of that day was lighter than ours.
  const airW = airForceN(speedMps, windMps, (0.2565 + 0.0044) * (1.2234 / AIR_DENSITY_KG_M3)) * speedMps;
  const rollingW = rollingForceN(massKg, 0.003, 0.0032) * speedMps;
  const bearingsW = bearingForceN(speedMps) * speedMps;
  const climbingW = climbingForceN(massKg, 0.003) * speedMps;
  const kineticW = ((massKg + wheelsKg) * (8.45 ** 2 - 8.28 ** 2)) / 2 / 56.42;

  it.each([
    ['air', airW, 158.803],
    ['rolling', rollingW, 23.618],
    ['bearings', bearingsW, 1.369],
    ['climbing', climbingW, 22.142],
    ['kinetic energy', kineticW, 2.305],
  ])('%s takes the published part', (_part, watts, published) => {
    expect(Math.abs(watts - published)).toBeLessThan(0.002);
  });

  it('all five over the efficiency make 213.139 W', () => {
    const totalW = (airW + rollingW + bearingsW + climbingW + kineticW) / efficiency;
    expect(Math.abs(totalW - 213.139)).toBeLessThan(0.005);
  });

  it('the wheels count as 0.14 / 0.311² = 1.4475 kg more, not as 0.14 kg', () => {
    expect(wheelsKg).toBeCloseTo(1.4475, 4);
  });
});

/** Exact arithmetic from the formula of Martin et al. 1998; efficiency 0.977, still air, no bearings. */
describe('steady riding by the formula of Martin et al. 1998', () => {
  it.each([
    ['A', 20, 0.08, 420.99],
    ['B', 20, 0.08, 407.94],
    ['D', 20, 0.08, 225.69],
    ['A', 10, 0.08, 194.37],
    ['B', 10, 0.08, 191.07],
    ['D', 10, 0.08, 100.75],
    ['A', 30, 0, 178.58],
    ['B', 30, 0, 142.86],
    ['D', 30, 0, 132.26],
  ] as const)('set %s at %d km/h on a slope of %d asks %d W', (set, kmh, slope, watts) => {
    expect(Math.abs(powerForSpeedW(kmh * KMH, question(set, slope)) - watts)).toBeLessThan(0.01);
  });

  it.each([
    ['A', 200, 0, 31.316],
    ['B', 200, 0, 34.042],
    ['D', 200, 0, 34.99],
    ['A', 100, 0.08, 5.25],
    ['B', 100, 0.08, 5.32],
    ['D', 100, 0.08, 9.931],
    ['A', 60, 0, 19.277],
    ['B', 60, 0, 21.217],
    ['D', 60, 0, 21.985],
  ] as const)('set %s with %d W on a slope of %d goes %d km/h', (set, watts, slope, kmh) => {
    expect(Math.abs(steadySpeedMps(watts, question(set, slope)) * 3.6 - kmh)).toBeLessThan(0.001);
  });

  it.each([
    ['A', 43.19],
    ['B', 48.82],
    ['D', 34.47],
  ] as const)('set %s coasts down 5 %% at %d km/h in the end', (set, kmh) => {
    expect(Math.abs(steadySpeedMps(0, question(set, -0.05)) * 3.6 - kmh)).toBeLessThan(0.01);
  });

  it('4 m/s of head wind at 20 km/h add 14.809 N, as much as a climb of 1.89 %', () => {
    const addedN = airForceN(20 * KMH, 4, 0.4) - airForceN(20 * KMH, 0, 0.4);
    expect(Math.abs(addedN - 14.809)).toBeLessThan(0.001);
    expect(Math.abs(climbingForceN(80, 0.0189) / addedN - 1)).toBeLessThan(0.002);
  });
});

describe('soft bounds', () => {
  it('hoods riding at 30 km/h is near R = 3.2 + 0.19 v² (di Prampero et al. 1979, from memory: ±15 %)', () => {
    const v = 30 * KMH;
    const theirsN = 3.2 + 0.19 * v * v;
    expect(theirsN).toBeCloseTo(16.39, 2);
    expect(theirsN * v).toBeCloseTo(136.6, 1);
    const oursN = totalForceN(roadLoad(v, 0, 0, 80, SETS.B.cdaM2, SETS.B.rollingCoefficient));
    expect(Math.abs(oursN / theirsN - 1)).toBeLessThan(0.15);
  });
});
