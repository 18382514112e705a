/**
 * Keeps the ride on the screen the ride of the state: begins and ends sessions with their journals, hands finished
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
import { asksFirstSteps, type RideFailure, type RideShown, type State } from '../state/store.ts';
import type { TroubleShown, UnfinishedRide } from '../state/unfinished.ts';
import { ridePlacesIn } from '../ui/rideSpot.tsx';
import type { Judging } from './device/scoring.ts';
import type { TroubleLog } from './device/trouble.ts';
import type { Clinic } from './group/clinic.ts';
import { preloadSettings } from './lazySettings.tsx';
import { preload } from './pageTable.ts';
import { bringWords } from './device/language.ts';
import type { Journal, openJournal as OpenJournal } from './ride/journal.ts';
import type { RideSession, SessionOptions } from './ride/session.ts';
import type { UnfinishedRides } from './ride/unfinishedRides.ts';
import type { RideLook } from './ride/views.ts';

/** A ride that stops again within so many ticks (ten seconds) was not helped by building it anew. */
const TRIED_AGAIN_TICKS = 1200;

/** What the host is joined to. */
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
  private session: RideSession | null = null;
  private sessionKey = '';
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
    if (key === this.sessionKey) {
      this.session?.settingsChanged();
      if (ride?.phase === 'riding' && this.session?.isPaused() === true) this.session.resume();
    } else {
      this.stopSession(ride);
      const places = key === '' ? null : ridePlacesIn(this.options.root);
      if (ride !== null && places !== null) {
        this.sessionKey = key;
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
    const halted = this.session?.halt() ?? null;
    if (halted === null || ride === null) {
      const isKnown = told !== null || (ride !== null && ride.failed !== null);
      if (!isKnown)
        store.send({ kind: 'trouble', trouble: { place: 'page', ride: null, kept: null, again: false } });
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
    store.send({ kind: 'trouble', trouble: shownNow });
    if (this.journal === null) return;
    void halted.kept.then((kept) => {
      if (store.state().trouble === shownNow) store.send({ kind: 'trouble', trouble: { ...shownNow, kept } });
    });
  }

  /** Ends the ride on the screen. Who leaves it out of a pause wants it no more; any other end may be a mishap. */
  private stopSession(next: RideShown | null): void {
    this.session?.destroy();
    this.session = null;
    this.sessionKey = '';
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
    const key = this.sessionKey;
    let why: RideFailure = 'not-fetched';
    try {
      const [{ startRideSession }, { openJournal }] = await Promise.all([
        import('./ride/session.ts'),
        import('./ride/journal.ts'),
      ]);
      await bringWords();
      if (this.sessionKey !== key) return;
      why = 'broken';
      this.session = startRideSession(this.wishesFor(state, ride, places, openJournal));
    } catch (error) {
      if (this.sessionKey === key) this.failRide(why, error);
    }
  }

  private wishesFor(
    state: State,
    ride: RideShown,
    places: RidePlaces,
    openJournal: typeof OpenJournal,
  ): SessionOptions {
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
        openJournal,
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
            show: (shown) => store.send({ kind: 'first-steps', shown }),
            onDone: () => store.send({ kind: 'set', settings: { leversKnown: true } }),
          }
        : null,
      look: lookNow,
      onPhase: (phase, countdownS) => store.send({ kind: 'ride-phase', phase, countdownS }),
      onFailed: (why, error) => this.failRide(why, error),
      onBroken: (error) => trouble.report('frame', error),
      onFinished: (result) => this.finishRide(result, ride),
    };
  }

  private failRide(why: RideFailure, error: unknown): void {
    this.options.trouble.note('ride', error);
    this.options.store.send({ kind: 'ride-failed', why });
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
): SessionOptions['known'] {
  if (level.teaches === 'check' || group !== null) return null;
  const before = [...results, ...unmarked].some(({ levelId }) => levelId === level.id);
  return { last: last?.rest === TRIAL ? null : last, before: before || watchFromM !== null };
}

/** A ride as it was when it was stopped. */
function brokenOff(id: string, rest: string, ride: RideShown, recording: Recording): UnfinishedRide {
  const { level, group } = ride;
  const physicsVersion = PHYSICS_VERSION;
  return { id, atMs: Date.now(), rest, level, turn: group, physicsVersion, partCount: 0, recording };
}
