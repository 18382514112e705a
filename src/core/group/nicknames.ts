/**
 * Names for a group that asks nobody for a real one: a colour and an animal from two short lists, or a few
 * characters of the rider's own choice. The words for colours and animals are the pages' business.
 */
import { seededRandom } from '../math/random.ts';
import { cleanText, isCleanText } from './texts.ts';

/** Animals that children can tell apart. */
const ANIMALS = [
  'badger',
  'beaver',
  'bee',
  'crane',
  'crow',
  'deer',
  'duck',
  'fox',
  'frog',
  'goat',
  'hare',
  'hedgehog',
  'heron',
  'horse',
  'lizard',
  'lynx',
  'marten',
  'mole',
  'mouse',
  'otter',
  'owl',
  'seal',
  'snail',
  'squirrel',
  'stork',
  'swan',
  'swift',
  'toad',
  'trout',
  'weasel',
  'wolf',
  'wren',
] as const;

const COLOURS = ['amber', 'blue', 'brown', 'green', 'grey', 'red', 'violet', 'white'] as const;

export type Animal = (typeof ANIMALS)[number];
type Colour = (typeof COLOURS)[number];

/** Longest name of a rider's own choice (characters). */
export const OWN_NICKNAME_CHARACTERS = 20;
/** Stands before a name of the rider's own choice, so that it never looks like one from the lists. */
const OWN = '~';

export type Nickname =
  | { readonly kind: 'listed'; readonly colour: Colour; readonly animal: Animal }
  | { readonly kind: 'own'; readonly text: string };

/** How a name of the rider's own choice is written in files; null where nothing readable is left of it. */
export function ownNickname(text: string): string | null {
  const clean = cleanText(text, OWN_NICKNAME_CHARACTERS);
  return clean === '' ? null : OWN + clean;
}

/** Takes a written nickname apart, or null if it is none. */
export function readNickname(id: string): Nickname | null {
  if (id.startsWith(OWN)) {
    const text = id.slice(OWN.length);
    return text !== '' && isCleanText(text, OWN_NICKNAME_CHARACTERS) ? { kind: 'own', text } : null;
  }
  const dash = id.indexOf('-');
  const colour = COLOURS.find((name) => name === id.slice(0, dash));
  const animal = ANIMALS.find((name) => name === id.slice(dash + 1));
  return dash < 0 || colour === undefined || animal === undefined ? null : { kind: 'listed', colour, animal };
}

/**
 * Some free nicknames to choose from, as different animals as possible in colours that take turns, so that no colour
 * is common in a group; the same seed offers the same.
 */
export function offerNicknames(taken: readonly string[], count: number, seed: number): string[] {
  const random = seededRandom(seed);
  const used = new Set(taken);
  const names = taken.flatMap((id) => {
    const name = readNickname(id);
    return name?.kind === 'listed' ? [name] : [];
  });
  const rarestFirst = <T>(all: readonly T[], times: (one: T) => number): T[] =>
    all
      .map((one) => ({ one, order: times(one) + random() }))
      .sort((a, b) => a.order - b.order)
      .map(({ one }) => one);
  const animals = rarestFirst(ANIMALS, (animal) => names.filter((name) => name.animal === animal).length);
  const colours = rarestFirst(COLOURS, (colour) => names.filter((name) => name.colour === colour).length);
  const offered: string[] = [];
  for (let i = 0; i < ANIMALS.length * COLOURS.length && offered.length < count; i += 1) {
    const animal = animals[i % animals.length] as Animal;
    // One colour further on every round through the animals, so that every pair comes once.
    const colour = colours[(i + Math.floor(i / animals.length)) % colours.length] as Colour;
    // As it is written in files: `red-fox`.
    const id = `${colour}-${animal}`;
    if (!used.has(id)) offered.push(id);
  }
  return offered;
}
