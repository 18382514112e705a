/** The journal of a ride over a storage in memory: what is left of it at any moment can be ridden on. */
import { describe, expect, it } from 'vitest';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { TICKS_PER_S } from '../../src/core/ride/clock.ts';
import { type LiveRide, replayRecording, startRide } from '../../src/core/ride/run.ts';
import type { RideCommand } from '../../src/core/ride/types.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import { dropJournal, Journal, JOURNAL_TICKS, readJournals } from '../../src/app/ride/journal.ts';
import type { GroupTurn } from '../../src/state/groupTurn.ts';
import { rideAgain } from '../../src/app/ride/replay.ts';
import type { Storage } from '../../src/storage/index.ts';
import { openWithoutDatabase } from '../storage/given.ts';
import { levelById } from '../core/ride/worlds.ts';

const level = levelById('one-pitch-announced');
const bike = bikeById('trekking-3x8')!;
const rider = riderById('adult-weekly')!;
const world = buildRideWorld(courseOfLevel(level), bike, rider, { autoEase: false });
const FRAME_TICKS = 2;
/** What "two seconds of riding" are in ticks. */
const MOST_LOST = 240;

const what = { level, rest: level.id, turn: null, bike, rider, autoEase: false, partCount: 0 };

/** Commands of restless hands: many short presses, some shifts. */
function hands(seed: number): () => readonly RideCommand[] {
  const random = seededRandom(seed);
  return () => {
    const dice = random();
    if (dice < 0.02)
      return [
        {
          kind: 'shift',
          derailleur: 'rear',
          direction: dice < 0.01 ? 'easier' : 'harder',
          steps: 1,
        },
      ];
    if (dice < 0.3) return [{ kind: 'pressure', pressure: dice < 0.15 ? 'ease' : 'steady' }];
    return [];
  };
}

/** A storage in memory, and a way to wait until all that was put into it is there. */
async function openQuickStorage() {
  const storage = await openWithoutDatabase();
  const pending = new Set<Promise<unknown>>();
  const watched: Storage = {
    ...storage,
    health: storage.health,
    damaged: storage.damaged,
    putRecord(record) {
      // As a database would answer; what is only in memory is never called saved.
      const put = storage.putRecord(record).then(() => ({ saved: true }) as const);
      pending.add(put);
      void put.then(() => pending.delete(put));
      return put;
    },
  };
  const settled = async (): Promise<void> => {
    await new Promise((resolve) => setTimeout(resolve, 0));
    while (pending.size > 0) await Promise.all(pending);
  };
  return { storage, get: () => Promise.resolve(watched), settled };
}

/** Rides on for so many ticks as a loop would, a journal beside it; what it writes is waited for. */
async function rideOn(
  ride: LiveRide,
  journal: Journal,
  ticks: number,
  seed: number,
  settled: () => Promise<void>,
): Promise<void> {
  const next = hands(seed);
  const end = ride.now.tick + ticks;
  let frames = 0;
  while (ride.now.tick < end && ride.now.phase !== 'finished') {
    let shifted = false;
    for (let i = 0; i < FRAME_TICKS && ride.now.tick < end; i += 1) {
      const commands = next();
      shifted ||= commands.some(({ kind }) => kind === 'shift');
      ride.step(commands);
    }
    journal.note(ride, shifted);
    // A quarter of a second of riding is long enough for what was begun.
    frames += 1;
    if (frames % 15 === 0) await settled();
  }
}

async function theOne(storage: Storage) {
  const all = await readJournals(storage);
  expect(all).toHaveLength(1);
  return all[0]!;
}

describe('a journal', () => {
  it.each([1, 2, 3, 4])(
    'holds all but the last two seconds at any moment, and what it holds rides the same again (%i)',
    async (seed) => {
      const { storage, get, settled } = await openQuickStorage();
      const ride = startRide(world);
      const journal = new Journal(`ride-${seed}`, what, get, 0);
      for (const part of [150, 333, 1201]) {
        await rideOn(ride, journal, part, seed, settled);
        if (ride.now.tick < JOURNAL_TICKS) continue;
        const { recording } = await theOne(storage);
        expect(ride.now.tick - recording.ticks).toBeLessThanOrEqual(MOST_LOST);
        expect(replayRecording(world, recording).same).toBe(true);
        const mine = ride.recording(recording).commands.filter(({ tick }) => tick < recording.ticks);
        expect(recording.commands).toEqual(mine);
      }
    },
  );

  it('is written at once when a lever is pushed', async () => {
    const { storage, get } = await openQuickStorage();
    const ride = startRide(world);
    const journal = new Journal('one', what, get, 0);
    for (let i = 0; i < 30; i += 1) ride.step([]);
    journal.note(ride, false);
    expect(await readJournals(storage)).toEqual([]);
    ride.step([{ kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 }]);
    journal.note(ride, true);
    await expect.poll(async () => (await readJournals(storage))[0]?.recording.ticks).toBe(31);
  });

  it('of a ride that goes on holds the whole ride, whether in the same tab or in another', async () => {
    const { storage, get, settled } = await openQuickStorage();
    const first = startRide(world);
    const journal = new Journal('one', what, get, 0);
    await rideOn(first, journal, 1500, 7, settled);
    await journal.flush(first);
    let { recording, partCount } = await theOne(storage);
    const inSameTab = startRide(world);
    rideAgain(inSameTab, recording);
    journal.goOn();
    await rideOn(inSameTab, journal, 1500, 8, settled);
    await journal.flush(inSameTab);
    ({ recording, partCount } = await theOne(storage));
    expect(recording.ticks).toBe(inSameTab.now.tick);
    expect(replayRecording(world, recording).same).toBe(true);
    const elsewhere = startRide(world);
    rideAgain(elsewhere, recording);
    const other = new Journal('one', { ...what, partCount }, get, 0);
    await rideOn(elsewhere, other, 900, 9, settled);
    await other.flush(elsewhere);
    const last = (await theOne(storage)).recording;
    expect([last.ticks, replayRecording(world, last).same]).toEqual([3900, true]);
    expect(last.commands).toEqual(elsewhere.recording(last).commands);
    await other.drop();
    expect(await readJournals(storage)).toEqual([]);
    expect((await storage.exportAll()).records).toEqual([]);
  });

  it('of somebody who rests by the road for more than an hour is offered like any other', async () => {
    const { storage, get } = await openQuickStorage();
    const ride = startRide(world);
    const journal = new Journal('long', what, get, 0);
    ride.step([{ kind: 'brake', on: true }]);
    while (ride.now.tick < 3700 * TICKS_PER_S && ride.now.phase !== 'finished') ride.step([]);
    await journal.flush(ride);
    const { recording } = await theOne(storage);
    expect([ride.now.phase === 'finished', recording.ticks]).toEqual([false, 3700 * TICKS_PER_S]);
  });

  it('knows whose turn it is, and stops where a piece is missing', async () => {
    const { storage, get, settled } = await openQuickStorage();
    const turn: GroupTurn = {
      planId: 'plan-1',
      nickname: 'blue-fox',
      rideIndex: 1,
      attempt: 2,
      level,
      bike,
      rider,
    };
    const ride = startRide(world);
    const journal = new Journal('one', { ...what, turn, rest: 'clinic/s/plan-1' }, get, 0);
    for (let i = 0; i < 6; i += 1) {
      await rideOn(ride, journal, 700, i, settled);
      await journal.flush(ride);
    }
    const whole = await theOne(storage);
    expect(whole.turn).toEqual(turn);
    expect(whole.partCount).toBeGreaterThan(2);
    await storage.deleteRecords('ride-journal-part', ['one-1']);
    const short = await theOne(storage);
    expect(short.recording.ticks).toBeLessThan(whole.recording.ticks);
    expect(replayRecording(world, short.recording).same).toBe(true);
    await dropJournal(storage, 'one', whole.partCount);
    expect((await storage.exportAll()).records).toEqual([]);
  });

  it('is waited for until it has begun, but not where it cannot begin, and not for ever', async () => {
    const order: string[] = [];
    const { storage } = await openQuickStorage();
    let open = (_: Storage): void => undefined;
    const slow = new Promise<Storage>((resolve) => {
      open = resolve;
    });
    const putRecord: Storage['putRecord'] = async (record) => {
      const answer = await storage.putRecord(record);
      order.push('in the database');
      return answer;
    };
    const waited = new Journal('slow', what, () => slow)
      .begun(60_000)
      .then(() => order.push('the pedals turn'));
    open({ ...storage, health: storage.health, damaged: storage.damaged, putRecord });
    await waited;
    expect(order).toEqual(['in the database', 'the pedals turn']);
    await new Journal('missing', what, () => Promise.reject(new Error('not fetched'))).begun(60_000);
    await new Journal('never', what, () => new Promise(() => undefined)).begun(20);
  });

  it('that cannot be written costs the ride nothing', async () => {
    const ride = startRide(world);
    let asked = 0;
    const journal = new Journal('one', what, () => {
      asked += 1;
      return Promise.reject(new Error('the part is missing'));
    });
    await rideOn(ride, journal, 1000, 1, () => new Promise((resolve) => setTimeout(resolve, 0)));
    expect(await journal.flush(ride)).toBe(false);
    // Asked with every piece, not with every picture.
    expect(asked).toBeLessThan(60);
  });
});
