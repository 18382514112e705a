/** A file of rides with more lines than a group can ride is refused before they are read; the most that can be is read. */
import { describe, expect, it } from 'vitest';
import { LIMITS } from '../../../src/core/math/limits.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { isTooMuch, readRideFile, ridesIn, writeRideFile } from '../../../src/core/transfer/rideFile.ts';
import { madeUpRecord } from '../group/rides.ts';

const { lines, characters } = LIMITS.rideFile;
const record = madeUpRecord({ deviceId: 't1', seq: 1, nickname: 'red-fox', attempt: 1 }, seededRandom(1));
const file = writeRideFile({
  planId: 'tuesday',
  deviceId: 't1',
  lastSeq: 1,
  withdrawn: [],
  records: [record],
});
/** The file with so many lines, most of them no ride. */
const withLines = (count: number): string => file + '{"seq":7}\n'.repeat(count - 2);

describe('a file of rides', () => {
  it('of as many lines as are allowed is read, and of one more nothing is', () => {
    const most = readRideFile(withLines(lines.most));
    expect(most.set.records).toEqual([record]);
    expect(most.heard).toHaveLength(1);
    const more = readRideFile(withLines(lines.most + 1));
    expect(more.set.records).toEqual([]);
    expect(more.set.damaged.map(({ code }) => code)).toEqual(['too-long']);
  });

  it('of a million lines is not even cut into lines', () => {
    expect(isTooMuch('{"seq":7}\n'.repeat(1_000_000))).toBe(true);
    expect(isTooMuch('\n'.repeat(characters.most))).toBe(true);
    expect([...ridesIn('{"seq":7}\n'.repeat(1_000_000))]).toHaveLength(1);
  });

  it('that is one list is held to the same number', () => {
    const list = (count: number): string => `[${Array.from({ length: count }, () => '1').join(',')}]`;
    expect(readRideFile(list(lines.most + 1)).set.damaged.map(({ code }) => code)).toEqual(['too-long']);
    expect(readRideFile(list(3)).set.damaged.map(({ code }) => code)).toEqual(['not-a-record']);
  });

  it('says how far it is, from the first line to the last', () => {
    const shares = [...ridesIn(withLines(50))].map(({ share }) => share);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares).toHaveLength(50);
    expect(shares.at(-1)).toBe(1);
  });
});
