/** Rides of a group are ridden again by a worker, each once; the page only asks. */
import { describe, expect, it } from 'vitest';
import { RULES_VERSION } from '../../src/core/coach/rules.ts';
import { sealRecord } from '../../src/core/group/records/record.ts';
import { createRemarker } from '../../src/core/group/records/remark.ts';
import { createVerifier } from '../../src/worker/verifier.ts';
import { createGroupVerifier } from '../../src/worker/verifierClient.ts';
import { madeUpRecord, planWith, realRecord } from '../core/group/rides.ts';
import { BUNDLED } from '../core/ride/worlds.ts';
import { NearWorker, workplaceOf } from './nearWorker.ts';

const PLAN = planWith();
const levels = BUNDLED.map(({ level }) => level);
const real = realRecord({ deviceId: 't1', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.6);
const records = [real, madeUpRecord({ deviceId: 't1', seq: 2 })];

describe('verifying rides', () => {
  it('asks the worker, and what comes back is what riding them again here would say', async () => {
    const near = new NearWorker(createVerifier());
    const verifier = createGroupVerifier(
      workplaceOf(createVerifier, () => near.worker),
      levels,
    );
    const [all, again] = await Promise.all([
      verifier.verify(PLAN, records),
      verifier.verify(PLAN, records.slice(1)),
    ]);
    const remarker = createRemarker(
      (record) => levels.find(({ id }) => id === record.levelId),
      RULES_VERSION,
    );
    expect(all).toEqual(records.map((record) => remarker.remark(record)));
    expect(again).toEqual(all.slice(1));
    expect(near.asked).toMatchObject([{ name: 'verify' }, { name: 'verify' }]);
  });

  it('without a worker is done here', async () => {
    const verifier = createGroupVerifier(workplaceOf(createVerifier), levels);
    expect((await verifier.verify(PLAN, records)).map(({ record }) => record.id)).toEqual(
      records.map(({ id }) => id),
    );
  });

  it('a claim under a fingerprint that is known already is looked at by itself', async () => {
    const verifier = createGroupVerifier(workplaceOf(createVerifier), levels);
    expect(await verifier.verify(PLAN, [real])).toMatchObject([{ kind: 'same' }]);
    const claimed = { ...real, total: 99.9 };
    expect(await verifier.verify(PLAN, [claimed])).toMatchObject([{ kind: 'apart', code: 'other-marks' }]);
  });

  it('draws a ride of this device without marking it again, and counts none that cannot be its own ride', async () => {
    const verifier = createGroupVerifier(workplaceOf(createVerifier), levels);
    const marked = sealRecord({ ...real, total: 99.9 });
    const { picture, apart } = await verifier.picture(PLAN, [{ record: marked, own: true }]);
    expect([picture.rides, picture.roads[0]?.strip === null, apart]).toEqual([1, false, []]);
    const other = await verifier.picture(PLAN, [{ record: marked, own: false }]);
    expect([other.picture.rides, other.apart]).toEqual([0, [marked.checksum]]);
  });

  it('a newer picture takes the place of an older one', async () => {
    const verifier = createGroupVerifier(workplaceOf(createVerifier), levels);
    const older = verifier.picture(PLAN, [{ record: real, own: false }]);
    const newer = verifier.picture(PLAN, []);
    await expect(older).rejects.toThrow(Error);
    expect((await newer).picture.rides).toBe(0);
  });
});
