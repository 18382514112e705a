/**
 * Recorded elevations against what can be worked out exactly: noise of a fitted slope, damping of a sine hill, a
 * degree's hundredth at 46° N, and a hill whose slope and ascent are known.
 */
import { describe, expect, it } from 'vitest';
import { distanceM, globePoint } from '../../src/core/gpx/globe.ts';
import { fittedSlopes, slopeNoisePerM } from '../../src/core/gpx/smooth.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { roughNormal } from '../core/math/roughNormal.ts';
import { gpxText, northward, roadOf, trackText } from '../core/gpx/files.ts';

describe('the slope of a line fitted to heights every 10 m', () => {
  it.each([
    [50, 0.954],
    [100, 0.36],
  ])('is off by √(12/(n(n²−1)))/Δ per metre of noise: over ±%d m %d % (exact)', (halfM, percent) => {
    expect(Math.abs(slopeNoisePerM(halfM) * 100 - percent)).toBeLessThan(0.0006);
    // And as it comes out of the fit, from heights that are nothing but noise of 1 m.
    const random = seededRandom(5);
    const noise = Float64Array.from({ length: 40_000 }, () => roughNormal(random));
    const slopes = [...fittedSlopes(noise, halfM)].slice(20, -20);
    const spread = Math.sqrt(slopes.reduce((sum, slope) => sum + slope * slope, 0) / slopes.length);
    expect(Math.abs(spread / slopeNoisePerM(halfM) - 1)).toBeLessThan(0.03);
  });

  it.each([
    [200, 0.774],
    [500, 0.961],
  ])('damps a sine hill of %d m by 3(sin u − u cos u)/u³, u = 2π·50/λ: to %d (exact)', (waveM, share) => {
    const u = (2 * Math.PI * 50) / waveM;
    expect((3 * (Math.sin(u) - u * Math.cos(u))) / u ** 3).toBeCloseTo(share, 3);
    const heights = Float64Array.from({ length: 401 }, (_, i) => Math.sin((2 * Math.PI * i * 10) / waveM));
    const slopes = [...fittedSlopes(heights, 50)].slice(10, -10);
    const damped = Math.max(...slopes) / ((2 * Math.PI) / waveM);
    // Eleven samples reach half a step further than the ±50 m of the formula, so they damp a little more or less.
    expect(Math.abs(damped - share)).toBeLessThan(0.05);
    const ends = Array.from({ length: 11 }, (_, k) => k - 5);
    const exact =
      ends.reduce((sum, k) => sum + k * Math.sin((2 * Math.PI * k * 10) / waveM), 0) /
      (110 * ((2 * Math.PI * 10) / waveM));
    expect(damped).toBeCloseTo(exact, 4);
  });
});

describe('distance', () => {
  it('0.01° east at 46° N are 774.633 m on the WGS-84 ellipsoid, not the 772.426 m of a sphere (exact)', () => {
    expect(distanceM(globePoint(46, 10), globePoint(46, 10.01))).toBeCloseTo(774.633, 3);
  });
});

describe('z = 300 + 20 sin(2πx/1000) over 5 km', () => {
  const road = roadOf(
    gpxText(trackText(northward(501, 10, (x) => 300 + 20 * Math.sin((2 * Math.PI * x) / 1_000)))),
  );

  it('truly 12.566 %, shows 12.4 % within 0.2 points with a fit over ±50 m (exact)', () => {
    const fitted = fittedSlopes(Float64Array.from(road.profile.rawHeightsM), 50);
    expect(Math.abs(Math.max(...fitted) * 100 - 12.4)).toBeLessThanOrEqual(0.2);
    expect(Math.abs(Math.min(...fitted) * 100 + 12.4)).toBeLessThanOrEqual(0.2);
  });

  it('quiet heights are fitted over ±30 m: 12.51 %, and 199.1 m of the 200 m of ascent (exact)', () => {
    // Seven samples damp a slope by 1 − (2π/λ)² Δ² Σk⁴ / (6 Σk²), nearly: Σk² = 28, Σk⁴ = 196.
    const damped = 1 - ((2 * Math.PI) / 1_000) ** 2 * 100 * (196 / (6 * 28));
    expect(road.halfWidthM).toBe(30);
    expect(Math.abs(road.steepestRatio * 100 - 12.566 * damped)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(road.ascentM - 200 * damped)).toBeLessThanOrEqual(1);
  });
});
