/**
 * Kills the store of `npm run club` at random moments while three tablets send to it, fills its disk, and asks with a
 * wrong password. Afterwards everything that was ever reported kept must be there, each ride once.
 * `npx tsx test/figures/clubKills.ts [kills] [first seed]`; the full disk needs root on Linux and is left out elsewhere.
 */
import type { StoreAddress, StoreStanding } from '../../src/core/transfer/clubStore.ts';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sortOut } from '../../src/core/group/records/merge.ts';
import type { RideRecord } from '../../src/core/group/records/record.ts';
import { between, seededRandom } from '../../src/core/math/random.ts';
import { fetchRides, piecesOf, sendPieces, type SharedProgress } from '../../src/storage/shared/index.ts';
import { madeUpRecord } from '../core/group/rides.ts';
import { type ClubServer, startClub } from './club/server.ts';
import { mountSmallDisk } from './smallDisk.ts';

const KILLS = Number(process.argv[2] ?? 30);
const SEED = Number(process.argv[3] ?? 1);
const TABLETS = ['t1', 't2', 't3'];
/** Of each tablet, one after the other, while the store is killed. */
const RIDES_A_KILL = 12;
const PLAN = 'tuesday';
const random = seededRandom(SEED);
const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** A tablet: rides one after the other, sends after each, forgets its progress now and then as after a reload. */
class Tablet {
  readonly rides: RideRecord[] = [];
  /** Everything that was ever said to be there. */
  readonly reported = new Set<string>();
  readonly problems = new Set<string>();
  progress: SharedProgress | null = null;
  readonly id: string;

  constructor(id: string) {
    this.id = id;
  }

  ride(): void {
    // A pitch more or less changes how long the piece is.
    this.rides.push(
      madeUpRecord({ deviceId: this.id, seq: this.rides.length + 1 }, seededRandom(this.rides.length), 40),
    );
  }

  async send(address: StoreAddress, stopped: () => boolean = () => false): Promise<void> {
    const { id, rides } = this;
    const pieces = piecesOf({
      planId: PLAN,
      deviceId: id,
      lastSeq: rides.length,
      withdrawn: [],
      records: rides,
    });
    const onState = (state: StoreStanding, progress: SharedProgress): void => {
      for (const one of progress.there) this.reported.add(one);
      if (state.problem !== null) this.problems.add(state.problem);
    };
    const tools = {
      fetch,
      sleep: (ms: number) => wait(Math.min(ms, 200) / 4),
      onState,
      now: () => 1,
      stopped,
    };
    this.progress = await sendPieces(address, pieces, this.progress, tools);
    for (const one of this.progress.there) this.reported.add(one);
  }
}

/** What is missing of what was reported, and what is there more than once. */
async function faults(server: ClubServer, tablets: readonly Tablet[]): Promise<string[]> {
  const { read, problem } = await fetchRides(server.address, PLAN, null, fetch);
  const found = sortOut(read.set);
  const there = new Set(
    piecesOf({ planId: PLAN, deviceId: 'x', lastSeq: 0, withdrawn: [], records: read.set.records }).map(
      ({ id }) => id,
    ),
  );
  const lost = tablets.flatMap(({ reported }) =>
    [...reported].filter((id) => id.startsWith('ride:') && !there.has(id)),
  );
  const ridden = tablets.flatMap(({ rides }) => rides);
  return [
    ...(problem === null ? [] : [`reading: ${problem}`]),
    ...lost.map((id) => `lost: ${id}`),
    ...(read.set.records.length === new Set(read.set.records.map(({ id }) => id)).size
      ? []
      : ['a ride twice']),
    ...found.conflicts.map(({ code }) => `conflict: ${code}`),
    ...read.set.damaged.map(({ code }) => `damaged: ${code}`),
    ...(ridden.every(({ id }) => read.set.records.some((one) => one.id === id))
      ? []
      : ['a ride never arrived']),
  ];
}

function reportedBy(tablets: readonly Tablet[]): number {
  return tablets.reduce((sum, { reported }) => sum + reported.size, 0);
}

async function kills(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'club-'));
  const tablets = TABLETS.map((id) => new Tablet(id));
  let server = await startClub(folder);
  const { port } = new URL(server.address.url);
  let inTheMiddle = 0;
  let halfThere = 0;
  for (let kill = 0; kill < KILLS; kill += 1) {
    let over = false;
    const before = reportedBy(tablets);
    const sending = tablets.map(async (tablet) => {
      if (random() < 0.3) tablet.progress = null;
      for (let i = 0; i < RIDES_A_KILL; i += 1) {
        tablet.ride();
        await tablet.send(server.address);
      }
    });
    void Promise.all(sending).then(() => {
      over = true;
    });
    await wait(between(random, 0, 150));
    if (!over) inTheMiddle += 1;
    await server.kill();
    await wait(between(random, 0, 100));
    server = await startClub(folder, Number(port));
    const found = server.pieces;
    await Promise.all(sending);
    if (found > before && found < reportedBy(tablets)) halfThere += 1;
    const now = await faults(server, tablets);
    if (now.length > 0) console.log(`after kill ${kill + 1}: ${now.join(', ')}`);
  }
  const rides = tablets.reduce((sum, tablet) => sum + tablet.rides.length, 0);
  const reported = reportedBy(tablets);
  console.log(
    `killed ${KILLS} times, ${inTheMiddle} of them while tablets were sending, ${halfThere} with a part of what they sent already on the disk: ${rides} rides, ${reported} pieces reported kept, ${server.damaged} damaged lines, ${(await faults(server, tablets)).length} faults`,
  );
  await server.kill();
  rmSync(folder, { recursive: true });
}

async function fullDisk(): Promise<void> {
  for (const kind of ['tmpfs', 'ext4'] as const) {
    const disk = mountSmallDisk(kind, 8);
    try {
      let server = await startClub(join(disk.folder, 'club'));
      const tablet = new Tablet('t1');
      for (let i = 0; i < 20; i += 1) tablet.ride();
      await tablet.send(server.address);
      disk.fill(6_000);
      for (let i = 0; i < 60; i += 1) tablet.ride();
      let gaveUp = false;
      const sending = tablet.send(server.address, () => gaveUp);
      await wait(1_500);
      gaveUp = true;
      await sending;
      const whileFull = tablet.reported.size;
      const said = [...tablet.problems];
      await server.kill();
      server = await startClub(join(disk.folder, 'club'), Number(new URL(server.address.url).port)).catch(
        async () => {
          disk.free();
          return startClub(join(disk.folder, 'club'));
        },
      );
      const lost = (await faults(server, [tablet])).filter((fault) => fault !== 'a ride never arrived');
      disk.free();
      await tablet.send(server.address);
      const after = await faults(server, [tablet]);
      console.log(
        `full disk (${kind}): said ${said.join(', ')}; ${whileFull} pieces reported kept while full, faults after a restart on the full disk ${lost.length}; ${tablet.reported.size} with room again, faults ${after.length}`,
      );
      for (const fault of [...lost, ...after]) console.log(`  ${fault}`);
      await server.kill();
    } finally {
      disk.remove();
    }
  }
}

async function wrongPassword(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'club-'));
  const server = await startClub(folder);
  const tablet = new Tablet('t1');
  for (let i = 0; i < 30; i += 1) tablet.ride();
  await tablet.send({ ...server.address, password: 'guess' });
  const before = tablet.reported.size;
  await tablet.send(server.address);
  console.log(
    `wrong password: said ${[...tablet.problems].join(', ')}, ${before} pieces reported kept; with the right one ${tablet.reported.size}, faults ${(await faults(server, [tablet])).length}`,
  );
  await server.kill();
  rmSync(folder, { recursive: true });
}

await kills();
await wrongPassword();
if (process.platform === 'linux' && process.getuid?.() === 0) await fullDisk();
else console.log('full disk: left out, it needs root on Linux');
