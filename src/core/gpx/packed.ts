/**
 * Opens packed files piece by piece: gzip (RFC 1952) and ZIP archives with one GPX file in them (PKWARE's APPNOTE). Small
 * pieces go in, so that a file made to burst never has more than a few megabytes unpacked at once; whoever takes the
 * bytes says when it is enough.
 */
import { Gunzip, Unzip, type UnzipFile, UnzipInflate } from 'fflate';

/** Ways of packing that can be opened. */
export type Packing = 'gzip' | 'zip';

/** Deflate makes a thousand times as much of a piece at most, so of this much some eight megabytes (bytes). */
const PIECE_BYTES = 8_192;

/** Why there is no file to read in a packed one. */
export type PackedFault = 'packed-damaged' | 'packed-without' | 'packed-several';

/** Starts unpacking. `take` gets what comes out, in order, and answers whether it wants more. */
export function openPacked(packing: Packing, take: (bytes: Uint8Array) => boolean) {
  let fault: PackedFault | null = null;
  let wanted = true;
  const onBytes = (bytes: Uint8Array): void => {
    wanted &&= take(bytes);
  };
  const archive = packing === 'zip' ? openArchive(onBytes, () => (fault = 'packed-damaged')) : null;
  const stream = archive?.stream ?? new Gunzip(onBytes);
  const attempt = (bytes: Uint8Array, last: boolean): void => {
    try {
      stream.push(bytes, last);
    } catch {
      fault = 'packed-damaged';
    }
  };
  return {
    /** False once no more is wanted, or nothing more can be unpacked. */
    push(bytes: Uint8Array): boolean {
      for (let at = 0; at < bytes.length && wanted && fault === null; at += PIECE_BYTES)
        attempt(bytes.slice(at, at + PIECE_BYTES), false);
      return wanted && fault === null;
    },
    /** Ends the file; null where one file was unpacked to its end. */
    end(): PackedFault | null {
      if (wanted && fault === null) attempt(new Uint8Array(0), true);
      if (fault !== null || archive === null) return fault;
      const count = archive.count();
      return count === 1 ? null : count === 0 ? 'packed-without' : 'packed-several';
    },
  };
}

/** An archive of which the first GPX file is unpacked; the others are only counted. */
function openArchive(onBytes: (bytes: Uint8Array) => void, onFault: () => void) {
  let count = 0;
  const stream = new Unzip((entry: UnzipFile) => {
    if (!isRide(entry.name)) return;
    count += 1;
    if (count > 1) return;
    entry.ondata = (error, bytes) => (error === null ? onBytes(bytes) : onFault());
    entry.start();
  });
  stream.register(UnzipInflate);
  return { stream, count: () => count };
}

/** Whether a name in an archive is that of a ride, and not that of a system's note about it. */
function isRide(path: string): boolean {
  const name = path.slice(path.lastIndexOf('/') + 1);
  return /\.gpx(\.gz)?$/i.test(name) && !name.startsWith('.');
}
