/**
 * Runs once before the browser tests: sees to it that there is a browser and a built site, so that a
 * missing one is told in a sentence and not as a timeout in every test.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { findChromium } from './chromium.ts';
import { builtSiteFolder } from './site.ts';

/** Called by vitest before the first browser test. */
export default function prepare(): void {
  if (!existsSync(join(builtSiteFolder, 'index.html'))) {
    throw new Error('There is no built site; run "npm run build" before the browser tests.');
  }
  findChromium();
}
