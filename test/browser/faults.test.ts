/**
 * A handful of the faults of `test/figures/faults.ts`, one of every kind that ends soon: whatever breaks, the page says
 * something true, nothing that was kept is lost, and the next journey works.
 */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { words } from '../../src/pages/words.ts';
import { type Held, makeDevice, missingFrom } from '../figures/faults/device.ts';
import { NOTHING } from '../figures/faults/journeys.ts';
import { type Desk, openDesk, suffer } from '../figures/faults/run.ts';
import { isTrueFor, troubleIn } from '../figures/faults/said.ts';
import {
  type CallFault,
  type Cause,
  type Fault,
  GOOD,
  type How,
  type JourneyName,
} from '../figures/faults/types.ts';
import { openSite, type Site } from './site.ts';

let site: Site;
let desk: Desk;

beforeAll(async () => {
  site = await openSite();
  desk = await openDesk(site, await makeDevice(site));
});

afterAll(() => site?.close());

const call = (fault: Partial<CallFault> & { readonly path: string }): How => ({
  kind: 'page',
  fault: { what: 'call', misdeed: 'throws', error: 'Error', nth: 1, forever: false, from: 'start', ...fault },
});
const put = (error: string): How =>
  call({ path: 'IDBObjectStore.prototype.put', error, forever: true, from: 'acting' });

const FAULTS: readonly (readonly [name: string, JourneyName, Cause, How])[] = [
  [
    'a page comes instead of the levels',
    'ride',
    'network',
    { kind: 'file', file: 'levels-*.js', answer: 'portal' },
  ],
  ['the disk is full', 'ride', 'disk-full', put('QuotaExceededError')],
  ['the database is broken', 'edit', 'store', put('UnknownError')],
  [
    'the judge does not start',
    'turn',
    'worker',
    { kind: 'page', fault: { what: 'worker', script: 'judge.worker', ends: 'at-start' } },
  ],
  [
    'there are no locks',
    'turn',
    'browser',
    { kind: 'page', fault: { what: 'absent', path: 'navigator.locks' } },
  ],
  [
    'the clock is turned back by ten years',
    'import',
    'clock',
    { kind: 'page', fault: { what: 'clock', byMs: -315_532_800_000, from: 'acting' } },
  ],
  ['the tab is killed in mid-ride', 'turn', 'killed', { kind: 'hand', hand: 'kill-tab', at: 'riding' }],
  ['the device is turned in mid-ride', 'ride', 'looks', { kind: 'hand', hand: 'turn-device', at: 'riding' }],
];

describe('one thing breaks', () => {
  it.each(FAULTS)(
    '%s (%s): told truly, nothing lost, and the next journey works',
    async (name, journey, cause, how) => {
      const fault: Fault = { name, group: '', journey, cause, how };
      const { verdict, detail } = await suffer(desk, fault);
      expect(GOOD, `${verdict}: ${detail}`).toContain(verdict);
    },
  );
});

describe('what is looked at', () => {
  const before: Held = {
    rides: ['a'],
    levels: ['L'],
    records: ['clinic-record 1', 'unfinished-level bench'],
    settings: 1,
  };

  it('misses a ride, a level, a turn and a promise that was not kept', () => {
    expect(missingFrom(before, before, NOTHING)).toEqual([]);
    const emptied = { ...before, rides: [], levels: [], records: [] };
    expect(missingFrom(emptied, before, NOTHING)).toEqual(['ride a', 'level L', 'record clinic-record 1']);
    expect(missingFrom(before, before, { ...NOTHING, rides: 1 })).toEqual(['a ride that was called kept']);
    expect(missingFrom(before, before, { ...NOTHING, turns: 1 })).toEqual(['a turn that was called kept']);
    expect(missingFrom(before, before, { ...NOTHING, gone: true })).toHaveLength(1);
  });

  it('takes a sentence that names another cause for false', () => {
    const full = words.after.notSaved['disk-full'] ?? '';
    expect(troubleIn(`Your ride. ${full} Ride again`)).toBe(full);
    expect([isTrueFor(full, 'disk-full'), isTrueFor(full, 'store')]).toEqual([true, false]);
    expect(troubleIn('Your ride. This ride is kept on this device.')).toBeNull();
  });
});
