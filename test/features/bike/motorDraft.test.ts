/** A motor in the form for an own bike: what was typed is what is ridden, and a bike with one opens as it was. */
import { describe, expect, it } from 'vitest';
import { BIKES } from '../../../src/core/model/presets.ts';
import { readBike } from '../../../src/core/ride/recording.ts';
import { draftOf, readDraft } from '../../../src/features/bike/draft.ts';
import { words } from '../../../src/words/words.ts';

describe('a motor in the form', () => {
  it.each(BIKES.map((bike) => [bike.id, bike] as const))(
    'is taken over from %s and read back the same',
    (_, bike) => {
      const { bike: read } = readDraft(draftOf(bike), bike);
      expect(read?.motor).toEqual(bike.motor);
      expect(readBike(read)).toEqual(read);
    },
  );

  it('is gone when it is taken off, and a battery that is no number gets a sentence', () => {
    const bike = BIKES.find(({ motor }) => motor !== undefined)!;
    expect(readDraft({ ...draftOf(bike), motor: 'none' }, bike).bike).not.toHaveProperty('motor');
    const wrong = readDraft({ ...draftOf(bike), battery: 'full' }, bike);
    expect([wrong.bike, wrong.problems.battery]).toEqual([null, words('bike')('battery-wrong')]);
  });
});
