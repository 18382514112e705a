/**
 * Marks for the command line. The numbers are the coach's; only their shape for printing is made here.
 */
import { MARK_NAMES, type MarkName, type RideReport } from '../../core/coach/types.ts';
import { fixed } from './print.ts';

/** Marks as they are printed: 0 to 100, or null where the ride gave nothing to judge. */
interface MarkLine {
  readonly marks: Readonly<Record<MarkName, number | null>>;
  readonly total: number;
  readonly passed: boolean;
}

/** A report in the shape that is printed. */
export function markLine(report: RideReport): MarkLine {
  const entries = MARK_NAMES.map((name) => [name, report.marks[name].value]);
  return {
    marks: Object.fromEntries(entries) as MarkLine['marks'],
    total: report.total,
    passed: report.passed,
  };
}

/** One line of marks for people. */
export function markSentence({ marks, total, passed }: MarkLine): string {
  const shown = MARK_NAMES.map((name) => `${name} ${marks[name] === null ? '–' : fixed(marks[name], 0)}`);
  return `Marks: ${shown.join(', ')}; total ${fixed(total, 1)}, ${passed ? 'passed' : 'not passed'}.`;
}
