/** The legs: a straight torque line, a hill that makes them push, and the weight of the body where they are forced. */
import { shifterPlaces } from '../../../src/core/model/shifters.ts';
import { describe, expect, it } from 'vitest';
import { helpN } from '../../../src/core/model/motor.ts';
import { rpmToRadPerS } from '../../../src/core/math/numbers.ts';
import {
  bandLowRpm,
  comfortLoad,
  crankTorqueNm,
  lineTorqueNm,
  midBandRpm,
  referenceTorqueNm,
  reserveAfterJ,
  slopeEffort,
  standstillTorqueNm,
} from '../../../src/core/model/legs.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { MATCHING_RIDER, RIDERS } from '../../../src/core/model/presets.ts';
import { bike, rider } from '../ride/worlds.ts';

const BIKE_OF: Readonly<Record<string, string>> = {
  'child-9': 'kids-20-1x7',
  'adult-new': 'town-1x9',
  'adult-weekly': 'road-2x11',
  'adult-strong': 'gravel-1x12',
};

describe.each(RIDERS.map((r) => r.id))('legs of %s', (id) => {
  const who = rider(id);
  const machine = buildMachine(bike(BIKE_OF[id] ?? 'road-2x11'), who);
  const torque = (pressure: number, rpm: number, slope = 0, reserve = 1): number =>
    crankTorqueNm(machine, pressure, rpm, slope, reserve);
  const power = (pressure: number, rpm: number, slope = 0, reserve = 1): number =>
    torque(pressure, rpm, slope, reserve) * rpmToRadPerS(rpm);
  const mid = midBandRpm(who);
  const weightNm = machine.bodyWeightTorqueNm;

  it('steady at mid band on the flat is the steady power', () => {
    expect(power(1, mid)).toBeCloseTo(who.steadyPowerW, 9);
    expect(torque(1, mid)).toBeCloseTo(referenceTorqueNm(who), 9);
  });

  it('inside the band torque lies on one straight line to nothing at 150 rpm, whatever the effort', () => {
    for (const slope of [0, 0.03, 0.08])
      for (const pressure of [0.4, 1, 1.6])
        for (const rpm of [who.cadenceLowRpm, mid, who.cadenceHighRpm, 120, 149]) {
          const share = torque(pressure, rpm, slope) / torque(pressure, mid, slope);
          expect(share).toBeCloseTo((150 - rpm) / (150 - mid), 9);
        }
    expect([torque(1, 150), torque(1.6, 150), torque(1, 200)]).toEqual([0, 0, 0]);
    expect(lineTorqueNm(standstillTorqueNm(who), mid)).toBeCloseTo(referenceTorqueNm(who), 9);
  });

  it('below the band the legs are forced above the line, up to the weight of the body at a standstill', () => {
    for (const rpm of [10, 25, 40, who.cadenceLowRpm - 5])
      expect(torque(1, rpm)).toBeGreaterThan(lineTorqueNm(standstillTorqueNm(who), rpm));
    expect(torque(1, 0)).toBeCloseTo(weightNm, 9);
    expect(torque(1, 0, 0.15)).toBeCloseTo(weightNm, 9);
    // Standing up adds the 22.4 % of Bouillod et al. 2017, and no more can be had.
    expect(torque(1.6, 0, 0.15)).toBeCloseTo(1.224 * weightNm, 9);
    for (const slope of [0, 0.05, 0.15])
      for (let rpm = 0; rpm <= 150; rpm += 5) {
        expect(torque(1, rpm, slope)).toBeLessThanOrEqual(weightNm + 1e-9);
        expect(torque(1.6, rpm, slope)).toBeLessThanOrEqual(1.224 * weightNm + 1e-9);
      }
  });

  it('too hard a gear bogs down: below some cadence power falls with it', () => {
    expect(power(1, 15)).toBeLessThan(power(1, 30));
    expect(power(1, 30)).toBeLessThan(power(1, 45) + 1e-9);
    expect(power(1, 15)).toBeLessThan(who.steadyPowerW * 0.8);
  });

  it('coasting gives nothing, easing two fifths, pressing 1.6 times', () => {
    expect(torque(0, mid)).toBe(0);
    expect(torque(0.4, mid) / torque(1, mid)).toBeCloseTo(0.4, 12);
    expect(torque(1.6, mid) / torque(1, mid)).toBeCloseTo(1.6, 12);
  });

  it('soft feet know no hill and are not forced; firm ones push harder the steeper it gets', () => {
    for (const rpm of [30, 60, mid]) {
      expect(torque(0.4, rpm, 0.1)).toBe(torque(0.4, rpm));
      for (const [gentle, steep] of [
        [0, 0.02],
        [0.02, 0.05],
        [0.05, 0.07],
      ] as const)
        expect(torque(1, rpm, steep)).toBeGreaterThan(torque(1, rpm, gentle));
      expect(torque(1, rpm, -0.08)).toBe(torque(1, rpm));
    }
    expect(torque(0.4, 20)).toBeCloseTo(0.4 * lineTorqueNm(standstillTorqueNm(who), 20), 9);
  });

  it('torque never jumps with pressure, cadence, slope or reserve, and never falls with pressure', () => {
    for (const reserve of [1, 0.2, 0])
      for (const slope of [0, 0.06])
        for (let rpm = 5; rpm <= 150; rpm += 5) {
          const at = torque(1, rpm, slope, reserve);
          expect(Math.abs(torque(1.000001, rpm, slope, reserve) - at)).toBeLessThan(0.001);
          expect(Math.abs(torque(1, rpm + 0.0001, slope, reserve) - at)).toBeLessThan(0.001);
          expect(Math.abs(torque(1, rpm, slope + 1e-7, reserve) - at)).toBeLessThan(0.001);
          expect(Math.abs(torque(1, rpm, slope, reserve + 1e-6) - at)).toBeLessThan(0.01);
          for (let p = 0; p < 1.6; p += 0.1)
            expect(torque(p + 0.1, rpm, slope, reserve)).toBeGreaterThanOrEqual(
              torque(p, rpm, slope, reserve) - 1e-12,
            );
        }
  });

  it('with little reserve left steady legs come down to critical power; standing up still spends the rest', () => {
    const full = power(1, mid, 0.08);
    expect(full).toBeGreaterThan(who.criticalPowerW);
    expect(power(1, mid, 0.08, 0.3)).toBeCloseTo(full, 9);
    expect(power(1, mid, 0.08, 0.15)).toBeCloseTo((full + who.criticalPowerW) / 2, 9);
    expect(power(1, mid, 0.08, 0)).toBeCloseTo(who.criticalPowerW, 9);
    expect(power(1.6, mid, 0.08, 0.05)).toBeCloseTo(power(1.6, mid, 0.08), 9);
    // Nobody is spared what the weight of the body does by itself at walking cadence.
    expect(torque(1, 1, 0.08, 0)).toBe(torque(1, 1, 0.08));
  });

  it('the band falls on climbs by 15 rpm at most', () => {
    expect(who.cadenceLowRpm - bandLowRpm(who, 0.2)).toBe(15);
    expect(who.cadenceLowRpm - bandLowRpm(who, 0.04)).toBeCloseTo(6, 12);
  });

  it('what the band carries is what steady legs give at its lower edge', () => {
    for (const slope of [-0.05, 0, 0.05, 0.12]) {
      const edge = torque(1, bandLowRpm(who, slope), slope) / machine.referenceTorqueNm;
      expect(comfortLoad(machine, slope)).toBeCloseTo(edge, 12);
    }
    expect(comfortLoad(machine, 0)).toBeGreaterThan(1);
    expect(comfortLoad(machine, 0.08)).toBeGreaterThan(comfortLoad(machine, 0.03));
  });

  it('the reserve never leaves its bounds', () => {
    expect(reserveAfterJ(10, 5000, who, 1)).toBe(0);
    expect(reserveAfterJ(who.reserveJ, 0, who, 100)).toBe(who.reserveJ);
    expect(reserveAfterJ(0, 0, who, 1)).toBeGreaterThan(0);
  });
});

describe('effort on a slope', () => {
  it('is 1 on the flat and downhill, grows in a straight line and stops growing at 1.56', () => {
    expect([slopeEffort(-0.1), slopeEffort(0)]).toEqual([1, 1]);
    expect(slopeEffort(0.04)).toBeCloseTo(1.28, 12);
    expect(slopeEffort(0.02) - 1).toBeCloseTo((slopeEffort(0.04) - 1) / 2, 12);
    expect([slopeEffort(0.08), slopeEffort(0.2)]).toEqual([1.56, 1.56]);
  });

  it('lets every bundled bike keep moving in its easiest gear on 10 % with the rider it belongs to, but for three-speeds', () => {
    for (const [bikeId, riderId] of Object.entries(MATCHING_RIDER)) {
      // Three gears cannot be right for the flat and for 10 %: there people get off and push.
      if ((shifterPlaces(bike(bikeId))[1] ?? 0) <= 3) continue;
      const machine = buildMachine(bike(bikeId), rider(riderId));
      const easiest = machine.gears.reduce((a, b) => (b.developmentM < a.developmentM ? b : a));
      const driveN = (torqueRpm: number): number => {
        const torqueNm = crankTorqueNm(machine, 1, torqueRpm, 0.1);
        const speedMps = (torqueRpm * easiest.developmentM) / 60;
        const helpedN = helpN(machine, easiest, torqueNm, speedMps);
        return (2 * Math.PI * torqueNm * easiest.efficiency) / easiest.developmentM + helpedN;
      };
      const climbN = machine.totalMassKg * 9.80665 * (0.1 + machine.bike.rollingCoefficient);
      expect([bikeId, driveN(40) > climbN]).toEqual([bikeId, true]);
    }
  });
});
