/** Holds the state and tells those who listen. What an action does to the state is decided in `reduce.ts`. */
import { Listeners } from './listeners.ts';
import { reduce } from './reduce.ts';
import type { Action, State } from './store.ts';

/** Makes the store. An action sent by a listener is handled after the listeners of the one before. */
export function createStore(first: State) {
  let state = first;
  const listeners = new Listeners<[State]>();
  const waiting: Action[] = [];
  let busy = false;
  return {
    state: (): State => state,
    send: (action: Action): void => {
      waiting.push(action);
      if (busy) return;
      busy = true;
      try {
        for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
          const before = state;
          state = reduce(state, next);
          if (state !== before) listeners.tell(state);
        }
      } finally {
        busy = false;
      }
    },
    /** Calls back after every change; the answer stops it. */
    subscribe: listeners.add,
  };
}
/** State, and a way to be told when it has changed. */
export type Store = ReturnType<typeof createStore>;
