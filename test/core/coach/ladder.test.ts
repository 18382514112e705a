/**
 * Every bundled level on every bundled bike with the rider that goes with it, and on the three pairs of the
 * marks: the marks rank riders as a coach would, the best ride passes, the late one does not.
 */
import { describe, expect, test } from 'vitest';
import { suitsBike } from '../../../src/core/coach/ladder.ts';
import { loadsChain } from '../../../src/core/model/motor.ts';
import { BIKES, bikeById, MATCHING_RIDER } from '../../../src/core/model/presets.ts';
import { countEvents } from '../../../src/core/ride/trace.ts';
import { groundOf, LEVELS, NAMES, PAIRS } from './riding.ts';

const matching = BIKES.map((bike) => ({ bikeId: bike.id, riderId: MATCHING_RIDER[bike.id]! }));
const pairs = [
  ...matching,
  ...PAIRS.filter((pair) => !matching.some((m) => m.bikeId === pair.bikeId && m.riderId === pair.riderId)),
];
/** A lesson that is false on a kind of bike ranks nobody there. */
const cases = LEVELS.flatMap((level) =>
  pairs
    .filter(({ bikeId }) => suitsBike(level, bikeById(bikeId)!))
    .map(({ bikeId, riderId }) => [level.id, bikeId, riderId, level] as const),
);
/** Totals nearer than this are as good as equal. */
const SLACK_POINTS = 0.5;

describe.each(cases)('%s on %s with %s', (_, bikeId, riderId, level) => {
  const ground = groundOf(level, bikeId, riderId);
  const reports = NAMES.map((name) => ground.named(name));
  const totals = reports.map((report) => report.total);

  test('ranks never, late, late with easing, early and reference in this order', () => {
    for (let i = 1; i < totals.length; i += 1)
      expect(
        totals[i]!,
        `${NAMES[i]} after ${NAMES[i - 1]}: ${totals.map(Math.round).join(' ')}`,
      ).toBeGreaterThan(totals[i - 1]! - SLACK_POINTS);
    expect(totals.at(-1)! - totals[0]!).toBeGreaterThan(40);
  });

  // A motor at the crank carries a late rider up, so that being late costs less there.
  test('the reference finishes without a foot down and passes, the late rider does not, or has a motor and is far behind', () => {
    const reference = reports.at(-1)!;
    expect(ground.reference.events.at(-1)?.kind).toBe('finished');
    expect(reference.footDowns + reference.chainDrops + countEvents(ground.reference, 'line-missed')).toBe(0);
    expect(reference.total).toBeGreaterThanOrEqual(level.passMark);
    const late = reports[NAMES.indexOf('late')]!;
    if (loadsChain(ground.world.machine.bike)) expect(late.total).toBeLessThan(reference.total - 10);
    else expect(late.passed).toBe(false);
  });

  test('no named rider beats the reference by more than 2 points', () => {
    expect(Math.max(...totals)).toBeLessThanOrEqual(totals.at(-1)! + 2);
  });
});
