/**
 * Putting together what tablets hand over: the union does not depend on order, grouping or repetition, keeps
 * conflicts apart, and knows what is still missing, by number.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  EMPTY_SET,
  mergeSets,
  type RecordSet,
  setOf,
  sortOut,
} from '../../../src/core/group/records/merge.ts';
import { deviceStatus } from '../../../src/core/group/records/missing.ts';
import { type RideRecord, sealRecord } from '../../../src/core/group/records/record.ts';
import { parseRecord, parseRecordText } from '../../../src/core/group/records/recordFile.ts';
import { madeUpRecord, marksOnly, realRecord } from './rides.ts';

const resealed = (record: RideRecord, changes: Partial<RideRecord>): RideRecord =>
  sealRecord({ ...record, ...changes });
const real = [1, 2].map((seq) => realRecord({ deviceId: 'a', seq, nickname: 'red-fox', attempt: seq }, 0.5));
/** Few ids, so that random sets meet: sound, conflicting, without their recording, and damaged pieces. */
const POOL: readonly unknown[] = [
  ...real,
  ...real.map(marksOnly),
  ...[1, 2, 3].map((seq) => madeUpRecord({ deviceId: 'b', seq })),
  ...[1, 2].map((seq) => resealed(madeUpRecord({ deviceId: 'b', seq }), { total: 12.3 })),
  resealed(madeUpRecord({ deviceId: 'b', seq: 3 }), { id: 'other' }),
  { ...real[0], total: 1 },
  { ...real[0], recording: { schema: 1 } },
  JSON.stringify(real[1]).slice(0, 200),
  'nonsense',
  { id: 'b.9', deviceId: 'b', seq: 9 },
];
const read = (piece: unknown) => (typeof piece === 'string' ? parseRecordText(piece) : parseRecord(piece));
const setArbitrary: fc.Arbitrary<RecordSet> = fc
  .record({
    pieces: fc.array(fc.constantFrom(...POOL), { maxLength: 12 }),
    withdrawn: fc.array(fc.constantFrom('a.1', 'b.1', 'b.3'), { maxLength: 2 }),
  })
  .map(({ pieces, withdrawn }) => setOf(pieces.map(read), withdrawn));

describe('the union of what was handed over', () => {
  it('does not depend on order, grouping or repetition', () => {
    fc.assert(
      fc.property(setArbitrary, setArbitrary, setArbitrary, (a, b, c) => {
        const all = mergeSets(a, b, c);
        expect(mergeSets(b, a)).toEqual(mergeSets(a, b));
        expect(mergeSets(mergeSets(a, b), c)).toEqual(all);
        expect(mergeSets(a, mergeSets(b, c))).toEqual(all);
        expect(mergeSets(all, a, all, c)).toEqual(all);
        expect(mergeSets(a, a)).toEqual(a);
        expect(mergeSets(a, EMPTY_SET)).toEqual(a);
      }),
      { numRuns: 400, seed: 1 },
    );
  });

  it('loses nothing: every record and every damaged piece of a part is in the whole', () => {
    fc.assert(
      fc.property(setArbitrary, setArbitrary, (a, b) => {
        const whole = mergeSets(a, b);
        for (const record of [...a.records, ...b.records])
          expect(whole.records.map(marksOnly)).toContainEqual(marksOnly(record));
        for (const piece of [...a.damaged, ...b.damaged]) expect(whole.damaged).toContainEqual(piece);
        const ridden = (set: RecordSet) => set.records.filter((record) => record.recording !== null);
        for (const record of [...ridden(a), ...ridden(b)]) expect(whole.records).toContainEqual(record);
      }),
      { numRuns: 200, seed: 2 },
    );
  });

  it('a copy with its recording replaces one without, in either order', () => {
    const [record] = real as [RideRecord];
    const bare = setOf([{ record: marksOnly(record), damaged: null }]);
    const whole = setOf([{ record, damaged: null }]);
    expect(mergeSets(bare, whole)).toEqual(whole);
    expect(mergeSets(whole, bare)).toEqual(whole);
  });

  it('one id with different content is a conflict of which both sides are kept and neither counts', () => {
    const one = madeUpRecord({ deviceId: 'b', seq: 1 });
    const other = resealed(one, { total: 1.5 });
    const sorted = sortOut(setOf([one, other].map((record) => ({ record, damaged: null }))));
    expect(sorted.rides).toEqual([]);
    expect(sorted.conflicts).toHaveLength(1);
    expect(sorted.conflicts[0]?.code).toBe('same-id');
    expect(new Set(sorted.conflicts[0]?.records)).toEqual(new Set([one, other]));
  });

  it('two records in one place of a device’s count are a conflict, too', () => {
    const one = madeUpRecord({ deviceId: 'b', seq: 1 });
    const sorted = sortOut(
      setOf([one, resealed(one, { id: 'x' })].map((record) => ({ record, damaged: null }))),
    );
    expect([sorted.rides, sorted.conflicts.map((c) => c.code)]).toEqual([[], ['same-seq']]);
  });

  it('contents that only share their checksum are both kept', () => {
    const one = madeUpRecord({ deviceId: 'b', seq: 1 });
    const forged = { ...one, total: 99.9 };
    const set = setOf([one, forged].map((record) => ({ record, damaged: null })));
    expect(set.records).toHaveLength(2);
    expect(sortOut(set).rides).toEqual([]);
  });

  it('a ride that was taken back does not count, whenever that was heard', () => {
    const record = madeUpRecord({ deviceId: 'b', seq: 1 });
    const set = mergeSets(setOf([], ['b.1']), setOf([{ record, damaged: null }]));
    expect([sortOut(set).rides, sortOut(set).withdrawn]).toEqual([[], [record]]);
  });

  it('a damaged piece is no longer open once a good copy has come', () => {
    const record = madeUpRecord({ deviceId: 'b', seq: 1 });
    const bad = setOf([parseRecordText(JSON.stringify(record).slice(0, -9))]);
    expect(sortOut(bad).damaged).toHaveLength(1);
    const both = mergeSets(bad, setOf([{ record, damaged: null }]));
    expect([both.damaged.length, sortOut(both).damaged, sortOut(both).rides]).toEqual([1, [], [record]]);
  });
});

describe('what is missing', () => {
  const setWith = (...seqs: number[]): RecordSet =>
    setOf(seqs.map((seq) => ({ record: madeUpRecord({ deviceId: 'a', seq }), damaged: null })));

  it('gaps are named by number, and since when they are known', () => {
    const heard = [
      { deviceId: 'a', lastSeq: 4, atMs: 1_000 },
      { deviceId: 'a', lastSeq: 9, atMs: 2_000 },
    ];
    expect(deviceStatus(setWith(1, 2, 4, 7), heard)).toEqual([
      {
        deviceId: 'a',
        have: 4,
        lastSeq: 9,
        missing: [
          [3, 3],
          [5, 6],
          [8, 9],
        ],
        missingCount: 5,
        missingSinceMs: 1_000,
        lastHeardMs: 2_000,
      },
    ]);
  });

  it('an absurd claim costs nothing', () => {
    const claims = [1e300, 1e9, Number.NaN, -5, 2.5].map((lastSeq) => ({ deviceId: 'a', lastSeq, atMs: 0 }));
    const [status] = deviceStatus(setWith(1), claims);
    expect(status).toMatchObject({ missing: [], lastSeq: 1 });
    expect(deviceStatus(setWith(1), [{ deviceId: 'a', lastSeq: 1e6, atMs: 0 }])[0]?.missingCount).toBe(
      999_999,
    );
  });

  it('nothing named missing is there, and everything else up to the last is', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 60 })),
        fc.integer({ min: 0, max: 70 }),
        (seqs, last) => {
          const [status] = deviceStatus(setWith(...seqs), [{ deviceId: 'a', lastSeq: last, atMs: 0 }]);
          const missing = (status?.missing ?? []).flatMap(([from, to]) =>
            Array.from({ length: to - from + 1 }, (_, i) => from + i),
          );
          const all = Array.from({ length: Math.max(last, ...seqs, 0) }, (_, i) => i + 1);
          expect(missing).toEqual(all.filter((seq) => !seqs.includes(seq)));
          expect(status?.missingCount).toBe(missing.length);
        },
      ),
      { numRuns: 100, seed: 3 },
    );
  });
});
