/**
 * How far another search beats the best rides that come with the game, and where they begin to shift for a pitch. The
 * search is a plain one on purpose and not the game's own: it moves, drops, adds and retargets manoeuvres by chance and
 * keeps what costs less in the real step. By hand: `npx tsx test/figures/gap.ts [LEVELS] [BIKES] [TRIES] [SEED]`, with parts
 * of names or `all`.
 */
import { seededRandom } from '../../src/core/math/random.ts';
import { realisedCost } from '../../src/core/planner/realised.ts';
import { rideScript } from '../../src/core/planner/reference.ts';
import type { Manoeuvre } from '../../src/core/planner/script.ts';
import type { RideWorld } from '../../src/core/ride/types.ts';
import { cells } from './cells.ts';

const [levels = 'all', bikes = 'all', tries = '2000', seed = '7'] = process.argv.slice(2);

/** Cost of a script; a ride that does not arrive costs everything. */
function costOf(world: RideWorld, script: readonly Manoeuvre[]): number {
  const ride = rideScript(world, script);
  return ride.state().phase === 'finished' ? realisedCost(world, ride.trace) : Number.POSITIVE_INFINITY;
}

function changed(world: RideWorld, script: readonly Manoeuvre[], random: () => number): Manoeuvre[] {
  const { ringCount, sprocketCount } = world.machine;
  const pick = Math.floor(random() * script.length);
  const one = script[pick];
  const kind = random();
  const next = [...script];
  if (one === undefined || kind < 0.15) {
    const atM = random() * world.course.lengthM;
    const ringIndex = Math.floor(random() * ringCount);
    next.push({ atM, ringIndex, sprocketIndex: Math.floor(random() * sprocketCount) });
  } else if (kind < 0.3) next.splice(pick, 1);
  else if (kind < 0.7)
    next[pick] = { ...one, atM: Math.max(0, one.atM + (random() - 0.5) * (random() < 0.5 ? 10 : 60)) };
  else {
    const sprocketIndex = one.sprocketIndex + (random() < 0.5 ? -1 : 1);
    next[pick] = { ...one, sprocketIndex: Math.min(sprocketCount - 1, Math.max(0, sprocketIndex)) };
  }
  return next.toSorted((a, b) => a.atM - b.atM);
}

const sums = new Map<string, { own: number; found: number; worst: number; cells: number }>();
let asking = 0;
let inReach = 0;
let halfDone = 0;
for (const { name, world, script, reference, judge } of cells([levels, bikes])) {
  const random = seededRandom(Number(seed));
  const own = costOf(world, script);
  let best = script;
  let found = own;
  for (let i = 0; i < Number(tries); i += 1) {
    const other = changed(world, best, random);
    const cost = costOf(world, other);
    if (cost < found) [best, found] = [other, cost];
  }
  const gap = (100 * (own - found)) / own;
  const bike = name.split(' ')[1] ?? name;
  const sum = sums.get(bike) ?? { own: 0, found: 0, worst: 0, cells: 0 };
  sums.set(bike, {
    own: sum.own + own,
    found: sum.found + found,
    worst: Math.max(sum.worst, gap),
    cells: sum.cells + 1,
  });
  for (const pitch of judge(reference).pitches.filter((p) => p.asked && p.referenceSteps > 0)) {
    const firstM = pitch.referenceFirstShiftBeforeFootM ?? Number.NEGATIVE_INFINITY;
    asking += 1;
    if (firstM >= 12 && firstM <= 35) inReach += 1;
    if (2 * pitch.referenceStepsBeforeFoot >= pitch.referenceSteps) halfDone += 1;
  }
  console.log(`${name}: ${own.toFixed(1)} beaten by ${gap.toFixed(1)} %`);
}
for (const [bike, { own, found, worst, cells: count }] of sums)
  console.log(
    `${bike}: ${count} cells, pooled ${((100 * (own - found)) / own).toFixed(1)} %, worst ${worst.toFixed(1)} %`,
  );
console.log(
  `Pitches that ask: ${asking}; first easier gear 12 to 35 m before the foot on ${inReach}; half of the steps made by the foot on ${halfDone}.`,
);
