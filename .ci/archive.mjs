/** Files packed into one ZIP archive, the same bytes for the same files. */
import { zipSync } from 'fflate';

/** Made by rules of Unix, whose rights stand in the upper half of the attributes: a file all may read. */
const UNIX = 3;
const RIGHTS = 0o100644 * 0x10000;
/** No day a file was made on: the first one there is, wherever it is packed. */
const FIRST_DAY = new Date(1980, 0, 1);

/**
 * The archive.
 * @param {ReadonlyMap<string, string | Uint8Array>} files path with forward slashes, and content
 * @returns {Buffer}
 */
export function zipOf(files) {
  const sorted = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  const entries = Object.fromEntries(sorted.map(([path, content]) => [path, Buffer.from(content)]));
  return Buffer.from(zipSync(entries, { level: 9, mtime: FIRST_DAY, os: UNIX, attrs: RIGHTS }));
}
