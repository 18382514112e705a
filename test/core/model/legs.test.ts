/** The torque line and the four pressures: bogging down, spinning out, and what pressing adds. */
import { describe, expect, it } from 'vitest';
import { rpmToRadPerS } from '../../../src/core/math/numbers.ts';
import {
  bandLowRpm,
  crankTorqueNm,
  lineTorqueNm,
  midBandRpm,
  referenceTorqueNm,
  reserveAfterJ,
  standstillTorqueNm,
} from '../../../src/core/model/legs.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { RIDERS } from '../../../src/core/model/presets.ts';
import { bike, rider } from '../ride/worlds.ts';

describe.each(RIDERS.map((r) => r.id))('legs of %s', (id) => {
  const who = rider(id);
  const machine = buildMachine(bike('road-2x11'), who);
  const torque = (pressure: number, rpm: number): number => crankTorqueNm(machine, pressure, rpm);
  const power = (pressure: number, rpm: number): number => torque(pressure, rpm) * rpmToRadPerS(rpm);

  it('steady at mid band is the steady power, and 80 % of the sustained line', () => {
    const mid = midBandRpm(who);
    expect(power(1, mid)).toBeCloseTo(who.steadyPowerW, 9);
    expect(torque(1, mid)).toBeCloseTo(referenceTorqueNm(who), 9);
    expect(torque(1, mid) / lineTorqueNm(standstillTorqueNm(who), mid)).toBeCloseTo(0.8, 9);
  });

  it('too hard a gear bogs down: below some cadence power falls with it', () => {
    expect(power(1, 15)).toBeLessThan(power(1, 30));
    expect(power(1, 30)).toBeLessThan(who.steadyPowerW);
  });

  it('too easy a gear spins out: at 150 rpm nothing is left', () => {
    expect(power(1, 145)).toBeLessThan(who.steadyPowerW / 2);
    expect([torque(1, 150), torque(1.6, 150), torque(1, 200)]).toEqual([0, 0, 0]);
  });

  it('coasting gives nothing, easing two fifths, pressing up to 1.6 times', () => {
    const mid = midBandRpm(who);
    expect(torque(0, mid)).toBe(0);
    expect(torque(0.4, mid) / torque(1, mid)).toBeCloseTo(0.4, 12);
    expect(torque(1.6, mid) / torque(1, mid)).toBeGreaterThan(1.5);
    expect(torque(1.6, mid) / torque(1, mid)).toBeLessThan(1.6 + 1e-9);
  });

  it('torque never jumps where steady passes into pressing, and never falls with pressure', () => {
    for (let rpm = 0; rpm <= 150; rpm += 5) {
      expect(Math.abs(torque(1.000001, rpm) - torque(1, rpm))).toBeLessThan(0.001);
      for (let p = 0; p < 1.6; p += 0.1)
        expect(torque(p + 0.1, rpm)).toBeGreaterThanOrEqual(torque(p, rpm) - 1e-12);
    }
  });

  it('at a standstill torque is finite', () => {
    expect(torque(1, 0)).toBeGreaterThan(0);
    expect(torque(1.6, 0)).toBeLessThan(400);
  });

  it('the band falls on climbs by 15 rpm at most', () => {
    expect(who.cadenceLowRpm - bandLowRpm(who, 0.2)).toBe(15);
    expect(who.cadenceLowRpm - bandLowRpm(who, 0.04)).toBeCloseTo(6, 12);
  });

  it('the reserve never leaves its bounds', () => {
    expect(reserveAfterJ(10, 5000, who, 1)).toBe(0);
    expect(reserveAfterJ(who.reserveJ, 0, who, 100)).toBe(who.reserveJ);
    expect(reserveAfterJ(0, 0, who, 1)).toBeGreaterThan(0);
  });
});
