/**
 * Which road a rider gets on a turn, with which help. Pure: the same plan, rider and attempt give the same
 * road on every tablet, so that nothing but the plan has to be carried.
 */
import { checkLevel } from '../level/generate.ts';
import { type Aids, allAids, type Level } from '../level/schema.ts';
import { deriveSeed } from '../math/random.ts';
import type { ClinicPlan, PlanRide } from './plan.ts';

/** One turn of one rider. Attempts count from 1. */
interface Turn {
  readonly rideIndex: number;
  readonly attempt: number;
  readonly nickname: string;
}

/** Finds a level that comes with the game. */
type FindLevel = (levelId: string) => Level | undefined;

/** The level of a turn with seed and aids filled in, or null where the plan names a level that is not here. */
export function levelOfTurn(plan: ClinicPlan, turn: Turn, find: FindLevel): Level | null {
  const ride = plan.rides[turn.rideIndex];
  if (ride === undefined) return null;
  const seed = seedOfTurn(plan, ride, turn);
  const level = levelOfRide(ride, seed ?? plan.seed, find);
  if (level === null) return null;
  return { ...level, seed: seed ?? level.seed, aids: aidsFor(plan.aids, level.aids) };
}

/** A ride's level as it stands, before a turn gives it a seed; null where it is not here. */
export function levelOfRide(ride: PlanRide, seed: number, find: FindLevel): Level | null {
  switch (ride.kind) {
    case 'bundled':
      return find(ride.levelId) ?? null;
    case 'own':
      return ride.level;
    case 'check':
      return checkLevel(seed, ride.audience, 'group', ride.needs);
  }
}

/**
 * The seed of a turn; null for the level's own. Fresh practice roads are shared by all riders of an attempt,
 * so that the group can talk about one road; a fresh check ride is another one for everybody, because those
 * who wait look on.
 */
function seedOfTurn(plan: ClinicPlan, ride: PlanRide, turn: Turn): number | null {
  if (plan.seedRule === 'same') return ride.kind === 'check' ? plan.seed : null;
  const who = ride.kind === 'check' ? turn.nickname : '';
  return deriveSeed(plan.seed, `turn ${turn.rideIndex} ${turn.attempt} ${who}`) >>> 0;
}

function aidsFor(rule: ClinicPlan['aids'], own: Aids): Aids {
  return rule === 'as-level' ? own : allAids(rule === 'all');
}
