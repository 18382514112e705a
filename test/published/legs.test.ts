/**
 * Cadence, torque and power of riders against physiology. Published values bound the bundled riders;
 * formulas with exact answers are met exactly.
 */
import { describe, expect, it } from 'vitest';
import { rpmToRadPerS } from '../../src/core/math/numbers.ts';
import {
  bandLowRpm,
  bodyWeightTorqueNm,
  crankTorqueNm,
  lineTorqueNm,
  MAXIMUM_CADENCE_RPM,
  midBandRpm,
  reserveAfterJ,
} from '../../src/core/model/legs.ts';
import { buildMachine, gearAt, powerForSpeedW } from '../../src/core/model/machine.ts';
import { RIDERS } from '../../src/core/model/presets.ts';
import { buildRideWorld, startState } from '../../src/core/ride/world.ts';
import { bike, literalCourse, rider } from '../core/ride/worlds.ts';

describe('torque and power over cadence', () => {
  it.each([
    [0.5, 0.75],
    [0.75, 0.9375],
    [0.9, 0.99],
    [1, 1],
  ])('at %d of the best cadence a straight torque line gives %d of the best power (exact)', (x, share) => {
    // The best cadence of a straight line is half of the highest.
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
    // And out of the model, for a rider of 200 W who is at home at that cadence.
    const who = {
      ...rider('adult-weekly'),
      steadyPowerW: 200,
      cadenceLowRpm: rpm - 8,
      cadenceHighRpm: rpm + 8,
    };
    expect(crankTorqueNm(buildMachine(bike('road-2x11'), who), 1, rpm)).toBeCloseTo(torque, 2);
  });

  it('cadence and power of steady legs lie on a parabola through the origin, as at fixed lactate from 70 to 110 rpm (Emanuele and Denoth 2011)', () => {
    const machine = buildMachine(bike('road-2x11'), { ...rider('adult-strong'), cadenceLowRpm: 70 });
    const over = (rpm: number): number => (crankTorqueNm(machine, 1, rpm) * rpmToRadPerS(rpm)) / rpm;
    // A parabola through the origin divided by cadence is a straight line: its second differences vanish.
    for (const rpm of [75, 85, 95, 105])
      expect(over(rpm - 5) - 2 * over(rpm) + over(rpm + 5)).toBeCloseTo(0, 9);
  });

  it.each([
    ['child-9', 366, 'boys of 8 to 11, 366 W at 129 rpm, Martin, Malina, Spirduso 2002'],
    ['adult-new', 1317, 'active men, 1317 W at 122 rpm, Martin, Wagner, Coyle 1997'],
    ['adult-weekly', 1317, 'active men, 1317 W at 122 rpm, Martin, Wagner, Coyle 1997'],
    ['adult-strong', 1317, 'active men, 1317 W at 122 rpm, Martin, Wagner, Coyle 1997'],
  ])('%s pressing on a steep climb stays below half a sprint of %d W (%s)', (id, sprintW) => {
    const machine = buildMachine(bike('road-2x11'), rider(id));
    const powers = Array.from(
      { length: 149 },
      (_, i) => crankTorqueNm(machine, 1.6, i + 1, 0.15) * rpmToRadPerS(i + 1),
    );
    const most = Math.max(...powers);
    expect(most).toBeLessThan(sprintW * 0.5);
    expect(most).toBeGreaterThan(rider(id).steadyPowerW);
  });

  it('at no cadence does a rider press harder than a sprint of the same kind of person would (straight lines of those sprints)', () => {
    for (const [id, sprintW, sprintRpm] of [
      ['child-9', 366, 129],
      ['adult-new', 1317, 122],
      ['adult-weekly', 1317, 122],
      ['adult-strong', 1317, 122],
    ] as const) {
      const machine = buildMachine(bike('road-2x11'), rider(id));
      // The line through the best power: twice its torque at standstill, nothing at twice its cadence.
      const stillNm = (2 * sprintW) / rpmToRadPerS(sprintRpm);
      for (let rpm = 0; rpm < 150; rpm += 5)
        expect([
          id,
          rpm,
          crankTorqueNm(machine, 1.6, rpm, 0.15) <= stillNm * (1 - rpm / (2 * sprintRpm)),
        ]).toEqual([id, rpm, true]);
    }
  });
});

describe('the weight of the body', () => {
  it.each([
    [75, 170, 125.03, 79.6],
    [40, 170, 66.69, 42.5],
    [40, 152, 59.63, 38.0],
  ])(
    '%d kg on a %d mm crank are %d N m at most and %d N m on average of a turn (statics)',
    (massKg, crankLengthMm, peakNm, meanNm) => {
      // The mean of |sin| over half a turn, summed, against the 2/π of the model.
      const steps = 100_000;
      let sum = 0;
      for (let i = 0; i < steps; i += 1) sum += Math.sin((Math.PI * (i + 0.5)) / steps) / steps;
      const own = (massKg * 9.80665 * crankLengthMm) / 1000;
      expect(own).toBeCloseTo(peakNm, 1);
      expect(own * sum).toBeCloseTo(meanNm, 1);
      const nm = bodyWeightTorqueNm({ ...rider('adult-new'), massKg }, { crankLengthMm });
      expect(nm).toBeCloseTo(own * sum, 6);
      expect(nm).toBeCloseTo(meanNm, 1);
    },
  );

  it('steady legs hold what the weight holds: 9.4 % in the road bike’s start gear', () => {
    const world = buildRideWorld(literalCourse(100, 0), bike('road-2x11'), rider('adult-new'));
    const { machine } = world;
    const from = startState(world);
    const gear = gearAt(machine, from.ringIndex, from.sprocketIndex);
    const holds = (torqueNm: number): number =>
      (2 * Math.PI * torqueNm * gear.efficiency) / gear.developmentM / (machine.totalMassKg * 9.80665) -
      machine.bike.rollingCoefficient;
    expect(Math.abs(holds(machine.bodyWeightTorqueNm) - 0.094)).toBeLessThan(0.001);
    expect(holds(crankTorqueNm(machine, 1, 0, 0.08))).toBeCloseTo(holds(machine.bodyWeightTorqueNm), 9);
    // The straight line alone would stall at less than half of that.
    expect(holds(machine.standstillTorqueNm)).toBeLessThan(0.046);
  });
});

describe('standing up', () => {
  const machine = buildMachine(bike('road-2x11'), rider('adult-strong'));

  it('adds 22.4 % to the most force a pedal can take (Bouillod et al. 2017)', () => {
    const still = (pressure: number): number => crankTorqueNm(machine, pressure, 0, 0.1);
    expect(still(1.6) / still(1)).toBeCloseTo(1.224, 9);
  });

  it('at 8 % less cadence it is worth at least the 12.6 % of power it was worth to elite riders (Bouillod et al. 2017)', () => {
    for (const slope of [0.05, 0.08, 0.1])
      for (const rpm of [60, 70, 80, 90]) {
        const seatedW = crankTorqueNm(machine, 1, rpm, slope) * rpmToRadPerS(rpm);
        const standingW = crankTorqueNm(machine, 1.6, rpm * 0.92, slope) * rpmToRadPerS(rpm * 0.92);
        expect(standingW / seatedW).toBeGreaterThan(1.126);
      }
  });

  it('is for effort above what can be kept up: pressing on a climb lies above critical power for every rider (worth it above 94 % of the power at full oxygen uptake: Hansen and Waldeland 2008)', () => {
    for (const who of RIDERS) {
      const legs = buildMachine(bike('road-2x11'), who);
      for (const slope of [0.05, 0.1]) {
        const rpm = midBandRpm(who);
        expect(crankTorqueNm(legs, 1.6, rpm, slope) * rpmToRadPerS(rpm)).toBeGreaterThan(
          1.5 * who.criticalPowerW,
        );
      }
    }
  });
});

describe('cadence', () => {
  it('the new rider is at home near the 80 rpm that 18 non-cyclists chose at 40 to 60 % of their best (thesis, ACU Research Bank fhs_pub/4333)', () => {
    expect(Math.abs(midBandRpm(rider('adult-new')) - 80)).toBeLessThanOrEqual(2);
  });

  it('the new rider’s band still reaches into what non-cyclists as fit as cyclists chose, 91.6 ± 10.5 rpm (Marsh and Martin 1993)', () => {
    expect(rider('adult-new').cadenceHighRpm).toBeGreaterThan(91.6 - 10.5);
  });

  it.each(['adult-weekly', 'adult-strong'])(
    '%s is at home between the 85.2 rpm of cyclists (Marsh and Martin 1993) and the 92.4 of professionals against the clock (Lucía et al. 2001)',
    (id) => {
      expect(midBandRpm(rider(id))).toBeGreaterThanOrEqual(85.2);
      expect(midBandRpm(rider(id))).toBeLessThanOrEqual(92.4);
    },
  );

  it('every adult band lies within the 70 to 100 rpm of teaching texts', () => {
    for (const { id, cadenceLowRpm, cadenceHighRpm } of RIDERS.filter((r) => r.id.startsWith('adult'))) {
      expect([id, cadenceLowRpm >= 70, cadenceHighRpm <= 100]).toEqual([id, true, true]);
    }
  });

  it('the child’s band lies 5 rpm below the new adult’s (common practice, no source: none on children’s cadence was found)', () => {
    expect(rider('child-9').cadenceLowRpm).toBe(rider('adult-new').cadenceLowRpm - 5);
    expect(rider('child-9').cadenceHighRpm).toBe(rider('adult-new').cadenceHighRpm - 5);
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

  it('the child keeps below the 2.65 W/kg that boys of 12 hold (Dekerle et al. 2009: critical power 105 W at 39.6 kg)', () => {
    const { steadyPowerW, criticalPowerW, massKg } = rider('child-9');
    expect(105 / 39.6).toBeCloseTo(2.65, 2);
    expect(criticalPowerW / massKg).toBeLessThan(2.65);
    expect(steadyPowerW / massKg).toBeLessThan(2.65);
  });

  it('the child’s pressing stays below what boys of 9 give for 20 s, 223 ± 40 W, and below 4.7 W/kg for 30 s at 6 to 8 years (Falgairette et al. 1991)', () => {
    const who = rider('child-9');
    const machine = buildMachine(bike('kids-20-1x7'), who);
    for (let rpm = 1; rpm < 150; rpm += 1) {
      const watts = crankTorqueNm(machine, 1.6, rpm, 0.15) * rpmToRadPerS(rpm);
      expect(watts).toBeLessThan(223 - 40);
      expect(watts / who.massKg).toBeLessThan(4.7);
    }
  });

  it('no adult holds more than 234 + 62 W, adults of mixed fitness (critical power, n 12), and the weekly one lies among them', () => {
    for (const { id, criticalPowerW } of RIDERS.filter((r) => r.id.startsWith('adult')))
      expect([id, criticalPowerW <= 234 + 62]).toEqual([id, true]);
    expect(Math.abs(rider('adult-weekly').criticalPowerW - 234)).toBeLessThan(62);
  });

  it('75 kg with a bike on 5 % at 2 W/kg go about 10 km/h (a consumer test body: 75 + 15 + 5 kg, ±5 %)', () => {
    const watts = powerForSpeedW(10 / 3.6, {
      slopeRatio: 0.05,
      windMps: 0,
      massKg: 95,
      cdaM2: 0.5,
      rollingCoefficient: 0.006,
      efficiency: 0.97,
    });
    expect(Math.abs(watts / 150 - 1)).toBeLessThan(0.05);
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
