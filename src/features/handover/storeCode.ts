/**
 * The settings of a club's own store as one link, to be scanned or pasted instead of typed. It carries the password, so
 * it goes to whoever may read all rides, and nothing is sent anywhere because of it before a person agrees.
 */
import { LIMITS } from '../../core/math/limits.ts';
import { bytesFromText, textFromBytes } from '../../core/transfer/base64.ts';
import type { StoreAddress } from '../../core/transfer/clubStore.ts';

const VERSION = 1;

/** The link, as scripts of this game print it; `site` is what other devices open. */
export function storeLink(
  { url, database, name, password }: StoreAddress,
  here: string,
  site: string,
): string {
  // A store beside the game is where the game is, under whatever name a device finds it.
  const where = originOf(url) === originOf(here) ? '' : url;
  const text = JSON.stringify([VERSION, where, database, name, password]);
  return `${site}#clinic/store/${textFromBytes(new TextEncoder().encode(text))}`;
}

/**
 * The settings in a text, or null where there are none whole.
 * @param here address of this page, for settings that do not say where their store is
 */
export function readStoreLink(text: string, here: string): StoreAddress | null {
  const { storeCharacters, storePart } = LIMITS.link;
  const whole = text.slice(0, storeCharacters.most).replace(/\s+/g, '').replaceAll(/%2f/gi, '/');
  const [, site, code] = /(https?:\/\/[^#]*)?#\/?clinic\/store\/([\w-]+)/i.exec(whole) ?? [];
  const parts = code === undefined ? null : partsOf(code);
  if (parts === null) return null;
  const [version, url, database, name, password] = parts;
  const texts = [url, database, name, password];
  if (version !== VERSION || !texts.every((one) => typeof one === 'string' && one.length <= storePart.most))
    return null;
  const where = url === '' ? originOf(site ?? here) : (url as string);
  if (where === null || database === '') return null;
  return {
    url: where,
    database: database as string,
    name: name as string,
    password: password as string,
  };
}

function partsOf(code: string): readonly unknown[] | null {
  const bytes = bytesFromText(code);
  if (bytes === null) return null;
  try {
    const parts = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) as unknown;
    return Array.isArray(parts) ? parts : null;
  } catch {
    return null;
  }
}

/** Scheme, host and port of an address; null where it is none. */
export function originOf(address: string): string | null {
  try {
    const { origin, protocol } = new URL(address.trim());
    return /^https?:$/.test(protocol) ? origin : null;
  } catch {
    return null;
  }
}
