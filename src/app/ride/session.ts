/**
 * One ride from loading to finish: joins core, input, picture, instruments and sound around the loop, pauses when
 * nobody looks, and hands back the recording. Knows no pages beyond the places it fills.
 */
import { createGuide, type Guide } from '../../core/coach/guide.ts';
import type { RideResult } from '../../core/coach/results.ts';
import { courseOfLevel, levelHash } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { setupOfJob } from '../../core/ride/job.ts';
import type { Recording } from '../../core/ride/recording.ts';
import { type LiveRide, startRide } from '../../core/ride/run.ts';
import type { RideTrace } from '../../core/ride/trace.ts';
import type { RideCommand } from '../../core/ride/types.ts';
import { buildRideWorld } from '../../core/ride/world.ts';
import { createGamepads } from '../../input/gamepad.ts';
import { shake } from '../../input/haptic.ts';
import type { InputCommand } from '../../input/actions.ts';
import { createInputHub, type InputHub } from '../../input/hub.ts';
import { listenToKeys } from '../../input/keyboard.ts';
import { createFormat } from '../../words/format.ts';
import { firstStepsAloud } from '../../words/firstSteps.ts';
import type { RidePhaseShown, RidePlaces } from '../../state/ridePlaces.ts';
import { createFirstSteps, type FirstSteps, type FirstStepShown } from '../../state/firstSteps.ts';
import { actionOf, aidsFor, aidsWhile, createRideHelp } from './aids.ts';
import { type KeyAction, onRoad } from '../../core/settings/settings.ts';
import type { Journal } from './journal.ts';
import type { RideFailure } from '../../state/store.ts';
import { lettingGo, playTo, rideAgain } from './replay.ts';
import { createGuidance, type SpokenGuidance } from './guidance.ts';
import { ALL_APPLES, countApples } from '../../core/coach/apples.ts';
import type { BesideRides } from './beside.ts';
import { type RideSound, loadSound } from './sound.ts';
import { createVoice } from './voice.ts';
import { createRideLoop, type RideLoop } from './loop.ts';
import {
  buildViews,
  loadRideRooms,
  looksDifferent,
  type RideLook,
  type RideRooms,
  type RideViews,
} from './views.ts';

declare global {
  interface Window {
    /** Set by tests before a ride: multiplies ride time and shortens countdowns. */
    __rideTestSpeed?: number;
  }
}

/** What a session needs. */
export interface SessionOptions {
  readonly places: RidePlaces;
  readonly level: Level;
  /** Address of this ride, handed on with the result. */
  readonly rest: string;
  /** A finished ride to be watched from a place on, or null for riding. */
  readonly watching: { readonly recording: Recording; readonly fromM: number } | null;
  /** What was ridden before the ride broke off, or null for a ride from its beginning. */
  readonly goesOn: Recording | null;
  /** Keeps the ride while it is ridden; null where it is not to be kept. */
  readonly journal: Journal | null;
  /** The best ride, once it is known; null while it is not. */
  readonly reference: () => RideTrace | null;
  /** Rides that may be seen beside as silhouettes: the last one here, and whether this road was ridden before; null where nobody is seen. */
  readonly known: {
    readonly last: (RideResult & { readonly reference: RideTrace | null }) | null;
    readonly before: boolean;
  } | null;
  /** Somebody else starts so much earlier (s of real time). */
  readonly waitS?: number;
  /** Number of the only gamepad that counts; any of them without it. */
  readonly gamepad?: number;
  /** Shows the first steps with the levers, and hears that they were done; null where they are not asked for. */
  readonly firstSteps: {
    readonly show: (shown: FirstStepShown | null) => void;
    readonly onDone: () => void;
  } | null;
  /** Looks now; asked again when a ride goes on. */
  readonly look: () => RideLook;
  readonly onPhase: (phase: RidePhaseShown, countdownS: number | null) => void;
  /** How far it has come (m), once per picture. */
  readonly onPlace?: (distanceM: number) => void;
  /** The ride cannot begin. */
  readonly onFailed: (why: RideFailure, error: unknown) => void;
  /** Something broke in the middle of the ride; `halt` stops it. */
  readonly onBroken: (error: unknown) => void;
  readonly onFinished: (result: RideResult) => void;
}

/** A ride on the screen. */
export interface RideSession {
  /** Paused, and somebody wants to ride on. */
  isPaused(): boolean;
  resume(): void;
  /** Volumes, mute, hold or switch have been changed. */
  settingsChanged(): void;
  /**
   * Something broke: nothing of it moves any more, only its recording is left. Null where there is nothing to stop,
   * because the ride is over or was stopped before.
   */
  halt(): HaltedRide | null;
  destroy(): void;
}

/** What is left of a ride that was stopped. */
interface HaltedRide {
  readonly recording: Recording;
  /** True once all of it is in the journal. */
  readonly kept: Promise<boolean>;
}

/**
 * The pedals turn when the journal has begun, or after so long (ms): a browser that has much to do opens its database
 * late, and what is ridden before then would be lost with the tab.
 */
const JOURNAL_WAIT_MS = 5000;
/** A ride whose picture is asked for no more stands still without a word; looked for so often (ms), it is stopped with one. */
const LOOK_EVERY_MS = 1000;
const MOST_LOOKS_WITHOUT_PICTURE = 4;
/** Rolled between two of the first steps (s of ride time). */
const FIRST_STEP_ROLL_S = 2.2;
/** Legs are soft by themselves for so long at the first two shifts (s of ride time). */
const FIRST_SHIFT_SOFT_S = 1;
/** Whoever does nothing for so long at one of them rides on (ms). */
const FIRST_STEP_PATIENCE_MS = 15_000;
/** By ear a voice first says where one is; what is asked for comes after that (ms). */
const FIRST_STEP_NAMED_MS = 1000;
/** Asked for while paused, when no picture asks (ms). */
const PAUSED_POLL_MS = 100;

/**
 * Browsers call a script that did not come a TypeError, each in its own words; a style that did not come is told by the
 * build. Anything else was thrown by what did come.
 */
export function whyNotLoaded(error: unknown): RideFailure {
  const isMissing =
    error instanceof TypeError || String((error as Error | null)?.message).startsWith('Unable to preload');
  return isMissing ? 'not-fetched' : 'broken';
}

/** Starts loading; the ride begins as soon as everything is there. */
export function startRideSession(options: SessionOptions): RideSession {
  const session = new Session(options);
  void session.load();
  return session;
}

class Session implements RideSession {
  readonly #options: SessionOptions;
  readonly #ride: LiveRide;
  readonly #loop: RideLoop;
  readonly #guide: Guide;
  readonly #hub: InputHub;
  readonly #firstSteps: FirstSteps | null;
  readonly #stops: (() => void)[] = [];
  #look: RideLook;
  /** Settings as they are now; those the picture was built with may be older. */
  #settings: RideLook['settings'];
  #rooms: RideRooms | null = null;
  #views: RideViews | null = null;
  #ears: RideSound | null = null;
  #ear: SpokenGuidance | null = null;
  #destroyed = false;
  #begun = false;
  #halted = false;
  #looksWithoutPicture = 0;
  /** Something happened that the journal should have at once. */
  #shifted = false;
  /** Remark and cue that were made last. */
  #remarked: string | null = null;
  #cued: string | null = null;
  #apples = ALL_APPLES;
  readonly #voice = createVoice();
  /** Until then the legs are soft by themselves; null when they are the player's. */
  #softUntilTick: number | null = null;

  constructor(options: SessionOptions) {
    this.#options = options;
    this.#look = options.look();
    this.#settings = this.#look.settings;
    const { watching, goesOn } = options;
    const { bike, rider, autoEase } = watching?.recording ?? goesOn ?? onRoad(this.#look.settings);
    this.#ride = startRide(buildRideWorld(courseOfLevel(options.level), bike, rider, { autoEase }));
    if (goesOn !== null) rideAgain(this.#ride, goesOn);
    const script = watching === null ? null : playTo(this.#ride, watching.recording, watching.fromM);
    const speed = (): number => window.__rideTestSpeed ?? 1;
    this.#firstSteps =
      options.firstSteps === null
        ? null
        : createFirstSteps({
            autoEase,
            rollTicks: Math.round(FIRST_STEP_ROLL_S / this.#ride.world.tickS),
            lookMs: (this.#look.settings.byEar ? FIRST_STEP_NAMED_MS : 0) / speed(),
            patienceMs: FIRST_STEP_PATIENCE_MS / speed(),
            show: (shown) => this.#showFirstSteps(shown),
            onDone: options.firstSteps.onDone,
          });
    this.#hub = createInputHub(this.#settings.holdMode, (command) => this.#onCommand(command));
    this.#guide = createGuide(this.#ride.world, options.reference);
    const help = createRideHelp(this.#ride, this.#guide, options.level);
    const aids = aidsWhile(options.level, () => this.#look.settings);
    this.#loop = createRideLoop({
      ride: this.#ride,
      level: options.level,
      aids,
      guided: () => this.#guide.knows(),
      pace: () => this.#look.settings.paceRatio * speed(),
      countPace: speed(),
      waitS: options.waitS ?? 0,
      brakesAtLines: () => watching === null && autoEase && !this.#hub.now().braking,
      script,
      firstSteps: this.#firstSteps,
      listeners: {
        frame: (frame) => {
          this.#views?.frame(frame);
          this.#endSoftFeet();
          // One voice: during the first steps nothing else is asked for.
          if (this.#views !== null && this.#isFreeToShift())
            help.frame(frame, aids(), this.#views, this.#look);
          this.#countApples();
          options.journal?.note(this.#ride, this.#shifted);
          this.#shifted = false;
          if (this.#loop.mode() !== 'riding') return;
          this.#ears?.frame(frame);
          this.#ears?.music(frame, this.#settings);
          // During the first steps they alone are spoken, and no tone judges legs that stand still.
          if (this.#isFreeToShift()) this.#ear?.frame(frame);
          else this.#ear?.stop();
        },
        events: (events) => {
          this.#views?.events(events);
          this.#ears?.events(events);
          shake(events);
          if (events.some((event) => event.kind === 'stopped-at-line')) this.#hub.letGoBrake();
          if (events.some((event) => event.kind === 'finished')) {
            this.#shifted = true;
            options.onPhase('finished', null);
          }
        },
        say: (cue, remark) => this.#say(cue, remark),
        beat: () => {
          this.#views?.help.beat();
          this.#ears?.cueTick();
        },
        count: (secondsLeft) => {
          if (secondsLeft === null) this.#begun = true;
          options.onPhase(this.#begun ? 'riding' : 'ready', secondsLeft);
        },
        over: () => this.#finish(),
      },
    });
    if (goesOn !== null) for (const command of lettingGo(this.#ride.now)) this.#loop.command(command);
  }

  async load(): Promise<void> {
    if (document.createElement('canvas').getContext('2d') === null) {
      this.#options.onFailed('no-canvas', new Error('no canvas'));
      return;
    }
    // A ride without sound is a ride; without a picture it is none.
    void loadSound(this.#look).then(
      (ears) => {
        if (this.#destroyed) ears.stop();
        else this.#ears = ears;
      },
      () => undefined,
    );
    try {
      const rooms = await loadRideRooms();
      await this.#options.journal?.begun(JOURNAL_WAIT_MS);
      this.#rooms = rooms;
    } catch (error) {
      if (!this.#destroyed) this.#options.onFailed(whyNotLoaded(error), error);
      return;
    }
    try {
      if (!this.#destroyed) this.#begin();
    } catch (error) {
      this.#options.onFailed('broken', error);
    }
  }

  isPaused(): boolean {
    return this.#loop.mode() === 'paused';
  }

  resume(): void {
    if (!this.isPaused() || this.#destroyed || this.#halted) return;
    if (looksDifferent(this.#look, this.#options.look())) {
      this.#build();
      const shown = this.#firstSteps?.shown() ?? null;
      if (shown !== null) this.#showFirstSteps(shown);
    }
    this.#loop.resume();
    this.#views?.setPaused(false);
  }

  settingsChanged(): void {
    this.#settings = this.#options.look().settings;
    const { volumes, muted, holdMode, leversKnown } = this.#settings;
    if (leversKnown) this.#firstSteps?.end();
    this.#ears?.setVolumes(volumes);
    this.#ears?.setMuted(muted);
    this.#hub.setMode(holdMode);
  }

  halt(): HaltedRide | null {
    const { journal, watching } = this.#options;
    if (this.#halted || this.#destroyed || this.#rooms === null) return null;
    if (this.#ride.now.phase === 'finished') {
      // Nothing was left to do but to look at the finish for a moment.
      if (this.#loop.mode() === 'over') this.#finish();
      return null;
    }
    this.#halted = true;
    this.#loop.pause();
    quietly(() => this.#views?.setPaused(true));
    quietly(() => this.#ears?.pause());
    quietly(() => this.#ear?.stop());
    this.#options.onPhase('paused', null);
    const kept = journal === null || watching !== null ? Promise.resolve(false) : journal.flush(this.#ride);
    return { recording: this.#recording(), kept };
  }

  destroy(): void {
    if (this.#destroyed) return;
    this.#destroyed = true;
    // Whatever of it is broken must not keep the rest.
    for (const stop of this.#stops) quietly(stop);
    quietly(() => this.#views?.destroy());
    this.#views = null;
    quietly(() => this.#ear?.stop());
    quietly(() => this.#voice.stop());
    quietly(() => this.#ears?.stop());
    this.#ears = null;
  }

  #onCommand(command: InputCommand): void {
    if (command.kind === 'pause') return this.#togglePause();
    const action = actionOfCommand(command);
    const isStep = action !== null && action === this.#firstSteps?.shown()?.asked;
    if (action !== null && this.#firstSteps?.takes(action) === false) return;
    if (isStep && command.kind === 'shift') this.#beginSoftFeet();
    if (this.#options.watching === null) this.#loop.command(command);
    this.#shifted ||= command.kind === 'shift';
  }

  #say(cue: string | null, remark: string | null): void {
    const isFree = this.#isFreeToShift();
    if (isFree && remark !== null && remark !== this.#remarked) this.#ear?.mention(remark);
    this.#remarked = remark;
    const lang = cue !== null && this.#isOwnText(cue) ? this.#options.level.lang : undefined;
    if (isFree && cue !== null && cue !== this.#cued && this.#isSpokenTo()) this.#voice.say(cue, lang);
    this.#cued = cue;
    this.#views?.say(isFree ? cue : null, isFree ? remark : null, lang);
  }

  /** Remarks somebody wrote are in the language of their level. */
  #isOwnText(cue: string): boolean {
    return this.#options.level.cues.some((one) => 'text' in one && one.text === cue);
  }

  #isSpokenTo(): boolean {
    const { childVoice, byEar, muted } = this.#settings;
    return this.#options.level.audience === 'children' && childVoice && !byEar && !muted;
  }

  /** What hops out of the basket is heard and seen at once. */
  #countApples(): void {
    if (this.#options.level.carries === undefined) return;
    const before = this.#apples.spilled;
    this.#apples = countApples(this.#ride.trace, this.#apples);
    if (this.#apples.spilled === before) return;
    this.#views?.spill(this.#apples.spilled);
    if (this.#loop.mode() === 'riding') this.#ears?.apple();
  }

  #isFreeToShift(): boolean {
    return (this.#firstSteps?.shown() ?? null) === null;
  }

  /** Nobody has heard of soft feet at the first two shifts: the legs have them by themselves. */
  #beginSoftFeet(): void {
    this.#loop.command({ kind: 'pressure', pressure: 'ease' });
    this.#softUntilTick = this.#ride.now.tick + Math.round(FIRST_SHIFT_SOFT_S / this.#ride.world.tickS);
  }

  #endSoftFeet(): void {
    if (this.#softUntilTick === null || this.#ride.now.tick < this.#softUntilTick) return;
    this.#softUntilTick = null;
    this.#loop.command({ kind: 'pressure', pressure: this.#hub.now().pressure });
  }

  #showFirstSteps(shown: FirstStepShown | null): void {
    const asked = shown?.asked ?? null;
    // Feet that are soft already need not be so once more.
    if (asked === 'ease' && this.#hub.now().pressure === 'ease') {
      this.#firstSteps?.takes('ease');
      return;
    }
    this.#views?.want(asked === null ? [] : [asked]);
    const { settings } = this.#look;
    if (shown !== null) this.#ear?.tell(firstStepsAloud(shown, settings));
    this.#options.firstSteps?.show(shown);
  }

  #begin(): void {
    this.#build();
    const gamepads = createGamepads(
      this.#hub,
      () => this.#look.settings.padButtons,
      undefined,
      this.#options.gamepad,
    );
    const onHidden = (): void => {
      if (document.hidden) this.#pause();
    };
    const onBlur = (): void => this.#pause();
    const poll = window.setInterval(
      () => this.isPaused() && gamepads.poll(performance.now()),
      PAUSED_POLL_MS,
    );
    const look = window.setInterval(() => this.#lookForPicture(), LOOK_EVERY_MS);
    document.addEventListener('visibilitychange', onHidden);
    window.addEventListener('blur', onBlur);
    this.#stops.push(
      listenToKeys({
        target: window,
        hub: this.#hub,
        keys: () => this.#settings.keys,
        active: () => this.#loop.mode() === 'riding' || this.#loop.mode() === 'counting',
      }),
      () => document.removeEventListener('visibilitychange', onHidden),
      () => window.removeEventListener('blur', onBlur),
      () => window.clearInterval(poll),
      () => window.clearInterval(look),
    );
    this.#pollPads = (timeMs) => gamepads.poll(timeMs);
    if (document.hidden) this.#pause();
  }

  /** A browser that is busy lets looks wait as well, so they are counted and not the time. */
  #lookForPicture(): void {
    const mode = this.#loop.mode();
    const isAsked = (mode === 'riding' || mode === 'counting') && !document.hidden && !this.#halted;
    this.#looksWithoutPicture = isAsked ? this.#looksWithoutPicture + 1 : 0;
    if (this.#looksWithoutPicture === MOST_LOOKS_WITHOUT_PICTURE)
      this.#options.onBroken(new Error('no picture is asked for'));
  }

  #pollPads: (timeMs: number) => void = () => undefined;

  #build(): void {
    if (this.#rooms === null) return;
    this.#views?.destroy();
    this.#look = this.#options.look();
    this.#listen();
    this.#views = buildViews({
      rooms: this.#rooms,
      places: this.#options.places,
      level: this.#options.level,
      aids: aidsFor(this.#options.level, this.#look.settings),
      world: this.#ride.world,
      look: this.#look,
      hub: this.#hub,
      beside: besideRides(this.#options),
      nextFrame: (timeMs) => {
        this.#looksWithoutPicture = 0;
        this.#pollPads(timeMs);
        this.#hub.poll(timeMs);
        const frame = this.#loop.nextFrame(timeMs);
        this.#options.onPlace?.(frame.distanceM);
        return frame;
      },
      onBroken: this.#options.onBroken,
    });
    this.#views.spill(this.#apples.spilled);
  }

  /** For those who ride by ear; a ride by eye says nothing of it. */
  #listen(): void {
    const { settings } = this.#look;
    const { places, level } = this.#options;
    this.#ear?.stop();
    this.#ear = settings.byEar
      ? createGuidance({
          world: this.#ride.world,
          hint: (frame) => (aidsFor(level, settings).nextStep ? this.#guide.hint(frame) : null),
          format: createFormat(settings.units),
          place: places.ear,
          tone: (hz) => this.#ears?.tone(hz, this.#settings),
        })
      : null;
  }

  #togglePause(): void {
    if (this.#halted) return;
    if (this.isPaused()) this.resume();
    else this.#pause();
  }

  #pause(): void {
    if (this.#loop.mode() === 'over' || this.isPaused() || this.#destroyed) return;
    this.#hub.releaseAll();
    this.#firstSteps?.waitAnew();
    this.#loop.pause();
    this.#views?.setPaused(true);
    this.#ears?.pause();
    this.#ear?.stop();
    void this.#options.journal?.flush(this.#ride);
    this.#options.onPhase('paused', null);
  }

  #finish(): void {
    const { level, rest } = this.#options;
    this.#options.onFinished({ level, rest, recording: this.#recording(), trace: this.#ride.trace });
  }

  #recording(): Recording {
    const { level } = this.#options;
    const { bike, rider } = this.#ride.world.machine;
    const { autoEase } = this.#ride.world;
    return this.#ride.recording(setupOfJob({ level, seed: level.seed, bike, rider, autoEase }));
  }
}

/** The best ride and the rider's own last one, from the second ride of a road on; in a ride that is watched only the best. */
function besideRides({ known, level, reference, watching }: SessionOptions): BesideRides | null {
  if (known === null) return null;
  const { last, before } = known;
  const isSame = last !== null && last.level.id === level.id && levelHash(last.level) === levelHash(level);
  if (watching !== null) return { best: () => last?.reference ?? null, last: null };
  return isSame || before ? { best: reference, last: isSame ? last.trace : null } : null;
}

/** What a hand did; letting go is nothing. */
function actionOfCommand(command: RideCommand): KeyAction | null {
  if (command.kind === 'shift') return actionOf(command);
  if (command.kind === 'brake') return command.on ? 'brake' : null;
  return command.pressure === 'steady' ? null : command.pressure;
}

/** Does something to what may be broken. */
function quietly(work: () => void): void {
  try {
    work();
  } catch {
    // It was broken before.
  }
}
