/**
 * The entry: makes the store and joins it to what keeps, marks and rides, to the document and to the address bar.
 * Pages draw; whatever follows the state after them is called here, in this order.
 */
import './ui/theme.css';
import './ui/parts.css';
import './ui/dialogs.css';
import './app/device/framed.ts';
import './ui/arrival.css';
import './features/start/start.css';
import './ui/pages.css';
import './ui/kept.css';
import './ui/print.css';
import './features/ride/ride.css';
import './ui/forced.css';
import './input/pads.css';
import { render } from 'preact';
import { App } from './app/app.tsx';
import { changeLanguage, firstWords } from './app/device/language.ts';
import { joinJudging } from './app/device/scoring.ts';
import { joinKeeping } from './app/device/persistence.ts';
import { followScanning } from './app/device/scanning.ts';
import { openTroubleLog } from './app/device/trouble.ts';
import { joinOffline } from './app/device/updates.ts';
import { keepAwake } from './app/device/wakeLock.ts';
import { joinClinic } from './app/group/clinic.ts';
import { joinServices } from './app/joinServices.ts';
import { bundledLevels } from './app/levels.ts';
import { joinUnfinished } from './app/ride/unfinishedRides.ts';
import { RideHost } from './app/rideHost.ts';
import { joinRouter } from './app/router.ts';
import { lookOf, markDocument, onMotionChange, paperColour, usualTheme } from './app/theme.ts';
import { DEFAULT_KEYS } from './core/settings/settings.ts';
import { parseAddress } from './state/address.ts';
import { createStore } from './state/createStore.ts';
import { initialState } from './state/reduce.ts';
import type { State } from './state/store.ts';
import { unitsOf } from './words/format.ts';

// Nothing is shown before there are words for it.
await firstWords(parseAddress(location.hash).view !== 'ride');
const units = unitsOf(navigator.language);
const store = createStore(
  initialState(bundledLevels(units), DEFAULT_KEYS, location.hash, {
    units,
    theme: usualTheme(),
  }),
);
const root = document.getElementById('app') as HTMLElement;
const look = () => lookOf(store.state());
const trouble = openTroubleLog(window, () => rideHost.onTrouble());
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
const rideHost = new RideHost({ store, root, judging, clinic, unfinished, trouble, look });
const router = joinRouter(root, store.state(), (address) => store.send({ kind: 'address', address }));
const awake = keepAwake();

/** By then a picture has been made of what was drawn. */
const AFTER_PICTURE_MS = 40;
const draw = (state: State, onlyDialog: boolean): void =>
  render(<App state={state} send={store.send} services={services} onlyDialog={onlyDialog} />, root);

function show(state: State): void {
  markDocument(state);
  draw(state, state.dialog === 'settings' && spokenIn(state) !== spoken);
  rideHost.follow(state);
  followScanning(state.settings);
  const { view, ride } = state;
  awake.want(view === 'ride' && (ride?.phase === 'ready' || ride?.phase === 'riding'));
  // Last, since it gives the focus away: a browser that refuses holds up nothing else.
  router.follow(state);
}

/**
 * Another language is shown when its words have come; what is on the screen goes on, and is not drawn for the choice
 * itself. The dialog it is chosen in comes first, what lies below it with a picture after it: all at once would be felt
 * on slow devices. Bundled levels are said anew, as they are for other units.
 */
const spokenIn = ({ settings }: State): string => settings.language + settings.units;
let spoken = spokenIn(store.state());
function followWords(state: State): void {
  if (spokenIn(state) === spoken) return;
  spoken = spokenIn(state);
  void changeLanguage(state.settings.language).then(() => {
    draw(store.state(), true);
    setTimeout(() => {
      store.send({ kind: 'found', found: { levels: bundledLevels(store.state().settings.units) } });
    }, AFTER_PICTURE_MS);
  });
}

store.subscribe(show);
store.subscribe(followWords);
onMotionChange(() => markDocument(store.state()));
show(store.state());
// Without its colours the page has not come whole, and what the sentence in `index.html` says is true.
if (paperColour() !== '') document.getElementById('arrival')?.remove();
void judging.markWaiting();
