/**
 * The sound of one ride: takes its frames and events and keeps the loops and shots in step with them.
 * What they sound like is decided in `mix` and `shots`; when a ride is paused or over is told from outside.
 */
import { Howler } from 'howler';
import type { RideEvent, RideFrame } from '../core/ride/types.ts';
import { limitMaster } from './limiter.ts';
import { approachMix, type Mix, mixOf, SILENT_MIX } from './mix.ts';
import { shotsOf } from './shots.ts';
import {
  type Channel,
  LOOP_NAMES,
  LOOPS,
  SHOT_NAMES,
  SHOTS,
  type ShotName,
  type SoundName,
  type Volumes,
} from './sounds.ts';
import { isAwake, type LoopVoice, openLoop, openShot, type ShotVoice } from './voice.ts';
import { wakeOnGesture } from './wake.ts';

export interface RideAudioOptions {
  readonly volumes: Volumes;
  readonly muted: boolean;
  /** Addresses of a sound's files, best first. */
  readonly soundUrl: (name: SoundName) => readonly string[];
}

export interface RideAudio {
  /** Follows the ride; call it for every frame shown. Also takes up again after `pause`. */
  frame(frame: RideFrame): void;
  /** Plays what the events sound like. */
  events(list: readonly RideEvent[]): void;
  /** One beat of the click track. */
  cueTick(): void;
  /** An apple hops out of the basket. */
  apple(): void;
  /** A button was pressed. */
  tap(): void;
  /** Lets the loops die away within 80 ms. */
  pause(): void;
  setVolumes(volumes: Volumes): void;
  setMuted(muted: boolean): void;
  /** Ends every sound and gives back what was loaded; nothing may be called afterwards. */
  stop(): void;
}

/** Frames missing for this long mean that nobody rides: a hidden page, a stuck one (ms). */
const FRAMES_MISSING_MS = 500;

function mapNames<Name extends string, Value>(names: readonly Name[], value: (name: Name) => Value) {
  return Object.fromEntries(names.map((name) => [name, value(name)])) as Record<Name, Value>;
}

/** The mix is renewed this often (s of ride time); the voices slide from one to the next. */
const MIX_EVERY_S = 0.03;

/** Loads the sounds and returns the ears of a ride. Silent until the page has had a gesture. */
export function createRideAudio(options: RideAudioOptions): RideAudio {
  // Left to itself the library sleeps after a silent half minute and would not hear the next shot.
  Howler.autoSuspend = false;
  const loops: Record<string, LoopVoice> = mapNames(LOOP_NAMES, (name) =>
    openLoop(name, options.soundUrl(name)),
  );
  const shots: Record<ShotName, ShotVoice> = mapNames(SHOT_NAMES, (name) => openShot(options.soundUrl(name)));
  limitMaster();
  const stopWaking = wakeOnGesture();

  let { volumes, muted } = options;
  let mix: Mix = SILENT_MIX;
  let lastTimeS = 0;
  let framesSeen = 0;
  let framesChecked = 0;

  const volumeOf = (channel: Channel): number => Math.min(1, Math.max(0, volumes[channel]));
  const play = (name: ShotName, gain = 1, rate = 1): void => {
    if (!muted) shots[name].play(gain * volumeOf(SHOTS[name].channel), rate);
  };
  const pause = (): void => {
    mix = SILENT_MIX;
    for (const name of LOOP_NAMES) loops[name]?.fadeOut();
  };
  const watch = setInterval(() => {
    if (framesSeen === framesChecked) pause();
    framesChecked = framesSeen;
  }, FRAMES_MISSING_MS);

  return {
    frame: (frame) => {
      framesSeen += 1;
      if (Math.abs(frame.timeS - lastTimeS) < MIX_EVERY_S) return;
      // Sleeping, the mix stays at silence, so that waking up begins softly.
      const wanted = muted || !isAwake() ? SILENT_MIX : mixOf(frame);
      mix = approachMix(mix, wanted, frame.timeS - lastTimeS);
      lastTimeS = frame.timeS;
      for (const name of LOOP_NAMES) {
        const { gain, rate } = mix[name];
        loops[name]?.set({ gain: gain * volumeOf(LOOPS[name].channel), rate });
      }
    },
    events: (list) => {
      for (const event of list) {
        for (const shot of shotsOf(event)) play(shot.name, shot.gain, shot.rate);
      }
    },
    cueTick: () => play('cue-tick'),
    // A small thud, lighter than a foot's.
    apple: () => play('foot-down', 0.5, 1.7),
    tap: () => play('ui-tap'),
    pause,
    setVolumes: (next) => {
      volumes = next;
    },
    setMuted: (next) => {
      muted = next;
      if (muted) pause();
    },
    stop: () => {
      clearInterval(watch);
      stopWaking();
      for (const voice of [...Object.values(loops), ...Object.values(shots)]) voice.unload();
    },
  };
}
