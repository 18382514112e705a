/** Links to free rides: written, read back the same, and refused with a reason. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FREE_RIDE_LONGEST_M, FREE_RIDE_SHORTEST_M } from '../../../src/core/level/generate.ts';
import { hashOf, parseAddress } from '../../../src/state/address.ts';
import { decodeFreeRide, encodeFreeRide, isFreeRide, seedOf } from '../../../src/core/level/freeRide.ts';
import { words } from '../../../src/words/words.ts';

describe('a wish in a link', () => {
  it('has a fixed spelling', () => {
    expect(encodeFreeRide({ seed: 42, hilliness: 0.5, lengthM: 2_000 })).toBe('free-42-50-2000');
    expect(decodeFreeRide('free-42-50-2000')).toEqual({
      ok: true,
      wish: { seed: 42, hilliness: 0.5, lengthM: 2_000 },
    });
  });

  it('comes back the same through an address, whatever was wished', () => {
    const wish = fc.record({
      seed: fc.nat(4_294_967_295),
      hilliness: fc.integer({ min: 0, max: 100 }).map((hundredths) => hundredths / 100),
      lengthM: fc.integer({ min: FREE_RIDE_SHORTEST_M, max: FREE_RIDE_LONGEST_M }),
    });
    fc.assert(
      fc.property(wish, (wished) => {
        const { view, rest } = parseAddress(hashOf({ view: 'ride', rest: encodeFreeRide(wished) }));
        expect(view).toBe('ride');
        expect(isFreeRide(rest)).toBe(true);
        expect(decodeFreeRide(rest)).toEqual({ ok: true, wish: wished });
      }),
    );
  });

  it('brings what is out of range into it when written', () => {
    expect(encodeFreeRide({ seed: -1, hilliness: 1.4, lengthM: 99_999.5 })).toBe('free-4294967295-100-10000');
    expect(encodeFreeRide({ seed: 1, hilliness: -2, lengthM: 3 })).toBe('free-1-0-500');
  });

  it.each([
    ['free-', 'unreadable'],
    ['free-42-50', 'unreadable'],
    ['free-42-50-2000-1', 'unreadable'],
    ['free-hill-50-2000', 'unreadable'],
    ['free--1-50-2000', 'unreadable'],
    ['free-42-5.5-2000', 'unreadable'],
    ['Free-42-50-2000', 'unreadable'],
    ['free-4294967296-50-2000', 'seed'],
    ['free-42-101-2000', 'hilliness'],
    ['free-42-50-499', 'length'],
    ['free-42-50-10001', 'length'],
  ] as const)('%s is %s, and that is a sentence with a way on', (rest, code) => {
    expect(decodeFreeRide(rest)).toEqual({ ok: false, code });
    const sentence = words('levels')(`free-bad-${code}`, { shortest: '500 m', longest: '10,000 m' });
    expect(sentence).toMatch(/Choose a road here instead\.$/);
    if (code === 'length') expect(sentence).toContain('500 m to 10,000 m');
  });

  it('any text is answered', () => {
    fc.assert(
      fc.property(fc.string(), (rest) => {
        const reading = decodeFreeRide(rest);
        return reading.ok ? encodeFreeRide(reading.wish).startsWith('free-') : reading.code.length > 0;
      }),
    );
  });

  it('a level or a check ride is no free ride', () => {
    expect(isFreeRide('check-everyone-7')).toBe(false);
    expect(isFreeRide('two-levers')).toBe(false);
  });
});

describe('the name of a road', () => {
  it('a number is its own seed', () => {
    expect([seedOf('42'), seedOf(' 0042 '), seedOf('4294967295')]).toEqual([42, 42, 4_294_967_295]);
  });

  it('a word is always the same seed, whatever its capitals, and another word another one', () => {
    expect(seedOf('Badger')).toBe(seedOf(' badger '));
    expect(seedOf('badger')).not.toBe(seedOf('badgers'));
    // A name that was told to a group must still mean this road in every later version.
    expect(seedOf('badger')).toBe(3_594_572_286);
  });

  it('whatever is written is a seed that fits, and nothing is none', () => {
    expect(seedOf('  ')).toBeNull();
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (name) => {
        const seed = seedOf(name);
        return seed === null
          ? name.trim() === ''
          : Number.isInteger(seed) && seed >= 0 && seed <= 4_294_967_295;
      }),
    );
  });
});
