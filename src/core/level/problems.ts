/**
 * Turns what the schema finds into a path and a sentence that tells a person what to do. The code is for
 * programs and for other languages; the English sentence is for the command line and the level bench.
 */
import type * as z from 'zod/mini';

/** One thing that is wrong with a level. `path` is like `pieces[2].lengthM`, empty for the whole file. */
export interface Problem {
  readonly path: string;
  readonly code: string;
  readonly sentence: string;
}

type Issue = z.core.$ZodIssue;

/** The first problems, and one that counts the others where there are more than `most`. */
export function handful(all: readonly Problem[], most: number): readonly Problem[] {
  if (all.length <= most) return all;
  const others = all.length - most;
  const sentence = `There ${others === 1 ? 'is 1 more problem' : `are ${others} more problems`}. Mend these first.`;
  return [...all.slice(0, most), { path: '', code: 'more', sentence }];
}

/** One or more problems for a finding of the schema. */
export function sentenceFor(issue: Issue, root: unknown): Problem[] {
  const path = pathText(issue.path);
  const value = valueAt(root, issue.path);
  const one = (code: string, sentence: string): Problem[] => [{ path, code, sentence }];
  switch (issue.code) {
    case 'invalid_type':
      return one(value === undefined ? 'missing' : 'wrong-type', wrongType(issue.expected, value));
    case 'invalid_value':
      return one(
        value === undefined ? 'missing' : 'not-allowed',
        notAllowed(issue.values.map(String), value),
      );
    case 'too_big':
      return one('too-big', limit(issue.origin, 'at most', issue.maximum, value) + percentHint(path, value));
    case 'too_small':
      return one(
        'too-small',
        limit(issue.origin, 'at least', issue.minimum, value) + percentHint(path, value),
      );
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        path: path === '' ? short(key) : `${path}.${short(key)}`,
        code: 'unknown-key',
        sentence: `"${short(key)}" is not a part of a level here. Remove it or check its spelling.`,
      }));
    case 'invalid_union':
      return unionProblems(issue, path, value, root);
    case 'invalid_format':
      return one(
        'bad-format',
        `${shown(value)} does not fit. Use small letters, digits and dashes only, for example "two-pitches".`,
      );
    default:
      return one('invalid', `${shown(value)} does not fit here. Compare with a bundled level.`);
  }
}

/** A piece is told apart by its kind, a cue by what it carries. */
function unionProblems(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: string,
  value: unknown,
  root: unknown,
): Problem[] {
  if (path.endsWith('.kind')) {
    const wrong =
      value === undefined ? 'The kind of this piece is missing.' : `${shown(value)} is no kind of piece.`;
    const sentence = `${wrong} Use flat, climb, pitch, descent, rollers, random-pitches or recorded.`;
    return [{ path, code: 'unknown-kind', sentence }];
  }
  const carries = (key: string): boolean => value !== null && typeof value === 'object' && key in value;
  // The schema knows cues by code first and cues in words second.
  const branch = carries('cue') ? issue.errors[0] : carries('text') ? issue.errors[1] : undefined;
  if (branch !== undefined)
    return branch.flatMap((inner) => sentenceFor({ ...inner, path: [...issue.path, ...inner.path] }, root));
  const sentence = 'This cue needs "atM" and either a known "cue" or a "text" of up to 76 characters.';
  return [{ path, code: 'unknown-kind', sentence }];
}

const PLAIN: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text in quotes',
  boolean: 'true or false',
  array: 'a list in [ ]',
  object: 'an object in { }',
};

function wrongType(expected: string, value: unknown): string {
  const needed = PLAIN[expected] ?? expected;
  if (value === undefined) return `This is missing. Add ${needed}.`;
  if (value === Infinity || value === -Infinity) return `This number is too big to be read. Write ${needed}.`;
  return `${shown(value)} stands where ${needed} is needed.`;
}

function notAllowed(allowed: readonly string[], value: unknown): string {
  const [only] = allowed;
  if (allowed.length === 1)
    return value === undefined
      ? `This is missing. Write ${only}.`
      : `${shown(value)} stands where ${only} is needed.`;
  const list = `Use one of: ${allowed.join(', ')}.`;
  return value === undefined ? `This is missing. ${list}` : `${shown(value)} is not known here. ${list}`;
}

/** Verbs for a limit from above and from below. */
const MAY = { 'at most': 'may have', 'at least': 'needs' } as const;

function limit(origin: string, word: keyof typeof MAY, bound: number | bigint, value: unknown): string {
  if (origin === 'string' && typeof value === 'string')
    return `This text ${MAY[word]} ${word} ${counted(bound, 'character', 'characters')}; it has ${value.length}.`;
  if (origin === 'array' && Array.isArray(value))
    return `This list ${MAY[word]} ${word} ${counted(bound, 'entry', 'entries')}; it has ${value.length}.`;
  return `${shown(value)} is out of range; it must be ${word} ${bound}.`;
}

/** People write gradients in percent. */
function percentHint(path: string, value: unknown): string {
  if (!path.endsWith('Ratio') || typeof value !== 'number' || Math.abs(value) < 1 || Math.abs(value) > 100)
    return '';
  return ` Slopes are rise over run here: ${value} % is written ${Number((value / 100).toPrecision(6))}.`;
}

function counted(count: number | bigint, one: string, many: string): string {
  return `${count} ${Number(count) === 1 ? one : many}`;
}

function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    return text === '' ? String(key) : `${text}.${String(key)}`;
  }, '');
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === 'object' && Object.hasOwn(value, key)
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    root,
  );
}

/** A value as a person would recognise it, never longer than a line and never unfolded, however deep it is. */
function shown(value: unknown): string {
  if (typeof value === 'string') return short(JSON.stringify(value));
  if (Array.isArray(value)) return 'A list';
  if (value !== null && typeof value === 'object') return 'An object';
  return value === undefined ? 'Nothing' : String(value as number | boolean | null);
}

function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
