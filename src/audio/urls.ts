/**
 * Where the sound files are once the site is built. Both formats are listed, the smaller and gapless
 * one first; which of them a browser can play is found out when it is loaded.
 */
import type { SoundName } from './sounds.ts';

const files = import.meta.glob<string>('../../assets/sounds/*.{webm,mp3}', {
  eager: true,
  query: '?url',
  import: 'default',
});

/** Addresses of a sound, best first. */
export function soundUrl(name: SoundName): readonly string[] {
  return ['webm', 'mp3'].flatMap((format) => files[`../../assets/sounds/${name}.${format}`] ?? []);
}
