/**
 * The door of the audio room. It brings the sound library with it, so import it lazily when a ride starts;
 * `sounds.ts` alone is plain data and may be read at any time.
 */
export { createMusic, type Music } from './music.ts';
export { createRideAudio, type RideAudio, type RideAudioOptions } from './player.ts';
export { type Channel, soundTwins, type TwinCode, type Volumes } from './sounds.ts';
export { createTone, type Tone } from './tone.ts';
export { soundUrl } from './urls.ts';
