/**
 * Five tablets with one clock and the same nicknames hand their rides over: in any order, twice, some cut
 * off, some with a wrong byte. The union is exactly right, every bad piece is named, nothing good is lost.
 */
import { describe, expect, it } from 'vitest';
import {
  EMPTY_SET,
  mergeSets,
  type RecordSet,
  setOf,
  sortOut,
} from '../../../src/core/group/records/merge.ts';
import { deviceStatus, type Heard } from '../../../src/core/group/records/missing.ts';
import type { RideRecord } from '../../../src/core/group/records/record.ts';
import { readRideFile, writeRideFile } from '../../../src/core/transfer/rideFile.ts';
import { csvCell, csvReport, jsonReport, REPORT_COLUMNS } from '../../../src/core/group/records/report.ts';
import { canonicalJson } from '../../../src/core/math/hash.ts';
import { type Random, seededRandom } from '../../../src/core/math/random.ts';
import { madeUpRecord, realRecord } from '../group/rides.ts';

const TABLETS = ['t1', 't2', 't3', 't4', 't5'];
const NICKNAMES = ['red-fox', 'blue-owl', '~Zoë'];
const RIDES = 9;

const ridesOf = (deviceId: string): RideRecord[] =>
  Array.from({ length: RIDES }, (_, i) =>
    madeUpRecord(
      { deviceId, seq: i + 1, nickname: NICKNAMES[i % 3] ?? '', attempt: 1 + Math.floor(i / 3) },
      // The same seed everywhere: the tablets' rides differ in nothing but where they were ridden.
      seededRandom(i),
    ),
  );
const ALL = TABLETS.flatMap(ridesOf);
const fileOf = (deviceId: string, withdrawn: string[] = []): string =>
  writeRideFile({ planId: 'tuesday', deviceId, lastSeq: RIDES, withdrawn, records: ridesOf(deviceId) });
const whole = (records: readonly RideRecord[]): RecordSet =>
  setOf(records.map((record) => ({ record, damaged: null })));
const KNOWN = new Set(ALL.map(canonicalJson));
const strangers = (records: readonly RideRecord[]): RideRecord[] =>
  records.filter((record) => !KNOWN.has(canonicalJson(record)));
const pick = (random: Random, below: number): number => Math.floor(random() * below);

/** A file as it may arrive: whole, cut off, or with one wrong byte. */
function spoil(text: string, random: Random): { text: string; spoilt: boolean } {
  const kind = pick(random, 3);
  if (kind === 0) return { text, spoilt: false };
  const at = 1 + pick(random, text.length - 2);
  if (kind === 1) return { text: text.slice(0, at), spoilt: true };
  const bytes = new TextEncoder().encode(text);
  bytes[at] = (bytes[at] as number) ^ (1 << pick(random, 7));
  return { text: new TextDecoder().decode(bytes), spoilt: true };
}

describe('five tablets', () => {
  it('whole files in random order, twice: the union is exactly the rides of all', () => {
    for (let seed = 0; seed < 20; seed += 1) {
      const random = seededRandom(seed);
      const files = [...TABLETS, ...TABLETS].map((id) => ({ id, k: random() })).sort((a, b) => a.k - b.k);
      const set = files.reduce((sum, { id }) => mergeSets(sum, readRideFile(fileOf(id)).set), EMPTY_SET);
      expect(set).toEqual(whole(ALL));
      expect(sortOut(set).rides).toHaveLength(TABLETS.length * RIDES);
      expect(deviceStatus(set, []).every((device) => device.missingCount === 0)).toBe(true);
    }
  });

  it('one wrong byte anywhere in a file costs at most the lines it touches, and is named', () => {
    const text = fileOf('t1');
    const bytes = new TextEncoder().encode(text);
    for (let at = 0; at < bytes.length; at += 29)
      for (const bit of [0, 3, 5]) {
        const wrong = bytes.slice();
        wrong[at] = (wrong[at] as number) ^ (1 << bit);
        const { set } = readRideFile(new TextDecoder().decode(wrong));
        expect(strangers(set.records)).toEqual([]);
        // A line end that became a letter joins two lines; nothing else can harm more than one.
        expect(set.records.length).toBeGreaterThanOrEqual(bytes[at] === 10 ? RIDES - 2 : RIDES - 1);
        if (set.records.length < RIDES) expect(set.damaged.length).toBeGreaterThan(0);
      }
  });

  it('a file cut off anywhere loses only what was cut, names the torn line, and knows what is missing', () => {
    const text = fileOf('t1');
    const lines = text.split('\n');
    for (let length = 1; length < text.length; length += 9) {
      const { set, heard } = readRideFile(text.slice(0, length));
      const wholeLines = text.slice(0, length + 1).split('\n').length - 1;
      expect(set.records).toHaveLength(Math.max(0, Math.min(RIDES, wholeLines - 1)));
      const torn = text.slice(0, length).split('\n').at(-1) ?? '';
      expect(set.damaged.length).toBe(torn === '' || lines.includes(torn) ? 0 : 1);
      if (heard.length > 0) {
        const [status] = deviceStatus(
          set,
          heard.map((item): Heard => ({ ...item, atMs: 5 })),
        );
        expect(status?.missingCount).toBe(RIDES - set.records.length);
        expect(status?.missingSinceMs).toBe(status?.missingCount === 0 ? null : 5);
      }
    }
  });

  it('spoilt files first, whole ones later, in any order: nothing is lost, nothing is invented, no named damage stays open', () => {
    for (let seed = 0; seed < 30; seed += 1) {
      const random = seededRandom(seed);
      const arrivals = [...TABLETS, ...TABLETS, ...TABLETS].map((id) => spoil(fileOf(id), random).text);
      const shuffled = [...arrivals, ...TABLETS.map((id) => fileOf(id))]
        .map((text) => ({ text, k: random() }))
        .sort((a, b) => a.k - b.k);
      const set = shuffled.reduce((sum, { text }) => mergeSets(sum, readRideFile(text).set), EMPTY_SET);
      expect(set.records).toEqual(whole(ALL).records);
      const { rides, conflicts, damaged } = sortOut(set);
      expect([rides.length, conflicts]).toEqual([ALL.length, []]);
      // What stays open has no name of a known ride: a torn head, or a piece whose name itself was hit.
      for (const piece of damaged) expect(ALL.some((record) => record.id === piece.recordId)).toBe(false);
    }
  });

  it('only spoilt files: what came through is sound, and every file that lost something names a piece or a number', () => {
    for (let seed = 100; seed < 160; seed += 1) {
      const random = seededRandom(seed);
      for (const id of TABLETS) {
        const { text, spoilt } = spoil(fileOf(id), random);
        const { set, heard } = readRideFile(text);
        expect(strangers(set.records)).toEqual([]);
        if (!spoilt) expect(set.records).toHaveLength(RIDES);
        const known = heard.some((item) => item.lastSeq === RIDES);
        if (set.records.length < RIDES) expect(set.damaged.length > 0 || known).toBe(true);
      }
    }
  });

  it('a wrong byte in the head cannot blame another tablet or take rides back', () => {
    const text = fileOf('t1', ['t1.3']);
    expect(sortOut(readRideFile(text).set).withdrawn.map((record) => record.id)).toEqual(['t1.3']);
    const changed = [
      text.replace('"lastSeq":9', '"lastSeq":8'),
      text.replace('["t1.3"]', '["t1.4"]'),
      text.replace('"deviceId":"t1"', '"deviceId":"t2"'),
    ];
    for (const wrong of changed) {
      const { set, heard } = readRideFile(wrong);
      expect([heard, set.withdrawn, set.records.length]).toEqual([[], [], RIDES]);
      expect(set.damaged.map((piece) => piece.code)).toEqual(['file-head']);
    }
  });

  it('recordings travel in files', () => {
    const record = realRecord({ deviceId: 't1', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.6);
    const text = writeRideFile({
      planId: 'tuesday',
      deviceId: 't1',
      lastSeq: 1,
      withdrawn: [],
      records: [record],
    });
    expect(readRideFile(text).set.records).toEqual([record]);
  });

  it('lists and single records in plain JSON are read as well', () => {
    const records = ridesOf('t1');
    expect(readRideFile(JSON.stringify(records, null, 2)).set.records).toEqual(records);
    expect(readRideFile(`\uFEFF${JSON.stringify(records[0], null, 2)}`).set.records).toEqual([records[0]]);
  });

  it.each(['', '\n\n', 'null', '{}', '[]', '<html>', '{"kind":"clinic-rides"}', '[[[[', '{"__proto__":{}}'])(
    'a file that holds no rides gives none and never a fault (%j)',
    (text) => {
      expect(readRideFile(text).set.records).toEqual([]);
    },
  );
});

describe('the table', () => {
  /** Reads a table as RFC 4180 describes it. */
  function cells(text: string): string[][] {
    const rows: string[][] = [[]];
    for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
      rows.at(-1)?.push(quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'));
      if (end === '\r\n') rows.push([]);
    }
    return rows.slice(0, -1);
  }

  it('has one row per ride and a cell for every documented column', () => {
    const rows = cells(csvReport(ALL));
    expect(rows).toHaveLength(ALL.length + 1);
    expect(rows[0]).toEqual(Object.keys(REPORT_COLUMNS));
    expect(rows.every((row) => row.length === Object.keys(REPORT_COLUMNS).length)).toBe(true);
    const total = Object.keys(REPORT_COLUMNS).indexOf('total');
    expect(rows.slice(1).map((row) => Number(row[total]))).toEqual(ALL.map((record) => record.total));
  });

  it('says the same as JSON', () => {
    const rows = cells(csvReport(ALL));
    const plain = jsonReport(ALL).map((row) => Object.values(row).map((value) => csvCell(value)));
    expect(rows.slice(1).map((row) => row.map(csvCell))).toEqual(plain);
  });

  it.each([
    ['=HYPERLINK("http://x")', `"'=HYPERLINK(""http://x"")"`],
    ['+1', "'+1"],
    ['-2 3', "'-2 3"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t=1"],
    [' =1', "' =1"],
    ['a,b', '"a,b"'],
    ['say "hi"', '"say ""hi"""'],
    ['two\nlines', '"two\nlines"'],
    ['<script>', '<script>'],
    [-3.5, '-3.5'],
    [null, ''],
  ])('%j is written as %s', (value, cell) => {
    expect(csvCell(value)).toBe(cell);
  });

  it('a nickname that is a formula is harmless in the table', () => {
    const record = madeUpRecord({ deviceId: 't1', seq: 1, nickname: '~=1+cmd|calc' });
    const at = Object.keys(REPORT_COLUMNS).indexOf('nickname');
    expect(cells(csvReport([record]))[1]?.[at]).toBe("'=1+cmd|calc");
  });
});
