/** Choices after everything was deleted: as on the first visit, and nothing of the old ones is written back. */
import { expect, it } from 'vitest';
import { createStore } from '../../../src/state/createStore.ts';
import { initialState } from '../../../src/state/reduce.ts';
import { DEFAULT_KEYS } from '../../../src/core/settings/settings.ts';
import { joinKeeping } from '../../../src/app/device/persistence.ts';
import { bundledLevels } from '../../../src/app/levels.ts';
import type { Storage } from '../../../src/storage/index.ts';
import { words } from '../../../src/words/words.ts';
import { openWithoutDatabase } from '../../storage/given.ts';

const kept = (): string[] => Object.keys(localStorage).filter((key) => key.startsWith('before-the-hill.'));

it('a storage that does not come is told about, and no longer once it is there', async () => {
  const store = createStore(initialState(bundledLevels(), DEFAULT_KEYS, ''));
  let come = (_: Storage): void => undefined;
  const late = new Promise<Storage>((resolve) => {
    come = resolve;
  });
  joinKeeping(store, DEFAULT_KEYS, () => late, 20);
  await expect.poll(() => store.state().keeping).toBe('slow');
  expect(words('kept')('health-slow')).toContain('not been opened yet');
  come(await openWithoutDatabase());
  await expect.poll(() => store.state().keeping).not.toBe('slow');
});

it('choices that were deleted are not written back, neither by a change elsewhere nor when the page is left', async () => {
  localStorage.clear();
  const store = createStore(initialState(bundledLevels(), DEFAULT_KEYS, ''));
  const keeping = joinKeeping(store, DEFAULT_KEYS);
  const storage = await keeping.storage;
  await expect.poll(() => store.state().keeping).not.toBeNull();
  const { theme } = store.state().settings;
  store.send({
    kind: 'restore',
    settings: { ...store.state().settings, theme: 'field' },
    cautionsSeen: true,
  });
  await expect.poll(kept).not.toEqual([]);
  await storage.deleteEverything();
  await keeping.forget();
  expect(store.state()).toMatchObject({ settings: { theme }, cautionsSeen: false, results: [], doneIds: [] });
  store.send({ kind: 'found', found: { newer: true } });
  window.dispatchEvent(new Event('pagehide'));
  // Longer than a row of changes rests before it is kept.
  await new Promise((resolve) => setTimeout(resolve, 600));
  expect(kept()).toEqual([]);
});
