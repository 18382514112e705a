/** Writes the table of limits into the contributor's page: `npx tsx test/figures/limits.ts`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { withTable } from '../house/limitsTable.ts';

const path = new URL('../../DEVELOPERS.md', import.meta.url);
const page = withTable(readFileSync(path, 'utf8'));
if (page === null) throw new Error('DEVELOPERS.md has no table of limits to replace.');
writeFileSync(path, page);
