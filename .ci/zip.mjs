/**
 * `npm run zip`: builds the site and packs it into one archive, with a page for whoever puts it on a web host.
 * `-- --to FILE` says where to.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { zipOf } from './archive.mjs';
import { builtFiles } from './open.mjs';

const { values } = parseArgs({ options: { to: { type: 'string', default: 'before-the-hill.zip' } } });
const FOLDER = 'before-the-hill';
const NOTE = 'READ ME FIRST.txt';

const built = await builtFiles();
const files = new Map([
  [NOTE, readFileSync(new URL('hostNote.txt', import.meta.url), 'utf8')],
  ...[...built].map(([name, content]) => /** @type {const} */ ([`${FOLDER}/${name}`, content])),
]);
const archive = zipOf(files);
try {
  writeFileSync(resolve(values.to), archive);
} catch (error) {
  const { code, message } = /** @type {NodeJS.ErrnoException} */ (error);
  console.error(`${values.to} could not be written (${code ?? message}).`);
  process.exit(2);
}
console.log(
  `${values.to} holds ${built.size} files, ${(archive.length / 1e6).toFixed(1)} MB, and “${NOTE}”.`,
);
