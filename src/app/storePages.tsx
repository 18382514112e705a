/**
 * A club's own store, joined to the game: its page, and the line about it on the pages of a session. What is sent, and to
 * whom, is decided by the owner they fetch.
 */
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { readStoreLink } from '../features/handover/storeCode.ts';
import { StoreLine } from '../features/handover/storeLine.tsx';
import { StorePage } from '../features/handover/storePage.tsx';
import { BackWay } from '../ui/parts.tsx';
import { useFollowed } from '../ui/hooks.ts';
import { words } from '../words/words.ts';
import { useFetched, Waiting } from './fetched.tsx';
import type { Services } from './services.ts';
import { useSite } from './useSite.ts';

const clinic = words('clinic');
const handover = words('handover');

/** While a session is on the screen its store is asked so often (ms): a ride of another tablet is seen within five seconds. */
const ASKED_EVERY_MS = 2_000;

/** What goes to a club's own store from a session, on its pages; meanwhile what others ride comes from there. */
export function Outgoing(props: {
  readonly services: Services;
  readonly planId: string | null;
}): JSX.Element {
  const { services, planId } = props;
  const store = useFetched(services.carry.store).one;
  useFollowed(store);
  const agreed = store !== null && store.agreed() !== null;
  const sync = (inPassing: boolean): void => {
    // What went wrong stands in the store's own state.
    services.carry.sync(planId, inPassing).catch(() => undefined);
  };
  useEffect(() => {
    if (!agreed || planId === null) return undefined;
    sync(true);
    const timer = window.setInterval(() => {
      if (document.visibilityState === 'visible') sync(true);
    }, ASKED_EVERY_MS);
    return () => window.clearInterval(timer);
  }, [agreed, planId]);
  return (
    <StoreLine
      store={store}
      standing={store?.state(planId ?? undefined) ?? null}
      onFetch={() => sync(false)}
    />
  );
}

/** A club's own store: asking, and what has gone there; settings may come in the address. */
export function ClubStorePage(props: { readonly services: Services; readonly place: string }): JSX.Element {
  const { services, place } = props;
  const fetched = useFetched(services.carry.store);
  const site = useSite();
  const store = fetched.one;
  useFollowed(store);
  const sync = (): void => void services.carry.sync(null, false).catch(() => undefined);
  const [cut, setCut] = useState(false);
  const form = useRef('');
  useEffect(() => {
    if (store === null || place === 'store') return;
    const address = readStoreLink(`#clinic/${place}`, location.href);
    setCut(address === null);
    if (address !== null) store.offer(address, 'code');
    // A password does not stay in the address bar.
    location.replace('#clinic/store');
  }, [store, place]);
  useEffect(() => {
    if (store !== null && store.agreed() !== null) sync();
  }, [store]);
  if (store === null || site === undefined)
    return <Waiting title={handover('store-title')} fetched={fetched} />;
  const offered = store.offered();
  // Another offer begins another form; one that was agreed to or turned down leaves it as it is.
  if (offered !== null) form.current = JSON.stringify(offered);
  return (
    <BackWay.Provider value={{ href: '#clinic', word: clinic('title') }}>
      <StorePage
        key={`${form.current} ${cut}`}
        {...{ store, site, cut }}
        here={location.href}
        onFetch={sync}
      />
    </BackWay.Provider>
  );
}
