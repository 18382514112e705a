/**
 * Fetches the words of a language: at first those of the device or of the choice, then those of every page with the
 * page. Another language is spoken once all that is in use has come; until then the one before stays.
 */
import {
  type WordList,
  ENGLISH,
  missingWords,
  speak,
  spokenLanguage,
  take,
  UNTRANSLATED,
} from '../../words/words.ts';

/** Where the build has put them; see `.ci/wordsPlugin.ts`. */
declare const WORDS_OF_SITE: {
  readonly folder: string;
  readonly languages: readonly string[];
  /** Message files that lie together, because the first page wants them all. */
  readonly first: readonly string[];
};
const { folder, languages: LANGUAGES, first } = WORDS_OF_SITE;

/** What was chosen, for the next visit: settings come from the database, later than the first words. */
const KEPT_AS = 'before-the-hill.language';

function chosenBefore(): string {
  try {
    return localStorage.getItem(KEPT_AS) ?? '';
  } catch {
    return '';
  }
}

function keepChoice(choice: string): void {
  try {
    if (choice === '') localStorage.removeItem(KEPT_AS);
    else localStorage.setItem(KEPT_AS, choice);
  } catch {
    // The next visit begins in the language of the device, and changes when the settings have come.
  }
}

/** Tags of the device, the most wanted first. */
const wishes = (): readonly string[] => navigator.languages ?? [navigator.language];
const plain = (tag: string): string => tag.toLowerCase().split('-')[0] ?? tag;

/** The language that is spoken for a choice; an empty one leaves it to the device. */
function languageFor(choice: string): string {
  const wanted = [choice, ...wishes().flatMap((tag) => [tag, plain(tag)])];
  return wanted.find((language) => LANGUAGES.includes(language)) ?? ENGLISH;
}

/** How people write numbers who speak it here: `de-CH` where the device says so. */
const placeOf = (language: string): string => wishes().find((tag) => plain(tag) === language) ?? language;

/** Languages in which something is English, because nobody has translated it yet. */
const unfinished = new Set<string>();

async function bring(language: string, files = missingWords(language)): Promise<void> {
  const place = placeOf(language);
  const come = async (name: string): Promise<void> => {
    const answer = await fetch(`${folder}${language}/${name}.json`);
    if (!answer.ok) throw new Error(`no words: ${name} ${language}`);
    const files = (await answer.json()) as Readonly<Record<string, WordList>>;
    for (const [file, list] of Object.entries(files)) {
      if (list.some(([id]) => id === UNTRANSLATED)) unfinished.add(language);
      take(language, file, list, place);
    }
  };
  const names = files.map((file) => (first.includes(file) ? 'first' : file));
  await Promise.all([...new Set(names)].map(come));
}

/** The language that was asked for last, and whether it could not be fetched. */
let asked = languageFor(chosenBefore());
let failed = false;

interface LanguageShown {
  readonly all: readonly string[];
  /** Not everything is translated. */
  readonly unfinished: boolean;
  /** Its words did not come. */
  readonly failed: boolean;
}

export const languageShown = (): LanguageShown => ({
  all: LANGUAGES,
  unfinished: unfinished.has(spokenLanguage()),
  failed,
});

/** Fetches all words that are wanted and not here: after code that says something has come. Asked again, it tries again. */
export async function bringWords(): Promise<void> {
  await Promise.all([...new Set([asked, spokenLanguage()])].map((language) => bring(language)));
}

/** Fetches all other languages, one after the other, so that a choice that is about to be made is heard at once. */
export async function bringAll(): Promise<void> {
  for (const language of LANGUAGES) await bring(language);
}

/** The first words are asked for again after so long (ms). */
const AGAIN_AFTER_MS = 3000;

/**
 * Begins to speak. Until words come, the page says by itself what a person can do; English is tried as well. Where the
 * start page comes first, its words do: those of a ride, whose code is there already, follow while it is looked at.
 */
export async function firstWords(startComesFirst: boolean): Promise<void> {
  for (const language of [asked, ENGLISH]) {
    try {
      const files = missingWords(language);
      await bring(language, startComesFirst ? files.filter((file) => first.includes(file)) : files);
      asked = language;
      speak(language, placeOf(language));
      // What does not come now is asked for again when a ride begins.
      bringWords().catch(() => undefined);
      return;
    } catch {
      // The next one, or all over again.
    }
  }
  await new Promise((resolve) => window.setTimeout(resolve, AGAIN_AFTER_MS));
  return firstWords(startComesFirst);
}

/** Changes the language to what was chosen; the one before stays where its words do not come. Whoever asks later wins. */
export async function changeLanguage(choice: string): Promise<void> {
  keepChoice(choice);
  const language = languageFor(choice);
  asked = language;
  // What is opened meanwhile brings its words itself.
  const isMissing = await bring(language).then(
    () => false,
    () => true,
  );
  if (asked !== language) return;
  failed = isMissing;
  if (failed) asked = spokenLanguage();
  else speak(language, placeOf(language));
}
