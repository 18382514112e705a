/**
 * The store of a club behind HTTP: who may ask, how much is taken in, and what is said when the disk is full. It stands
 * beside the files of the game on one port, so that the page may ask it over plain http as well.
 */
import { timingSafeEqual } from 'node:crypto';
import { join } from 'node:path';
import { entryOf, openDatabase } from './database.mjs';
import { openJournal } from './journal.mjs';

/** @typedef {import('./database.mjs').Database} Database */
/** @typedef {import('./settings.mjs').ClubSettings} ClubSettings */

/** The game sends at most 700,000 signs in one go, and one long ride alone. */
const MOST_BYTES = 8_000_000;
/** Full, over the share of this user, or a disk that may only be read. */
const NO_ROOM = ['ENOSPC', 'EDQUOT', 'EFBIG'];

/**
 * Opens the store of a folder.
 * @param {string} folder
 * @param {ClubSettings} settings
 */
export async function openStore(folder, settings) {
  /** @type {import('./database.mjs').Entry[]} */
  const had = [];
  const known = { ids: new Set(), seq: 0 };
  const { journal, damaged } = await openJournal(join(folder, `${settings.database}.log`), (text, place) => {
    const entry = entryOf(text, place, known);
    if (entry !== null) had.push(entry);
  });
  const database = openDatabase(settings.database, journal, had);
  return { database, damaged, close: () => journal.close(), answer: storeAnswers(database, settings) };
}

/**
 * Answers what is asked of the store, and nothing else.
 * @param {Database} database
 * @param {ClubSettings} settings
 * @returns {import('../serve.mjs').Beside}
 */
export function storeAnswers(database, { database: dbName, name, password }) {
  const secret = Buffer.from(`Basic ${Buffer.from(`${name}:${password}`, 'utf8').toString('base64')}`);
  return (request, response, headers) => {
    const target = request.url ?? '';
    if (target !== `/${dbName}` && !target.startsWith(`/${dbName}/`)) return false;
    /** @param {number} status @param {unknown} body */
    const answer = (status, body) => {
      const text = JSON.stringify(body);
      response.writeHead(status, {
        ...headers,
        'content-type': 'application/json',
        'content-length': Buffer.byteLength(text),
        'cache-control': 'no-store',
        // Of what was too big or not allowed nothing more is read.
        ...(request.complete ? {} : { connection: 'close' }),
      });
      response.end(text);
    };
    if (!isSame(secret, Buffer.from(request.headers.authorization ?? '')))
      answer(401, { error: 'unauthorized', reason: 'Name or password is incorrect.' });
    else
      bodyOf(request).then(
        async (text) => {
          if (text === null)
            return answer(413, { error: 'too_large', reason: 'More than one piece can be.' });
          try {
            const { status, body } = await database.ask(request.method ?? '', target, text);
            answer(status, body);
          } catch (error) {
            answer(...told(error));
          }
        },
        // A sender that hangs up in the middle has asked nothing.
        () => response.destroy(),
      );
    return true;
  };
}

/** @param {unknown} error @returns {[number, unknown]} */
function told(error) {
  const { code, message } = /** @type {NodeJS.ErrnoException} */ (error);
  if (NO_ROOM.includes(code ?? ''))
    return [507, { error: 'insufficient_storage', reason: 'The disk is full.' }];
  console.error(`The store could not answer: ${message}`);
  return [500, { error: 'internal_server_error', reason: code ?? 'unknown' }];
}

/** @param {Buffer} secret @param {Buffer} said */
function isSame(secret, said) {
  return said.length === secret.length && timingSafeEqual(secret, said);
}

/**
 * The text that is sent, or null where it is too big.
 * @param {import('node:http').IncomingMessage} request
 * @returns {Promise<string | null>}
 */
function bodyOf(request) {
  return new Promise((resolve, reject) => {
    /** @type {Buffer[]} */
    const parts = [];
    let bytes = 0;
    request.on('data', (/** @type {Buffer} */ part) => {
      bytes += part.length;
      if (bytes <= MOST_BYTES) parts.push(part);
      else {
        request.pause();
        resolve(null);
      }
    });
    request.on('end', () => resolve(Buffer.concat(parts).toString('utf8')));
    request.on('error', reject);
    request.on('aborted', () => reject(new Error('gone')));
  });
}
