/**
 * Entry of the worker: joins the workshop to the messages of this thread. Planning and judging are done
 * elsewhere; nothing here decides anything.
 */
import type { Answer, Request } from './messages.ts';
import { openWorkshop } from './workshop.ts';

/** The part of a worker's own scope that is used; the DOM library describes a window instead. */
interface Scope {
  postMessage(answer: Answer): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<Request>) => void): void;
}

const scope = globalThis as unknown as Scope;
const receive = openWorkshop(
  (answer) => scope.postMessage(answer),
  // A task of its own lets messages that wait get through; a microtask would not.
  () => new Promise((resolve) => setTimeout(resolve, 0)),
);
scope.addEventListener('message', (event) => receive(event.data));
