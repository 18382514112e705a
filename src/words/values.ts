/** Takes numbers and texts out of a problem's values; a value that is not there is a fault of ours and throws. */
import type { Problem } from '../core/level/problems.ts';
import type { Values as Filled } from './fill.ts';
import type { Format } from './format.ts';

type Values = Problem['values'];

export function number(values: Values, name: string): number {
  const value = values[name];
  if (typeof value !== 'number') throw new Error(`no number ${name}`);
  return value;
}

export function text(values: Values, name: string): string {
  const value = values[name];
  if (typeof value !== 'string') throw new Error(`no text ${name}`);
  return value;
}

export function texts(values: Values, name: string): readonly string[] {
  const value = values[name];
  if (typeof value !== 'object') throw new Error(`no texts ${name}`);
  return value;
}

/** Shares below this are written with a decimal. */
const SMALL_SHARE = 0.0095;

/**
 * Values for a message: those with a unit in their name are written with it and are called without (`lengthM` becomes
 * `length`), as are gradients and shares in percent; counts stay numbers. Numbers of lines are names.
 */
export function written(values: Values, format: Format): Filled {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]): [string, string | number] => {
      if (typeof value !== 'number') return [name, String(value)];
      if (name === 'line') return [name, String(value)];
      if (name === 'share') return [name, format.percent(value, value < SMALL_SHARE ? 1 : 0)];
      const bare = name.replace(/(?:M|Mph|Ratio)$/, '');
      if (bare === name) return [name, value];
      return [bare, name.endsWith('Ratio') ? format.percent(value) : format.distance(value)];
    }),
  );
}
