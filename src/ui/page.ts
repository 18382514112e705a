/** What a page is: a function of the state that answers with what to draw, given what it may ask of the app. */
import type { JSX } from 'preact';
import type { Send, State } from '../state/store.ts';

export type Page<Services = unknown> = (state: State, send: Send, services: Services) => JSX.Element;
