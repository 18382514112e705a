/**
 * A level as a link and back: the bytes the core makes, deflated by the browser. The link is opened by the bench of
 * whoever gets it; nothing is sent anywhere.
 */
import type { ParseResult } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { LIMITS } from '../../core/math/limits.ts';
import { deflate, inflate } from '../../ui/packing.ts';
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
  const packed = await deflate(bytes);
  return packed.length < bytes.length ? packBytes(packed, 'deflated') : packBytes(bytes, 'plain');
}

/** The level in a text; null where this browser cannot unpack it. */
export async function levelOfText(text: string): Promise<ParseResult | null> {
  const opened = unpackText(text);
  if (!opened.ok) return opened;
  if (opened.packing === 'plain') return levelFromBytes(opened.bytes);
  if (typeof DecompressionStream === 'undefined') return null;
  const most = LIMITS.link.unpackedBytes.most;
  try {
    return levelFromBytes(await inflate(opened.bytes, most));
  } catch (error) {
    // One byte too many is enough for the core to say that it is too big.
    return error instanceof RangeError ? levelFromBytes(new Uint8Array(most + 1)) : fault('not-packed');
  }
}
