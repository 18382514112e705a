/** The sounds of one ride and the tone of riding by ear, loaded when a ride begins. */
import type { RideLook } from './views.ts';

/** What a ride needs to be heard. */
export type Ears = Awaited<ReturnType<typeof loadEars>>;

/** Loads the sound room; rejects when it cannot be fetched. */
export async function loadEars(look: RideLook) {
  const { createRideAudio, createTone, soundUrl } = await import('../../audio/index.ts');
  const { volumes, muted } = look.settings;
  const audio = createRideAudio({ volumes, muted, soundUrl });
  const tone = createTone();
  return {
    ...audio,
    /** A steady tone (Hz) as loud as the settings say; 0 is silence. */
    tone(hz: number, settings: RideLook['settings']): void {
      tone.set(settings.muted ? 0 : hz, settings.volumes.cues);
    },
    stop(): void {
      tone.stop();
      audio.stop();
    },
  };
}
