/**
 * The sound of one ride: takes its frames and events and keeps the loops and shots in step with them.
 * What they sound like is decided in `mix` and `shots`; when a ride is paused or over is told from outside.
 */
import { Howler } from 'howler';
import type { RideEvent, RideFrame } from '../core/ride/types.ts';
import { limitMaster } from './limiter.ts';
import { approachMix, type Mix, mixOf, SILENT_MIX } from './mix.ts';
import { shotsOf } from './shots.ts';
import { type Channel, LOOP_NAMES, LOOPS, SHOT_NAMES, SHOTS, type ShotName, type Volumes } from './sounds.ts';
import { soundUrl } from './urls.ts';
import { isAwake, type LoopVoice, openLoop, openShot, type ShotVoice } from './voice.ts';
import { wakeOnGesture } from './wake.ts';

/** Frames missing for this long mean that nobody rides: a hidden page, a stuck one (ms). */
const FRAMES_MISSING_MS = 500;

function mapNames<Name extends string, Value>(names: readonly Name[], value: (name: Name) => Value) {
  return Object.fromEntries(names.map((name) => [name, value(name)])) as Record<Name, Value>;
}

/** The mix is renewed this often (s of ride time); the voices slide from one to the next. */
const MIX_EVERY_S = 0.03;

/** Loads the sounds and returns the ears of a ride. Silent until the page has had a gesture. */
export function createRideAudio(initial: { readonly volumes: Volumes; readonly muted: boolean }) {
  // Left to itself the library sleeps after a silent half minute and would not hear the next shot.
  Howler.autoSuspend = false;
  const loops: Record<string, LoopVoice> = mapNames(LOOP_NAMES, (name) => openLoop(name, soundUrl(name)));
  const shots: Record<ShotName, ShotVoice> = mapNames(SHOT_NAMES, (name) => openShot(soundUrl(name)));
  limitMaster();
  const stopWaking = wakeOnGesture();

  let { volumes, muted } = initial;
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
    /** Follows the ride; call it for every frame shown. Also takes up again after `pause`. */
    frame: (frame: RideFrame): void => {
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
    events: (list: readonly RideEvent[]): void => {
      for (const event of list) {
        for (const shot of shotsOf(event)) play(shot.name, shot.gain, shot.rate);
      }
    },
    /** One beat of the click track. */
    cueTick: (): void => play('cue-tick'),
    /** An apple hops out of the basket: a small thud, lighter than a foot's. */
    apple: (): void => play('foot-down', 0.5, 1.7),
    /** Lets the loops die away within 80 ms. */
    pause,
    setVolumes: (next: Volumes): void => {
      volumes = next;
    },
    setMuted: (next: boolean): void => {
      muted = next;
      if (muted) pause();
    },
    /** Ends every sound and gives back what was loaded; nothing may be called afterwards. */
    stop: (): void => {
      clearInterval(watch);
      stopWaking();
      for (const voice of [...Object.values(loops), ...Object.values(shots)]) voice.unload();
    },
  };
}
