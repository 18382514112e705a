/**
 * Cadence, torque and power of riders against physiology. Published values bound the bundled riders;
 * formulas with exact answers are met exactly.
 */
import { describe, expect, it } from 'vitest';
import { rpmToRadPerS } from '../../src/core/math/numbers.ts';
import {
  bandLowRpm,
  crankTorqueNm,
  lineTorqueNm,
  MAXIMUM_CADENCE_RPM,
  midBandRpm,
  powerParabola,
  reserveAfterJ,
} from '../../src/core/model/legs.ts';
import { buildMachine } from '../../src/core/model/machine.ts';
import { RIDERS } from '../../src/core/model/presets.ts';
import { bike, rider } from '../core/ride/worlds.ts';

describe('torque and power over cadence', () => {
  it.each([
    [0.5, 0.75],
    [0.75, 0.9375],
    [0.9, 0.99],
    [1, 1],
  ])('at %d of the best cadence a straight torque line gives %d of the best power (exact)', (x, share) => {
    expect(powerParabola(x)).toBeCloseTo(share, 12);
    // The same from our own line, whose best cadence is half of the highest.
    const power = (rpm: number): number => lineTorqueNm(100, rpm) * rpmToRadPerS(rpm);
    const best = MAXIMUM_CADENCE_RPM / 2;
    expect(power(x * best) / power(best)).toBeCloseTo(share, 12);
  });

  it('118.5 N m at 129.8 rpm are 1610.7 W, near the 1600 W measured (elite sprinters, Dorel et al. 2005)', () => {
    const watts = 118.5 * rpmToRadPerS(129.8);
    expect(watts).toBeCloseTo(1610.7, 1);
    expect(Math.abs(watts / 1600 - 1)).toBeLessThan(0.01);
  });

  it.each([
    [50, 38.2],
    [80, 23.87],
    [95, 20.1],
  ])('200 W at %d rpm are %d N m at the cranks (exact)', (rpm, torque) => {
    expect(200 / rpmToRadPerS(rpm)).toBeCloseTo(torque, 2);
    // And out of the model, for a rider of 200 W with the weekly rider's band.
    const machine = buildMachine(bike('road-2x11'), { ...rider('adult-weekly'), steadyPowerW: 200 });
    expect(crankTorqueNm(machine, 1, rpm)).toBeCloseTo(torque, 2);
  });

  it.each([
    ['child-9', 366, 'boys of 8 to 11, 366 W at 129 rpm, Martin, Malina, Spirduso 2002'],
    ['adult-new', 1317, 'active men, 1317 W at 122 rpm, Martin, Wagner, Coyle 1997'],
    ['adult-weekly', 1317, 'active men, 1317 W at 122 rpm, Martin, Wagner, Coyle 1997'],
    ['adult-strong', 1317, 'active men, 1317 W at 122 rpm, Martin, Wagner, Coyle 1997'],
  ])('%s pressing stays well below a sprint of %d W (%s)', (id, sprintW) => {
    const machine = buildMachine(bike('road-2x11'), rider(id));
    const powers = Array.from(
      { length: 149 },
      (_, i) => crankTorqueNm(machine, 1.6, i + 1) * rpmToRadPerS(i + 1),
    );
    const most = Math.max(...powers);
    expect(most).toBeLessThan(sprintW * 0.5);
    expect(most).toBeGreaterThan(rider(id).steadyPowerW);
  });
});

describe('cadence', () => {
  it('the new rider is at home near the 80 rpm that non-cyclists choose (Marsh and Martin 1993)', () => {
    expect(Math.abs(midBandRpm(rider('adult-new')) - 80)).toBeLessThanOrEqual(2);
  });

  it.each(['adult-weekly', 'adult-strong'])(
    '%s is at home within the 85 to 92 rpm of trained riders (Marsh and Martin 1993)',
    (id) => {
      expect(midBandRpm(rider(id))).toBeGreaterThanOrEqual(85);
      expect(midBandRpm(rider(id))).toBeLessThanOrEqual(92);
    },
  );

  it('every adult band lies within the 70 to 100 rpm of teaching texts', () => {
    for (const { id, cadenceLowRpm, cadenceHighRpm } of RIDERS.filter((r) => r.id.startsWith('adult'))) {
      expect([id, cadenceLowRpm >= 70, cadenceHighRpm <= 100]).toEqual([id, true, true]);
    }
  });

  it('the lower edge falls by 1.3 to 1.8 rpm per 1 % of climb, like riders in open rides, and not on the flat', () => {
    const weekly = rider('adult-weekly');
    for (const percent of [1, 2, 4, 6, 8, 10]) {
      const fall = (weekly.cadenceLowRpm - bandLowRpm(weekly, percent / 100)) / percent;
      expect(fall).toBeGreaterThanOrEqual(1.3);
      expect(fall).toBeLessThanOrEqual(1.8);
    }
    expect(bandLowRpm(weekly, 0)).toBe(weekly.cadenceLowRpm);
    expect(bandLowRpm(weekly, -0.05)).toBe(weekly.cadenceLowRpm);
  });

  it('a strong rider may turn the 71 rpm of professionals on passes of 7 to 8 % (Lucía et al. 2001)', () => {
    const strong = rider('adult-strong');
    expect(bandLowRpm(strong, 0.08)).toBeLessThanOrEqual(71);
    expect(strong.cadenceHighRpm).toBeGreaterThanOrEqual(89);
    expect(strong.cadenceLowRpm).toBeLessThanOrEqual(89);
  });
});

describe('what can be kept up', () => {
  it('every adult holds more than the 75 W that healthy adults keep for hours (published)', () => {
    for (const { id, steadyPowerW } of RIDERS.filter((r) => r.id.startsWith('adult')))
      expect([id, steadyPowerW > 75]).toEqual([id, true]);
  });

  it('the new adult holds 1.5 to 2.2 W/kg (from memory)', () => {
    const { steadyPowerW, massKg } = rider('adult-new');
    expect(steadyPowerW / massKg).toBeGreaterThanOrEqual(1.5);
    expect(steadyPowerW / massKg).toBeLessThanOrEqual(2.2);
  });

  it('the child holds about 1 to 1.5 W/kg (from memory, so ±10 %)', () => {
    const { steadyPowerW, massKg } = rider('child-9');
    expect(steadyPowerW / massKg).toBeGreaterThanOrEqual(1 * 0.9);
    expect(steadyPowerW / massKg).toBeLessThanOrEqual(1.5 * 1.1);
  });
});

describe('reserve above critical power', () => {
  const engine = { criticalPowerW: 250, reserveJ: 20_000 };
  const dt = 1 / 120;

  it('250 W critical and 20 kJ last 400 s at 300 W (Monod and Scherrer 1965)', () => {
    let left = engine.reserveJ;
    let ticks = 0;
    while (left > 0) {
      left = reserveAfterJ(left, 300, engine, dt);
      ticks += 1;
    }
    expect(Math.abs(ticks * dt - 400)).toBeLessThan(0.05);
  });

  it('60 s at 400 W and 120 s at 150 W leave 15061 J as in the form of Skiba et al. 2015, not 12865 J as in that of 2012', () => {
    let left = engine.reserveJ;
    for (let i = 0; i < 60 * 120; i += 1) left = reserveAfterJ(left, 400, engine, dt);
    for (let i = 0; i < 120 * 120; i += 1) left = reserveAfterJ(left, 150, engine, dt);
    expect(Math.abs(left - 15_061)).toBeLessThan(2);
    expect(Math.abs(left - 12_865)).toBeGreaterThan(2_000);
  });
});
