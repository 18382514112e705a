/** The address bar and the title follow the state, and the state follows the address bar. */
import { type Address, hashOf, parseAddress } from '../state/address.ts';
import { addressOf } from '../state/rideState.ts';
import type { State } from '../state/store.ts';
import { common } from '../words/common.ts';

/** Joins the pages under `root`, first shown as `first`, to the address bar; `go` hears where somebody went. */
export function joinRouter(root: HTMLElement, first: State, go: (address: Address) => void) {
  let shownView = first.view;
  /** The address the state has been told of. */
  let seenHash = location.hash;
  window.addEventListener('hashchange', () => {
    seenHash = location.hash;
    go(parseAddress(location.hash));
  });
  /** Leaving a ride replaces the address, or "back" would begin another. */
  const writeAddress = (state: State): void => {
    // Somebody is on their way elsewhere and the browser has not told yet: what happens meanwhile must not call them back.
    if (location.hash !== seenHash) return;
    const hash = hashOf(addressOf(state));
    if (hash === (location.hash || '#start')) return;
    const replace = shownView === 'ride' || parseAddress(location.hash).view === 'ride';
    try {
      if (replace) history.replaceState(null, '', hash);
      else history.pushState(null, '', hash);
    } catch {
      // Some browsers allow so many a minute; the page has changed all the same, and its address comes with the next.
    }
    seenHash = location.hash;
  };
  const arrive = ({ view }: State): void => {
    const heading = root.querySelector('h1');
    const name = common('name');
    document.title = view === 'start' ? name : `${heading?.textContent ?? ''} · ${name}`;
    if (view === shownView) return;
    shownView = view;
    window.scrollTo(0, 0);
    // A ride has the focus itself, so that its keys reach it; on every other page its heading is read first.
    (root.querySelector<HTMLElement>('[data-takes-focus]') ?? heading)?.focus({ preventScroll: true });
  };
  return {
    /** Writes the address; a new page begins at its top, with its heading, or its ride, in focus and the heading in the title. */
    follow(state: State): void {
      writeAddress(state);
      arrive(state);
    },
  };
}
