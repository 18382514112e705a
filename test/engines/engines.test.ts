/**
 * The same bits everywhere: rides recorded in Node and in Chromium are ridden again in every engine and in Node,
 * with the same fingerprints; and the site itself (start page, one ride, debrief) works in each of them.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { siteHeaders } from '../../.ci/policy.mjs';
import { levelHash } from '../../src/core/level/build.ts';
import { checkLevel } from '../../src/core/level/generate.ts';
import type { Recording } from '../../src/core/ride/recording.ts';
import { habitsForSkill, virtualRider } from '../../src/core/virtual/riders.ts';
import { rideThrough } from '../../src/core/ride/run.ts';
import { serveFolder, type Server } from '../browser/server.ts';
import { builtSiteFolder } from '../browser/site.ts';
import { groundOf, LEVELS, PAIRS } from '../core/coach/riding.ts';
import { type EnginePage, engines } from './engines.ts';
import { type Job, type Outcome, rideAgain } from './rideAgain.ts';

const SPEED = 8;
const POLL_MS = 100;
const PATIENT_MS = 80_000;
const LEVEL = 'one-pitch-announced';
const wanted = [LEVEL, 'rolling-road', 'wind-and-gravel', 'ring-and-back'];

/** Rides on several roads and bikes, good and bad ones, recorded in Node. */
function nodeJobs(): readonly Job[] {
  const levels = [...LEVELS.filter(({ id }) => wanted.includes(id)), checkLevel(7, 'everyone')];
  return levels.map((level, i) => {
    const { bikeId, riderId } = PAIRS[i % PAIRS.length] ?? PAIRS[0];
    const { world } = groundOf(level, bikeId, riderId);
    const { bike, rider } = world.machine;
    const ride = rideThrough(world, virtualRider(world, habitsForSkill(0.2 * (i + 1)), i + 1));
    const { id: levelId, seed } = level;
    const setup = { levelId, levelHash: levelHash(level), seed, bike, rider, autoEase: false };
    return { level, recording: ride.recording(setup) };
  });
}

let folder: string;
let replayServer: Server;
let siteServer: Server;
let jobs: readonly Job[];
let outcomes: readonly Outcome[];
const running = new Map<string, EnginePage>();
/** The ride of each engine as the site itself recorded and kept it. */
const ridden = new Map<string, Recording>();

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'engine-page-'));
  await build({
    root: fileURLToPath(new URL('page', import.meta.url)),
    base: './',
    configFile: false,
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true, target: 'es2022' },
  });
  replayServer = await serveFolder(folder);
  siteServer = await serveFolder(builtSiteFolder, '/', siteHeaders);
  jobs = nodeJobs();
  outcomes = jobs.map(rideAgain);
});

afterAll(async () => {
  for (const page of running.values()) await page.close();
  await replayServer?.close();
  await siteServer?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function until(page: EnginePage, expression: string): Promise<void> {
  const end = Date.now() + PATIENT_MS;
  while (Date.now() < end) {
    if ((await page.evaluate(`Boolean(${expression})`)) === true) return;
    await new Promise((resolve) => setTimeout(resolve, POLL_MS));
  }
  throw new Error(`waited in vain for ${expression}`);
}

const click = (page: EnginePage, selector: string) =>
  page.evaluate(`document.querySelector('${selector}').click()`);

const press = (page: EnginePage, code: string) =>
  page.evaluate(
    `['keydown', 'keyup'].forEach((kind) => window.dispatchEvent(new KeyboardEvent(kind, { code: '${code}', bubbles: true })))`,
  );

/** The newest ride in the browser's own database. */
const KEPT_RECORDING = `new Promise((resolve, reject) => {
  const request = indexedDB.open('before-the-hill');
  request.onerror = () => reject(request.error);
  request.onsuccess = () => {
    const all = request.result.transaction('rides').objectStore('rides').getAll();
    all.onsuccess = () => { request.result.close(); resolve(all.result[0]?.recording ?? null); };
  };
})`;

async function rideOnSite(page: EnginePage): Promise<Recording> {
  await page.open(`${siteServer.url}#start`);
  await until(page, `document.querySelector('[data-ride-next]')`);
  await page.evaluate(
    `(window.stopped = [], document.addEventListener('securitypolicyviolation', (event) => window.stopped.push(event.effectiveDirective + ' ' + event.blockedURI)), true)`,
  );
  await page.evaluate(`(window.__rideTestSpeed = ${SPEED}, location.hash = '#ride/${LEVEL}', true)`);
  await until(page, `document.querySelector('[data-accept]')`);
  await click(page, '[data-accept]');
  await until(page, `document.body.dataset.rideState === 'riding'`);
  await page.evaluate(`(window.gearBefore = document.querySelector('[data-hud="gear"]').textContent)`);
  await press(page, 'ArrowDown');
  await until(page, `document.querySelector('[data-hud="gear"]').textContent !== window.gearBefore`);
  await until(page, `document.body.dataset.view === 'debrief'`);
  await until(page, `document.querySelector('[data-guess], [data-mark]')`);
  await page.evaluate(`document.querySelector('[data-guess="about-right"]')?.click()`);
  await until(page, `document.querySelectorAll('[data-mark]').length === 5`);
  let kept: unknown = null;
  for (let tries = 0; tries < 50 && kept === null; tries += 1) {
    kept = await page.evaluate(KEPT_RECORDING);
    if (kept === null) await new Promise((resolve) => setTimeout(resolve, POLL_MS));
  }
  return kept as Recording;
}

const again = (page: EnginePage, job: Job): Promise<unknown> =>
  page.evaluate(`window.rideAgain(${JSON.stringify(job)})`);

describe('Node', () => {
  it('rides its own recordings again with the same fingerprints', () => {
    expect(jobs.length).toBe(wanted.length + 1);
    for (const [i, { recording }] of jobs.entries()) {
      expect(outcomes[i]?.checkpoints).toEqual(recording.checkpoints);
      expect(recording.checkpoints.length).toBeGreaterThan(5);
    }
    // Different rides have different fingerprints, or being the same would mean nothing.
    expect(new Set(outcomes.map(({ trace }) => trace)).size).toBe(jobs.length);
    expect(new Set(outcomes.map(({ report }) => report)).size).toBe(jobs.length);
  });
});

describe.each([...engines()])('$name', ({ name, missing, start }) => {
  if (missing !== null) process.stdout.write(`${missing}\n`);

  it.skipIf(missing !== null)('opens the start page, rides to the debrief and keeps the ride', async () => {
    const page = await start();
    running.set(name, page);
    const recording = await rideOnSite(page);
    expect(recording.levelId).toBe(LEVEL);
    expect(recording.commands.length).toBeGreaterThan(0);
    expect(await page.evaluate('window.stopped')).toEqual([]);
    await until(page, `navigator.serviceWorker.controller?.state === 'activated'`);
    ridden.set(name, recording);
  });

  it.skipIf(missing !== null)(
    'rides the recordings of Node and of Chromium again with the same fingerprints, plan and marks',
    async () => {
      const page = running.get(name);
      const level = LEVELS.find(({ id }) => id === LEVEL);
      if (page === undefined || level === undefined) throw new Error('the ride before has failed');
      const own = ['Chromium', name].flatMap((one) => ridden.get(one) ?? []);
      const fromSite = own.map((recording) => ({ level, recording }));
      expect(fromSite.length).toBe(2);
      await page.open(replayServer.url);
      await until(page, 'window.rideAgain');
      for (const [i, job] of jobs.entries()) expect(await again(page, job)).toEqual(outcomes[i]);
      for (const job of fromSite) {
        const here = rideAgain(job);
        expect(here.checkpoints).toEqual(job.recording.checkpoints);
        expect(await again(page, job)).toEqual(here);
      }
    },
  );
});
