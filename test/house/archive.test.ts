/**
 * The archive for web hosts, read back by the rules of PKWARE's APPNOTE 6.3.10 (4.3: structure), and its note: it says
 * only what is so.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { crc32, inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { zipOf } from '../../.ci/archive.mjs';
import { repository } from './files.ts';

interface Entry {
  readonly path: string;
  readonly content: Buffer;
  readonly rights: number;
}

/** Reads from the end, as readers do; throws where anything does not fit. */
function read(zip: Buffer): Entry[] {
  const end = zip.length - 22;
  expect(zip.readUInt32LE(end)).toBe(0x06054b50);
  const count = zip.readUInt16LE(end + 10);
  const entries: Entry[] = [];
  let at = zip.readUInt32LE(end + 16);
  expect(at + zip.readUInt32LE(end + 12)).toBe(end);
  for (let i = 0; i < count; i += 1) {
    expect(zip.readUInt32LE(at)).toBe(0x02014b50);
    const nameLength = zip.readUInt16LE(at + 28);
    const name = zip.subarray(at + 46, at + 46 + nameLength);
    const local = zip.readUInt32LE(at + 42);
    expect(zip.readUInt32LE(local)).toBe(0x04034b50);
    // The local head says the same as the list.
    expect(zip.subarray(local + 4, local + 30)).toEqual(zip.subarray(at + 6, at + 32));
    const data = local + 30 + nameLength;
    expect(zip.subarray(local + 30, data)).toEqual(name);
    const content = inflateRawSync(zip.subarray(data, data + zip.readUInt32LE(at + 20)));
    expect([content.length, crc32(content)]).toEqual([zip.readUInt32LE(at + 24), zip.readUInt32LE(at + 16)]);
    entries.push({ path: name.toString('utf8'), content, rights: zip.readUInt32LE(at + 38) >>> 16 });
    at += 46 + nameLength;
  }
  expect(at).toBe(end);
  return entries;
}

describe('the archive', () => {
  const files = new Map<string, string | Uint8Array>([
    ['game/index.html', '<!doctype html>'],
    ['READ ME.txt', 'Hügel ☃\n'.repeat(500)],
    ['game/assets/empty.js', ''],
    ['game/assets/ding.webm', Uint8Array.from({ length: 3_000 }, (_, i) => (i * 7919) % 256)],
    ['game/Hügel.txt', 'ü'],
  ]);

  it('holds every file as it was, readable by all', () => {
    const entries = read(zipOf(files));
    expect(new Map(entries.map(({ path, content }) => [path, content.toString('latin1')]))).toEqual(
      new Map([...files].map(([path, content]) => [path, Buffer.from(content).toString('latin1')])),
    );
    expect(entries.map(({ rights }) => rights.toString(8))).toEqual(Array(files.size).fill('100644'));
  });

  it('is the same for the same files in any order', () => {
    expect(zipOf(new Map([...files].reverse()))).toEqual(zipOf(files));
  });
});

it('the note for web hosts fits one page and names files the build makes', () => {
  const note = readFileSync(join(repository, '.ci/hostNote.txt'), 'utf8');
  const lines = note.split('\n');
  // A page of A4 in a type of fixed width.
  expect(lines.length).toBeLessThanOrEqual(60);
  expect(lines.filter((line) => line.length > 80)).toEqual([]);
  for (const name of ['index.html', 'offline.js', 'assets/']) expect(note).toContain(name);
});
