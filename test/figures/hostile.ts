/**
 * Sends hostile inputs through the doors of the game and through its real pages in Chromium, and prints what became
 * of them: `npx tsx test/figures/hostile.ts COUNT SEED PAGES` (10,000, 1 and 400 unless said; build first). PAGES of
 * the inputs go through pages. Times belong to this machine; an input over a second is tried twice more, and the
 * shortest time counts. At the doors everything counts that is read on the page's thread; rides, copies and GPX files
 * are read by workers in the game and are only shown there.
 */
import { cpus } from 'node:os';
import { intoPage, keptInPage, longestTask, PAGE_KINDS, watchTasks } from '../browser/hostilePages.ts';
import { openSite } from '../browser/site.ts';
import { openStorage } from '../../src/storage/index.ts';
import { throughDoor } from '../hostile/doors.ts';
import { copyOf, type Hostile, hostileInput, keptRide, type Kind } from '../hostile/inputs.ts';

const [count = 10_000, seed = 1, pages = Math.min(400, count)] = process.argv.slice(2).map(Number);
const TOO_LONG_MS = 1_000;
const BY_WORKERS: readonly string[] = ['rides', 'copy', 'gpx'] satisfies readonly Kind[];
const RIDES = [1, 2, 3].map(keptRide);
const table = new Map<string, { inputs: number; longestMs: number; longest: string; faults: number }>();
const faults: string[] = [];

function note(where: string, input: Hostile, index: number, ms: number, fault: string | null): void {
  const name = `${where} ${input.kind}`;
  const row = table.get(name) ?? { inputs: 0, longestMs: 0, longest: '', faults: 0 };
  row.inputs += 1;
  if (ms > row.longestMs) Object.assign(row, { longestMs: ms, longest: `${index} ${input.how}` });
  if (fault !== null) {
    row.faults += 1;
    faults.push(`${name} ${index} (${input.how}): ${fault}`);
  }
  table.set(name, row);
}

/** The doors, in this process; what counts is the time of the processor, since others may use the machine. */
async function doors(upTo: number): Promise<string> {
  const storage = await openStorage({ indexedDB: () => null, localStorage: () => null });
  await storage.importAll(copyOf({ rides: RIDES }));
  const kept = async (): Promise<string> =>
    JSON.stringify(await Promise.all(RIDES.map((ride) => storage.getRide(ride['id'] as string))));
  const before = await kept();
  for (let i = 0; i < upTo; i += 1) {
    const input = hostileInput(seed, i);
    const start = process.cpuUsage();
    let fault: string | null = null;
    await throughDoor(input, storage).catch((error: unknown) => (fault = String(error).slice(0, 300)));
    const used = process.cpuUsage(start);
    const ms = (used.user + used.system) / 1_000;
    const late = ms > TOO_LONG_MS && !BY_WORKERS.includes(input.kind) ? `${Math.round(ms)} ms` : null;
    note('door', input, i, ms, fault ?? late);
    if ((i + 1) % 500 === 0) console.log(`${i + 1} of ${upTo} at the doors, ${faults.length} faults`);
  }
  return (await kept()) === before ? 'the same' : 'CHANGED';
}

/** Real pages: the longest task, errors nobody caught, and the kept rides. */
async function realPages(upTo: number): Promise<string> {
  const site = await openSite();
  const { page, problems } = await site.openPage({ width: 1280, height: 720, address: '#about' });
  await page.addInitScript(watchTasks);
  await page.reload();
  const ids = RIDES.map((ride) => ride['id'] as string);
  await intoPage(page, { kind: 'copy', how: '', text: JSON.stringify(copyOf({ rides: RIDES })) });
  const before = await page.evaluate(keptInPage, ids);
  if (!ids.every((id) => before.includes(`"id":"${id}"`))) throw new Error('the rides were not kept');
  for (let i = 0; i < upTo; i += 1) {
    const input = hostileInput(seed + 1, i, PAGE_KINDS);
    let shortestMs = Number.POSITIVE_INFINITY;
    let fault: string | null = null;
    for (let attempt = 0; attempt < 3 && shortestMs > TOO_LONG_MS && fault === null; attempt += 1) {
      await page.evaluate(longestTask);
      const known = problems.length;
      await intoPage(page, input).catch(
        (error: unknown) => (fault = `said nothing: ${String(error).slice(0, 200)}`),
      );
      shortestMs = Math.min(shortestMs, await page.evaluate(longestTask));
      if (problems.length > known) fault = problems.slice(known).join('; ').slice(0, 300);
    }
    note(
      'page',
      input,
      i,
      shortestMs,
      fault ?? (shortestMs > TOO_LONG_MS ? `${Math.round(shortestMs)} ms` : null),
    );
    if ((i + 1) % 50 === 0) console.log(`${i + 1} of ${upTo} in pages, ${faults.length} faults`);
  }
  const after = await page.evaluate(keptInPage, ids);
  await site.close();
  return after === before ? 'the same' : 'CHANGED';
}

const keptAtDoors = await doors(count - pages);
const keptInPages = pages > 0 ? await realPages(pages) : 'not looked at';
console.log(`\n${count} inputs, seed ${seed}, ${pages} of them in pages, on ${cpus().length} processors\n`);
console.log('| where | inputs | longest (ms) | faults | the longest one |\n|---|---|---|---|---|');
for (const [name, { inputs, longestMs, longest, faults: bad }] of [...table].toSorted(([a], [b]) =>
  a < b ? -1 : 1,
))
  console.log(`| ${name} | ${inputs} | ${Math.round(longestMs)} | ${bad} | ${longest} |`);
console.log(
  `\nkept rides: at the doors ${keptAtDoors}, in the pages ${keptInPages}\n${faults.length} faults`,
);
for (const fault of faults.slice(0, 40)) console.log(`- ${fault}`);
