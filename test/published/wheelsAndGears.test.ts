/**
 * Wheel marks, developments, ratios and roll-out limits against the standard, handbooks and rule books.
 */
import { describe, expect, it } from 'vitest';
import { circumferenceFromIsoM, developmentM } from '../../src/core/model/gears.ts';
import { cadenceAtRpm } from '../../src/core/model/machine.ts';
import { biggestRollOutM, ROLL_OUT_LIMITS, withinRollOut } from '../../src/core/model/rollout.ts';
import { bike } from '../core/ride/worlds.ts';

const ROUND_25_622_M = circumferenceFromIsoM(25, 622);

describe('ISO 5775 marks', () => {
  it.each([
    [23, 622, 2098.6],
    [25, 622, 2111.2],
    [28, 622, 2130.0],
    [32, 622, 2155.1],
    [37, 622, 2186.5],
    [50, 584, 2148.8],
    [47, 559, 2051.5],
    [47, 507, 1888.1],
    [47, 406, 1570.8],
  ])('%d-%d is %d mm round by π (BSD + 2 w)', (widthMm, beadMm, mm) => {
    expect(Math.abs((circumferenceFromIsoM(widthMm, beadMm) * 1000) / mm - 1)).toBeLessThan(0.0001);
  });

  it('25-622 is within 1.5 % of the 2105 mm of printed tables', () => {
    expect(Math.abs((ROUND_25_622_M * 1000) / 2105 - 1)).toBeLessThan(0.015);
  });
});

describe('development', () => {
  it.each([
    [11, 9.98],
    [13, 8.445],
    [15, 7.319],
    [17, 6.458],
    [19, 5.778],
    [21, 5.228],
    [25, 4.391],
    [28, 3.921],
  ])('52 × %d on 25-622 rolls %d m a turn (exact)', (sprocket, metres) => {
    expect(Math.abs(developmentM(ROUND_25_622_M, 52, sprocket) - metres)).toBeLessThan(0.0006);
  });

  it('34 × 28 rolls 2.564 m by the mark and 2.556 m by the printed 2105 mm (exact)', () => {
    expect(developmentM(ROUND_25_622_M, 34, 28)).toBeCloseTo(2.564, 3);
    expect(developmentM(2.105, 34, 28)).toBeCloseTo(2.556, 3);
  });

  // The figure was worked out with 2111 mm; by the unrounded mark it is 80.525.
  it('50 × 17 at 30 km/h turns at 80.53 rpm (exact, ±0.01)', () => {
    expect(Math.abs(cadenceAtRpm(30 / 3.6, developmentM(ROUND_25_622_M, 50, 17)) - 80.53)).toBeLessThan(0.01);
  });
});

describe('other ways to name a gear', () => {
  it.each([
    [330.2, 175, 22, 34, 1.2209],
    [323.85, 170, 24, 34, 1.3447],
  ])(
    'a wheel of %d mm on %d mm cranks with %d × %d has a gain ratio of %d (published)',
    (radius, crank, ring, sprocket, gain) => {
      // Way of the wheel over way of the pedal.
      const round = 2 * Math.PI * radius;
      expect(developmentM(round, ring, sprocket) / (2 * Math.PI * crank)).toBeCloseTo(gain, 4);
    },
  );

  it.each([
    [24, 30, 20.8],
    [38, 17, 58.12],
    [48, 11, 113.45],
  ])('%d × %d on a 26-inch wheel is %d gear inches (exact)', (ring, sprocket, inches) => {
    // Gear inches are the development over π, in inches.
    const round = (Math.PI * 26 * 25.4) / 1000;
    expect((developmentM(round, ring, sprocket) / Math.PI / 25.4) * 1000).toBeCloseTo(inches, 2);
  });
});

describe('roll-out limits (rule books)', () => {
  const round = circumferenceFromIsoM(23, 622);
  const limit = (id: string): number => ROLL_OUT_LIMITS.find((rule) => rule.id === id)?.limitM ?? Number.NaN;

  it('52 × 16 on 23-622 rolls 6.820 m and keeps the 6.93 m of under 16; 53 × 16 rolls 6.952 m and does not', () => {
    const legal = developmentM(round, 52, 16);
    const tooFar = developmentM(round, 53, 16);
    expect(legal).toBeCloseTo(6.82, 3);
    expect(tooFar).toBeCloseTo(6.952, 3);
    expect(withinRollOut(legal, limit('under-16-2023'))).toBe(true);
    expect(withinRollOut(tooFar, limit('under-16-2023'))).toBe(false);
  });

  it('the limits are 7.93 m for juniors until the end of 2022 and 6.93, 6.45, 6.05 m in one national rule book of 2023', () => {
    expect(ROLL_OUT_LIMITS.map((rule) => [rule.group, rule.limitM])).toEqual([
      ['juniors', 7.93],
      ['under-16', 6.93],
      ['under-14', 6.45],
      ['under-12', 6.05],
    ]);
    expect(ROLL_OUT_LIMITS[0]?.until).toBe('2022-12-31');
    for (const rule of ROLL_OUT_LIMITS) expect(rule.ruleYear ?? rule.until).toBeDefined();
  });

  it('a club can hold a bike against a limit of its own', () => {
    const longest = biggestRollOutM(bike('kids-24-1x8'));
    expect(longest).toBeCloseTo((1.8881 * 32) / 12, 3);
    expect(withinRollOut(longest, 5.1)).toBe(true);
    expect(withinRollOut(longest, 5)).toBe(false);
  });
});
