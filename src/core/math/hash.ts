/**
 * Fingerprints of numbers and of JSON values: two 32-bit FNV-1a style streams, printed as 16 hex digits.
 * They find accidents and differences between engines; they are no protection against an attacker.
 */

const bits = new DataView(new ArrayBuffer(8));

/** A running fingerprint; feed it and read it. */
interface Hasher {
  number(value: number): void;
  text(value: string): void;
  /** 16 lower-case hex digits. */
  digest(): string;
}

export function createHasher(): Hasher {
  let a = 0x811c9dc5;
  let b = 0x9747b28c;
  const feed = (word: number): void => {
    a = Math.imul(a ^ word, 0x01000193);
    a ^= a >>> 15;
    b = Math.imul(b ^ word, 0x85ebca6b);
    b ^= b >>> 13;
  };
  return {
    number(value) {
      // -0 and 0 are the same place on a road.
      bits.setFloat64(0, value === 0 ? 0 : value, true);
      feed(bits.getUint32(0, true));
      feed(bits.getUint32(4, true));
    },
    text(value) {
      for (let i = 0; i < value.length; i += 1) feed(value.charCodeAt(i));
      feed(0x10000 + value.length);
    },
    digest() {
      return hex(a) + hex(b);
    },
  };
}

/** Fingerprint of any JSON value; the order of keys does not matter. */
export function hashJson(value: unknown): string {
  const hasher = createHasher();
  hasher.text(canonicalJson(value));
  return hasher.digest();
}

/** JSON with sorted keys and without `undefined`, so that equal values give equal text. */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  const entries = Object.entries(value as Record<string, unknown>)
    .filter(([, item]) => item !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return `{${entries.map(([key, item]) => `${JSON.stringify(key)}:${canonicalJson(item)}`).join(',')}}`;
}

function hex(word: number): string {
  return (word >>> 0).toString(16).padStart(8, '0');
}
