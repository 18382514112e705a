/**
 * What a frame sounds like: loudness and speed of every loop, without playing anything.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  approachMix,
  freewheelTicksPerS,
  isAudibleChange,
  LOUDEST_GAIN,
  type Mix,
  mixOf,
  overrunMps,
  SILENT_MIX,
} from '../../src/audio/mix.ts';
import { FREEWHEEL_TICKS_PER_S, LOOP_NAMES } from '../../src/audio/sounds.ts';
import { coastingFrame, frameWith } from './frames.ts';

const freewheelNames = ['freewheel-slow', 'freewheel-medium', 'freewheel-fast'] as const;

function freewheelGain(mix: Mix): number {
  return freewheelNames.reduce((sum, name) => sum + mix[name].gain, 0);
}

const anyFrame = fc
  .record({
    speedMps: fc.double({ min: 0, max: 25, noNaN: true }),
    windMps: fc.double({ min: -15, max: 15, noNaN: true }),
    cadenceRpm: fc.double({ min: 0, max: 160, noNaN: true }),
    torqueRatio: fc.double({ min: 0, max: 4, noNaN: true }),
    developmentM: fc.double({ min: 1.2, max: 10, noNaN: true }),
    rollingFactor: fc.double({ min: 0.8, max: 5, noNaN: true }),
    crossedS: fc.double({ min: 0, max: 60, noNaN: true }),
    rate: fc.double({ min: 0.06, max: 1, noNaN: true }),
    braking: fc.boolean(),
    crossed: fc.boolean(),
    chainOn: fc.boolean(),
    shifting: fc.boolean(),
  })
  .map(({ rate, shifting, ...rest }) =>
    frameWith({
      ...rest,
      shift: shifting ? { derailleur: 'rear', direction: 'easier', rate, hub: false } : null,
    }),
  );

describe('coasting', () => {
  it('at 8 m/s ticks and does not hum', () => {
    const mix = mixOf(coastingFrame(8));
    expect(freewheelGain(mix)).toBeGreaterThan(0.2);
    expect(mix['drivetrain-hum'].gain).toBe(0);
  });

  it('ticks twenty times for each turn of the wheel, in whichever loop is heard', () => {
    for (const speedMps of [0.7, 1.5, 3, 5, 8, 12]) {
      const frame = coastingFrame(speedMps);
      expect(freewheelTicksPerS(frame)).toBeCloseTo((speedMps / 2.1) * 20, 6);
      const mix = mixOf(frame);
      const heard = freewheelNames.filter((name) => mix[name].gain > 0);
      expect(heard.length).toBeGreaterThan(0);
      for (const name of heard) {
        const ticksPerS = mix[name].rate * FREEWHEEL_TICKS_PER_S[name];
        expect(ticksPerS).toBeCloseTo(freewheelTicksPerS(frame), 3);
      }
    }
  });

  it('is silent below 0.5 m/s and without a chain', () => {
    expect(freewheelGain(mixOf(coastingFrame(0.4)))).toBe(0);
    expect(freewheelGain(mixOf({ ...coastingFrame(8), chainOn: false }))).toBe(0);
  });

  it('ticks slower when the cranks turn along behind the wheel', () => {
    const softPedalling = frameWith({ speedMps: 8, cadenceRpm: 60 });
    expect(overrunMps(softPedalling)).toBeCloseTo(3.8, 6);
    expect(freewheelTicksPerS(softPedalling)).toBeLessThan(freewheelTicksPerS(coastingFrame(8)));
    expect(mixOf(softPedalling)['drivetrain-hum'].gain).toBe(0);
  });
});

describe('pedalling', () => {
  it('hums, faster with cadence and louder with torque, and does not tick', () => {
    const mix = mixOf(frameWith());
    expect(freewheelGain(mix)).toBe(0);
    expect(mix['drivetrain-hum'].rate).toBeCloseTo(80 / 90, 6);
    const pressing = mixOf(frameWith({ torqueRatio: 1.6 }));
    const easing = mixOf(frameWith({ torqueRatio: 0.4 }));
    expect(pressing['drivetrain-hum'].gain).toBeGreaterThan(mix['drivetrain-hum'].gain);
    expect(easing['drivetrain-hum'].gain).toBeLessThan(mix['drivetrain-hum'].gain);
    expect(easing['drivetrain-hum'].gain).toBeGreaterThan(0);
  });

  it('answers every push of a rider who stands on the pedals, twice a turn, and hums along under one who sits', () => {
    const gains = (outOfSaddle: boolean): number[] =>
      Array.from(
        { length: 40 },
        (_, i) =>
          mixOf(frameWith({ outOfSaddle, torqueRatio: 1.6, crankTurns: 3 + i / 40 }))['drivetrain-hum'].gain,
      );
    const standing = gains(true);
    expect(new Set(gains(false)).size).toBe(1);
    expect(Math.max(...standing)).toBeCloseTo(gains(false)[0] ?? 0, 6);
    expect(Math.min(...standing)).toBeLessThan(Math.max(...standing) / 2);
    expect(Math.min(...standing)).toBeGreaterThan(0);
    // The two pushes of a turn sound alike, and the loudest moment lies with a crank forward.
    standing.slice(0, 20).forEach((gain, i) => expect(standing[i + 20]).toBeCloseTo(gain, 9));
    expect(standing.indexOf(Math.max(...standing)) % 20).toBe(10);
  });

  it('is quiet without a chain, however the cranks spin', () => {
    const mix = mixOf(frameWith({ chainOn: false, crossed: true }));
    expect(mix['drivetrain-hum'].gain).toBe(0);
    expect(mix['chain-rub'].gain).toBe(0);
  });

  it('rubs while the chain is crossed, more the longer it stays', () => {
    expect(mixOf(frameWith())['chain-rub'].gain).toBe(0);
    const passing = mixOf(frameWith({ crossed: true, crossedS: 0 }))['chain-rub'].gain;
    const staying = mixOf(frameWith({ crossed: true, crossedS: 3 }))['chain-rub'].gain;
    expect(passing).toBeGreaterThan(0);
    expect(staying).toBeGreaterThan(1.5 * passing);
  });

  it('grinds only while a shift hangs and the bike moves', () => {
    const hanging = {
      derailleur: 'rear',
      direction: 'easier',
      rate: 0.1,
      hub: false,
    } as const;
    expect(mixOf(frameWith({ shift: hanging }))['shift-grind'].gain).toBeGreaterThan(0.2);
    expect(mixOf(frameWith({ shift: { ...hanging, rate: 0.35 } }))['shift-grind'].gain).toBe(0);
    expect(mixOf(frameWith({ shift: hanging, speedMps: 0, cadenceRpm: 0 }))['shift-grind'].gain).toBe(0);
    expect(mixOf(frameWith())['shift-grind'].gain).toBe(0);
    // A hub that waits is held by its pawls, and nothing grinds.
    expect(mixOf(frameWith({ shift: { ...hanging, rate: 0, hub: true } }))['shift-grind'].gain).toBe(0);
  });
});

describe('the road', () => {
  it('is louder and higher from the tyre the faster it goes, and silent at rest', () => {
    const gains = [0, 2, 4, 8, 12].map((speedMps) => mixOf(frameWith({ speedMps }))['tyre-roll'].gain);
    expect(gains[0]).toBe(0);
    expect([...gains].sort((a, b) => a - b)).toEqual(gains);
    expect(new Set(gains).size).toBe(gains.length);
    const slow = mixOf(frameWith({ speedMps: 2 }))['tyre-roll'].rate;
    expect(mixOf(frameWith({ speedMps: 10 }))['tyre-roll'].rate).toBeGreaterThan(slow);
  });

  it('makes four times the wind at twice the air speed, head wind included', () => {
    const calm = mixOf(frameWith({ speedMps: 5, windMps: 0 })).wind.gain;
    expect(mixOf(frameWith({ speedMps: 5, windMps: 5 })).wind.gain).toBeCloseTo(4 * calm, 9);
    expect(mixOf(frameWith({ speedMps: 5, windMps: -5 })).wind.gain).toBe(0);
  });

  it('crunches on loose ground only, and the tyre steps back there', () => {
    const asphalt = mixOf(frameWith());
    const gravel = mixOf(frameWith({ rollingFactor: 2 }));
    const grass = mixOf(frameWith({ rollingFactor: 3 }));
    expect(asphalt.gravel.gain).toBe(0);
    expect(gravel.gravel.gain).toBeGreaterThan(0.1);
    expect(grass.gravel.gain).toBeLessThan(gravel.gravel.gain / 2);
    expect(gravel['tyre-roll'].gain).toBeLessThan(asphalt['tyre-roll'].gain);
  });

  it('hushes under the brakes, not when standing', () => {
    expect(mixOf(frameWith({ braking: true })).brake.gain).toBeGreaterThan(0.1);
    expect(mixOf(frameWith({ braking: false })).brake.gain).toBe(0);
    expect(mixOf(frameWith({ braking: true, speedMps: 0 })).brake.gain).toBe(0);
  });
});

describe('any frame', () => {
  it('asks for gains within each loop its ceiling and rates a player can reach', () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const mix = mixOf(frame);
        for (const name of LOOP_NAMES) {
          expect(mix[name].gain).toBeGreaterThanOrEqual(0);
          expect(mix[name].gain).toBeLessThanOrEqual(LOUDEST_GAIN[name]);
          expect(mix[name].rate).toBeGreaterThanOrEqual(0.5);
          expect(mix[name].rate).toBeLessThanOrEqual(3);
        }
      }),
      { seed: 41, numRuns: 500 },
    );
  });

  it('never hums and ticks at once', () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const mix = mixOf(frame);
        expect(mix['drivetrain-hum'].gain * freewheelGain(mix)).toBe(0);
      }),
      { seed: 42, numRuns: 500 },
    );
  });
});

describe('moving from one mix to the next', () => {
  it('gets there without jumping, and to real silence in the end', () => {
    const wanted = mixOf(frameWith({ speedMps: 10 }));
    const first = approachMix(SILENT_MIX, wanted, 1 / 60);
    expect(first['tyre-roll'].gain).toBeGreaterThan(0);
    expect(first['tyre-roll'].gain).toBeLessThan(0.3 * wanted['tyre-roll'].gain);
    // A loop that begins has the right speed from its first moment.
    expect(first['tyre-roll'].rate).toBe(wanted['tyre-roll'].rate);
    let mix = first;
    for (let i = 0; i < 60; i++) mix = approachMix(mix, wanted, 1 / 60);
    expect(mix['tyre-roll'].gain).toBeCloseTo(wanted['tyre-roll'].gain, 4);
    for (let i = 0; i < 60; i++) mix = approachMix(mix, SILENT_MIX, 1 / 60);
    expect(LOOP_NAMES.map((name) => mix[name].gain)).toEqual(LOOP_NAMES.map(() => 0));
  });

  it('stays where it is when no time has passed or time went back', () => {
    const wanted = mixOf(frameWith());
    expect(approachMix(SILENT_MIX, wanted, 0)['tyre-roll'].gain).toBe(0);
    expect(approachMix(SILENT_MIX, wanted, -5)['tyre-roll'].gain).toBe(0);
  });

  it('sends a value again only after more than one in a hundred', () => {
    expect(isAudibleChange(0.5, 0.504)).toBe(false);
    expect(isAudibleChange(0.5, 0.506)).toBe(true);
    expect(isAudibleChange(0.5, 0.494)).toBe(true);
    expect(isAudibleChange(0.001, 0)).toBe(true);
    expect(isAudibleChange(0, 0)).toBe(false);
  });
});
