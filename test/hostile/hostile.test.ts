/**
 * A few hundred hostile inputs at the doors, the same ones every time: none throws, none is refused without a
 * sentence, and what was kept before is kept after. `test/figures/hostile.ts` sends as many as one likes.
 */
import { expect, it } from 'vitest';
import { openStorage } from '../../src/storage/index.ts';
import { throughDoor } from './doors.ts';
import { copyOf, type Hostile, hostileInput, keptRide, KINDS } from './inputs.ts';

const INPUTS = 108;
const SEED = 20_261_126;

it(`${INPUTS} hostile inputs change nothing that is kept and throw nothing`, async () => {
  const storage = await openStorage({ indexedDB: () => null, localStorage: () => null });
  const rides = [1, 2, 3].map(keptRide);
  await storage.importAll(copyOf({ rides }));
  const before = await Promise.all(rides.map((ride) => storage.getRide(ride['id'] as string)));
  expect(before).not.toContain(null);
  const failed: string[] = [];
  const seen = new Map<string, number>();
  for (let i = 0; i < INPUTS; i += 1) {
    const input = hostileInput(SEED, i);
    const became = await throughDoor(input, storage).catch((error: unknown) => {
      failed.push(said(i, input, error));
      return 'threw';
    });
    seen.set(`${input.kind} ${became}`, (seen.get(`${input.kind} ${became}`) ?? 0) + 1);
  }
  expect(failed).toEqual([]);
  // A run in which everything is refused would prove little.
  for (const kind of KINDS)
    if (kind !== 'address') expect(seen.get(`${kind} refused`) ?? 0).toBeGreaterThan(0);
  expect(seen.get('level taken')).toBeGreaterThan(0);
  expect(await Promise.all(rides.map((ride) => storage.getRide(ride['id'] as string)))).toEqual(before);
});

function said(index: number, { kind, how }: Hostile, error: unknown): string {
  return `${index} ${kind}, ${how}: ${error instanceof Error ? `${error.name} ${error.message}` : String(error)}`;
}
