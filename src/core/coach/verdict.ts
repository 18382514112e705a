/**
 * Three things to say after a ride, and only three: what went well, the one thing to change, what to ride next.
 * Every point lost is put down to a cause first; the cause that cost most is named. Codes and numbers; the words are
 * the pages' business.
 */
import type { LegLoss } from './cadence.ts';
import {
  type Hold,
  MARK_NAMES,
  type Marks,
  type PitchReport,
  type Reason,
  type RideReport,
  type RidingHabits,
  type Verdict,
} from './types.ts';

/** A cause that cost less of the total than this is not worth a sentence (points). */
const WORTH_SAYING = 2.5;
/** From this total on there is nothing to improve. */
const PERFECT_TOTAL = 99.5;
/** Below this total a gentler road helps more than another try. */
const TOO_HARD_TOTAL = 35;
/** Harder or easier by so much than the best ride, away from hills, is a habit (ratio of gears). */
const HARD_HABIT = 1.05;
const EASY_HABIT = 0.94;
/** At the end of a pitch the gear is still too hard by so much where steps were missing. */
const STILL_HARD = 1.04;
/** Half of the steps made so much before the best ride is early (m). */
const EARLY_M = 5;
/** Softness of the legs from here on shows in the cadence (s). */
const SOFT_S = 6;
/** Less than this share of the best ride's easing is too few steps. */
const ENOUGH_EASING = 0.72;
/** From this share of the shifts on, waiting for legs that rest is a habit. */
const WAITING_HABIT = 0.4;
/** From this share of a pitch on it was pressed through. */
const PRESSED_SHARE = 0.3;
/** Legs outside the band near a pitch belong to the pitch (m before the foot, m behind its end). */
const NEAR_BEFORE_M = 90;
const NEAR_BEHIND_M = 15;

/** Why points were lost. */
type Cause = Exclude<Verdict['change']['code'], 'nothing'>;

/** What `judgeVerdict` looks at. */
interface VerdictInput {
  readonly marks: Marks;
  readonly total: number;
  readonly passed: boolean;
  readonly pace: RideReport['pace'];
  readonly habits: RidingHabits;
  /** What the cadence mark lost, metre by metre. */
  readonly legs: readonly LegLoss[];
  /** The mark that holds the total below the mean of the marks, or null. */
  readonly held: Extract<Hold, { code: 'weakest' }> | null;
  /** There is no gentler road than this one. */
  readonly gentlest: boolean;
  readonly pitches: readonly PitchReport[];
  /** Single movements of the chain; several can be one manoeuvre. */
  readonly movementCount: number;
  readonly heavyShifts: number;
  readonly referenceMovementCount: number;
  /** The gears are in the hub. */
  readonly hub: boolean;
  /** Gears that were asked of a hub and held back, because somebody pushed on. */
  readonly heldShifts: number;
  /** Heavy shifts in which a crank motor had not let go yet, where most were such; else null. */
  readonly motor: { readonly heavy: number } | null;
  /** Shifts of a chain that had to wait because the legs rested. */
  readonly waitedShifts: number;
}

/** The three things. */
export function judgeVerdict(input: VerdictInput): Verdict {
  const { passed, total, marks, gentlest } = input;
  const tooHard = total < TOO_HARD_TOTAL && !gentlest;
  return {
    well: bestOf(marks),
    change: toChange(input),
    next: { code: passed ? 'onwards' : tooHard ? 'easier-level' : 'again', total },
  };
}

function bestOf(marks: Marks): Verdict['well'] {
  let best: Verdict['well'] = { code: 'finished', value: 0 };
  for (const name of MARK_NAMES) {
    const { value, weight } = marks[name];
    // A mark that costs nothing to earn is praised only if no other is as good.
    const shy = name === 'economy' || name === 'chainLine' ? 10 : 0;
    if (value !== null && weight > 0 && value >= PRAISED_FROM && value - shy > best.value)
      best = { code: name, value: value - shy };
  }
  return best.code === 'finished' ? best : { code: best.code, value: marks[best.code].value ?? 0 };
}

function toChange(input: VerdictInput): Verdict['change'] {
  const fallen = input.pitches.find((pitch) => pitch.footDown);
  if (fallen !== undefined) return pitchChange(fallen.wentHarder ? 'wrong-way' : 'foot-down', fallen);
  if (input.total >= PERFECT_TOTAL) return { code: 'nothing' };
  const lost = [...lossesOf(input)].toSorted((a, b) => b[1] - a[1]);
  for (const [cause, points] of lost) {
    if (points < WORTH_SAYING) break;
    const change = changeOf(cause, input);
    if (change !== null) return change;
  }
  return { code: 'nothing' };
}

/** A mark is praised from here on; below it the sentence would not be true. */
const PRAISED_FROM = 75;

/** Points of the total by cause. */
function lossesOf(input: VerdictInput): ReadonlyMap<Cause, number> {
  const { marks, pitches, pace, held, habits } = input;
  const lost = new Map<Cause, number>();
  const add = (cause: Cause, points: number): void => {
    if (points > 0) lost.set(cause, (lost.get(cause) ?? 0) + points);
  };
  const missing = missingPoints(marks, held);
  const asked = pitches.filter((pitch) => pitch.asked || pitch.footDown);
  // Who never touched a lever has no hasty hands and no heavy shifts.
  const untouched = input.movementCount === 0 ? untouchedCause(input, asked.length > 0) : null;
  add(untouched ?? easingCause(input), missing.easing);
  add(untouched ?? 'crossed', missing.chainLine);
  add(untouched ?? 'fidget', missing.economy);
  add(slownessCause(habits), 100 * (1 - pace.credit));
  const lostCredit = asked.reduce((sum, pitch) => sum + 1 - pitch.credit, 0) || 1;
  for (const pitch of asked)
    add(untouched ?? causeOf(pitch, habits), (missing.foresight * (1 - pitch.credit)) / lostCredit);
  const outside = input.legs.reduce((sum, one) => sum + one.lost, 0) || 1;
  for (const one of input.legs)
    add(untouched ?? legsCause(one, asked, habits), (missing.cadence * one.lost) / outside);
  return lost;
}

/** Why no gear ever came in: a hub was pushed on through every shift, or no lever was pushed. */
function untouchedCause({ heldShifts }: VerdictInput, hills: boolean): Cause {
  if (heldShifts > 0) return 'ease';
  return hills ? 'late-pitch' : 'slow-legs';
}

/** Why the load was on in a shift: because of the push, or because a chain was treated like a hub. */
function easingCause({ hub, waitedShifts, movementCount }: VerdictInput): Cause {
  return !hub && waitedShifts >= WAITING_HABIT * movementCount ? 'stood-still' : 'ease';
}

/** Points of the total that each mark lacks; what holds the total below their mean is put down to the mark that does. */
function missingPoints(marks: Marks, held: VerdictInput['held']): Record<keyof Marks, number> {
  const weights =
    MARK_NAMES.reduce((sum, n) => sum + (marks[n].value === null ? 0 : marks[n].weight), 0) || 1;
  const missing = { cadence: 0, foresight: 0, easing: 0, chainLine: 0, economy: 0 };
  let mean = 100;
  for (const name of MARK_NAMES) {
    const { value, weight } = marks[name];
    missing[name] = value === null ? 0 : ((100 - value) * weight) / weights;
    mean -= missing[name];
  }
  if (held !== null) missing[held.mark] += Math.max(0, mean - held.most);
  return missing;
}

/** Why somebody took long: the legs rested, the hands were always busy, the legs spun in too easy a gear, or it was just ridden softly. */
function slownessCause({ restedS, softS, shiftingS, easierBy }: RidingHabits): Cause {
  if (easierBy < EASY_HABIT && restedS + softS + shiftingS < SOFT_S) return 'fast-legs';
  if (restedS > softS && restedS > shiftingS) return 'coasted';
  return shiftingS > softS ? 'fidget' : 'dawdle';
}

/** Why a pitch lost its credit. */
function causeOf(pitch: PitchReport, habits: RidingHabits): Cause {
  if (pitch.footDown) return pitch.wentHarder ? 'wrong-way' : 'foot-down';
  if (pitch.early > pitch.late) {
    if (pitch.earlyBy === 'coasted') return 'coasted';
    if (habits.easierBy < EASY_HABIT) return 'fast-legs';
    if (pitch.stepsMade > 0 && pitch.earlyM > EARLY_M) return 'early-pitch';
    return pitch.earlyBy === 'slow' ? slownessCause(habits) : 'fast-legs';
  }
  if (pitch.wentHarder) return 'wrong-way';
  if (pitch.pressed >= PRESSED_SHARE) return 'pushed';
  // Too hard on the hill as everywhere is no matter of the hill.
  if (habits.harderBy > HARD_HABIT) return 'slow-legs';
  if (pitch.easedShare < ENOUGH_EASING && pitch.stepsMade > 0 && pitch.gearRatio > STILL_HARD)
    return 'few-steps';
  return 'late-pitch';
}

/** Why the legs left the band: because of the pitch they are near, of softness, or because somebody likes it so. */
function legsCause(loss: LegLoss, pitches: readonly PitchReport[], habits: RidingHabits): Cause {
  if (loss.why === 'coasted') return 'coasted';
  const below = loss.why === 'below-band';
  const near = pitches.find(
    ({ footM, endM, credit }) =>
      loss.atM > footM - NEAR_BEFORE_M && loss.atM < endM + NEAR_BEHIND_M && credit < 0.9,
  );
  if (near !== undefined && (below ? near.late > 0.15 : near.early > 0.1)) return causeOf(near, habits);
  // Slow legs in a gear no harder than the best ride's had too little push, and no other gear would have helped.
  const soft = habits.restedS + habits.softS + habits.shiftingS > SOFT_S;
  if (below && soft && loss.gearRatio < HARD_HABIT) return slownessCause(habits);
  return below ? 'slow-legs' : 'fast-legs';
}

/** The cause with its numbers; null where a card would say otherwise. */
function changeOf(cause: Cause, input: VerdictInput): Verdict['change'] | null {
  const { marks, pitches, habits } = input;
  const inHub = input.hub ? { hub: true as const } : {};
  switch (cause) {
    case 'late-pitch':
    case 'early-pitch':
    case 'few-steps':
    case 'wrong-way':
    case 'pushed':
    case 'foot-down': {
      const mine = pitches.filter(
        (pitch) =>
          (pitch.asked || pitch.footDown) &&
          pitch.tendency !== 'about-right' &&
          (input.movementCount === 0 || causeOf(pitch, habits) === cause),
      );
      const worst = mine.toSorted((a, b) => a.credit - b.credit)[0];
      return worst === undefined ? null : pitchChange(cause, worst);
    }
    case 'ease':
      return {
        code: 'ease',
        heavy: input.motor?.heavy ?? input.heavyShifts,
        shifts: input.movementCount,
        ...inHub,
        ...(input.motor === null ? {} : { motor: true as const }),
      };
    case 'stood-still':
      return { code: 'stood-still', waited: input.waitedShifts, shifts: input.movementCount };
    case 'fidget':
      return { code: 'fidget', shifts: input.movementCount, needed: input.referenceMovementCount };
    case 'crossed': {
      const reason = marks.chainLine.reasons[0];
      return { code: 'crossed', seconds: reason?.amount ?? 0, atM: placeOf(reason) };
    }
    case 'slow-legs':
    case 'fast-legs':
    case 'coasted': {
      const wanted = cause === 'slow-legs' ? 'below-band' : cause === 'fast-legs' ? 'above-band' : 'coasted';
      const reason = marks.cadence.reasons.find(({ code }) => code === wanted);
      if (reason === undefined && cause === 'coasted') return null;
      const told = { seconds: reason?.amount ?? 0, atM: placeOf(reason) };
      return { code: cause, ...told, ...(cause === 'coasted' ? inHub : {}) };
    }
    case 'dawdle':
      return { code: 'dawdle', timesAsLong: input.pace.ratio };
  }
}

function pitchChange(
  code: Extract<Verdict['change'], { readonly pitch: number }>['code'],
  pitch: PitchReport,
): Verdict['change'] {
  return {
    code,
    pitch: pitch.index,
    slightly: pitch.timing === 'about-right',
    steps: pitch.referenceSteps,
    made: pitch.stepsMade,
    stepsBeforeFoot: pitch.referenceStepsBeforeFoot,
    beforeFootM: pitch.referenceFirstShiftBeforeFootM ?? 10,
  };
}

function placeOf(reason: Reason | undefined): number {
  return reason !== undefined && 'fromM' in reason ? reason.fromM : 0;
}
