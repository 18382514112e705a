/**
 * Levels to begin with, ids for new ones, and sensible first values for what is added to a road. Pure but for the
 * chance in an id.
 */
import { OWN_LEVEL } from '../../core/level/own.ts';
import type { LevelPiece, PlacedList } from '../../core/level/edit.ts';
import { levelLengthM } from '../../core/level/parse.ts';
import { LEVEL_SCHEMA, type Level } from '../../core/level/schema.ts';

/** Random ending of an id: enough that two helpers never make the same (letters). */
const ID_ENDING = 6;
const LONGEST_SLUG = 48;

/** An id that no other level has, made of a title. Titles in other scripts give no letters; then it is all chance. */
export function freshId(title: string): string {
  const slug = title
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST_SLUG)
    .replace(/^-+|-+$/g, '');
  const bytes = crypto.getRandomValues(new Uint8Array(ID_ENDING));
  const ending = Array.from(bytes, (byte) => (byte % 36).toString(36)).join('');
  return slug === '' ? `level-${ending}` : `${slug}-${ending}`;
}

/** A new road to change. */
export function freshLevel(title: string, sentence: string): Level {
  return {
    schema: LEVEL_SCHEMA,
    id: freshId(title),
    title,
    sentence,
    ...OWN_LEVEL,
    rung: 0,
    joinM: 10,
    pieces: [
      { kind: 'flat', lengthM: 120 },
      { kind: 'pitch', lengthM: 80, slopeRatio: 0.07 },
      { kind: 'flat', lengthM: 120 },
    ],
    stopLinesM: [],
    winds: [],
    surfaces: [],
    hidden: [],
    cues: [],
    light: 'day',
  };
}

/** Another level with the same content; it stands beside the ladder. */
export function copyOf(level: Level, title: string): Level {
  return { ...level, id: freshId(title), title: title.slice(0, 80), rung: 0 };
}

/** Kinds that can be added by hand; a recorded road comes from a file. */
export const PIECE_KINDS = [
  'flat',
  'climb',
  'pitch',
  'rollers',
  'random-pitches',
  'descent',
] as const satisfies readonly LevelPiece['kind'][];
export const PLACED_LISTS: readonly PlacedList[] = ['stopLinesM', 'winds', 'surfaces', 'hidden', 'cues'];

/** A piece as it is added. */
export function freshPiece(kind: (typeof PIECE_KINDS)[number]): LevelPiece {
  switch (kind) {
    case 'flat':
      return { kind, lengthM: 100 };
    case 'climb':
      return { kind, lengthM: 200, slopeRatio: 0.04 };
    case 'pitch':
      return { kind, lengthM: 60, slopeRatio: 0.08 };
    case 'descent':
      return { kind, lengthM: 120, slopeRatio: 0.04 };
    case 'rollers':
      return { kind, lengthM: 400, waveM: 160, steepestRatio: 0.05 };
    case 'random-pitches':
      return { kind, lengthM: 600, pitchCount: 3, gentlestRatio: 0.05, steepestRatio: 0.09 };
  }
}

/** A free stretch of the wanted length near a place, as far as there is one (m). */
export function freeStretch(
  taken: readonly { readonly fromM: number; readonly toM: number }[],
  lengthM: number,
  nearM: number,
  wantedM: number,
): { readonly fromM: number; readonly toM: number } {
  const sorted = taken.toSorted((a, b) => a.fromM - b.fromM);
  const gaps: { fromM: number; toM: number }[] = [];
  let from = 0;
  for (const one of [...sorted, { fromM: lengthM, toM: lengthM }]) {
    if (one.fromM - from >= 1) gaps.push({ fromM: from, toM: one.fromM });
    from = Math.max(from, one.toM);
  }
  const off = (gap: { fromM: number; toM: number }): number =>
    Math.max(0, gap.fromM - nearM, nearM - gap.toM) + (gap.toM - gap.fromM < wantedM ? lengthM : 0);
  const best = gaps.toSorted((a, b) => off(a) - off(b))[0];
  if (best === undefined) return { fromM: 0, toM: lengthM };
  const fromM = Math.round(Math.max(best.fromM, Math.min(nearM, best.toM - wantedM)));
  return { fromM, toM: Math.round(Math.min(best.toM, fromM + wantedM)) };
}

/** The edit that adds something on the road near a place (m). */
export function addPlaced(level: Level, list: PlacedList, nearM: number) {
  const lengthM = levelLengthM(level);
  const add = { kind: 'add-entry' } as const;
  switch (list) {
    case 'stopLinesM':
      return { ...add, list, entry: stopPlace(level.stopLinesM, lengthM, nearM) } as const;
    case 'winds':
      return {
        ...add,
        list,
        entry: { ...freeStretch(level.winds, lengthM, nearM, 100), windMps: 5 },
      } as const;
    case 'surfaces':
      return {
        ...add,
        list,
        entry: { ...freeStretch(level.surfaces, lengthM, nearM, 80), surface: 'gravel' },
      } as const;
    case 'hidden':
      return {
        ...add,
        list,
        entry: { ...freeStretch(level.hidden, lengthM, nearM, 80), sightM: 30 },
      } as const;
    case 'cues':
      return { ...add, list, entry: { atM: Math.round(nearM), cue: 'hill-ahead' } } as const;
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
