/**
 * A level as text and back: written so that a person can read it, one piece or place a line, and read with the line
 * of every part, so that a problem can be shown where it is. Pure.
 */
import { parseLevelText, type ParseResult } from '../../core/level/parse.ts';
import type { Problem } from '../../core/level/problems.ts';
import type { Level } from '../../core/level/schema.ts';
import { LIMITS } from '../../core/math/limits.ts';
import { scanJson } from './jsonScan.ts';

/** A problem and the line it is on, counted from 1. */
export interface PlacedProblem extends Problem {
  readonly line: number;
}

/** A level, or its problems with their lines. */
type TextResult =
  | { readonly ok: true; readonly level: Level }
  | { readonly ok: false; readonly problems: readonly PlacedProblem[] };

export function levelToJson(level: Level): string {
  const lines = Object.entries(level).map(([key, value]) => `  ${JSON.stringify(key)}: ${valueText(value)}`);
  return `{\n${lines.join(',\n')}\n}\n`;
}

/** Entries of a list stand on lines of their own; everything else fits on one. */
function valueText(value: unknown): string {
  if (!Array.isArray(value)) return spaced(value);
  if (value.length === 0) return '[]';
  return `[\n${value.map((entry) => `    ${spaced(entry)}`).join(',\n')}\n  ]`;
}

function spaced(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(spaced).join(', ')}]`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const parts = Object.entries(value).map(([key, part]) => `${JSON.stringify(key)}: ${spaced(part)}`);
  return `{ ${parts.join(', ')} }`;
}

export function levelFromJson(text: string): TextResult {
  const result: ParseResult = parseLevelText(text);
  if (result.ok) return result;
  // Of a text that is not read, no line is looked for.
  if (text.length > LIMITS.level.bytes.most)
    return { ok: false, problems: result.problems.map((problem) => ({ ...problem, line: 1 })) };
  const { lines, faultLine } = scanJson(text);
  const problems = result.problems.map((problem) => ({
    ...problem,
    line: problem.code === 'not-json' ? (faultLine ?? 1) : lineOf(lines, problem.path),
  }));
  return { ok: false, problems };
}

/** The line of a path, or of what it would be a part of where it is missing. */
function lineOf(lines: ReadonlyMap<string, number>, path: string): number {
  // Keys may hold dots and brackets of their own, so letters are taken off one at a time.
  for (let end = path.length; end > 0; end -= 1) {
    const line = lines.get(path.slice(0, end));
    const partEnds = end === path.length || path[end] === '.' || path[end] === '[';
    if (partEnds && line !== undefined) return line;
  }
  return lines.get('') ?? 1;
}

/** A level from a file that somebody chose or dropped; one that is far too big to be one is not read at all. */
export async function levelOfFile(file: Blob): Promise<ParseResult> {
  if (file.size > LIMITS.level.bytes.most)
    return { ok: false, problems: [{ about: 'level', path: '', code: 'too-big', values: {} }] };
  return parseLevelText(await file.text());
}
