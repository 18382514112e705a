/** A bike that cannot be built or drawn, kept by another program or a broken version, never reaches a ride. */
import { describe, expect, it } from 'vitest';
import { BIKES, earlierBike } from '../../../src/core/model/presets.ts';
import type { Bike } from '../../../src/core/model/types.ts';
import { readBike } from '../../../src/core/ride/recording.ts';
import { readChoices } from '../../../src/core/settings/kept.ts';
import { defaultSettings, KEY_ACTIONS, type Keys } from '../../../src/core/settings/settings.ts';

const keys = Object.fromEntries(KEY_ACTIONS.map((action) => [action, ['KeyA']])) as unknown as Keys;
const usual = defaultSettings(keys);

describe('a kept bike', () => {
  it.each([
    { tyreWidthMm: 50_000 },
    { tyreWidthMm: 0.001 },
    { beadSeatMm: 9 },
    { crankLengthMm: 9_000 },
    { chainstayMm: 90_000 },
    { measuredCircumferenceM: 400 },
  ])('with %j is given up for the usual one, and the other choices stay', (change) => {
    const settings = { ...usual, muted: true, bike: { ...usual.bike, ...change } };
    const read = readChoices({ settings, cautionsSeen: true }, keys);
    expect(read?.settings.bike).toEqual(usual.bike);
    expect([read?.settings.muted, read?.cautionsSeen]).toEqual([true, true]);
  });

  it('of the game itself is today’s, also where it was kept before its motor had a lag; an own one stays', () => {
    for (const bike of BIKES) {
      const earlier = earlierBike(bike) ?? bike;
      const read = (kept: Bike) =>
        readChoices({ settings: { ...usual, bike: kept }, cautionsSeen: true }, keys)?.settings.bike;
      expect(read(earlier)).toEqual(bike);
      expect(read({ ...earlier, id: 'own' })).toEqual({ ...earlier, id: 'own' });
    }
  });

  it('of the game itself is never given up', () => {
    for (const bike of BIKES) expect(readBike(bike)).toEqual(bike);
  });
});
