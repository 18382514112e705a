/**
 * One thing breaks while somebody plays. A few of the faults and kills that `test/figures/faults.ts` and
 * `test/figures/kills.ts` go through by the hundred: another seed tries others.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hashJson } from '../../src/core/math/hash.ts';
import { makeDevice } from '../figures/faults/device.ts';
import { allFaults } from '../figures/faults/list.ts';
import { type Desk, observe, openDesk, suffer } from '../figures/faults/run.ts';
import { BAD, type Fault } from '../figures/faults/types.ts';
import { killRides } from '../figures/kills/rides.ts';
import { builtSiteFolder, openSite, type Site } from './site.ts';

const SEED = 5;
/** Each takes some ten seconds. */
const MOST = 5;

describe('single faults in a ride, each of another group', () => {
  let site: Site;
  let desk: Desk;
  let chosen: Fault[];

  beforeAll(async () => {
    site = await openSite();
    desk = await openDesk(site, await makeDevice(site));
    const known = allFaults(await observe(desk, ['ride'])).filter(({ journey }) => journey === 'ride');
    // By name: which calls are counted differs a little from run to run, and must not change the choice.
    const drawn = known
      .map((fault) => ({ fault, lot: hashJson([SEED, fault.name]) }))
      .sort((a, b) => (a.lot < b.lot ? -1 : 1));
    const ofGroup = new Map(drawn.map(({ fault }) => [fault.group, fault]));
    chosen = [...ofGroup.values()].slice(0, MOST);
  });

  afterAll(async () => {
    await desk?.context.close();
    await site?.close();
  });

  it('ends with a true sentence, nothing kept is lost, and the next ride goes', async () => {
    expect(chosen.length).toBe(MOST);
    const outcomes = [];
    for (const fault of chosen) outcomes.push(await suffer(desk, fault));
    const bad = outcomes.filter(({ verdict }) => (BAD as readonly string[]).includes(verdict));
    expect(bad.map(({ fault, verdict, detail }) => `${fault.name}: ${verdict}: ${detail}`)).toEqual([]);
    expect(outcomes.filter(({ verdict }) => verdict !== 'did not happen').length).toBeGreaterThanOrEqual(3);
  });
});

describe('a browser that is killed in the middle of rides', () => {
  const profile = mkdtempSync(join(tmpdir(), 'kills-'));
  afterAll(() => rmSync(profile, { recursive: true, force: true, maxRetries: 5 }));

  it('has kept all but the last two seconds of each', async () => {
    const said: string[] = [];
    const figures = await killRides({
      count: 3,
      browser: 'chromium',
      seed: SEED,
      profile,
      site: builtSiteFolder,
      say: (line) => said.push(line),
    });
    expect(figures.rides).toBeGreaterThanOrEqual(3);
    expect([
      figures.gone,
      figures.overTwo,
      figures.reportedLost,
      ...said.filter((one) => /lost/.test(one)),
    ]).toEqual([0, 0, 0]);
  });
});
