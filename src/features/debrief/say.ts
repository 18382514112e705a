/**
 * From codes and numbers of the core to sentences. Switched over completely, so that a new code without words
 * does not compile; the sentences themselves stand in the message files.
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
import type { Speech } from './speech.ts';

const whole = (value: number): number => Math.max(1, Math.round(value));

/** Which pitch of how many, as messages name it. */
const named = (index: number, { pitchCount }: Speech) => ({ pitch: index + 1, pitches: pitchCount });

/** Some of all shifts, as messages count them. */
const someOf = (some: number, all: number) =>
  ({ heavy: some, changes: all, which: some < all ? 'some' : 'all' }) as const;

/** What went well. */
export function sayWell(well: Verdict['well'], { say }: Speech): string {
  return say(`well-${well.code}`);
}

/** The one thing to change. */
export function sayChange(change: Verdict['change'], speech: Speech): string {
  const { say, format } = speech;
  switch (change.code) {
    case 'late-pitch':
    case 'early-pitch':
    case 'few-steps':
    case 'wrong-way':
    case 'pushed':
    case 'foot-down':
      return sayPitchChange(change, speech);
    case 'ease': {
      const id = change.motor === true ? 'change-ease-motor' : 'change-ease';
      return say(change.hub === true ? `${id}-hub` : id, someOf(change.heavy, change.shifts));
    }
    case 'stood-still':
      return say('change-stood-still', someOf(change.waited, change.shifts));
    case 'slow-legs':
    case 'fast-legs':
    case 'crossed':
    case 'coasted': {
      const hub = change.code === 'coasted' && change.hub === true;
      return say(hub ? 'change-coasted-hub' : `change-${change.code}`, {
        seconds: whole(change.seconds),
        place: format.distance(change.atM),
      });
    }
    case 'fidget':
      return say('change-fidget', { changes: change.shifts, needed: change.needed });
    case 'dawdle':
      return say('change-dawdle', { times: format.number(change.timesAsLong, 1) });
    case 'nothing':
      return say('change-nothing');
  }
}

type PitchChange = Extract<Verdict['change'], { readonly pitch: number }>;

function sayPitchChange(change: PitchChange, speech: Speech): string {
  const { say, format } = speech;
  const pitch = named(change.pitch, speech);
  const place = footPlace(change.beforeFootM, format);
  const how = change.slightly ? 'slightly' : 'clearly';
  switch (change.code) {
    case 'early-pitch':
      return say('change-early-pitch', { ...pitch, ...place, how });
    case 'few-steps': {
      const which = change.made < change.steps ? 'few' : 'hard';
      return say('change-few-steps', { ...pitch, made: change.made, gears: change.steps, which });
    }
    case 'late-pitch':
    case 'wrong-way':
    case 'pushed':
    case 'foot-down': {
      const advised = { ...pitch, ...place, ...stepsOf(change) };
      if (change.code !== 'late-pitch') return say(`change-${change.code}`, advised);
      return change.made === 0
        ? say('change-stayed', advised)
        : say('change-late-pitch', { ...advised, how });
    }
  }
}

/** Gears easier that are advised: those before the foot where the rest comes on the way up, else all. */
function stepsOf({ steps, stepsBeforeFoot }: PitchChange) {
  const ready = Math.max(1, stepsBeforeFoot);
  const isParted = stepsBeforeFoot > 0 && stepsBeforeFoot < steps;
  return {
    gears: isParted ? stepsBeforeFoot : Math.max(1, steps),
    rest: isParted ? 'some' : 'none',
    ready,
  } as const;
}

/** What holds the total down or the pass back. */
export function sayHold(hold: Hold, { say, format }: Speech): string {
  switch (hold.code) {
    case 'weakest':
      return say('hold-weakest', { mark: hold.mark, most: Math.round(hold.most) });
    case 'pace': {
      const times = format.number(hold.timesAsLong, 1);
      return hold.share < 0.005
        ? say('hold-tooSlow', { times })
        : say('hold-pace', { times, share: format.percent(hold.share) });
    }
    case 'mark-missing':
      return say(hold.lesson ? 'hold-lessonMissing' : 'hold-markMissing', {
        mark: hold.mark,
        atLeast: Math.round(hold.atLeast),
      });
  }
}

/** What to ride next. */
export function sayNext(next: Verdict['next'], nextLevelTitle: string | null, { say }: Speech): string {
  if (next.code !== 'onwards') return say(`next-${next.code}`);
  return nextLevelTitle === null ? say('next-onwardsNone') : say('next-onwards', { level: nextLevelTitle });
}

/** Why a mark is what it is, and what would have changed it. */
export function sayReason(reason: Reason, speech: Speech): { readonly why: string; readonly better: string } {
  const { say, format } = speech;
  const from = 'fromM' in reason ? format.distance(reason.fromM) : '';
  switch (reason.code) {
    case 'below-band':
    case 'above-band': {
      const legs = { seconds: whole(reason.amount), from, rpm: Math.round(reason.worstRpm) };
      return { why: say(`why-${reason.code}`, legs), better: say(`better-${reason.code}`) };
    }
    case 'coasted':
    case 'crossed': {
      const hub = reason.code === 'coasted' && reason.hub === true;
      return {
        why: say(`why-${reason.code}`, { seconds: whole(reason.amount), from }),
        better: say(hub ? 'better-coasted-hub' : `better-${reason.code}`),
      };
    }
    case 'overloaded-pitch':
    case 'early-pitch': {
      const lost = { ...named(reason.pitch, speech), percent: format.percent(reason.amount) };
      return { why: say(`why-${reason.code}`, lost), better: say(`better-${reason.code}`) };
    }
    case 'foot-down-pitch':
      return {
        why: say('why-foot-down-pitch', named(reason.pitch, speech)),
        better: say('better-foot-down-pitch'),
      };
    case 'heavy-shift': {
      const { derailleur, motor, hub } = reason;
      const on = motor === true ? '-motor' : hub === true ? '-hub' : '';
      return {
        why: say('why-heavy-shift', { derailleur, from, percent: format.percent(reason.amount) }),
        better: say(`better-heavy-shift${on}`),
      };
    }
    case 'many-shifts':
      return {
        why: say('why-many-shifts', { changes: reason.amount, needed: reason.needed }),
        better: say('better-many-shifts'),
      };
    case 'waited-shift':
    case 'undone':
      return { why: say(`why-${reason.code}`, { from }), better: say(`better-${reason.code}`) };
  }
}

/** From here on nothing was lost, after rounding. */
const FULL = 99.5;

/** Whether a mark reads 100: then there is nothing to do better. */
export function isFullMark(value: number): boolean {
  return value >= FULL;
}

/** What a mark is called. */
export function sayMark(mark: MarkName, { say }: Speech): string {
  return say('mark', { mark });
}

/** What a mark is worth, in a word or two. */
export function sayLevel(value: number, { say }: Speech): string {
  return say(
    value >= 85
      ? 'level-strong'
      : value >= 70
        ? 'level-good'
        : value >= 45
          ? 'level-onTheWay'
          : 'level-start',
  );
}

/** What to say of a mark that has no reason. */
export function sayNoReason(value: number, { say }: Speech): string {
  if (value === 0) return say('leftAlone');
  return say(isFullMark(value) ? 'perfect' : 'small');
}

/** Why there is no mark. */
export function sayNoMark(name: MarkName, { say }: Speech): string {
  return say(`noMark-${name}`);
}

/** A pitch as a title. */
export function sayPitchTitle(index: number, speech: Speech): string {
  return speech.say('pitch-title', named(index, speech));
}

/** The pitch that is guessed about, or undefined. */
export function guessPitchOf(report: RideReport): PitchReport | undefined {
  return report.pitches.find((pitch) => pitch.index === report.guessPitch);
}

/** The pitch is named as soon as it is known which. */
export function questionOf(report: RideReport | null, speech: Speech): string {
  const pitch = report === null ? undefined : guessPitchOf(report);
  return pitch === undefined
    ? speech.say('guess-openQuestion')
    : speech.say('guess-question', named(pitch.index, speech));
}

/** The one thing to change; what went well where there is none. */
export function sayFinding({ verdict }: RideReport, speech: Speech): string {
  const { well, change } = verdict;
  return change.code === 'nothing' ? sayWell(well, speech) : sayChange(change, speech);
}

/** The answer to a guess, in two or three short sentences. */
export function sayAnswer(guess: Guess, pitch: PitchReport | undefined, speech: Speech): readonly string[] {
  const { say } = speech;
  if (pitch === undefined) return [say('guess-noPitch')];
  const { timing } = pitch;
  const where = sayWhere(pitch, speech);
  if (guess === 'skipped') return [say('guess-told', { timing }), where];
  if (guess === timing) return [say('guess-matched', { timing }), where, say('guess-matchedKind')];
  return [say('guess-differed', { guess, timing }), where, say('guess-differedKind')];
}

/** What both rides did before the foot. */
function sayWhere(pitch: PitchReport, { say, format }: Speech): string {
  if (pitch.timing === 'too-late') {
    // A first shift can come early and still be one of too few, or too heavy to help.
    return pitch.stepsBeforeFoot < pitch.referenceStepsBeforeFoot
      ? say('guess-stepsBefore', { made: pitch.stepsBeforeFoot, needed: pitch.referenceStepsBeforeFoot })
      : say('guess-slowest', {
          own: Math.round(pitch.worstCadenceRpm),
          best: Math.round(pitch.referenceWorstCadenceRpm),
        });
  }
  const place = (beforeM: number | null) =>
    beforeM === null ? ({ side: 'never', metres: '' } as const) : footPlace(beforeM, format);
  const own = place(pitch.firstShiftBeforeFootM);
  const best = place(pitch.referenceFirstShiftBeforeFootM);
  return say('guess-where', {
    own: own.side,
    ownMetres: own.metres,
    best: best.side,
    bestMetres: best.metres,
  });
}

/** The three answers one can choose from. */
export const TIMINGS = ['too-early', 'about-right', 'too-late'] as const satisfies readonly Timing[];
