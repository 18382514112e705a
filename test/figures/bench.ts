/**
 * Prints how the level bench answers: reading sixty thousand recorded points with the longest task and the longest
 * gap between two frames on the page meanwhile, and an edit of a level of 2, 10 and 20 km from the key press to the
 * changed drawing. Run `npm run build` first, then `npx tsx test/figures/bench.ts [FILE.gpx]`. Times belong to this
 * machine.
 */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { openSite, type Site } from '../browser/site.ts';
import { freshLevel } from '../../src/features/bench/fresh.ts';
import { gpxText, northward, trackText } from '../core/gpx/files.ts';

const POINTS = 60_000;
const EDITS = 40;

/** Watches frames and long tasks from now on; `window.seen` has what was seen. */
const WATCH = `(() => {
  const seen = (window.seen = { longestTaskMs: 0, longestFrameMs: 0, shares: 0 });
  new PerformanceObserver((list) => {
    for (const task of list.getEntries()) seen.longestTaskMs = Math.max(seen.longestTaskMs, task.duration);
  }).observe({ entryTypes: ['longtask'] });
  let before = performance.now();
  const look = (now) => {
    seen.longestFrameMs = Math.max(seen.longestFrameMs, now - before);
    before = now;
    if (document.querySelector('[data-road="reading"] progress')) seen.shares += 1;
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
})()`;

function gpxFile(): string {
  const named = process.argv[2];
  if (named !== undefined) return readFileSync(named, 'utf8');
  const points = northward(POINTS, 1.5, (x) => 300 + 20 * Math.sin(x / 160)).map((point, i) => ({
    ...point,
    time: new Date(Date.UTC(2020, 0, 1, 0, 0, i)).toISOString(),
    inside: `<extensions><cad>${79 + (i % 3)}</cad></extensions>`,
  }));
  return gpxText(trackText(points));
}

async function importFigures(site: Site): Promise<void> {
  const open = await site.openPage({ width: 1280, height: 720, address: '#bench/road' });
  const { page } = open;
  await page.waitForSelector('[data-gpx]', { state: 'attached' });
  await page.waitForLoadState('networkidle');
  const file = gpxFile();
  // The file is made before anything is measured: a person has it on the disk.
  await page.evaluate((content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], 'ride.gpx'));
    Object.assign(window, { transfer });
  }, file);
  await page.evaluate(WATCH);
  await page.waitForTimeout(500);
  await page.evaluate('Object.assign(window.seen, { longestTaskMs: 0, longestFrameMs: 0 })');
  const before = open.addresses.length;
  const importMs = (await page.evaluate(`new Promise((resolve) => {
    const started = performance.now();
    const drop = new DragEvent('drop', { dataTransfer: window.transfer, bubbles: true });
    document.querySelector('[data-drop]').dispatchEvent(drop);
    const look = () =>
      document.querySelector('[data-stretch]') ? resolve(performance.now() - started) : requestAnimationFrame(look);
    look();
  })`)) as number;
  await page.waitForTimeout(300);
  const seen = (await page.evaluate('window.seen')) as Record<string, number>;
  console.log(
    `${(file.length / 1e6).toFixed(1)} MB of GPX: ${importMs.toFixed(0)} ms from the drop to the choice of the stretch; longest task on the page ${seen['longestTaskMs']?.toFixed(0)} ms (0: none over 50), longest gap between frames ${seen['longestFrameMs']?.toFixed(0)} ms, progress seen in ${seen['shares']} frames, requests ${open.addresses.length - before}.`,
  );
  await open.close();
}

/** An edit of the flat behind the pitch of a new level. */
async function longRoadFigures(page: Page, lengthM: number): Promise<void> {
  await page.fill('[data-thing="pieces[2]"] [data-field="lengthM"]', String(lengthM - 200));
  await editFigures(page, 'pieces[2]', `a level of ${lengthM / 1000} km`);
}

/** An edit of a piece in the middle of twenty kilometres in two hundred pieces, brought near. */
async function manyPiecesFigures(page: Page): Promise<void> {
  const pieces = Array.from({ length: 200 }, (_, i) =>
    i % 2 === 0
      ? { kind: 'flat', lengthM: 120 }
      : { kind: 'pitch', lengthM: 78, slopeRatio: 0.04 + (i % 8) / 100 },
  );
  const level = { ...freshLevel('Two hundred', 'Pieces.'), pieces };
  await page.setInputFiles('[data-level-file]', {
    name: 'level.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(level)),
  });
  await page.click('[data-keep]');
  await page.locator('[data-thing="pieces[101]"] .thing-head').click();
  for (let i = 0; i < 4; i += 1) await page.click('[data-zoom="closer"]');
  await editFigures(page, 'pieces[101]', '20 km in 200 pieces, brought near');
}

/** Milliseconds of script, style and layout from a key press on a handle to the drawing it changes. */
async function editFigures(page: Page, thing: string, what: string): Promise<void> {
  await page.getByRole('slider', { name: 'Length' }).focus();
  const times = (await page.evaluate(`(async () => {
    const all = [];
    for (let i = 0; i < ${EDITS}; i += 1) {
      const key = i % 2 === 0 ? 'ArrowLeft' : 'ArrowRight';
      // The list and the drawing change together; of a very long road five metres move no pixel.
      const shown = document.querySelector('[data-thing="${thing}"] .thing-head');
      const old = shown.textContent;
      const started = performance.now();
      document.activeElement.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
      for (let i = 0; i < 1000 && shown.textContent === old; i += 1) await Promise.resolve();
      if (shown.textContent === old) throw new Error('the key changed nothing');
      document.body.getBoundingClientRect();
      all.push(performance.now() - started);
      await new Promise((resolve) => setTimeout(resolve, 40));
    }
    return all.sort((a, b) => a - b);
  })()`)) as number[];
  const at = (share: number): string => (times[Math.floor(share * (times.length - 1))] ?? 0).toFixed(1);
  console.log(
    `An edit of ${what}: ${at(0.5)} ms in the middle, ${at(0.95)} ms for 95 of 100, ${at(1)} ms at most.`,
  );
}

const site = await openSite();
try {
  await importFigures(site);
  const open = await site.openPage({ width: 1280, height: 720, address: '#bench' });
  await open.page.click('[data-new]');
  await open.page.locator('[data-thing="pieces[2]"] .thing-head').click();
  for (const lengthM of [2_000, 10_000, 19_500]) await longRoadFigures(open.page, lengthM);
  await open.close();
  const many = await site.openPage({ width: 1280, height: 720, address: '#bench' });
  await manyPiecesFigures(many.page);
  await many.close();
} finally {
  await site.close();
}
