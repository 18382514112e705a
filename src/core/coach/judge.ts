/**
 * Judges a ride: five marks, their weighted total, the pitches and the verdict. Everything comes from the
 * ride's trace and from the reference ride over the same road on the same bike.
 */
import type { MarkWeights } from '../level/schema.ts';
import type { Policy } from '../planner/plan.ts';
import type { RideTrace } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { cadenceMark, chainLineMark } from './cadence.ts';
import { foresightMark, judgePitches } from './foresight.ts';
import { countManoeuvres, easingMark, economyMark, shiftsOf } from './shifts.ts';
import { MARK_NAMES, type Marks, type PitchReport, type RideReport } from './types.ts';
import { judgeVerdict } from './verdict.ts';

/** What is judged, and against what. */
interface JudgeInput {
  readonly world: RideWorld;
  readonly trace: RideTrace;
  readonly reference: RideTrace;
  readonly policy: Policy;
  readonly weights: MarkWeights;
  readonly passMark: number;
}

/** The report of a ride. Pure; the same ride gives the same report. */
export function judgeRide(input: JudgeInput): RideReport {
  const { world, trace, reference, policy, weights } = input;
  const pitches = judgePitches(world, trace, policy);
  const marks: Marks = {
    cadence: cadenceMark(world, trace, reference, weights.cadence),
    foresight: foresightMark(pitches, weights.foresight),
    easing: easingMark(trace, weights.easing),
    chainLine: chainLineMark(world, trace, reference, weights.chainLine),
    economy: economyMark(trace, reference, weights.economy),
  };
  const total = totalOf(marks);
  const passed = total >= input.passMark;
  const shifts = shiftsOf(trace);
  const shiftCount = countManoeuvres(trace);
  const referenceShiftCount = countManoeuvres(reference);
  const count = (kind: string): number => trace.events.filter((event) => event.kind === kind).length;
  return {
    marks,
    total,
    passed,
    finishedS: trace.samples.at(-1)?.timeS ?? 0,
    referenceS: reference.samples.at(-1)?.timeS ?? 0,
    pitches,
    shifts,
    shiftCount,
    referenceShiftCount,
    footDowns: count('foot-down'),
    chainDrops: count('chain-dropped'),
    linesMissed: count('line-missed'),
    guessPitch: costliest(pitches),
    verdict: judgeVerdict({
      marks,
      total,
      passed,
      pitches,
      shiftCount: shifts.length,
      heavyShifts: shifts.filter((shift) => shift.kind === 'heavy').length,
      referenceShiftCount,
    }),
  };
}

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
