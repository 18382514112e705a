/** What a page is: a function of the state that answers with what to draw. */
import type { JSX } from 'preact';
import type { Services } from './services.ts';
import type { Send, State } from './store.ts';

export type Page = (state: State, send: Send, services: Services) => JSX.Element;
