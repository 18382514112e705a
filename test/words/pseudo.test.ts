/** Pseudo-languages say every message with the same values, longer or the other way round. */
import { expect, it } from 'vitest';
import { carriedWords, ENGLISH } from '../../assets/words/carry.ts';
import { fill } from '../../src/words/fill.ts';
import { pseudoWords, type Pseudo } from './pseudo.ts';

const book = (pseudo: Pseudo | null) => {
  const english = carriedWords(ENGLISH, 'common');
  const carried = pseudo === null ? english : pseudoWords(english, pseudo);
  const entries = new Map(carried.map(([id, value, attributes = {}]) => [id, { value, attributes }]));
  return (id: string, values = {}): string =>
    fill({ entries, locale: ENGLISH }, entries.get(id)?.value ?? '', values);
};

it('one is accented and 40 % longer, with what is filled in left as it is', () => {
  const say = book('en-XA');
  expect(say('nav-levels')).toBe('Lévélssss');
  expect(say('profile', { steepest: '8 %' })).toContain('8 %');
  expect(say('bike-gears', { rings: 1, rear: 7, where: 'hub' })).toMatch(/^7 géårssss? îñsîdé+$/);
  const all = carriedWords(ENGLISH, 'common').map(([id]) => id);
  const length = (one: (id: string) => string): number => all.map(one).join('').length;
  expect(length(say) / length(book(null))).toBeGreaterThan(1.35);
});

it('one runs from right to left, and says so', () => {
  const say = book('ar-XB');
  expect(say('direction')).toBe('rtl');
  expect(say('nav-levels')).toBe('\u202eLevels\u202c');
});
