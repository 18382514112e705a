/**
 * What a club's own store is called and who may use it: made at the first start and kept beside the rides. Another
 * folder gets another name of its database, so that no tablet takes an empty one for the one its rides are in.
 */
import { randomInt } from 'node:crypto';
import { mkdir, open, readFile, rename, unlink } from 'node:fs/promises';
import { join } from 'node:path';
import { syncFolder } from './journal.mjs';

/**
 * @typedef {object} ClubSettings
 * @property {string} database
 * @property {string} name
 * @property {string} password
 */

const FILE = 'club.json';
const LOCK = 'in-use.txt';
/** Signs nobody takes for one another, written or read out. */
const SIGNS = 'abcdefghjkmnpqrstuvwxyz23456789';
const NAME = 'club';

/** Something a person has to do first; its message says what. */
export class ClubProblem extends Error {}

/** @param {number} count */
const signs = (count) => Array.from({ length: count }, () => SIGNS[randomInt(SIGNS.length)]).join('');

/** Sixteen signs out of 31: nobody tries them all. */
const newPassword = () => Array.from({ length: 4 }, () => signs(4)).join('-');

/**
 * Reads the settings of a folder, or makes both.
 * @param {string} folder
 * @returns {Promise<{ settings: ClubSettings, isNew: boolean }>}
 */
export async function clubSettings(folder) {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const file = join(folder, FILE);
  const text = await readFile(file, 'utf8').catch((/** @type {NodeJS.ErrnoException} */ error) => {
    if (error.code === 'ENOENT') return null;
    throw error;
  });
  if (text !== null) return { settings: readSettings(text, file), isNew: false };
  const settings = { database: `rides-${signs(5)}`, name: NAME, password: newPassword() };
  await writeWhole(folder, FILE, `${JSON.stringify({ schema: 1, ...settings }, null, 2)}\n`);
  return { settings, isNew: true };
}

/**
 * Names and passwords as the store's own code can carry them.
 * @param {string} text
 * @param {string} file
 * @returns {ClubSettings}
 */
function readSettings(text, file) {
  try {
    const { schema, database, name, password } = JSON.parse(text);
    const texts = [name, password].every(
      (one) => typeof one === 'string' && /^[^\p{Cc}:]{1,100}$/u.test(one),
    );
    if (schema === 1 && texts && /^[a-z][a-z0-9_-]{0,60}$/.test(database))
      return { database, name, password };
  } catch {
    // Told below, like what is no JSON.
  }
  throw new ClubProblem(
    `${file} cannot be read. It holds the password of the store. Put it back as it was; or start with --data and another folder.`,
  );
}

/**
 * Writes a small file so that there is the old one or the new one whole, whatever happens.
 * @param {string} folder
 * @param {string} name
 * @param {string} text
 */
export async function writeWhole(folder, name, text) {
  const handle = await open(join(folder, `${name}.new`), 'w', 0o600);
  try {
    await handle.writeFile(text);
    await handle.sync();
  } finally {
    await handle.close();
  }
  await rename(join(folder, `${name}.new`), join(folder, name));
  await syncFolder(folder);
}

/**
 * Two programs that write to one file would write over each other. Whoever was killed is known not to run any more.
 * @param {string} folder
 * @returns {Promise<() => Promise<void>>} lets the folder go
 */
export async function takeFolder(folder) {
  const file = join(folder, LOCK);
  const owner = Number(await readFile(file, 'utf8').catch(() => '0'));
  if (owner > 0 && owner !== process.pid && isRunning(owner))
    throw new ClubProblem(
      `A store is running on ${folder} already, as process ${owner}. Stop that one first. If there is none, delete ${file}.`,
    );
  await writeWhole(folder, LOCK, `${process.pid}\n`);
  return () => unlink(file).catch(() => undefined);
}

/** @param {number} pid */
function isRunning(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'EPERM';
  }
}

/**
 * The address that carries the settings to a tablet, as `src/features/handover/storeCode.ts` reads it. Where the store
 * is needs no words: it is where the page came from.
 * @param {string} site
 * @param {ClubSettings} settings
 */
export function settingsLink(site, { database, name, password }) {
  const code = Buffer.from(JSON.stringify([1, '', database, name, password])).toString('base64url');
  return `${site}#clinic/store/${code}`;
}
