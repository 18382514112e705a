/**
 * The plan of a group session: what is ridden, on what, how often, with which help, and what the group is
 * shown. This file is its shape and its door; which road a turn gets is decided in `turn.ts`.
 */
import * as z from 'zod/mini';
import { CHECKED_APART, type CheckedApart } from '../level/generate.ts';
import { parseLevel } from '../level/parse.ts';
import { envelopeProblem, findingsIn, handful, type Problem, type EnvelopeCode } from '../level/problems.ts';
import { idShape, type Level, seedShape } from '../level/schema.ts';
import { LIMITS } from '../math/limits.ts';
import { jsonOf } from '../math/measure.ts';
import { BIKES, bikeById, RIDERS, riderById } from '../model/presets.ts';
import { isCleanText } from './texts.ts';

/** Version of the plan format this build reads and writes. */
export const PLAN_SCHEMA = 1;
export const MOST_RIDES = LIMITS.plan.rides.most;
export const MOST_ATTEMPTS = LIMITS.plan.attempts.most;
const TITLE_CHARACTERS = 80;
/** A plan without the levels in it has some sixty. */
const MOST = { deep: LIMITS.plan.deep.most, entries: LIMITS.plan.entries.most };

/** Riders that are found when the bike is, or by everybody for themselves. */
const BY_CHOICE = ['by-bike', 'by-feel'];
const AUDIENCES = ['everyone', 'children'] as const;

const planRide = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('bundled'), levelId: idShape }),
  // The level inside has a door of its own.
  z.strictObject({ kind: z.literal('own'), level: z.unknown() }),
  z.strictObject({
    kind: z.literal('check'),
    audience: z.enum(AUDIENCES),
    needs: z.optional(z.enum(CHECKED_APART)),
  }),
]);

const planSchema = z.strictObject({
  schema: z.literal(PLAN_SCHEMA),
  id: idShape,
  title: z.string().check(z.minLength(1), z.maxLength(TITLE_CHARACTERS)),
  rides: z.array(planRide).check(z.minLength(1), z.maxLength(MOST_RIDES)),
  /** `same`: every attempt on one road. `fresh`: another road of the same kind each attempt. */
  seedRule: z.enum(['same', 'fresh']),
  seed: seedShape,
  /** `own`: each rider on the bike set on the device; else a bundled bike for all. */
  bike: z.string().check(z.maxLength(60)),
  /** `by-bike`: the rider that suits the bike; `by-feel`: each chooses; else a bundled rider for all. */
  riderId: z.string().check(z.maxLength(60)),
  /** How often everybody rides each of the rides. */
  attempts: z.int().check(z.gte(1), z.lte(MOST_ATTEMPTS)),
  aids: z.enum(['as-level', 'none', 'all']),
  shows: z.enum(['own-marks', 'group-picture', 'table']),
  order: z.enum(['rotate', 'free']),
  audience: z.enum(AUDIENCES),
});

export type PlanRide =
  | { readonly kind: 'bundled'; readonly levelId: string }
  | { readonly kind: 'own'; readonly level: Level }
  | { readonly kind: 'check'; readonly audience: Level['audience']; readonly needs?: CheckedApart };

export interface ClinicPlan extends Readonly<Omit<z.infer<typeof planSchema>, 'rides'>> {
  readonly rides: readonly PlanRide[];
}

export type PlanCode =
  | EnvelopeCode
  | 'not-a-plan'
  | 'dirty-text'
  | 'unknown-bike'
  | 'unknown-rider'
  | 'unknown-level';

/** A plan, or why not. A level in it has problems of its own, with `rides[0].level` before their paths. */
export type ParsePlanResult =
  | { readonly ok: true; readonly plan: ClinicPlan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export function parsePlanText(text: string, knownLevelIds?: ReadonlySet<string>): ParsePlanResult {
  if (text.length > LIMITS.plan.characters.most) return failed([problem('', 'too-big')]);
  const value = jsonOf(text);
  if (value === undefined) return failed([problem('', 'not-json')]);
  return parsePlan(value, knownLevelIds);
}

/** Parses a value that should be a plan; bundled levels are looked up only where their ids are handed in. */
export function parsePlan(value: unknown, knownLevelIds?: ReadonlySet<string>): ParsePlanResult {
  const early = envelopeProblem('plan', value, PLAN_SCHEMA, MOST, withoutLevels);
  if (early !== null) return failed([early]);
  if (Object.hasOwn(value as object, '__proto__'))
    return failed([problem('__proto__', 'unknown-key', { key: '__proto__' })]);
  const parsed = planSchema.safeParse(value);
  if (!parsed.success) return failed(findingsIn(parsed.error, value, 'plan'));
  const problems = checkWho(parsed.data);
  if (!isCleanText(parsed.data.title, TITLE_CHARACTERS)) problems.unshift(problem('title', 'dirty-text'));
  const rides = parsed.data.rides.flatMap((ride, i) => readRide(ride, i, knownLevelIds, problems));
  if (problems.length > 0) return failed(problems);
  return { ok: true, plan: { ...parsed.data, rides } };
}

/** Levels in a plan are measured by their own door. */
function withoutLevels(plan: object): unknown {
  const { rides } = plan as { rides?: unknown };
  if (!Array.isArray(rides)) return plan;
  const bare = (ride: unknown): unknown =>
    ride !== null && typeof ride === 'object' && 'level' in ride ? { ...ride, level: null } : ride;
  return { ...plan, rides: rides.map(bare) };
}

function checkWho(plan: { bike: string; riderId: string }): Problem[] {
  const problems: Problem[] = [];
  if (plan.bike !== 'own' && bikeById(plan.bike) === undefined)
    problems.push(problem('bike', 'unknown-bike', { allowed: ['own', ...BIKES.map(({ id }) => id)] }));
  if (!BY_CHOICE.includes(plan.riderId) && riderById(plan.riderId) === undefined)
    problems.push(
      problem('riderId', 'unknown-rider', { allowed: [...BY_CHOICE, ...RIDERS.map(({ id }) => id)] }),
    );
  return problems;
}

function readRide(
  ride: z.infer<typeof planRide>,
  index: number,
  knownLevelIds: ReadonlySet<string> | undefined,
  problems: Problem[],
): PlanRide[] {
  const path = `rides[${index}]`;
  if (ride.kind === 'check') return [ride as PlanRide];
  if (ride.kind === 'bundled') {
    if (knownLevelIds === undefined || knownLevelIds.has(ride.levelId)) return [ride];
    problems.push(problem(`${path}.levelId`, 'unknown-level', { levelId: ride.levelId }));
    return [];
  }
  const parsed = parseLevel(ride.level);
  if (parsed.ok) return [{ kind: 'own', level: parsed.level }];
  for (const inner of parsed.problems) {
    const at = inner.path === '' ? `${path}.level` : `${path}.level.${inner.path}`;
    problems.push({ ...inner, path: at });
  }
  return [];
}

function problem(path: string, code: PlanCode, values: Problem['values'] = {}): Problem {
  return { about: 'plan', path, code, values };
}

function failed(problems: readonly Problem[]): ParsePlanResult {
  return { ok: false, problems: handful(problems, LIMITS.plan.problems.most) };
}
