/**
 * The page's side of a service: promises for questions, parts before their answers, and nobody waits for ever. Who does
 * the work, and who takes over from whom, is `line.ts`.
 */
import { openLine, type WorkerOptions } from './line.ts';
import {
  type AnswerOf,
  type Asked,
  Cancelled,
  type Methods,
  type PartOf,
  type QuestionOf,
  type Told,
} from './rpc.ts';

interface AskOptions<Part> {
  readonly onPart?: ((part: Part) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
}

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
