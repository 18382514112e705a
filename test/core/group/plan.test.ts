/** What a plan may be, what is said of one that is not, and which road a turn gets. */
import { describe, expect, it } from 'vitest';
import { type ClinicPlan, parsePlan, parsePlanText } from '../../../src/core/group/plan.ts';
import { READY_PLANS } from '../../../src/core/group/readyPlans.ts';
import { levelOfTurn } from '../../../src/core/group/turn.ts';
import { courseOfLevel, levelHash } from '../../../src/core/level/build.ts';
import { BUNDLED, levelById } from '../ride/worlds.ts';
import { planWith } from './rides.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const known = new Set(BUNDLED.map(({ level }) => level.id));
const find = (id: string) => BUNDLED.find(({ level }) => level.id === id)?.level;
const turn = (rideIndex: number, attempt: number, nickname = 'red-fox') => ({ rideIndex, attempt, nickname });

/** Codes and places of what is wrong. */
function problemsOf(value: unknown): (string | undefined)[][] {
  const parsed = parsePlan(value, known);
  if (parsed.ok) return [];
  for (const problem of parsed.problems) expect(sentenceOf(problem)).toMatch(/^[A-Z"\d].*[.!]$/);
  return parsed.problems.map(({ path, code }) => [path, code]);
}

describe('plans', () => {
  it.each(READY_PLANS.map((plan) => [plan.id, plan] as const))('the ready plan %s is sound', (_id, plan) => {
    expect(parsePlan(JSON.parse(JSON.stringify(plan)), known)).toEqual({ ok: true, plan });
  });

  it('there is a ready plan for children and one for adults', () => {
    expect(new Set(READY_PLANS.map((plan) => plan.audience))).toEqual(new Set(['children', 'everyone']));
    expect(new Set(READY_PLANS.map((plan) => plan.id)).size).toBe(READY_PLANS.length);
  });

  it('an own level inside a plan goes through the door for levels', () => {
    const level = levelById('rolling-road');
    const plan = planWith({ rides: [{ kind: 'own', level }] });
    expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual({ ok: true, plan });
    const broken = { ...plan, rides: [{ kind: 'own', level: { ...level, passMark: 900 } }] };
    expect(problemsOf(broken)).toEqual([['rides[0].level.passMark', 'too-big']]);
  });

  const BROKEN: readonly (readonly [string, object, string, string])[] = [
    ['no attempts', { attempts: 0 }, 'attempts', 'too-small'],
    ['eleven attempts', { attempts: 11 }, 'attempts', 'too-big'],
    ['no rides', { rides: [] }, 'rides', 'too-small'],
    [
      'an unknown level',
      { rides: [{ kind: 'bundled', levelId: 'nowhere' }] },
      'rides[0].levelId',
      'unknown-level',
    ],
    ['an unknown kind of ride', { rides: [{ kind: 'race' }] }, 'rides[0].kind', 'unknown-kind'],
    ['an unknown bike', { bike: 'tandem' }, 'bike', 'unknown-bike'],
    ['an unknown rider', { riderId: 'giant' }, 'riderId', 'unknown-rider'],
    ['a rule that is none', { seedRule: 'any' }, 'seedRule', 'not-allowed'],
    ['a huge number', { seed: 1e300 }, 'seed', 'too-big'],
    ['a part too many', { script: 'x' }, 'script', 'unknown-key'],
    ['an empty title', { title: '' }, 'title', 'too-small'],
    ['a title of 10,000 characters', { title: 'x'.repeat(10_000) }, 'title', 'too-big'],
    ['a title that turns reading round', { title: 'a\u202Eb' }, 'title', 'dirty-text'],
    ['a newer format', { schema: 2 }, 'schema', 'newer-schema'],
  ];

  it.each(BROKEN)('%s is named', (_what, change, path, code) => {
    expect(problemsOf({ ...planWith(), ...change })).toContainEqual([path, code]);
  });

  it.each(['', '{', 'null', '[]', '"x"', '{"__proto__": {"schema": 1}}', '['.repeat(100_000)])(
    'text that is no plan is a problem, never a fault (%#)',
    (text) => {
      expect(parsePlanText(text).ok).toBe(false);
    },
  );

  it('a prototype key beside sound parts is refused', () => {
    const text = JSON.stringify(planWith()).replace('{', '{"__proto__":{"attempts":9},');
    expect(parsePlanText(text)).toMatchObject({ ok: false, problems: [{ code: 'unknown-key' }] });
  });

  it('markup in a title is text like any other', () => {
    const title = '<b onclick="x()">Monday</b>';
    expect(parsePlan(planWith({ title }))).toMatchObject({ ok: true, plan: { title } });
  });
});

describe('the road of a turn', () => {
  const levelOf = (plan: ClinicPlan, ...where: Parameters<typeof turn>) => {
    const level = levelOfTurn(plan, turn(...where), find);
    if (level === null) throw new Error('no level');
    return level;
  };
  const check = planWith({ rides: [{ kind: 'check', audience: 'everyone' }] });
  const practice = planWith({ rides: [{ kind: 'bundled', levelId: 'rolling-road' }] });

  it('under the rule "same" everybody gets one road at every attempt', () => {
    for (const plan of [check, practice]) {
      const seeds = [levelOf(plan, 0, 1), levelOf(plan, 0, 2), levelOf(plan, 0, 1, 'blue-owl')].map(
        (l) => l.seed,
      );
      expect(new Set(seeds).size).toBe(1);
    }
    expect(levelOf(practice, 0, 1).seed).toBe(levelById('rolling-road').seed);
  });

  it('fresh practice roads change with the attempt and are shared by the riders', () => {
    const plan = { ...practice, seedRule: 'fresh' } as const;
    expect(levelOf(plan, 0, 1).seed).not.toBe(levelOf(plan, 0, 2).seed);
    expect(levelOf(plan, 0, 2).seed).toBe(levelOf(plan, 0, 2, 'blue-owl').seed);
  });

  it('fresh check rides are another road for everybody, with the same set of pitches', () => {
    const plan = { ...check, seedRule: 'fresh' } as const;
    const roads = ['red-fox', 'blue-owl', 'grey-hare'].map((name) => levelOf(plan, 0, 1, name));
    expect(new Set(roads.map((road) => road.seed)).size).toBe(3);
    expect(new Set(roads.map(levelHash)).size).toBe(1);
    expect(new Set(roads.map((road) => courseOfLevel(road).pitches.length)).size).toBe(1);
  });

  it('aids are the level’s own, none, or all', () => {
    const aids = (rule: ClinicPlan['aids']) => Object.values(levelOf({ ...practice, aids: rule }, 0, 1).aids);
    expect(aids('as-level')).toEqual(Object.values(levelById('rolling-road').aids));
    expect(new Set(aids('none'))).toEqual(new Set([false]));
    expect(new Set(aids('all'))).toEqual(new Set([true]));
  });

  it('a ride that is not in the plan, or a level that is not here, has no road', () => {
    expect(levelOfTurn(practice, turn(5, 1), find)).toBeNull();
    expect(levelOfTurn(practice, turn(0, 1), () => undefined)).toBeNull();
  });
});
