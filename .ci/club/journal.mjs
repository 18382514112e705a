/**
 * One file to which lines are only ever added. A line counts once it lies on the disk whole: it begins with a
 * fingerprint of the rest, so that half of one, after a crash or a full disk, is told from a whole one.
 */
import { createHash } from 'node:crypto';
import { readSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Where the text of a line lies in the file (bytes). @typedef {{ readonly at: number, readonly length: number }} Place */

/**
 * What a database writes to.
 * @typedef {object} Journal
 * @property {(texts: readonly string[]) => Promise<Place[]>} append comes back once all lie on the disk; rejects where none counts
 * @property {(place: Place) => string} read
 * @property {() => Promise<void>} close
 */

/** Signs of a fingerprint, and the blank behind it. */
const MARK_BYTES = 22;
const HEAD_BYTES = MARK_BYTES + 1;
const READ_BYTES = 1 << 20;
const LINE_END = 0x0a;

/** @param {string | Uint8Array} text */
const markOf = (text) => createHash('sha256').update(text).digest('base64url').slice(0, MARK_BYTES);

/** @param {string} text a text without line ends */
const lineOf = (text) => Buffer.from(`${markOf(text)} ${text}\n`);

/**
 * Opens the file, or makes it. What a crash has left half written at its end is cut off; nobody was told that it is kept.
 * @param {string} file
 * @param {(text: string, place: Place) => void} onLine gets every whole line, in order
 * @returns {Promise<{ journal: Journal, damaged: number }>} with the number of lines that are not whole; they stay where they are
 */
export async function openJournal(file, onLine) {
  const handle = await open(file, 'a+', 0o600).then((made) => made.close().then(() => open(file, 'r+')));
  await syncFolder(dirname(file));
  const { end: whole, damaged } = await readLines(handle, onLine);
  let end = whole;
  await handle.truncate(end);
  /** @type {Journal} */
  const journal = {
    async append(texts) {
      const lines = texts.map(lineOf);
      try {
        await writeAll(handle, Buffer.concat(lines), end);
        await handle.datasync();
      } catch (error) {
        // What was written of it must not be taken for kept at the next start.
        await handle.truncate(end).catch(() => undefined);
        throw error;
      }
      return lines.map((line) => {
        const place = { at: end + HEAD_BYTES, length: line.length - HEAD_BYTES - 1 };
        end += line.length;
        return place;
      });
    },
    read({ at, length }) {
      const bytes = Buffer.alloc(length);
      let got = 0;
      while (got < length) {
        const more = readSync(handle.fd, bytes, got, length - got, at + got);
        if (more === 0) throw new Error('The file has become shorter.');
        got += more;
      }
      return bytes.toString('utf8');
    },
    close: () => handle.close(),
  };
  return { journal, damaged };
}

/**
 * @param {import('node:fs/promises').FileHandle} handle
 * @param {Buffer} bytes
 * @param {number} at
 */
async function writeAll(handle, bytes, at) {
  for (let written = 0; written < bytes.length; ) {
    const { bytesWritten } = await handle.write(bytes, written, bytes.length - written, at + written);
    if (bytesWritten === 0) throw Object.assign(new Error('Nothing could be written.'), { code: 'ENOSPC' });
    written += bytesWritten;
  }
}

/**
 * @param {import('node:fs/promises').FileHandle} handle
 * @param {(text: string, place: Place) => void} onLine
 * @returns {Promise<{ end: number, damaged: number }>} where the last line ends
 */
async function readLines(handle, onLine) {
  let rest = Buffer.alloc(0);
  let restAt = 0;
  let damaged = 0;
  for (;;) {
    const chunk = Buffer.alloc(READ_BYTES);
    const { bytesRead } = await handle.read(chunk, 0, READ_BYTES, restAt + rest.length);
    if (bytesRead === 0) return { end: restAt, damaged };
    rest = Buffer.concat([rest, chunk.subarray(0, bytesRead)]);
    for (let lineEnd = rest.indexOf(LINE_END); lineEnd !== -1; lineEnd = rest.indexOf(LINE_END)) {
      const text = rest.subarray(HEAD_BYTES, lineEnd);
      if (rest.toString('latin1', 0, MARK_BYTES) === markOf(text))
        onLine(text.toString('utf8'), { at: restAt + HEAD_BYTES, length: text.length });
      else damaged += 1;
      restAt += lineEnd + 1;
      rest = rest.subarray(lineEnd + 1);
    }
  }
}

/**
 * A new file is there for certain only once its folder lies on the disk as well; some systems cannot be asked for that.
 * @param {string} folder
 */
export async function syncFolder(folder) {
  const handle = await open(folder, 'r').catch(() => null);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

/** A journal that is forgotten with the program; for tests. @returns {Journal} */
export function memoryJournal() {
  /** @type {string[]} */
  const kept = [];
  return {
    append: async (texts) => texts.map((text) => ({ at: kept.push(text) - 1, length: 1 })),
    read: ({ at }) => kept[at] ?? '',
    close: async () => undefined,
  };
}
