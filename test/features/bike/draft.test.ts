/** What is typed about a bike and a rider: read, refused with a sentence, and never lost. */
import { describe, expect, it } from 'vitest';
import { BIKES, bikeById, riderById, RIDERS } from '../../../src/core/model/presets.ts';
import type { Bike, Rider } from '../../../src/core/model/types.ts';
import { readBike, readRider } from '../../../src/core/ride/recording.ts';
import { type BikeDraft, draftOf, readDraft, readNumber, withWay } from '../../../src/features/bike/draft.ts';
import { readRiderDraft, riderDraftOf } from '../../../src/features/bike/riderDraft.ts';
import { words } from '../../../src/words/words.ts';

const say = words('bike');

const trekking = bikeById('trekking-3x8') as Bike;
const road = bikeById('road-2x11') as Bike;
const read = (draft: BikeDraft, base = trekking) => readDraft(draft, base);

describe('a bike as it was', () => {
  it.each(BIKES.map((bike) => [bike.id, bike] as const))(
    '%s goes into the form and comes out the same',
    (_, bike) => {
      const { bike: out, problems } = read(draftOf(bike), bike);
      expect(problems).toEqual({});
      expect(out).toEqual({ ...bike, id: 'own' });
    },
  );

  it('keeps a measured circumference only with its own tyre', () => {
    const measured = { ...trekking, measuredCircumferenceM: 2.2 };
    expect(read(draftOf(measured), measured).bike?.measuredCircumferenceM).toBe(2.2);
    const other = read({ ...draftOf(measured), tyre: '28-622' }, measured).bike;
    expect(other).not.toBeNull();
    expect(other).not.toHaveProperty('measuredCircumferenceM');
  });
});

describe('typing', () => {
  it('reads 50/34 with 11-32 in 11 steps, and moves rings and sprockets to their places', () => {
    const { bike } = read({ ...draftOf(trekking), rings: '50/34', range: '11-32', count: '11' });
    expect(bike?.chainringsTeeth).toEqual([34, 50]);
    expect(bike?.sprocketsTeeth).toEqual([11, 12, 13, 14, 16, 18, 20, 22, 25, 28, 32]);
    expect([bike?.frontChainLineMm, bike?.sprocketPitchMm]).toEqual([43.5, 3.74]);
    expect(readBike(bike)).toEqual(bike);
  });

  it.each([
    ['rings', { rings: '50/x' }],
    ['rings', { rings: '12' }],
    ['sprockets', { range: '11-32', count: '' }],
    ['sprockets', { range: '11-14', count: '8' }],
    ['sprockets', { way: 'each', each: ['11', '', '15'] }],
    ['sprockets', { way: 'each', each: ['11', '15', '13'] }],
    ['tyre', { tyre: '28' }],
    ['crank', { crank: '17' }],
    ['crank', { crank: '' }],
    ['mass', { mass: '120' }],
  ] as const)('tells what is wrong with %s and gives no bike', (field, change) => {
    const { bike, problems } = read({ ...draftOf(trekking), ...change });
    expect(bike).toBeNull();
    expect(Object.keys(problems)).toEqual([field]);
    expect(problems[field]).toMatch(/\.$/);
  });

  it('tells everything that is wrong at once', () => {
    const { problems } = read({ ...draftOf(trekking), rings: '', range: '', tyre: '', crank: '', mass: '' });
    expect(Object.keys(problems)).toEqual(['rings', 'sprockets', 'tyre', 'crank', 'mass']);
  });

  it('a bike with a cable refuses nothing', () => {
    const draft = { ...draftOf(trekking), refusesCrossed: true };
    expect(read(draft).bike?.refusesCrossed).toBe(false);
    expect(read({ ...draft, shifter: 'electronic' }).bike?.refusesCrossed).toBe(true);
  });

  it('a small wheel turns more easily, as that of a bundled small bike does', () => {
    const { bike } = read({ ...draftOf(trekking), tyre: '47-406' });
    const kids = bikeById('kids-20-1x7') as Bike;
    expect(Math.abs((bike?.wheelInertiaKgM2 ?? 1) - kids.wheelInertiaKgM2)).toBeLessThan(0.02);
  });

  it('numbers have a point or a comma and a limit', () => {
    expect(readNumber(' 9,5 ', [5, 40])).toBe(9.5);
    expect(readNumber('9.5', [5, 40])).toBe(9.5);
    for (const wrong of ['', 'x', '-9', '4.9', '40.1', '1e1', '9.5.1'])
      expect(readNumber(wrong, [5, 40])).toBeNull();
  });
});

describe('the two ways to tell sprockets', () => {
  it('the list follows the range until somebody edits it', () => {
    const ranged = withWay({ ...draftOf(trekking), range: '11-34', count: '8' }, 'each');
    expect(ranged.each).toEqual(['11', '13', '15', '18', '21', '24', '28', '34']);
    const edited = { ...ranged, each: ranged.each.map((teeth) => (teeth === '18' ? '17' : teeth)) };
    const there = withWay(edited, 'range');
    expect(there.range).toBe('11-34');
    expect(withWay(there, 'each').each).toEqual(edited.each);
  });

  it('a range that cannot be read leaves the list as it is', () => {
    const draft = { ...draftOf(trekking), range: 'eleven' };
    const listed = withWay(draft, 'each');
    expect(listed.each).toEqual(draft.each);
    expect(withWay(listed, 'range').range).toBe('eleven');
  });

  it('an uncommon cassette begins as a list', () => {
    const each = ['11', '12', '13', '14', '15', '16', '17', '19', '21', '24', '28'];
    const odd = read({ ...draftOf(road), way: 'each', each }, road).bike as Bike;
    expect(draftOf(odd).way).toBe('each');
    expect(draftOf(road).way).toBe('range');
    expect(read(draftOf(odd), odd).bike).toEqual(odd);
  });
});

describe('a rider by numbers', () => {
  const weekly = riderById('adult-weekly') as Rider;

  it.each(RIDERS.map((rider) => [rider.id, rider] as const))('%s stays nearly as strong', (_, rider) => {
    const { rider: out } = readRiderDraft(riderDraftOf(rider));
    expect(out).toMatchObject({ massKg: rider.massKg, cadenceLowRpm: rider.cadenceLowRpm });
    expect(Math.abs((out?.criticalPowerW ?? 0) / rider.criticalPowerW - 1)).toBeLessThan(0.05);
    expect(Math.abs((out?.reserveJ ?? 0) / rider.reserveJ - 1)).toBeLessThan(0.3);
    expect(readRider(out)).toEqual(out);
  });

  it.each([
    ['mass', { mass: '5' }, say('rider-mass-wrong')],
    ['power', { power: '900' }, say('rider-power-wrong')],
    ['low', { low: '' }, say('rider-low-wrong')],
    ['high', { high: '200' }, say('rider-high-wrong')],
    ['high', { low: '90', high: '80' }, say('rider-narrow')],
  ] as const)('tells what is wrong with %s', (field, change, sentence) => {
    const { rider, problems } = readRiderDraft({ ...riderDraftOf(weekly), ...change });
    expect(rider).toBeNull();
    expect(problems).toEqual({ [field]: sentence });
  });
});
