/**
 * The desks of what is carried between devices, on a storage without a database: union, what is said and taken back,
 * what survives, what is deleted.
 */
import { describe, expect, it } from 'vitest';
import { deviceStatus } from '../../src/core/group/records/missing.ts';
import { sortOut } from '../../src/core/group/records/merge.ts';
import { type RideRecord, sealRecord } from '../../src/core/group/records/record.ts';
import { readRideFile, writeRideFile } from '../../src/core/transfer/rideFile.ts';
import { createGroupVerifier } from '../../src/worker/verifierClient.ts';
import { workplaceOf } from '../worker/nearWorker.ts';
import { createVerifier } from '../../src/worker/verifier.ts';
import { openHandoverDesk, withHeard } from '../../src/app/group/handoverDesk.ts';
import { createCarriedSessions } from '../../src/storage/sessions.ts';
import type { Storage } from '../../src/storage/index.ts';
import { BUNDLED } from '../core/ride/worlds.ts';
import { madeUpRecord, planWith, realRecord } from '../core/group/rides.ts';
import { openWithoutDatabase, simpleStore } from '../storage/given.ts';

const PLAN = planWith();
const levels = BUNDLED.map(({ level }) => level);
let atMs = 1_000;

async function openDesk(storage: Storage) {
  return openHandoverDesk(PLAN, {
    sessions: createCarriedSessions(storage),
    verifier: createGroupVerifier(workplaceOf(createVerifier), levels),
    now: () => atMs,
    onChanged: () => undefined,
  });
}

const newStorage = (): Promise<Storage> => openWithoutDatabase(simpleStore());
const rides = (deviceId: string, count: number): RideRecord[] =>
  Array.from({ length: count }, (_, i) => madeUpRecord({ deviceId, seq: i + 1 }));
const fileOf = (
  deviceId: string,
  records: readonly RideRecord[],
  lastSeq = records.length,
  withdrawn: string[] = [],
) => readRideFile(writeRideFile({ planId: PLAN.id, deviceId, lastSeq, withdrawn, records }));
const checked = (desk: Awaited<ReturnType<typeof openDesk>>): Promise<void> =>
  new Promise((resolve) => {
    const look = (): void => {
      if (desk.collected().toCheck > 0) return;
      stop();
      resolve();
    };
    const stop = desk.subscribe(look);
    look();
  });

describe('collecting', () => {
  it('twice is the same as once, and everything is there again after a reload', async () => {
    const storage = await newStorage();
    const desk = await openDesk(storage);
    const all = [...rides('t1', 3), ...rides('t2', 2)];
    for (const file of [
      fileOf('t1', rides('t1', 3)),
      fileOf('t2', rides('t2', 2)),
      fileOf('t1', rides('t1', 3)),
    ])
      await desk.take(file);
    expect(desk.collected().set.records).toEqual(all);
    expect((await openDesk(storage)).collected()).toMatchObject({
      set: desk.collected().set,
      heard: desk.collected().heard,
    });
  });

  it('two readings at the same moment lose nothing', async () => {
    const desk = await openDesk(await newStorage());
    await Promise.all([
      desk.take(fileOf('t1', rides('t1', 4))),
      desk.take(fileOf('t2', rides('t2', 4))),
      desk.reload(),
    ]);
    expect(desk.collected().set.records).toHaveLength(8);
  });

  it('rides of another plan are not taken', async () => {
    const desk = await openDesk(await newStorage());
    const other = rides('t1', 1).map((record) => sealRecord({ ...record, planId: 'wednesday' }));
    await desk.take(fileOf('t1', other));
    expect(desk.collected().set.records).toEqual([]);
  });

  it('different rides under one id, and ids with signs no key may have, are all kept', async () => {
    const storage = await newStorage();
    const desk = await openDesk(storage);
    const [ride] = rides('t1', 1);
    if (ride === undefined) throw new Error('no ride');
    const odd = `T.:_-${'x'.repeat(75)}`;
    const all = [ride, sealRecord({ ...ride, total: 1 }), sealRecord({ ...ride, id: odd, seq: 2 })];
    for (const record of all) await desk.take(fileOf('t1', [record], 2));
    const again = (await openDesk(storage)).collected().set;
    expect(again.records).toHaveLength(3);
    expect(sortOut(again)).toMatchObject({ rides: [{ id: odd }], conflicts: [{ code: 'same-id' }] });
  });

  it('a recording that comes after the marks joins them, and is ridden again', async () => {
    const storage = await newStorage();
    const desk = await openDesk(storage);
    const whole = realRecord({ deviceId: 't1', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.6);
    await desk.take(fileOf('t1', [{ ...whole, recording: null }]));
    expect(desk.collected()).toMatchObject({ toCheck: 0, remarks: [] });
    await desk.take(fileOf('t1', [whole]));
    await checked(desk);
    expect(desk.collected()).toMatchObject({ set: { records: [whole] }, remarks: [{ kind: 'same' }] });
    expect((await openDesk(storage)).collected().set.records).toEqual([whole]);
  });

  it('a ride that does not come out as it says is set apart and kept', async () => {
    const desk = await openDesk(await newStorage());
    const whole = realRecord({ deviceId: 't1', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.6);
    const claimed = sealRecord({ ...whole, total: 99.9 });
    await desk.take(fileOf('t1', [claimed]));
    await checked(desk);
    expect(desk.collected()).toMatchObject({
      set: { records: [claimed] },
      remarks: [{ kind: 'apart', code: 'other-marks', total: whole.total }],
    });
  });

  it('a missing ride is dated from when its number was first heard', async () => {
    const desk = await openDesk(await newStorage());
    for (const time of [5_000, 9_000]) {
      atMs = time;
      await desk.take(fileOf('t1', rides('t1', 2), 4));
    }
    const { set, heard } = desk.collected();
    expect(deviceStatus(set, heard)).toMatchObject([
      { have: 2, missing: [[3, 4]], missingSinceMs: 5_000, lastHeardMs: 9_000 },
    ]);
    expect(withHeard(heard, [{ deviceId: 't1', lastSeq: 4 }], 12_000)).toHaveLength(2);
  });

  it('a ride that is taken back stays counted, and the others learn of it', async () => {
    const tablet = await openDesk(await newStorage());
    const [first, second] = rides('t1', 2);
    if (first === undefined || second === undefined) throw new Error('no rides');
    await tablet.take(fileOf('t1', [first, second]));
    await tablet.withdraw(second);
    expect(tablet.handOver('t1')).toMatchObject({ lastSeq: 2, withdrawn: [second.id] });
    const coach = await openDesk(await newStorage());
    await coach.take(readRideFile(writeRideFile(tablet.handOver('t1'))));
    expect(sortOut(coach.collected().set)).toMatchObject({ rides: [first], withdrawn: [second] });
  });

  it('deleting the session leaves nothing of it, and the others as they are', async () => {
    const storage = await newStorage();
    const desk = await openDesk(storage);
    await desk.take(fileOf('t1', rides('t1', 3)));
    const other = sealRecord({ ...madeUpRecord({ deviceId: 't9', seq: 1 }), planId: 'wednesday' });
    await storage.putRecord({ kind: 'clinic-record', id: 'other', schema: 1, data: other });
    await desk.drop();
    const anything = { schema: 1, steps: [], read: (value: unknown) => value };
    expect(await storage.listRecords({ kind: 'clinic-record', ...anything })).toMatchObject([
      { id: 'other' },
    ]);
    expect(await storage.listRecords({ kind: 'clinic-said', ...anything })).toEqual([]);
    expect(desk.collected()).toMatchObject({ set: { records: [] }, heard: [] });
  });

  it('says when what came could not be put into the database', async () => {
    const desk = await openDesk(await newStorage());
    expect(await desk.take(fileOf('t1', rides('t1', 1)))).toBe(false);
    expect(desk.collected().set.records).toHaveLength(1);
  });
});
