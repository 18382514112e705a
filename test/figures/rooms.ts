/** Writes the import table of DEVELOPERS.md anew from `test/house/table.ts`. Run it with `npx tsx test/figures/rooms.ts`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { repository } from '../house/files.ts';
import { withTable } from '../house/tableText.ts';

const page = join(repository, 'DEVELOPERS.md');
writeFileSync(page, withTable(readFileSync(page, 'utf8')));
