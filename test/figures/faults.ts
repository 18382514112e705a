/**
 * Plays journeys in the built site while one thing at a time is broken, and prints what became of each: what was told,
 * whether it is true, whether anything kept is lost, whether the next journey works. Run `npm run build` first, then
 * `npx tsx test/figures/faults.ts`; `count=60 seed=3` takes so many by chance, `only=canvas` those whose name or group
 * holds the word, `at=4` plays so many at once, `outcomes=FILE` notes each so that a run that was stopped goes on, `write` puts the table into the contributor guide.
 */
import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { builtSiteFolder, openSite } from '../browser/site.ts';
import { type Device, makeDevice } from './faults/device.ts';
import { allFaults, type Observations, type Observed } from './faults/list.ts';
import { observe, openDesk, suffer } from './faults/run.ts';
import { tableOf, writeTable } from './faults/table.ts';
import { BAD, type JourneyName, type Outcome } from './faults/types.ts';
import { shuffled } from '../features/handover/given.ts';

interface Prepared {
  readonly build: number;
  readonly device: Device;
  readonly seen: readonly (readonly [JourneyName, Observed])[];
}

const given = new Map(process.argv.slice(2).map((one) => one.split('=') as [string, string | undefined]));
const number = (name: string, otherwise: number): number => Number(given.get(name) ?? otherwise);
const seed = number('seed', 1);
const only = given.get('only') ?? '';

const site = await openSite();

/** The used device and what journeys call; `prepared=FILE` keeps both for the next run with the same build. */
async function prepare(): Promise<{ readonly device: Device; readonly seen: Observations }> {
  const file = given.get('prepared');
  const build = readFileSync(join(builtSiteFolder, 'offline.js'), 'utf8').length;
  if (file !== undefined && existsSync(file)) {
    const kept = JSON.parse(readFileSync(file, 'utf8')) as Prepared;
    if (kept.build === build) return { device: kept.device, seen: new Map(kept.seen) };
  }
  const device = await makeDevice(site);
  const desk = await openDesk(site, device);
  const seen = await observe(desk);
  await desk.context.close();
  if (file !== undefined) writeFileSync(file, JSON.stringify({ build, device, seen: [...seen] }));
  return { device, seen };
}

try {
  const { device, seen } = await prepare();
  const known = allFaults(seen);
  const wanted = known.filter(({ name, group }) => `${group} ${name}`.includes(only));
  const chosen = shuffled(wanted, seed).slice(0, number('count', wanted.length));
  console.log(`${known.length} faults are known, ${chosen.length} are tried, seed ${seed}.`);
  const notes = given.get('outcomes');
  const outcomes: Outcome[] =
    notes === undefined || !existsSync(notes)
      ? []
      : readFileSync(notes, 'utf8')
          .split('\n')
          .filter((line) => line !== '')
          .map((line) => JSON.parse(line) as Outcome);
  const tried = new Set(outcomes.map(({ fault }) => fault.name));
  const left = chosen.filter(({ name }) => !tried.has(name));
  const startedMs = Date.now();
  const work = async (): Promise<void> => {
    const desk = await openDesk(site, device);
    for (let fault = left.pop(); fault !== undefined; fault = left.pop()) {
      const outcome = await suffer(desk, fault);
      outcomes.push(outcome);
      if (notes !== undefined) appendFileSync(notes, `${JSON.stringify(outcome)}\n`);
      const bad = (BAD as readonly string[]).includes(outcome.verdict);
      console.log(
        `${bad ? 'BAD ' : '    '}${outcome.verdict}: ${fault.group}: ${fault.name}${outcome.detail === '' ? '' : `: ${outcome.detail}`}`,
      );
    }
  };
  await Promise.all(Array.from({ length: number('at', 3) }, work));
  console.log(`\n${tableOf(outcomes)}`);
  console.log(`${outcomes.length} faults in ${((Date.now() - startedMs) / 60_000).toFixed(1)} min.`);
  if (given.has('write')) writeTable(outcomes);
  process.exitCode = outcomes.some(({ verdict }) => (BAD as readonly string[]).includes(verdict)) ? 1 : 0;
} finally {
  await site.close();
}
