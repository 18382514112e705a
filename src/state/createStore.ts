/** Holds the state and tells those who listen. What an action does to the state is decided in `store.ts`. */
import { Listeners } from './listeners.ts';
import { type Action, reduce, type Send, type State } from './store.ts';

/** State, and a way to be told when it has changed. */
export interface Store {
  state(): State;
  readonly send: Send;
  /** Calls back after every change; the answer stops it. */
  subscribe(listener: (state: State) => void): () => void;
}

/** Makes the store. An action sent by a listener is handled after the listeners of the one before. */
export function createStore(first: State): Store {
  let state = first;
  const listeners = new Listeners<[State]>();
  const waiting: Action[] = [];
  let busy = false;
  return {
    state: () => state,
    send(action) {
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
    subscribe: listeners.add,
  };
}
