/**
 * Old versions climb step by step, newer ones are left alone, and every version there has ever been has a real
 * sample that can still be read.
 */
import { describe, expect, it } from 'vitest';
import { climbFields, readShaped, type Shape, type Step } from '../../src/storage/ladder.ts';
import { keyOf, LADDERS, READERS } from '../../src/storage/shapes.ts';
import { PROGRESS } from '../../src/storage/shared/index.ts';
import type { StoreName } from '../../src/storage/types.ts';
import { sample, sampleNames, without } from './given.ts';

const steps: readonly Step[] = [
  ({ feet, ...rest }) => ({ ...rest, lengthM: Number(feet) * 0.3048 }),
  ({ title, ...rest }) => {
    if (typeof title !== 'string') throw new Error('no title');
    return { ...rest, words: title.split(' ') };
  },
];

describe('a ladder', () => {
  it.each([
    [{ schema: 1, title: 'one hill', feet: 1000 }],
    [{ schema: 2, title: 'one hill', lengthM: 304.8 }],
    [{ schema: 3, words: ['one', 'hill'], lengthM: 304.8 }],
  ])('brings every version to the present one: %j', (old) => {
    const climbed = climbFields(steps, old);
    expect(climbed).toEqual({ ok: true, value: { schema: 3, words: ['one', 'hill'], lengthM: 304.8 } });
  });

  it('changes nothing of what it was given', () => {
    const old = Object.freeze({ schema: 1, title: 'one hill', feet: 1000 });
    climbFields(steps, old);
    expect(old).toEqual({ schema: 1, title: 'one hill', feet: 1000 });
  });

  it('leaves a newer version alone', () => {
    expect(climbFields(steps, { schema: 4 })).toEqual({ ok: false, code: 'newer-version' });
  });

  it.each([[{}], [{ schema: 0 }], [{ schema: 1.5 }], [{ schema: '1' }], [null], [[]], ['text'], [undefined]])(
    'knows that %j is nothing it kept',
    (value) => {
      expect(climbFields(steps, value)).toEqual({ ok: false, code: 'corrupt' });
    },
  );

  it('calls a value broken on which a step fails', () => {
    expect(climbFields(steps, { schema: 2, title: 7 })).toEqual({ ok: false, code: 'corrupt' });
  });

  it('reads data of another room, whose version stands beside them', () => {
    const shape: Shape<readonly string[]> = {
      schema: 3,
      steps,
      read: (value) => (value as { words?: readonly string[] }).words ?? null,
    };
    expect(readShaped(shape, 1, { title: 'a b', feet: 3 })).toEqual({ ok: true, value: ['a', 'b'] });
    expect(readShaped(shape, 3, { other: 1 })).toEqual({ ok: false, code: 'corrupt' });
    expect(readShaped(shape, 3, null)).toEqual({ ok: false, code: 'corrupt' });
    expect(readShaped(shape, 4, {})).toEqual({ ok: false, code: 'newer-version' });
  });
});

describe('the samples', () => {
  it('are complete: one of every version of every ladder', () => {
    const wanted = Object.entries(LADDERS).flatMap(([name, { length }]) =>
      Array.from({ length: length + 1 }, (_, i) => `${name}.${i + 1}`),
    );
    expect([...sampleNames].sort()).toEqual(
      [...wanted, 'records.1', 'storeProgress.1', 'storeProgress.2', 'storeProgress.3'].sort(),
    );
    expect(PROGRESS.schema).toBe(3);
  });

  const kept = sampleNames
    .map((name) => name.split('.') as [StoreName, string])
    .filter(([name]) => name in READERS);

  it.each(kept)('%s of version %s can be read', (store, version) => {
    const value = sample(store, Number(version));
    const reading = READERS[store](value);
    expect(reading).toMatchObject({ ok: true });
    expect(keyOf(store, value)).not.toBe('');
  });

  it.each(kept)(
    '%s of version %s is refused once a part is missing, added or of another kind',
    (store, version) => {
      const value = sample(store, Number(version)) as Record<string, unknown>;
      for (const name of Object.keys(value)) {
        // Opaque parts may be anything, and only own levels bring theirs.
        if (['value', 'data', 'level'].includes(name) && store !== 'levels') continue;
        expect(READERS[store](without(value, name)), `without ${name}`).toMatchObject({ ok: false });
        expect(READERS[store]({ ...value, [name]: [] }), `with a list as ${name}`).toEqual({
          ok: false,
          code: 'corrupt',
        });
      }
      expect(READERS[store]({ ...value, extra: 1 })).toEqual({ ok: false, code: 'corrupt' });
    },
  );

  it.each([1, 2, 3])('progress with a club’s own store of version %i can be read', (version) => {
    const old = sample('storeProgress', version);
    const progress = {
      schema: 3,
      store: 'https://club.example/rides',
      there: ['k3f9 1a2b', 'k3f9 3c4d'],
      // Before it was noted what had come from there, everything has to be read once more.
      met: version < 3 ? [] : ['k3f9 7a8b'],
      refused: ['k3f9 5e6f'],
      since: version < 3 ? {} : { tuesday: '12-abc' },
      sentAtMs: version === 1 ? null : 1_790_000_000_000,
    };
    expect(readShaped(PROGRESS, version, old)).toEqual({ ok: true, value: progress });
  });

  it.each(['rides', 'results', 'levels', 'settings'] as const)(
    '%s of a newer version are left alone',
    (store) => {
      const value = { ...(sample(store) as object), schema: LADDERS[store].length + 2, extra: 1 };
      expect(READERS[store](value)).toEqual({ ok: false, code: 'newer-version' });
    },
  );

  it('a ride with a newer recording or level inside is newer, not broken', () => {
    const ride = sample('rides') as { recording: object; level: object };
    const newer = { ok: false, code: 'newer-version' };
    expect(READERS.rides({ ...ride, recording: { ...ride.recording, schema: 2 } })).toEqual(newer);
    expect(READERS.rides({ ...ride, level: { ...ride.level, schema: 2 } })).toEqual(newer);
  });
});
