/**
 * How often a ride of another tablet is planned until it stands in the list and in the group picture. All calls of the
 * planner in this process are counted, by the engine itself.
 */
import { Session } from 'node:inspector/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHandoverDesk } from '../../src/app/group/handoverDesk.ts';
import { openClinicDesk } from '../../src/app/group/clinicDesk.ts';
import { RULES_VERSION } from '../../src/core/coach/rules.ts';
import { makeRecord } from '../../src/core/group/records/record.ts';
import type { SavedRound } from '../../src/core/group/savedRound.ts';
import { startOf } from '../../src/features/clinic/session.ts';
import { createCarriedSessions, createOwnedSessions } from '../../src/storage/sessions.ts';
import { createVerifier } from '../../src/worker/verifier.ts';
import { createGroupVerifier } from '../../src/worker/verifierClient.ts';
import { openWithoutDatabase, simpleStore } from '../storage/given.ts';
import { NearWorker, workplaceOf } from '../worker/nearWorker.ts';
import { LEVEL, markTurn, propsOf, sessionOfThree, turnOf } from './clinicGiven.ts';

const engine = new Session();

beforeAll(async () => {
  engine.connect();
  await engine.post('Profiler.enable');
  await engine.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
});
afterAll(() => engine.disconnect());

/** Plans begun in this process since this was asked last: each prepares its tables once. */
async function plansBegun(): Promise<number> {
  const { result } = await engine.post('Profiler.takePreciseCoverage');
  return result
    .filter(({ url }) => url.includes('core/planner/tables'))
    .flatMap(({ functions }) => functions)
    .filter(({ functionName }) => functionName === 'prepareTables')
    .reduce((sum, { ranges }) => sum + (ranges[0]?.count ?? 0), 0);
}

describe('a ride of another tablet', () => {
  it('is planned once, by the worker, for the list and for every picture', async () => {
    const storage = await openWithoutDatabase(simpleStore());
    const owned = createOwnedSessions(storage, {
      token: 'this-tab',
      isOwned: () => true,
      tell: () => undefined,
      onTold: () => undefined,
      lose: () => undefined,
    });
    const near = new NearWorker(createVerifier());
    const verifier = createGroupVerifier(
      workplaceOf(createVerifier, () => near.worker),
      [LEVEL],
    );
    const session: SavedRound = sessionOfThree();
    const carried = await openHandoverDesk(session.plan, {
      sessions: createCarriedSessions(storage),
      verifier,
      now: () => 1_700_000_000_000,
      onChanged: () => desk.collected(session.plan.id, carried.collected().set.records),
    });
    const desk = await openClinicDesk({
      gone: new Promise(() => undefined),
      shelf: owned,
      verifier,
      ownLevels: [],
      cautionsRead: async () => true,
      ride: () => undefined,
      markLater: markTurn,
      carry: async () => carried,
      onKept: () => undefined,
      newId: () => 'an-id',
      newSeed: () => 7,
      now: () => 1_700_000_000_000,
    });
    await desk.onSaveRound(session);
    const start = startOf(session, 'red-fox', propsOf(desk, ''));
    const turn = turnOf(start!);
    const { report } = await markTurn(turn);
    const ride = makeRecord({
      ...turn,
      id: 'theirs',
      deviceId: 'other-tablet',
      seq: 1,
      version: RULES_VERSION,
      report,
    });

    // The reference the turn was marked against.
    expect(await plansBegun()).toBe(1);
    await carried.take({
      set: { records: [ride], damaged: [], withdrawn: [] },
      heard: [{ deviceId: 'other-tablet', lastSeq: 1 }],
    });
    desk.look(`s/${session.plan.id}/picture`);
    await expect.poll(() => carried.collected().remarks).toMatchObject([{ kind: 'same' }]);
    await expect.poll(() => desk.state().picture?.rides).toBe(1);
    desk.look('');
    await carried.reload();
    desk.look(`s/${session.plan.id}/report`);
    await expect.poll(() => desk.state().picture?.rides).toBe(1);
    expect(await plansBegun()).toBe(1);
    // All that was verified or drawn was asked of the worker.
    expect(new Set(near.asked.flatMap(({ name }) => name ?? []))).toEqual(new Set(['verify', 'picture']));
  });
});
