import { spokenLocale } from '../../words/words.ts';

/** `2026-05` as people of the spoken language write a month. */
export function monthText(month: string): string {
  const [year = 0, number = 1] = month.split('-').map(Number);
  return new Intl.DateTimeFormat(spokenLocale(), { year: 'numeric', month: 'long' }).format(
    new Date(year, number - 1, 15),
  );
}
