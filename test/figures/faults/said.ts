/**
 * What the game says when something is wrong, and what each sentence claims, so that a sentence that names another
 * cause than the real one is found. The texts come from the words themselves.
 */
import '../../../assets/words/english.ts';
import type { Cause } from './types.ts';
import { common } from '../../../src/words/common.ts';
import { words } from '../../../src/words/words.ts';

const ride = words('ride');
const kept = words('kept');
const clinic = words('clinic');
const debrief = words('debrief');
const handover = words('handover');
const arrival = words('arrival');
const bench = words('bench');

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

const ofCode = (code: string, text: string): Sentence => ({ text, names: CODES[code] ?? null });
const plain = (...texts: readonly string[]): Sentence[] => texts.map((text) => ({ text, names: null }));

/** Why a ride was not kept; that of a test ride is no trouble. */
const NOT_SAVED = [
  'private-window',
  'disk-full',
  'connection-lost',
  'newer-version',
  'blocked',
  'hangs',
  'corrupt',
  'somebody-else',
  'not-judged',
  'not-fetched',
] as const;

const TROUBLE: readonly Sentence[] = [
  { text: clinic('elsewhere'), names: ['tabs'] },
  ...NOT_SAVED.map((code) => ofCode(code, debrief(`notSaved-${code}`))),
  ofCode('not-fetched', common('health-not-fetched')),
  ...(['slow', 'memory', 'small-copy', 'disk-full', 'recordings-lost'] as const).map((code) =>
    ofCode(code, kept(`health-${code}`)),
  ),
  ...(['not-fetched', 'no-canvas', 'broken'] as const).map((code) => ofCode(code, ride(`failed-${code}`))),
  ...plain(
    ride('trouble-ride'),
    ride('trouble-again'),
    ride('trouble-page'),
    ride('trouble-notKept'),
    debrief('guess-notMarked'),
  ),
  { text: common('coming-failed'), names: ['network'] },
  ...(['private-window', 'disk-full', 'newer-version', 'blocked'] as const).map((code) =>
    ofCode(code, bench(`keep-${code}`)),
  ),
  ...plain(bench('openFailed'), bench('keep-failed'), bench('reference-failed')),
  ...plain(clinic('openFailed'), clinic('round-notKept'), clinic('round-notMarked')),
  ...plain(clinic('round-ridingSays')),
  ...plain(handover('carry-tooBig'), handover('collect-notKept')),
  ...plain(kept('failed'), kept('savedPart'), kept('notAFile'), kept('notDeleted')),
  ...plain('could not be read and were left out.'),
  ...plain(words('gearcheck')('failed'), clinic('picture-failed'), 'does not answer. Load the page anew'),
];

const WAITING: readonly string[] = [
  common('riding-loading'),
  common('coming-loading'),
  clinic('opening'),
  clinic('round-marking'),
  clinic('picture-working'),
  bench('reference-working', { share: '' }).trim(),
  handover('carry-making'),
  debrief('saved-saving'),
  bench('opening'),
  bench('check-working'),
  kept('takingBack'),
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
  inOneLine(text).includes(arrival('stuck')) ? arrival('stuck') : null;

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
