/**
 * The settings dialog, fetched when it is first wanted, so that the first page stays small. While it is on its way, and
 * where it cannot be fetched, a dialog stands there that says so.
 */
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { Dialog } from '../ui/parts.tsx';
import type { Send, State } from '../state/store.ts';
import { bringAll, bringWords, languageShown } from './device/language.ts';
import { Coming, useFetched } from './fetched.tsx';
import { common } from '../words/common.ts';

const load = async () => (await import('../features/settings/dialog.tsx')).SettingsDialog;
let here: Awaited<ReturnType<typeof load>> | null = null;

async function get(): ReturnType<typeof load> {
  const dialog = await load();
  await bringWords();
  here = dialog;
  return dialog;
}

/** Fetches it now, because it may be wanted soon; one that did not come is asked for again when it is opened. */
export const preloadSettings = (): Promise<unknown> => get().catch(() => undefined);

export function LazySettings({ state, send }: { readonly state: State; readonly send: Send }): JSX.Element {
  const fetched = useFetched(get, here);
  const SettingsDialog = fetched.one;
  useEffect(() => {
    // Where they do not come, the choice asks again and says so.
    if (SettingsDialog !== null) bringAll().catch(() => undefined);
  }, [SettingsDialog]);
  const onClose = (): void => send({ kind: 'close-dialog' });
  if (SettingsDialog === null)
    return (
      <Dialog title={common('nav-settings')} onClose={onClose}>
        <Coming fetched={fetched} />
      </Dialog>
    );
  return (
    <SettingsDialog
      settings={state.settings}
      language={languageShown()}
      keyAsked={state.keyAsked}
      onChange={(settings) => send({ kind: 'set', settings })}
      onAskKey={(action) => send({ kind: 'ask-key', action })}
      onKey={(action, code) => send({ kind: 'set-key', action, code })}
      onClose={onClose}
    />
  );
}
