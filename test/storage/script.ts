/**
 * The storage as one script, for pages of tests: it puts the room into `window.kept`. What is done with it is
 * written by those who load it.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** Builds the storage; the answer is the text of the script. */
export async function buildStorageScript(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'storage-script-'));
  const entry = fileURLToPath(new URL('../../src/storage/index.ts', import.meta.url));
  await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      outDir: folder,
      emptyOutDir: false,
      copyPublicDir: false,
      target: 'es2022',
      lib: {
        entry,
        name: 'kept',
        formats: ['iife'],
        fileName: () => 'kept.js',
      },
    },
  });
  const text = readFileSync(join(folder, 'kept.js'), 'utf8');
  rmSync(folder, { recursive: true, force: true });
  return `${text};window.kept = kept;`;
}
