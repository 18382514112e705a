/**
 * Three things to say after a ride, and only three: what went well, the one thing to change, what to ride
 * next. Codes and numbers; the words are the pages' business.
 */
import type { Mark, MarkName, Marks, PitchReport, Reason, Verdict } from './types.ts';
import { MARK_NAMES } from './types.ts';

/** A mark at or above this leaves nothing to change. */
const GOOD_ENOUGH = 85;
/** Below this total a gentler road helps more than another try. */
const TOO_HARD_TOTAL = 35;

/** What `judgeVerdict` looks at. */
interface VerdictInput {
  readonly marks: Marks;
  readonly total: number;
  readonly passed: boolean;
  readonly pitches: readonly PitchReport[];
  readonly shiftCount: number;
  readonly heavyShifts: number;
  readonly referenceShiftCount: number;
}

/** The three things. */
export function judgeVerdict(input: VerdictInput): Verdict {
  return {
    well: bestOf(input.marks),
    change: toChange(input),
    next: {
      code: input.passed ? 'onwards' : input.total < TOO_HARD_TOTAL ? 'easier-level' : 'again',
      total: input.total,
    },
  };
}

function bestOf(marks: Marks): Verdict['well'] {
  let best: Verdict['well'] = { code: 'finished', value: 0 };
  for (const name of MARK_NAMES) {
    const { value, weight } = marks[name];
    // A mark that costs nothing to earn is praised only if no other is as good.
    const shy = name === 'economy' || name === 'chainLine' ? 10 : 0;
    if (value !== null && weight > 0 && value >= 60 && value - shy > best.value)
      best = { code: name, value: value - shy };
  }
  return best.code === 'finished' ? best : { code: best.code, value: marks[best.code].value ?? 0 };
}

function toChange(input: VerdictInput): Verdict['change'] {
  const fallen = input.pitches.find((pitch) => pitch.footDown);
  if (fallen !== undefined) return pitchChange('foot-down', fallen);
  const worst = dearest(input.marks);
  if (worst === null) return { code: 'nothing' };
  const reason = input.marks[worst].reasons[0];
  switch (worst) {
    case 'foresight':
      return foresightChange(input.pitches);
    case 'easing':
      return { code: 'ease', heavy: input.heavyShifts, shifts: input.shiftCount };
    case 'economy':
      return { code: 'fidget', shifts: input.shiftCount, needed: input.referenceShiftCount };
    case 'chainLine':
      return { code: 'crossed', seconds: amountOf(reason), atM: placeOf(reason) };
    case 'cadence':
      return cadenceChange(reason, input.pitches);
  }
}

/** The mark that cost the most of the total, if any is below good enough. */
function dearest(marks: Marks): MarkName | null {
  let name: MarkName | null = null;
  let most = 0;
  for (const candidate of MARK_NAMES) {
    const cost = costOf(marks[candidate]);
    if (cost > most) {
      most = cost;
      name = candidate;
    }
  }
  return name;
}

function costOf(mark: Mark): number {
  if (mark.value === null || mark.value >= GOOD_ENOUGH) return 0;
  return (100 - mark.value) * mark.weight;
}

function foresightChange(pitches: readonly PitchReport[]): Verdict['change'] {
  const asked = pitches.filter((pitch) => pitch.asked);
  const worst = [...asked].sort((a, b) => a.credit - b.credit)[0];
  return worst === undefined ? { code: 'nothing' } : pitchChange('late-pitch', worst);
}

function cadenceChange(reason: Reason | undefined, pitches: readonly PitchReport[]): Verdict['change'] {
  if (reason?.code === 'below-band' || reason?.code === 'above-band') {
    const early = pitches.find(
      (pitch) =>
        pitch.timing === 'too-early' &&
        reason.code === 'above-band' &&
        reason.toM > pitch.footM - 90 &&
        reason.fromM < pitch.footM,
    );
    if (early !== undefined) return pitchChange('early-pitch', early);
    return {
      code: reason.code === 'below-band' ? 'slow-legs' : 'fast-legs',
      seconds: reason.amount,
      atM: reason.fromM,
    };
  }
  return { code: 'nothing' };
}

function pitchChange(
  code: 'late-pitch' | 'early-pitch' | 'foot-down',
  pitch: PitchReport,
): Verdict['change'] {
  return {
    code,
    pitch: pitch.index,
    steps: pitch.stepsNeeded,
    stepsBeforeFoot: pitch.referenceStepsBeforeFoot,
    beforeFootM: pitch.referenceFirstShiftBeforeFootM ?? 10,
  };
}

function amountOf(reason: Reason | undefined): number {
  return reason?.amount ?? 0;
}

function placeOf(reason: Reason | undefined): number {
  return reason !== undefined && 'fromM' in reason ? reason.fromM : 0;
}
