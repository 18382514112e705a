/**
 * The import table as the contributor's page shows it. A script writes it there, and a test compares: nobody
 * types it.
 */
import { importTable } from './table.ts';

const quoted = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(', ');

const inCore = (name: string): boolean => name === 'core' || name.startsWith('core/');

/** Rooms in as few words as they can be said: all of the core is `core`, all there is leaves out only itself. */
function wordsFor(room: string, rooms: readonly string[]): string {
  const core = [...importTable.keys()].filter(inCore);
  if (room.startsWith('core/')) {
    return rooms.length === 0 ? 'nothing' : quoted(rooms.map((name) => name.replace('core/', '')));
  }
  if (room === 'core') return 'all of `core/…`';
  const wholeCore = core.every((name) => rooms.includes(name));
  const ofCore = wholeCore ? 'core' : quoted(rooms.filter(inCore));
  const others = rooms.filter((name) => !inCore(name));
  const left = [...importTable.keys()].filter(
    (name) => name !== room && !inCore(name) && !others.includes(name),
  );
  if (others.length > left.length && wholeCore) return `core and every other room but ${quoted(left)}`;
  return [ofCore, quoted(others)].filter((part) => part !== '').join(', ');
}

/** The lines of the table, head included; rooms with the same rights share one. */
export function importTableText(): string {
  const roomsBy = new Map<string, string[]>();
  for (const [room, { rooms, packages }] of importTable) {
    const shown = packages.length === 0 ? 'none' : quoted(packages.toSorted());
    const rights = `${wordsFor(room, rooms)} | ${shown}`;
    roomsBy.set(rights, [...(roomsBy.get(rights) ?? []), room]);
  }
  const rows = [...roomsBy].map(([rights, rooms]) => `| ${quoted(rooms)} | ${rights} |`);
  return ['| room | may import | packages |', '|---|---|---|', ...rows].join('\n');
}

const tableOnPage = /^\| room \| may import \|[^\n]*\n(?:\|[^\n]*(?:\n|$))*/m;

/** The table that a page shows now, or null if it shows none. */
export function shownTable(page: string): string | null {
  return tableOnPage.exec(page)?.[0].trimEnd() ?? null;
}

/** The page with the table as it should be. */
export function withTable(page: string): string {
  return page.replace(tableOnPage, () => `${importTableText()}\n`);
}
