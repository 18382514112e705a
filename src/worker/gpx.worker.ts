/** Entry of the worker that reads GPX files: joins the desk to the messages of this thread and decides nothing. */
import { openGpxDesk } from './gpxDesk.ts';
import type { GpxAnswer, GpxRequest } from './gpxMessages.ts';

/** The part of a worker's own scope that is used; the DOM library describes a window instead. */
interface Scope {
  postMessage(answer: GpxAnswer): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<GpxRequest>) => void): void;
}

const scope = globalThis as unknown as Scope;
const receive = openGpxDesk(
  (answer) => scope.postMessage(answer),
  // A task of its own lets a cancel get through; a microtask would not.
  () => new Promise((resolve) => setTimeout(resolve, 0)),
);
scope.addEventListener('message', (event) => receive(event.data));
