/**
 * What page and worker say to each other, and the worker's side of it: methods with typed questions and answers are
 * called, what they tell is sent. How a page asks is `asking.ts`; what is worked on is not known here.
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
export type Methods<Service> = { readonly [Name in keyof Service]: Method<never, never, unknown> };
export type QuestionOf<One> = One extends (question: infer Question, call: never) => unknown
  ? Question
  : never;
export type PartOf<One> = One extends (question: never, call: Call<infer Part>) => unknown ? Part : never;
export type AnswerOf<One> = One extends (question: never, call: never) => Promise<infer Answer>
  ? Answer
  : never;

/** Page to worker; without a name nobody waits for the answer any more. */
export type Asked =
  | { readonly id: number; readonly name: string; readonly question: unknown }
  | { readonly id: number; readonly name: null };

/** Worker to page. */
export type Told =
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
