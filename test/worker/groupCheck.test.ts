/** Rides of other devices are checked by a worker; the page only asks. */
import { describe, expect, it } from 'vitest';
import { RULES_VERSION } from '../../src/core/group/records/record.ts';
import { createRemarker } from '../../src/core/group/records/remark.ts';
import { createGroupChecker } from '../../src/worker/groupClient.ts';
import { type GroupAnswer, type GroupQuestion, openGroupWorkshop } from '../../src/worker/groupWorkshop.ts';
import { madeUpRecord, planWith, realRecord } from '../core/group/rides.ts';
import { BUNDLED } from '../core/ride/worlds.ts';

const PLAN = planWith();
const levels = BUNDLED.map(({ level }) => level);
const records = [
  realRecord({ deviceId: 't1', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.6),
  madeUpRecord({ deviceId: 't1', seq: 2 }),
];

/** A worker's two ends in one thread: what goes between them is cloned. */
class NearWorker extends EventTarget {
  readonly asked: GroupQuestion[] = [];
  private readonly take = openGroupWorkshop(
    (answer: GroupAnswer) => {
      const data = structuredClone(answer);
      setTimeout(() => this.dispatchEvent(new MessageEvent('message', { data })), 0);
    },
    () => new Promise((resolve) => setTimeout(resolve, 0)),
  );

  postMessage(question: GroupQuestion): void {
    this.asked.push(question);
    this.take(structuredClone(question));
  }

  terminate(): void {}
}

describe('checking rides', { timeout: 60_000 }, () => {
  it('asks the worker, and what comes back is what riding them again here would say', async () => {
    const worker = new NearWorker();
    const check = createGroupChecker(() => worker as unknown as Worker, levels);
    const [all, again] = await Promise.all([check(PLAN, records), check(PLAN, records.slice(1))]);
    const remarker = createRemarker(
      (record) => levels.find(({ id }) => id === record.levelId),
      RULES_VERSION,
    );
    expect(all).toEqual(records.map((record) => remarker.remark(record)));
    expect(again).toEqual(all.slice(1));
    expect(worker.asked.map(({ kind }) => kind)).toEqual(['check', 'check']);
  });

  it('without a worker is done here', async () => {
    const check = createGroupChecker(() => null, levels);
    expect((await check(PLAN, records)).map(({ record }) => record.id)).toEqual(records.map(({ id }) => id));
  });
});
