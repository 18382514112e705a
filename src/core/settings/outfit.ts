/**
 * What the rider wears and rides in: colours and shapes to choose, all of them there from the start. Only for the
 * pictures on this device; nothing of it is part of a ride, a link or a code.
 */
import { isFields } from '../math/measure.ts';

export const JERSEYS = ['orange', 'berry', 'blue', 'green', 'violet', 'sun'] as const;
export const PATTERNS = ['plain', 'band', 'dots'] as const;
export const HELMETS = ['holes', 'star', 'crest'] as const;
export const FRAMES = ['usual', 'red', 'blue', 'green', 'plum'] as const;

export type FrameColour = (typeof FRAMES)[number];

export interface Outfit {
  readonly jersey: (typeof JERSEYS)[number];
  readonly pattern: (typeof PATTERNS)[number];
  readonly helmet: (typeof HELMETS)[number];
  readonly frame: FrameColour;
}

/** What everybody wears who has not chosen. */
export const USUAL_OUTFIT: Outfit = { jersey: 'orange', pattern: 'plain', helmet: 'holes', frame: 'usual' };

/** A cloth in the light, in its folds and on its lit edge. */
type Cloth = Readonly<Record<'tone' | 'dark' | 'light', string>>;

export const JERSEY_CLOTHS: Readonly<Record<Outfit['jersey'], Cloth>> = {
  orange: { tone: '#e2552c', dark: '#b93f1e', light: '#f0764a' },
  berry: { tone: '#b8315f', dark: '#8e2248', light: '#d65a83' },
  blue: { tone: '#2b62b8', dark: '#1f4a8e', light: '#5586d2' },
  green: { tone: '#17803f', dark: '#0f602e', light: '#46a669' },
  violet: { tone: '#6b47a6', dark: '#50337f', light: '#8e6cc4' },
  sun: { tone: '#e8ae1f', dark: '#bb8610', light: '#f7cc5c' },
};

/** Frame and its lit edge; the usual one is the bike's own. */
export const FRAME_TONES: Readonly<Record<Exclude<FrameColour, 'usual'>, Pick<Cloth, 'tone' | 'light'>>> = {
  red: { tone: '#a8321f', light: '#d0614c' },
  blue: { tone: '#23548c', light: '#5482b8' },
  green: { tone: '#23683f', light: '#549a70' },
  plum: { tone: '#643a66', light: '#936a95' },
};

/** The choice as the picture takes it: tones and shapes, no names of colours. */
export function outfitLook({ jersey, pattern, helmet, frame }: Outfit) {
  return {
    jersey: JERSEY_CLOTHS[jersey],
    frame: frame === 'usual' ? null : FRAME_TONES[frame],
    pattern,
    helmet,
  };
}

export type OutfitLook = ReturnType<typeof outfitLook>;

/** A kit read from the device; what this version does not know becomes the usual one. */
export function readOutfit(value: unknown): Outfit {
  const kept = isFields(value) ? value : {};
  const pick = <Name extends string>(key: keyof Outfit, allowed: readonly Name[], usual: Name): Name =>
    allowed.find((one) => one === kept[key]) ?? usual;
  return {
    jersey: pick('jersey', JERSEYS, USUAL_OUTFIT.jersey),
    pattern: pick('pattern', PATTERNS, USUAL_OUTFIT.pattern),
    helmet: pick('helmet', HELMETS, USUAL_OUTFIT.helmet),
    frame: pick('frame', FRAMES, USUAL_OUTFIT.frame),
  };
}

/** Another jersey than this one, for somebody who rides beside it. */
export function outfitBeside(kit: Outfit): Outfit {
  return { ...kit, jersey: kit.jersey === 'blue' ? 'orange' : 'blue' };
}
