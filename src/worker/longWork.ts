/**
 * Long work away from the page: a worker that is started for one question sends what it has made piece by piece, with
 * how far it is, and is ended when it is through or nobody waits any more. Where there is no worker the same work is
 * done here, with a pause after each piece.
 */

/** Something that was made, and how much of the work is done by then (0 to 1). */
export interface Made<T> {
  readonly share: number;
  readonly value: T;
}

/** Work that answers one question in pieces. */
export type Work<Q, T> = (question: Q) => AsyncIterable<Made<T>>;

type Answer<T> =
  | { readonly kind: 'made'; readonly made: Made<T> }
  | { readonly kind: 'end' }
  | { readonly kind: 'failed'; readonly reason: string };

/** The part of a worker's own scope that is used; the DOM library describes a window instead. */
interface Scope<Q, T> {
  postMessage(answer: Answer<T>): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<Q>) => void): void;
}

/** In the entry of a worker: answers the question it is asked. */
export function serveWork<Q, T>(work: Work<Q, T>): void {
  const scope = globalThis as unknown as Scope<Q, T>;
  const answer = async (question: Q): Promise<void> => {
    try {
      for await (const made of work(question)) scope.postMessage({ kind: 'made', made });
      scope.postMessage({ kind: 'end' });
    } catch (error) {
      scope.postMessage({ kind: 'failed', reason: error instanceof Error ? error.message : '' });
    }
  };
  scope.addEventListener('message', (event) => void answer(event.data));
}

/** Who can do the work. */
export interface Workers<Q, T> {
  /** The worker, or null where there is none. */
  readonly start: () => Worker | null;
  /** The same work on this thread; fetched only when it is needed. */
  readonly here: () => Promise<Work<Q, T>>;
}

/**
 * Asks, and gives what is made as it comes. Ends early, without a word, once `signal` says so; throws where the work
 * failed half-way.
 */
export async function* askFor<Q, T>(
  { start, here }: Workers<Q, T>,
  question: Q,
  signal: AbortSignal,
): AsyncGenerator<Made<T>> {
  const worker = start();
  let some = false;
  try {
    if (worker !== null)
      for await (const made of fromWorker<Q, T>(worker, question, signal)) {
        some = true;
        yield made;
      }
  } catch (error) {
    // A worker that never came to anything may not have been loaded.
    if (some || !(error instanceof NoWorker)) throw error;
    yield* workHere(await here(), question, signal);
  } finally {
    worker?.terminate();
  }
  if (worker === null) yield* workHere(await here(), question, signal);
}

class NoWorker extends Error {}

async function* fromWorker<Q, T>(worker: Worker, question: Q, signal: AbortSignal): AsyncGenerator<Made<T>> {
  const came: (Answer<T> | Error)[] = [];
  let wake = (): void => undefined;
  const take = (one: Answer<T> | Error): void => {
    came.push(one);
    wake();
  };
  worker.addEventListener('message', (event: MessageEvent<Answer<T>>) => take(event.data));
  worker.addEventListener('error', () => take(new NoWorker('the worker broke down')));
  signal.addEventListener('abort', () => wake());
  worker.postMessage(question);
  while (!signal.aborted) {
    const next = came.shift();
    if (next === undefined) {
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
      continue;
    }
    if (next instanceof Error) throw next;
    if (next.kind === 'end') return;
    if (next.kind === 'failed') throw new Error(next.reason);
    yield next.made;
  }
}

async function* workHere<Q, T>(work: Work<Q, T>, question: Q, signal: AbortSignal): AsyncGenerator<Made<T>> {
  for await (const made of work(question)) {
    if (signal.aborted) return;
    yield made;
    // A task of its own lets the page draw and a person stop it.
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
}
