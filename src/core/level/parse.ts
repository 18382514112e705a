/**
 * The door through which levels come in: anything → a level, or problems that each name a place and tell a
 * person what to do. Inside, levels are trusted. Nothing here changes or repairs what it was given.
 */
import type * as z from 'zod/mini';
import { pieceLengthM } from '../course/build.ts';
import { LIMITS } from '../math/limits.ts';
import { tooMuch } from '../math/measure.ts';
import { handful, type Problem, sentenceFor } from './problems.ts';
import {
  LEVEL_SCHEMA,
  type Level,
  levelSchema,
  LONGEST_LEVEL_M,
  SHORTEST_LEVEL_M,
  STEEPEST_RATIO,
} from './schema.ts';

/** A level, or why not. */
export type ParseResult =
  | { readonly ok: true; readonly level: Level }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const MOST = { deep: LIMITS.level.deep.most, entries: LIMITS.level.entries.most };
/** Room a rider needs between two stop lines, and before the first (m). */
const STOP_SPACING_M = 40;

/** Parses text that should be a level file. */
export function parseLevelText(text: string): ParseResult {
  if (text.length > LIMITS.level.bytes.most)
    return failed([
      problem(
        '',
        'too-big',
        'This is far too long to be a level. Choose a file that was saved on the bench.',
      ),
    ]);
  // Some editors put an invisible mark before the first brace.
  const bare = text.replace(/^\uFEFF/, '');
  if (bare.trim() === '')
    return failed([
      problem('', 'empty', 'This file is empty. A level file holds one object in braces { … }.'),
    ]);
  let value: unknown;
  try {
    value = JSON.parse(bare);
  } catch (error) {
    const place = faultPlace(error, bare);
    return failed([
      problem('', 'not-json', `This is not readable as JSON${place}. Check commas, quotes and brackets.`),
    ]);
  }
  return parseLevel(value);
}

/** Parses a value that should be a level. */
export function parseLevel(value: unknown): ParseResult {
  const early = checkEnvelope(value);
  if (early !== null) return failed([early]);
  const parsed = levelSchema.safeParse(value);
  if (!parsed.success)
    return failed(parsed.error.issues.flatMap((issue) => sentenceFor(issue as z.core.$ZodIssue, value)));
  const level = parsed.data;
  const problems = [...checkRoad(level), ...checkStretches(level), ...checkPlaces(level)];
  if (Object.values(level.weights).every((weight) => weight === 0))
    problems.push(problem('weights', 'no-weight', 'At least one mark needs a weight above 0.'));
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

function checkEnvelope(value: unknown): Problem | null {
  if (value === null || typeof value !== 'object' || Array.isArray(value))
    return problem('', 'not-a-level', 'A level file holds one object in braces { … }.');
  const much = tooMuch(value, MOST);
  if (much !== null)
    return problem(
      '',
      much,
      'There is far more in this than any level has. Ask for it again, as a link or a file.',
    );
  const { schema } = value as { schema?: unknown };
  if (typeof schema === 'number' && schema > LEVEL_SCHEMA)
    return problem(
      'schema',
      'newer-schema',
      `This level was made by a newer version (format ${schema}); this one reads up to ${LEVEL_SCHEMA}. Update the game; the file was left as it is.`,
    );
  return null;
}

function checkRoad(level: Level): Problem[] {
  const lengthM = levelLengthM(level);
  const problems: Problem[] = [];
  if (lengthM < SHORTEST_LEVEL_M)
    problems.push(
      problem(
        'pieces',
        'too-short',
        `The road is ${lengthM} m long; it needs at least ${SHORTEST_LEVEL_M} m. Lengthen a piece or add one.`,
      ),
    );
  if (lengthM > LONGEST_LEVEL_M)
    problems.push(
      problem(
        'pieces',
        'too-long',
        `The road is ${lengthM} m long; at most ${LONGEST_LEVEL_M} m can be ridden. Shorten or remove pieces.`,
      ),
    );
  level.pieces.forEach((piece, i) => {
    const path = `pieces[${i}]`;
    if (piece.kind === 'random-pitches' && piece.gentlestRatio > piece.steepestRatio)
      problems.push(
        problem(
          `${path}.gentlestRatio`,
          'gentler-than-steepest',
          'The gentlest pitch is steeper than the steepest. Swap the two numbers.',
        ),
      );
    if (piece.kind === 'random-pitches' && piece.lengthM / piece.pitchCount < 80)
      problems.push(
        problem(
          `${path}.pitchCount`,
          'pitches-too-dense',
          `${piece.pitchCount} pitches need at least ${piece.pitchCount * 80} m of road; this piece has ${piece.lengthM} m.`,
        ),
      );
    if (piece.kind === 'recorded') problems.push(...checkRecorded(piece, path));
  });
  return problems;
}

function checkRecorded(piece: { stepM: number; heightsM: readonly number[] }, path: string): Problem[] {
  const limit = STEEPEST_RATIO * piece.stepM + 1e-9;
  const at = piece.heightsM.findIndex(
    (height, i) => i > 0 && Math.abs(height - (piece.heightsM[i - 1] as number)) > limit,
  );
  if (at < 0) return [];
  return [
    problem(
      `${path}.heightsM[${at}]`,
      'recorded-too-steep',
      `Here the recorded road is steeper than ${STEEPEST_RATIO * 100} %. Smooth the heights first.`,
    ),
  ];
}

function checkStretches(level: Level): Problem[] {
  const lengthM = levelLengthM(level);
  const lists = { winds: level.winds, surfaces: level.surfaces, hidden: level.hidden };
  return Object.entries(lists).flatMap(([name, list]) => {
    const problems: Problem[] = [];
    list.forEach((stretch, i) => {
      const path = `${name}[${i}]`;
      if (stretch.toM <= stretch.fromM)
        problems.push(
          problem(
            `${path}.toM`,
            'backwards',
            'This stretch ends before it begins. "toM" must be more than "fromM".',
          ),
        );
      if (stretch.toM > lengthM)
        problems.push(
          problem(
            `${path}.toM`,
            'beyond-end',
            `This stretch ends beyond the road, which is ${lengthM} m long.`,
          ),
        );
      const twin = list.findIndex(
        (other, j) => j < i && other.fromM < stretch.toM && stretch.fromM < other.toM,
      );
      if (twin >= 0)
        problems.push(
          problem(
            path,
            'overlap',
            `This stretch overlaps with ${name}[${twin}]. Let one end where the other begins.`,
          ),
        );
    });
    return problems;
  });
}

function checkPlaces(level: Level): Problem[] {
  const lengthM = levelLengthM(level);
  const problems: Problem[] = [];
  level.stopLinesM.forEach((atM, i) => {
    const sentence = stopLineTrouble(level.stopLinesM, i, lengthM);
    if (sentence !== null)
      problems.push(problem(`stopLinesM[${i}]`, 'stop-too-near', `The stop line at ${atM} m ${sentence}`));
  });
  level.cues.forEach((cue, i) => {
    if (cue.atM > lengthM)
      problems.push(
        problem(`cues[${i}].atM`, 'beyond-end', `This cue lies beyond the road, which is ${lengthM} m long.`),
      );
  });
  return problems;
}

/** What is wrong with the place of a stop line, as the rest of a sentence, or null. */
function stopLineTrouble(stopLinesM: readonly number[], index: number, lengthM: number): string | null {
  const atM = stopLinesM[index] as number;
  // Of two lines at one place the later one in the file counts as the second.
  const before = stopLinesM.filter((other, j) => other < atM || (other === atM && j < index));
  const last = before.length === 0 ? 0 : Math.max(...before);
  if (atM > lengthM) return `lies beyond the road, which is ${lengthM} m long.`;
  if (lengthM - atM < STOP_SPACING_M)
    return `needs ${STOP_SPACING_M} m of road behind it; the road ends at ${lengthM} m.`;
  if (atM - last >= STOP_SPACING_M) return null;
  const from = before.length === 0 ? 'the start' : `the stop line at ${last} m`;
  return `needs ${STOP_SPACING_M} m of road between it and ${from}.`;
}

function problem(path: string, code: string, sentence: string): Problem {
  return { path, code, sentence };
}

function failed(problems: readonly Problem[]): ParseResult {
  return { ok: false, problems: handful(problems, LIMITS.level.problems.most) };
}

/** Where reading stopped, as far as this engine tells: some name a line, some a position, some neither. */
function faultPlace(error: unknown, text: string): string {
  const message = error instanceof Error ? error.message : '';
  const line = /line (\d+)/.exec(message)?.[1];
  const position = /position (\d+)/.exec(message)?.[1];
  if (line !== undefined) return `; the fault is near line ${line}`;
  if (position !== undefined)
    return `; the fault is near line ${text.slice(0, Number(position)).split('\n').length}`;
  return /end of/i.test(message) ? '; it ends too early' : '';
}
