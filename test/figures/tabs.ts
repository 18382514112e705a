/**
 * Two and three tabs used at once: rides, taking back, adding riders, deleting, taking over, in orders made by seeds;
 * prints how many there were and what was lost or undone. `npx tsx test/figures/tabs.ts [200] [1] [20]`: so many
 * orders of tabs in one page over one storage without a database, the first seed, and so many in tabs of one Chromium with its own
 * database, every other of them without Web Locks.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { seededRandom } from '../../src/core/math/random.ts';
import { play, type Played, type Tab } from '../app/tabsPlay.ts';
import { openSite, type Site } from '../browser/site.ts';

const [orders = 200, firstSeed = 1, inBrowser = 20] = process.argv.slice(2).map(Number);
const STEPS = 10;
const skillsFor = (seed: number): readonly number[] => [0.2, 0.5, 0.8].slice(seed % 2);

async function inChromium(site: Site, seed: number): Promise<Played> {
  const first = await site.openPage({ width: 400, height: 300 });
  const { context } = first;
  const open = async (skill: number): Promise<Tab> => {
    const page = await context.newPage();
    if (seed % 2 === 0)
      await page.addInitScript(() => Object.defineProperty(navigator, 'locks', { value: undefined }));
    await page.goto(site.url);
    await page.evaluate(
      `tabs.openTab("s${seed}-${Math.round(skill * 10)}", ${skill}).then((tab) => { window.tab = tab; })`,
    );
    const ask = (what: keyof Tab, ...given: readonly string[]): Promise<never> =>
      page.evaluate(`tab.${what}(...${JSON.stringify(given)})`);
    return {
      open: () => ask('open'),
      create: () => ask('create'),
      add: (nickname) => ask('add', nickname),
      begin: () => ask('begin'),
      end: () => ask('end'),
      takeBack: () => ask('takeBack'),
      remove: () => ask('remove'),
      see: () => ask('see'),
    };
  };
  const tabs: Tab[] = [];
  for (const skill of skillsFor(seed)) tabs.push(await open(skill));
  const played = await play(tabs, await open(0.4), seededRandom(seed), STEPS);
  await first.close();
  return { ...played, faults: [...played.faults, ...first.problems] };
}

function tell(where: string, all: readonly (readonly [number, Played])[]): void {
  const sum = (of: (one: Played) => number): number => all.reduce((total, [, one]) => total + of(one), 0);
  const [rides, back, gone] = [sum((p) => p.rides), sum((p) => p.takenBack), sum((p) => p.deleted)];
  console.log(
    `${where}: ${all.length} orders, ${rides} rides kept, ${back} taken back, ${gone} sessions deleted`,
  );
  for (const [seed, { faults }] of all) for (const fault of faults) console.log(`  seed ${seed}: ${fault}`);
}

const seeds = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => firstSeed + i);

const folder = mkdtempSync(join(tmpdir(), 'tabs-'));
await build({
  configFile: false,
  logLevel: 'silent',
  build: {
    outDir: folder,
    target: 'es2022',
    lib: {
      entry: fileURLToPath(new URL('tabs/page.ts', import.meta.url)),
      name: 'tabs',
      formats: ['iife'],
      fileName: () => 'tabs.js',
    },
  },
});
writeFileSync(
  join(folder, 'index.html'),
  '<title>Tabs</title><link rel="icon" href="data:,"><script src="tabs.js"></script>',
);
const site = await openSite(folder);
const { page } = await site.openPage({ width: 400, height: 300 });
const single: [number, Played][] = [];
for (const seed of seeds(orders))
  single.push([
    seed,
    await page.evaluate<Played>(
      `tabs.playOverOneStorage(${seed}, ${JSON.stringify(skillsFor(seed))}, ${STEPS})`,
    ),
  ]);
tell('over one storage', single);
const chromium: [number, Played][] = [];
for (const seed of seeds(inBrowser)) chromium.push([seed, await inChromium(site, seed)]);
tell('in Chromium', chromium);
await site.close();
rmSync(folder, { recursive: true, force: true });
