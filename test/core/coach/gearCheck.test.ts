/** Gear check: told where the gears run out, and what other parts would change, computed on the road asked about. */
import { describe, expect, test } from 'vitest';
import { gearCandidates, gearChart, gearOutcome, sortCandidates } from '../../../src/core/coach/gearCheck.ts';
import { buildCourse } from '../../../src/core/course/build.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';

const bike = bikeById('road-2x11')!;
const rider = riderById('adult-new')!;
/** 300 m at 8 % between two level stretches. */
const hill = buildCourse({
  joinM: 10,
  seed: 1,
  stopLinesM: [],
  winds: [],
  surfaces: [],
  hidden: [],
  pieces: [
    { kind: 'flat', lengthM: 100 },
    { kind: 'climb', lengthM: 300, slopeRatio: 0.08 },
    { kind: 'flat', lengthM: 100 },
  ],
});

describe('a new rider on 300 m of 8 % with 34 × 28 as the lowest gear', () => {
  const own = gearOutcome(hill, bike, rider);
  const sorted = sortCandidates([...gearCandidates(hill, bike, rider)]);
  const find = (rings: string, range: string) =>
    sorted.find(
      ({ outcome }) =>
        outcome.chainringsTeeth.join('/') === rings &&
        `${outcome.sprocketsTeeth[0]}-${outcome.sprocketsTeeth.at(-1)}` === range,
    );

  test('falls below 60 rpm and is told where', () => {
    expect(own.lowestCadenceRpm).toBeLessThan(60);
    expect(own.lowestAtM).toBeGreaterThan(100);
    expect(own.lowestAtM).toBeLessThan(420);
    expect(own.belowBand.length).toBeGreaterThan(0);
    expect(own.belowBand[0]!.steepestRatio).toBeCloseTo(0.08, 3);
  });

  test('the steady cadence is power over force over development, by hand', () => {
    // 130 W, 83.5 kg, 8 % at walking pace; v from P η = F v with air at that speed, then rpm = 60 v / D.
    const efficiency = 0.987 - 0.1231 * (1 / 34 + 1 / 28);
    const cos = 1 / Math.sqrt(1 + 0.08 ** 2);
    let v = 1;
    for (let i = 0; i < 200; i += 1) {
      const force = 83.5 * 9.80665 * cos * (0.08 + 0.004) + 0.5 * 1.225 * 0.32 * v * v + 0.091 + 0.0087 * v;
      v = (130 * efficiency) / force;
    }
    const rpm = (60 * v) / (2.1112 * (34 / 28));
    expect(Math.abs(own.steadyLowestRpm - rpm)).toBeLessThan(0.3);
  });

  test('34 × 34 and 30 × 34 are offered, each with the cadence it would leave', () => {
    const wide = find('34/50', '11-34');
    const both = find('30/46', '11-34');
    expect(wide?.outcome.steadyLowestRpm).toBeCloseTo(own.steadyLowestRpm * (34 / 28), 0);
    expect(both?.outcome.steadyLowestRpm).toBeCloseTo(own.steadyLowestRpm * (34 / 28) * (34 / 30), 0);
    expect(wide?.tradeOffs).toContain('easier-lowest');
    expect(both?.tradeOffs).toContain('loses-highest');
  });

  test('the first offer leaves quicker legs than the own bike, and more time in the band', () => {
    expect(sorted[0]!.outcome.lowestCadenceRpm).toBeGreaterThan(own.lowestCadenceRpm);
    expect(sorted[0]!.outcome.shareInBand).toBeGreaterThan(own.shareInBand);
  });

  test('every offer names the capacity it needs: 50/34 with 11-34 is 39 teeth', () => {
    expect(find('34/50', '11-34')?.outcome.capacityTeeth).toBe(39);
  });
});

describe('the gear chart', () => {
  test('runs from short to long and names doubles on the other ring', () => {
    const rows = gearChart(buildMachine(bike, rider));
    expect(rows).toHaveLength(22);
    for (let i = 1; i < rows.length; i += 1)
      expect(rows[i]!.gear.developmentM).toBeGreaterThanOrEqual(rows[i - 1]!.gear.developmentM);
    // 34 × 17 is 2.00, 50 × 25 is 2.00: the same gear twice.
    const row = rows.find((r) => r.gear.ringTeeth === 34 && r.gear.sprocketTeeth === 17);
    expect(row?.twin).toEqual({ ringTeeth: 50, sprocketTeeth: 25 });
  });

  test('one ring has no doubles', () => {
    const rows = gearChart(buildMachine(bikeById('gravel-1x12')!, riderById('adult-strong')!));
    expect(rows.every((row) => row.twin === null)).toBe(true);
  });
});
