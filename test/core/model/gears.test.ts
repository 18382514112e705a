/** Gears of the bundled bikes as a rider would check them on the stand. */
import { shifterPlaces } from '../../../src/core/model/shifters.ts';
import { describe, expect, it } from 'vitest';
import {
  buildGears,
  chainAngleDeg,
  CROSSED_ANGLE_DEG,
  developmentM,
  wheelCircumferenceM,
} from '../../../src/core/model/gears.ts';
import { buildMachine, cadenceAtRpm, gearAt, steadyGear } from '../../../src/core/model/machine.ts';
import { BIKES, MATCHING_RIDER, RIDERS } from '../../../src/core/model/presets.ts';
import { bike, rider } from '../ride/worlds.ts';

describe('gears', () => {
  it('a 34 × 34 at 90 rpm rolls 3.15 m/s on a 2.1 m wheel', () => {
    expect((developmentM(2.1, 34, 34) * 90) / 60).toBeCloseTo(3.15, 12);
  });

  it('a measured roll-out of the wheel wins over the mark on the tyre', () => {
    const measured = { ...bike('road-2x11'), measuredCircumferenceM: 2.096 };
    expect(wheelCircumferenceM(measured)).toBe(2.096);
    expect(buildGears(measured)[0]?.developmentM).toBeCloseTo((2.096 * 34) / 11, 12);
  });

  it('a bigger sprocket is always easier, a bigger ring always harder', () => {
    for (const b of BIKES) {
      const machine = buildMachine(b, rider('adult-new'));
      for (const gear of machine.gears) {
        if (gear.sprocketIndex > 0)
          expect(gear.developmentM).toBeLessThan(
            gearAt(machine, gear.ringIndex, gear.sprocketIndex - 1).developmentM,
          );
        if (gear.ringIndex > 0)
          expect(gear.developmentM).toBeGreaterThan(
            gearAt(machine, gear.ringIndex - 1, gear.sprocketIndex).developmentM,
          );
      }
    }
  });

  it('the chain angle grows towards the big sprockets and can be asked between them', () => {
    const road = bike('road-2x11');
    expect(chainAngleDeg(road, 0, 4)).toBeLessThan(chainAngleDeg(road, 0, 4.5));
    expect(chainAngleDeg(road, 0.5, 5)).toBeCloseTo(0, 9);
  });

  it('a crossed gear has a straighter twin within 8 % on another ring', () => {
    for (const b of BIKES) {
      const gears = buildGears(b);
      for (const gear of gears.filter((candidate) => candidate.crossed)) {
        expect(Math.abs(gear.chainAngleDeg)).toBeGreaterThanOrEqual(CROSSED_ANGLE_DEG);
        const twin = gears.find(
          (other) =>
            other.ringIndex !== gear.ringIndex &&
            Math.abs(other.ratio / gear.ratio - 1) <= 0.08 &&
            Math.abs(other.chainAngleDeg) < Math.abs(gear.chainAngleDeg),
        );
        expect(twin).toBeDefined();
      }
    }
  });

  it('asking for a gear that does not exist is a broken law', () => {
    const machine = buildMachine(bike('road-2x11'), rider('adult-new'));
    for (const [ring, sprocket] of [
      [2, 0],
      [0, 11],
      [-1, 0],
      [0, -1],
      [1, 11],
    ] as const)
      expect(() => gearAt(machine, ring, sprocket)).toThrow(/no gear/);
  });
});

describe('bundled bikes and riders', () => {
  it('have ids of their own, ascending teeth and a rider that suits', () => {
    expect(new Set(BIKES.map((b) => b.id)).size).toBe(BIKES.length);
    for (const b of BIKES) {
      for (const teeth of [b.chainringsTeeth, b.sprocketsTeeth])
        expect([...teeth].sort((x, y) => x - y)).toEqual(teeth);
      expect(RIDERS.map((r) => r.id)).toContain(MATCHING_RIDER[b.id]);
    }
  });

  it('those promised to the command line are there', () => {
    const bikes = BIKES.map((b) => b.id);
    for (const id of ['kids-20-1x7', 'kids-24-1x8', 'town-1x9', 'trekking-3x8', 'road-2x11', 'gravel-1x12'])
      expect(bikes).toContain(id);
    const riders = RIDERS.map((r) => r.id);
    for (const id of ['child-9', 'adult-new', 'adult-weekly', 'adult-strong']) expect(riders).toContain(id);
  });

  it('the name of a bike counts its rings, and its sprockets or gears in the hub', () => {
    for (const b of BIKES) {
      const [, rings = '1', gears] = /(?:(\d)x|hub-)(\d+)/.exec(b.id) ?? [];
      expect([b.id, ...shifterPlaces(b)]).toEqual([b.id, Number(rings), Number(gears)]);
    }
  });

  it.each(BIKES.map((b) => b.id))(
    '%s and its rider find the band on the flat and a lower gear on a climb',
    (id) => {
      const who = rider(MATCHING_RIDER[id] ?? '');
      const machine = buildMachine(bike(id), who);
      const flat = steadyGear(machine, who.steadyPowerW, 0, 0);
      const up = steadyGear(machine, who.steadyPowerW, 0.06, 0);
      expect(flat.cadenceRpm).toBeGreaterThanOrEqual(who.cadenceLowRpm - 2);
      expect(flat.cadenceRpm).toBeLessThanOrEqual(who.cadenceHighRpm + 2);
      expect(up.gear.developmentM).toBeLessThan(flat.gear.developmentM);
      expect(up.speedMps).toBeLessThan(flat.speedMps);
      expect(cadenceAtRpm(flat.speedMps, flat.gear.developmentM)).toBeCloseTo(flat.cadenceRpm, 12);
    },
  );
});
