/** Taps become a cadence: slips are put right, and what is no pedalling is refused with a reason. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TAP_TEST_MS, tapCadence } from '../../../src/core/coach/tapTest.ts';

/** Taps at a steady cadence for the whole test, each up to `jitterMs` early or late by turns. */
function steady(cadenceRpm: number, jitterMs = 0, forMs = TAP_TEST_MS): number[] {
  const turnMs = 60_000 / cadenceRpm;
  return Array.from(
    { length: Math.floor(forMs / turnMs) + 1 },
    (_, i) => 5_000 + i * turnMs + (i % 2 === 0 ? jitterMs : -jitterMs),
  );
}

const without = (taps: number[], index: number): number[] => taps.filter((_, i) => i !== index);

describe('a steady beat', () => {
  test('80 taps a minute are 80 rpm with a band of 70 to 90', () => {
    const result = tapCadence(steady(80));
    expect(result).toMatchObject({ ok: true, lowRpm: 70, highRpm: 90, missed: 0, doubled: 0 });
    expect(result.ok && result.cadenceRpm).toBeCloseTo(80, 9);
  });

  test('a finger that wavers by 40 ms changes less than 1 rpm', () => {
    const result = tapCadence(steady(75, 40));
    expect(result.ok && Math.abs(result.cadenceRpm - 75)).toBeLessThan(1);
  });

  test('neither where the clock began nor the order of the list matters', () => {
    const taps = steady(90);
    expect(tapCadence(taps.map((t) => t - 1e6).toReversed())).toEqual(tapCadence(taps));
  });
});

describe('slips', () => {
  const taps = steady(70);

  test('one tap forgotten anywhere gives the same cadence and is counted', () => {
    for (let i = 1; i < taps.length - 1; i += 1) {
      const result = tapCadence(without(taps, i));
      expect(result).toMatchObject({ ok: true, missed: 1, doubled: 0 });
      expect(result.ok && result.cadenceRpm).toBeCloseTo(70, 6);
    }
  });

  test('a bounce of the finger is no turn', () => {
    expect(tapCadence([...taps, (taps[4] as number) + 90])).toMatchObject({
      ok: true,
      doubled: 0,
      lowRpm: 60,
    });
  });

  test('one tap too many at any place within a turn gives the same cadence', () => {
    for (const share of [0.25, 0.4, 0.5, 0.6, 0.75]) {
      const result = tapCadence([...taps, (taps[6] as number) + (share * 60_000) / 70]);
      expect(result.ok && result.cadenceRpm, String(share)).toBeCloseTo(70, 6);
    }
  });

  test('one forgotten and one too many in the same test', () => {
    const result = tapCadence([...without(taps, 9), (taps[3] as number) + 300]);
    expect(result.ok && result.cadenceRpm).toBeCloseTo(70, 6);
  });

  test('an extra tap at the very end does not shorten the last turn', () => {
    const result = tapCadence([...taps, (taps.at(-1) as number) + 250]);
    expect(result.ok && result.cadenceRpm).toBeCloseTo(70, 6);
  });
});

describe('refused', () => {
  test.each([
    ['nothing', [], 'too-few'],
    ['seven taps', steady(80).slice(0, 7), 'too-few'],
    ['taps for five seconds', steady(120, 0, 5_000), 'too-short'],
    ['every second turn of slow legs', steady(35), 'too-slow'],
    ['a tap for each foot', steady(160), 'too-fast'],
    ['no beat at all', [0, 300, 1700, 2000, 4000, 4300, 4700, 7000, 7400, 9900, 10_200, 12_900], 'unsteady'],
  ] as const)('%s', (_, taps, code) => {
    expect(tapCadence(taps)).toMatchObject({ ok: false, code });
  });

  test('a cadence that is half again as fast in its second half', () => {
    const slow = steady(60, 0, 10_000);
    const fast = steady(95, 0, 10_000).map((t) => t + 10_000);
    expect(tapCadence([...slow, ...fast.slice(1)])).toMatchObject({ ok: false, code: 'unsteady' });
  });
});

test('any list of numbers is answered', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 25_000 }), { maxLength: 60 }), (times) => {
      const result = tapCadence(times);
      return !result.ok || (result.cadenceRpm >= 40 && result.cadenceRpm <= 130);
    }),
  );
});

test('whoever keeps a beat gets a band round it, however the finger wavers', () => {
  const wavering = fc.tuple(
    fc.integer({ min: 42, max: 125 }),
    fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 60, maxLength: 60 }),
  );
  fc.assert(
    fc.property(wavering, ([cadenceRpm, wavers]) => {
      const result = tapCadence(steady(cadenceRpm).map((t, i) => t + (wavers[i] as number)));
      expect(result).toMatchObject({ ok: true, missed: 0, doubled: 0 });
      if (!result.ok) return;
      expect(Math.abs(result.cadenceRpm - cadenceRpm)).toBeLessThan(1);
      expect(result.lowRpm).toBeLessThan(result.cadenceRpm);
      expect(result.highRpm).toBeGreaterThan(Math.min(129, result.cadenceRpm));
    }),
  );
});
