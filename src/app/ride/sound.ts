/** The sounds of one ride and the tone of riding by ear, loaded when a ride begins. */
import type { RideFrame } from '../../core/ride/types.ts';
import type { RideLook } from './views.ts';

export type RideSound = Awaited<ReturnType<typeof loadSound>>;

/** Loads the sound room; rejects when it cannot be fetched. */
export async function loadSound(look: RideLook) {
  const { createMusic, createRideAudio, createTone } = await import('../../audio/index.ts');
  const { volumes, muted } = look.settings;
  const audio = createRideAudio({ volumes, muted });
  const tone = createTone();
  const music = createMusic();
  return quietOnceBroken({
    ...audio,
    /** A steady tone (Hz) as loud as the settings say; 0 is silence. */
    tone(hz: number, settings: RideLook['settings']): void {
      tone.set(settings.muted ? 0 : hz, settings.volumes.cues);
    },
    /** A note for each push of a pedal, where music is wished for. */
    music(
      frame: RideFrame,
      { muted: silent, music: wish, byEar, volumes: { road } }: RideLook['settings'],
    ): void {
      const plays = !silent && (wish === 'on' || (wish === 'auto' && !byEar));
      music.frame(frame, plays ? road : 0);
    },
    stop(): void {
      music.stop();
      tone.stop();
      audio.stop();
    },
  });
}

/** The same ears, which fall silent for good when one of their calls throws: a ride without sound is a ride. */
export function quietOnceBroken<T extends { stop(): void }>(ears: T): T {
  let broken = false;
  const guarded =
    (work: (...given: unknown[]) => void) =>
    (...given: unknown[]): void => {
      if (broken) return;
      try {
        work(...given);
      } catch {
        broken = true;
        try {
          ears.stop();
        } catch {
          // Then it ends with the page.
        }
      }
    };
  return Object.fromEntries(
    Object.entries(ears).map(([name, work]) => [name, guarded(work as (...given: unknown[]) => void)]),
  ) as T;
}
