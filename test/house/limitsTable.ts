/**
 * The limits at every door as the table on the contributor's page: made from the data, so that page and code cannot
 * part. `test/figures/limits.ts` writes it, `limits.test.ts` compares it.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Limit, LIMITS } from '../../src/core/math/limits.ts';
import { repository } from './files.ts';

export type Door = keyof typeof LIMITS;

/** How each door is called on the page. */
const DOOR_TITLES: Readonly<Record<Door, string>> = {
  level: 'a level, as file or text',
  link: 'a link',
  code: 'codes from a camera',
  gpx: 'a GPX file',
  ride: 'a recording',
  copy: 'a copy that is taken back',
  plan: 'a plan',
  sessionPlan: 'a session plan',
  rideFile: 'a file of rides',
  store: "a club's own store",
};

/** Where the table begins on the page. */
const HEAD = '| door | limit | why so many |\n|---|---|---|\n';

/** Why so many, by door and limit: what stands behind each in the table of the code. */
export function reasons(): ReadonlyMap<string, string> {
  const why = new Map<string, string>();
  const deep = /const DEEP.*\/\/ (?<reason>.*)/;
  const source = readFileSync(join(repository, 'src/core/math/limits.ts'), 'utf8');
  let door = '';
  for (const line of source.split('\n')) {
    door = /^ {2}(?<door>\w+): \{$/.exec(line)?.groups?.['door'] ?? door;
    const { name, reason } = /^ {4}(?<name>\w+): .*?\/\/ (?<reason>.*)$/.exec(line)?.groups ?? {};
    if (name !== undefined && reason !== undefined) why.set(`${door} ${name}`, reason);
    else if (/^ {4}deep: DEEP,$/.test(line))
      why.set(`${door} deep`, deep.exec(source)?.groups?.['reason'] ?? '');
  }
  return why;
}

/** The table, without a line end behind it. */
export function limitsTable(): string {
  const why = reasons();
  const rows = (Object.keys(LIMITS) as Door[]).flatMap((door) =>
    Object.entries<Limit>(LIMITS[door]).map(
      ([name, limit], i) =>
        `| ${i === 0 ? DOOR_TITLES[door] : ''} | \`${name}\`: ${said(limit)} | ${why.get(`${door} ${name}`)} |`,
    ),
  );
  return HEAD + rows.join('\n');
}

/** The page with the present table in place of the one that stands on it; null where none does. */
export function withTable(page: string): string | null {
  const from = page.indexOf(HEAD);
  if (from < 0) return null;
  const to = page.indexOf('\n\n', from);
  return page.slice(0, from) + limitsTable() + page.slice(to < 0 ? page.length : to);
}

function said({ most, unit }: Limit): string {
  return `${String(most).replace(/\B(?=(\d{3})+$)/g, ',')} ${unit}`;
}
