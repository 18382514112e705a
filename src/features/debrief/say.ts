/**
 * From codes and numbers of the core to sentences. Switched over completely, so that a new code without words
 * does not compile; the sentences themselves are handed in.
 */
import type { Guess } from '../../core/coach/results.ts';
import type {
  Hold,
  MarkName,
  PitchReport,
  Reason,
  RideReport,
  Timing,
  Verdict,
} from '../../core/coach/types.ts';
import { footPlace } from '../../charts/readout.ts';
import type { Format } from '../../words/format.ts';
import type { DebriefWords } from './words.ts';

/** What sentences are made with. */
export interface Speech {
  readonly words: DebriefWords;
  readonly format: Format;
  /** Pitches on the road, for "the pitch" or "the first pitch". */
  readonly pitchCount: number;
}

const tenths = (value: number, format: Format): string => format.number(value, 1);
const whole = (value: number): number => Math.max(1, Math.round(value));

/** What went well. */
export function sayWell(well: Verdict['well'], { words }: Speech): string {
  return words.well[well.code];
}

/** The one thing to change. */
export function sayChange(change: Verdict['change'], speech: Speech): string {
  const { words, format } = speech;
  const say = words.change;
  switch (change.code) {
    case 'late-pitch':
    case 'early-pitch':
    case 'few-steps':
    case 'pushed':
    case 'foot-down':
      return sayPitchChange(change, speech);
    case 'ease':
      if (change.motor === true)
        return (change.hub === true ? say.motorPulledHub : say.motorPulled)(change.heavy, change.shifts);
      return (change.hub === true ? say.pushedHub : say.ease)(change.heavy, change.shifts);
    case 'stood-still':
      return say.stoodStill(change.waited, change.shifts);
    case 'slow-legs':
      return say.slowLegs(whole(change.seconds), format.distance(change.atM));
    case 'fast-legs':
      return say.fastLegs(whole(change.seconds), format.distance(change.atM));
    case 'crossed':
      return say.crossed(whole(change.seconds), format.distance(change.atM));
    case 'coasted':
      return (change.hub === true ? say.restedHub : say.coasted)(
        whole(change.seconds),
        format.distance(change.atM),
      );
    case 'fidget':
      return say.fidget(change.shifts, change.needed);
    case 'dawdle':
      return say.dawdle(tenths(change.timesAsLong, format));
    case 'nothing':
      return say.nothing;
  }
}

type PitchChange = Extract<Verdict['change'], { readonly pitch: number }>;

function sayPitchChange(change: PitchChange, { words, format, pitchCount }: Speech): string {
  const say = words.change;
  const name = words.pitch(change.pitch, pitchCount);
  const steps = { all: change.steps, beforeFoot: change.stepsBeforeFoot };
  const place = footPlace(change.beforeFootM, format);
  switch (change.code) {
    case 'late-pitch':
      return change.made === 0
        ? say.stayed(name, steps, place)
        : say.late(name, steps, place, change.slightly);
    case 'early-pitch':
      return say.early(name, place, change.slightly);
    case 'few-steps':
      return say.fewSteps(name, change.made, change.steps);
    case 'pushed':
      return say.pushed(name, steps, place);
    case 'foot-down':
      return say.footDown(name, steps, place);
  }
}

/** What holds the total down or the pass back. */
export function sayHold(hold: Hold, { words, format }: Speech): string {
  const { holds, names } = words.marks;
  switch (hold.code) {
    case 'weakest':
      return holds.weakest(names[hold.mark], format.number(hold.most));
    case 'pace': {
      const ratio = tenths(hold.timesAsLong, format);
      return hold.share < 0.005 ? holds.tooSlow(ratio) : holds.pace(ratio, format.percent(hold.share));
    }
    case 'mark-missing': {
      const say = hold.lesson ? holds.lessonMissing : holds.markMissing;
      return say(names[hold.mark], format.number(hold.atLeast));
    }
  }
}

/** What to ride next. */
export function sayNext(next: Verdict['next'], nextLevelTitle: string | null, { words }: Speech): string {
  switch (next.code) {
    case 'again':
      return words.next.again;
    case 'onwards':
      return nextLevelTitle === null ? words.next.onwardsNone : words.next.onwards(nextLevelTitle);
    case 'easier-level':
      return words.next.easier;
  }
}

/** Why a mark is what it is, and what would have changed it. */
export function sayReason(reason: Reason, speech: Speech): { readonly why: string; readonly better: string } {
  const { words, format, pitchCount } = speech;
  const { reasons } = words;
  switch (reason.code) {
    case 'below-band':
    case 'above-band': {
      const say = reason.code === 'below-band' ? reasons.belowBand : reasons.aboveBand;
      const rpm = format.number(reason.worstRpm);
      return {
        why: say.why(format.distance(reason.fromM), whole(reason.amount), rpm),
        better: say.better,
      };
    }
    case 'coasted': {
      const { why, better, betterHub } = reasons.coasted;
      return {
        why: why(format.distance(reason.fromM), whole(reason.amount)),
        better: reason.hub === true ? betterHub : better,
      };
    }
    case 'overloaded-pitch':
    case 'early-pitch': {
      const { why, better } = reason.code === 'early-pitch' ? reasons.early : reasons.late;
      return { why: why(words.pitch(reason.pitch, pitchCount), format.percent(reason.amount)), better };
    }
    case 'foot-down-pitch': {
      const { why, better } = reasons.footDown;
      return { why: why(words.pitch(reason.pitch, pitchCount)), better };
    }
    case 'heavy-shift': {
      const { why, better, betterHub, betterMotor } = reasons.heavy;
      const load = format.percent(reason.amount);
      return {
        why: why(format.distance(reason.fromM), load, reason.derailleur === 'front'),
        better: reason.motor === true ? betterMotor : reason.hub === true ? betterHub : better,
      };
    }
    case 'waited-shift':
      return { why: reasons.waited.why(format.distance(reason.fromM)), better: reasons.waited.better };
    case 'crossed': {
      const { why, better } = reasons.crossed;
      return { why: why(format.distance(reason.fromM), whole(reason.amount)), better };
    }
    case 'many-shifts':
      return { why: reasons.many.why(reason.amount, reason.needed), better: reasons.many.better };
    case 'undone':
      return { why: reasons.undone.why(format.distance(reason.fromM)), better: reasons.undone.better };
  }
}

/** From here on nothing was lost, after rounding. */
const FULL = 99.5;

/** Whether a mark reads 100: then there is nothing to do better. */
export function isFull(value: number): boolean {
  return value >= FULL;
}

/** What to say of a mark that has no reason. */
export function sayNoReason(value: number, { words }: Speech): string {
  if (value === 0) return words.marks.leftAlone;
  return isFull(value) ? words.marks.perfect : words.marks.small;
}

/** Why there is no mark. */
export function sayNoMark(name: MarkName, { words }: Speech): string {
  return words.marks.noMark[name];
}

/** The pitch that is guessed about, or undefined. */
export function guessPitchOf(report: RideReport): PitchReport | undefined {
  return report.pitches.find((pitch) => pitch.index === report.guessPitch);
}

/** The pitch is named as soon as it is known which. */
export function questionOf(report: RideReport | null, { words, pitchCount }: Speech): string {
  const pitch = report === null ? undefined : guessPitchOf(report);
  return pitch === undefined
    ? words.guess.openQuestion
    : words.guess.question(words.pitch(pitch.index, pitchCount));
}

/** The one thing to change; what went well where there is none. */
export function sayFinding({ verdict }: RideReport, speech: Speech): string {
  const { well, change } = verdict;
  return change.code === 'nothing' ? sayWell(well, speech) : sayChange(change, speech);
}

/** The answer to a guess, in two or three short sentences. */
export function sayAnswer(guess: Guess, pitch: PitchReport | undefined, speech: Speech): readonly string[] {
  const { words } = speech;
  const say = words.guess;
  if (pitch === undefined) return [say.noPitch];
  const truth = say.timings[pitch.timing];
  if (guess === 'skipped') return [say.told(truth), sayWhere(pitch, speech)];
  if (guess === pitch.timing) return [say.matched(truth), sayWhere(pitch, speech), say.matchedKind];
  return [say.differed(say.timings[guess], truth), sayWhere(pitch, speech), say.differedKind];
}

/** What both rides did before the foot. */
function sayWhere(pitch: PitchReport, { words, format }: Speech): string {
  const say = words.guess;
  if (pitch.timing === 'too-late') {
    // A first shift can come early and still be one of too few, or too heavy to help.
    return pitch.stepsBeforeFoot < pitch.referenceStepsBeforeFoot
      ? say.stepsBefore(pitch.stepsBeforeFoot, pitch.referenceStepsBeforeFoot)
      : say.slowest(format.number(pitch.worstCadenceRpm), format.number(pitch.referenceWorstCadenceRpm));
  }
  const own = pitch.firstShiftBeforeFootM;
  const best = pitch.referenceFirstShiftBeforeFootM;
  return say.join(
    own === null ? say.youNever : say.youFirst(footPlace(own, format)),
    best === null ? say.bestNever : say.bestFirst(footPlace(best, format)),
  );
}

/** The three answers one can choose from. */
export const TIMINGS = ['too-early', 'about-right', 'too-late'] as const satisfies readonly Timing[];
