/**
 * Gears in the hub: the best ride passes, named riders keep their order, who pedals on through shifts fails and is told
 * of it; and who rests for the shift of a chain is told of that. Every level is looked at with one of the hubs.
 */
import { describe, expect, it } from 'vitest';
import { suitsBike } from '../../../src/core/coach/ladder.ts';
import type { RideReport } from '../../../src/core/coach/types.ts';
import { bikeById } from '../../../src/core/model/presets.ts';
import { pedalsOn, restsForShifts } from './hubHabits.ts';
import { PASS_NOWHERE } from './motorHabits.ts';
import { ALL_LEVELS, type Ground, groundOf, HUB_PAIRS, LEVELS, NAMES } from './riding.ts';

const hubLevels = ALL_LEVELS.filter(
  (level) => (level.rung > 0 || level.needs === 'hub') && suitsBike(level, bikeById('town-hub-3')!),
);
const cells = hubLevels.flatMap((level, i) =>
  HUB_PAIRS.filter((_, k) => level.needs === 'hub' || k === i % HUB_PAIRS.length).map((pair) => ({
    name: `${level.id} ${pair.bikeId}`,
    ground: (): Ground => groundOf(level, pair.bikeId, pair.riderId),
  })),
);
const SKILLS = [0.5, 0.75, 1] as const;
const share = (list: readonly boolean[]): number => list.filter(Boolean).length / list.length;

describe.each(cells.map(({ name, ground }) => [name, ground] as const))('%s', (_, ground) => {
  it('is passed by its best ride, and named riders keep their order', () => {
    const totals = NAMES.map((name) => ground().named(name).total);
    expect(ground().named('reference').passed).toBe(true);
    totals.forEach((total, i) => {
      // The riders who wait are alike where the first gear of three is hardly ever needed.
      if (i > 0) expect(total, NAMES[i]).toBeGreaterThan((totals[i - 1] ?? 0) - 1);
    });
    expect(totals[3]).toBeGreaterThan((totals[2] ?? 0) + 1);
  });

  it('is passed by nobody who pedals on through shifts, stays in the lowest gear or touches no lever', () => {
    const g = ground();
    const reports: readonly RideReport[] = [
      ...SKILLS.slice(0, -1).map((skill) => g.follow(pedalsOn(g.world, skill, 3))),
      ...Object.values(PASS_NOWHERE).map((rider) => g.follow(rider(g.world))),
    ];
    expect(reports.map(({ passed }) => passed)).toEqual(reports.map(() => false));
  });
});

describe('the habits of the other kind of bike', () => {
  it('pedalling on through the shifts of a hub is named in at least nine of ten rides', () => {
    const named = cells.flatMap(({ ground }) =>
      SKILLS.map((skill) => {
        const { verdict } = ground().follow(pedalsOn(ground().world, skill, 5));
        return verdict.change.code === 'ease' && verdict.change.hub === true;
      }),
    );
    expect(share(named)).toBeGreaterThanOrEqual(0.9);
  });

  it('resting for the shifts of a chain costs marks and is named in at least nine of ten rides', () => {
    const levels = LEVELS.filter((_, i) => i % 2 === 0);
    const told = levels.flatMap((level) => {
      const g = groundOf(level, 'town-1x9', 'adult-new');
      const early = g.named('early').total;
      return [1, 2].map((seed) => {
        const { total, verdict } = g.follow(restsForShifts(g.world, seed));
        return { cheaper: total < early, named: verdict.change.code === 'stood-still' };
      });
    });
    expect(share(told.map(({ cheaper }) => cheaper))).toBeGreaterThanOrEqual(0.9);
    expect(share(told.map(({ named }) => named))).toBeGreaterThanOrEqual(0.9);
  });
});
