/**
 * Judges a ride: five marks, their weighted total, the pitches and the verdict. Everything comes from the
 * ride's trace and from the reference ride over the same road on the same bike.
 */
import { clamp } from '../math/numbers.ts';
import type { Lesson, Level, MarkWeights } from '../level/schema.ts';
import { hasHub } from '../model/shifters.ts';
import type { Policy } from '../planner/plan.ts';
import { countEvents, type RideTrace } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { cadenceMark, chainLineMark, legLosses } from './cadence.ts';
import { foresightMark, judgePitches } from './foresight.ts';
import { habitsOf } from './habits.ts';
import { countManoeuvres, easingMark, economyMark, leftAlone, motorToBlame, shiftsOf } from './shifts.ts';
import {
  type Hold,
  MARK_NAMES,
  type MarkName,
  type Marks,
  type PitchReport,
  type RideReport,
} from './types.ts';
import { judgeVerdict } from './verdict.ts';

/** What is judged, and against what. */
interface JudgeInput {
  readonly world: RideWorld;
  readonly trace: RideTrace;
  readonly reference: RideTrace;
  /** The plan, which callers from outside hand in; marks need only the ride that came of it. */
  readonly policy?: Policy;
  readonly weights: MarkWeights;
  readonly passMark: number;
  /** The level; without it no mark is asked for by name. */
  readonly level?: Pick<Level, 'teaches' | 'rung'>;
}

/** The report of a ride. Pure; the same ride gives the same report. */
export function judgeRide(input: JudgeInput): RideReport {
  const { world, trace, reference, weights } = input;
  const pitches = judgePitches(world, trace, reference);
  const marks: Marks = {
    cadence: cadenceMark(world, trace, reference, weights.cadence),
    foresight: foresightMark(pitches, weights.foresight),
    easing: easingMark(trace, reference, weights.easing),
    chainLine: chainLineMark(world, trace, reference, weights.chainLine),
    economy: economyMark(world, trace, reference, weights.economy),
  };
  const pace = paceOf(trace, reference);
  const held = heldBy(marks, leftAlone(trace, reference));
  const total = Math.min(totalOf(marks), held?.most ?? 100) * pace.credit;
  const missing = missingOf(marks, input.level?.teaches);
  const passed = total >= input.passMark && missing.length === 0;
  const shifts = shiftsOf(trace);
  const heldShifts = trace.events.filter((event) => event.kind === 'shift-hung' && event.hub === true).length;
  return {
    marks,
    total,
    passed,
    holds: holdsOf(held, pace, missing),
    pace,
    finishedS: trace.samples.at(-1)?.timeS ?? 0,
    referenceS: reference.samples.at(-1)?.timeS ?? 0,
    pitches,
    shifts,
    manoeuvreCount: countManoeuvres(trace),
    footDowns: countEvents(trace, 'foot-down'),
    chainDrops: countEvents(trace, 'chain-dropped'),
    guessPitch: shifts.length === 0 ? null : costliest(pitches),
    verdict: judgeVerdict({
      marks,
      total,
      passed,
      pace,
      habits: habitsOf(world.course, trace, reference),
      legs: legLosses(world, trace, reference),
      held,
      gentlest: input.level?.rung === 1,
      pitches,
      movementCount: shifts.length,
      heavyShifts: shifts.filter((shift) => shift.kind === 'heavy').length,
      referenceMovementCount: shiftsOf(reference).length,
      hub: hasHub(world.machine.bike),
      heldShifts,
      motor: motorToBlame(world, trace),
      waitedShifts: shifts.filter(({ waited }) => waited === true).length,
    }),
  };
}

/**
 * Nobody is much better than the weakest of these: of what the mean of the marks has beyond so much more than it (points), such
 * a share is taken away. Foresight hangs on a few pitches; all of it would make one shift decide a ride (ours).
 */
const ABOVE_WEAKEST: readonly (readonly [mark: MarkName, above: number, loses: number])[] = [
  ['foresight', 15, 0.45],
  ['easing', 12, 0.9],
  ['cadence', 32, 1],
];

/**
 * The mark that holds the total down most below the mean of the marks, and what that leaves; else null. Who left all
 * levers alone had nothing to ease: the hill that came unready is what there is to speak of.
 */
function heldBy(marks: Marks, isUntouched: boolean): Extract<Hold, { code: 'weakest' }> | null {
  const mean = totalOf(marks);
  let held: Extract<Hold, { code: 'weakest' }> | null = null;
  for (const [mark, above, loses] of ABOVE_WEAKEST) {
    const { value, weight } = marks[mark];
    if (value === null || weight === 0) continue;
    const beyond = mean - value - above;
    const most = mean - loses * beyond;
    if (beyond > 0 && most < (held?.most ?? mean)) held = { code: 'weakest', mark, most };
  }
  const isAboutHills = held?.mark === 'easing' && isUntouched && marks.foresight.value !== null;
  return held !== null && isAboutHills ? { ...held, mark: 'foresight' } : held;
}

function holdsOf(
  held: Hold | null,
  pace: RideReport['pace'],
  missing: readonly Extract<Hold, { code: 'mark-missing' }>[],
): Hold[] {
  const holds: Hold[] = held === null ? [] : [held];
  if (pace.credit < 1) holds.push({ code: 'pace', timesAsLong: pace.ratio, share: pace.credit });
  return [...holds, ...missing.slice(0, 1)];
}

/** Getting along: full up to this share of the best ride's time, nothing from that one on. */
const PACE_FULL = 1.08;
const PACE_NONE = 1.36;

/** How long a ride took over the best one, and what of the total that leaves (0 to 1). */
function paceOf(trace: RideTrace, reference: RideTrace): RideReport['pace'] {
  const ownS = trace.samples.at(-1)?.timeS ?? 0;
  const bestS = reference.samples.at(-1)?.timeS ?? 0;
  const ratio = bestS === 0 ? 1 : ownS / bestS;
  return { ratio, credit: clamp((PACE_NONE - ratio) / (PACE_NONE - PACE_FULL), 0, 1) };
}

/** A level passes only with so much in the mark of its own lesson, and in every other mark it weighs. */
const LESSON_AT_LEAST = 65;
const AT_LEAST: Readonly<Record<MarkName, number>> = {
  cadence: 60,
  foresight: 55,
  easing: 45,
  chainLine: 45,
  economy: 20,
};

/** Marks that were left lying, above all the one the level teaches; a ride with any does not pass. */
function missingOf(marks: Marks, teaches: Lesson | undefined): Extract<Hold, { code: 'mark-missing' }>[] {
  const own = teaches === undefined ? undefined : LESSON_MARKS[teaches];
  return MARK_NAMES.flatMap((mark) => {
    const { value, weight } = marks[mark];
    const lesson = mark === own;
    const atLeast = lesson ? LESSON_AT_LEAST : AT_LEAST[mark];
    if (value === null || (weight === 0 && !lesson) || value >= atLeast) return [];
    return [{ code: 'mark-missing' as const, mark, atLeast, lesson }];
  }).toSorted((a, b) => Number(b.lesson) - Number(a.lesson));
}

/** The mark a lesson is about; none where it is about all of them, or only about what the levers do. */
const LESSON_MARKS: Readonly<Partial<Record<Lesson, MarkName>>> = {
  cadence: 'cadence',
  easing: 'easing',
  'look-ahead': 'foresight',
  rolling: 'foresight',
  hidden: 'foresight',
  'ring-change': 'foresight',
  'stop-gear': 'foresight',
  'wind-and-gravel': 'foresight',
  'chain-line': 'chainLine',
  'ride-over': 'economy',
};

/** Weighted mean of the marks that could be given; 0 without any. */
function totalOf(marks: Marks): number {
  let sum = 0;
  let weights = 0;
  for (const name of MARK_NAMES) {
    const { value, weight } = marks[name];
    if (value === null) continue;
    sum += value * weight;
    weights += weight;
  }
  return weights === 0 ? 0 : sum / weights;
}

/** The pitch that cost the legs most against the reference; the one to guess about. */
function costliest(pitches: readonly PitchReport[]): number | null {
  const asked = pitches.filter((pitch) => pitch.asked || pitch.footDown);
  const sorted = [...asked].sort(
    (a, b) => b.overloadM - b.overloadReferenceM - (a.overloadM - a.overloadReferenceM),
  );
  return sorted[0]?.index ?? null;
}
