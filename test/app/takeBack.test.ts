/** A copy is opened by the handful, says how far it is, and can be stopped: what was taken by then stays. */
import { describe, expect, it } from 'vitest';
import { NoCopy, piecesOfCopy } from '../../src/app/copyClient.ts';
import { copyService } from '../../src/app/device/copyWork.ts';
import { openStorage } from '../../src/storage/index.ts';
import { copyOf, keptRide } from '../hostile/inputs.ts';
import { workplaceOf } from '../worker/nearWorker.ts';

const rides = Array.from({ length: 350 }, (_, i) => keptRide(i));
const file = new Blob([JSON.stringify(copyOf({ rides }))]);
const workplace = workplaceOf(() => copyService);
const open = () => openStorage({ indexedDB: () => null, localStorage: () => null });

describe('taking a copy back', () => {
  it('brings all of it, the same as in one go', async () => {
    const storage = await open();
    const shares: number[] = [];
    const { signal } = new AbortController();
    const parts = piecesOfCopy(
      workplace,
      { file, evenIfChanged: false },
      (share) => shares.push(share),
      signal,
    );
    const report = await storage.importOpened(parts);
    const other = await open();
    expect(report).toEqual(await other.importAll(copyOf({ rides })));
    expect(await storage.getRide('ride-349')).toEqual(await other.getRide('ride-349'));
    expect(shares).toEqual([0, 100 / 350, 200 / 350, 300 / 350, 1]);
  });

  it('ends when it is stopped, and keeps what came before', async () => {
    const storage = await open();
    const stopping = new AbortController();
    const parts = piecesOfCopy(
      workplace,
      { file, evenIfChanged: false },
      (share) => {
        if (share > 0) stopping.abort();
      },
      stopping.signal,
    );
    const report = await storage.importOpened(parts);
    expect(report.added + report.unsaved).toBe(100);
    expect(await storage.getRide('ride-99')).not.toBeNull();
    expect(await storage.getRide('ride-100')).toBeNull();
  });

  it('says of a file that is no copy that it is none', async () => {
    const storage = await open();
    const { signal } = new AbortController();
    const parts = piecesOfCopy(
      workplace,
      { file: new Blob(['{']), evenIfChanged: false },
      () => undefined,
      signal,
    );
    await expect(storage.importOpened(parts)).rejects.toThrow(NoCopy);
  });
});
