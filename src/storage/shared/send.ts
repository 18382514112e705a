/**
 * Sends pieces to a shared store until all of them are there: several at once, one by one where that is refused,
 * again after a growing pause where the store is away. A piece that is there already counts as sent.
 */
import type { StoreAddress, StoreProblem, StoreStanding } from '../../core/transfer/clubStore.ts';
import { type StoreAnswer, ask, type Fetch } from './http.ts';
import { passes, type SharedPiece, type SharedProgress } from '../sharedKept.ts';

export interface SendTools {
  readonly fetch: Fetch;
  /** Waits, or rejects where nobody wants to wait any longer. */
  readonly sleep: (ms: number) => Promise<void>;
  /** Called whenever something has changed; `progress` is to be kept. */
  readonly onState: (state: StoreStanding, progress: SharedProgress) => void;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Asked before every try; true ends it. */
  readonly stopped?: () => boolean;
  /** Nobody asked for it: what the store has refused before is not offered again, and stays refused. */
  readonly inPassing?: boolean;
}

/** Pieces in one go, and their size (characters): small enough for servers that allow one megabyte. */
const MOST_AT_ONCE = 50;
const MOST_CHARACTERS = 700_000;
/** Pauses between tries (ms): doubled from the first to the longest, in which a person would begin to wonder. */
const FIRST_PAUSE_MS = 1_000;
const LONGEST_PAUSE_MS = 15_000;

/** What came of one try with some pieces. */
interface Tried {
  readonly there: readonly string[];
  readonly refused: readonly string[];
  readonly problem: StoreProblem | null;
}

const nothing = (problem: StoreProblem | null): Tried => ({ there: [], refused: [], problem });

/** Which store a progress is about; a new password is still the same store. */
function storeName({ url, database }: StoreAddress): string {
  return `${url.trim().replace(/\/+$/, '')}/${database}`;
}

/** The progress with a store, or an empty one where the kept one is about another. */
export function progressFor(address: StoreAddress, kept: SharedProgress | null): SharedProgress {
  const store = storeName(address);
  return kept?.store === store
    ? kept
    : { schema: 3, store, there: [], met: [], refused: [], since: {}, sentAtMs: null };
}

/** Sends what is not there yet. Ends when all is there, when a person has to do something, or when stopped. */
export async function sendPieces(
  address: StoreAddress,
  all: readonly SharedPiece[],
  kept: SharedProgress | null,
  tools: SendTools,
): Promise<SharedProgress> {
  const had = progressFor(address, kept);
  const before = new Set(tools.inPassing === true ? had.refused : []);
  const pieces = all.filter(({ id }) => !before.has(id));
  let progress: SharedProgress = had.refused.length === before.size ? had : { ...had, refused: [] };
  let left = leftOf(pieces, progress);
  let pauseMs = FIRST_PAUSE_MS;
  let problem: StoreProblem | null = null;
  const tell = (phase: StoreStanding['phase'], nextTryMs: number | null): void =>
    tools.onState(
      { phase, there: pieces.length - left.length, left: left.length, problem, nextTryMs },
      progress,
    );
  while (left.length > 0 && tools.stopped?.() !== true) {
    tell('sending', null);
    const tried = await tryOnce(address, handful(left), tools.fetch);
    progress = withTried(progress, tried, tools.now());
    const came = tried.there.length + tried.refused.length > 0;
    left = leftOf(pieces, progress);
    problem = tried.problem;
    if (problem === null) {
      pauseMs = FIRST_PAUSE_MS;
      continue;
    }
    if (!passes(problem)) break;
    if (came) pauseMs = FIRST_PAUSE_MS;
    tell('waiting', pauseMs);
    try {
      await tools.sleep(pauseMs);
    } catch {
      break;
    }
    pauseMs = Math.min(LONGEST_PAUSE_MS, pauseMs * 2);
  }
  const refused = new Set(progress.refused);
  if (left.length === 0 && all.some((piece) => refused.has(piece.id))) problem = 'some-refused';
  tell(left.length === 0 ? 'done' : 'stopped', null);
  return progress;
}

function leftOf(pieces: readonly SharedPiece[], progress: SharedProgress): SharedPiece[] {
  const settled = new Set([...progress.there, ...progress.refused]);
  return pieces.filter((piece) => !settled.has(piece.id));
}

function withTried(progress: SharedProgress, { there, refused }: Tried, atMs: number): SharedProgress {
  if (there.length + refused.length === 0) return progress;
  return {
    ...progress,
    there: [...new Set([...progress.there, ...there])],
    refused: [...new Set([...progress.refused, ...refused])],
    sentAtMs: there.length > 0 ? atMs : progress.sentAtMs,
  };
}

function handful(pieces: readonly SharedPiece[]): SharedPiece[] {
  const some: SharedPiece[] = [];
  let characters = 0;
  for (const piece of pieces.slice(0, MOST_AT_ONCE)) {
    characters += JSON.stringify(piece.body).length;
    if (some.length > 0 && characters > MOST_CHARACTERS) break;
    some.push(piece);
  }
  return some;
}

async function tryOnce(address: StoreAddress, pieces: readonly SharedPiece[], fetch: Fetch): Promise<Tried> {
  const [first] = pieces;
  if (first === undefined) return nothing(null);
  if (pieces.length === 1) return putOne(address, first, fetch);
  const docs = pieces.map(({ id, body }) => ({ _id: id, ...body }));
  const answer = await ask(address, { method: 'POST', path: '/_bulk_docs', body: { docs } }, fetch);
  if (answer.ok) return readBulk(answer.value, pieces);
  if (answer.problem !== 'not-a-store') return nothing(answer.problem);
  // Too much at once, or a server that knows single pieces only.
  return putEach(address, pieces, fetch);
}

async function putEach(address: StoreAddress, pieces: readonly SharedPiece[], fetch: Fetch): Promise<Tried> {
  const there: string[] = [];
  const refused: string[] = [];
  for (const piece of pieces) {
    const one = await putOne(address, piece, fetch);
    there.push(...one.there);
    refused.push(...one.refused);
    if (one.problem !== null) return { there, refused, problem: one.problem };
  }
  // A store that takes nothing at all is none.
  return {
    there,
    refused: there.length === 0 ? [] : refused,
    problem: there.length === 0 ? 'not-a-store' : null,
  };
}

async function putOne(address: StoreAddress, piece: SharedPiece, fetch: Fetch): Promise<Tried> {
  const path = `/${encodeURIComponent(piece.id)}`;
  const answer = await ask(address, { method: 'PUT', path, body: piece.body }, fetch);
  return readPut(answer, piece.id);
}

function readPut(answer: StoreAnswer, id: string): Tried {
  const there = { there: [id], refused: [], problem: null };
  if (answer.ok) {
    const said = answer.value as { readonly ok?: unknown } | null;
    return said?.ok === true ? there : nothing('not-a-store');
  }
  if (answer.status === 409) return there;
  if ([400, 412, 413].includes(answer.status)) return { there: [], refused: [id], problem: null };
  return nothing(answer.problem);
}

/** A row for every piece; only what is said to be there is believed to be there. */
function readBulk(value: unknown, pieces: readonly SharedPiece[]): Tried {
  if (!Array.isArray(value)) return nothing('not-a-store');
  const asked = new Set(pieces.map((piece) => piece.id));
  const there: string[] = [];
  const refused: string[] = [];
  for (const row of value as readonly unknown[]) {
    const { id, ok, rev, error } = (row ?? {}) as Readonly<Record<string, unknown>>;
    if (typeof id !== 'string' || !asked.has(id)) continue;
    if (ok === true || error === 'conflict' || (typeof rev === 'string' && error === undefined))
      there.push(id);
    else if (error === 'forbidden' || error === 'bad_request') refused.push(id);
  }
  const silent = pieces.length - there.length - refused.length;
  return { there, refused, problem: silent > 0 ? 'busy' : null };
}
