/** The page of the moment with what may lie over it. */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { Cautions } from '../features/about/cautions.tsx';
import { pageOf } from './pageTable.ts';
import { LazySettings } from './lazySettings.tsx';
import { KeptNotice, OpenSettings } from '../ui/parts.tsx';
import type { Services } from './services.ts';
import type { Send, State } from '../state/store.ts';
import { keepingNotice } from '../words/common.ts';
import { PageTrouble } from '../features/ride/trouble.tsx';

export function App(props: {
  readonly state: State;
  readonly send: Send;
  readonly services: Services;
  /** What lies below the dialog stays as it is. */
  readonly onlyDialog?: boolean;
}): JSX.Element {
  const { state, send, services } = props;
  const below = useRef<JSX.Element | null>(null);
  if (!props.onlyDialog)
    below.current = (
      <OpenSettings.Provider value={() => send({ kind: 'open-dialog', dialog: 'settings' })}>
        <KeptNotice.Provider value={keepingNotice(state.keeping)}>
          {pageOf(state.view)(state, send, services)}
        </KeptNotice.Provider>
      </OpenSettings.Provider>
    );
  return (
    <>
      {below.current}
      {state.dialog === 'settings' && <LazySettings state={state} send={send} />}
      {state.trouble?.place === 'page' && <PageTrouble services={services} send={send} />}
      {state.dialog === 'cautions' && <Cautions bike={state.settings.bike} send={send} />}
    </>
  );
}
