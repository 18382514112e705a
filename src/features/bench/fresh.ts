/**
 * Levels to begin with, ids for new ones, and sensible first values for what is added to a road. Pure but for the
 * chance in an id and the language of the page.
 */
import { BARE_ROAD, OWN_LEVEL } from '../../core/level/own.ts';
import type { LevelPiece, PlacedList } from '../../core/level/edit.ts';
import { type Piece, pieceLengthM } from '../../core/course/pieces.ts';
import { levelLengthM } from '../../core/level/parse.ts';
import { LEVEL_SCHEMA, type Level } from '../../core/level/schema.ts';
import { placeOfProblem } from './fields.ts';
import { spokenLanguage } from '../../words/words.ts';
import type { Selection } from './levelEditor.ts';

/** Random ending of an id: enough that two helpers never make the same (letters). */
const ID_ENDING = 6;
const LONGEST_SLUG = 48;

/** An id that no other level has, made of a title. Titles in other scripts give no letters; then it is all chance. */
export function freshId(title: string): string {
  const slug = title
    .normalize('NFD')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/œ/g, 'oe')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST_SLUG)
    .replace(/^-+|-+$/g, '');
  const bytes = crypto.getRandomValues(new Uint8Array(ID_ENDING));
  const ending = Array.from(bytes, (byte) => (byte % 36).toString(36)).join('');
  return slug === '' ? `level-${ending}` : `${slug}-${ending}`;
}

/** A new road to change, with words in the language that is spoken now. */
export function freshLevel(title: string, sentence: string): Level {
  return {
    schema: LEVEL_SCHEMA,
    id: freshId(title),
    title,
    sentence,
    lang: spokenLanguage(),
    ...OWN_LEVEL,
    ...BARE_ROAD,
    pieces: [
      { kind: 'flat', lengthM: 120 },
      { kind: 'pitch', lengthM: 80, slopeRatio: 0.07 },
      { kind: 'flat', lengthM: 120 },
    ],
  };
}

/** Another level with the same content; it stands beside the ladder. */
export function copyOf(level: Level, title: string): Level {
  return { ...level, id: freshId(title), title: title.slice(0, 80), rung: 0 };
}

/** Pieces as they are added by hand, in the order they are offered; a recorded road comes from a file. */
export const FRESH_PIECES: {
  readonly [Kind in Exclude<Piece['kind'], 'recorded'>]: Extract<LevelPiece, { readonly kind: Kind }>;
} = {
  flat: { kind: 'flat', lengthM: 100 },
  climb: { kind: 'climb', lengthM: 200, slopeRatio: 0.04 },
  pitch: { kind: 'pitch', lengthM: 60, slopeRatio: 0.08 },
  rollers: { kind: 'rollers', lengthM: 400, waveM: 160, steepestRatio: 0.05 },
  'random-pitches': {
    kind: 'random-pitches',
    lengthM: 600,
    pitchCount: 3,
    gentlestRatio: 0.05,
    steepestRatio: 0.09,
  },
  descent: { kind: 'descent', lengthM: 120, slopeRatio: 0.04 },
};
export const PLACED_LISTS: readonly PlacedList[] = ['stopLinesM', 'winds', 'surfaces', 'hidden', 'cues'];

/** A stretch of road (m from the start). */
interface Stretch {
  readonly fromM: number;
  readonly toM: number;
}

/** The free part of a stretch, or, where all of it is taken, the free road nearest to it (m). */
export function freeStretch(taken: readonly Stretch[], lengthM: number, wanted: Stretch): Stretch {
  const sorted = taken.toSorted((a, b) => a.fromM - b.fromM);
  const gaps: Stretch[] = [];
  let from = 0;
  for (const one of [...sorted, { fromM: lengthM, toM: lengthM }]) {
    if (one.fromM - from >= 1) gaps.push({ fromM: from, toM: one.fromM });
    from = Math.max(from, one.toM);
  }
  const within = ({ fromM, toM }: Stretch): number =>
    Math.min(toM, wanted.toM) - Math.max(fromM, wanted.fromM);
  const best = gaps.toSorted((a, b) => within(b) - within(a))[0];
  if (best === undefined) return { fromM: 0, toM: lengthM };
  if (within(best) >= 1)
    return { fromM: Math.max(best.fromM, wanted.fromM), toM: Math.min(best.toM, wanted.toM) };
  const wantedM = wanted.toM - wanted.fromM;
  return best.fromM >= wanted.toM
    ? { fromM: best.fromM, toM: Math.min(best.toM, best.fromM + wantedM) }
    : { fromM: Math.max(best.fromM, best.toM - wantedM), toM: best.toM };
}

/** So long is what lies on the road where nothing is selected, and from so far on (m). */
const USUAL = { fromM: 60, toM: 160 };

/** Where something new comes to lie: on the selected piece, or on the piece under what is selected. */
export function placeForNew(level: Level, selection: Selection | null): Stretch {
  const place = selection === null ? null : placeOfProblem(level, selection);
  if (place === null) return { fromM: USUAL.fromM, toM: Math.min(USUAL.toM, levelLengthM(level)) };
  if (place.toM > place.fromM) return place;
  let startM = 0;
  for (const piece of level.pieces) {
    const endM = startM + pieceLengthM(piece);
    if (place.fromM <= endM) return { fromM: startM, toM: endM };
    startM = endM;
  }
  return place;
}

/** The edit that adds something on a stretch of road: it fills the stretch, or, where it is a place, lies in its middle. */
export function addPlaced(level: Level, list: PlacedList, on: Stretch) {
  const lengthM = levelLengthM(level);
  const add = { kind: 'add-entry' } as const;
  switch (list) {
    case 'stopLinesM':
      return {
        ...add,
        list,
        entry: stopPlace(level.stopLinesM, lengthM, (on.fromM + on.toM) / 2),
      } as const;
    case 'winds':
      return { ...add, list, entry: { ...freeStretch(level.winds, lengthM, on), windMps: 5 } } as const;
    case 'surfaces':
      return {
        ...add,
        list,
        entry: { ...freeStretch(level.surfaces, lengthM, on), surface: 'gravel' },
      } as const;
    case 'hidden':
      return { ...add, list, entry: { ...freeStretch(level.hidden, lengthM, on), sightM: 30 } } as const;
    case 'cues':
      return {
        ...add,
        list,
        entry: { atM: Math.round((on.fromM + on.toM) / 2), cue: 'hill-ahead' },
      } as const;
  }
}

/** A place with 40 m of road to every other line and to both ends, as near as can be (m). */
function stopPlace(stopLinesM: readonly number[], lengthM: number, nearM: number): number {
  const fits = (atM: number): boolean =>
    atM >= 40 && atM <= lengthM - 40 && stopLinesM.every((other) => Math.abs(other - atM) >= 40);
  for (let off = 0; off <= lengthM; off += 5)
    for (const atM of [nearM + off, nearM - off]) if (fits(Math.round(atM))) return Math.round(atM);
  return Math.round(nearM);
}
