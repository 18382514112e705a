/** The page "What is trusted" prints the limits that are in force, and every limit is a sensible one. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Limit, LIMITS } from '../../src/core/math/limits.ts';
import { repository } from './files.ts';
import { limitsTable, reasons, withTable } from './limitsTable.ts';

const page = readFileSync(join(repository, 'DEVELOPERS.md'), 'utf8');

describe('the table of limits', () => {
  it('stands on the contributor page as it is in force', () => {
    expect(page).toContain(`${limitsTable()}\n`);
    expect(withTable(page)).toBe(page);
  });

  it('is noticed where a number on the page is another one', () => {
    const [, number] = /`bytes`: ([\d,]+) bytes/.exec(page) ?? [];
    const wrong = page.replace(`\`bytes\`: ${number} bytes`, '`bytes`: 7 bytes');
    expect(wrong).not.toBe(page);
    expect(wrong).not.toContain(`${limitsTable()}\n`);
    expect(withTable(wrong)).toBe(page);
  });

  it('says of every limit a whole number from 1 and what it is for', () => {
    const all = Object.entries(LIMITS).flatMap(([door, limits]) =>
      Object.entries<Limit>(limits).map(([name, { most }]) => ({ key: `${door} ${name}`, most })),
    );
    expect(all.filter(({ most }) => !Number.isSafeInteger(most) || most < 1)).toEqual([]);
    expect(all.filter(({ key }) => (reasons().get(key)?.length ?? 0) < 10)).toEqual([]);
  });
});
