/**
 * The database of a club's own store: the few requests the game makes, answered as a CouchDB server answers them.
 * Documents are written once and never changed or deleted. Nothing is said to be there before it lies on the disk.
 */
import { createHash } from 'node:crypto';

/** An answer: its status and what is sent as JSON. @typedef {{ readonly status: number, readonly body: unknown }} StoreAnswer */
/** @typedef {import('./journal.mjs').Place} Place */
/** @typedef {Readonly<Record<string, unknown>>} Fields */
/** A document in the index; its content stays in the journal. @typedef {{ readonly id: string, readonly rev: string, readonly seq: number, readonly place: Place }} Entry */
/** A document that is to be written. @typedef {{ readonly id: string, readonly rev: string, readonly seq: number, readonly text: string }} Fresh */

/**
 * A database that can be asked.
 * @typedef {object} Database
 * @property {(method: string, path: string, text: string) => Promise<StoreAnswer>} ask `path` with its query as it came over the wire, `text` the body
 * @property {() => Fields[]} documents everything in it, in the order of its ids
 * @property {() => number} size number of documents
 */

/** @type {StoreAnswer} */
const NOT_THERE = { status: 404, body: { error: 'not_found', reason: 'no_db_file' } };
/** @type {StoreAnswer} */
const THERE_ALREADY = {
  status: 412,
  body: { error: 'file_exists', reason: 'The database could not be created.' },
};
const CONFLICT = { error: 'conflict', reason: 'Document update conflict' };

/** @param {string} reason @returns {StoreAnswer} */
const badRequest = (reason) => ({ status: 400, body: { error: 'bad_request', reason } });

/**
 * Opens a database of this name over what its journal had.
 * @param {string} name
 * @param {import('./journal.mjs').Journal} journal
 * @param {readonly Entry[]} [had]
 * @returns {Database}
 */
export function openDatabase(name, journal, had = []) {
  const shelf = openShelf(journal, had);

  /** @param {string} id @param {string} text @returns {Promise<StoreAnswer>} */
  const put = async (id, text) => {
    const content = parsed(text);
    if (typeof content !== 'object' || content === null) return badRequest('invalid_json');
    if (Array.isArray(content)) return badRequest('Document must be a JSON object');
    const document = { ...content, _id: id };
    const refused = faultOf(document);
    if (refused !== null) return refused;
    const [row] = await shelf.write([document]);
    return row?.['ok'] === true ? { status: 201, body: row } : { status: 409, body: CONFLICT };
  };

  /** @param {string} text @returns {Promise<StoreAnswer>} */
  const bulk = async (text) => {
    const content = parsed(text);
    if (content === undefined) return badRequest('invalid_json');
    const docs = content === null ? null : /** @type {{ readonly docs?: unknown }} */ (content).docs;
    if (!Array.isArray(docs)) return badRequest("Missing JSON list of 'docs'");
    const documents = /** @type {readonly Fields[]} */ (docs.map((one) => one ?? {}));
    const refused = documents.map(faultOf).find((fault) => fault !== null);
    return refused ?? { status: 201, body: await shelf.write(documents) };
  };

  return {
    async ask(method, path, text) {
      if (!URL.canParse(path, 'http://store')) return badRequest('not an address');
      const { pathname, searchParams } = new URL(path, 'http://store');
      const [asked, what = '', ...more] = pathname.slice(1).split('/').map(unescaped);
      if (asked !== name) return NOT_THERE;
      if (method === 'PUT' && what === '') return THERE_ALREADY;
      if (method === 'GET' && what === '_all_docs') return allDocs(shelf, searchParams);
      if (method === 'GET' && what === '_changes') return changes(shelf, searchParams);
      if (method === 'POST' && what === '_bulk_docs') return bulk(text);
      if (method === 'PUT' && what !== '' && more.length === 0) return put(what, text);
      // The game never asks for it.
      return { status: 501, body: { error: 'not_implemented', reason: `${method} ${pathname}` } };
    },
    documents: () => shelf.byId().map(shelf.documentOf),
    size: shelf.size,
  };
}

/**
 * The index, and the one line in which documents are written. Whoever comes while others are being written waits and
 * is written with all who waited, in one go; nobody is told "there already" of what is not on the disk yet.
 * @param {import('./journal.mjs').Journal} journal
 * @param {readonly Entry[]} had
 */
function openShelf(journal, had) {
  /** @type {Map<string, Entry>} */
  const entries = new Map(had.map((entry) => [entry.id, entry]));
  const inOrder = [...had];
  /** @type {Entry[] | null} */
  let sorted = null;
  /** @type {{ documents: readonly Fields[], done: (rows: Fields[]) => void, failed: (error: unknown) => void }[]} */
  let waiting = [];
  let writing = false;

  const writeThem = async () => {
    writing = true;
    while (waiting.length > 0) {
      const batch = waiting;
      waiting = [];
      /** @type {Map<string, Fresh>} */
      const fresh = new Map();
      const answers = batch.map(({ documents }) =>
        documents.map((document) => {
          const id = String(document['_id']);
          if (entries.has(id) || fresh.has(id)) return { id, ...CONFLICT };
          const rev = `1-${createHash('md5').update(JSON.stringify(document)).digest('hex')}`;
          const seq = (inOrder.at(-1)?.seq ?? 0) + fresh.size + 1;
          fresh.set(id, { id, rev, seq, text: JSON.stringify({ seq, doc: { ...document, _rev: rev } }) });
          return { ok: true, id, rev };
        }),
      );
      try {
        const list = [...fresh.values()];
        const places = list.length === 0 ? [] : await journal.append(list.map(({ text }) => text));
        for (const [i, { id, rev, seq }] of list.entries()) {
          const entry = { id, rev, seq, place: /** @type {Place} */ (places[i]) };
          entries.set(id, entry);
          inOrder.push(entry);
        }
        if (list.length > 0) sorted = null;
        for (const [i, { done }] of batch.entries()) done(answers[i] ?? []);
      } catch (error) {
        for (const { failed } of batch) failed(error);
      }
    }
    writing = false;
  };

  return {
    /** @param {readonly Fields[]} documents @returns {Promise<Fields[]>} a row for each */
    write: (documents) =>
      new Promise((done, failed) => {
        waiting.push({ documents, done, failed });
        if (!writing) void writeThem();
      }),
    /** In the order of ids. */
    byId: () => (sorted ??= [...entries.values()].sort((a, b) => (a.id < b.id ? -1 : 1))),
    /** In the order of writing. */
    inOrder: () => inOrder,
    size: () => entries.size,
    /** @param {Entry} entry @returns {Fields} */
    documentOf: ({ place }) => JSON.parse(journal.read(place)).doc,
  };
}

/**
 * Reads a line of the journal into an entry of the index; null for what was written before under the same id or number.
 * @param {string} text
 * @param {Place} place
 * @param {{ readonly ids: Set<string>, seq: number }} known grows
 * @returns {Entry | null}
 */
export function entryOf(text, place, known) {
  const { seq, doc } = JSON.parse(text);
  const { _id: id, _rev: rev } = doc;
  if (known.ids.has(id) || seq <= known.seq) return null;
  known.ids.add(id);
  known.seq = seq;
  return { id, rev, seq, place };
}

/** Why a document may not be written, or null. @param {Fields} document @returns {StoreAnswer | null} */
function faultOf(document) {
  const { _id: id } = document;
  if (typeof id !== 'string') return badRequest('_id field must contain a string');
  if (id.startsWith('_')) return badRequest('Only reserved document ids may start with underscore.');
  const special = Object.keys(document).find((key) => key.startsWith('_') && key !== '_id');
  if (special === undefined) return null;
  return {
    status: 500,
    body: { error: 'doc_validation', reason: `Bad special document member: ${special}` },
  };
}

/** @param {ReturnType<typeof openShelf>} shelf @param {URLSearchParams} query @returns {StoreAnswer} */
function allDocs(shelf, query) {
  const [first, last] = ['startkey', 'endkey'].map((key) => parsed(query.get(key) ?? 'null'));
  const inRange = shelf
    .byId()
    .filter(
      ({ id }) => (typeof first !== 'string' || id >= first) && (typeof last !== 'string' || id <= last),
    );
  const rows = inRange.slice(0, limitOf(query)).map((entry) => ({
    id: entry.id,
    key: entry.id,
    value: { rev: entry.rev },
    ...(query.get('include_docs') === 'true' ? { doc: shelf.documentOf(entry) } : {}),
  }));
  return { status: 200, body: { total_rows: shelf.size(), offset: 0, rows } };
}

/** @param {ReturnType<typeof openShelf>} shelf @param {URLSearchParams} query @returns {StoreAnswer} */
function changes(shelf, query) {
  const inOrder = shelf.inOrder();
  const newest = inOrder.at(-1)?.seq ?? 0;
  const since = query.get('since') === 'now' ? newest : Number(query.get('since') ?? 0) || 0;
  const results = inOrder
    .filter(({ seq }) => seq > since)
    .slice(0, limitOf(query))
    .map((entry) => ({
      id: entry.id,
      changes: [{ rev: entry.rev }],
      ...(query.get('include_docs') === 'true' ? { doc: shelf.documentOf(entry) } : {}),
      seq: entry.seq,
    }));
  return { status: 200, body: { results, last_seq: results.at(-1)?.seq ?? since } };
}

/** Undefined for what is no JSON. @param {string} text @returns {unknown} */
function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** @param {string} part */
function unescaped(part) {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** @param {URLSearchParams} query */
const limitOf = (query) => Number(query.get('limit') ?? Number.POSITIVE_INFINITY);
