/**
 * Gears in the hub against textbook and published figures: Willis' equation (defietssite.nl, principle of the hub),
 * exact ratios (john-s-allen.com, hub ratios), ranges of other kinds, and mean efficiencies measured at 200 W
 * (Oehler, second hand; Berto and Kyle, second hand). The efficiencies contradict each other: the bounds are wide.
 */
import { describe, expect, it } from 'vitest';
import { straightEfficiency } from '../../src/core/model/gears.ts';
import { HUBS, planetaryRatio } from '../../src/core/model/hub.ts';
import { HUB_GEARS, HUB_KINDS, type HubKind } from '../../src/core/model/hubKinds.ts';

const range = (kind: HubKind): number => {
  const { ratios } = HUBS[kind];
  return ((ratios.at(-1) as number) / (ratios[0] as number)) * 100;
};
const steps = (kind: HubKind): number[] =>
  HUBS[kind].ratios.slice(1).map((ratio, i) => (ratio / (HUBS[kind].ratios[i] as number) - 1) * 100);
const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

describe('planetary sets', () => {
  it('with sun 20 and annulus 60 give 4/3 and 3/4 (Willis)', () => {
    expect(planetaryRatio(20, 60)).toBeCloseTo(4 / 3, 12);
    expect(HUBS.three.ratios[0]).toBeCloseTo(3 / 4, 12);
    expect(HUBS.three.ratios).toEqual([expect.closeTo(0.75, 12), 1, expect.closeTo(4 / 3, 12)]);
  });

  it.each([
    ['three', 177.8],
    ['three-wide', 185.4],
    ['five', 225.0],
    ['five-wide', 249.3],
    ['seven', 303.5],
    ['eight', 259.7],
    ['fourteen', 526.6],
  ] as const)('%s has the published range of %d %%', (kind, percent) => {
    expect(Math.abs(range(kind) - percent)).toBeLessThan(0.1);
  });

  it('the other eight-speed has 306 to 307 %, in steps of 14 to 22 % (ratios from memory)', () => {
    expect(range('eight-wide')).toBeGreaterThan(305.9);
    expect(range('eight-wide')).toBeLessThan(307);
    for (const step of steps('eight-wide')) expect(Math.round(step)).toBeGreaterThanOrEqual(14);
    for (const step of steps('eight-wide')) expect(Math.round(step)).toBeLessThanOrEqual(22);
  });

  it.each([
    ['three', [33.3, 33.3]],
    ['five', [16.7, 28.6, 28.6, 16.7]],
    ['five-wide', [23.3, 28.1, 28.1, 23.3]],
    ['seven', [18.0, 19.4, 23.6, 23.6, 19.4, 18.0]],
    ['eight', [16.7, 13.1, 12.5, 16.7, 14.3, 12.5, 16.7]],
  ] as const)('%s has the published steps', (kind, published) => {
    steps(kind).forEach((step, i) => expect(Math.abs(step - (published[i] as number))).toBeLessThan(0.15));
  });

  it('fourteen gears lie 13.55 to 13.80 % apart throughout', () => {
    expect(HUBS.fourteen.ratios).toHaveLength(14);
    for (const step of steps('fourteen')) expect(Math.abs(step - 13.675)).toBeLessThan(0.125);
  });
});

describe('what arrives at the wheel', () => {
  const chain = straightEfficiency(38, 19);
  const whole = (kind: HubKind): number => mean(HUBS[kind].efficiencies) * chain * 100;

  it('is 94.5 % in the mean of fourteen gears and 90 % of eight, within a point', () => {
    expect(Math.abs(whole('fourteen') - 94.5)).toBeLessThan(1);
    expect(Math.abs(whole('eight') - 90)).toBeLessThan(1);
  });

  it('is some two points less than a chain’s in a three-speed, least in its highest gear, and as much in the straight one', () => {
    const [low = 0, straight = 0, high = 0] = HUBS.three.efficiencies;
    expect(chain * 100 - whole('three')).toBeGreaterThan(1.2);
    expect(chain * 100 - whole('three')).toBeLessThan(2.8);
    expect(high).toBeLessThan(low);
    expect(straight).toBeGreaterThan(0.99);
  });

  it('lies between 84 and 97 % in every gear of every kind', () => {
    for (const kind of HUB_KINDS) {
      const { ratios, efficiencies } = HUBS[kind];
      expect(ratios).toHaveLength(HUB_GEARS[kind]);
      expect(efficiencies).toHaveLength(ratios.length);
      for (const share of efficiencies) {
        expect(share * chain).toBeGreaterThan(0.84);
        expect(share * chain).toBeLessThan(0.975);
      }
    }
  });
});
