/**
 * Keeps the ride on the screen the ride of the state: begins and ends it with its journal, hands finished
 * rides on to be marked and kept, and holds a ride still when something broke. What rides is fetched when the first
 * ride begins, so that the start page lives before it has arrived.
 */
import type { RideResult } from '../core/coach/results.ts';
import { PHYSICS_VERSION, type Recording } from '../core/ride/recording.ts';
import { onRoad } from '../core/settings/settings.ts';
import { outfitBeside } from '../core/settings/outfit.ts';
import type { Store } from '../state/createStore.ts';
import { settingsOfRide, TRIAL } from '../state/rideLevel.ts';
import type { RidePlaces } from '../state/ridePlaces.ts';
import { asksFirstSteps } from '../state/rideState.ts';
import type { RideFailure, RideShown, State } from '../state/store.ts';
import type { TroubleShown, UnfinishedRide } from '../state/unfinished.ts';
import { ridePlacesIn } from '../ui/rideSpot.tsx';
import type { Judging } from './device/scoring.ts';
import type { TroubleLog } from './device/trouble.ts';
import type { Clinic } from './group/clinic.ts';
import { preloadSettings } from './lazySettings.tsx';
import { preload } from './pageTable.ts';
import { bringWords } from './device/language.ts';
import type { Journal } from './ride/journal.ts';
import type { ScreenRide, ScreenRideOptions } from './ride/screenRide.ts';
import type { UnfinishedRides } from './ride/unfinishedRides.ts';
import type { RideLook } from './ride/views.ts';

/** A ride that stops again within so many ticks (ten seconds) was not helped by building it anew. */
const TRIED_AGAIN_TICKS = 1200;

interface RideHostOptions {
  readonly store: Store;
  readonly root: HTMLElement;
  readonly judging: Judging;
  readonly clinic: Pick<Clinic, 'finished'>;
  readonly unfinished: UnfinishedRides;
  readonly trouble: Pick<TroubleLog, 'note' | 'report'>;
  readonly look: () => RideLook;
}

/** The ride on the screen; nobody rides at first. */
export class RideHost {
  private readonly options: RideHostOptions;
  private screenRide: ScreenRide | null = null;
  private rideKey = '';
  /** The journal of the ride on the screen, until the ride is over. */
  private journal: Journal | null = null;
  /** Ride and trouble as they were shown last. */
  private shown: Pick<State, 'ride' | 'trouble'> = { ride: null, trouble: null };
  /** Where a ride was stopped last because something broke. */
  private broke: UnfinishedRide | null = null;

  constructor(options: RideHostOptions) {
    this.options = options;
  }

  /** To be called when the pages of a state have been drawn. */
  follow(state: State): void {
    const { view, rest, ride } = state;
    const key = view === 'ride' && ride !== null ? `${rest} ${ride.attempt}` : '';
    if (key === this.rideKey) {
      this.screenRide?.settingsChanged();
      if (ride?.phase === 'riding' && this.screenRide?.isPaused() === true) this.screenRide.resume();
    } else {
      this.stopRide(ride);
      const places = key === '' ? null : ridePlacesIn(this.options.root);
      if (ride !== null && places !== null) {
        this.rideKey = key;
        void this.fetchAndBegin(state, ride, places);
        // What is wanted when the ride ends, or is paused.
        void preload('debrief');
        void preloadSettings();
      }
    }
    this.shown = state;
  }

  /** Something broke somewhere: the ride stands still and waits, and one sentence says so. */
  onTrouble(): void {
    const { store } = this.options;
    const { ride, rest, trouble: told } = store.state();
    const halted = this.screenRide?.halt() ?? null;
    if (halted === null || ride === null) {
      const isKnown = told !== null || (ride !== null && ride.failed !== null);
      if (!isKnown)
        store.send({
          kind: 'found',
          found: { trouble: { place: 'page', ride: null, kept: null, again: false } },
        });
      return;
    }
    const { recording } = halted;
    const id = this.journal?.id ?? rest;
    const stopped = ride.watchFromM === null ? brokenOff(id, rest, ride, recording) : null;
    const before = this.broke;
    const again =
      before !== null && before.id === id && recording.ticks - before.recording.ticks < TRIED_AGAIN_TICKS;
    this.broke = stopped;
    const shownNow: TroubleShown = { place: 'ride', ride: stopped, kept: null, again };
    store.send({ kind: 'found', found: { trouble: shownNow } });
    if (this.journal === null) return;
    void halted.kept.then((kept) => {
      if (store.state().trouble === shownNow)
        store.send({ kind: 'found', found: { trouble: { ...shownNow, kept } } });
    });
  }

  /** Ends the ride on the screen. Who leaves it out of a pause wants it no more; any other end may be a mishap. */
  private stopRide(next: RideShown | null): void {
    this.screenRide?.destroy();
    this.screenRide = null;
    this.rideKey = '';
    const { journal, shown } = this;
    const goesOn = next?.goesOn?.id === journal?.id;
    if (journal === null || goesOn) return journal?.goOn();
    if (shown.ride?.phase === 'paused' && shown.trouble === null) void journal.drop();
    else journal.close();
    this.journal = null;
    void this.options.unfinished.look();
  }

  /** Fetches what rides, and begins if the same ride is still wanted. */
  private async fetchAndBegin(state: State, ride: RideShown, places: RidePlaces): Promise<void> {
    const key = this.rideKey;
    let why: RideFailure = 'not-fetched';
    try {
      const [{ startScreenRide }, { Journal }] = await Promise.all([
        import('./ride/screenRide.ts'),
        import('./ride/journal.ts'),
      ]);
      await bringWords();
      if (this.rideKey !== key) return;
      why = 'broken';
      this.screenRide = startScreenRide(this.wishesFor(state, ride, places, Journal));
    } catch (error) {
      if (this.rideKey === key) this.failRide(why, error);
    }
  }

  private wishesFor(
    state: State,
    ride: RideShown,
    places: RidePlaces,
    journalOf: typeof Journal,
  ): ScreenRideOptions {
    const { rest, last } = state;
    const { store, judging, unfinished, trouble, look } = this.options;
    const { level, watchFromM, group, goesOn } = ride;
    const lookNow = (): RideLook => {
      const now = look();
      const { showPads } = now;
      const settings = settingsOfRide(now.settings, ride);
      if (group !== null) return { ...now, settings };
      // Play is two big pads, on every device that is not told to have none.
      if (level.carries !== undefined)
        return {
          ...now,
          showPads: showPads || settings.pads === 'auto',
          settings: state.friendRides ? { ...settings, kit: outfitBeside(settings.kit) } : settings,
          ...(state.friendRides ? { friendKit: settings.kit } : {}),
        };
      return now;
    };
    const { bike, rider, autoEase } = goesOn?.recording ?? onRoad(lookNow().settings);
    const watching =
      watchFromM === null || last === null ? null : { recording: last.recording, fromM: watchFromM };
    const reference =
      watching === null ? judging.expect({ level, seed: level.seed, bike, rider, autoEase }) : () => null;
    if (watching === null && rest !== TRIAL)
      this.journal ??= unfinished.begin(
        { level, rest, turn: group, bike, rider, autoEase },
        goesOn,
        journalOf,
      );
    return {
      places,
      level,
      rest,
      watching,
      goesOn: goesOn?.recording ?? null,
      journal: this.journal,
      reference,
      known: knownRides(state, ride),
      firstSteps: asksFirstSteps(ride, state)
        ? {
            show: (shown) => store.send({ kind: 'ride', shows: { firstSteps: shown } }),
            onDone: () => store.send({ kind: 'set', settings: { leversKnown: true } }),
          }
        : null,
      look: lookNow,
      onPhase: (phase, countdownS) => store.send({ kind: 'ride', shows: { phase, countdownS } }),
      onFailed: (why, error) => this.failRide(why, error),
      onBroken: (error) => trouble.report('frame', error),
      onFinished: (result) => this.finishRide(result, ride),
    };
  }

  private failRide(why: RideFailure, error: unknown): void {
    this.options.trouble.note('ride', error);
    this.options.store.send({ kind: 'ride', shows: { failed: why } });
  }

  private finishRide(result: RideResult, { group, watchFromM }: RideShown): void {
    const { store, clinic, judging } = this.options;
    const ridden = this.journal;
    this.journal = null;
    store.send({ kind: 'ride-finished', result });
    if (watchFromM !== null) return;
    // Until the ride is kept as a whole, its journal stays.
    const onKept = (): void => void ridden?.drop();
    if (group !== null) void clinic.finished(group, result, onKept);
    else void judging.judge(result, judging.shelfOf(ridden?.id ?? '', result, onKept));
  }
}

/** What is known of rides that may be seen beside this one. Nobody rides beside in check rides and in a group, where all ride alike. */
function knownRides(
  { last, results, unmarked }: State,
  { level, watchFromM, group }: RideShown,
): ScreenRideOptions['known'] {
  if (level.teaches === 'check' || group !== null) return null;
  const before = [...results, ...unmarked].some(({ levelId }) => levelId === level.id);
  return { last: last?.rest === TRIAL ? null : last, before: before || watchFromM !== null };
}

function brokenOff(id: string, rest: string, ride: RideShown, recording: Recording): UnfinishedRide {
  const { level, group } = ride;
  const physicsVersion = PHYSICS_VERSION;
  return { id, atMs: Date.now(), rest, level, turn: group, physicsVersion, partCount: 0, recording };
}
