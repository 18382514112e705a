/** Entry of the worker that counts group pictures: joins its workshop to the messages of this thread. */
import { type GroupAnswer, type GroupQuestion, openGroupWorkshop } from './groupWorkshop.ts';

/** The part of a worker's own scope that is used; the DOM library describes a window instead. */
interface Scope {
  postMessage(answer: GroupAnswer): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<GroupQuestion>) => void): void;
}

const scope = globalThis as unknown as Scope;
const receive = openGroupWorkshop(
  (answer) => scope.postMessage(answer),
  () => new Promise((resolve) => setTimeout(resolve, 0)),
);
scope.addEventListener('message', (event) => receive(event.data));
