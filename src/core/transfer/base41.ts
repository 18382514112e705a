/**
 * Bytes as text in 41 characters that a QR code stores in its dense mode for capitals and digits (5.5 bits
 * each) and that may stand in the `#` part of a link unescaped: two bytes in three characters.
 */

const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ+-./:';
const BASE = 41;
const VALUES: ReadonlyMap<string, number> = new Map([...ALPHABET].map((character, i) => [character, i]));

/** Text of bytes; a last single byte takes two characters. */
export function toBase41(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let i = 0; i < bytes.length; i += 2) {
    const high = bytes[i] as number;
    const low = bytes[i + 1];
    const value = low === undefined ? high : high * 256 + low;
    parts.push(digit(value % BASE), digit(Math.floor(value / BASE) % BASE));
    if (low !== undefined) parts.push(digit(Math.floor(value / (BASE * BASE))));
  }
  return parts.join('');
}

/** Bytes of a text, or null where it is none of ours. */
export function fromBase41(text: string): Uint8Array | null {
  if (text.length % 3 === 1) return null;
  const out = new Uint8Array(Math.floor(text.length / 3) * 2 + (text.length % 3 === 2 ? 1 : 0));
  let at = 0;
  for (let i = 0; i < text.length; i += 3) {
    const pair = i + 2 >= text.length;
    const a = VALUES.get(text.charAt(i));
    const b = VALUES.get(text.charAt(i + 1));
    const c = pair ? 0 : VALUES.get(text.charAt(i + 2));
    if (a === undefined || b === undefined || c === undefined) return null;
    const value = a + b * BASE + c * BASE * BASE;
    if (value > (pair ? 0xff : 0xffff)) return null;
    if (!pair) out[at++] = Math.floor(value / 256);
    out[at++] = value % 256;
  }
  return out;
}

function digit(value: number): string {
  return ALPHABET.charAt(value);
}
