/** Days, months and moments as people of a place write them, in the language that is spoken. Times are milliseconds since 1970. */
import { spokenLocale } from './words.ts';

const written = (atMs: number, parts: Intl.DateTimeFormatOptions): string =>
  new Intl.DateTimeFormat(spokenLocale(), parts).format(atMs);

/** "26 November". */
export const writeDay = (atMs: number): string => written(atMs, { day: 'numeric', month: 'long' });

/** "26 Nov 2026". */
export const writeDate = (atMs: number): string =>
  written(atMs, { day: 'numeric', month: 'short', year: 'numeric' });

/** "26 November at 18:04". */
export const writeMoment = (atMs: number): string =>
  written(atMs, { day: 'numeric', month: 'long', hour: '2-digit', minute: '2-digit' });

/** `2026-11` is "November 2026". */
export function writeMonth(month: string): string {
  const [year = 0, number = 1] = month.split('-').map(Number);
  return written(new Date(year, number - 1, 15).getTime(), { year: 'numeric', month: 'long' });
}
