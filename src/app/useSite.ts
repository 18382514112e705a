/** The address of the game for other devices, which a page at `localhost` has to ask its server for. */
import { isOnlyHere, siteForOthers } from '../features/handover/site.ts';
import { useAnswer } from '../ui/hooks.ts';

async function askServer(): Promise<unknown> {
  const answer = await fetch('tablets.json', { cache: 'no-store' });
  return answer.ok ? answer.json() : null;
}

/** What other devices can open; undefined while the server of this computer is asked for its address in the network. */
export function useSite(): string | null | undefined {
  const isAsked = isOnlyHere(location.href);
  const tablets = useAnswer(() => (isAsked ? askServer() : Promise.resolve(null)), []);
  if (!isAsked) return siteForOthers(location.href, null);
  if (tablets === 'waiting') return undefined;
  return tablets === 'failed' ? null : siteForOthers(location.href, tablets);
}
