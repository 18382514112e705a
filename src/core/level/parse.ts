/**
 * The door through which levels come in: anything → a level, or problems that each name a place, a code and the
 * numbers that tell a person what to do. Inside, levels are trusted. Nothing here changes or repairs what it was given.
 */
import { pieceLengthM, roadForPitches } from '../course/pieces.ts';
import { LIMITS } from '../math/limits.ts';
import { tooMuch } from '../math/measure.ts';
import { envelopeProblem, findingsIn, handful, type Problem, type EnvelopeCode } from './problems.ts';
import {
  LEVEL_SCHEMA,
  type Level,
  levelSchema,
  LONGEST_LEVEL_M,
  SHORTEST_LEVEL_M,
  STEEPEST_RATIO,
  STOP_SPACING_M,
} from './schema.ts';

/** Random pitches nearer to each other would run together (m). */
const LEAST_ROAD_A_PITCH_M = 80;

export type LevelProblemCode =
  | EnvelopeCode
  | 'empty'
  | 'not-a-level'
  | 'no-weight'
  | 'too-short'
  | 'too-long'
  | 'gentler-than-steepest'
  | 'pitches-too-dense'
  | 'recorded-too-steep'
  | 'backwards'
  | 'beyond-end'
  | 'overlap'
  | 'stop-too-near';

export type ParseResult =
  | { readonly ok: true; readonly level: Level }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const MOST = { deep: LIMITS.level.deep.most, entries: LIMITS.level.entries.most };

export function parseLevelText(text: string): ParseResult {
  if (text.length > LIMITS.level.bytes.most) return failed([problem('', 'too-big')]);
  // Some editors put an invisible mark before the first brace.
  const bare = text.replace(/^\uFEFF/, '');
  if (bare.trim() === '') return failed([problem('', 'empty')]);
  let value: unknown;
  try {
    value = JSON.parse(bare);
  } catch (error) {
    return failed([problem('', 'not-json', faultPlace(error, bare))]);
  }
  return parseLevel(value);
}

export function parseLevel(value: unknown): ParseResult {
  const early = envelopeProblem('level', value, LEVEL_SCHEMA, MOST);
  if (early !== null) return failed([early]);
  const parsed = levelSchema.safeParse(value);
  if (!parsed.success) return failed(findingsIn(parsed.error, value, 'level'));
  const level = parsed.data;
  const problems = [...checkRoad(level), ...checkStretches(level), ...checkPlaces(level)];
  if (Object.values(level.weights).every((weight) => weight === 0))
    problems.push(problem('weights', 'no-weight'));
  return problems.length > 0 ? failed(problems) : { ok: true, level };
}

/**
 * A level that is still being made: every part is in shape, but they need not fit together yet. Null for anything
 * else.
 */
export function readUnfinished(value: unknown): Level | null {
  if (tooMuch(value, MOST) !== null) return null;
  const parsed = levelSchema.safeParse(value);
  return parsed.success ? parsed.data : null;
}

/** Length of the road a level describes (m). */
export function levelLengthM(level: Pick<Level, 'pieces'>): number {
  return level.pieces.reduce((sum, piece) => sum + pieceLengthM(piece), 0);
}

function checkRoad(level: Level): Problem[] {
  const lengthM = levelLengthM(level);
  const problems: Problem[] = [];
  if (lengthM < SHORTEST_LEVEL_M)
    problems.push(problem('pieces', 'too-short', { lengthM, leastM: SHORTEST_LEVEL_M }));
  if (lengthM > LONGEST_LEVEL_M)
    problems.push(problem('pieces', 'too-long', { lengthM, mostM: LONGEST_LEVEL_M }));
  level.pieces.forEach((piece, i) => {
    const path = `pieces[${i}]`;
    if (piece.kind === 'random-pitches' && piece.gentlestRatio > piece.steepestRatio)
      problems.push(problem(`${path}.gentlestRatio`, 'gentler-than-steepest'));
    if (piece.kind === 'random-pitches' && piece.lengthM < roadNeededM(piece))
      problems.push(
        problem(`${path}.pitchCount`, 'pitches-too-dense', {
          pitchCount: piece.pitchCount,
          leastM: roadNeededM(piece),
          lengthM: piece.lengthM,
        }),
      );
    if (piece.kind === 'recorded') problems.push(...checkRecorded(piece, path));
  });
  return problems;
}

/** Road that random pitches need at least (m): 80 each, and as much before each as was asked for. */
function roadNeededM(piece: Extract<Level['pieces'][number], { kind: 'random-pitches' }>): number {
  const { lengthM, pitchCount, beforeM } = piece;
  const spacedM = beforeM === undefined ? 0 : roadForPitches(lengthM, pitchCount, beforeM);
  return Math.max(LEAST_ROAD_A_PITCH_M * pitchCount, spacedM);
}

function checkRecorded(piece: { stepM: number; heightsM: readonly number[] }, path: string): Problem[] {
  const limit = STEEPEST_RATIO * piece.stepM + 1e-9;
  const at = piece.heightsM.findIndex(
    (height, i) => i > 0 && Math.abs(height - (piece.heightsM[i - 1] as number)) > limit,
  );
  if (at < 0) return [];
  return [problem(`${path}.heightsM[${at}]`, 'recorded-too-steep', { limitRatio: STEEPEST_RATIO })];
}

function checkStretches(level: Level): Problem[] {
  const lengthM = levelLengthM(level);
  const lists = { winds: level.winds, surfaces: level.surfaces, hidden: level.hidden };
  return Object.entries(lists).flatMap(([name, list]) => {
    const problems: Problem[] = [];
    list.forEach((stretch, i) => {
      const path = `${name}[${i}]`;
      if (stretch.toM <= stretch.fromM) problems.push(problem(`${path}.toM`, 'backwards'));
      if (stretch.toM > lengthM)
        problems.push(problem(`${path}.toM`, 'beyond-end', { part: 'stretch', lengthM }));
      const twin = list.findIndex(
        (other, j) => j < i && other.fromM < stretch.toM && stretch.fromM < other.toM,
      );
      if (twin >= 0) problems.push(problem(path, 'overlap', { other: `${name}[${twin}]` }));
    });
    return problems;
  });
}

function checkPlaces(level: Level): Problem[] {
  const lengthM = levelLengthM(level);
  const problems: Problem[] = [];
  level.stopLinesM.forEach((atM, i) => {
    const trouble = stopLineTrouble(level.stopLinesM, i, lengthM);
    if (trouble !== null) problems.push(problem(`stopLinesM[${i}]`, 'stop-too-near', { atM, ...trouble }));
  });
  level.cues.forEach((cue, i) => {
    if (cue.atM > lengthM) problems.push(problem(`cues[${i}].atM`, 'beyond-end', { part: 'cue', lengthM }));
  });
  return problems;
}

/** What is wrong with the place of a stop line, or null. Of the two neighbours only the one that is too near is told. */
function stopLineTrouble(
  stopLinesM: readonly number[],
  index: number,
  lengthM: number,
): Problem['values'] | null {
  const atM = stopLinesM[index] as number;
  // Of two lines at one place the later one in the file counts as the second.
  const before = stopLinesM.filter((other, j) => other < atM || (other === atM && j < index));
  const last = before.length === 0 ? 0 : Math.max(...before);
  if (atM > lengthM) return { near: 'beyond-end', lengthM };
  if (lengthM - atM < STOP_SPACING_M) return { near: 'end', lengthM, leastM: STOP_SPACING_M };
  if (atM - last >= STOP_SPACING_M) return null;
  return { near: before.length === 0 ? 'start' : 'line', lastM: last, leastM: STOP_SPACING_M };
}

function problem(path: string, code: LevelProblemCode, values: Problem['values'] = {}): Problem {
  return { about: 'level', path, code, values };
}

function failed(problems: readonly Problem[]): ParseResult {
  return { ok: false, problems: handful(problems, LIMITS.level.problems.most) };
}

/** Where reading stopped, as far as this engine tells: some name a line, some a position, some neither. */
function faultPlace(error: unknown, text: string): Problem['values'] {
  const message = error instanceof Error ? error.message : '';
  const line = /line (\d+)/.exec(message)?.[1];
  const position = /position (\d+)/.exec(message)?.[1];
  if (line !== undefined) return { line: Number(line) };
  if (position !== undefined) return { line: text.slice(0, Number(position)).split('\n').length };
  return /end of/i.test(message) ? { endsEarly: 1 } : {};
}
