/** Files packed into one ZIP archive (PKWARE's APPNOTE, 6.3.10), the same bytes for the same files. */
import { crc32, deflateRawSync } from 'node:zlib';

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
/** What a reader has to know: folders and deflate. */
const VERSION = 20;
/** Made by rules of Unix, whose rights stand in the upper half of the attributes: a file all may read. */
const MADE_BY = (3 << 8) | VERSION;
const RIGHTS = 0o100644 * 0x10000;
const UTF8_NAMES = 0x0800;
const DEFLATED = 8;
/** No day a file was made on: the first one there is. */
const FIRST_DAY = 0x21;

/** @typedef {{ readonly bytes: 2 | 4, readonly value: number }} Field */
/** @param {number} value @returns {Field} */
const two = (value) => ({ bytes: 2, value });
/** @param {number} value @returns {Field} */
const four = (value) => ({ bytes: 4, value });

/** @param {readonly Field[]} fields */
function written(fields) {
  const buffer = Buffer.alloc(fields.reduce((sum, { bytes }) => sum + bytes, 0));
  let at = 0;
  for (const { bytes, value } of fields) at = buffer.writeUIntLE(value, at, bytes);
  return buffer;
}

/**
 * The archive.
 * @param {ReadonlyMap<string, string | Uint8Array>} files path with forward slashes, and content
 * @returns {Buffer}
 */
export function zipOf(files) {
  /** @type {Buffer[]} */
  const parts = [];
  /** @type {Buffer[]} */
  const list = [];
  let at = 0;
  for (const [path, content] of [...files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const name = Buffer.from(path, 'utf8');
    const plain = Buffer.from(content);
    const packed = deflateRawSync(plain, { level: 9 });
    const known = [
      two(UTF8_NAMES),
      two(DEFLATED),
      two(0),
      two(FIRST_DAY),
      four(crc32(plain)),
      four(packed.length),
      four(plain.length),
      two(name.length),
      two(0),
    ];
    const local = Buffer.concat([written([four(LOCAL), two(VERSION), ...known]), name, packed]);
    list.push(
      written([
        four(CENTRAL),
        two(MADE_BY),
        two(VERSION),
        ...known,
        two(0),
        two(0),
        two(0),
        four(RIGHTS),
        four(at),
      ]),
      name,
    );
    parts.push(local);
    at += local.length;
  }
  const central = Buffer.concat(list);
  const count = two(files.size);
  const end = written([four(END), two(0), two(0), count, count, four(central.length), four(at), two(0)]);
  return Buffer.concat([...parts, central, end]);
}
