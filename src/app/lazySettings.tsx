/**
 * The settings dialog, fetched when it is first wanted, so that the first page stays small. While it is on its way, and
 * where it cannot be fetched, a dialog stands there that says so.
 */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../ui/controls.tsx';
import { Dialog } from '../ui/parts.tsx';
import type { Send, State } from '../state/store.ts';
import { bringAll, bringWords, languageShown } from './device/language.ts';
import { common } from '../words/common.ts';

const load = async () => (await import('../features/settings/dialog.tsx')).SettingsDialog;
let fetched: Awaited<ReturnType<typeof load>> | null = null;

async function get(): Promise<void> {
  const dialog = await load();
  await bringWords();
  fetched = dialog;
}

/** Fetches it now, because it may be wanted soon; one that did not come is asked for again when it is opened. */
export const preloadSettings = (): Promise<void> => get().catch(() => undefined);

export function LazySettings({ state, send }: { readonly state: State; readonly send: Send }): JSX.Element {
  const [failed, setFailed] = useState(fetched === null ? false : null);
  const fetchIt = (): void => {
    setFailed(false);
    get().then(
      () => setFailed(null),
      () => setFailed(true),
    );
  };
  useEffect(() => {
    if (fetched === null) fetchIt();
    // Where they do not come, the choice asks again and says so.
    else bringAll().catch(() => undefined);
  }, [fetched]);
  const onClose = (): void => send({ kind: 'close-dialog' });
  if (fetched === null)
    return (
      <Dialog title={common('nav-settings')} onClose={onClose}>
        <output>{failed === true ? common('coming-failed') : common('coming-loading')}</output>
        {failed === true && (
          <Button strong onClick={fetchIt}>
            {common('coming-tryAgain')}
          </Button>
        )}
      </Dialog>
    );
  const Fetched = fetched;
  return (
    <Fetched
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
