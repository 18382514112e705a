/** Takes numbers and texts out of a problem's values; a value that is not there is a fault of ours and throws. */
import type { Problem } from '../core/level/problems.ts';

/** A sentence, or how it is made of a problem. */
export type Say = string | ((problem: Problem) => string);

type Values = Problem['values'];

/** The number of that name. */
export function number(values: Values, name: string): number {
  const value = values[name];
  if (typeof value !== 'number') throw new Error(`no number ${name}`);
  return value;
}

/** The text of that name. */
export function text(values: Values, name: string): string {
  const value = values[name];
  if (typeof value !== 'string') throw new Error(`no text ${name}`);
  return value;
}

/** The list of texts of that name. */
export function texts(values: Values, name: string): readonly string[] {
  const value = values[name];
  if (typeof value !== 'object') throw new Error(`no texts ${name}`);
  return value;
}

/** A ratio as whole percent without its sign. */
export function percent(values: Values, name: string): string {
  return Math.abs(number(values, name) * 100).toFixed(0);
}

/** A count with its noun. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
