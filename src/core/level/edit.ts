/**
 * Editing a level at the bench: one edit at a time, every one of which can be undone and redone. An edit may leave
 * a level that cannot be ridden yet; what is wrong with it is for `parseLevel` and `lintLevel` to say.
 */
import { pieceLengthM } from '../course/pieces.ts';
import type { Level } from './schema.ts';

export type LevelPiece = Level['pieces'][number];
/** Lists of things that lie at a place of the road. */
export type PlacedList = 'stopLinesM' | 'winds' | 'surfaces' | 'hidden' | 'cues';
type Entry<L extends PlacedList> = Level[L][number];
type PlacedEdit = {
  [L in PlacedList]:
    | { readonly kind: 'add-entry'; readonly list: L; readonly entry: Entry<L> }
    | { readonly kind: 'change-entry'; readonly list: L; readonly index: number; readonly entry: Entry<L> };
}[PlacedList];

/** What can be done to a level. `index` counts from 0. */
export type LevelEdit =
  /** Anything but road and places: title, sentence, seed, joins, aids, weights … */
  | { readonly kind: 'set'; readonly values: Partial<Omit<Level, 'schema' | 'pieces' | PlacedList>> }
  /** With `follow`, what lies behind the piece keeps its distance from the end of the road. */
  | {
      readonly kind: 'add-piece' | 'change-piece';
      readonly index: number;
      readonly piece: LevelPiece;
      readonly follow?: boolean;
    }
  | { readonly kind: 'remove-piece'; readonly index: number; readonly follow?: boolean }
  | { readonly kind: 'move-piece'; readonly from: number; readonly to: number }
  | PlacedEdit
  | { readonly kind: 'remove-entry'; readonly list: PlacedList; readonly index: number };

/** A level with what it was before and what was undone. Plain data. */
export interface LevelHistory {
  readonly past: readonly Level[];
  readonly present: Level;
  readonly future: readonly Level[];
  /** The gesture that made the present, if it may still go on. */
  readonly gesture: string | null;
}

export function startHistory(level: Level): LevelHistory {
  return { past: [], present: level, future: [], gesture: null };
}

/**
 * Does one edit. An edit that changes nothing, or points beyond a list, gives back the same history.
 * @param gesture edits of one gesture (a handle being dragged) are undone together; name it freshly each time
 */
export function applyEdit(
  history: LevelHistory,
  edit: LevelEdit,
  gesture: string | null = null,
): LevelHistory {
  return replaceLevel(history, edited(history.present, edit), gesture);
}

/** Puts another level in the place of the present one, for instance one that was typed as text. */
export function replaceLevel(history: LevelHistory, present: Level, gesture: string | null): LevelHistory {
  if (present === history.present) return history;
  const goesOn = gesture !== null && gesture === history.gesture && history.past.length > 0;
  const past = goesOn ? history.past : [...history.past, history.present];
  return { past, present, future: [], gesture };
}

/** Takes the last edit back; the same history if there is none. */
export function undo(history: LevelHistory): LevelHistory {
  const present = history.past.at(-1);
  if (present === undefined) return history;
  const future = [history.present, ...history.future];
  return { past: history.past.slice(0, -1), present, future, gesture: null };
}

/** Does again what was taken back; the same history if nothing was. */
export function redo(history: LevelHistory): LevelHistory {
  const [present, ...future] = history.future;
  if (present === undefined) return history;
  return { past: [...history.past, history.present], present, future, gesture: null };
}

function edited(level: Level, edit: LevelEdit): Level {
  switch (edit.kind) {
    case 'set':
      return withValues(level, edit.values);
    case 'move-piece':
      return withMoved(level, edit.from, edit.to);
    case 'add-piece':
      return isIndex(edit.index, level.pieces.length + 1)
        ? withPieces(level, edit.index, 0, [edit.piece], edit.follow)
        : level;
    case 'change-piece':
    case 'remove-piece':
      return isIndex(edit.index, level.pieces.length)
        ? withPieces(level, edit.index, 1, edit.kind === 'change-piece' ? [edit.piece] : [], edit.follow)
        : level;
    case 'add-entry':
      return { ...level, [edit.list]: [...level[edit.list], edit.entry] };
    case 'change-entry':
    case 'remove-entry': {
      const list: readonly unknown[] = level[edit.list];
      const entries = edit.kind === 'change-entry' ? [edit.entry] : [];
      return isIndex(edit.index, list.length)
        ? { ...level, [edit.list]: list.toSpliced(edit.index, 1, ...entries) }
        : level;
    }
  }
}

function withValues(level: Level, values: Partial<Level>): Level {
  const differs = Object.entries(values).some(([key, value]) => level[key as keyof Level] !== value);
  return differs ? { ...level, ...values } : level;
}

function withMoved(level: Level, from: number, to: number): Level {
  const piece = level.pieces[from];
  if (piece === undefined || from === to || !isIndex(to, level.pieces.length)) return level;
  return { ...level, pieces: level.pieces.toSpliced(from, 1).toSpliced(to, 0, piece) };
}

function withPieces(
  level: Level,
  index: number,
  removed: number,
  added: readonly LevelPiece[],
  follow = false,
): Level {
  const pieces = level.pieces.toSpliced(index, removed, ...added);
  if (!follow) return { ...level, pieces };
  const lengthOf = (list: readonly LevelPiece[]): number => list.reduce((sum, p) => sum + pieceLengthM(p), 0);
  const behindM = lengthOf(level.pieces.slice(0, index + removed));
  return { ...shiftedBehind(level, behindM, lengthOf(pieces) - lengthOf(level.pieces)), pieces };
}

/** Moves every place at or behind a distance along with the road there. */
function shiftedBehind(level: Level, behindM: number, byM: number): Level {
  const shift = (atM: number): number => (atM >= behindM ? Math.max(0, atM + byM) : atM);
  const both = <S extends { fromM: number; toM: number }>(stretch: S): S => ({
    ...stretch,
    fromM: shift(stretch.fromM),
    toM: shift(stretch.toM),
  });
  return {
    ...level,
    stopLinesM: level.stopLinesM.map(shift),
    winds: level.winds.map(both),
    surfaces: level.surfaces.map(both),
    hidden: level.hidden.map(both),
    cues: level.cues.map((cue) => ({ ...cue, atM: shift(cue.atM) })),
  };
}

function isIndex(index: number, length: number): boolean {
  return Number.isInteger(index) && index >= 0 && index < length;
}
