/**
 * Finds out in which encoding a file is written, and hands its bytes to a decoder that the shell brings
 * along. Files that are packed or plainly something else are known before that.
 */

import type { Packing } from './packed.ts';

/** A decoder of one encoding that keeps half a character until the next call, as `TextDecoder` does. */
export interface TextStream {
  decode(bytes?: Uint8Array, options?: { stream?: boolean }): string;
}

/** Opens a decoder, or throws where the label is not known: `(label) => new TextDecoder(label)`. */
export type OpenDecoder = (label: string) => TextStream;

/** What the first bytes say. */
type Encoding =
  | { readonly kind: 'text'; readonly label: string }
  /** Packed; `null` where it cannot be opened here. */
  | { readonly kind: 'packed'; readonly packing: Packing | null }
  /** Plainly something else; `binary` where nothing better can be said. */
  | { readonly kind: 'other'; readonly is: 'pdf' | 'picture' | 'fit' | 'binary' };

/** An XML declaration has ended by then. */
export const HEAD_BYTES = 256;

/** Beginnings of files that are no text, in hex. */
const MAGIC: readonly { readonly hex: string; readonly is: Packing | 'packed' | 'pdf' | 'picture' }[] = [
  { hex: '1f8b', is: 'gzip' },
  { hex: '504b0304', is: 'zip' },
  // An archive with nothing in it.
  { hex: '504b0506', is: 'zip' },
  { hex: '425a68', is: 'packed' },
  { hex: '377abcaf', is: 'packed' },
  { hex: 'fd377a585a', is: 'packed' },
  { hex: '28b52ffd', is: 'packed' },
  { hex: '526172211a', is: 'packed' },
  { hex: '25504446', is: 'pdf' },
  { hex: '89504e47', is: 'picture' },
  { hex: 'ffd8ff', is: 'picture' },
  { hex: '47494638', is: 'picture' },
  { hex: '49492a00', is: 'picture' },
  { hex: '4d4d002a', is: 'picture' },
];

/** Marks that begin a text. The longer one first: the mark of UTF-32 begins like that of UTF-16. */
const MARKS: readonly { readonly hex: string; readonly label: string }[] = [
  { hex: 'efbbbf', label: 'utf-8' },
  { hex: 'fffe0000', label: 'utf-32' },
  { hex: '0000feff', label: 'utf-32' },
  { hex: 'fffe', label: 'utf-16le' },
  { hex: 'feff', label: 'utf-16be' },
  // No mark, but "<" in two bytes.
  { hex: '3c00', label: 'utf-16le' },
  { hex: '003c', label: 'utf-16be' },
];

/** Pictures whose kind stands behind a length: WebP in RIFF, and the still pictures of phones (HEIC, AVIF). */
function isPictureInside(ascii: string): boolean {
  const kind = ascii.slice(8, 12);
  return (
    (ascii.startsWith('RIFF') && kind === 'WEBP') ||
    (ascii.slice(4, 8) === 'ftyp' && /^(hei|mif1|avif)/.test(kind))
  );
}

/**
 * What a file is, by a byte-order mark, by its first bytes, or by its XML declaration; UTF-8 otherwise.
 * @param head the first bytes of the file, `HEAD_BYTES` of them if there are as many
 */
export function encodingOf(head: Uint8Array): Encoding {
  const hex = [...head.subarray(0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  const magic = MAGIC.find((entry) => hex.startsWith(entry.hex));
  if (magic?.is === 'pdf' || magic?.is === 'picture') return { kind: 'other', is: magic.is };
  if (magic !== undefined) return { kind: 'packed', packing: magic.is === 'packed' ? null : magic.is };
  const mark = MARKS.find((entry) => hex.startsWith(entry.hex));
  if (mark !== undefined) return { kind: 'text', label: mark.label };
  const ascii = [...head].map((byte) => String.fromCharCode(byte)).join('');
  if (ascii.slice(8, 12) === '.FIT') return { kind: 'other', is: 'fit' };
  if (isPictureInside(ascii)) return { kind: 'other', is: 'picture' };
  // A tape archive begins with the name of its first file.
  if (/^[^\0<]{1,95}\.gpx\0/i.test(ascii)) return { kind: 'packed', packing: null };
  if (ascii.includes('\0')) return { kind: 'other', is: 'binary' };
  const declared = /^\s*<\?xml[^>]*?\sencoding\s*=\s*["']([\w.:-]{1,40})["']/.exec(ascii)?.[1]?.toLowerCase();
  // Saying "UTF-16" in single bytes is a common slip of programs that convert files.
  return { kind: 'text', label: declared === undefined || /^utf-?16/.test(declared) ? 'utf-8' : declared };
}
