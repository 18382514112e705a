/** `2026-05` as people of the browser's language write a month. */
export function monthText(month: string): string {
  const [year = 0, number = 1] = month.split('-').map(Number);
  return new Intl.DateTimeFormat(undefined, { year: 'numeric', month: 'long' }).format(
    new Date(year, number - 1, 15),
  );
}
