/** The level bench joined to keeping: what it says of a level that is kept does not hang on anything else. */
import { expect, it } from 'vitest';
import { openLevelBench } from '../../src/app/levelBench.ts';
import type { Keeping } from '../../src/app/device/persistence.ts';
import { openStorage } from '../../src/storage/index.ts';
import { createPlanner } from '../../src/worker/client.ts';
import { createWorkshop } from '../../src/worker/workshop.ts';
import { workplaceOf } from '../worker/nearWorker.ts';
import { LEVEL } from './clinicGiven.ts';

it('says at once that a level is kept, also while the browser does not answer what else is there', async () => {
  const storage = await openStorage({ indexedDB: () => null, localStorage: () => null });
  const silent = { storage: Promise.resolve(storage), refresh: () => new Promise<void>(() => undefined) };
  const desk = openLevelBench(silent as unknown as Keeping, createPlanner(workplaceOf(createWorkshop)));
  // Without a database nothing is kept for good, and that is what is said.
  expect(await desk.keep(LEVEL)).toEqual({ saved: false, code: 'private-window' });
  expect((await storage.listLevels()).map(({ id }) => id)).toEqual([LEVEL.id]);
});
