/**
 * Bytes as letters that survive links and mails (base64 with - and _, without padding), and back. Written here
 * because the core may not ask its host for it.
 */

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES = new Map([...LETTERS].map((letter, value) => [letter, value]));

/** Three bytes become four letters. */
export function textFromBytes(bytes: Uint8Array): string {
  const letters: string[] = [];
  for (let i = 0; i < bytes.length; i += 3) {
    const word = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const count = Math.min(3, bytes.length - i) + 1;
    for (let k = 0; k < count; k += 1) letters.push(LETTERS[(word >> (18 - 6 * k)) & 63] as string);
  }
  return letters.join('');
}

/** The bytes, or null if the text was not made by `textFromBytes`. */
export function bytesFromText(text: string): Uint8Array<ArrayBuffer> | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  let held = 0;
  let at = 0;
  for (const letter of text) {
    const value = VALUES.get(letter);
    if (value === undefined) return null;
    bits = ((bits << 6) | value) & 0xfff;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes[at] = (bits >> held) & 0xff;
    at += 1;
  }
  // Bits left over must be empty, so that one level has one text.
  return (bits & ((1 << held) - 1)) === 0 ? bytes : null;
}
