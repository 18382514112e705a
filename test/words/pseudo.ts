/**
 * Two languages nobody speaks, made from English by code: one accented and 40 % longer, one that runs from right to
 * left. They show where text is cut and which layout does not mirror; only tests and scripts speak them.
 */
import type { Entry } from '../../src/words/fill.ts';
import type { WordList } from '../../src/words/words.ts';

/** Accented and longer, or from right to left; the tags are those that are common for such languages. */
export type Pseudo = 'en-XA' | 'ar-XB';

const PLAIN = 'aceinouyACEINOUY';
const ACCENTED = 'åçéîñöûýÅÇÉÎÑÖÛÝ';
const LONGER = 0.4;

const accented = (text: string): string =>
  text.replace(/[a-z]/gi, (letter) => ACCENTED[PLAIN.indexOf(letter)] ?? letter);

/** Each word grows by itself, so that lines may break where they broke before. */
const longer = (text: string): string =>
  text.replace(/\p{L}{2,}/gu, (word) => word + (word.at(-1) ?? '').repeat(Math.ceil(word.length * LONGER)));

/** U+202E and U+202C turn what stands between them around. */
const mirrored = (text: string): string =>
  text.replace(/\p{L}[\p{L}’'-]*/gu, (word) => `\u202e${word}\u202c`);

const disguise = (text: string, pseudo: Pseudo): string =>
  pseudo === 'en-XA' ? longer(accented(text)) : mirrored(text);

/** Only what is read is changed: names of values, choices and terms stay. */
function pattern(value: Entry['value'], pseudo: Pseudo): Entry['value'] {
  if (typeof value === 'string') return disguise(value, pseudo);
  if (!Array.isArray(value)) return value;
  return value.map((part: unknown) => {
    if (typeof part === 'string') return disguise(part, pseudo);
    if (typeof part !== 'object' || part === null || !('variants' in part)) return part;
    const variants = (part.variants as readonly { value: Entry['value'] }[]).map((one) => ({
      ...one,
      value: pattern(one.value, pseudo),
    }));
    return { ...part, variants };
  }) as Entry['value'];
}

/** English messages as they are in such a language. */
export function pseudoWords(english: WordList, pseudo: Pseudo): WordList {
  return english.map(([id, value, attributes]) =>
    id === 'direction'
      ? [id, pseudo === 'ar-XB' ? 'rtl' : 'ltr']
      : attributes === undefined
        ? [id, pattern(value, pseudo)]
        : [id, pattern(value, pseudo), attributes],
  );
}
