/** Fingerprints: equal for equal values however they are written, different for the smallest difference. */
import { describe, expect, it } from 'vitest';
import { canonicalJson, createHasher, hashJson } from '../../../src/core/math/hash.ts';

const digest = (...values: (number | string)[]): string => {
  const hasher = createHasher();
  for (const value of values) {
    if (typeof value === 'number') hasher.number(value);
    else hasher.text(value);
  }
  return hasher.digest();
};

describe('fingerprints', () => {
  it('are 16 hexadecimal digits', () => {
    for (const value of [0, 1, Number.MAX_VALUE, -1e-300]) expect(digest(value)).toMatch(/^[0-9a-f]{16}$/);
  });

  it('see the last bit of a number, and the order', () => {
    expect(digest(0.1 + 0.2)).not.toBe(digest(0.3));
    expect(digest(1, 2)).not.toBe(digest(2, 1));
    expect(digest('ab', 'c')).not.toBe(digest('a', 'bc'));
  });

  it('take −0 for 0', () => {
    expect(digest(-0)).toBe(digest(0));
  });

  it('do not collide over 20,000 neighbouring numbers', () => {
    const seen = new Set(Array.from({ length: 20_000 }, (_, i) => digest(i / 1024)));
    expect(seen.size).toBe(20_000);
  });

  it('of JSON do not depend on the order of keys or on parts that are undefined', () => {
    expect(hashJson({ a: 1, b: [2, { c: null }] })).toBe(
      hashJson({ b: [2, { c: null }], a: 1, d: undefined }),
    );
    expect(hashJson({ a: 1 })).not.toBe(hashJson({ a: '1' }));
    expect(hashJson([1, 2])).not.toBe(hashJson([2, 1]));
    expect(JSON.parse(canonicalJson({ z: 'é"', a: [true, null, 1.5] }))).toEqual({
      a: [true, null, 1.5],
      z: 'é"',
    });
  });
});
