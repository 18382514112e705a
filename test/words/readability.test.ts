/** Children’s messages of every language: short sentences, and easy by the measure of the language. */
import { FluentResource } from '@fluent/bundle';
import { describe, expect, it } from 'vitest';
import { languages, textOf } from '../../assets/words/carry.ts';
import type { Entry } from '../../src/words/fill.ts';
import { BUNDLED } from '../core/ride/worlds.ts';
import {
  type Counts,
  countsOf,
  fernandezHuerta,
  fleschDouma,
  kandelMoles,
  lengthOf,
  lix,
  MEASURES,
  sentencesIn,
  syllablesOf,
  wiener1,
  wiener4,
} from './readability.ts';

type Pattern = Entry['value'];

describe('a formula', () => {
  const vector: Counts = {
    words: 100,
    sentences: 10,
    syllables: 150,
    long: 15,
    threeSyllables: 10,
    oneSyllable: 60,
  };
  // Worked out by hand from the published formulas.
  it.each([
    ['LIX', lix, 150, 25],
    ['Wiener 1', wiener1, 150, 2.7155],
    ['Wiener 4', wiener4, 150, 3.707],
    ['Flesch–Douma', fleschDouma, 150, 82.04],
    ['Kandel–Moles', kandelMoles, 150, 86.45],
    ['Fernández Huerta', fernandezHuerta, 200, 76.64],
  ])('%s gives what it should on a text of 100 words', (_name, formula, syllables, expected) => {
    expect(formula({ ...vector, syllables })).toBeCloseTo(expected, 4);
  });
});

describe('syllables', () => {
  // Divided as dictionaries of the languages do.
  it.each([
    ['de', 'Berg', 1],
    ['de', 'leichter', 2],
    ['de', 'Kettenblatt', 3],
    ['de', 'Äpfel', 2],
    ['de', 'Bäume', 2],
    ['de', 'schwindlig', 2],
    ['nl', 'heuvel', 2],
    ['nl', 'versnelling', 3],
    ['nl', 'fietsen', 2],
    ['nl', 'lichter', 2],
    ['nl', 'mooie', 2],
    ['nl', 'tweeën', 2],
    ['es', 'subida', 3],
    ['es', 'piñón', 2],
    ['es', 'bicicleta', 4],
    ['es', 'suave', 2],
    ['es', 'veo', 2],
    ['es', 'todavía', 4],
    ['es', 'antes', 2],
    ['es', 'muy', 1],
    ['es', 'aquí', 2],
    ['es', 'ahora', 3],
    ['es', 'siguiente', 3],
    ['es', 'país', 2],
    ['es', 'ciudad', 2],
    ['fr', 'pente', 1],
    ['fr', 'pédales', 2],
    ['fr', 'roulent', 1],
    ['fr', 'le', 1],
    ['fr', 'petite', 2],
  ])('%s: %s has %i', (language, word, syllables) => {
    expect(syllablesOf(word, language)).toBe(syllables);
  });
});

const childrensLevels = BUNDLED.filter(({ level }) => level.audience === 'children').map(
  ({ level }) => level.id,
);

/** Message files with words for children, and which of their messages those are. */
const FOR_CHILDREN: Readonly<Record<string, (id: string) => boolean>> = {
  children: () => true,
  party: () => true,
  debriefChildren: () => true,
  teach: (id) => /^(?:lines-children-(?:say|question|end)|.*-(?:childLines|draw|learnt))$/.test(id),
  ladder: (id) => childrensLevels.some((level) => id.replace(/^[a-z]+-|-\d$/g, '') === level),
};

/** Everything a pattern may say: each choice of it comes up, and numbers are told as one. */
function textsOf(entries: ReadonlyMap<string, Pattern>, pattern: Pattern): readonly string[] {
  const said = (now: Pattern, turn: number): string =>
    typeof now === 'string'
      ? now
      : now
          .map((part) => {
            if (typeof part === 'string') return part;
            if (part.type === 'str') return part.value;
            if (part.type === 'mesg' || part.type === 'term')
              return said(entries.get(part.type === 'term' ? `-${part.name}` : part.name) ?? '', turn);
            if (part.type !== 'select') return '5';
            return said(part.variants[turn % part.variants.length]?.value ?? '', turn);
          })
          .join('');
  // As many turns as the longest choice has.
  return [...new Set(Array.from({ length: 10 }, (_, turn) => said(pattern, turn)))];
}

/** What children read in a file of a language, sentence by sentence. */
function sentencesFor(language: string, file: string): readonly string[] {
  const { body } = new FluentResource(textOf(language, file));
  const entries = new Map(body.map(({ id, value }) => [id, value as Pattern]));
  return [...entries]
    .filter(([id]) => !id.startsWith('-') && FOR_CHILDREN[file]?.(id) === true)
    .flatMap(([, value]) => textsOf(entries, value).flatMap(sentencesIn));
}

const files = languages().flatMap((language) =>
  Object.keys(FOR_CHILDREN)
    // What is not translated yet is said in English, which is looked at as English.
    .filter((file) => textOf(language, file) !== '')
    .map((file) => [language, file] as const),
);

describe.each(files)('what children read in %s/%s.ftl', (language, file) => {
  const sentences = sentencesFor(language, file);

  it('comes in sentences of at most twelve words', () => {
    expect(sentences.length).toBeGreaterThan(10);
    expect(sentences.filter((sentence) => lengthOf(sentence) > 12)).toEqual([]);
  });

  const measure = MEASURES[language];
  it.runIf(measure)('is as easy as books for children of 8 to 12', () => {
    // Titles and words on buttons would make anything look easy.
    const whole = sentences.filter((sentence) => /[.!?…]$/.test(sentence));
    const value = measure?.of(countsOf(whole, language)) ?? NaN;
    expect(value).toBeLessThanOrEqual(measure?.atMost ?? Infinity);
    expect(value).toBeGreaterThanOrEqual(measure?.atLeast ?? -Infinity);
  });
});
