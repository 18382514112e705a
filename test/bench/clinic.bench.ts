/**
 * How fast a group session is put together: marking again with plans that are known, and the picture of ten
 * thousand rides with the memory it takes. Nothing here can fail; the figures are printed.
 *
 * Marking again is bounded by the step of the ride: a ride of 200 s is 24,000 ticks, and judging its pitches
 * rides about as many again ("nobody shifted" and "the reference took over", up to two minutes each).
 *
 * A million rides, from the ten thousand: time grows with rides × places, so a hundred times as long (at
 * 0.24 s for ten thousand, some 25 s on one core). A line of 512 places takes 2 × 512 bytes and its shifts
 * 2 bytes each, with the objects around it about 1.6 KB, so lines alone would need 1.6 GB; records without
 * recordings about 1.5 KB of objects each, another 1.5 GB. That does not fit one page. It would be done road
 * by road: the spreads count into 256 bins per place (2 × 512 × 256 × 4 bytes = 1 MB per road), which can be
 * added up over parts, and a strip of a million lines shows no more than its spread.
 */
import { bench, describe } from 'vitest';
import { groupPicture } from '../../src/core/group/picture/group.ts';
import type { GroupRide } from '../../src/core/group/picture/groupRide.ts';
import { mergeSets, setOf } from '../../src/core/group/records/merge.ts';
import type { RoadReference } from '../../src/core/group/records/remark.ts';
import type { RideLine } from '../../src/core/group/records/rideLine.ts';
import { between, type Random, seededRandom } from '../../src/core/math/random.ts';
import { bundledRemarker, madeUpRecord, realRecord } from '../core/group/rides.ts';

const LEVELS = ['one-pitch-announced', 'three-little-hills', 'rolling-road'] as const;
const MANY = 10_000;
const PLACES = 512;
const LENGTH_M = 1_780;
const STEP_M = 4;

describe('marking rides again, the plan is known', () => {
  for (const levelId of LEVELS) {
    const record = realRecord({ deviceId: 'a', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.5, levelId);
    const remarker = bundledRemarker();
    remarker.remark(record);
    let leastCpuMs = Number.POSITIVE_INFINITY;
    bench(
      `${levelId}, ${Math.round(record.ticks / 120)} s, ${record.pitches.length} pitches`,
      () => {
        const start = process.cpuUsage();
        if (remarker.remark(record).kind !== 'same') throw new Error('it came out differently');
        leastCpuMs = Math.min(leastCpuMs, process.cpuUsage(start).user / 1_000);
      },
      { teardown: () => print(`${levelId}: ${leastCpuMs.toFixed(1)} ms of processor time a ride at best`) },
    );
  }
});

describe('ten thousand rides', () => {
  const before = usedMegabytes();
  const rides = manyRides(MANY);
  const held = usedMegabytes() - before;
  let most = 0;
  let leastCpuMs = Number.POSITIVE_INFINITY;
  const say = (): void =>
    print(
      `${MANY} rides hold ${held} MB; the process had ${before} MB before and ${most} MB at most; ` +
        `one picture took ${leastCpuMs.toFixed(0)} ms of processor time at best`,
    );
  bench(
    'the picture of the group, with lines',
    () => {
      const start = process.cpuUsage();
      const picture = groupPicture(rides);
      const { user, system } = process.cpuUsage(start);
      leastCpuMs = Math.min(leastCpuMs, (user + system) / 1_000);
      most = Math.max(most, usedMegabytes());
      if (picture.rides !== MANY) throw new Error('rides were lost');
    },
    { iterations: 5, time: 0, teardown: say },
  );
  const marksOnly = rides.map((ride): GroupRide => ({ record: ride.record, line: null, reference: null }));
  bench('the picture from marks alone', () => void groupPicture(marksOnly), { iterations: 5, time: 0 });
  const set = setOf(rides.map(({ record }) => ({ record, damaged: null })));
  bench('the union with itself', () => void mergeSets(set, set), { iterations: 5, time: 0 });
});

function manyRides(count: number): GroupRide[] {
  const random = seededRandom(1);
  const reference: RoadReference = {
    levelHash: '0123456789abcdef',
    seed: 5,
    bikeId: 'kids-24-1x8',
    riderId: 'child-9',
    lengthM: LENGTH_M,
    line: someLine(random),
    pitches: Array.from({ length: 9 }, (_, i) => ({
      footM: 180 * (i + 1),
      endM: 180 * (i + 1) + 60,
      steepestRatio: 0.08,
      firstShiftBeforeFootM: 12,
    })),
  };
  return Array.from({ length: count }, (_, i) => {
    const person = Math.floor(i / 3);
    const who = { deviceId: `t${person % 500}`, seq: i + 1, nickname: `~${person}`, attempt: (i % 3) + 1 };
    return { record: madeUpRecord(who, random), line: someLine(random), reference };
  });
}

function someLine(random: Random): RideLine {
  const byte = (low: number, high: number): number => Math.floor(between(random, low, high));
  const places = (): Uint16Array => Uint16Array.from({ length: 15 }, () => byte(0, LENGTH_M)).sort();
  return {
    stepM: STEP_M,
    cadenceRpm: Uint8Array.from({ length: PLACES }, () => byte(40, 110)),
    development: Uint8Array.from({ length: PLACES }, () => byte(20, 120)),
    easierAtM: places(),
    harderAtM: places(),
  };
}

function usedMegabytes(): number {
  return Math.round(process.memoryUsage().rss / 1e6);
}

function print(text: string): void {
  process.stdout.write(`  ${text}\n`);
}
