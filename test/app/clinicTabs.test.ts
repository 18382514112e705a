/**
 * Group sessions in several tabs that have nothing but the storage between them: no locks, and no word from one to the
 * other. `test/figures/tabs.ts` plays longer, and in a real browser.
 */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createOwnedSessions } from '../../src/storage/sessions.ts';
import type { OwnedDesk } from '../../src/app/group/clinicDesk.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { after, startOf } from '../../src/features/clinic/session.ts';
import type { Storage } from '../../src/storage/index.ts';
import { takePart } from '../../src/app/device/tabLock.ts';
import { openWithoutDatabase } from '../storage/given.ts';
import { markTurn, openDesk, propsOf, rideNext, sessionOfThree, turnOf } from './clinicGiven.ts';
import { createTab } from './tabs.ts';
import { play } from './tabsPlay.ts';

const NAME = 'before-the-hill.clinic-owner';
let storage: Storage;
let owners: ReturnType<typeof takePart>[] = [];

beforeEach(async () => {
  storage = await openWithoutDatabase();
});
afterEach(() => {
  for (const owner of owners) owner.lose();
  owners = [];
});

function tab(): Promise<OwnedDesk> {
  const owner = takePart(NAME, `tab-${owners.push(undefined as never)}`);
  owners[owners.length - 1] = owner;
  return openDesk(createOwnedSessions(storage, owner));
}

describe('two tabs with one session', () => {
  it('only the one that looked last rides; what the other wants changes nothing, and it learns why', async () => {
    const first = await tab();
    await first.onSaveRound(sessionOfThree());
    const second = await tab();
    await rideNext(second);
    await expect(Promise.race([first.gone, Promise.resolve('here')])).resolves.toBe('here');
    await first.onSaveRound(sessionOfThree());
    expect(owners.map(({ isOwned }) => isOwned())).toEqual([false, true]);
    const again = await tab();
    expect(again.state().saved.records).toHaveLength(1);
    expect(again.state().saved.rounds[0]?.round.rides).toHaveLength(1);
  });

  it('hear of each other at once where the browser tells them; what comes late takes nothing from the owner', async () => {
    await tab();
    await tab();
    const [first] = owners;
    window.dispatchEvent(new StorageEvent('storage', { key: NAME, newValue: 'somebody' }));
    await first!.gone;
    await storage.changeRecords(async () => ({}));
    expect(owners.map(({ isOwned }) => isOwned())).toEqual([false, true]);
  });

  it('a ride that somebody rides again or that is not the last is not taken back by a late tap', async () => {
    const desk = await tab();
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    const [record] = desk.state().saved.records;
    const next = after(desk.state().saved.rounds[0]!, { kind: 'next' });
    await desk.onSaveRound(after(next, { kind: 'start', nickname: next.round.line[0]! }));
    await desk.onTakeBack(record!.id);
    expect((await tab()).state().saved.records).toEqual([record]);
  });

  it('a ride whose turn was ridden in the other tab meanwhile is kept, and neither is taken back', async () => {
    const first = await tab();
    await first.onSaveRound(sessionOfThree());
    const [saved] = first.state().saved.rounds;
    const start = startOf(saved!, 'red-fox', propsOf(first, ''))!;
    await first.onSaveRound(after(saved!, { kind: 'start', nickname: 'red-fox' }));
    const second = await tab();
    const other = turnOf(start, 0.9);
    await second.take(other, async (keep) => void (await keep(await markTurn(other))));
    const mine = turnOf(start, 0.2);
    expect(await first.take(mine, () => Promise.reject(new Error('asked too late')))).toBe(false);
    const again = await tab();
    await again.take(mine, async (keep) => void (await keep(await markTurn(mine))));
    expect(again.state().saved.records).toHaveLength(2);
    const { saved: at } = (await tab()).state();
    expect(at.records.map(({ seq }) => seq)).toEqual([1, 2]);
    expect(at.rounds[0]?.round.rides).toHaveLength(1);
  });

  it('a ride that is being marked while the other takes over is kept once', async () => {
    const first = await tab();
    await first.onSaveRound(sessionOfThree());
    const [saved] = first.state().saved.rounds;
    const start = startOf(saved!, 'red-fox', propsOf(first, ''))!;
    await first.onSaveRound(after(saved!, { kind: 'start', nickname: 'red-fox' }));
    const turn = turnOf(start);
    let second: OwnedDesk | null = null;
    await first.take(turn, async (keep) => {
      second = await tab();
      expect(await keep(await markTurn(turn))).toEqual({ state: 'saved' });
    });
    await expect.poll(() => second?.state().saved.records.length, { timeout: 120_000 }).toBe(1);
    expect((await tab()).state().saved.records).toHaveLength(1);
  });

  it('two turns that came to their end in the same moment are both marked by whoever comes next', async () => {
    const first = await tab();
    await first.onSaveRound(sessionOfThree());
    const start = startOf(first.state().saved.rounds[0]!, 'red-fox', propsOf(first, ''))!;
    const closing = createOwnedSessions(storage, takePart(NAME, 'closing'));
    await closing.load();
    await closing.putFinished(turnOf(start, 0.2));
    await closing.putFinished(turnOf(start, 0.8));
    const next = await tab();
    await expect.poll(() => next.state().saved.records.length, { timeout: 120_000 }).toBe(2);
    expect((await tab()).state().saved.records).toHaveLength(2);
  });

  it('after everything was deleted, a tab that did not hear of it writes nothing back', async () => {
    const first = await tab();
    await first.onSaveRound(sessionOfThree());
    await storage.deleteEverything();
    // The token is gone with everything; somebody else begins anew.
    await tab();
    await first.onSaveRound(sessionOfThree());
    expect((await tab()).state().saved.rounds).toEqual([]);
  });
});

/** A storage that answers late, each time by another number of turns. */
function late(of: Storage, random: () => number): Storage {
  return {
    ...of,
    async changeRecords(work) {
      for (let turns = Math.floor(random() * 4); turns > 0; turns -= 1)
        await new Promise((resolve) => setTimeout(resolve, 0));
      return of.changeRecords(work);
    },
  };
}

describe('several tabs used at once', () => {
  it('two and three of them, in six orders: nothing is lost and nothing undone', async () => {
    const faults: string[] = [];
    let rides = 0;
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const random = seededRandom(seed);
      const shared = await openWithoutDatabase();
      let tokens = 0;
      const token = (): string => `${seed}-${(tokens += 1)}`;
      const tabs = [0.2, 0.5, 0.8]
        .slice(seed % 2)
        .map((skill) => createTab(late(shared, random), token, skill));
      const played = await play(tabs, createTab(shared, token, 0.5), random, 10);
      faults.push(...played.faults.map((fault) => `${seed}: ${fault}`));
      rides += played.rides;
    }
    expect(faults).toEqual([]);
    expect(rides).toBeGreaterThan(6);
  });
});
