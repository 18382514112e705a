/** What a person may type about a bike, and the sentence that answers an impossible one. */
import { describe, expect, test } from 'vitest';
import { bikeWarnings, readChainrings, readSprockets, readTyre } from '../../../src/core/model/bikeInput.ts';
import { COMMON_CASSETTES, COMMON_RINGS, cassetteFor } from '../../../src/core/model/parts.ts';
import { bikeSentence } from '../../../src/features/bike/draft.ts';

function refused(
  reading: ReturnType<typeof readChainrings | typeof readSprockets | typeof readTyre>,
  code: string,
): void {
  if (reading.ok) throw new Error(`${JSON.stringify(reading.value)} was read`);
  expect(reading.code).toBe(code);
  // A sentence: begins with a capital or a number, ends with a full stop, and is no code.
  expect(bikeSentence(reading)).toMatch(/^[A-Z0-9].{15,}\.$/);
  expect(bikeSentence(reading)).not.toMatch(/undefined|NaN/);
}

describe('chainrings', () => {
  test.each([
    ['34', [34]],
    ['50/34', [34, 50]],
    [' 34 / 50 ', [34, 50]],
    ['48-36-26', [26, 36, 48]],
    ['26, 36, 48', [26, 36, 48]],
  ])('%j reads as %j', (text, teeth) => {
    expect(readChainrings(text)).toEqual({ ok: true, value: teeth });
  });

  test.each([
    ['', 'rings-unreadable'],
    ['fifty', 'rings-unreadable'],
    ['-', 'rings-unreadable'],
    ['50/3', 'ring-size'],
    ['500', 'ring-size'],
    ['50/34/42', 'rings-order'],
    ['34/34', 'rings-order'],
    ['50/42/34/24', 'too-many-rings'],
  ])('%j is answered with a sentence (%s)', (text, code) => {
    refused(readChainrings(text), code);
  });
});

describe('sprockets', () => {
  test('a known range is completed with the common cassette', () => {
    expect(readSprockets('11-32', 8)).toEqual({ ok: true, value: [11, 13, 15, 18, 21, 24, 28, 32] });
  });

  test('a known range may be written from big to small', () => {
    expect(readSprockets('34-11', 9)).toEqual({ ok: true, value: [11, 13, 15, 17, 20, 23, 26, 30, 34] });
  });

  test('sprocket by sprocket is taken as it stands', () => {
    expect(readSprockets('13 15 17 20 23 26', 0)).toEqual({ ok: true, value: [13, 15, 17, 20, 23, 26] });
  });

  test.each([
    ['3-32', 8, 'sprocket-size'],
    ['11-99', 8, 'sprocket-size'],
    ['11-13', 8, 'too-narrow'],
    ['11-32', 0, 'sprocket-count'],
    ['11-32', 14, 'sprocket-count'],
    ['11 12 13 14 15 16 17 18 19 20 21 22 23 24', 14, 'too-many-sprockets'],
    ['11 11 13', 3, 'sprocket-twice'],
    ['11 15 13', 3, 'sprockets-order'],
    ['eleven', 8, 'sprockets-unreadable'],
  ])('%j with %i sprockets is answered with a sentence (%s)', (text, count, code) => {
    refused(readSprockets(text, count), code);
  });

  test('an unknown range is stepped evenly, every sprocket bigger than the last', () => {
    for (let count = 2; count <= 13; count += 1) {
      const teeth = cassetteFor(10, 47, count);
      expect(teeth).toHaveLength(count);
      expect([teeth[0], teeth.at(-1)]).toEqual([10, 47]);
      for (let i = 1; i < count; i += 1) expect(teeth[i]).toBeGreaterThan(teeth[i - 1]!);
    }
  });

  test('every listed part is one the readers accept', () => {
    for (const rings of COMMON_RINGS) expect(readChainrings(rings.join('/')).ok).toBe(true);
    for (const teeth of COMMON_CASSETTES)
      expect(readSprockets(teeth.join(' '), teeth.length)).toEqual({ ok: true, value: teeth });
  });
});

describe('tyres (ISO 5775 marks)', () => {
  test('28-622 is 28 mm wide on a 622 mm rim', () => {
    expect(readTyre(' 28-622 ')).toEqual({ ok: true, value: { tyreWidthMm: 28, beadSeatMm: 622 } });
  });

  // From memory: the bead seats of ISO 5775 that belong to the older names printed on tyres.
  test.each([
    ['700x28c', 28, 622],
    ['700 X 25', 25, 622],
    ['650x47B', 47, 584],
    ['26x2.1', 53, 559],
    ['20 × 1.75', 44, 406],
    ['27.5x2.25', 57, 584],
  ])('%j is the older name of %i-%i', (text, tyreWidthMm, beadSeatMm) => {
    expect(readTyre(text)).toEqual({ ok: true, value: { tyreWidthMm, beadSeatMm } });
  });

  test.each([
    // Another rim than 26 × 1.75, and one nobody can know.
    ['26x1 3/8', 'tyre-unreadable'],
    ['26x2', 'tyre-unreadable'],
    ['650x28', 'tyre-unreadable'],
    ['33x28', 'tyre-unreadable'],
    ['700x10', 'tyre-size'],
    ['', 'tyre-unreadable'],
    ['28-999', 'tyre-size'],
    ['10-622', 'tyre-size'],
  ])('%j is answered with a sentence (%s)', (text, code) => {
    refused(readTyre(text), code);
  });
});

describe('warnings', () => {
  test('50/34 with 11-42 needs 47 teeth of capacity and is not yet warned about; 52/34 is', () => {
    expect(bikeWarnings({ chainringsTeeth: [34, 50], sprocketsTeeth: [11, 42] })).toEqual([]);
    expect(bikeWarnings({ chainringsTeeth: [34, 52], sprocketsTeeth: [11, 42] })).toEqual([
      { code: 'capacity', capacityTeeth: 49, usualTeeth: 47 },
    ]);
  });

  test('rings more than 18 teeth apart are a big step', () => {
    expect(bikeWarnings({ chainringsTeeth: [30, 50], sprocketsTeeth: [11, 25] })).toEqual([
      { code: 'big-step', fromTeeth: 30, toTeeth: 50 },
    ]);
  });
});
