/**
 * Fills the disk under a browser's profile at random moments, goes on saving, closes or kills the browser and looks
 * what is left: of every ride the page called kept, the recording is there or the page says at once that it is not.
 * Linux and root only. Run `npm run build` first, then `npx tsx test/figures/diskFull.ts [moments] [first seed]`.
 */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { between, type Random, seededRandom } from '../../src/core/math/random.ts';
import type * as Room from '../../src/storage/index.ts';
import type { Health, NewRide, SaveAnswer, SavedRide, Storage } from '../../src/storage/index.ts';
import { findChromium } from '../browser/chromium.ts';
import { serveFolder } from '../browser/server.ts';
import { builtSiteFolder } from '../browser/site.ts';
import sample from '../storage/samples/rides.2.json' with { type: 'json' };
import { buildStorageScript } from '../storage/script.ts';
import { type DiskKind, mountSmallDisk, type SmallDisk } from './smallDisk.ts';
import '../../assets/words/english.ts';
import { words } from '../../src/words/words.ts';

const MOMENTS = Number(process.argv[2] ?? 60);
const FIRST_SEED = Number(process.argv[3] ?? 1);
const DISK_MB = 80;

interface Plan {
  readonly disk: DiskKind;
  /** When the last byte is taken. */
  readonly full: 'in mid-write' | 'in mid-save' | 'by the rides' | 'between saves' | 'while closed';
  readonly end: 'close' | 'kill';
  readonly freed: 'while open' | 'before reopening' | 'after reopening';
  readonly before: number;
  readonly after: number;
}

interface Opened {
  readonly storage: Storage;
}

interface Told {
  readonly id: string;
  readonly answer: SaveAnswer;
}

interface Found {
  /** Rides in the database before the game was opened. */
  readonly inDatabase: number;
  readonly health: Health;
  readonly notice: string | null;
  readonly withRecording: readonly string[];
  readonly resultsOnly: readonly string[];
}

function openIn(page: Page): Promise<Health> {
  return page.evaluate(async () => {
    const { kept } = window as unknown as { kept: typeof Room };
    const storage = await kept.openStorage();
    Object.assign(window, { storage });
    return storage.health;
  });
}

const pick = <T>(random: Random, of: readonly T[]): T => of[Math.floor(random() * of.length)] as T;

function planOf(random: Random): Plan {
  return {
    disk: pick(random, ['ext4', 'tmpfs']),
    full: pick(random, [
      'in mid-write',
      'in mid-write',
      'in mid-save',
      'by the rides',
      'between saves',
      'while closed',
    ]),
    end: pick(random, ['close', 'kill']),
    freed: pick(random, ['while open', 'before reopening', 'before reopening', 'after reopening']),
    before: Math.floor(between(random, 3, 13)),
    after: Math.floor(between(random, 2, 9)),
  };
}

const script = await buildStorageScript();
const sampleRide = sample as SavedRide;
const site = await serveFolder(builtSiteFolder);

function openBrowser(folder: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(`${folder}/profile`, {
    executablePath: findChromium(),
    headless: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
    ],
  });
}

/** Opens the game, and beside it the storage's own code for saving many rides in a short time. */
async function openGame(context: BrowserContext, told: (one: Told) => void): Promise<Page> {
  const page = await context.newPage();
  await page.exposeFunction('told', told);
  await page.goto(site.url);
  await page.evaluate(script);
  await openIn(page);
  return page;
}

/** A ride with so many shifts; with many it is a long one. */
function longRide(like: SavedRide, id: string, shifts: number): NewRide {
  const [first] = like.recording.commands;
  if (first === undefined) throw new Error('The sample has a shift.');
  const commands = Array.from({ length: shifts }, (_, i) => ({ ...first, tick: i * 30 }));
  return { ...like, id, recording: { ...like.recording, commands } };
}

/** Saves rides one after the other; each answer is told as the rider would hear it. */
function saveRides(page: Page, ids: readonly string[], random: Random): Promise<void> {
  const rides = ids.map((id) => longRide(sampleRide, id, Math.floor(between(random, 5, 300))));
  return page.evaluate(async (all) => {
    const { told } = window as unknown as { told: (one: Told) => void };
    for (const ride of all)
      told({ id: ride.id, answer: await (window as unknown as Opened).storage.saveRide(ride) });
  }, rides);
}

/** Rides in the database, counted from a page that is not the game; 0 where the browser threw it away. */
async function countRides(page: Page): Promise<number> {
  await page.goto(new URL('nothing-here', site.url).href);
  return page.evaluate(async () => {
    const all = await indexedDB.databases().catch(() => []);
    if (!all.some(({ name }) => name === 'before-the-hill')) return 0;
    return new Promise<number>((resolve) => {
      const opening = indexedDB.open('before-the-hill');
      opening.addEventListener('error', () => resolve(0));
      opening.addEventListener('success', () => {
        const counting = opening.result.transaction('rides').objectStore('rides').count();
        counting.addEventListener('success', () => {
          opening.result.close();
          resolve(counting.result);
        });
      });
    });
  });
}

async function look(context: BrowserContext): Promise<Found> {
  const page = await context.newPage();
  const inDatabase = await countRides(page);
  await page.goto(site.url);
  await page.waitForSelector('[data-ride-next]');
  await page.evaluate(script);
  // The page's own storage was opened first, as it would be for a rider; this one only looks.
  await page.waitForFunction(() => document.body.dataset['view'] === 'start');
  const health = await openIn(page);
  const rides = await page.evaluate(async () => {
    const all: { id: string; whole: boolean }[] = [];
    for (const { id } of await (window as unknown as Opened).storage.listRides())
      all.push({ id, whole: (await (window as unknown as Opened).storage.getRide(id)) !== null });
    return all;
  });
  const after = await page.evaluate(() => (window as unknown as Opened).storage.health);
  const notice = await page.evaluate(() => document.querySelector('.start-notice')?.textContent ?? null);
  return {
    inDatabase,
    health: health.problem === null ? after : health,
    notice,
    withRecording: rides.filter(({ whole }) => whole).map(({ id }) => id),
    resultsOnly: rides.filter(({ whole }) => !whole).map(({ id }) => id),
  };
}

async function end(context: BrowserContext, how: Plan['end'], page: Page): Promise<void> {
  if (how === 'close') return context.close();
  const session = await context.newCDPSession(page);
  const gone = new Promise((resolve) => context.once('close', resolve));
  // The dead do not answer.
  session.send('Browser.crash').catch(() => undefined);
  await gone;
}

/**
 * Fills the disk at the very moment the database is given a ride: the page waits for the answer in the middle of
 * `put`, after the game has asked for room.
 */
async function fillInMidWrite(page: Page, disk: SmallDisk): Promise<() => void> {
  const server = createServer((_request, response) => {
    disk.fill();
    response.end();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  await page.evaluate(
    (address) => {
      const put = Reflect.get(IDBObjectStore.prototype, 'put') as IDBObjectStore['put'];
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
        IDBObjectStore.prototype.put = put;
        const request = new XMLHttpRequest();
        request.open('GET', address, false);
        try {
          request.send();
        } catch {
          // The page may not read the answer; it has waited for it all the same.
        }
        return put.apply(this, given);
      };
    },
    `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
  );
  return () => server.close();
}

async function fillAndSave(plan: Plan, disk: SmallDisk, page: Page, random: Random): Promise<void> {
  const ids = Array.from({ length: plan.after }, (_, i) => `full-${i}`);
  if (plan.full === 'by the rides') disk.fill(Math.floor(between(random, 4_096, 120_000)));
  if (plan.full === 'between saves') disk.fill();
  if (plan.full === 'in mid-save') disk.fill(Math.floor(between(random, 100_000, 800_000)));
  const done = plan.full === 'in mid-write' ? await fillInMidWrite(page, disk) : () => undefined;
  const saving = saveRides(page, ids, random);
  if (plan.full === 'in mid-save') {
    await new Promise((resolve) => setTimeout(resolve, between(random, 0, 60)));
    disk.fill();
  }
  const topUp = setInterval(() => {
    if (plan.full !== 'in mid-write') disk.fill();
  }, 20);
  await saving.finally(() => clearInterval(topUp));
  done();
}

async function moment(seed: number): Promise<ReturnType<typeof judge>> {
  const random = seededRandom(seed);
  const plan = planOf(random);
  const disk = mountSmallDisk(plan.disk, DISK_MB);
  const told: Told[] = [];
  try {
    let context = await openBrowser(disk.folder);
    let page = await openGame(context, (one) => told.push(one));
    await saveRides(
      page,
      Array.from({ length: plan.before }, (_, i) => `before-${i}`),
      random,
    );
    if (plan.full === 'while closed') {
      await end(context, plan.end, page);
      disk.fill();
      context = await openBrowser(disk.folder);
      page = await openGame(context, (one) => told.push(one));
    }
    await fillAndSave(plan, disk, page, random);
    if (plan.freed === 'while open') {
      disk.free();
      await saveRides(page, ['freed-0', 'freed-1'], random);
    }
    await end(context, plan.end, page);
    if (plan.freed === 'before reopening') disk.free();
    context = await openBrowser(disk.folder);
    const found = await look(context);
    let later: Found | null = null;
    if (plan.freed === 'after reopening') {
      await context.close();
      disk.free();
      context = await openBrowser(disk.folder);
      later = await look(context);
    }
    await context.close();
    return judge(seed, plan, told, found, later);
  } finally {
    disk.remove();
  }
}

function judge(seed: number, plan: Plan, told: readonly Told[], found: Found, later: Found | null) {
  const kept = told.filter(({ answer }) => answer.saved).map(({ id }) => id);
  const codes = told.flatMap(({ answer }) => (answer.saved ? [] : [answer.code]));
  const lost = kept.filter((id) => !found.withRecording.includes(id));
  const lostLater = later === null ? lost : kept.filter((id) => !later.withRecording.includes(id));
  const isSilent = (missing: readonly string[], { notice }: Found): boolean =>
    missing.length > 0 && notice !== words('kept')('health-recordings-lost');
  const silent = isSilent(lost, found) || isSilent(lostLater, later ?? found);
  console.log(
    JSON.stringify({
      seed,
      plan: `${plan.disk}, full ${plan.full}, ${plan.end}, freed ${plan.freed}`,
      kept: kept.length,
      notKept: Object.fromEntries(
        [...new Set(codes)].map((code) => [code, codes.filter((c) => c === code).length]),
      ),
      inDatabase: found.inDatabase,
      lost: lost.length,
      lostLater: lostLater.length,
      resultsOnly: found.resultsOnly.length,
      health: found.health,
      notice: found.notice,
      later: later && { health: later.health, notice: later.notice },
      silent,
    }),
  );
  return {
    broken: found.inDatabase < kept.length,
    lost: lost.length > 0 || lostLater.length > 0,
    silent,
    wrongCode: codes.some((code) => code !== 'disk-full'),
  };
}

const count = { moments: 0, broken: 0, lost: 0, silent: 0, wrongCode: 0, failed: 0 };
for (let seed = FIRST_SEED; seed < FIRST_SEED + MOMENTS; seed += 1) {
  count.moments += 1;
  try {
    const one = await moment(seed);
    for (const what of ['broken', 'lost', 'silent', 'wrongCode'] as const) count[what] += one[what] ? 1 : 0;
  } catch (error) {
    count.failed += 1;
    console.log(JSON.stringify({ seed, error: String(error).slice(0, 400) }));
  }
}
// broken: kept rides the browser's database had lost; lost: without their recording after opening the game;
// silent: of these, those the first page did not own up to; wrongCode: a refusal that was not called a full disk.
console.log(count);
await site.close();
