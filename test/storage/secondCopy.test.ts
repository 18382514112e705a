/** A second copy whose cache has stopped answering, as a browser leaves it when a page died while it wrote. */
import { describe, expect, it } from 'vitest';
import { createSecondCopy } from '../../src/storage/secondCopy.ts';

const PLACE = { store: 'rides', key: 'one' } as const;
const never = (): Promise<never> => new Promise(() => undefined);

/** Caches of which the one that is there never answers; one that is made after it was thrown away does. */
function stuckCaches(): { caches: CacheStorage; deleted: string[] } {
  const deleted: string[] = [];
  const silent = { put: never, match: never, keys: never, delete: never };
  const fresh = {
    put: () => Promise.resolve(),
    match: () => Promise.resolve(new Response('{"a":1}')),
    keys: () => Promise.resolve([]),
    delete: () => Promise.resolve(true),
  };
  const caches = {
    open: () => Promise.resolve(deleted.length > 0 ? fresh : silent),
    delete: (name: string) => Promise.resolve(deleted.push(name) > 0),
  };
  return { caches: caches as unknown as CacheStorage, deleted };
}

describe('a cache that does not answer any more', () => {
  it('is left out after one wait: no ride is called too big for the disk', async () => {
    const { caches, deleted } = stuckCaches();
    const copy = createSecondCopy(() => caches, 20);
    expect(await copy.hasRoom(10)).toBeNull();
    expect(await copy.put(PLACE, { a: 1 })).toBe(true);
    expect(await copy.places()).toBeNull();
    expect(deleted).toEqual([]);
  });

  it('goes as a whole when something is removed, so that it does not come back, and a new one works', async () => {
    const { caches, deleted } = stuckCaches();
    const copy = createSecondCopy(() => caches, 20);
    expect(await copy.remove(PLACE)).toBe(true);
    expect(deleted).toEqual(['before-the-hill.second-copy']);
    expect(await copy.hasRoom(10)).toBe(true);
    expect(await copy.put(PLACE, { a: 1 })).toBe(true);
    expect(await copy.put(PLACE, { a: 2 })).toBe(false);
  });

  it('that cannot be thrown away either keeps what was to be removed, and says so', async () => {
    const { caches } = stuckCaches();
    const copy = createSecondCopy(() => ({ ...caches, delete: never }) as unknown as CacheStorage, 20);
    expect(await copy.remove(PLACE)).toBe(false);
  });
});
