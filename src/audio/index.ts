/**
 * The door of the audio room. It brings the sound library with it, so import it lazily when a ride starts;
 * `sounds.ts` alone is plain data and may be read at any time.
 */
export { createMusic } from './music.ts';
export { createRideAudio } from './player.ts';
export { createTone } from './tone.ts';
