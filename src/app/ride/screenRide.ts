/**
 * One ride from loading to finish: joins core, hands, picture, instruments and sound around the loop, and hands back the
 * recording. What each of them does, and what is said, lies in the files beside it; pages are not known here, only the
 * places they have for a ride.
 */
import { createGuide, type Guide } from '../../core/coach/guide.ts';
import type { RideResult } from '../../core/coach/results.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { setupOfJob } from '../../core/ride/job.ts';
import type { Recording } from '../../core/ride/recording.ts';
import { type LiveRide, startRide } from '../../core/ride/run.ts';
import type { RideTrace } from '../../core/ride/trace.ts';
import { buildRideWorld } from '../../core/ride/world.ts';
import { shake } from '../../input/haptic.ts';
import { createInputHub, type InputCommand, type InputHub } from '../../input/hub.ts';
import { createFormat } from '../../words/format.ts';
import { firstStepsAloud } from '../../words/firstSteps.ts';
import type { RidePhaseShown, RidePlaces } from '../../state/ridePlaces.ts';
import type { FirstStepShown } from '../../state/firstSteps.ts';
import { aidsFor, aidsWhile, createRideHelp } from './aids.ts';
import { onRoad } from '../../core/settings/settings.ts';
import type { Journal } from './journal.ts';
import type { RideFailure } from '../../state/store.ts';
import { lettingGo, playTo, rideAgain } from './replay.ts';
import { createGuidance, type SpokenGuidance } from './guidance.ts';
import { ALL_APPLES, countApples } from '../../core/coach/apples.ts';
import { type KnownRides, ridesBeside } from './beside.ts';
import { firstStepsOf } from './firstSteps.ts';
import { joinHands } from './hands.ts';
import { watchPicture } from './pictureWatch.ts';
import { createSaid } from './said.ts';
import { type RideSound, loadSound } from './sound.ts';
import { type LoopOptions, RideLoop } from './loop.ts';
import {
  buildViews,
  loadRideRooms,
  looksDifferent,
  type RideLook,
  type RideRooms,
  type RideViews,
  whyNotLoaded,
} from './views.ts';

declare global {
  interface Window {
    /** Set by tests before a ride: multiplies ride time and shortens countdowns. */
    __rideTestSpeed?: number;
  }
}

export interface ScreenRideOptions {
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
  readonly known: KnownRides | null;
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
  readonly onFailed: (why: RideFailure, error: unknown) => void;
  /** Something broke in the middle of the ride; `halt` stops it. */
  readonly onBroken: (error: unknown) => void;
  readonly onFinished: (result: RideResult) => void;
}

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

/** Starts loading; the ride begins as soon as everything is there. */
export function startScreenRide(options: ScreenRideOptions): ScreenRide {
  const ride = new ScreenRide(options);
  void ride.load();
  return ride;
}

export class ScreenRide {
  readonly #options: ScreenRideOptions;
  readonly #ride: LiveRide;
  readonly #loop: RideLoop;
  readonly #guide: Guide;
  readonly #help: ReturnType<typeof createRideHelp>;
  readonly #aids: ReturnType<typeof aidsWhile>;
  readonly #hub: InputHub;
  readonly #firstSteps: ReturnType<typeof firstStepsOf>;
  readonly #said: ReturnType<typeof createSaid>;
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
  #hands: ReturnType<typeof joinHands> | null = null;
  #watch: ReturnType<typeof watchPicture> | null = null;
  /** Something happened that the journal should have at once. */
  #shifted = false;
  #apples = ALL_APPLES;

  constructor(options: ScreenRideOptions) {
    this.#options = options;
    this.#look = options.look();
    this.#settings = this.#look.settings;
    const { watching, goesOn } = options;
    const { bike, rider, autoEase } = watching?.recording ?? goesOn ?? onRoad(this.#look.settings);
    this.#ride = startRide(buildRideWorld(courseOfLevel(options.level), bike, rider, { autoEase }));
    if (goesOn !== null) rideAgain(this.#ride, goesOn);
    const script = watching === null ? null : playTo(this.#ride, watching.recording, watching.fromM);
    const speed = (): number => window.__rideTestSpeed ?? 1;
    this.#hub = createInputHub(this.#settings.holdMode, (command) => this.#onCommand(command));
    this.#firstSteps = firstStepsOf({
      isAsked: options.firstSteps !== null,
      ride: this.#ride,
      hub: this.#hub,
      byEar: this.#look.settings.byEar,
      speed: speed(),
      command: (command) => this.#loop.command(command),
      show: (shown) => this.#showFirstSteps(shown),
      onDone: () => options.firstSteps?.onDone(),
    });
    this.#said = createSaid({
      level: options.level,
      settings: () => this.#settings,
      views: () => this.#views,
      ear: () => this.#ear,
      handsTold: () => this.#help.tellsHands(),
    });
    this.#guide = createGuide(this.#ride.world, options.reference);
    this.#help = createRideHelp(this.#ride, this.#guide, options.level);
    this.#aids = aidsWhile(options.level, () => this.#look.settings);
    this.#loop = new RideLoop({
      ride: this.#ride,
      level: options.level,
      aids: this.#aids,
      guided: () => this.#guide.knows(),
      pace: () => this.#look.settings.paceRatio * speed(),
      countPace: speed(),
      waitS: options.waitS ?? 0,
      brakesAtLines: () => watching === null && autoEase && !this.#hub.now().braking,
      script,
      firstSteps: this.#firstSteps,
      listeners: this.#listeners(),
    });
    if (goesOn !== null) for (const command of lettingGo(this.#ride.now)) this.#loop.command(command);
  }

  /** Whoever is told what the loop does. */
  #listeners(): LoopOptions['listeners'] {
    const { journal, onPhase } = this.#options;
    return {
      frame: (frame) => {
        this.#views?.frame(frame);
        this.#firstSteps.frame();
        // One voice: during the first steps nothing else is asked for.
        if (this.#views !== null && !this.#firstSteps.isOn())
          this.#help.frame(frame, this.#aids(), this.#views, this.#look);
        this.#countApples();
        journal?.note(this.#ride, this.#shifted);
        this.#shifted = false;
        if (this.#loop.mode() !== 'riding') return;
        this.#ears?.frame(frame);
        this.#ears?.music(frame, this.#settings);
        // During the first steps they alone are spoken, and no tone judges legs that stand still.
        if (this.#firstSteps.isOn()) this.#ear?.stop();
        else this.#ear?.frame(frame);
      },
      events: (events) => {
        this.#views?.events(events);
        this.#ears?.events(events);
        shake(events);
        if (events.some((event) => event.kind === 'stopped-at-line')) this.#hub.letGoBrake();
        if (events.some((event) => event.kind === 'finished')) {
          this.#shifted = true;
          onPhase('finished', null);
        }
      },
      say: (cue, remark) => this.#said.say(cue, remark, this.#firstSteps.isOn()),
      beat: () => {
        this.#views?.help.beat();
        this.#ears?.cueTick();
      },
      count: (secondsLeft) => {
        if (secondsLeft === null) this.#begun = true;
        onPhase(this.#begun ? 'riding' : 'ready', secondsLeft);
      },
      over: () => this.#finish(),
    };
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

  /** Paused, and somebody wants to ride on. */
  isPaused(): boolean {
    return this.#loop.mode() === 'paused';
  }

  resume(): void {
    if (!this.isPaused() || this.#destroyed || this.#halted) return;
    if (looksDifferent(this.#look, this.#options.look())) {
      this.#build();
      this.#firstSteps.showAgain();
    }
    this.#loop.resume();
    this.#views?.setPaused(false);
  }

  /** Volumes, mute, hold or switch have been changed. */
  settingsChanged(): void {
    this.#settings = this.#options.look().settings;
    const { volumes, muted, holdMode, leversKnown } = this.#settings;
    if (leversKnown) this.#firstSteps.end();
    this.#ears?.setVolumes(volumes);
    this.#ears?.setMuted(muted);
    this.#hub.setMode(holdMode);
  }

  /**
   * Something broke: nothing of it moves any more, only its recording is left. Null where there is nothing to stop,
   * because the ride is over or was stopped before.
   */
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
    quietly(() => this.#said.stop());
    quietly(() => this.#ears?.stop());
    this.#ears = null;
  }

  #onCommand(command: InputCommand): void {
    if (command.kind === 'pause') return this.#togglePause();
    if (!this.#firstSteps.takes(command)) return;
    if (this.#options.watching === null) this.#loop.command(command);
    this.#shifted ||= command.kind === 'shift';
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

  #showFirstSteps(shown: FirstStepShown | null): void {
    const asked = shown?.asked ?? null;
    this.#views?.want(asked === null ? [] : [asked]);
    const { settings } = this.#look;
    if (shown !== null) this.#ear?.tell(firstStepsAloud(shown, settings));
    this.#options.firstSteps?.show(shown);
  }

  #begin(): void {
    this.#build();
    this.#watch = watchPicture(
      () => this.#isMoving() && !document.hidden && !this.#halted,
      () => this.#options.onBroken(new Error('no picture is asked for')),
    );
    this.#hands = joinHands({
      hub: this.#hub,
      loop: this.#loop,
      settings: () => this.#settings,
      gamepad: this.#options.gamepad,
      onAway: () => this.#pause(),
    });
    this.#stops.push(() => this.#watch?.stop(), ...this.#hands.stops);
  }

  #isMoving(): boolean {
    const mode = this.#loop.mode();
    return mode === 'riding' || mode === 'counting';
  }

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
      beside: ridesBeside(this.#options),
      nextFrame: (timeMs) => {
        this.#watch?.seen();
        this.#hands?.poll(timeMs);
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
    this.#firstSteps.waitAnew();
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

function quietly(work: () => void): void {
  try {
    work();
  } catch {
    // It was broken before.
  }
}
