/**
 * How easy a text is to read, by formulas made for its language, and what they come to for children of 8 to 12. Formulas
 * see lengths of words and sentences, nothing else: what is within a limit may still be hard, so somebody reads it, too.
 */

/** What the formulas count in a text. */
export interface Counts {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
  /** Words of more than six letters. */
  readonly long: number;
  /** Words of three syllables and more, and of one. */
  readonly threeSyllables: number;
  readonly oneSyllable: number;
}

const perSentence = ({ words, sentences }: Counts): number => words / sentences;
const perWord = ({ words, syllables }: Counts): number => syllables / words;
const share = (some: number, { words }: Counts): number => (100 * some) / words;

/** C.-H. Björnsson, Läsbarhet, 1968: words of a sentence and percent of long words. Low is easy. */
export const lix = (text: Counts): number => perSentence(text) + share(text.long, text);

/** R. Bamberger and E. Vanecek, Lesen – Verstehen – Lernen – Schreiben, 1984, first formula: the school year. */
export const wiener1 = (text: Counts): number =>
  0.1935 * share(text.threeSyllables, text) +
  0.1672 * perSentence(text) +
  0.1297 * share(text.long, text) -
  0.0327 * share(text.oneSyllable, text) -
  0.875;

/** The same, fourth formula. Its scale begins at the fourth school year. */
export const wiener4 = (text: Counts): number =>
  0.2744 * share(text.threeSyllables, text) + 0.2656 * perSentence(text) - 1.693;

/** W. H. Douma, De leesbaarheid van landbouwbladen, 1960, as printed in `dbnl.org` _taa014197701_01_0089. High is easy. */
export const fleschDouma = (text: Counts): number => 206.84 - 77 * perWord(text) - 0.93 * perSentence(text);

/** J. Fernández Huerta, 1959, as `legible.es` has it, with syllables of 100 words. High is easy. */
export const fernandezHuerta = (text: Counts): number =>
  206.84 - 0.6 * 100 * perWord(text) - 1.02 * perSentence(text);

/** L. Kandel and A. Moles, 1958, as `cordial.fr` has it. High is easy. Was judged invalid for children’s texts. */
export const kandelMoles = (text: Counts): number => 207 - 1.015 * perSentence(text) - 73.6 * perWord(text);

/** What is one syllable, by language: good enough for short words, and wrong for some. */
const SYLLABLE: Readonly<Record<string, RegExp>> = {
  de: /au|äu|eu|ei|ai|ie|aa|ee|oo|[aeiouyäöü]/g,
  en: /[aeiouy]+/g,
  // Strong vowels side by side are two, and so is a weak one with an accent.
  es: /[iuü]?[aeoáéó](?:[iuü]|y(?![aeiouáéíóú]))?|[íú]|[iuü]+y?/g,
  // An e at the end, and what makes it many, is silent.
  fr: /(?!(?:e|es|ent)$)[aeiouyàâæéèêëîïôœùûü]+|^[^aeiouyàâéèêîôùû]*e[st]?$/g,
  nl: /aai|ooi|oei|eeu|ieu|aa|ee|oo|uu|ie|oe|eu|ui|ij|ei|au|ou|[aeiouyëïöüéè]/g,
};

/** Letters that are written and not spoken. */
const SILENT: Readonly<Record<string, RegExp>> = { es: /(?<=q)u|(?<=g)u(?=[eiéí])/g };

const wordsIn = (text: string): readonly string[] => text.match(/[\p{L}\p{N}][\p{L}\p{N}’'-]*/gu) ?? [];

/** Sentences of a text; a line is one, too. */
export const sentencesIn = (text: string): readonly string[] =>
  text.split(/(?<=[.!?…])\s+|\n/).filter((part) => wordsIn(part).length > 0);

/** How many words a sentence has. */
export const lengthOf = (sentence: string): number => wordsIn(sentence).length;

/** How many syllables a word of a language has; a number has one. */
export function syllablesOf(word: string, language: string): number {
  const spoken = word.toLowerCase().replace(SILENT[language] ?? /$^/, '');
  return Math.max(1, (spoken.match(SYLLABLE[language] ?? /[aeiouy]+/g) ?? []).length);
}

/** Counts in sentences of a language. */
export function countsOf(sentences: readonly string[], language: string): Counts {
  const words = sentences.flatMap(wordsIn);
  const syllables = words.map((word) => syllablesOf(word, language));
  return {
    words: words.length,
    sentences: sentences.length,
    syllables: syllables.reduce((sum, one) => sum + one, 0),
    long: words.filter((word) => word.length > 6).length,
    threeSyllables: syllables.filter((one) => one >= 3).length,
    oneSyllable: syllables.filter((one) => one === 1).length,
  };
}

interface Measure {
  readonly name: string;
  readonly of: (text: Counts) => number;
  /** The limit, and on which side of it a text is easy enough for children of 8 to 12. */
  readonly atMost?: number;
  readonly atLeast?: number;
}

/** By which measure children’s texts of a language are taken. A language that is not here has none yet. */
export const MEASURES: Readonly<Record<string, Measure>> = {
  // Up to 25 is the range of books for children (Björnsson).
  en: { name: 'LIX', of: lix, atMost: 25 },
  // The fourth school year: children of nine and ten.
  de: { name: 'fourth Wiener Sachtextformel', of: wiener4, atMost: 4 },
  // 80 to 90 is read in the fifth class, as `dbnl.org` has it.
  nl: { name: 'Flesch–Douma', of: fleschDouma, atLeast: 80 },
  // 80 to 90 is read in the fifth class, as `legible.es` has it.
  es: { name: 'Fernández Huerta', of: fernandezHuerta, atLeast: 80 },
  // A warning light, no verdict: judged invalid for children’s texts. Far below what there is, common practice, no source.
  fr: { name: 'Kandel–Moles', of: kandelMoles, atLeast: 60 },
};
