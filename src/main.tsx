/**
 * The entry: joins the store to the address bar, to the document and to the ride. Pages draw, the session rides;
 * only here do they meet.
 */
import './ui/theme.css';
import './ui/parts.css';
import './ui/dialogs.css';
import './app/device/framed.ts';
import './ui/arrival.css';
import './features/start/start.css';
import './ui/pages.css';
import './ui/kept.css';
import './features/ride/ride.css';
import './ui/forced.css';
import './input/pads.css';
import { render } from 'preact';
import { DEFAULT_KEYS } from './core/settings/settings.ts';
import { keepAwake } from './app/device/wakeLock.ts';
import { joinClinic } from './app/group/clinic.ts';
import { joinJudging } from './app/device/scoring.ts';
import { joinKeeping } from './app/device/persistence.ts';
import { bundledLevels } from './app/levels.ts';
import { joinOffline } from './app/device/updates.ts';
import { hashOf, parseAddress } from './state/address.ts';
import { App } from './app/app.tsx';
import { PAGES, preloadAfterRide } from './app/pageTable.ts';
import type { RidePlaces } from './state/ridePlaces.ts';
import { ridePlacesIn } from './ui/rideSpot.tsx';
import { startScanning } from './app/device/scanning.ts';
import { createStore } from './state/createStore.ts';
import { addressOf, initialState, type RideFailure, type RideShown, type State } from './state/store.ts';
import type { TroubleShown, UnfinishedRide } from './state/unfinished.ts';
import { TRIAL } from './state/rideLevel.ts';
import type { RideResult } from './core/coach/results.ts';
import { onRoad } from './core/settings/settings.ts';
import { unitsOf } from './words/format.ts';
import { PHYSICS_VERSION } from './core/ride/recording.ts';
import type { Journal } from './app/ride/journal.ts';
import { openTroubleDesk } from './app/device/trouble.ts';
import { joinUnfinished } from './app/ride/unfinishedRides.ts';
import { joinServices } from './app/joinServices.ts';
import { type RideSession, startRideSession } from './app/ride/session.ts';
import type { RideLook } from './app/ride/views.ts';
import { commonWords } from './words/common.ts';

const store = createStore(
  initialState(bundledLevels(), DEFAULT_KEYS, reachableHash(), {
    units: unitsOf(navigator.language),
    // Whoever asks every page for more contrast gets the theme made for sunlight.
    theme: window.matchMedia('(prefers-contrast: more)').matches ? 'field' : 'indoor',
  }),
);
const trouble = openTroubleDesk(window, onTrouble);
const keeping = joinKeeping(store, DEFAULT_KEYS);
const judging = joinJudging(store, keeping, (error) => trouble.note('worker', error));
const clinic = joinClinic(store, keeping, judging);
const unfinished = joinUnfinished(store, keeping);
const services = joinServices({
  keeping,
  judging,
  clinic,
  unfinished,
  newer: joinOffline(store),
  troubles: () => trouble.all(),
  state: () => store.state(),
  look,
});
const awake = keepAwake();
const root = document.getElementById('app') as HTMLElement;
const wantsLessMotion = window.matchMedia('(prefers-reduced-motion: reduce)');
const hasCoarsePointer = window.matchMedia('(pointer: coarse)');
/** A ride that stops again within so many ticks (ten seconds) was not helped by building it anew. */
const TRIED_AGAIN_TICKS = 1200;
let session: RideSession | null = null;
let sessionKey = '';
/** The journal of the ride on the screen, until the ride is over. */
let journal: Journal | null = null;
/** Ride and trouble as they were shown last. */
let shown: Pick<State, 'ride' | 'trouble'> = store.state();
/** Where a ride was stopped last because something broke. */
let broke: UnfinishedRide | null = null;
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
  document.title =
    state.view === 'start' ? commonWords.name : `${heading?.textContent ?? ''} · ${commonWords.name}`;
  if (state.view === shownView) return;
  shownView = state.view;
  window.scrollTo(0, 0);
  heading?.focus({ preventScroll: true });
}

/** Ends the ride on the screen. Who leaves it out of a pause wants it no more; any other end may be a mishap. */
function stopSession(next: RideShown | null): void {
  session?.destroy();
  session = null;
  sessionKey = '';
  const goesOn = next?.goesOn?.id === journal?.id;
  if (journal === null || goesOn) return journal?.goOn();
  if (shown.ride?.phase === 'paused' && shown.trouble === null) void journal.drop();
  else journal.close();
  journal = null;
  void unfinished.look();
}

/** The ride on the screen is the ride of the state. */
function followRide(state: State): void {
  const { view, rest, ride } = state;
  const key = view === 'ride' && ride !== null ? `${rest} ${ride.attempt}` : '';
  if (key === sessionKey) {
    session?.settingsChanged();
    if (ride?.phase === 'riding' && session?.isPaused() === true) session.resume();
  } else {
    stopSession(ride);
    const places = key === '' ? null : ridePlacesIn(root);
    if (ride !== null && places !== null) {
      sessionKey = key;
      try {
        session = beginRide(state, ride, places);
      } catch (error) {
        failRide('broken', error);
      }
      void preloadAfterRide();
    }
  }
  shown = state;
}

function failRide(why: RideFailure, error: unknown): void {
  trouble.note('ride', error);
  store.send({ kind: 'ride-failed', why });
}

function beginRide({ rest, last }: State, ride: RideShown, places: RidePlaces): RideSession {
  const { level, watchFromM, group, goesOn } = ride;
  // On a turn of a group its plan says who rides on what; everything else is as on the device.
  const lookNow = (): RideLook => {
    const now = look();
    return group === null
      ? now
      : { ...now, settings: { ...now.settings, bike: group.bike, rider: group.rider } };
  };
  const { bike, rider, autoEase } = goesOn?.recording ?? onRoad(lookNow().settings);
  const watching =
    watchFromM === null || last === null ? null : { recording: last.recording, fromM: watchFromM };
  if (watching === null && rest !== TRIAL)
    journal ??= unfinished.begin({ level, rest, turn: group, bike, rider, autoEase }, goesOn);
  const reference =
    watching === null ? judging.expect({ level, seed: level.seed, bike, rider, autoEase }) : () => null;
  return startRideSession({
    places,
    level,
    rest,
    watching,
    goesOn: goesOn?.recording ?? null,
    journal,
    reference,
    look: lookNow,
    onPhase: (phase, countdownS) => store.send({ kind: 'ride-phase', phase, countdownS }),
    onFailed: failRide,
    onBroken: (error) => trouble.report('frame', error),
    onFinished: (result) => finishRide(result, ride),
  });
}

function finishRide(result: RideResult, { group, watchFromM }: RideShown): void {
  const ridden = journal;
  journal = null;
  store.send({ kind: 'ride-finished', result });
  if (watchFromM !== null) return;
  // Until the ride is kept as a whole, its journal stays.
  const onKept = (): void => void ridden?.drop();
  if (group !== null) void clinic.finished(group, result, onKept);
  else void judging.judge(result, judging.shelfOf(ridden?.id ?? '', result, onKept));
}

/** Something broke somewhere: the ride stands still and waits, and one sentence says so. */
function onTrouble(): void {
  const { ride, rest, trouble: told } = store.state();
  const halted = session?.halt() ?? null;
  if (halted === null || ride === null) {
    const isKnown = told !== null || (ride !== null && ride.failed !== null);
    if (!isKnown)
      store.send({ kind: 'trouble', trouble: { place: 'page', ride: null, kept: null, again: false } });
    return;
  }
  const { level, group, watchFromM } = ride;
  const { recording } = halted;
  const id = journal?.id ?? rest;
  const stopped: UnfinishedRide | null =
    watchFromM !== null
      ? null
      : {
          id,
          atMs: Date.now(),
          rest,
          level,
          turn: group,
          physicsVersion: PHYSICS_VERSION,
          partCount: 0,
          recording,
        };
  const again =
    broke !== null && broke.id === id && recording.ticks - broke.recording.ticks < TRIED_AGAIN_TICKS;
  broke = stopped;
  const shownNow: TroubleShown = { place: 'ride', ride: stopped, kept: null, again };
  store.send({ kind: 'trouble', trouble: shownNow });
  if (journal === null) return;
  void halted.kept.then((kept) => {
    if (store.state().trouble === shownNow) store.send({ kind: 'trouble', trouble: { ...shownNow, kept } });
  });
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
void judging.markWaiting();
