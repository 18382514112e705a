/**
 * Chain and derailleur against handbooks, standards and papers. Chain pitch, sprocket diameters, chain
 * length and the full friction formula are worked out here only: the core needs no more of them than the
 * efficiency line, which is held against them.
 */
import { describe, expect, it } from 'vitest';
import { smallAtanDeg } from '../../src/core/math/numbers.ts';
import {
  capacityTeeth,
  chainAngleDeg,
  chainAngleLoss,
  straightEfficiency,
} from '../../src/core/model/gears.ts';
import { BIKES, RIDERS } from '../../src/core/model/presets.ts';
import { buildGears } from '../../src/core/model/gears.ts';
import { crankTorqueNm } from '../../src/core/model/legs.ts';
import { buildMachine } from '../../src/core/model/machine.ts';
import { chainPull } from '../../src/core/model/shift.ts';
import { bike, rider } from '../core/ride/worlds.ts';

const FRICTION = 0.09;
const PIN_RADIUS_MM = 1.75968;
const CHAIN_PITCH_MM = 12.7;

/** Loss by pin friction as a share of power: π² μ ρ / p × (1/ring + 1/sprocket) (Spicer et al. 2001). */
function pinLoss(ring: number, sprocket: number): number {
  return ((Math.PI ** 2 * FRICTION * PIN_RADIUS_MM) / CHAIN_PITCH_MM) * (1 / ring + 1 / sprocket);
}

describe('pin friction (Spicer et al. 2001, J Mech Des 123:598–605, theory)', () => {
  it('300 N on 48 and 24 teeth at 80 rpm lose 1.8756733 W', () => {
    const omega = (80 * Math.PI) / 30;
    const pinRadiusM = PIN_RADIUS_MM / 1000;
    const watts = (Math.PI / 2) * 300 * 48 * omega * FRICTION * pinRadiusM * (1 / 48 + 1 / 24);
    expect(Math.abs(watts - 1.8756733)).toBeLessThan(1e-6);
  });

  it.each([
    [52, 11, 0.01356],
    [50, 17, 0.0097],
    [34, 28, 0.00802],
  ])('%d × %d loses %d of the power, and our line has the same slope', (ring, sprocket, share) => {
    expect(Math.abs(pinLoss(ring, sprocket) - share)).toBeLessThan(0.000006);
    // Our line adds a fixed 1.3 % for everything that is not pins.
    expect(Math.abs(0.987 - straightEfficiency(ring, sprocket) - share)).toBeLessThan(0.00001);
  });

  it('a chain 3 to 4° out of line costs 0.05 to 0.15 % in the same theory', () => {
    for (const angle of [3, -3, 3.5, 4, -4]) {
      expect(chainAngleLoss(angle)).toBeGreaterThanOrEqual(0.0005);
      expect(chainAngleLoss(angle)).toBeLessThanOrEqual(0.0015);
    }
  });
});

describe('drivetrain efficiency', () => {
  const all = BIKES.flatMap((b) => buildGears(b).map((gear) => ({ bike: b.id, gear })));

  it('50 × 17 has the 97.7 % of Martin et al. 1998', () => {
    expect(straightEfficiency(50, 17)).toBeCloseTo(0.977, 3);
  });

  it('every gear of every bike lies within 81 to 98.6 % (measured, Spicer et al. 2001)', () => {
    expect(all.length).toBeGreaterThan(70);
    for (const { gear } of all) {
      expect(gear.efficiency).toBeGreaterThan(0.81);
      expect(gear.efficiency).toBeLessThan(0.986);
    }
  });

  it('every gear lies within 96 to 99 %, round the loss of 2.1 ± 1.5 % (Smit et al. 2023, Sports Eng)', () => {
    // Measured on derailleurs; what a hub takes besides is in `hubs.test.ts`.
    for (const { gear } of all.filter((one) => one.gear.hub === null)) {
      expect(gear.efficiency).toBeGreaterThan(0.96);
      expect(gear.efficiency).toBeLessThan(0.99);
      expect(Math.abs(1 - gear.efficiency - 0.021)).toBeLessThan(0.015);
    }
  });

  it('bigger sprockets lose less (Spicer et al. 2001)', () => {
    expect(straightEfficiency(52, 15)).toBeGreaterThan(straightEfficiency(52, 11));
    expect(straightEfficiency(52, 21)).toBeGreaterThan(straightEfficiency(52, 15));
  });
});

describe('chain angle (exact geometry)', () => {
  it('5 mm over 391 mm are 0.7326°', () => {
    expect(smallAtanDeg(5 / 391)).toBeCloseTo(0.7326, 4);
  });

  // Lateral places from memory, angles exact from them.
  it('two rings 7 mm apart over eleven sprockets 3.74 mm apart span −2.12° to +3.10° and −3.10° to +2.12°', () => {
    const road = bike('road-2x11');
    const angle = (ring: number, sprocket: number): number => chainAngleDeg(road, ring, sprocket);
    expect(angle(1, 0)).toBeCloseTo(-2.12, 2);
    expect(angle(1, 10)).toBeCloseTo(3.1, 2);
    expect(angle(0, 0)).toBeCloseTo(-3.1, 2);
    expect(angle(0, 10)).toBeCloseTo(2.12, 2);
  });

  it('the extremes are what riders are told to avoid: big with biggest, small with smallest (common practice, no source)', () => {
    for (const id of ['road-2x11', 'trekking-3x8']) {
      const gears = buildGears(bike(id));
      const crossed = gears.filter((gear) => gear.crossed);
      const rings = bike(id).chainringsTeeth.length - 1;
      const sprockets = bike(id).sprocketsTeeth.length - 1;
      expect(crossed.some((g) => g.ringIndex === rings && g.sprocketIndex === sprockets)).toBe(true);
      expect(crossed.some((g) => g.ringIndex === 0 && g.sprocketIndex === 0)).toBe(true);
      expect(crossed.length).toBeLessThan(gears.length / 3);
    }
  });

  it('a single ring is never marked as crossed (common practice, no source)', () => {
    for (const b of BIKES.filter((candidate) => candidate.chainringsTeeth.length === 1))
      expect(buildGears(b).every((gear) => !gear.crossed)).toBe(true);
  });

  it('sprocket pitches are 5.0, 4.8, 4.34 mm for 7, 8 and 9 speeds (from memory), 3.74 for 11 and 3.5–3.65 for 12', () => {
    expect(bike('kids-20-1x7').sprocketPitchMm).toBe(5);
    expect(bike('kids-24-1x8').sprocketPitchMm).toBe(4.8);
    expect(bike('trekking-3x8').sprocketPitchMm).toBe(4.8);
    expect(bike('town-1x9').sprocketPitchMm).toBe(4.34);
    expect(bike('road-2x11').sprocketPitchMm).toBe(3.74);
    expect(Math.abs(bike('gravel-1x12').sprocketPitchMm - 3.575)).toBeLessThan(0.076);
  });
});

describe('chain (worked out in this test only)', () => {
  it.each([
    [50, 202.26],
    [17, 69.116],
    [11, 45.078],
  ])('a pitch of 12.7 mm lays %d teeth on a circle of %d mm (ISO 9633, ISO 606)', (teeth, diameterMm) => {
    expect(Math.abs(CHAIN_PITCH_MM / Math.sin(Math.PI / teeth) - diameterMm)).toBeLessThan(0.001);
  });

  it('63 and 20 teeth at 36 pitches need 114.80 pitches; 114 pitches give 35.59 (roller-chain handbook)', () => {
    const halfTeeth = (63 + 20) / 2;
    const k = ((63 - 20) / (2 * Math.PI)) ** 2;
    expect(2 * 36 + halfTeeth + k / 36).toBeCloseTo(114.8, 2);
    const b = 114 - halfTeeth;
    expect((b + Math.sqrt(b * b - 8 * k)) / 4).toBeCloseTo(35.59, 2);
  });
});

describe('derailleur capacity (handbook arithmetic)', () => {
  it.each([
    [[39, 53], [11, 12, 13, 14, 15, 17, 19, 21, 24, 28], 31],
    [[24, 32, 44], [12, 14, 16, 18, 21, 26, 34], 42],
  ])('rings %j with sprockets %j ask %d teeth', (chainringsTeeth, sprocketsTeeth, teeth) => {
    expect(capacityTeeth({ chainringsTeeth, sprocketsTeeth })).toBe(teeth);
  });
});

describe('the pull of the chain', () => {
  const machine = buildMachine(bike('road-2x11'), rider('adult-weekly'));
  const pullN = (torqueNm: number, ringTeeth: number): number =>
    chainPull(machine, torqueNm, ringTeeth) * machine.rider.massKg * 9.80665;

  // Exact arithmetic on the pitch radius p / (2 sin(π/N)); ours is a circle of the same number of pitches.
  it.each([
    [200, 80, 50, 236],
    [200, 50, 34, 555],
  ])('%d W at %d rpm on %d teeth pull with %d N', (watts, rpm, teeth, newton) => {
    const radiusM = 0.0127 / (2 * Math.sin(Math.PI / teeth));
    const torqueNm = watts / ((rpm * Math.PI) / 30);
    expect(Math.abs(torqueNm / radiusM - newton)).toBeLessThan(0.6);
    expect(Math.abs(pullN(torqueNm, teeth) / newton - 1)).toBeLessThan(0.004);
  });

  it('75 kg standing on one pedal pull with 1817 N on 34 teeth, 22.7 % of what a new chain must hold (8010 N, US 16 CFR 1512.8)', () => {
    const peakNm = 75 * 9.80665 * 0.17;
    expect(Math.abs(pullN(peakNm, 34) / 1817 - 1)).toBeLessThan(0.004);
    expect(pullN(peakNm, 34) / 8010).toBeCloseTo(0.227, 2);
  });

  it('no rider comes near a third of a new chain’s strength, pressing as hard as there is', () => {
    for (const who of RIDERS) {
      const legs = buildMachine(bike('road-2x11'), who);
      const most = crankTorqueNm(legs, 1.6, 0, 0.2) * 1.5;
      const newton = chainPull(legs, most, 34) * who.massKg * 9.80665;
      expect([who.id, newton < 8010 / 3]).toEqual([who.id, true]);
    }
  });
});
