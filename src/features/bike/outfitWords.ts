/** Words of the rider's colours and shapes. */
import type { FrameColour, Helmet, Jersey, Pattern } from '../../core/settings/outfit.ts';

export const outfitWords = {
  title: 'Your colours',
  intro: 'How the rider looks in the picture. It makes nobody faster.',
  jersey: 'Jersey',
  pattern: 'Pattern',
  helmet: 'Helmet',
  frame: 'Frame',
  jerseys: {
    orange: 'orange',
    berry: 'berry',
    blue: 'blue',
    green: 'green',
    violet: 'violet',
    sun: 'sun yellow',
  } satisfies Record<Jersey, string>,
  patterns: { plain: 'plain', band: 'one band', dots: 'dots' } satisfies Record<Pattern, string>,
  helmets: {
    holes: 'with holes',
    star: 'with a star',
    crest: 'with a crest',
  } satisfies Record<Helmet, string>,
  frames: {
    usual: 'as it comes',
    red: 'red',
    blue: 'blue',
    green: 'green',
    plum: 'plum',
  } satisfies Record<FrameColour, string>,
} as const;
