/**
 * Finds out in which encoding a file is written, and hands its bytes to a decoder that the shell brings
 * along. Files that are plainly something else (packed, a picture of bytes) are refused before that.
 */

/** A decoder of one encoding that keeps half a character until the next call, as `TextDecoder` does. */
export interface TextStream {
  decode(bytes?: Uint8Array, options?: { stream?: boolean }): string;
}

/** Opens a decoder, or throws where the label is not known: `(label) => new TextDecoder(label)`. */
export type OpenDecoder = (label: string) => TextStream;

/** What the first bytes say. */
export type Encoding =
  | { readonly kind: 'text'; readonly label: string }
  | { readonly kind: 'packed' | 'other'; readonly sentence: string };

/** An XML declaration has ended by then. */
export const HEAD_BYTES = 256;

const PACKED = 'This file is packed. Unpack it first; the file inside ends in .gpx.';

/** Beginnings of files that are no text, in hex. */
const MAGIC: readonly {
  readonly hex: string;
  readonly kind: 'packed' | 'other';
  readonly sentence: string;
}[] = [
  { hex: '1f8b', kind: 'packed', sentence: PACKED },
  { hex: '504b0304', kind: 'packed', sentence: PACKED },
  { hex: '425a68', kind: 'packed', sentence: PACKED },
  { hex: '377abcaf', kind: 'packed', sentence: PACKED },
  { hex: 'fd377a585a', kind: 'packed', sentence: PACKED },
  { hex: '28b52ffd', kind: 'packed', sentence: PACKED },
  { hex: '25504446', kind: 'other', sentence: 'This is a PDF document, not a GPX file.' },
  { hex: '89504e47', kind: 'other', sentence: 'This is a picture, not a GPX file.' },
  { hex: 'ffd8ff', kind: 'other', sentence: 'This is a picture, not a GPX file.' },
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

/**
 * What a file is, by a byte-order mark, by its first bytes, or by its XML declaration; UTF-8 otherwise.
 * @param head the first bytes of the file, `HEAD_BYTES` of them if there are as many
 */
export function encodingOf(head: Uint8Array): Encoding {
  const hex = [...head.subarray(0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  const magic = MAGIC.find((entry) => hex.startsWith(entry.hex));
  if (magic !== undefined) return { kind: magic.kind, sentence: magic.sentence };
  const mark = MARKS.find((entry) => hex.startsWith(entry.hex));
  if (mark !== undefined) return { kind: 'text', label: mark.label };
  const ascii = [...head].map((byte) => String.fromCharCode(byte)).join('');
  if (ascii.slice(8, 12) === '.FIT')
    return { kind: 'other', sentence: 'This is a FIT file. Export the ride as GPX instead.' };
  if (ascii.includes('\0'))
    return { kind: 'other', sentence: 'This is not a text file, so it is no GPX file.' };
  const declared = /^\s*<\?xml[^>]*?\sencoding\s*=\s*["']([\w.:-]{1,40})["']/.exec(ascii)?.[1]?.toLowerCase();
  // Saying "UTF-16" in single bytes is a common slip of programs that convert files.
  return { kind: 'text', label: declared === undefined || /^utf-?16/.test(declared) ? 'utf-8' : declared };
}
