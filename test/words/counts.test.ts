/** One thing is not told as many: every message is written with one and with two of each value it takes. */
import { describe, expect, it } from 'vitest';
import { carriedWords, ENGLISH, languages, wordFiles } from '../../assets/words/carry.ts';
import { type Book, fill } from '../../src/words/fill.ts';

/** What a message says with one and with two of a value, which is written as # in both. */
interface Told {
  /** File, message and value. */
  readonly where: string;
  readonly one: string;
  readonly two: string;
}

/** Names of the values in a pattern. */
function valuesIn(pattern: unknown): ReadonlySet<string> {
  const found = new Set<string>();
  JSON.stringify(pattern, (_, part: { readonly type?: string; readonly name?: string } | null) => {
    if (part?.type === 'var' && part.name !== undefined) found.add(part.name);
    return part;
  });
  return found;
}

function toldIn(language: string): readonly Told[] {
  return wordFiles().flatMap((file) => {
    const carried = carriedWords(language, file);
    const book: Book = {
      entries: new Map(carried.map(([id, value, attributes = {}]) => [id, { value, attributes }])),
      locale: language,
    };
    return carried.flatMap(([id, value]) => {
      if (id.startsWith('-')) return [];
      const names = valuesIn(value);
      return [...names].flatMap((name) => {
        const told = (number: number): string =>
          fill(book, value, Object.fromEntries([...names].map((one) => [one, one === name ? number : '…'])));
        const [one, two] = [told(1).replaceAll('1', '#'), told(2).replaceAll('2', '#')] as const;
        return one.includes('#') ? [{ where: `${file} ${id} ${name}`, one, two }] : [];
      });
    });
  });
}

/** Things that are counted. */
const MANY =
  /# (apples|changes|codes|days|elements|gears|hills|levels|lines|metres|minutes|pairs|pitches|places|points|riders|rides|rings|seconds|shifts|sprockets|teeth|times|tracks|turns)\b/;
/** Nobody reads these with a one: limits, tenths, and what only two or more are told of. */
const NEVER_ONE: readonly string[] = [
  'bench road-facts points',
  'bike problem-ring-size teeth',
  'bike problem-sprocket-size teeth',
  'bike problem-too-many-sprockets count',
  'bike problem-too-narrow count',
  'bike problem-too-narrow mostTeeth',
  'bike tap-found rpm',
  'bike warning-big-step toTeeth',
  'bike warning-capacity capacityTeeth',
  'clinic minutes-tooLong most',
  'clinic picture-bins high',
  'clinic picture-changeSays chance',
  'clinic report-attempts chance',
  'debrief change-dawdle times',
  'debrief hold-pace times',
  'debrief hold-tooSlow times',
  'gearcheck capacity teeth',
  'gearcheck help-none ring',
  'gearcheck limit-capacity have',
  'gearcheck limit-rings have',
  'gearcheck you high',
  'progress check-chance points',
  'progress marks-shown all',
  'road ride-changes changes',
  'roadFile noisy points',
  'roadFile several-tracks trackCount',
  'roadFile too-deep most',
  'roadFile too-many-points most',
  'settings labels-widerBand turns',
  'teach planTitle minutes',
  'two series of',
];
/** A name stands there, or another part of the message says how many there are. */
const NOT_COUNTED = ['clinic round-chooseWho name', 'common bike-gears rear'];
/** In both the noun stands with the other number, as in "1 cycliste sur 3", or is the same for one and for many. */
const GERMAN_AND_FRENCH = [
  'clinic picture-caught all',
  'clinic picture-wrong-late all',
  'clinic picture-wrong-early all',
  'clinic picture-barOf-tooEarly all',
  'clinic picture-barOf-aboutRight all',
  'clinic picture-barOf-tooLate all',
  'clinic picture-timingCount all',
  'clinic picture-answer-better all',
  'debriefChildren change-fidget changes',
  'kept takenBack already',
  'kept refused refused',
  'levels best-not-passed total',
];
/** The word is the same for one and for many, or the sentence has none. */
const SAME_FOR_MANY: Readonly<Record<string, readonly string[]>> = {
  de: [
    ...GERMAN_AND_FRENCH,
    'bike tap-count count',
    'problems schema-characters-most most',
    'problems schema-characters-least least',
    'problems schema-more count',
  ],
  es: ['kept takenBack already', 'levels best-not-passed total'],
  fr: [...GERMAN_AND_FRENCH, 'clinic picture-change all'],
  nl: [
    'clinic picture-timingCount all',
    'clinic picture-answer-better all',
    'debriefChildren change-fidget changes',
    'debriefChildren why-many-shifts changes',
    'kept takenBack already',
    'kept refused refused',
    'levels best-not-passed total',
  ],
};

const english = toldIn(ENGLISH);

describe('a message that counts', () => {
  it('does not say "1 riders" in English', () => {
    const wrong = english.filter(({ one, two }) => one === two && MANY.test(one));
    expect(wrong.map(({ where }) => where).toSorted()).toEqual([...NEVER_ONE, ...NOT_COUNTED].toSorted());
  });

  it.each(languages().filter((language) => language !== ENGLISH))(
    'tells one from many in %s where English does',
    (language) => {
      const own = new Map(toldIn(language).map((told) => [told.where, told]));
      const wrong = english.flatMap(({ where, one, two }) => {
        const there = own.get(where);
        if (one === two || there === undefined || there.one !== there.two) return [];
        return SAME_FOR_MANY[language]?.includes(where) === true ? [] : [`${where}: ${there.one}`];
      });
      expect(wrong).toEqual([]);
    },
  );
});
