/**
 * Asking a worker: methods with typed questions and answers, promises on the page's side. A worker that cannot be started
 * is replaced by this thread, one that falls silent is started anew once, and whoever asked always hears in the end.
 * What is worked on is not known here.
 */

/** Nobody waits for the answer any more; no fault. */
export class Cancelled extends Error {
  override readonly name = 'Cancelled';
}

/** What a method is handed besides its question. */
export interface Call<Part> {
  /** Sends something that is known before the answer. Asked again, a method must send the same in the same order. */
  tell(part: Part): void;
  /** Gives a sign of life and lets messages through; rejects with `Cancelled` once nobody waits any more. */
  pause(): Promise<void>;
  /** Aborted once nobody waits any more. */
  readonly signal: AbortSignal;
}

/** Answers one kind of question, with `Part`s before the answer. */
export type Method<Question, Part, Answer> = (question: Question, call: Call<Part>) => Promise<Answer>;
/** Holds for an object of methods. */
type Methods<Service> = { readonly [Name in keyof Service]: Method<never, never, unknown> };
type QuestionOf<One> = One extends (question: infer Question, call: never) => unknown ? Question : never;
type PartOf<One> = One extends (question: never, call: Call<infer Part>) => unknown ? Part : never;
type AnswerOf<One> = One extends (question: never, call: never) => Promise<infer Answer> ? Answer : never;

/** Page to worker; without a name nobody waits for the answer any more. */
type Asked =
  | { readonly id: number; readonly name: string; readonly question: unknown }
  | { readonly id: number; readonly name: null };

/** Worker to page. */
type Told =
  | { readonly kind: 'working'; readonly id: number }
  | { readonly kind: 'part'; readonly id: number; readonly part: unknown }
  | { readonly kind: 'answer'; readonly id: number; readonly answer: unknown }
  | { readonly kind: 'failed'; readonly id: number; readonly reason: string };

/** Ends in a task of its own, so that messages that wait get through; a microtask would not do. */
const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Takes what is asked and calls the methods of a service; `post` sends what they tell. */
export function answering<Service extends Methods<Service>>(
  service: Service,
  post: (told: Told) => void,
): (asked: Asked) => void {
  const methods = service as unknown as Readonly<Record<string, Method<unknown, unknown, unknown>>>;
  const running = new Map<number, AbortController>();
  const answer = async (id: number, name: string, question: unknown): Promise<void> => {
    const controller = new AbortController();
    const { signal } = controller;
    running.set(id, controller);
    const call: Call<unknown> = {
      signal,
      tell: (part) => signal.aborted || post({ kind: 'part', id, part }),
      async pause() {
        post({ kind: 'working', id });
        await nextTask();
        if (signal.aborted) throw new Cancelled();
      },
    };
    try {
      const method = methods[name];
      if (method === undefined) throw new Error(`nobody does ${name}`);
      post({ kind: 'answer', id, answer: await method(question, call) });
    } catch (error) {
      post({ kind: 'failed', id, reason: error instanceof Error ? error.message : String(error) });
    } finally {
      running.delete(id);
    }
  };
  return (asked) => {
    if (asked.name === null) running.get(asked.id)?.abort();
    else void answer(asked.id, asked.name, asked.question);
  };
}

/** The part of a worker's own scope that is used; the DOM library describes a window instead. */
interface WorkerScope {
  postMessage(told: Told): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<Asked>) => void): void;
}

/** A method that tells everything some work makes, and nothing besides. */
export function telling<Question, Part>(
  work: (question: Question) => AsyncIterable<Part>,
): Method<Question, Part, void> {
  return async (question, call) => {
    for await (const part of work(question)) {
      call.tell(part);
      await call.pause();
    }
  };
}

/** In the entry of a worker: answers what the page asks. */
export function serve<Service extends Methods<Service>>(service: Service): void {
  const scope = globalThis as unknown as WorkerScope;
  const take = answering(service, (told) => scope.postMessage(told));
  scope.addEventListener('message', (event) => take(event.data));
}

/** Where a service is at work. */
export interface Workplace<Service> {
  /** Starts the worker, or answers null where there is none. */
  readonly start: () => Worker | null;
  /** The same service for this thread; fetched only where it is needed. */
  readonly here: () => Promise<Service>;
}

/** Who can do the work. */
interface WorkerOptions<Service> extends Workplace<Service> {
  /** Who works after the second silence. Work that hangs in a worker may hang here as well, with the page. */
  readonly afterSilence: 'here' | 'nobody';
  /** Hears of a worker that broke down or fell silent. */
  readonly onBroken?: ((error: Error) => void) | undefined;
  /** A worker that owes an answer and gives no sign for so long (s, while the page is awake) counts as dead. */
  readonly silenceS?: number | undefined;
}

/** What may be asked along. */
interface AskOptions<Part> {
  readonly onPart?: ((part: Part) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
}

/** The page's side of a service. */
interface WorkerClient<Service> {
  /** Rejects with `Cancelled` once `signal` says so, and with another error where nobody could do it. */
  ask<Name extends keyof Service & string>(
    name: Name,
    question: QuestionOf<Service[Name]>,
    options?: AskOptions<PartOf<Service[Name]>>,
  ): Promise<AnswerOf<Service[Name]>>;
  /** Starts the worker, so that nothing is fetched later. */
  prepare(): void;
  /** Ends the worker; everything that was asked, and is asked later, rejects with `Cancelled`. */
  close(): void;
}

interface Waiting {
  readonly asked: Asked;
  /** Parts that came, and how many of them an earlier worker had sent already. */
  parts: number;
  known: number;
  readonly onPart: (part: unknown) => void;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: Error) => void;
}

/** Opens the page's side of a service. Nothing is started before the first question. */
export function connect<Service extends Methods<Service>>(
  options: WorkerOptions<Service>,
): WorkerClient<Service> {
  const waiting = new Map<number, Waiting>();
  let lastId = 0;
  let closed = false;
  const end = (id: number, how: (one: Waiting) => void): void => {
    const one = waiting.get(id);
    waiting.delete(id);
    if (one !== undefined) how(one);
  };
  const endAll = (error: Error): void => {
    for (const id of waiting.keys()) end(id, ({ reject }) => reject(error));
  };
  const receive = (told: Told): void => {
    const one = waiting.get(told.id);
    if (one === undefined || told.kind === 'working') return;
    if (told.kind === 'answer') return end(told.id, ({ resolve }) => resolve(told.answer));
    if (told.kind === 'failed') return end(told.id, ({ reject }) => reject(new Error(told.reason)));
    one.parts += 1;
    if (one.parts > one.known) one.onPart(told.part);
  };
  const line = openLine(options, {
    receive,
    owes: () => waiting.size > 0,
    // Whoever takes over was asked nothing yet.
    unanswered: () =>
      [...waiting.values()].map((one) => {
        one.known = Math.max(one.known, one.parts);
        one.parts = 0;
        return one.asked;
      }),
    onLost: () => endAll(new Error('nobody does the work')),
  });
  const cancel = (id: number): void =>
    end(id, ({ reject }) => {
      reject(new Cancelled());
      line.send({ id, name: null });
    });
  return {
    ask: (name, question, { onPart, signal } = {}) =>
      new Promise((resolve, reject) => {
        if (closed || signal?.aborted === true) return reject(new Cancelled());
        const id = (lastId += 1);
        const asked: Asked = { id, name, question };
        waiting.set(id, {
          asked,
          parts: 0,
          known: 0,
          onPart: (part) => onPart?.(part as PartOf<Service[typeof name]>),
          resolve: (answer) => resolve(answer as AnswerOf<Service[typeof name]>),
          reject,
        });
        signal?.addEventListener('abort', () => cancel(id));
        line.send(asked);
      }),
    prepare: () => line.open(),
    close: () => {
      closed = true;
      for (const id of waiting.keys()) cancel(id);
      line.hangUp();
    },
  };
}

/**
 * Asks a worker of its own one question and gives what it tells as it comes; the worker ends with the answer. Ends early,
 * without a word, once `signal` says so; throws where the work failed.
 */
export async function* partsOf<Service extends Methods<Service>, Name extends keyof Service & string>(
  options: WorkerOptions<Service>,
  name: Name,
  question: QuestionOf<Service[Name]>,
  signal: AbortSignal,
): AsyncGenerator<PartOf<Service[Name]>> {
  const worker = connect(options);
  const parts = new ReadableStream<PartOf<Service[Name]>>({
    start(stream) {
      const onPart = (part: PartOf<Service[Name]>): void => stream.enqueue(part);
      worker.ask(name, question, { onPart, signal }).then(
        () => stream.close(),
        (error: unknown) => stream.error(error),
      );
    },
  }).getReader();
  try {
    for (let next = await parts.read(); !next.done && !signal.aborted; next = await parts.read())
      yield next.value;
  } catch (error) {
    if (!(error instanceof Cancelled)) throw error;
  } finally {
    worker.close();
  }
}

const SILENCE_S = 20;
const LOOK_EVERY_MS = 1000;
/** A worker that falls silent is started anew so often, counted from its last sign. */
const STARTS = 2;

interface Line {
  open(): void;
  send(asked: Asked): void;
  hangUp(): void;
}

interface LineEnds {
  readonly receive: (told: Told) => void;
  readonly owes: () => boolean;
  /** Everything that was asked and has no answer yet, to be asked again. */
  readonly unanswered: () => readonly Asked[];
  /** Nobody can do the work. What has no answer now gets none; what is asked later is tried again. */
  readonly onLost: () => void;
}

/** The way to a worker, or to this thread in its place. */
function openLine<Service extends Methods<Service>>(
  { start, here, afterSilence, onBroken, silenceS = SILENCE_S }: WorkerOptions<Service>,
  { receive, owes, unanswered, onLost }: LineEnds,
): Line {
  let send: ((asked: Asked) => void) | null = null;
  let worker: Worker | null = null;
  let starts = 0;
  let silentS = 0;
  let watch: ReturnType<typeof setInterval> | undefined;
  const hangUp = (): void => {
    worker?.terminate();
    worker = null;
    send = null;
    clearInterval(watch);
  };
  const lose = (): void => {
    hangUp();
    starts = 0;
    onLost();
  };
  const workHere = (): void => {
    const take = here().then((service) => answering(service, receive));
    take.catch(lose);
    send = (asked) => void take.then((ask) => ask(asked)).catch(() => undefined);
  };
  const replace = (error: Error, byWhom: () => void): void => {
    onBroken?.(error);
    hangUp();
    byWhom();
    for (const asked of unanswered()) send?.(asked);
  };
  const onSilence = (): void => {
    const error = new Error('silent');
    if (starts < STARTS) return replace(error, open);
    if (afterSilence === 'here') return replace(error, workHere);
    onBroken?.(error);
    lose();
  };
  const open = (): void => {
    const mine = start();
    if (mine === null) return workHere();
    worker = mine;
    starts += 1;
    silentS = 0;
    send = (asked) => mine.postMessage(asked);
    mine.addEventListener('message', (event: MessageEvent<Told>) => {
      silentS = 0;
      starts = 1;
      receive(event.data);
    });
    mine.addEventListener('error', (event) => {
      event.preventDefault();
      // One that cannot be fetched or run will not be better for another start.
      if (worker === mine) replace(new Error('broken'), workHere);
    });
    // Seconds while the page is awake: after a night in a closed laptop nobody has been silent for hours.
    watch = setInterval(() => {
      silentS = owes() ? silentS + LOOK_EVERY_MS / 1000 : 0;
      if (silentS >= silenceS) onSilence();
    }, LOOK_EVERY_MS);
  };
  return {
    open: () => {
      if (send === null) open();
    },
    send: (asked) => {
      if (send === null) open();
      send?.(asked);
    },
    hangUp,
  };
}
