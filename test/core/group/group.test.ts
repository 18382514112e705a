/**
 * Riding again and the picture of a group: honest rides come out the same, changed ones are set apart with a
 * code, and the picture counts right without telling who is who.
 */
import { describe, expect, it } from 'vitest';
import { groupPicture } from '../../../src/core/group/picture/group.ts';
import type { GroupRide } from '../../../src/core/group/picture/groupRide.ts';
import { type RideRecord, sealRecord } from '../../../src/core/group/records/record.ts';
import { readyBeforeFootM, takenOf } from '../../../src/core/group/picture/taken.ts';
import { spreadOf, spreadSeries } from '../../../src/core/group/picture/spread.ts';
import { hashJson } from '../../../src/core/math/hash.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import type { Recording } from '../../../src/core/ride/recording.ts';
import { bundledRemarker, madeUpRecord, marksOnly, realRecord } from './rides.ts';
import { levelById } from '../ride/worlds.ts';

const LEVEL = 'three-little-hills';
const who = (seq: number, nickname: string, attempt: number) => ({ deviceId: 'a', seq, nickname, attempt });
/** Three riders who ride twice, better the second time. */
const real: RideRecord[] = ['red-fox', 'blue-owl', 'grey-hare'].flatMap((nickname, i) => [
  realRecord(who(2 * i + 1, nickname, 1), 0.1, LEVEL),
  realRecord(who(2 * i + 2, nickname, 2), 1, LEVEL),
]);
const [first] = real as [RideRecord];
const changed = (record: RideRecord, changes: Partial<RideRecord>): RideRecord =>
  sealRecord({ ...record, ...changes });
/** The record with another recording that it vouches for. */
const withRecording = (changes: Partial<Recording>, others: Partial<RideRecord> = {}): RideRecord => {
  const recording = { ...(first.recording as Recording), ...changes };
  return changed(first, { recording, recordingHash: hashJson(recording), ...others });
};
const bare = (record: RideRecord): GroupRide => ({ record, line: null, reference: null });

describe('riding again', () => {
  const remarker = bundledRemarker();

  it('honest rides come out the same, and the reference of a road is planned once', () => {
    const fresh = bundledRemarker();
    expect(real.map((record) => fresh.remark(record).kind)).toEqual(real.map(() => 'same'));
    expect(fresh.planned()).toBe(1);
  });

  it('the line follows the road in even steps and knows every shift', () => {
    const remark = remarker.remark(first);
    if (remark.kind !== 'same') throw new Error(remark.code);
    const { line, reference } = remark;
    expect(reference.lengthM / line.stepM).toBeLessThanOrEqual(512);
    expect(line.cadenceRpm).toHaveLength(Math.floor(reference.lengthM / line.stepM) + 1);
    expect(line.development).toHaveLength(reference.line.development.length);
    const shifts = remarker.mark(levelById(LEVEL), first.recording as Recording)?.shifts ?? [];
    const begun = (direction: string): number[] =>
      shifts.filter((shift) => shift.direction === direction).map((shift) => Math.round(shift.startedAtM));
    expect(shifts.length).toBeGreaterThan(0);
    expect([[...line.easierAtM], [...line.harderAtM]]).toEqual([begun('easier'), begun('harder')]);
  });

  const bike = (first.recording as Recording).bike;
  const rider = (first.recording as Recording).rider;
  const commands = (first.recording as Recording).commands;
  const CASES: readonly (readonly [string, RideRecord, string])[] = [
    ['a better total', changed(first, { total: 99.9 }), 'other-marks'],
    ['a better mark', changed(first, { marks: { ...first.marks, easing: 100 } }), 'other-marks'],
    [
      'a better pitch',
      changed(first, { pitches: first.pitches.map((p) => ({ ...p, creditPercent: 100 })) }),
      'other-marks',
    ],
    ['other marks by another version', changed(first, { total: 99.9, version: '0.9.0' }), 'other-version'],
    ['the very same ride by another version', changed(first, { version: '1' }), 'other-version'],
    ['a command less', withRecording({ commands: commands.slice(1) }), 'not-same-ride'],
    ['a fingerprint changed', withRecording({ checkpoints: ['0'.repeat(16)] }), 'not-same-ride'],
    [
      'another version’s ride',
      withRecording({ commands: commands.slice(1) }, { version: '2.0.0' }),
      'other-version',
    ],
    ['a lighter bike under a bundled name', withRecording({ bike: { ...bike, massKg: 1 } }), 'changed-bike'],
    [
      'a stronger rider under a bundled name',
      withRecording({ rider: { ...rider, steadyPowerW: 900 } }),
      'changed-rider',
    ],
    [
      'sprockets out of order',
      withRecording({ bike: { ...bike, id: 'x', sprocketsTeeth: [30, 12] } }, { bikeId: 'x' }),
      'impossible-setup',
    ],
    [
      'a band upside down',
      withRecording(
        { rider: { ...rider, id: 'x', cadenceLowRpm: 99, cadenceHighRpm: 60 } },
        { riderId: 'x' },
      ),
      'impossible-setup',
    ],
    ['another seed than told', changed(first, { seed: 4 }), 'other-setup'],
    ['other ticks than told', changed(first, { ticks: 4 }), 'other-setup'],
    ['another level under this id', changed(first, { levelHash: '0'.repeat(16) }), 'other-level'],
    ['a level that is not here', changed(first, { levelId: 'nowhere' }), 'unknown-level'],
    ['marks only', marksOnly(first), 'no-recording'],
    ['four hours', withRecording({ ticks: 1_000_000 }, { ticks: 1_000_000 }), 'too-long'],
  ];

  it.each(CASES)('%s is set apart with a code', (_what, record, code) => {
    expect(remarker.remark(record)).toMatchObject({ kind: 'apart', code, record });
  });

  it('a ride that ends before the road does is set apart', () => {
    const short = { ...(first.recording as Recording), ticks: 600 };
    const cut = { ...short, checkpoints: short.checkpoints.slice(0, 1).flatMap((hash) => [hash, hash]) };
    const own = cut.commands.filter(({ tick }) => tick < 600);
    const record = withRecording({ ...cut, commands: own }, { ticks: 600 });
    expect(remarker.remark(record)).toMatchObject({ kind: 'apart', code: 'not-finished' });
  });
});

describe('the picture of a group', () => {
  const remarker = bundledRemarker();
  const ridden: GroupRide[] = real.map((record) => {
    const remark = remarker.remark(record);
    if (remark.kind !== 'same') throw new Error(remark.code);
    return { record, line: remark.line, reference: remark.reference };
  });
  const picture = groupPicture(ridden);
  const [road] = picture.roads;

  it('counts rides, riders and timing as the records do', () => {
    const digests = real.flatMap((record) => record.pitches).filter((pitch) => pitch.creditPercent !== null);
    const count = (timing: string): number => digests.filter((pitch) => pitch.timing === timing).length;
    expect([picture.rides, picture.riders, picture.roads.length]).toEqual([6, 3, 1]);
    expect(picture.timing).toEqual({
      tooEarly: count('too-early'),
      aboutRight: count('about-right'),
      tooLate: count('too-late'),
    });
  });

  it('finds the pitch that most riders took too late', () => {
    const late = (index: number): number =>
      new Set(real.filter((r) => r.pitches[index]?.timing === 'too-late').map((r) => r.nickname)).size;
    const most = Math.max(...[0, 1, 2].map(late));
    expect(most).toBeGreaterThan(0);
    expect(late(road?.verdict.pitch ?? -1)).toBe(most);
    for (const pitch of road?.pitches ?? []) {
      expect(pitch.footM).toBeGreaterThan(0);
      expect(pitch.rides).toBe(real.filter((r) => r.pitches[pitch.index]?.creditPercent !== null).length);
    }
  });

  it('who was too late by the marks had not the gear of the best ride in at the foot', () => {
    let late = 0;
    for (const { record, line, reference } of ridden)
      record.pitches.forEach((pitch, index) => {
        if (takenOf(pitch, 70) !== 'tooLate' || line === null || reference === null) return;
        late += 1;
        expect(readyBeforeFootM(line, reference, index) ?? -1).toBeLessThanOrEqual(0);
        expect(readyBeforeFootM(reference.line, reference, index)).toBeGreaterThanOrEqual(0);
      });
    expect(late).toBeGreaterThan(2);
    expect(road?.verdict).toMatchObject({ kind: 'late', of: 3 });
  });

  it('compares first with last attempts as a distribution', () => {
    const { attempts } = picture;
    expect(attempts.pairs).toBe(3);
    expect(attempts.better + attempts.worse + attempts.withinChance).toBe(3);
    expect(attempts.better).toBe(3);
    expect([...attempts.firstBins].reduce((a, b) => a + b)).toBe(3);
    expect(attempts.last?.middle).toBeGreaterThan(attempts.first?.middle ?? 100);
  });

  it('lays every ride over the others on one strip with the reference', () => {
    const strip = road?.strip;
    expect(strip?.references.map((reference) => reference.bikeId)).toEqual(['kids-24-1x8']);
    const middle = strip?.cadenceRpm.middle[50] ?? 0;
    const there = ridden.map(({ line }) => line?.cadenceRpm[50] ?? 0).filter((rpm) => rpm > 0);
    expect(there).toContain(middle);
  });

  it('is the same whatever the order, and names nobody', () => {
    expect(groupPicture([...ridden].reverse())).toEqual(picture);
    const text = JSON.stringify(picture, (_key, value: unknown) =>
      ArrayBuffer.isView(value) ? Array.from(value as Uint8Array) : value,
    );
    const names = real.flatMap((r) => [
      r.nickname,
      `"${r.deviceId}"`,
      r.id,
      r.checksum,
      r.recordingHash ?? '',
    ]);
    for (const name of names) expect(text).not.toContain(name);
  });

  it('needs nothing but marks', () => {
    const plain = groupPicture(real.map(marksOnly).map(bare));
    expect(plain.attempts).toEqual(picture.attempts);
    expect(plain.timing).toEqual(picture.timing);
    expect(plain.roads[0]?.verdict).toEqual(road?.verdict);
    expect(plain.roads[0]?.strip).toBeNull();
    expect(plain.roads[0]?.pitches.map((p) => p.credit)).toEqual(road?.pitches.map((p) => p.credit));
  });

  it('the same nickname on two tablets is two riders', () => {
    const twins = ['a', 'b'].map((deviceId) => bare(madeUpRecord({ deviceId, seq: 1 })));
    expect(groupPicture(twins).riders).toBe(2);
  });

  it('of nothing there is an empty picture', () => {
    expect(groupPicture([])).toMatchObject({
      rides: 0,
      riders: 0,
      roads: [],
      attempts: { pairs: 0, first: null },
    });
  });

  it('roads of other seeds or levels are pictures of their own', () => {
    const records = [
      madeUpRecord({ deviceId: 'a', seq: 1 }),
      { ...madeUpRecord({ deviceId: 'a', seq: 2 }), seed: 6 },
    ];
    expect(groupPicture(records.map(bare)).roads).toHaveLength(2);
    expect(levelById(LEVEL).id).toBe(LEVEL);
  });
});

describe('spreads', () => {
  it('by counting and by sorting are the same', () => {
    const random = seededRandom(4);
    const series = Array.from({ length: 101 }, () =>
      Uint8Array.from({ length: 30 }, () => 1 + Math.floor(random() * 255)),
    );
    const counted = spreadSeries(series, 30);
    for (let place = 0; place < 30; place += 1) {
      const sorted = spreadOf(series.map((line) => line[place] ?? 0));
      const { low, quarter, middle, threeQuarters, high } = counted;
      expect([low, quarter, middle, threeQuarters, high].map((row) => row[place])).toEqual([
        sorted?.low,
        sorted?.quarter,
        sorted?.middle,
        sorted?.threeQuarters,
        sorted?.high,
      ]);
    }
  });

  it('zeros are nothing', () => {
    const { low, high } = spreadSeries([Uint8Array.of(0, 0), Uint8Array.of(0, 90)], 2);
    expect([[...low], [...high]]).toEqual([
      [0, 90],
      [0, 90],
    ]);
    expect(spreadOf([])).toBeNull();
  });
});
