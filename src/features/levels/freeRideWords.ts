/** Every sentence about free rides. Numbers with units come in written. */
import type { BadFreeRide } from '../../core/level/freeRide.ts';

/** English. */
export const freeRideWords = {
  title: 'Free ride',
  intro: 'Any road you like. The same name, hills and length give the same road on every device.',
  seed: 'Name of the road',
  seedHint: 'A word or a number.',
  seedEmpty: 'Give the road a name, or take another road.',
  another: 'Another road',
  hilliness: 'Hills',
  hilly: (share: number): string =>
    share < 0.15
      ? 'nearly flat'
      : share < 0.4
        ? 'gentle'
        : share < 0.65
          ? 'hilly'
          : share < 0.85
            ? 'steep'
            : 'very steep',
  length: 'Length',
  facts: (length: string, pitches: number, steepest: string, climbed: string): string =>
    `${length}, ${pitches === 0 ? 'no pitch' : pitches === 1 ? '1 pitch' : `${pitches} pitches`}, at most ${steepest}, ${climbed} up in all.`,
  profile: (facts: string): string => `Profile of the road: ${facts}`,
  ride: 'Ride this road',
  link: 'Link to this road',
  copy: 'Copy the link',
  copied: 'Copied. Whoever opens it rides the same road.',
  notCopied: 'The browser did not let it be copied. The link is marked: copy it by hand.',
  bad: {
    unreadable:
      'This link to a free ride cannot be read. It should end in free-, a number, the hills from 0 to 100 and the length in metres, like free-42-50-2000. Choose a road here instead.',
    seed: 'The number of the road in this link is too big. Choose a road here instead.',
    hilliness: 'The hills in this link are beyond 100. Choose a road here instead.',
    length: (shortest: string, longest: string): string =>
      `The road in this link is not from ${shortest} to ${longest} long. Choose a road here instead.`,
  },
} as const;

export type FreeRideWords = typeof freeRideWords;

/** What is wrong with a link, in a sentence. */
export function sayBadFreeRide(
  code: BadFreeRide,
  words: FreeRideWords,
  ends: readonly [string, string],
): string {
  return code === 'length' ? words.bad.length(...ends) : words.bad[code];
}
