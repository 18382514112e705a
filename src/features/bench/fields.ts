/**
 * The numbers of whatever is selected, each with its limits, its edit and its handle on the profile: one list that
 * form, handles and arrow keys share. Pure.
 */
import { pieceLengthM, roadForPitches } from '../../core/course/pieces.ts';
import type { LevelEdit, LevelPiece } from '../../core/level/edit.ts';
import { levelLengthM } from '../../core/level/parse.ts';
import { LONGEST_LEVEL_M, type Level, STEEPEST_RATIO } from '../../core/level/schema.ts';
import type { Selection } from './levelEditor.ts';

type FieldName =
  | 'lengthM'
  | 'slope'
  | 'waveM'
  | 'steepest'
  | 'gentlest'
  | 'pitchCount'
  | 'beforeEach'
  | 'fromM'
  | 'toM'
  | 'atM'
  | 'windMps'
  | 'sightM';

/** One number. Percent are percent here, not ratios. */
export interface LevelField {
  readonly name: FieldName;
  readonly unit: 'm' | 'percent' | 'mps' | 'count';
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  /** The edit that gives it another value, which must lie between the limits. */
  readonly edit: (value: number) => LevelEdit;
  /** Where its handle is and which way it moves, or null where it has none. */
  readonly handle: { readonly axis: 'along' | 'up'; readonly atM: number } | null;
}

const STEEPEST_PERCENT = STEEPEST_RATIO * 100;
/** Least and most road that can be asked for before each random pitch (m); less leaves it to chance. */
const BEFORE_EACH_M = { least: 20, most: 500 };

/** Start of a piece (m). */
export function pieceStartM(level: Level, index: number): number {
  return level.pieces.slice(0, index).reduce((sum, piece) => sum + pieceLengthM(piece), 0);
}

/** Where the selected thing begins and ends (m). */
export function placeOfProblem(
  level: Level,
  { list, index }: Selection,
): { fromM: number; toM: number } | null {
  if (list === 'pieces') {
    const piece = level.pieces[index];
    if (piece === undefined) return null;
    const fromM = pieceStartM(level, index);
    return { fromM, toM: fromM + pieceLengthM(piece) };
  }
  const entry = level[list][index];
  if (entry === undefined) return null;
  if (typeof entry === 'number') return { fromM: entry, toM: entry };
  return 'atM' in entry ? { fromM: entry.atM, toM: entry.atM } : { fromM: entry.fromM, toM: entry.toM };
}

/** The thing a path of a problem or warning points at. */
export function selectionAt(path: string): Selection | null {
  const found = /^(pieces|stopLinesM|winds|surfaces|hidden|cues)\[(\d+)\]/.exec(path);
  return found === null ? null : { list: found[1] as Selection['list'], index: Number(found[2]) };
}

/** All numbers of the selected thing. */
export function fieldsOf(level: Level, selection: Selection): readonly LevelField[] {
  return selection.list === 'pieces'
    ? pieceFields(level, selection.index)
    : placedFields(level, selection.list, selection.index);
}

function pieceFields(level: Level, index: number): readonly LevelField[] {
  const piece = level.pieces[index];
  if (piece === undefined || piece.kind === 'recorded') return [];
  const startM = pieceStartM(level, index);
  const change = (next: LevelPiece): LevelEdit => ({
    kind: 'change-piece',
    index,
    piece: next,
    follow: true,
  });
  const otherM = levelLengthM(level) - piece.lengthM;
  const length: LevelField = {
    name: 'lengthM',
    unit: 'm',
    value: piece.lengthM,
    low: 1,
    high: Math.max(piece.lengthM, LONGEST_LEVEL_M - otherM),
    step: 5,
    edit: (lengthM) => change({ ...piece, lengthM: Math.round(lengthM) }),
    handle: { axis: 'along', atM: startM + piece.lengthM },
  };
  return [length, ...shapeFields(piece, startM + piece.lengthM / 2, change)];
}

/** What makes a piece steep or wavy. */
function shapeFields(
  piece: Exclude<LevelPiece, { kind: 'recorded' }>,
  middleM: number,
  change: (next: LevelPiece) => LevelEdit,
): readonly LevelField[] {
  const up = { axis: 'up', atM: middleM } as const;
  const low = 0;
  switch (piece.kind) {
    case 'flat':
      return [];
    case 'climb':
    case 'pitch':
      return [
        percentField(
          'slope',
          piece.slopeRatio,
          piece.kind === 'pitch' ? low : -STEEPEST_PERCENT,
          up,
          (slopeRatio) => change({ ...piece, slopeRatio }),
        ),
      ];
    case 'descent':
      return [
        percentField('slope', Math.abs(piece.slopeRatio), low, up, (slopeRatio) =>
          change({ ...piece, slopeRatio }),
        ),
      ];
    case 'rollers':
      return [
        plainField('waveM', 'm', piece.waveM, [40, 2_000, 10], (waveM) => change({ ...piece, waveM })),
        percentField('steepest', piece.steepestRatio, low, up, (steepestRatio) =>
          change({ ...piece, steepestRatio }),
        ),
      ];
    case 'random-pitches':
      return [
        plainField('pitchCount', 'count', piece.pitchCount, [1, 40, 1], (value) =>
          change({ ...piece, pitchCount: Math.round(value) }),
        ),
        plainField('beforeEach', 'm', piece.beforeM ?? 0, [0, mostBeforeEachM(piece), 5], (value) =>
          change(withBeforeEach(piece, Math.round(value))),
        ),
        percentField('gentlest', piece.gentlestRatio, low, null, (gentlestRatio) =>
          change({ ...piece, gentlestRatio }),
        ),
        percentField('steepest', piece.steepestRatio, low, up, (steepestRatio) =>
          change({ ...piece, steepestRatio }),
        ),
      ];
  }
}

type RandomPitches = Extract<LevelPiece, { kind: 'random-pitches' }>;

/** The same pitches with so much road before each; where that is too little to set, chance decides. */
function withBeforeEach(piece: RandomPitches, beforeM: number): RandomPitches {
  const { kind, lengthM, pitchCount, gentlestRatio, steepestRatio } = piece;
  const byChance = { kind, lengthM, pitchCount, gentlestRatio, steepestRatio };
  return beforeM < BEFORE_EACH_M.least ? byChance : { ...byChance, beforeM };
}

/** The most road before each pitch for which the piece has room (m). */
function mostBeforeEachM({ lengthM, pitchCount, beforeM = 0 }: RandomPitches): number {
  const spareM = (lengthM - roadForPitches(lengthM, pitchCount, 0)) / pitchCount;
  const fits = Math.min(BEFORE_EACH_M.most, Math.floor(spareM));
  return Math.max(BEFORE_EACH_M.least, beforeM, fits);
}

/** A number without a handle. */
function plainField(
  name: FieldName,
  unit: LevelField['unit'],
  value: number,
  [low, high, step]: readonly [low: number, high: number, step: number],
  edit: LevelField['edit'],
): LevelField {
  return { name, unit, value, low, high, step, edit, handle: null };
}

function percentField(
  name: FieldName,
  ratio: number,
  low: number,
  handle: LevelField['handle'],
  edit: (ratio: number) => LevelEdit,
): LevelField {
  return {
    name,
    unit: 'percent',
    value: rounded(ratio * 100, 1),
    low,
    high: STEEPEST_PERCENT,
    step: 0.5,
    edit: (value) => edit(rounded(value / 100, 4)),
    handle,
  };
}

/** A place along the road (m), between limits that are the ends of the road where none are given. */
type PlaceField = (
  name: 'atM' | 'fromM' | 'toM',
  value: number,
  edit: LevelField['edit'],
  low?: number,
  high?: number,
) => LevelField;

function placedFields(
  level: Level,
  list: Exclude<Selection['list'], 'pieces'>,
  index: number,
): readonly LevelField[] {
  const lengthM = levelLengthM(level);
  const place: PlaceField = (name, value, edit, low = 0, high = lengthM) => ({
    name,
    unit: 'm',
    value,
    low,
    high: Math.max(low, high),
    step: 5,
    edit: (next) => edit(Math.round(next)),
    handle: { axis: 'along', atM: value },
  });
  if (list === 'stopLinesM') {
    const atM = level.stopLinesM[index];
    if (atM === undefined) return [];
    return [place('atM', atM, (entry) => ({ kind: 'change-entry', list, index, entry }))];
  }
  if (list === 'cues') {
    const cue = level.cues[index];
    if (cue === undefined) return [];
    return [
      place('atM', cue.atM, (at) => ({ kind: 'change-entry', list, index, entry: { ...cue, atM: at } })),
    ];
  }
  return stretchFields(level, list, index, place);
}

function stretchFields(
  level: Level,
  list: 'winds' | 'surfaces' | 'hidden',
  index: number,
  place: PlaceField,
): readonly LevelField[] {
  const entry = level[list][index];
  if (entry === undefined) return [];
  const change = (values: Partial<typeof entry>): LevelEdit =>
    ({ kind: 'change-entry', list, index, entry: { ...entry, ...values } }) as LevelEdit;
  const own = { step: 1, handle: null } as const;
  const fields = [
    place('fromM', entry.fromM, (fromM) => change({ fromM }), 0, entry.toM - 1),
    place('toM', entry.toM, (toM) => change({ toM }), entry.fromM + 1),
  ];
  if ('windMps' in entry) {
    const edit = (windMps: number): LevelEdit => change({ windMps });
    fields.push({ ...own, name: 'windMps', unit: 'mps', value: entry.windMps, low: -15, high: 15, edit });
  }
  if ('sightM' in entry) {
    const edit = (sightM: number): LevelEdit => change({ sightM });
    fields.push({ ...own, name: 'sightM', unit: 'm', value: entry.sightM, low: 5, high: 250, step: 5, edit });
  }
  return fields;
}

function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
