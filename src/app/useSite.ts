/** The address of the game for other devices, which a page at `localhost` has to ask its server for. */
import { useEffect, useState } from 'preact/hooks';
import { isOnlyHere, siteForOthers } from '../features/handover/site.ts';

/** What other devices can open; undefined while the server of this computer is asked for its address in the network. */
export function useSite(): string | null | undefined {
  const [site, setSite] = useState<string | null | undefined>(() =>
    isOnlyHere(location.href) ? undefined : siteForOthers(location.href, null),
  );
  useEffect(() => {
    if (site !== undefined) return;
    fetch('tablets.json', { cache: 'no-store' })
      .then((answer) => (answer.ok ? answer.json() : null))
      .then((tablets: unknown) => setSite(siteForOthers(location.href, tablets)))
      .catch(() => setSite(null));
  }, []);
  return site;
}
