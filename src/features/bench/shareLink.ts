/**
 * A level as a link and back: the bytes the core makes, deflated by the browser. The link is opened by the bench of
 * whoever gets it; nothing is sent anywhere.
 */
import type { ParseResult } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { LIMITS } from '../../core/math/limits.ts';
import { levelFromBytes, levelToBytes, packBytes, unpackText, fault } from '../../core/transfer/share.ts';

/** How the part of the address behind `#bench/` begins when it carries a level. */
const BEGINNING = 'level.';

/** The text of a shared level in an address, or null where there is none. */
export function sharedText(rest: string): string | null {
  return rest.startsWith(BEGINNING) ? rest.slice(BEGINNING.length) : null;
}

/** The link of a level, for this copy of the game. */
export async function linkOf(level: Level, base = location.href): Promise<string> {
  const address = new URL(base);
  address.search = '';
  address.hash = `bench/${BEGINNING}${await textOf(level)}`;
  return address.href;
}

async function textOf(level: Level): Promise<string> {
  const bytes = levelToBytes(level);
  if (typeof CompressionStream === 'undefined') return packBytes(bytes, 'plain');
  const packed = await through(bytes, new CompressionStream('deflate-raw'), Number.POSITIVE_INFINITY);
  return packed === null || packed.length >= bytes.length
    ? packBytes(bytes, 'plain')
    : packBytes(packed, 'deflated');
}

/** The level in a text; null where this browser cannot unpack it. */
export async function levelOfText(text: string): Promise<ParseResult | null> {
  const opened = unpackText(text);
  if (!opened.ok) return opened;
  if (opened.packing === 'plain') return levelFromBytes(opened.bytes);
  if (typeof DecompressionStream === 'undefined') return null;
  try {
    const most = LIMITS.link.unpackedBytes.most;
    const bytes = await through(opened.bytes, new DecompressionStream('deflate-raw'), most);
    // One byte too many is enough for the core to say that it is too big.
    return levelFromBytes(bytes ?? new Uint8Array(most + 1));
  } catch {
    return fault('not-packed');
  }
}

/** Bytes through a stream, or null once more than `most` come out: a small text can unpack to gigabytes. */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | null> {
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    const part = next.value as Uint8Array;
    parts.push(part);
    length += part.length;
    if (length <= most) continue;
    await reader.cancel();
    return null;
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
