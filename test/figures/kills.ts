/**
 * Kills a whole browser (SIGKILL) at random moments of rides and looks, with the same profile, what is left of them.
 * Several rides are ridden at once, in frames of one page, each begun at another moment; some are ridden fast to
 * their end. Run `npm run build` first, then `npx tsx test/figures/kills.ts 200 chromium 1`: rides to be killed,
 * `chromium` or `firefox`, seed. Losses are in seconds of riding, counted by the pictures that were drawn.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { killRides, type KillFigures } from './kills/rides.ts';

const [, , count = '20', browser = 'chromium', seed = '1'] = process.argv;
if (browser !== 'chromium' && browser !== 'firefox') throw new Error('chromium or firefox?');
const profile = mkdtempSync(join(tmpdir(), 'kills-'));
try {
  const figures: KillFigures = await killRides({
    count: Number(count),
    browser,
    seed: Number(seed),
    profile,
    site: fileURLToPath(new URL('../../dist', import.meta.url)),
    say: (line) => console.log(line),
  });
  console.log(JSON.stringify(figures));
} finally {
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
}
