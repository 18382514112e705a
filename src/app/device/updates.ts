/**
 * Joins the store to the offline worker: loaded after the first picture, told to look for a newer version while
 * nobody rides, and allowed to replace the page only where nothing can be lost.
 */
import type { Offline } from '../../offline/register.ts';
import type { Store } from '../../state/createStore.ts';
import { trustedScript } from './trustedScripts.ts';

/** What the build calls the worker; it lies beside the page. */
const WORKER_FILE = 'offline.js';

/** Starts after the page is there and painted. Without a build there is no worker. */
export function joinOffline(store: Store) {
  let offline: Offline | null = null;
  const start = async (): Promise<void> => {
    const { registerOffline } = await import('../../offline/register.ts');
    offline = registerOffline({
      worker: trustedScript(WORKER_FILE),
      onNewer: () => store.send({ kind: 'found', found: { newer: true } }),
    });
  };
  const afterPicture = (): void => {
    // Frames of a hidden page never come; a timer does.
    window.setTimeout(() => void start().catch(() => undefined), 0);
  };
  if (import.meta.env.PROD) {
    if (document.readyState === 'complete') afterPicture();
    else window.addEventListener('load', afterPicture, { once: true });
  }
  const mayReplace = (): boolean => {
    const { view, last } = store.state();
    return view !== 'ride' && last?.kept.state !== 'saving';
  };
  document.addEventListener('visibilitychange', () => {
    if (!document.hidden && store.state().view !== 'ride') offline?.look();
  });
  return {
    /** Replaces this page by the newer version, unless a ride is on or still being kept. */
    load: (): void => {
      if (mayReplace()) offline?.takeOver();
    },
    /** Takes the worker off this device, before its files are deleted. */
    forget: async (): Promise<void> => offline?.forget().catch(() => undefined),
  };
}
export type Newer = ReturnType<typeof joinOffline>;
