/**
 * Message files (Fluent, `projectfluent.org`) made ready to be carried to a page: names and patterns, without the text
 * they were read from. What a language does not have yet is English there, and is counted.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { FluentResource } from '@fluent/bundle';
import type { Entry } from '../../src/words/fill.ts';
import { type WordList, ENGLISH, UNTRANSLATED } from '../../src/words/words.ts';

export { ENGLISH };

const here = `${import.meta.dirname}/`;
/** Languages that have a folder, here or where somebody keeps words of their own. */
export const languages = (folder = here): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []));

/** Message files there are, without their ending. */
export const wordFiles = (): readonly string[] =>
  readdirSync(`${here}${ENGLISH}`).flatMap((name) => (name.endsWith('.ftl') ? [name.slice(0, -4)] : []));

/** The text of a message file; empty where a language has none. */
export function textOf(language: string, file: string, folder = here): string {
  try {
    return readFileSync(`${folder}${language}/${file}.ftl`, 'utf8');
  } catch (error) {
    if (language === ENGLISH) throw error;
    return '';
  }
}

/** Messages of a text by name. */
const read = (text: string): Map<string, WordList[number]> =>
  new Map(
    // The parser's own types say less of what they are.
    (new FluentResource(text).body as unknown as readonly (Entry & { readonly id: string })[]).map(
      ({ id, value, attributes }) => [
        id,
        Object.keys(attributes).length === 0 ? [id, value] : [id, value, attributes],
      ],
    ),
  );

/** A message file as pages get it. */
export function carriedWords(language: string, file: string, folder = here): WordList {
  const english = read(textOf(ENGLISH, file));
  if (language === ENGLISH) return [...english.values()];
  const own = read(textOf(language, file, folder));
  const left = [...english].filter(([id]) => !own.has(id) && !id.startsWith('-'));
  const count: WordList = left.length === 0 ? [] : [[UNTRANSLATED, String(left.length)]];
  return [...new Map([...english, ...own]).values(), ...count];
}
