/**
 * One sound in the hands of the sound library: a loop that follows a level, or a shot that is played and forgotten.
 * Knows nothing of rides.
 */
import { Howl, Howler, type HowlOptions } from 'howler';
import { isAudibleChange, type LoopLevel } from './mix.ts';
import { LOOP_LEAD_MS, LOOPS, type LoopName } from './sounds.ts';

/** Time in which a loop dies away when the ride is paused (ms). */
const PAUSE_FADE_MS = 80;

/** True when a sound started now is heard now. Before the first gesture it would pile up and burst out later. */
export function isAwake(): boolean {
  return !Howler.usingWebAudio || (Howler.ctx as AudioContext | null)?.state === 'running';
}

/** Loads a sound; a browser that claims a format and then cannot decode it gets the next one. */
function openSource(urls: readonly string[], options: Pick<HowlOptions, 'sprite' | 'volume'>) {
  let loaded: Howl | null = null;
  let closed = false;
  let trying: Howl;
  const attempt = (left: readonly string[]): void => {
    const howl = new Howl({
      ...options,
      src: [...left],
      onload: () => {
        if (!closed) loaded = howl;
      },
      onloaderror: () => {
        howl.unload();
        if (!closed && left.length > 1) attempt(left.slice(1));
      },
    });
    trying = howl;
  };
  attempt(urls);
  return {
    /** The library's sound once it can be played, else null. */
    howl: (): Howl | null => loaded,
    unload: (): void => {
      closed = true;
      loaded = null;
      trying.unload();
    },
  };
}

/** A loop, silent until its first level. */
export function openLoop(name: LoopName, urls: readonly string[]) {
  const source = openSource(urls, {
    volume: 0,
    sprite: { loop: [LOOP_LEAD_MS, LOOPS[name].periodMs, true] },
  });
  let playing: { readonly id: number; gain: number; rate: number } | null = null;

  const start = (howl: Howl): void => {
    // Speed and loudness never match what has not been sent yet.
    playing = { id: howl.play('loop'), gain: -1, rate: -1 };
  };
  const end = (howl: Howl): void => {
    if (playing !== null) howl.stop(playing.id);
    playing = null;
  };
  return {
    /** Sets loudness and speed, starting and ending the loop as needed. */
    set: ({ gain, rate }: LoopLevel): void => {
      const howl = source.howl();
      if (howl === null) return;
      if (gain === 0) return end(howl);
      if (playing === null && isAwake()) start(howl);
      if (playing === null) return;
      if (playing.gain < 0 || isAudibleChange(playing.gain, gain)) {
        howl.volume(gain, playing.id);
        playing.gain = gain;
      }
      if (playing.rate < 0 || isAudibleChange(playing.rate, rate)) {
        howl.rate(rate, playing.id);
        playing.rate = rate;
      }
    },
    fadeOut: (): void => {
      const howl = source.howl();
      if (howl === null || playing === null) return;
      const { id, gain } = playing;
      howl.once('fade', () => howl.stop(id), id);
      howl.fade(gain, 0, PAUSE_FADE_MS, id);
      playing = null;
    },
    unload: (): void => {
      playing = null;
      source.unload();
    },
  };
}
export type LoopVoice = ReturnType<typeof openLoop>;

/** A sound that happens once. Asked for too early it stays away: late, it would say something untrue. */
export function openShot(urls: readonly string[]) {
  const source = openSource(urls, {});
  return {
    play: (gain: number, rate: number): void => {
      const howl = source.howl();
      if (howl === null || gain === 0 || !isAwake()) return;
      const id = howl.play();
      howl.volume(gain, id);
      howl.rate(rate, id);
    },
    unload: (): void => source.unload(),
  };
}
export type ShotVoice = ReturnType<typeof openShot>;
