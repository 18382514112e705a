/** Plain text for people at a terminal: tables with aligned columns, numbers with few digits. */

/** A number with a fixed count of decimals, never "-0". */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return /^-0(\.0+)?$/.test(text) ? text.slice(1) : text;
}

/** Rows of cells under a heading; the first column leans left, the others right. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => (row[column] ?? '').length)));
  return all
    .map((row) =>
      widths
        .map((width, column) =>
          column === 0 ? (row[column] ?? '').padEnd(width) : (row[column] ?? '').padStart(width),
        )
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/** "1 shift", "3 shifts", "no shifts". */
export function countedOrNo(count: number, word: string, words = `${word}s`): string {
  return `${count === 0 ? 'no' : count} ${count === 1 ? word : words}`;
}
