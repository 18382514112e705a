/**
 * What the game says when something is wrong, and what each sentence claims, so that a sentence that names another
 * cause than the real one is found. The texts come from the words themselves.
 */
import { benchWords } from '../../../src/features/bench/words.ts';
import { clinicWords } from '../../../src/features/clinic/words.ts';
import { debriefWords, debriefPageWords } from '../../../src/features/debrief/words.ts';
import { gearCheckWords } from '../../../src/features/gearcheck/words.ts';
import { handoverWords } from '../../../src/features/handover/words.ts';
import { serviceWords } from '../../../src/words/kept.ts';
import type { Cause } from './types.ts';
import { rideWords } from '../../../src/features/ride/words.ts';
import { arrivalWords } from '../../../src/words/arrival.ts';
import { commonWords } from '../../../src/words/common.ts';
import { troubleWords } from '../../../src/words/unfinished.ts';

interface Sentence {
  readonly text: string;
  /** Causes this is true for; null where it names none. */
  readonly names: readonly Cause[] | null;
}

/** Sentences whose code names a cause. */
const CODES: Readonly<Record<string, readonly Cause[]>> = {
  'private-window': ['no-store'],
  'disk-full': ['disk-full'],
  blocked: ['tabs'],
  'not-fetched': ['network'],
  'no-canvas': ['picture', 'browser'],
  'newer-version': [],
  corrupt: [],
};

const coded = (list: Readonly<Record<string, string>>): Sentence[] =>
  Object.entries(list).map(([code, text]) => ({ text, names: CODES[code] ?? null }));
const plain = (...texts: readonly string[]): Sentence[] => texts.map((text) => ({ text, names: null }));

const TROUBLE: readonly Sentence[] = [
  { text: clinicWords.elsewhere, names: ['tabs'] },
  ...coded(debriefPageWords.notSaved).filter(({ text }) => text !== debriefPageWords.notSaved['trial']),
  ...coded(commonWords.health),
  ...coded(rideWords.failed),
  ...plain(
    troubleWords.ride,
    troubleWords.again,
    troubleWords.page,
    troubleWords.notKept,
    debriefWords.guess.notMarked,
  ),
  { text: commonWords.coming.failed, names: ['network'] },
  ...coded(benchWords.keep.codes),
  ...plain(benchWords.openFailed, benchWords.keep.failed, benchWords.reference.failed),
  ...plain(clinicWords.openFailed, clinicWords.round.notKept, clinicWords.round.notMarked),
  ...plain(clinicWords.round.ridingSays),
  ...plain(handoverWords.carry.tooBig, handoverWords.collect.notKept),
  ...plain(serviceWords.failed, serviceWords.savedPart, serviceWords.notAFile, serviceWords.notDeleted),
  ...plain('could not be read and were left out.'),
  ...plain(gearCheckWords.answer.failed, clinicWords.picture.failed, 'does not answer. Load the page anew'),
];

const WAITING: readonly string[] = [
  commonWords.riding.loading,
  commonWords.coming.loading,
  clinicWords.opening,
  clinicWords.round.marking,
  clinicWords.picture.working,
  'Planning the best ride:',
  handoverWords.carry.making,
  debriefWords.doing.saved.saving,
  benchWords.opening,
  benchWords.check.working,
];

const inOneLine = (text: string): string => text.replaceAll(/\s+/g, ' ');

const found = (text: string): Sentence | undefined => {
  const line = inOneLine(text);
  return TROUBLE.find((one) => line.includes(one.text));
};

/** The sentence of trouble in a text, or null. */
export const troubleIn = (text: string): string | null => found(text)?.text ?? null;

/** Whether a text says that something is wrong. */
export const isTold = (text: string): boolean => found(text) !== undefined;

/** The sentence of a page whose scripts have not come. It is true as long as it stands there. */
export const nothingCame = (text: string): string | null =>
  inOneLine(text).includes(arrivalWords.stuck) ? arrivalWords.stuck : null;

/** The sentence that says something is still coming, or null. */
export const waitingIn = (text: string): string | null => {
  const line = inOneLine(text);
  return WAITING.find((one) => line.includes(one)) ?? null;
};

/** Whether a sentence may be said where this is really the matter. */
export function isTrueFor(sentence: string, cause: Cause): boolean {
  const names = TROUBLE.find((one) => one.text === sentence)?.names ?? null;
  return names === null || names.includes(cause);
}
