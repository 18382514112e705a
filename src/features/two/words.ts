/** Every sentence about two riders at once. */
import type { Side } from './keys.ts';

/** English. */
export const twoWords = {
  title: 'Two at once',
  intro:
    'Side by side on the same road: on a tablet, with one keyboard or two gamepads. Each rides for themselves.',
  road: 'Road',
  sides: { left: 'Left', right: 'Right' } satisfies Record<Side, string>,
  bike: 'Bike',
  rider: 'Rider',
  ownRider: 'As set on this device',
  autoEase: 'The game has soft feet during a shift and brakes at lines, for both',
  headStart: 'Whoever’s best ride takes longer here starts first, so that both can finish together',
  keys: { left: 'Keys on the left', right: 'Arrow keys' } satisfies Record<Side, string>,
  pads: { left: 'Pads in the left or upper half', right: 'Pads in the right or lower half' } satisfies Record<
    Side,
    string
  >,
  ride: 'Ride',
  riding: (road: string): string => `Two at once: ${road}`,
  waiting: 'Over the line. The other one is still riding.',
  needsKeys:
    'This screen is too small for the pads of two. Take a tablet, a keyboard or two gamepads; or hand the device round.',
  failed:
    'The rides stopped, because their picture could not be loaded or drawn. Try again; if it happens once more, load the page anew.',
  afterTitle: 'What you two found out',
  total: (total: number): string => `${total} of 100`,
  /** The best of a rider's own rides; riders are not set against each other. */
  best: (best: number, all: readonly number[]): string =>
    `Best of ${all.length} rides: ${best} (${all.join(' · ')})`,
  judging: 'Working out how it went …',
  notJudged: 'How this ride went could not be worked out. Ride again.',
  look: 'Look at this ride',
  again: 'Once more',
  swap: 'Swap sides',
  other: 'Another road',
  leave: 'Stop riding',
};
