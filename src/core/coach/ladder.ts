/**
 * In which order levels are learned and which one is sensible next. Knows nothing of how well a ride went
 * beyond whether its level was finished.
 */
import type { KeptResult } from './results.ts';
import { helpsAtAll, loadsChain } from '../model/motor.ts';
import { hasHub } from '../model/shifters.ts';
import type { Bike } from '../model/types.ts';
import { CHECKED_APART, type CheckedApart } from '../level/generate.ts';
import { LESSONS, type Level } from '../level/schema.ts';

/** Levels in learning order: by rung, those without one last, then by what they teach and by name. */
export function inLearningOrder(levels: readonly Level[]): readonly Level[] {
  const rung = (level: Level): number => (level.rung === 0 ? Number.POSITIVE_INFINITY : level.rung);
  const lesson = (level: Level): number => LESSONS.indexOf(level.teaches);
  return levels.toSorted((a, b) => {
    if (rung(a) !== rung(b)) return rung(a) - rung(b);
    return lesson(a) - lesson(b) || (a.id < b.id ? -1 : 1);
  });
}

export function rowsOf(levels: readonly Level[]) {
  const ordered = inLearningOrder(levels);
  return {
    everyone: ordered.filter((level) => level.audience === 'everyone'),
    children: ordered.filter((level) => level.audience === 'children'),
  };
}

/** Roads on which children carry something: play beside the ladder, in learning order. */
export function playRoads(levels: readonly Level[]): readonly Level[] {
  return inLearningOrder(levels.filter(({ carries }) => carries !== undefined));
}

/** Whether a level is about such a bike as this one, or about any. */
export function suitsBike({ needs }: Pick<Level, 'needs'>, bike: Pick<Bike, 'hub' | 'motor'>): boolean {
  switch (needs) {
    case undefined:
      return true;
    case 'motor':
      return helpsAtAll(bike);
    case 'crank-motor':
      return loadsChain(bike);
    case 'wheel-motor':
      return helpsAtAll(bike) && !loadsChain(bike);
    case 'hub':
      // A motor helps one off in any gear, so that the change while one waits teaches nothing.
      return hasHub(bike) && !helpsAtAll(bike);
    case 'derailleur':
      return !hasHub(bike);
  }
}

/** Whose check ride a bike has; undefined for the one of derailleurs. No child of ours rides with a motor. */
export function checkedApart(
  bike: Pick<Bike, 'hub' | 'motor'>,
  audience: Level['audience'],
): CheckedApart | undefined {
  const own = CHECKED_APART.find((needs) => suitsBike({ needs }, bike));
  return audience === 'children' && own !== 'hub' ? undefined : own;
}

/** Lessons that need a front derailleur. */
const NEEDS_RINGS: readonly Level['teaches'][] = ['ring-change', 'chain-line'];

/**
 * The next level of the rider's own row that is not finished; after the last one, the last again. Lessons
 * about chainrings are passed over on a bike with one.
 */
export function nextLevel(
  levels: readonly Level[],
  doneIds: readonly string[],
  child: boolean,
  twoShifters: boolean,
): Level | null {
  const rows = rowsOf(levels);
  const row = child && rows.children.length > 0 ? rows.children : rows.everyone;
  const fitting = row.filter(
    ({ teaches, carries }) => carries === undefined && (twoShifters || !NEEDS_RINGS.includes(teaches)),
  );
  return fitting.find((level) => !doneIds.includes(level.id)) ?? fitting.at(-1) ?? null;
}

/** The best total of a level among kept rides, or null while there is none. */
export function bestTotal(results: readonly KeptResult[], levelId: string): number | null {
  const totals = results
    .filter((one) => one.levelId === levelId && one.kind === 'ride')
    .map(({ total }) => total);
  return totals.length === 0 ? null : Math.max(...totals);
}

/** Whether a ride of a level was ever passed; only then has the level a tick. */
export function everPassed(results: readonly KeptResult[], levelId: string): boolean {
  return results.some((one) => one.levelId === levelId && one.kind === 'ride' && one.passed);
}
