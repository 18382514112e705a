/**
 * Reads what others have put into a shared store: everything of a plan the first time, what is new afterwards.
 * What comes from there is checked like any file.
 */
import type { StoreAddress, StoreProblem } from '../../core/transfer/clubStore.ts';
import { LIMITS } from '../../core/math/limits.ts';
import { mergeSets, EMPTY_SET } from '../../core/group/records/merge.ts';
import type { ReadFile } from '../../core/transfer/rideFile.ts';
import { ask, type Fetch } from './http.ts';
import { isOfPlan, isRide, rangesOf, readDocuments } from './pieces.ts';
import { progressFor } from './send.ts';
import type { Fetched, SharedProgress } from '../sharedKept.ts';

const LIMIT = LIMITS.store;
/** Some servers give the last row of a page once more as the first of the next, so one alone would not go on. */
const FEWEST_ROWS = 3;

/**
 * Fetches what is new for a plan. Never rejects and always ends, whatever the store does; what was read before a
 * problem is given all the same.
 */
export async function fetchRides(
  address: StoreAddress,
  planId: string,
  kept: SharedProgress | null,
  fetch: Fetch,
  nowMs: () => number = () => performance.now(),
): Promise<Fetched> {
  const progress = progressFor(address, kept);
  const ask = asker(address, fetch, nowMs);
  return Object.hasOwn(progress.since, planId)
    ? fetchNew(ask, planId, progress)
    : fetchAll(address, ask, planId, progress, fetch);
}

/** An answer with its rows, and how many there could have been. */
type Page =
  | { readonly ok: true; readonly value: unknown; readonly rows: readonly Row[]; readonly full: boolean }
  | { readonly ok: false; readonly problem: StoreProblem };

/** Asks for the next rows behind a path; the answer says whether there may be more. */
type AskPage = (path: string, key: 'rows' | 'results') => Promise<Page>;

/**
 * Asks page by page until the limit of pages or of time. Where an answer would be too big, half as many rows are
 * asked for from then on, so that many long rides still come through.
 */
function asker(address: StoreAddress, fetch: Fetch, nowMs: () => number): AskPage {
  const endMs = nowMs() + LIMIT.allSeconds.most * 1_000;
  let rowsAtOnce: number = LIMIT.rows.most;
  let pages = 0;
  const page: AskPage = async (path, key) => {
    pages += 1;
    if (pages > LIMIT.pages.most || nowMs() > endMs) return { ok: false, problem: 'endless' };
    const answer = await ask(address, { method: 'GET', path: `${path}&limit=${rowsAtOnce}` }, fetch);
    if (!answer.ok && answer.problem === 'endless' && rowsAtOnce > FEWEST_ROWS) {
      rowsAtOnce = Math.floor(rowsAtOnce / 2);
      return page(path, key);
    }
    if (!answer.ok) return answer;
    const rows = rowsOf(answer.value, key);
    if (rows === null || rows.length > rowsAtOnce) return { ok: false, problem: 'not-a-store' };
    return { ok: true, value: answer.value, rows, full: rows.length === rowsAtOnce };
  };
  return page;
}

/** Asks the store for nothing but whether it would answer. */
export async function testStore(address: StoreAddress, fetch: Fetch): Promise<StoreProblem | null> {
  const answer = await ask(address, { method: 'GET', path: '/_all_docs?limit=0' }, fetch);
  if (!answer.ok) return answer.problem;
  return rowsOf(answer.value, 'rows') === null ? 'not-a-store' : null;
}

/** Where the store stands is asked before its documents, so that what comes in between is read twice, not missed. */
async function fetchAll(
  address: StoreAddress,
  askPage: AskPage,
  planId: string,
  progress: SharedProgress,
  fetch: Fetch,
): Promise<Fetched> {
  const now = await ask(address, { method: 'GET', path: '/_changes?limit=0&since=now' }, fetch);
  const since = now.ok ? lastSeqOf(now.value) : null;
  if (since === null) return { read: empty(), progress, problem: now.ok ? 'not-a-store' : now.problem };
  let read = empty();
  const seen = new Set<string>();
  for (const [first, last] of rangesOf(planId)) {
    for (let from: string | null = first; from !== null; ) {
      const range = `startkey=${json(from)}&endkey=${json(last)}&include_docs=true`;
      const page: Page = await askPage(`/_all_docs?${range}`, 'rows');
      if (!page.ok) return { read, progress, problem: page.problem };
      // One that gives the same again would never come to its end. Which id is behind which, each server has its own
      // opinion about.
      if (page.full && page.rows.every(({ id }) => seen.has(id)))
        return { read, progress, problem: 'not-a-store' };
      for (const { id } of page.rows) seen.add(id);
      read = joined(read, documentsOf(page.rows, planId));
      const end: string | undefined = page.rows.at(-1)?.id;
      // The next page begins right behind the last id of this one.
      from = page.full && end !== undefined ? `${end}\u0000` : null;
    }
  }
  return { read, progress: upTo(progress, planId, since, seen), problem: null };
}

async function fetchNew(askPage: AskPage, planId: string, progress: SharedProgress): Promise<Fetched> {
  let since = progress.since[planId] ?? '0';
  let read = empty();
  const seen = new Set<string>();
  const upToNow = (problem: StoreProblem | null): Fetched => ({
    read,
    progress: upTo(progress, planId, since, seen),
    problem,
  });
  for (;;) {
    const page = await askPage(`/_changes?since=${encodeURIComponent(since)}&include_docs=true`, 'results');
    if (!page.ok) return upToNow(page.problem);
    const next = lastSeqOf(page.value);
    // One that has more and is still where it was would never come to its end.
    if (next === null || (page.full && next === since)) return upToNow('not-a-store');
    read = joined(read, documentsOf(page.rows, planId));
    for (const { id } of page.rows) if (isOfPlan(id, planId)) seen.add(id);
    since = next;
    if (!page.full) return upToNow(null);
  }
}

function documentsOf(rows: readonly Row[], planId: string): ReadFile {
  return readDocuments(
    rows.filter(({ id }) => isOfPlan(id, planId)).map(({ doc }) => doc ?? {}),
    planId,
  );
}

interface Row {
  readonly id: string;
  readonly doc?: unknown;
}

function rowsOf(value: unknown, key: 'rows' | 'results'): Row[] | null {
  const rows = value !== null && typeof value === 'object' ? (value as Record<string, unknown>)[key] : null;
  if (!Array.isArray(rows)) return null;
  return (rows as readonly unknown[]).filter(
    (row): row is Row =>
      row !== null && typeof row === 'object' && typeof (row as Partial<Row>).id === 'string',
  );
}

/** A number with some servers, a text with others. */
function lastSeqOf(value: unknown): string | null {
  const last =
    value !== null && typeof value === 'object' ? (value as { last_seq?: unknown }).last_seq : null;
  if (typeof last !== 'number' && typeof last !== 'string') return null;
  const place = String(last);
  return place.length > LIMIT.place.most ? null : place;
}

/** The very same progress where nothing is new, so that nobody keeps it once more. */
function upTo(
  progress: SharedProgress,
  planId: string,
  since: string,
  seen: ReadonlySet<string>,
): SharedProgress {
  const known = new Set([...progress.there, ...progress.met]);
  const met = [...seen].filter((id) => isRide(id) && !known.has(id));
  if (met.length === 0 && progress.since[planId] === since) return progress;
  return {
    ...progress,
    met: [...progress.met, ...met],
    since: { ...progress.since, [planId]: since },
  };
}

function json(text: string): string {
  return encodeURIComponent(JSON.stringify(text));
}

function empty(): ReadFile {
  return { set: EMPTY_SET, heard: [] };
}

function joined(a: ReadFile, b: ReadFile): ReadFile {
  return { set: mergeSets(a.set, b.set), heard: [...a.heard, ...b.heard] };
}
