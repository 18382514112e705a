/**
 * Makes a planned ride better in the real step: moves, drops, adds and retargets manoeuvres, one at a time, and keeps
 * what costs less. The plan knows the road on a grid; the step knows the truth. The number of tries is counted and
 * the chance has a seed, so the same road gives the same ride on every device, however fast it is.
 *
 * A try is ridden only from shortly before its change until it runs into the ride as it was; most end within 200 m.
 */
import { between, deriveSeed, type Random, seededRandom } from '../math/random.ts';
import {
  easierBehind,
  neighbours,
  placeOf,
  samePlace,
  type Steps,
  stepsBetween,
} from '../model/transmission.ts';
import { copyOfState } from '../ride/draft.ts';
import { LONGEST_RIDE_TICKS } from '../ride/recording.ts';
import { advanceRide, isShifting } from '../ride/step.ts';
import { SAMPLE_TICKS, sampleOf } from '../ride/trace.ts';
import type { RideEvent, RideState, RideWorld } from '../ride/types.ts';
import { startPlace, startState } from '../ride/world.ts';
import { FOOT_DOWN, undoneCost } from './costs.ts';
import { costPerS, manoeuvreCost } from './realised.ts';
import { type Manoeuvre, rearAlone, scriptDriver, type ScriptPlace, scriptStart } from './script.ts';

/** Places at which a ride can be taken up again, and at which two rides are compared (m). */
const MARK_EVERY_M = 12;
/** Two rides are one again when gear and script agree and the speed does within this (m/s). */
const SAME_SPEED_MPS = 0.02;
/** A try that is worse by so much on its way is given up. */
const HOPELESS = 2.5;
/** What must be gained for a change to be kept. */
const WORTH = 0.004;
/** After so many rounds without a gain some manoeuvres are shaken: so many in a row, by up to so much (m). */
const DRY_ROUNDS = 2;
const SHAKES = 3;
const SHAKES_M = 25;

/** How the rear alone was moved last, where that began (m) and when it ended. */
interface Moved {
  readonly steps: number;
  readonly atM: number;
  readonly endTick: number;
}

/** A moment of a ride at which nothing is going on. */
interface Mark {
  readonly state: RideState;
  readonly place: ScriptPlace;
  readonly moved: Moved;
  /** Cost from the start to here. */
  readonly cost: number;
}

interface Ridden {
  readonly marks: readonly (Mark | null)[];
  readonly cost: number;
  /** Index of the mark at which it met the ride it was compared with; null where it went on to the finish. */
  readonly metAt: number | null;
}

/** The ride of a script from a mark on, until the finish or until it meets `known` again; null where hopeless. */
function ride(
  world: RideWorld,
  script: readonly Manoeuvre[],
  from: Mark,
  meet: ((markIndex: number, mark: Mark) => number | null) | null,
): Ridden | null {
  const state = copyOfState(from.state);
  const place = { ...from.place };
  let cost = from.cost;
  const sampleS = SAMPLE_TICKS * world.tickS;
  let { moved } = from;
  let sample = sampleOf(world, state);
  // A manoeuvre is paid for when the chain begins to move: with a motor that is not when one begins to ease.
  let due: Steps | null = null;
  const driver = scriptDriver(world, script, place, (steps) => {
    due = steps;
  });
  const pay = (steps: Steps, atM: number): void => {
    const rear = rearAlone(steps);
    cost +=
      manoeuvreCost(world, sample, steps) +
      undoneCost(world.course, since(world, moved, state.tick), rear, atM);
    moved = { steps: rear, atM, endTick: state.tick };
  };
  const marks: (Mark | null)[] = [];
  const first = Math.floor(state.distanceM / MARK_EVERY_M);
  let nextMarkM = (first + 1) * MARK_EVERY_M;
  let markIndex = first + 1;
  const events: RideEvent[] = [];
  while (state.phase !== 'finished' && state.tick < LONGEST_RIDE_TICKS) {
    advanceRide(world, state, driver(state), events);
    const beganM = due === null ? null : beganAtM(state, events);
    if (due !== null && beganM !== null) {
      pay(due, beganM);
      due = null;
    }
    if (events.length > 0) {
      for (const { kind } of events)
        if (kind === 'foot-down') cost += FOOT_DOWN;
        else if (kind === 'shift-done') moved = { ...moved, endTick: state.tick };
      events.length = 0;
    }
    if (state.tick % SAMPLE_TICKS === 0) {
      sample = sampleOf(world, state);
      cost += costPerS(world, sample) * sampleS;
    }
    if (state.distanceM < nextMarkM) continue;
    if (place.pushTick < 0 && !isShifting(state) && !state.braking && state.phase === 'riding') {
      const mark: Mark = { state: copyOfState(state), place: { ...place }, moved, cost };
      if (meet !== null) {
        const answer = meet(markIndex, mark);
        if (answer !== null)
          return Number.isFinite(answer) ? { marks, cost: answer, metAt: markIndex } : null;
      }
      marks[markIndex] = mark;
    } else marks[markIndex] = null;
    markIndex += 1;
    nextMarkM += MARK_EVERY_M;
  }
  return { marks, cost, metAt: null };
}

/** Where the movement began that is going on or has just ended (m); null where none is. */
function beganAtM({ rear, front }: RideState, events: readonly RideEvent[]): number | null {
  for (const event of events) if (event.kind === 'shift-done') return event.startedAtM;
  for (const one of [rear, front]) if (one !== null && one.movingS > 0) return one.startedAtM;
  return null;
}

interface Effort {
  readonly tries: number;
  readonly seed: number;
}

/**
 * A script that costs no more than the one given. Deterministic; yields the share of the tries done (0 to 1) now and then,
 * so that a worker can answer and be stopped.
 */
export function* improveInSteps(
  world: RideWorld,
  script: readonly Manoeuvre[],
  effort: Effort,
): Generator<number, Manoeuvre[]> {
  const random = seededRandom(deriveSeed(effort.seed, 'improving a ride'));
  const moved: Moved = { steps: 0, atM: 0, endTick: 0 };
  const start: Mark = { state: startState(world), place: scriptStart(), moved, cost: 0 };
  const whole = (manoeuvres: readonly Manoeuvre[]): Ridden => {
    const ridden = ride(world, manoeuvres, start, null);
    if (ridden === null) throw new Error('a ride without comparison cannot be hopeless');
    return ridden;
  };
  let base = whole(script);
  let surest = { script, cost: base.cost };
  let tries = 0;
  let dry = 0;
  const tryOut: Search['tryOut'] = (candidate, changedM, countBefore) => {
    tries += 1;
    const from = lastMarkBefore(base, start, changedM - 4, countBefore);
    const more = candidate.length - search.best.length;
    const ridden = ride(world, candidate, from, (index, mark) => {
      const known = base.marks[index];
      if (known === undefined || known === null) return null;
      if (mark.cost - known.cost > HOPELESS) return Number.POSITIVE_INFINITY;
      if (mark.state.distanceM < changedM + 2 || mark.place.next - known.place.next !== more) return null;
      return isSame(world, mark, known)
        ? base.cost + mark.cost - known.cost + timeBetween(mark.state, known.state)
        : null;
    });
    if (ridden === null || ridden.cost > base.cost - WORTH) return false;
    search.best = candidate;
    base = spliced(base, from, ridden, more);
    return true;
  };
  const search: Search = { world, random, best: script, tryOut };
  const share = (): number => Math.min(1, tries / effort.tries);
  while (tries < effort.tries) {
    if (dry === DRY_ROUNDS) {
      search.best = shaken(world, surest.script, random);
      base = whole(search.best);
      dry = 0;
    }
    const before = surest.cost;
    for (let k = 0; k < search.best.length && tries < effort.tries; k += 1) {
      improveAt(search, k);
      yield share();
    }
    for (let n = 0; n < 3 + search.best.length && tries < effort.tries; n += 1) {
      addOne(search);
      yield share();
    }
    // What was spliced together is ridden once as a whole: only that counts.
    base = whole(search.best);
    if (base.cost < surest.cost) surest = { script: search.best, cost: base.cost };
    dry = before - surest.cost < WORTH * 2 ? dry + 1 : 0;
  }
  return [...surest.script];
}

/** A few manoeuvres in a row, each somewhere near and in a gear near by: from there small changes may lead further down. */
function shaken(world: RideWorld, script: readonly Manoeuvre[], random: Random): Manoeuvre[] {
  const first = Math.floor(random() * script.length);
  const { lengthM } = world.course;
  return script
    .map((one, i): Manoeuvre => {
      if (i < first || i >= first + SHAKES) return one;
      const step = Math.floor(random() * 3) - 1;
      return {
        ...one,
        ...easierBehind(world.machine, one, step),
        atM: Math.min(lengthM, Math.max(0, one.atM + between(random, -SHAKES_M, SHAKES_M))),
      };
    })
    .toSorted((a, b) => a.atM - b.atM);
}

/** The ride as it is after a change: as before up to `from`, then what was ridden, then as before from where they met. */
function spliced(base: Ridden, from: Mark, ridden: Ridden, more: number): Ridden {
  const gained = ridden.cost - base.cost;
  const first = Math.floor(from.state.distanceM / MARK_EVERY_M) + 1;
  const marks: (Mark | null)[] = [];
  const { metAt } = ridden;
  const count = Math.max(base.marks.length, ridden.marks.length);
  for (let i = 0; i < count; i += 1) {
    const before = base.marks[i] ?? null;
    if (i < first) marks[i] = before;
    else if (metAt === null || i < metAt) marks[i] = ridden.marks[i] ?? null;
    else if (before === null) marks[i] = null;
    else {
      const place = { ...before.place, next: before.place.next + more };
      marks[i] = { ...before, place, cost: before.cost + gained };
    }
  }
  return { marks, cost: ridden.cost, metAt: null };
}

/** What every small change needs: the road, chance, and the ride of a changed script, kept where it costs less. */
interface Search {
  readonly world: RideWorld;
  readonly random: Random;
  /** The script as it is now. */
  best: readonly Manoeuvre[];
  readonly tryOut: (candidate: readonly Manoeuvre[], changedM: number, countBefore: number) => boolean;
}

const MOVES_M = [-24, -12, -6, -3, -1.5, 1.5, 3, 6, 12, 24] as const;

/** All small changes of one manoeuvre. */
function improveAt(search: Search, k: number): void {
  const { world, random } = search;
  const replace = (one: Manoeuvre): void => {
    const script = search.best;
    const old = script[k];
    if (old === undefined) return;
    const low = script[k - 1]?.atM ?? 0;
    const high = script[k + 1]?.atM ?? world.course.lengthM;
    if (one.atM < low || one.atM > high) return;
    search.tryOut(script.toSpliced(k, 1, one), Math.min(old.atM, one.atM), k);
  };
  const now = (): Manoeuvre => search.best[k] as Manoeuvre;
  if (search.best[k] === undefined) return;
  // Without it.
  if (search.tryOut(search.best.toSpliced(k, 1), now().atM, k)) return;
  for (const moveM of MOVES_M) replace({ ...now(), atM: now().atM + moveM * (0.7 + 0.6 * random()) });
  for (const target of neighbours(world.machine, now())) replace({ ...now(), ...target });
  const script = search.best;
  const one = now();
  const next = script[k + 1];
  // Neither there nor back.
  const goesBack = next !== undefined && samePlace(next, script[k - 1] ?? startPlace(world));
  if (goesBack && search.tryOut(script.toSpliced(k, 2), one.atM, k)) return;
  // Both together with the next one, at either place.
  if (next !== undefined && next.atM - one.atM < 80) {
    const both = (atM: number): Manoeuvre[] => script.toSpliced(k, 2, { ...next, atM });
    if (!search.tryOut(both(one.atM), one.atM, k)) search.tryOut(both((one.atM + next.atM) / 2), one.atM, k);
  }
  halve(search, k);
}

/** One manoeuvre of several steps becomes two. */
function halve({ world, random, best: script, tryOut }: Search, k: number): void {
  const one = script[k];
  if (one === undefined) return;
  const from = script[k - 1] ?? startPlace(world);
  const { rearSteps, ringSteps } = stepsBetween(from, one);
  if (Math.abs(rearSteps) < 2 || ringSteps !== 0) return;
  const half = easierBehind(world.machine, from, Math.trunc(rearSteps / 2));
  const before = { ...half, atM: Math.max(script[k - 1]?.atM ?? 0, one.atM - 4 - 12 * random()) };
  tryOut(script.toSpliced(k, 0, before), before.atM, k);
  const after = { ...one, atM: one.atM + 4 + 12 * random() };
  if (after.atM < (script[k + 1]?.atM ?? world.course.lengthM))
    tryOut(script.toSpliced(k, 1, { ...half, atM: one.atM }, after), one.atM, k);
}

/** A new manoeuvre somewhere, for good or only up to a second place. */
function addOne({ world, random, best: script, tryOut }: Search): void {
  const atM = between(random, 0, world.course.lengthM);
  const k = script.filter((one) => one.atM <= atM).length;
  const gear = placeOf(script[k - 1] ?? startPlace(world));
  const options = neighbours(world.machine, gear);
  const target = options[Math.floor(random() * options.length)];
  if (target === undefined) return;
  const one: Manoeuvre = { atM, ...target };
  if (tryOut(script.toSpliced(k, 0, one), atM, k)) return;
  const backM = atM + between(random, 10, 80);
  if (backM >= (script[k]?.atM ?? world.course.lengthM)) return;
  const back: Manoeuvre = { atM: backM, ...gear };
  tryOut(script.toSpliced(k, 0, one, back), atM, k);
}

function lastMarkBefore(base: Ridden, start: Mark, beforeM: number, countBefore: number): Mark {
  for (let i = Math.floor(beforeM / MARK_EVERY_M); i > 0; i -= 1) {
    const mark = base.marks[i];
    if (mark === undefined || mark === null) continue;
    if (mark.state.distanceM <= beforeM && mark.place.next <= countBefore) return mark;
  }
  return start;
}

function isSame(world: RideWorld, a: Mark, b: Mark): boolean {
  return (
    samePlace(a.state, b.state) &&
    a.state.nextStopIndex === b.state.nextStopIndex &&
    backCost(world, a) === backCost(world, b) &&
    Math.abs(a.state.speedMps - b.state.speedMps) < SAME_SPEED_MPS &&
    Math.abs(a.state.pressureRatio - b.state.pressureRatio) < 0.01 &&
    Math.abs(a.state.reserveJ - b.state.reserveJ) < 0.05 * world.machine.rider.reserveJ
  );
}

/** What a movement back to where the gear came from would cost on top now, signed by its way. */
function backCost(world: RideWorld, { state, moved }: Mark): number {
  const before = since(world, moved, state.tick);
  return Math.sign(moved.steps) * undoneCost(world.course, before, -moved.steps, state.distanceM);
}

/** A move seen from a later tick. */
function since({ tickS }: RideWorld, moved: Moved, tick: number): Moved & { readonly agoS: number } {
  return { ...moved, agoS: (tick - moved.endTick) * tickS };
}

/** Two rides pass a mark within one tick of each other; what lies between is worth next to nothing. */
function timeBetween(a: RideState, b: RideState): number {
  return ((b.distanceM - a.distanceM) / Math.max(0.5, a.speedMps)) * 0.1;
}
