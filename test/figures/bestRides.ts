/**
 * Searches the best rides that come with the game, of every bundled level on every bundled bike with its usual rider,
 * and writes them to src/core/planner/bestRides.ts. What is there already and still fits its world is improved
 * further, so a run can be broken off and gone on with: `npx tsx test/figures/bestRides.ts 2000 2` spends 2,000
 * tries more on each ride, beginning with the seed 2; `… 2000 1 missing` leaves alone what is there, and
 * `… 2000 1 missing road` all bikes but those with `road` in their name; the last word may name a level as well. Bikes
 * that were otherwise before keep the best rides their rides were marked against, as they are.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { suitsBike } from '../../src/core/coach/ladder.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { bikeById, earlierBike, MATCHING_RIDER, riderById } from '../../src/core/model/presets.ts';
import { numbersOfPlace } from '../../src/core/model/transmission.ts';
import { BEST_RIDES, GEAR_LETTERS } from '../../src/core/planner/bestRides.ts';
import { improveInSteps } from '../../src/core/planner/improve.ts';
import { knownBestRide, worldFingerprint } from '../../src/core/planner/known.ts';
import { atOnce, planRoad } from '../../src/core/planner/plan.ts';
import { realisedCost } from '../../src/core/planner/realised.ts';
import { rideScript, scriptOfPolicy } from '../../src/core/planner/reference.ts';
import type { Manoeuvre } from '../../src/core/planner/script.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import { isChild } from '../../src/core/settings/settings.ts';
import { ALL_LEVELS } from '../core/coach/riding.ts';

/** A script as text: how far behind the manoeuvre before (cm), the letter of the gear, and so on. */
function packed(script: readonly Manoeuvre[]): string {
  let beforeCm = 0;
  const parts = script.map((one) => {
    const atCm = Math.round(one.atM * 100);
    const [ring, sprocket] = numbersOfPlace(one);
    const part = `${atCm - beforeCm}${GEAR_LETTERS[ring]?.charAt(sprocket)}`;
    beforeCm = atCm;
    return part;
  });
  return parts.join('');
}

/** The usual rider of each bike, and the new rider whom many put on the road bike. */
const PAIRS: readonly (readonly [string, string])[] = [
  ...Object.entries(MATCHING_RIDER),
  ['road-2x11', 'adult-new'],
];
const FILE = fileURLToPath(new URL('../../src/core/planner/bestRides.ts', import.meta.url));

const [, , tries = '2000', seed = '1', which = 'all', bikes = '', levels = ''] = process.argv;
const rides: Record<string, string> = {};
for (const [bikeId, riderId] of PAIRS)
  for (const level of ALL_LEVELS) {
    const bike = bikeById(bikeId);
    const rider = riderById(riderId);
    if (bike === undefined || rider === undefined) throw new Error(`no ${bikeId} or ${riderId}`);
    if (!suitsBike(level, bike)) continue;
    // Roads for play come with children's bikes only; whoever else plays waits for the search, so that the file stays small.
    if (level.carries !== undefined && !isChild(rider)) continue;
    const world = buildRideWorld(courseOfLevel(level), bike, rider);
    const cost = (script: readonly Manoeuvre[]): number =>
      realisedCost(world, rideScript(world, script).trace);
    const earlier = earlierBike(bike);
    const then = earlier === null ? null : buildRideWorld(world.course, earlier, rider);
    const knownThen = then === null ? null : knownBestRide(then);
    if (then !== null && knownThen !== null) rides[worldFingerprint(then)] = packed(knownThen);
    const known = knownBestRide(world);
    const wanted = bikeId.includes(bikes) && level.id.includes(levels);
    if (known !== null && (which === 'missing' || !wanted)) {
      rides[worldFingerprint(world)] = packed(known);
      continue;
    }
    if (!wanted) continue;
    const before = known ?? knownThen ?? scriptOfPolicy(world, planRoad(world));
    const found = rounded(
      atOnce(improveInSteps(world, before, { tries: Number(tries), seed: Number(seed) })),
    );
    // A centimetre can decide between two shifts; what is written down is what counts.
    const best = cost(found) < cost(before) ? found : before;
    rides[worldFingerprint(world)] = packed(best);
    console.log(`${level.id} ${bikeId}: ${cost(before).toFixed(2)} → ${cost(best).toFixed(2)}`);
    write({ ...BEST_RIDES, ...rides });
  }
write(rides);

function rounded(script: readonly Manoeuvre[]): Manoeuvre[] {
  return script.map((one) => ({ ...one, atM: Math.round(one.atM * 100) / 100 }));
}

function write(all: Readonly<Record<string, string>>): void {
  const lines = Object.entries(all).map(([key, script]) => `  '${key}': '${script}',`);
  writeFileSync(
    FILE,
    [
      '/** Written by `npx tsx test/figures/bestRides.ts`; nothing in here is changed by hand. How to read it: known.ts. */',
      '/** Gears as letters, a text for each ring in front: its first letter is the first sprocket. */',
      `export const GEAR_LETTERS: readonly string[] = ['${GEAR_LETTERS.join("', '")}'];`,
      '',
      '// biome-ignore format: one ride a line',
      'export const BEST_RIDES: Readonly<Record<string, string>> = {',
      ...lines,
      '};',
      '',
    ].join('\n'),
  );
}
