/**
 * Forty coaches with thirty real rides each at one store of `npm run club`: how long sending takes, how big the store
 * becomes, what a newcomer waits for, and how soon one ride is seen by another coach who only looks.
 * `npx tsx test/figures/clubLoad.ts [coaches] [rides each]`
 */
import type { StoreAddress } from '../../src/core/transfer/clubStore.ts';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type RideRecord, sealRecord, usualRecordId } from '../../src/core/group/records/record.ts';
import {
  fetchRides,
  piecesOf,
  sendPieces,
  type SharedPiece,
  type SharedProgress,
} from '../../src/storage/shared/index.ts';
import { realRecord } from '../core/group/rides.ts';
import { startClub } from './club/server.ts';

const COACHES = Number(process.argv[2] ?? 40);
const RIDES = Number(process.argv[3] ?? 30);
/** As `Outgoing` in `src/app/carryPages.tsx` asks. */
const ASKED_EVERY_MS = 2_000;
const LOOKS = 20;
const PLAN = 'tuesday';
const MB = 1_000_000;

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
const now = (): number => performance.now();
const mb = (bytes: number): string => `${(bytes / MB).toFixed(1)} MB`;

const models = ['one-pitch-announced', 'rolling-road'].flatMap((levelId) =>
  [0.2, 0.6, 0.9].map((skill, i) =>
    realRecord({ deviceId: 'm', seq: i + 1, nickname: 'red-fox', attempt: 1 }, skill, levelId),
  ),
);
const ride = (deviceId: string, seq: number): RideRecord => {
  const model = models[(seq + deviceId.length) % models.length] as RideRecord;
  return sealRecord({ ...model, id: usualRecordId(deviceId, seq), deviceId, seq });
};
const piecesFor = (deviceId: string, count: number): SharedPiece[] =>
  piecesOf({
    planId: PLAN,
    deviceId,
    lastSeq: count,
    withdrawn: [],
    records: Array.from({ length: count }, (_, i) => ride(deviceId, i + 1)),
  });
const send = (address: StoreAddress, pieces: readonly SharedPiece[], kept: SharedProgress | null) =>
  sendPieces(address, pieces, kept, { fetch, sleep: wait, onState: () => undefined, now: () => 1 });

const folder = mkdtempSync(join(tmpdir(), 'club-'));
const server = await startClub(folder);
const { address } = server;
const ids = Array.from({ length: COACHES }, (_, i) => `coach-${i + 1}`);
const sizes = models.map((model) => JSON.stringify(model).length);
console.log(
  `${COACHES} coaches, ${RIDES} rides each; a ride is ${Math.min(...sizes)} to ${Math.max(...sizes)} bytes`,
);

// After every ride, as on an evening, but all at once and without a pause.
const start = now();
const waits: number[] = [];
await Promise.all(
  ids.map(async (id) => {
    let progress: SharedProgress | null = null;
    for (let count = 1; count <= RIDES; count += 1) {
      const from = now();
      progress = await send(address, piecesFor(id, count), progress);
      waits.push(now() - from);
    }
  }),
);
waits.sort((a, b) => a - b);
const share = (part: number): string => `${Math.round(waits[Math.floor((waits.length - 1) * part)] ?? 0)} ms`;
const { rssBytes } = await server.uses();
console.log(
  `sent one by one, all coaches at once: ${((now() - start) / 1_000).toFixed(1)} s; one ride until it is on the disk ${share(0.5)}, in the worst of a hundred ${share(0.99)}`,
);
console.log(
  `file ${mb(statSync(join(folder, `${address.database}.log`)).size)}, memory of the store ${mb(rssBytes)}`,
);

const from = now();
const all = await fetchRides(address, PLAN, null, fetch);
console.log(
  `a newcomer has all ${all.read.set.records.length} rides after ${((now() - from) / 1_000).toFixed(1)} s (${all.problem ?? 'no problem'})`,
);

// Everybody looks as often, each at another moment; one coach's ride is seen by a second one who only looks.
let over = false;
const atRest = await server.uses();
const restFrom = now();
const looking = ids.map(async (_, i) => {
  let progress: SharedProgress = all.progress;
  await wait((ASKED_EVERY_MS * i) / ids.length);
  while (!over) {
    ({ progress } = await fetchRides(address, PLAN, progress, fetch));
    await wait(ASKED_EVERY_MS);
  }
});
const seenAfter: number[] = [];
let progress: SharedProgress = all.progress;
for (let look = 1; look <= LOOKS; look += 1) {
  const id = `new-${look}`;
  const ended = now();
  await send(address, piecesFor(id, 1), null);
  for (let seen = false; !seen; ) {
    await wait(ASKED_EVERY_MS * (look === 1 ? 1 : 0.1 + 0.9 * (look / LOOKS)));
    const fetched = await fetchRides(address, PLAN, progress, fetch);
    progress = fetched.progress;
    seen = fetched.read.set.records.some(({ deviceId }) => deviceId === id);
  }
  seenAfter.push(now() - ended);
}
over = true;
await Promise.all(looking);
const used = await server.uses();
console.log(
  `${COACHES} looking every ${ASKED_EVERY_MS / 1_000} s: one ride is seen after ${(Math.max(...seenAfter) / 1_000).toFixed(1)} s at most of ${LOOKS}; the store takes ${(((used.cpuUs - atRest.cpuUs) / 1_000 / (now() - restFrom)) * 100).toFixed(1)} % of one processor`,
);
await server.kill();
const again = now();
const restarted = await startClub(folder);
console.log(`started again with ${restarted.pieces} pieces in ${((now() - again) / 1_000).toFixed(1)} s`);
await restarted.kill();
rmSync(folder, { recursive: true });
