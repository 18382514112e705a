/** The page of the moment with what may lie over it. */
import type { JSX } from 'preact';
import { Cautions } from './cautions.tsx';
import { PAGES } from './pageTable.ts';
import { SettingsDialog } from './settingsDialog.tsx';
import { startPage } from './start.tsx';
import type { Services } from './services.ts';
import type { Send, State } from './store.ts';

export function App(props: {
  readonly state: State;
  readonly send: Send;
  readonly services: Services;
}): JSX.Element {
  const { state, send, services } = props;
  const page = PAGES[state.view] ?? startPage;
  return (
    <>
      {page(state, send, services)}
      {state.dialog === 'settings' && <SettingsDialog state={state} send={send} />}
      {state.dialog === 'cautions' && <Cautions send={send} />}
    </>
  );
}
