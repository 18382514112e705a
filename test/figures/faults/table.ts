/** The table of faults and outcomes by group, and its place in the contributor guide. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { BAD, GOOD, type Outcome } from './types.ts';

const GUIDE = fileURLToPath(new URL('../../../DEVELOPERS.md', import.meta.url));
const FROM = '<!-- faults: written by test/figures/faults.ts -->';
const TO = '<!-- faults: end -->';
const ENDS = [...GOOD, ...BAD] as const;

/** One line for each group; faults that did not happen are left out of all numbers. */
export function tableOf(outcomes: readonly Outcome[]): string {
  const happened = outcomes.filter(({ verdict }) => verdict !== 'did not happen');
  const groups = [...new Set(happened.map(({ fault }) => fault.group))].sort();
  const row = (name: string, of: readonly Outcome[]): string => {
    const count = (verdict: string): number => of.filter((one) => one.verdict === verdict).length;
    return `| ${[name, of.length, ...ENDS.map(count)].join(' | ')} |`;
  };
  return [
    `| what breaks | faults | ${ENDS.join(' | ')} |`,
    `|---|${ENDS.map(() => '--:|').join('')}--:|`,
    ...groups.map((group) =>
      row(
        group,
        happened.filter(({ fault }) => fault.group === group),
      ),
    ),
    row('all', happened),
  ].join('\n');
}

/** Puts the table between its marks. */
export function writeTable(outcomes: readonly Outcome[]): void {
  const text = readFileSync(GUIDE, 'utf8');
  const [before, after] = [text.indexOf(FROM), text.indexOf(TO)];
  if (before < 0 || after < before) throw new Error('The contributor guide has no place for the table.');
  writeFileSync(GUIDE, `${text.slice(0, before)}${FROM}\n\n${tableOf(outcomes)}\n\n${text.slice(after)}`);
}
