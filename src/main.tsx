/**
 * The entry: joins the store to the address bar, to the document and to the ride. Pages draw, the session rides;
 * only here do they meet.
 */
import './pages/theme.css';
import './pages/parts.css';
import './pages/dialogs.css';
import './pages/start.css';
import './pages/pages.css';
import './pages/kept.css';
import './pages/ride.css';
import './input/pads.css';
import { render } from 'preact';
import { DEFAULT_KEYS } from './input/actions.ts';
import { joinJudging } from './judging.ts';
import { joinKeeping } from './keeping.ts';
import { bundledLevels } from './levels.ts';
import { hashOf, parseAddress } from './pages/address.ts';
import { App } from './pages/app.tsx';
import { PAGES, preloadAfterRide } from './pages/pageTable.ts';
import { RIDE_PLACES } from './pages/ride.tsx';
import { addressOf, createStore, initialState, type State } from './pages/store.ts';
import { words } from './pages/words.ts';
import { joinServices } from './services.ts';
import { type RideSession, startRideSession } from './rideSession.ts';
import type { RideLook, RidePlaces } from './rideViews.ts';

const store = createStore(initialState(bundledLevels(), DEFAULT_KEYS, reachableHash()));
const keeping = joinKeeping(store, DEFAULT_KEYS);
const judging = joinJudging(store, keeping);
const services = joinServices(keeping, judging);
const root = document.getElementById('app') as HTMLElement;
const wantsLessMotion = window.matchMedia('(prefers-reduced-motion: reduce)');
const hasCoarsePointer = window.matchMedia('(pointer: coarse)');
let session: RideSession | null = null;
let sessionKey = '';
let shownView = store.state().view;

/** The address, or the start page where no page stands behind it. */
function reachableHash(): string {
  return PAGES[parseAddress(location.hash).view] === undefined ? '' : location.hash;
}

function look(): RideLook {
  const { settings } = store.state();
  const { motion, pads } = settings;
  return {
    settings,
    reducedMotion: motion === 'reduced' || (motion === 'system' && wantsLessMotion.matches),
    showPads: pads === 'always' || (pads === 'auto' && hasCoarsePointer.matches),
  };
}

/** What style sheets and those who look from outside read. */
function mark(state: State): void {
  document.body.dataset['view'] = state.view;
  if (state.ride === null) delete document.body.dataset['rideState'];
  else document.body.dataset['rideState'] = state.ride.phase;
  document.documentElement.dataset['theme'] = state.settings.theme;
  document.documentElement.dataset['motion'] = look().reducedMotion ? 'reduced' : 'full';
}

/** The address follows the state. Leaving a ride replaces it, or "back" would begin another. */
function writeAddress(state: State): void {
  const hash = hashOf(addressOf(state));
  if (hash === (location.hash || '#start')) return;
  const replace = shownView === 'ride' || parseAddress(location.hash).view === 'ride';
  if (replace) history.replaceState(null, '', hash);
  else history.pushState(null, '', hash);
}

/** A new page begins at its top, with its heading in focus and in the title. */
function arrive(state: State): void {
  const heading = root.querySelector('h1');
  document.title = state.view === 'start' ? words.name : `${heading?.textContent ?? ''} · ${words.name}`;
  if (state.view === shownView) return;
  shownView = state.view;
  window.scrollTo(0, 0);
  heading?.focus({ preventScroll: true });
}

function ridePlaces(): RidePlaces | null {
  const found = RIDE_PLACES.map((place) => [place, root.querySelector(`[data-place="${place}"]`)] as const);
  if (found.some(([, element]) => element === null)) return null;
  return Object.fromEntries(found) as unknown as RidePlaces;
}

function stopSession(): void {
  session?.destroy();
  session = null;
  sessionKey = '';
}

/** The ride on the screen is the ride of the state. */
function followRide({ view, rest, ride, settings, last }: State): void {
  const key = view === 'ride' && ride !== null ? `${rest} ${ride.attempt}` : '';
  if (key === sessionKey) {
    session?.settingsChanged();
    if (ride?.phase === 'riding' && session?.isPaused() === true) session.resume();
    return;
  }
  stopSession();
  const places = key === '' ? null : ridePlaces();
  if (ride === null || places === null) return;
  sessionKey = key;
  const { level, watchFromM } = ride;
  const { bike, rider, autoEase } = settings;
  const watching =
    watchFromM === null || last === null ? null : { recording: last.recording, fromM: watchFromM };
  session = startRideSession({
    places,
    level,
    rest,
    watching,
    look,
    onPhase: (phase, countdownS) => store.send({ kind: 'ride-phase', phase, countdownS }),
    onFailed: () => store.send({ kind: 'ride-failed' }),
    onFinished: (result) => {
      store.send({ kind: 'ride-finished', result });
      if (watching === null) void judging.judge(result);
    },
  });
  if (watching === null) judging.expect({ level, seed: level.seed, bike, rider, autoEase });
  preloadAfterRide();
}

function show(state: State): void {
  mark(state);
  render(<App state={state} send={store.send} services={services} />, root);
  writeAddress(state);
  arrive(state);
  followRide(state);
}

store.subscribe(show);
window.addEventListener('hashchange', () =>
  store.send({ kind: 'address', address: parseAddress(reachableHash()) }),
);
wantsLessMotion.addEventListener('change', () => mark(store.state()));
show(store.state());
