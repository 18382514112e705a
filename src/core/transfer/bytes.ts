/**
 * Bytes for small packets: UTF-8, whole numbers of any size, short texts, fingerprints. The core has no text
 * encoder of the host, so it brings these few lines. A reader never throws; it notes that it has failed.
 */

/** UTF-8 bytes of a text; halves of characters become the replacement character. */
export function utf8Bytes(text: string): Uint8Array {
  const out: number[] = [];
  for (const character of text) {
    let code = character.codePointAt(0) as number;
    if (code >= 0xd800 && code <= 0xdfff) code = 0xfffd;
    if (code < 0x80) out.push(code);
    else if (code < 0x800) out.push(0xc0 | (code >> 6), 0x80 | (code & 63));
    else if (code < 0x10000) out.push(0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
    else
      out.push(
        0xf0 | (code >> 18),
        0x80 | ((code >> 12) & 63),
        0x80 | ((code >> 6) & 63),
        0x80 | (code & 63),
      );
  }
  return Uint8Array.from(out);
}

/** Text of UTF-8 bytes, or null where they are none. */
export function utf8Text(bytes: Uint8Array): string | null {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; ) {
    const first = bytes[at] as number;
    const length =
      first < 0x80 ? 1 : first < 0xc2 ? 0 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : first < 0xf5 ? 4 : 0;
    if (length === 0 || at + length > bytes.length) return null;
    let code = length === 1 ? first : first & (0xff >> (length + 1));
    for (let i = 1; i < length; i += 1) {
      const next = bytes[at + i] as number;
      if ((next & 0xc0) !== 0x80) return null;
      code = code * 64 + (next & 63);
    }
    const shortest = length === 3 ? 0x800 : length === 4 ? 0x10000 : 0;
    if (code < shortest || code > 0x10ffff || (code >= 0xd800 && code <= 0xdfff)) return null;
    parts.push(String.fromCodePoint(code));
    at += length;
  }
  return parts.join('');
}

export class ByteWriter {
  readonly #bytes: number[] = [];

  /** A whole number from 0, in groups of seven bits. */
  whole(value: number): void {
    let rest = value;
    while (rest >= 128) {
      this.#bytes.push((rest % 128) + 128);
      rest = Math.floor(rest / 128);
    }
    this.#bytes.push(rest);
  }

  /** A whole number of either sign; small ones stay short. */
  signed(value: number): void {
    this.whole(value < 0 ? -2 * value - 1 : 2 * value);
  }

  text(value: string): void {
    this.bytes(utf8Bytes(value));
  }

  /** Bytes with their count before them. */
  bytes(value: Uint8Array): void {
    this.whole(value.length);
    for (const byte of value) this.#bytes.push(byte);
  }

  /** 16 hex digits as 8 bytes. */
  fingerprint(hex: string): void {
    for (let i = 0; i < 16; i += 2) this.#bytes.push(Number.parseInt(hex.slice(i, i + 2), 16));
  }

  done(): Uint8Array {
    return Uint8Array.from(this.#bytes);
  }
}

/** Reads what a `ByteWriter` wrote. After a failure everything reads as 0 and `failed` stays true. */
export class ByteReader {
  readonly #bytes: Uint8Array;
  #at = 0;
  #failed = false;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  get failed(): boolean {
    return this.#failed;
  }

  /** True if every byte was read and none was missing. */
  get finished(): boolean {
    return !this.#failed && this.#at === this.#bytes.length;
  }

  whole(): number {
    let value = 0;
    let unit = 1;
    for (let i = 0; i < 7; i += 1) {
      const byte = this.#next();
      value += (byte % 128) * unit;
      if (byte < 128) return value;
      unit *= 128;
    }
    return this.#fail();
  }

  signed(): number {
    const value = this.whole();
    return value % 2 === 1 ? -(value + 1) / 2 : value / 2;
  }

  /** A count of things that each take a byte or more; never more than there can be. */
  count(): number {
    const value = this.whole();
    return value <= this.#bytes.length - this.#at ? value : this.#fail();
  }

  text(): string {
    const text = utf8Text(this.bytes());
    if (text !== null) return text;
    this.#fail();
    return '';
  }

  bytes(): Uint8Array {
    const length = this.count();
    this.#at += length;
    return this.#bytes.subarray(this.#at - length, this.#at);
  }

  fingerprint(): string {
    let hex = '';
    for (let i = 0; i < 8; i += 1) hex += this.#next().toString(16).padStart(2, '0');
    return hex;
  }

  #next(): number {
    if (this.#failed || this.#at >= this.#bytes.length) return this.#fail();
    this.#at += 1;
    return this.#bytes[this.#at - 1] as number;
  }

  #fail(): number {
    this.#failed = true;
    return 0;
  }
}
