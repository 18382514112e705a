/**
 * Every code has words, for grown-ups and for children, and the children's words are easy. Difficulty is
 * measured with LIX (C.-H. Björnsson, Läsbarhet, 1968): words per sentence plus the percentage of words of
 * more than six letters; up to 25 is the range of books for children.
 */
import { describe, expect, it } from 'vitest';
import {
  type Hold,
  MARK_NAMES,
  type Reason,
  type Timing,
  type Verdict,
} from '../../../src/core/coach/types.ts';
import {
  sayAnswer,
  sayChange,
  sayHold,
  sayNext,
  sayNoMark,
  sayReason,
  sayWell,
} from '../../../src/features/debrief/say.ts';
import { debriefFor, type Speech } from '../../../src/features/debrief/speech.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { createFormat } from '../../../src/words/format.ts';
import { carriedWords } from '../../../assets/words/carry.ts';
import { lateRide } from './ride.tsx';

type Audience = Level['audience'];
const speechOf = (audience: Audience, pitchCount: number): Speech => ({
  say: debriefFor(audience),
  format: createFormat('metric', 'en'),
  pitchCount,
});

/** One of each code; a code without an entry does not compile. */
const reasons: { readonly [Code in Reason['code']]: Extract<Reason, { code: Code }> | Reason } = {
  'below-band': { code: 'below-band', fromM: 231, toM: 300, amount: 12.4, worstRpm: 38 },
  'above-band': { code: 'above-band', fromM: 90, toM: 120, amount: 3, worstRpm: 118 },
  'overloaded-pitch': { code: 'overloaded-pitch', pitch: 1, fromM: 1100, amount: 0.8 },
  'early-pitch': { code: 'early-pitch', pitch: 2, fromM: 1300, amount: 0.4 },
  coasted: { code: 'coasted', fromM: 40, toM: 75, amount: 6.2 },
  'foot-down-pitch': { code: 'foot-down-pitch', pitch: 0, fromM: 500, amount: 1 },
  'heavy-shift': { code: 'heavy-shift', fromM: 567, amount: 1.4, derailleur: 'rear', direction: 'easier' },
  crossed: { code: 'crossed', fromM: 900, toM: 980, amount: 14 },
  'many-shifts': { code: 'many-shifts', amount: 31, needed: 12 },
  undone: { code: 'undone', fromM: 410, amount: 1 },
  'waited-shift': { code: 'waited-shift', fromM: 330, amount: 0.6 },
};

const atPitch = { pitch: 1, slightly: false, steps: 3, made: 1, stepsBeforeFoot: 1, beforeFootM: 22 };

const changes: { readonly [Code in Verdict['change']['code']]: Verdict['change'] } = {
  'late-pitch': { ...atPitch, code: 'late-pitch', pitch: 0, beforeFootM: 12 },
  'early-pitch': { ...atPitch, code: 'early-pitch', beforeFootM: -4 },
  'few-steps': { ...atPitch, code: 'few-steps' },
  'wrong-way': { ...atPitch, code: 'wrong-way' },
  pushed: { ...atPitch, code: 'pushed' },
  'foot-down': { ...atPitch, code: 'foot-down', steps: 6, stepsBeforeFoot: 0, beforeFootM: 0.4 },
  coasted: { code: 'coasted', seconds: 7, atM: 120 },
  dawdle: { code: 'dawdle', timesAsLong: 1.42 },
  ease: { code: 'ease', heavy: 5, shifts: 9 },
  'stood-still': { code: 'stood-still', waited: 4, shifts: 5 },
  'slow-legs': { code: 'slow-legs', seconds: 12, atM: 231 },
  'fast-legs': { code: 'fast-legs', seconds: 1, atM: 90 },
  crossed: { code: 'crossed', seconds: 14, atM: 900 },
  fidget: { code: 'fidget', shifts: 31, needed: 12 },
  nothing: { code: 'nothing' },
};

const wells: { readonly [Code in Verdict['well']['code']]: true } = {
  finished: true,
  cadence: true,
  foresight: true,
  easing: true,
  chainLine: true,
  economy: true,
};

/** What holds a total down, and one more of some codes that bend their words. */
const holds: { readonly [Code in Hold['code']]: readonly Hold[] } = {
  weakest: [{ code: 'weakest', mark: 'foresight', most: 62 }],
  pace: [
    { code: 'pace', timesAsLong: 1.22, share: 0.6 },
    { code: 'pace', timesAsLong: 1.9, share: 0 },
  ],
  'mark-missing': MARK_NAMES.flatMap((mark) =>
    [true, false].map((lesson): Hold => ({ code: 'mark-missing', mark, atLeast: 60, lesson })),
  ),
};
const bentChanges: readonly Verdict['change'][] = [
  { ...atPitch, code: 'late-pitch', made: 0 },
  { ...atPitch, code: 'late-pitch', slightly: true },
  { ...atPitch, code: 'early-pitch', slightly: true },
  { ...atPitch, code: 'few-steps', made: 4 },
  { code: 'ease', heavy: 0, shifts: 1 },
  { code: 'ease', heavy: 0, shifts: 1, hub: true },
  { code: 'ease', heavy: 5, shifts: 9, hub: true },
  { code: 'coasted', seconds: 7, atM: 120, hub: true },
  { code: 'stood-still', waited: 1, shifts: 1 },
  { code: 'ease', heavy: 1, shifts: 1 },
  { code: 'ease', heavy: 12, shifts: 12 },
  { code: 'fidget', shifts: 9, needed: 1 },
];

const nexts: { readonly [Code in Verdict['next']['code']]: true } = {
  again: true,
  onwards: true,
  'easier-level': true,
};

const pitch = lateRide().report.pitches[0];

/** Everything the debrief can say about a ride. */
function everySentence(audience: Audience): string[] {
  return [1, 3].flatMap((pitchCount) => {
    const speech = speechOf(audience, pitchCount);
    const timings: readonly Timing[] = ['too-early', 'about-right', 'too-late'];
    const answers = timings.flatMap((timing) =>
      ([...timings, 'skipped'] as const).flatMap((guess) =>
        sayAnswer(guess, pitch === undefined ? undefined : { ...pitch, timing }, speech),
      ),
    );
    const told = Object.values(reasons).map((reason) => sayReason(reason, speech));
    return [
      ...told.map(({ why }) => why),
      ...told.map(({ better }) => `${speech.say('better')} ${better}`),
      ...[...Object.values(changes), ...bentChanges].map((change) => sayChange(change, speech)),
      ...Object.values(holds)
        .flat()
        .map((hold) => sayHold(hold, speech)),
      ...Object.keys(wells).map((code) =>
        sayWell({ code: code as Verdict['well']['code'], value: 80 }, speech),
      ),
      ...Object.keys(nexts).map((code) =>
        sayNext({ code: code as Verdict['next']['code'], total: 60 }, 'Up and up', speech),
      ),
      sayNext({ code: 'onwards', total: 90 }, null, speech),
      ...MARK_NAMES.map((name) => sayNoMark(name, speech)),
      ...answers,
    ];
  });
}

const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?])\s+/).filter((part) => part !== '');
const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}’,]*[\p{L}\p{N}]/gu) ?? [];

/** LIX of a text. */
function lix(text: string): number {
  const all = wordsOf(text);
  const long = all.filter((word) => word.length > 6).length;
  return all.length / sentencesOf(text).length + (100 * long) / all.length;
}

describe.each([
  ['grown-ups', 'everyone'],
  ['children', 'children'],
] as const)('the words for %s', (_, audience) => {
  it('cover every code with a whole sentence', () => {
    for (const sentence of everySentence(audience)) {
      expect(sentence).toMatch(/^\p{Lu}.*[.!]$/u);
      expect(sentence).not.toMatch(/undefined|NaN|null|\[object|\{/);
    }
  });

  it('say different things for different codes', () => {
    const speech = speechOf(audience, 2);
    const said = Object.values(reasons).map((reason) => sayReason(reason, speech).why);
    expect(new Set(said).size).toBe(said.length);
    const change = Object.values(changes).map((one) => sayChange(one, speech));
    expect(new Set(change).size).toBe(change.length);
  });
});

describe('what is said about numbers', () => {
  const speech = speechOf('everyone', 3);

  it('calls single movements of the chain gear changes everywhere, so that two counts never disagree', () => {
    const said = [
      sayChange({ code: 'ease', heavy: 2, shifts: 25 }, speech),
      sayChange({ code: 'fidget', shifts: 25, needed: 13 }, speech),
      sayReason({ code: 'many-shifts', amount: 25, needed: 13 }, speech).why,
    ];
    for (const sentence of said) expect(sentence).toContain('25 gear changes');
    for (const sentence of said) expect(sentence).not.toMatch(/shifted (\d+|\w+) times|of 25 shifts/);
  });

  it('speaks of no shift where none was made', () => {
    const stayed = sayChange({ ...atPitch, code: 'late-pitch', made: 0 }, speech);
    expect(stayed).toMatch(/^On the second pitch you stayed in a gear that was too hard\. /);
  });

  it('says what slowness leaves, and that nothing is left where that is so', () => {
    const [some, none] = holds.pace.map((hold) => sayHold(hold, speech));
    expect(some).toBe('You took 1.2 times as long as the best ride. That leaves 60 % of the total.');
    expect(none).toMatch(/^You took 1\.9 times as long as the best ride\. /);
  });
});

describe('the measure', () => {
  it('knows an easy sentence from a hard one', () => {
    expect(lix('The dog ran to the big tree.')).toBe(7);
    expect(lix('Considerable anticipation characterises experienced bicycle operators.')).toBeGreaterThan(90);
  });
});

describe('the words for children', () => {
  it('stand under the names of those for grown-ups, or are a part of one that does', () => {
    const names = (file: string) => carriedWords('en', file).map(([id]) => id);
    const grown = new Set(names('debrief'));
    const parts = ['ready-gears', 'needed-gears', 'heavy-shifts'];
    expect(names('debriefChildren').filter((id) => !grown.has(id) && !parts.includes(id))).toEqual([]);
  });

  const said = everySentence('children').flatMap(sentencesOf);

  it('come in sentences of at most twelve words', () => {
    expect(said.filter((sentence) => wordsOf(sentence).length > 12)).toEqual([]);
  });

  it('are as easy as a book for children, and easier than those for grown-ups', () => {
    expect(lix(said.join(' '))).toBeLessThanOrEqual(25);
    expect(lix(said.join(' '))).toBeLessThan(lix(everySentence('everyone').join(' ')));
    expect(said.filter((sentence) => lix(sentence) > 40)).toEqual([]);
  });
});
