/**
 * Plain text for people at a terminal: tables with aligned columns, numbers with few digits, marks, and what the core
 * found with its sentence beside it.
 */
import { MARK_NAMES, type MarkName, type RideReport } from '../../core/coach/types.ts';
import type { Problem } from '../../core/level/problems.ts';
import type { RecordingProblem } from '../../core/ride/recording.ts';
import { sentenceOf } from '../../words/problems.ts';

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

/** Marks in the shape that is printed: 0 to 100, or null where the ride gave nothing to judge. */
export function markLine({ marks, total, passed }: RideReport) {
  const values = MARK_NAMES.map((name) => [name, marks[name].value]);
  return { marks: Object.fromEntries(values) as Record<MarkName, number | null>, total, passed };
}

export function markSentence({ marks, total, passed }: ReturnType<typeof markLine>): string {
  const shown = MARK_NAMES.map((name) => `${name} ${marks[name] === null ? '–' : fixed(marks[name], 0)}`);
  return `Marks: ${shown.join(', ')}; total ${fixed(total, 1)}, ${passed ? 'passed' : 'not passed'}.`;
}

/** A problem with its sentence, ready to be printed; everything else it has stays. */
export function spoken<P extends Problem>(problem: P): P & { readonly sentence: string } {
  return { ...problem, sentence: sentenceOf(problem) };
}

const RECORDING: Readonly<Record<RecordingProblem['code'], (where: string) => string>> = {
  'newer-schema': () =>
    'This ride was saved by a newer version. Update the game to read it; it was left as it is.',
  'not-a-recording': (where) =>
    `This is no recording of a ride (look at "${where}"). Choose a saved ride file.`,
  'out-of-order': () => 'The commands of this recording are not in order of time.',
};

/** Why something cannot be ridden again. */
export function recordingSentence({ code, where }: RecordingProblem): string {
  return RECORDING[code](where);
}
