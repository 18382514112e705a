/**
 * Reads what others have put into a shared store: everything of a plan the first time, what is new afterwards.
 * What comes from there is checked like any file.
 */
import { mergeSets, EMPTY_SET } from '../../core/group/records/merge.ts';
import type { ReadFile } from '../../core/transfer/rideFile.ts';
import { ask, type Fetch } from './http.ts';
import { isOfPlan, rangesOf, readDocuments } from './pieces.ts';
import { progressFor } from './send.ts';
import type { Fetched, SharedAddress, SharedProblem, SharedProgress } from './types.ts';

/** Documents in one answer. */
const PAGE = 200;

/** Fetches what is new for a plan. Never rejects; what was read before a problem is given all the same. */
export async function fetchRides(
  address: SharedAddress,
  planId: string,
  kept: SharedProgress | null,
  fetch: Fetch,
): Promise<Fetched> {
  const progress = progressFor(address, kept);
  return progress.since[planId] === undefined
    ? fetchAll(address, planId, progress, fetch)
    : fetchNew(address, planId, progress, fetch);
}

/** Asks the store for nothing but whether it would answer. */
export async function testStore(address: SharedAddress, fetch: Fetch): Promise<SharedProblem | null> {
  const answer = await ask(address, { method: 'GET', path: '/_all_docs?limit=0' }, fetch);
  if (!answer.ok) return answer.problem;
  return rowsOf(answer.value, 'rows') === null ? 'not-a-store' : null;
}

/** Where the store stands is asked before its documents, so that what comes in between is read twice, not missed. */
async function fetchAll(
  address: SharedAddress,
  planId: string,
  progress: SharedProgress,
  fetch: Fetch,
): Promise<Fetched> {
  const now = await ask(address, { method: 'GET', path: '/_changes?limit=0&since=now' }, fetch);
  const since = now.ok ? lastSeqOf(now.value) : null;
  if (since === null) return nothing(progress, now.ok ? 'not-a-store' : now.problem);
  let read = empty();
  for (const [first, last] of rangesOf(planId)) {
    let from = first;
    for (;;) {
      const range = `startkey=${json(from)}&endkey=${json(last)}&include_docs=true&limit=${PAGE}`;
      const answer = await ask(address, { method: 'GET', path: `/_all_docs?${range}` }, fetch);
      const rows = answer.ok ? rowsOf(answer.value, 'rows') : null;
      if (rows === null) return { read, progress, problem: answer.ok ? 'not-a-store' : answer.problem };
      read = joined(
        read,
        readDocuments(
          rows.map(({ doc }) => doc ?? {}),
          planId,
        ),
      );
      const end = rows.at(-1)?.id;
      if (rows.length < PAGE || end === undefined) break;
      // The next page begins right behind the last id of this one.
      from = `${end}\u0000`;
    }
  }
  return { read, progress: upTo(progress, planId, since), problem: null };
}

async function fetchNew(
  address: SharedAddress,
  planId: string,
  progress: SharedProgress,
  fetch: Fetch,
): Promise<Fetched> {
  let since = progress.since[planId] ?? '0';
  let read = empty();
  for (;;) {
    const path = `/_changes?since=${encodeURIComponent(since)}&include_docs=true&limit=${PAGE}`;
    const answer = await ask(address, { method: 'GET', path }, fetch);
    const rows = answer.ok ? rowsOf(answer.value, 'results') : null;
    const next = answer.ok ? lastSeqOf(answer.value) : null;
    if (rows === null || next === null)
      return {
        read,
        progress: upTo(progress, planId, since),
        problem: answer.ok ? 'not-a-store' : answer.problem,
      };
    const ours = rows.filter(({ id }) => isOfPlan(id, planId));
    read = joined(
      read,
      readDocuments(
        ours.map(({ doc }) => doc ?? {}),
        planId,
      ),
    );
    since = next;
    if (rows.length < PAGE) return { read, progress: upTo(progress, planId, since), problem: null };
  }
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
  return typeof last === 'number' || typeof last === 'string' ? String(last) : null;
}

function upTo(progress: SharedProgress, planId: string, since: string): SharedProgress {
  return { ...progress, since: { ...progress.since, [planId]: since } };
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

function nothing(progress: SharedProgress, problem: SharedProblem): Fetched {
  return { read: empty(), progress, problem };
}
