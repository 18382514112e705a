/**
 * Sentences for people, from the message files in `assets/words`: `const say = words('start')`, then `say('ride')` where
 * the sentence is needed, never before, so that a change of language reaches it. Here they are held and filled in; which
 * language is spoken, and where its files come from, is decided by whoever hands them over (`take`, `speak`).
 */
import { type Book, type Entry, fill, type Values } from './fill.ts';
import type { Messages } from './messages.ts';

/** Name of a message file without its ending. */
type WordFile = keyof Messages;
/** A message file as it travels: names with their patterns, and the attributes that some terms have. */
export type WordList = readonly (readonly [
  id: string,
  value: Entry['value'],
  attributes?: Entry['attributes'],
])[];

type Filled<Message> = [Message] extends [null] ? [] : [values: Exclude<Message, null>];
/** Messages in which nothing is filled in. */
type Plain<File> = { [Id in keyof File]: File[Id] extends null ? Id : never }[keyof File];

export interface Say<File> {
  (id: Plain<File>): string;
  <Id extends keyof File>(id: Id, ...values: Filled<File[Id]>): string;
  /** A message of several lines, each a sentence of its own. */
  lines<Id extends keyof File>(id: Id, ...values: Filled<File[Id]>): readonly string[];
  /** A message that is named by a code of the core, filled with the values that came with the code. */
  coded(id: keyof File, values: Values): string;
  /** Whether there is such a message, for names that are not known beforehand. */
  has(id: string): id is Plain<File> & string;
}

/** Under this name a file says that some of its messages are English, because they have no translation yet. */
export const UNTRANSLATED = '-untranslated';

/** What messages are written in first, and what stands in for a translation that is missing. */
export const ENGLISH = 'en';
/** Of every language what has come, by file. */
const here = new Map<string, Map<string, Book>>();
const wanted = new Set<WordFile>();
let language = ENGLISH;
let locale = ENGLISH;

/** A name of somebody or something that runs the other way would turn the sentence around it. */
const runsLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;
const isolated = (value: string | number): string | number =>
  typeof value === 'string' && runsLeft.test(value) ? `\u2068${value}\u2069` : value;

/** The messages of a file. They are wanted from now on: whoever fetches more code fetches its words with it. */
export function words<File extends WordFile>(file: File): Say<Messages[File]> {
  wanted.add(file);
  const book = (): Book | undefined => here.get(language)?.get(file);
  const say = (id: string, values: Values = {}): string => {
    const now = book();
    const entry = now?.entries.get(id);
    // On its way; the page is drawn anew when it is here.
    if (now === undefined) return '';
    // A fault of ours that a test finds; the page goes on all the same.
    if (entry === undefined) return `${file} ${id}`;
    return fill(
      now,
      entry.value,
      Object.fromEntries(Object.entries(values).map(([name, value]) => [name, isolated(value)])),
    );
  };
  return Object.assign(say, {
    lines: (id: string, values?: Values) => say(id, values).split('\n'),
    coded: say,
    has: (id: string) => book()?.entries.has(id) === true,
  }) as unknown as Say<Messages[File]>;
}

/** Files of this language that are wanted and have not come. */
export const missingWords = (of: string): readonly WordFile[] =>
  [...wanted].filter((file) => here.get(of)?.has(file) !== true);

/** Takes a file of a language in; its numbers are written as they are at a place. */
export function take(of: string, file: string, list: WordList, locale = of): void {
  const entries = new Map(list.map(([id, value, attributes = {}]) => [id, { value, attributes }]));
  here.set(of, (here.get(of) ?? new Map<string, Book>()).set(file, { entries, locale }));
}

/** From now on everything is said in this language, and numbers are written as they are at this place. */
export function speak(of: string, at = of): void {
  language = of;
  locale = at;
}

/** What is spoken, as the tag of a document. */
export const spokenLanguage = (): string => language;
/** How numbers and lists are written. */
export const spokenLocale = (): string => locale;
