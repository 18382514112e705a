/**
 * Riders with exactly one fault are told of that fault. A few roads and bikes here; all of them, and the table of what
 * is taken for what, in test/figures/advice.ts.
 */
import { describe, expect, test } from 'vitest';
import { judgeRide } from '../../../src/core/coach/judge.ts';
import type { RideReport } from '../../../src/core/coach/types.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { knownBestRide } from '../../../src/core/planner/known.ts';
import { planRoad } from '../../../src/core/planner/plan.ts';
import { rideScript, scriptOfPolicy } from '../../../src/core/planner/reference.ts';
import { type Manoeuvre, scriptDriver } from '../../../src/core/planner/script.ts';
import { type Controller, rideThrough } from '../../../src/core/ride/run.ts';
import type { RideWorld } from '../../../src/core/ride/types.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { ONE_FAULTS, withTaste } from './oneFault.ts';
import { LEVELS } from './riding.ts';

const CELLS = [
  ['one-pitch-announced', 'road-2x11', 'adult-new'],
  ['three-little-hills', 'trekking-3x8', 'adult-weekly'],
] as const;
const LOST_AT_LEAST = 5;

function groundFor(id: string, world: RideWorld) {
  const level = LEVELS.find((one) => one.id === id)!;
  const script = knownBestRide(world) ?? scriptOfPolicy(world, planRoad(world));
  const reference = rideScript(world, script).trace;
  const { weights, passMark } = level;
  const judge = (rider: Controller): RideReport => {
    const { trace } = rideThrough(world, rider);
    return judgeRide({ world, trace, reference, weights, passMark, level });
  };
  return { world, script, reference, judge };
}

const grounds = CELLS.map(([id, bikeId, riderId]) => {
  const course = courseOfLevel(LEVELS.find((one) => one.id === id)!);
  return groundFor(id, buildRideWorld(course, bikeById(bikeId)!, riderById(riderId)!));
});

const said = ONE_FAULTS.map(({ fault, named, doses, rider }) => {
  const rides = grounds.flatMap(({ world, script, judge }) =>
    doses.flatMap((dose) => {
      const controller = rider(world, script, dose);
      return controller === null ? [] : [judge(controller)];
    }),
  );
  return { fault, named, rides: rides.filter(({ total }) => total <= 100 - LOST_AT_LEAST) };
});

describe('the headline', () => {
  test('names the fault of nine in ten riders with one fault', () => {
    const all = said.flatMap(({ named, rides }) =>
      rides.map(({ verdict }) => named.includes(verdict.change.code)),
    );
    expect(all.length).toBeGreaterThan(40);
    expect(all.filter(Boolean).length / all.length).toBeGreaterThanOrEqual(0.9);
  });

  test.each(said)('names it mostly for $fault', ({ named, rides }) => {
    const right = rides.filter(({ verdict }) => named.includes(verdict.change.code));
    expect(right.length).toBeGreaterThanOrEqual(0.6 * rides.length);
  });

  test('never says of a pitch what its card does not say', () => {
    for (const { pitches, verdict } of said.flatMap(({ rides }) => rides)) {
      const { change } = verdict;
      if (!('pitch' in change) || change.code === 'foot-down') continue;
      const card = pitches.find(({ index }) => index === change.pitch)!;
      expect(card.tendency).toBe(change.code === 'early-pitch' ? 'too-early' : 'too-late');
      if (change.code === 'early-pitch') expect(card.stepsMade).toBeGreaterThan(0);
    }
  });

  test('has nothing to say of legs that turn slower where the band is set so', () => {
    for (const [i, { world }] of grounds.entries()) {
      const slower = withTaste(world, -10);
      const { judge, script } = groundFor(CELLS[i]![0], slower);
      const ridden = judge(withSmallShifts(slower, script));
      expect(ridden.verdict.change.code).toBe('nothing');
    }
  });
});

/** The plan's manoeuvres, each a few metres off: nobody hits the same metre twice. */
function withSmallShifts(world: RideWorld, script: readonly Manoeuvre[]): Controller {
  return scriptDriver(
    world,
    script.map((one, i) => ({ ...one, atM: one.atM + (i % 2 === 0 ? 2 : -2) })),
  );
}
