/**
 * The entry: joins the store to the address bar, to the document and to the ride. Pages draw, the session rides;
 * only here do they meet.
 */
import './ui/theme.css';
import './ui/parts.css';
import './ui/dialogs.css';
import './framed.ts';
import './pages/arrival.css';
import './pages/start.css';
import './pages/pages.css';
import './pages/kept.css';
import './pages/ride.css';
import './ui/forced.css';
import './input/pads.css';
import { render } from 'preact';
import { keepAwake } from './awake.ts';
import { DEFAULT_KEYS } from './input/actions.ts';
import { joinClinic } from './clinic.ts';
import { joinJudging } from './judging.ts';
import { joinKeeping } from './keeping.ts';
import { bundledLevels } from './levels.ts';
import { joinOffline } from './newer.ts';
import { hashOf, parseAddress } from './ui/address.ts';
import { App } from './app/app.tsx';
import { PAGES, preloadAfterRide } from './app/pageTable.ts';
import { RIDE_PLACES } from './ui/ridePlaces.ts';
import { startScanning } from './app/scanning.ts';
import { createStore } from './app/createStore.ts';
import { addressOf, initialState, type State } from './app/store.ts';
import { onRoad } from './core/settings/settings.ts';
import { unitsOf } from './ui/format.ts';
import { words } from './pages/words.ts';
import { joinServices } from './services.ts';
import { type RideSession, startRideSession } from './rideSession.ts';
import type { RideLook, RidePlaces } from './rideViews.ts';

const store = createStore(
  initialState(bundledLevels(), DEFAULT_KEYS, reachableHash(), {
    units: unitsOf(navigator.language),
    // Whoever asks every page for more contrast gets the theme made for sunlight.
    theme: window.matchMedia('(prefers-contrast: more)').matches ? 'field' : 'indoor',
  }),
);
const keeping = joinKeeping(store, DEFAULT_KEYS);
const judging = joinJudging(store, keeping);
const clinic = joinClinic(store, keeping, judging);
const services = joinServices({ keeping, judging, clinic, newer: joinOffline(store), look });
const awake = keepAwake();
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
  markTheme(state.settings.theme);
  document.documentElement.dataset['motion'] = look().reducedMotion ? 'reduced' : 'full';
}

/** The browser's own frame takes the colour of the paper. */
function markTheme(theme: string): void {
  const { documentElement } = document;
  if (documentElement.dataset['theme'] === theme) return;
  documentElement.dataset['theme'] = theme;
  const paper = getComputedStyle(documentElement).getPropertyValue('--paper').trim();
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', paper);
}

/** The address the state has been told of. */
let seenHash = location.hash;

/** The address follows the state. Leaving a ride replaces it, or "back" would begin another. */
function writeAddress(state: State): void {
  // Somebody is on their way elsewhere and the browser has not told yet: what happens meanwhile must not call them back.
  if (location.hash !== seenHash) return;
  const hash = hashOf(addressOf(state));
  if (hash === (location.hash || '#start')) return;
  const replace = shownView === 'ride' || parseAddress(location.hash).view === 'ride';
  if (replace) history.replaceState(null, '', hash);
  else history.pushState(null, '', hash);
  seenHash = location.hash;
}

let scanned = '';
let stopScanning = (): void => undefined;

/** Menus with one switch, for those who asked for it; never during a ride. */
function followScanning({ settings }: State): void {
  const key = settings.scanning ? String(settings.scanS) : '';
  if (key === scanned) return;
  scanned = key;
  stopScanning();
  stopScanning =
    key === ''
      ? () => undefined
      : startScanning({
          everyS: settings.scanS,
          active: () => !['ready', 'riding'].includes(document.body.dataset['rideState'] ?? ''),
        });
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
function followRide({ view, rest, ride, last }: State): void {
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
  const { level, watchFromM, group } = ride;
  // On a turn of a group its plan says who rides on what; everything else is as on the device.
  const lookNow = (): RideLook => {
    const now = look();
    return group === null
      ? now
      : { ...now, settings: { ...now.settings, bike: group.bike, rider: group.rider } };
  };
  const { bike, rider, autoEase } = onRoad(lookNow().settings);
  const watching =
    watchFromM === null || last === null ? null : { recording: last.recording, fromM: watchFromM };
  const reference =
    watching === null ? judging.expect({ level, seed: level.seed, bike, rider, autoEase }) : () => null;
  session = startRideSession({
    places,
    level,
    rest,
    watching,
    reference,
    look: lookNow,
    onPhase: (phase, countdownS) => store.send({ kind: 'ride-phase', phase, countdownS }),
    onFailed: () => store.send({ kind: 'ride-failed' }),
    onFinished: (result) => {
      store.send({ kind: 'ride-finished', result });
      if (group !== null) void clinic.finished(group, result);
      else if (watching === null) void judging.judge(result);
    },
  });
  void preloadAfterRide();
}

function show(state: State): void {
  mark(state);
  render(<App state={state} send={store.send} services={services} />, root);
  writeAddress(state);
  arrive(state);
  followRide(state);
  followScanning(state);
  const { view, ride } = state;
  awake.want(view === 'ride' && (ride?.phase === 'ready' || ride?.phase === 'riding'));
}

store.subscribe(show);
window.addEventListener('hashchange', () => {
  seenHash = location.hash;
  store.send({ kind: 'address', address: parseAddress(reachableHash()) });
});
wantsLessMotion.addEventListener('change', () => mark(store.state()));
show(store.state());
// Without its colours the page has not come whole, and what the sentence in `index.html` says is true.
if (getComputedStyle(document.documentElement).getPropertyValue('--paper') !== '')
  document.getElementById('arrival')?.remove();
