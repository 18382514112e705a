/**
 * The database of the store in the tests: the few requests our code makes, answered as a real server answered them
 * (`realAnswers.json`, see `database.test.ts`). Written once and read only; nothing is changed or deleted.
 */
import { createHash } from 'node:crypto';

/** An answer: its status and what is sent as JSON. */
export interface StoreAnswer {
  readonly status: number;
  readonly body: unknown;
}

/** A document as it is kept. */
export type StoredDocument = Readonly<Record<string, unknown>> & {
  readonly _id: string;
  readonly _rev: string;
};

/** A database that can be asked. */
export interface Database {
  /** Answers a request; `path` with its query as it came over the wire, `text` the body. */
  ask(method: string, path: string, text: string): StoreAnswer;
  /** Everything in it, in the order of its ids. */
  documents(): readonly StoredDocument[];
}

const NOT_THERE: StoreAnswer = { status: 404, body: { error: 'not_found', reason: 'no_db_file' } };
const THERE_ALREADY: StoreAnswer = {
  status: 412,
  body: { error: 'file_exists', reason: 'The database could not be created.' },
};
const CONFLICT = { error: 'conflict', reason: 'Document update conflict' };

const badRequest = (reason: string): StoreAnswer => ({ status: 400, body: { error: 'bad_request', reason } });

/** An empty database of this name. */
export function openDatabase(name: string): Database {
  /** In the order of writing: what is written when says its sequence number. */
  const written = new Map<string, StoredDocument>();

  const sorted = (): StoredDocument[] => [...written.values()].sort((a, b) => (a._id < b._id ? -1 : 1));

  /** Why a document may not be written, or null. */
  const faultOf = (document: Readonly<Record<string, unknown>>): StoreAnswer | null => {
    const { _id: id } = document;
    if (typeof id !== 'string') return badRequest('_id field must contain a string');
    if (id.startsWith('_')) return badRequest('Only reserved document ids may start with underscore.');
    const special = Object.keys(document).find((key) => key.startsWith('_') && key !== '_id');
    if (special === undefined) return null;
    return {
      status: 500,
      body: { error: 'doc_validation', reason: `Bad special document member: ${special}` },
    };
  };

  const write = (document: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> => {
    const id = document['_id'] as string;
    if (written.has(id)) return { id, ...CONFLICT };
    const rev = `1-${createHash('md5').update(JSON.stringify(document)).digest('hex')}`;
    written.set(id, { ...document, _id: id, _rev: rev });
    return { ok: true, id, rev };
  };

  const put = (id: string, text: string): StoreAnswer => {
    const content = parsed(text);
    if (typeof content !== 'object' || content === null) return badRequest('invalid_json');
    if (Array.isArray(content)) return badRequest('Document must be a JSON object');
    const document = { ...content, _id: id };
    const refused = faultOf(document);
    if (refused !== null) return refused;
    const row = write(document);
    return row['ok'] === true ? { status: 201, body: row } : { status: 409, body: CONFLICT };
  };

  const bulk = (text: string): StoreAnswer => {
    const content = parsed(text);
    if (content === undefined) return badRequest('invalid_json');
    const docs = content === null ? null : (content as { readonly docs?: unknown }).docs;
    if (!Array.isArray(docs)) return badRequest("Missing JSON list of 'docs'");
    const documents = docs as readonly Readonly<Record<string, unknown>>[];
    const refused = documents.map(faultOf).find((fault) => fault !== null);
    return refused ?? { status: 201, body: documents.map(write) };
  };

  const allDocs = (query: URLSearchParams): StoreAnswer => {
    const [first, last] = ['startkey', 'endkey'].map((key) => parsed(query.get(key) ?? 'null'));
    const inRange = sorted().filter(
      ({ _id }) => (typeof first !== 'string' || _id >= first) && (typeof last !== 'string' || _id <= last),
    );
    const rows = inRange.slice(0, limitOf(query)).map((doc) => ({
      id: doc._id,
      key: doc._id,
      value: { rev: doc._rev },
      ...(query.get('include_docs') === 'true' ? { doc } : {}),
    }));
    return { status: 200, body: { total_rows: written.size, offset: 0, rows } };
  };

  const changes = (query: URLSearchParams): StoreAnswer => {
    const since = query.get('since') === 'now' ? written.size : Number(query.get('since') ?? 0);
    const results = [...written.values()]
      .map((doc, index) => ({ doc, seq: index + 1 }))
      .filter(({ seq }) => seq > since)
      .slice(0, limitOf(query))
      .map(({ doc, seq }) => ({
        id: doc._id,
        changes: [{ rev: doc._rev }],
        ...(query.get('include_docs') === 'true' ? { doc } : {}),
        seq,
      }));
    return { status: 200, body: { results, last_seq: results.at(-1)?.seq ?? since } };
  };

  return {
    ask(method, path, text) {
      const { pathname, searchParams } = new URL(path, 'http://store');
      const [asked, what = '', ...more] = pathname.slice(1).split('/').map(decodeURIComponent);
      if (asked !== name) return NOT_THERE;
      if (method === 'PUT' && what === '') return THERE_ALREADY;
      if (method === 'GET' && what === '_all_docs') return allDocs(searchParams);
      if (method === 'GET' && what === '_changes') return changes(searchParams);
      if (method === 'POST' && what === '_bulk_docs') return bulk(text);
      if (method === 'PUT' && what !== '' && more.length === 0) return put(what, text);
      // Our code never asks for it; a test that sees this has found a new kind of question.
      return { status: 501, body: { error: 'not_in_the_tests', reason: `${method} ${pathname}` } };
    },
    documents: sorted,
  };
}

/** Undefined for what is no JSON. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

const limitOf = (query: URLSearchParams): number => Number(query.get('limit') ?? Number.POSITIVE_INFINITY);
