/** The owner of group sessions: every ride is kept once, whatever moment the page dies in, and what is deleted is gone. */
import { beforeEach, describe, expect, it } from 'vitest';

import { takeTurn } from '../../src/core/group/turnQueue.ts';
import { parseRecord } from '../../src/core/group/records/recordFile.ts';
import { after, startOf, ridesOf } from '../../src/features/clinic/session.ts';
import { sealRecord } from '../../src/core/group/records/record.ts';
import { readRound, type SavedRound } from '../../src/core/group/savedRound.ts';
import {
  markTurn,
  type MemoryShelf,
  memoryShelf,
  openDesk,
  propsOf,
  rideNext,
  sessionOfThree,
  turnOf,
} from './clinicGiven.ts';

let shelf: MemoryShelf;

beforeEach(() => {
  shelf = memoryShelf();
});

const roundKept = (): SavedRound | null => readRound(JSON.parse(shelf.kept.get('round session-1') ?? 'null'));
const keys = (kind: string): string[] => [...shelf.kept.keys()].filter((key) => key.startsWith(`${kind} `));
const due = async (nickname: string, desk: Awaited<ReturnType<typeof openDesk>>) => {
  const [saved] = desk.state().saved.rounds;
  const start = saved === undefined ? null : startOf(saved, nickname, propsOf(desk, ''));
  if (saved === undefined || start === null) throw new Error('nothing is due');
  await desk.onSaveRound(after(saved, { kind: 'start', nickname }));
  return turnOf(start);
};

describe('a turn that was ridden', () => {
  it('becomes a record that passes its own door, and the round moves on', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    const [record] = desk.state().saved.records;
    expect(parseRecord(JSON.parse(JSON.stringify(record))).damaged).toBeNull();
    expect(record).toMatchObject({ nickname: 'red-fox', seq: 1, attempt: 1, deviceId: 'device-1' });
    expect(roundKept()?.round.phase).toEqual({ kind: 'ridden', nickname: 'red-fox', recordId: record?.id });
    expect(keys('finished')).toEqual([]);
    expect(desk.state()).toMatchObject({ kept: true, marking: null, debriefOf: record?.id });
  });

  it('is counted once: the number of a ride that was taken back is never used again', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    await desk.onSaveRound(after(desk.state().saved.rounds[0]!, { kind: 'next' }));
    await rideNext(desk);
    const [saved] = desk.state().saved.rounds;
    const last = saved!.round.rides.at(-1)!;
    await desk.onTakeBack(last.recordId);
    await rideNext(desk);
    expect(desk.state().saved.records.map(({ seq, nickname }) => `${seq} ${nickname}`)).toEqual([
      '1 red-fox',
      '3 blue-owl',
    ]);
    expect(keys('record')).toHaveLength(2);
  });

  it('that cannot be marked is told, does not count, and can be ridden again', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    const turn = await due('red-fox', desk);
    await desk.take(turn, () => Promise.reject(new Error('no worker')));
    expect(desk.state().marking).toMatchObject({ nickname: 'red-fox', failed: true });
    expect([desk.state().saved.records, roundKept()?.round.phase.kind]).toEqual([[], 'riding']);
    await desk.take(turn, async (keep) => void (await keep(await markTurn(turn))));
    expect(desk.state().saved.records).toHaveLength(1);
    expect(desk.state().marking).toBeNull();
  });
});

describe('a page that dies', () => {
  it('while a ride is marked: the ride is marked when the page is opened again', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    void desk.take(await due('red-fox', desk), () => new Promise(() => undefined));
    await expect.poll(() => keys('finished').length).toBe(1);
    const again = await openDesk(shelf);
    expect(again.state().marking).toMatchObject({ nickname: 'red-fox', failed: false });
    await expect.poll(() => again.state().saved.records.length).toBe(1);
    await expect.poll(() => keys('finished').length).toBe(0);
    expect(roundKept()?.round.rides).toHaveLength(1);
  });

  it('between record and round: the record is taken into the round, once', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    const turn = await due('red-fox', desk);
    const before = shelf.kept.get('round session-1')!;
    await desk.take(turn, async (keep) => void (await keep(await markTurn(turn))));
    shelf.kept.set('round session-1', before);
    shelf.kept.set('finished session-1', JSON.stringify(turn));
    const again = await openDesk(shelf);
    await expect.poll(() => roundKept()?.round.rides.length).toBe(1);
    expect(again.state().saved.records).toHaveLength(1);
    expect([keys('record').length, keys('finished')]).toEqual([1, []]);
  });

  it('between taking a ride back and deleting it: it does not come back', async () => {
    const desk = await openDesk({ ...shelf, dropRide: () => new Promise(() => undefined) });
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    void desk.onTakeBack(desk.state().saved.records[0]!.id);
    await expect.poll(() => keys('undone').length).toBe(1);
    expect([keys('record').length, roundKept()?.round.rides]).toEqual([1, []]);
    const again = await openDesk(shelf);
    expect(again.state().saved.records).toEqual([]);
    expect([keys('record'), keys('undone')]).toEqual([[], []]);
  });

  it('between giving a ride to somebody else and deleting the old record: it counts once, for them', async () => {
    const desk = await openDesk({ ...shelf, dropRide: () => new Promise(() => undefined) });
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    const [old] = desk.state().saved.records;
    void desk.onGive(old!.id, 'green-hare');
    await expect.poll(() => keys('undone').length).toBe(1);
    expect(keys('record')).toHaveLength(2);
    const again = await openDesk(shelf);
    const [record] = again.state().saved.records;
    expect(again.state().saved.records).toHaveLength(1);
    expect(record).toMatchObject({ nickname: 'green-hare', attempt: 1, seq: 2, recording: old!.recording });
    expect(parseRecord(record).damaged).toBeNull();
    expect(roundKept()?.round.rides).toMatchObject([{ nickname: 'green-hare', recordId: record!.id }]);
    expect([keys('record').length, keys('undone')]).toEqual([1, []]);
  });

  it('in the middle of a ride: the same turn is due again', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    await due('red-fox', desk);
    const again = await openDesk(shelf);
    expect(again.state().saved.rounds[0]?.round.phase).toEqual({
      kind: 'riding',
      nickname: 'red-fox',
      rideIndex: 0,
      attempt: 1,
    });
  });
});

describe('writing', () => {
  it('keeps the order in which it was asked, though the first write is the slowest', async () => {
    let first = true;
    shelf = memoryShelf(() => {
      const slow = first ? 20 : 0;
      first = false;
      return slow;
    });
    const desk = await openDesk(shelf);
    const saved = sessionOfThree();
    const later = { ...saved, round: takeTurn(saved.round, { kind: 'skip', nickname: 'red-fox' }) };
    await Promise.all([desk.onSaveRound(saved), desk.onSaveRound(later)]);
    expect(roundKept()?.round.line).toEqual(['blue-owl', 'green-hare', 'red-fox']);
  });

  it('that does not succeed is told, until something is kept again', async () => {
    let works = false;
    const desk = await openDesk({ ...shelf, putRound: async () => works });
    await desk.onSaveRound(sessionOfThree());
    expect(desk.state().kept).toBe(false);
    works = true;
    await desk.onSaveRound(sessionOfThree());
    expect(desk.state().kept).toBe(true);
  });
});

describe('deleting a session', () => {
  it('leaves no ride, no round and nothing that waits, and other sessions as they are', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    const other = sessionOfThree();
    await desk.onSaveRound({
      ...other,
      plan: { ...other.plan, id: 'session-2' },
      round: { ...other.round, planId: 'session-2' },
    });
    void desk.onDeleteSession('session-1');
    await expect.poll(() => keys('round')).toEqual(['round session-2']);
    expect([keys('record'), keys('finished')]).toEqual([[], []]);
    expect(desk.state().saved.rounds.map(({ plan }) => plan.id)).toEqual(['session-2']);
  });

  it('a ride that is marked afterwards does not come back', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    const turn = await due('red-fox', desk);
    await desk.take(turn, async (keep) => {
      const judged = await markTurn(turn);
      void desk.onDeleteSession('session-1');
      expect((await keep(judged)).state).toBe('not-saved');
    });
    await expect.poll(() => [...shelf.kept.keys()]).toEqual([]);
    expect(desk.state().marking).toBeNull();
  });
});

describe('the group picture', () => {
  it('is counted for the session that is looked at, and again after another ride', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    expect(desk.state().picture).toBeNull();
    desk.look('s/session-1/picture');
    await expect.poll(() => desk.state().picture?.rides).toBe(1);
    expect(desk.state().picture?.roads[0]?.strip).not.toBeNull();
    await desk.onSaveRound(after(desk.state().saved.rounds[0]!, { kind: 'next' }));
    await rideNext(desk);
    await expect.poll(() => desk.state().picture?.rides).toBe(2);
    desk.look('');
    expect(desk.state().picture).toBeNull();
  });

  it('leaves out a ride whose marks are not those of its recording, and says how many', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    const [own] = desk.state().saved.records;
    const claimed = sealRecord({ ...own!, id: 'claimed', deviceId: 'other-tablet', total: 99.9 });
    shelf.kept.set('record from-claimed', JSON.stringify(claimed));
    await desk.reload();
    desk.look('s/session-1/report');
    await expect.poll(() => desk.state().apart).toEqual([claimed.checksum]);
    expect(desk.state().picture?.rides).toBe(1);
    // It is kept all the same, and counts in no list of the session either.
    const { saved, apart } = desk.state();
    const [session] = saved.rounds;
    expect(ridesOf(session!, saved.records)).toEqual([own, claimed]);
    expect(ridesOf(session!, saved.records, apart)).toEqual([own]);
  });
});

describe('rides of other devices', () => {
  it('never push aside the ride of this one that has just been kept', async () => {
    const desk = await openDesk(shelf);
    await desk.onSaveRound(sessionOfThree());
    await rideNext(desk);
    const [own] = desk.state().saved.records;
    const other = sealRecord({ ...own!, id: 'from-elsewhere', deviceId: 'other-tablet' });
    // What the shelf knew before the ride, and one ride of somebody else.
    desk.collected('session-1', [other]);
    expect(desk.state().saved.records).toEqual([own, other]);
    desk.collected('session-1', [own!, other]);
    expect(desk.state().saved.records).toEqual([own, other]);
    desk.collected('session-1', []);
    expect(desk.state().saved.records).toEqual([own]);
  });
});

describe('a kept session', () => {
  it('comes back as it was, and not at all where its parts contradict each other', () => {
    const saved = { ...sessionOfThree(), feels: { 'red-fox': 'child-9' } };
    const through = (value: unknown): unknown => readRound(JSON.parse(JSON.stringify(value)));
    expect(through(saved)).toEqual(saved);
    expect(through({ ...saved, deviceId: '<b>' })).toBeNull();
    expect(through({ ...saved, round: { ...saved.round, planId: 'another' } })).toBeNull();
    expect(through({ ...saved, round: { ...saved.round, line: [] } })).toBeNull();
    expect(through({ ...saved, feels: { 'red-fox': 'nobody', '<b>': 'child-9' } })).toEqual({
      ...saved,
      feels: {},
    });
    expect(through('nonsense')).toBeNull();
  });
});
