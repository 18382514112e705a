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

/** One or more problems for a finding of the schema. */
export function sentenceFor(issue: Issue, root: unknown): Problem[] {
  const path = pathText(issue.path);
  const found = shown(valueAt(root, issue.path));
  switch (issue.code) {
    case 'invalid_type':
      return [{ path, code: 'wrong-type', sentence: wrongType(issue.expected, valueAt(root, issue.path), found) }];
    case 'invalid_value':
      return [
        {
          path,
          code: 'not-allowed',
          sentence: `${found} is not known here. Use one of: ${issue.values.map(String).join(', ')}.`,
        },
      ];
    case 'too_big':
      return [{ path, code: 'too-big', sentence: limit(issue.origin, 'at most', issue.maximum, found) }];
    case 'too_small':
      return [{ path, code: 'too-small', sentence: limit(issue.origin, 'at least', issue.minimum, found) }];
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        path: path === '' ? key : `${path}.${key}`,
        code: 'unknown-key',
        sentence: `"${short(key)}" is not a part of a level here. Remove it or check its spelling.`,
      }));
    case 'invalid_union':
      return [{ path, code: 'unknown-kind', sentence: unknownKind(path, root, issue) }];
    case 'invalid_format':
      return [
        {
          path,
          code: 'bad-format',
          sentence: `${found} does not fit. Use small letters, digits and dashes only, for example "two-pitches".`,
        },
      ];
    default:
      return [{ path, code: 'invalid', sentence: `${found} does not fit here. Compare with a bundled level.` }];
  }
}

function unknownKind(path: string, root: unknown, issue: Issue): string {
  const value = valueAt(root, issue.path);
  const kind = value !== null && typeof value === 'object' ? (value as { kind?: unknown }).kind : value;
  if (path.endsWith('.kind') || path.startsWith('pieces'))
    return `${shown(kind)} is no kind of piece. Use flat, climb, pitch, descent, rollers, random-pitches or recorded.`;
  return 'This cue needs "atM" and either a known "cue" or a "text" of up to 76 characters.';
}

function wrongType(expected: string, value: unknown, found: string): string {
  if (value === undefined) return `This is missing. Add a value of the kind "${expected}".`;
  const plain: Record<string, string> = {
    number: 'a number',
    int: 'a whole number',
    string: 'text in quotes',
    boolean: 'true or false',
    array: 'a list in [ ]',
    object: 'an object in { }',
  };
  return `${found} stands where ${plain[expected] ?? expected} is needed.`;
}

function limit(origin: string, word: string, bound: number | bigint, found: string): string {
  if (origin === 'string') return `The text may have ${word} ${bound} characters.`;
  if (origin === 'array') return `The list may have ${word} ${bound} entries.`;
  return `${found} is out of range: ${word} ${bound}.`;
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
      value !== null && typeof value === 'object' ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    root,
  );
}

/** A value as a person would recognise it, never longer than a line. */
function shown(value: unknown): string {
  if (value === undefined) return 'Nothing';
  if (typeof value === 'number') return String(value);
  return short(JSON.stringify(value) ?? String(value));
}

function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
