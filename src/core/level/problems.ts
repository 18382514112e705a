/**
 * What can be wrong with something that comes in, as codes and numbers: a place, a code, and what a sentence about it
 * needs. The words are found elsewhere. Here are also the findings of schemas, which levels and plans share.
 */
import type * as z from 'zod/mini';
import { isFields, tooMuch } from '../math/measure.ts';

/** What the thing is that something is wrong with. One code may mean different things in different ones. */
export type ProblemAbout = 'level' | 'plan' | 'link' | 'road';

/** One thing that is wrong. `path` is like `pieces[2].lengthM`, empty for the whole. */
export interface Problem {
  readonly about: ProblemAbout;
  readonly path: string;
  readonly code: string;
  /** Numbers with their units in their names, and texts that came in, at most a line long. */
  readonly values: Readonly<Record<string, number | string | readonly string[]>>;
}

export type SchemaCode =
  | 'missing'
  | 'wrong-type'
  | 'not-allowed'
  | 'too-big'
  | 'too-small'
  | 'unknown-key'
  | 'unknown-kind'
  | 'bad-format'
  | 'invalid'
  | 'more';

/** What can be wrong with a text or a value before its schema is asked, besides its being something else. */
export type EnvelopeCode = SchemaCode | 'not-json' | 'too-deep' | 'too-much' | 'newer-schema';

type Issue = z.core.$ZodIssue;
type Values = Problem['values'];

/** The first problems, and one that counts the others where there are more than `most`. */
export function handful(all: readonly Problem[], most: number): readonly Problem[] {
  const [first] = all;
  if (all.length <= most || first === undefined) return all;
  return [...all.slice(0, most), found(first.about, '', 'more', { count: all.length - most })];
}

/**
 * What is wrong with a value before its schema is asked, or null: it is no object, too much lies in it (in what `measured`
 * leaves of it), or it was written by a newer version.
 */
export function envelopeProblem(
  about: 'level' | 'plan',
  value: unknown,
  readsUpTo: number,
  most: Parameters<typeof tooMuch>[1],
  measured: (value: object) => unknown = (whole) => whole,
): Problem | null {
  if (!isFields(value)) return { about, path: '', code: `not-a-${about}`, values: {} };
  const much = tooMuch(measured(value), most);
  if (much !== null) return { about, path: '', code: much, values: {} };
  const { schema } = value;
  if (typeof schema !== 'number' || schema <= readsUpTo) return null;
  return { about, path: 'schema', code: 'newer-schema', values: { schema, readsUpTo } };
}

/** What a schema found in a value, each a problem or more. */
export function findingsIn(
  error: { readonly issues: unknown },
  value: unknown,
  about: ProblemAbout,
): Problem[] {
  return (error.issues as readonly Issue[]).flatMap((issue) => findingsOf(issue, value, about));
}

function findingsOf(issue: Issue, root: unknown, about: ProblemAbout): Problem[] {
  const path = pathText(issue.path);
  const value = valueAt(root, issue.path);
  const one = (code: SchemaCode, values: Values): Problem[] => [found(about, path, code, values)];
  const is = { found: shown(value) };
  switch (issue.code) {
    case 'invalid_type':
      return one(value === undefined ? 'missing' : 'wrong-type', { ...is, needed: issue.expected });
    case 'invalid_value':
      return one(value === undefined ? 'missing' : 'not-allowed', {
        ...is,
        allowed: issue.values.map(String),
      });
    case 'too_big':
      return one('too-big', { ...is, ...sizeOf(issue.origin, value), most: Number(issue.maximum) });
    case 'too_small':
      return one('too-small', { ...is, ...sizeOf(issue.origin, value), least: Number(issue.minimum) });
    case 'unrecognized_keys':
      return issue.keys.map((key) =>
        found(about, path === '' ? short(key) : `${path}.${short(key)}`, 'unknown-key', { key: short(key) }),
      );
    case 'invalid_union':
      return unionFindings(issue, path, root, about);
    case 'invalid_format':
      return one('bad-format', is);
    default:
      return one('invalid', is);
  }
}

/** A piece is told apart by its kind, a cue by what it carries. */
function unionFindings(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: string,
  root: unknown,
  about: ProblemAbout,
): Problem[] {
  const value = valueAt(root, issue.path);
  if (path.endsWith('.kind'))
    return [found(about, path, 'unknown-kind', { part: 'piece', found: shown(value) })];
  const has = (key: string): boolean => value !== null && typeof value === 'object' && key in value;
  // The schema knows cues by code first and cues in words second.
  const branch = has('cue') ? issue.errors[0] : has('text') ? issue.errors[1] : undefined;
  if (branch !== undefined)
    return branch.flatMap((inner) =>
      findingsOf({ ...inner, path: [...issue.path, ...inner.path] }, root, about),
    );
  return [found(about, path, 'unknown-kind', { part: 'cue', found: shown(value) })];
}

function found(about: ProblemAbout, path: string, code: SchemaCode, values: Values): Problem {
  return { about, path, code, values };
}

/** How long a text or list is, where its length is what a limit is about. */
function sizeOf(origin: string, value: unknown): Values {
  if (origin === 'string' && typeof value === 'string') return { characters: value.length };
  return origin === 'array' && Array.isArray(value) ? { entries: value.length } : {};
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

/**
 * A value as JSON, never longer than a line and never unfolded, however deep it is: a list is `[]`, an object `{}`,
 * nothing at all an empty text.
 */
function shown(value: unknown): string {
  if (typeof value === 'string') return short(JSON.stringify(value));
  if (Array.isArray(value)) return '[]';
  if (value !== null && typeof value === 'object') return '{}';
  return value === undefined ? '' : String(value as number | boolean | null);
}

function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
