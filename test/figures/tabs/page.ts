/** Tabs with the game's own storage and desk of group sessions, for `test/figures/tabs.ts`. */
import { seededRandom } from '../../../src/core/math/random.ts';
import { openStorage, type Storage } from '../../../src/storage/index.ts';
import { createTab } from '../../app/tabs.ts';
import { play, type Played, type Tab } from '../../app/tabsPlay.ts';

function tokens(name: string): () => string {
  let count = 0;
  return () => `${name}-${(count += 1)}`;
}

/** This tab of the browser; rides of another `skill` differ. */
export async function openTab(name: string, skill: number): Promise<Tab> {
  return createTab(await openStorage(), tokens(name), skill);
}

/** As many tabs as skills, over one storage that answers late and has no database. They hear nothing of each other. */
export async function playOverOneStorage(
  seed: number,
  skills: readonly number[],
  steps: number,
): Promise<Played> {
  const random = seededRandom(seed);
  const storage = await openStorage({
    indexedDB: () => null,
    localStorage: () => null,
    caches: () => null,
    storageManager: () => null,
    tabs: () => null,
  });
  const late: Storage = {
    ...storage,
    async changeRecords(work) {
      for (let turns = Math.floor(random() * 4); turns > 0; turns -= 1)
        await new Promise((resolve) => setTimeout(resolve, 0));
      return storage.changeRecords(work);
    },
  };
  const token = tokens(String(seed));
  const tabs = skills.map((skill) => createTab(late, token, skill));
  return play(tabs, createTab(storage, token, 0.4), random, steps);
}
