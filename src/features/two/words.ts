/** Every sentence about several riders on one device. */
import type { Way } from './choice.ts';
import type { Side } from './keys.ts';

const ORDER = ['First', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth'] as const;
const nth = (rider: number): string => ORDER[rider] ?? `Number ${rider + 1}`;

/** English. */
export const twoWords = {
  title: 'Two or more',
  intro: 'On one road with one device. Each rides for themselves, and against nobody.',
  road: 'Road',
  way: 'How',
  ways: {
    beside: 'Side by side',
    facing: 'Face to face',
    relay: 'Relay',
  } satisfies Record<Way, string>,
  wayHints: {
    beside: 'Two at once, each on a half of the screen: on a tablet, with one keyboard or two gamepads.',
    facing:
      'Two at once, the upper half of the tablet turned round. Lay it flat between them, where it can neither slide nor fall.',
    relay: 'One road, a leg for each: whoever comes to the gate hands the device on, standing or seated.',
  } satisfies Record<Way, string>,
  count: 'Riders',
  noRelay:
    'This road is too short for a relay, or has too few hills: everybody needs a hill and some road of their own. Choose another road.',
  /** Who is meant, counted from 0. */
  names: {
    beside: (rider: number) => (rider === 0 ? 'Left' : 'Right'),
    facing: (rider: number) => (rider === 0 ? 'Upper half, turned round' : 'Lower half'),
    relay: nth,
  } satisfies Record<Way, (rider: number) => string>,
  bike: 'Bike',
  rider: 'Rider',
  ownRider: 'As set on this device',
  autoEase: 'The game has soft feet during a shift and brakes at lines, for all',
  headStart: 'Whoever’s best ride takes longer here starts first, so that both can finish together',
  headStartWait: 'seconds. The other one’s best ride takes so much longer.',
  longWait: 'On a shorter road the wait is shorter.',
  keys: { left: 'Keys on the left', right: 'Arrow keys' } satisfies Record<Side, string>,
  pads: { left: 'Pads in the left or upper half', right: 'Pads in the right or lower half' } satisfies Record<
    Side,
    string
  >,
  ride: 'Ride',
  riding: (road: string): string => `Riding together: ${road}`,
  roadOfBoth: (road: string): string => `${road}: how far both have come`,
  /** On the road of both; one letter each, or an arrow to where somebody sits. */
  marks: { beside: ['L', 'R'], facing: ['↑', '↓'], relay: [] } satisfies Record<Way, readonly string[]>,
  roadWithGates: (road: string, gates: number): string =>
    gates === 0 ? road : `${road}, with ${gates} ${gates === 1 ? 'gate' : 'gates'}`,
  leg: (road: string, leg: number, legs: number): string => `${road}, leg ${leg + 1} of ${legs}`,
  gate: (rider: number): string => `${nth(rider)} rider`,
  gateIntro:
    'Hand over at the gate, standing or seated and never on a bike that rolls. Look where your leg is, then ride.',
  waiting: 'Over the line. The other one is still riding.',
  needsKeys:
    'This screen is too small for the pads of two. Take a tablet, a keyboard or two gamepads; or ride a relay.',
  failed:
    'The rides stopped, because their picture could not be loaded or drawn. Try again; if it happens once more, load the page anew.',
  toGate: 'Back to the gate',
  afterTitle: 'What you found out',
  series: (ride: number, of: number): string =>
    `Ride ${ride} of ${of}. Of each rider’s own ${of} rides the best one counts.`,
  total: (total: number): string => `${total} of 100`,
  together: (total: number): string => `Together: ${total} of 100 on average`,
  /** The best of a rider's own rides; riders are not set against each other. */
  best: (best: number, all: readonly number[]): string =>
    `Best of ${all.length} rides: ${best} (${all.join(' · ')})`,
  judging: 'Working out how it went …',
  notJudged: 'How this ride went could not be worked out. Ride again.',
  look: 'Look at this ride',
  again: 'Once more',
  newSeries: 'Three new rides',
  moveOn: {
    beside: 'Swap sides',
    facing: 'Swap sides',
    relay: 'Somebody else first',
  } satisfies Record<Way, string>,
  other: 'Another road or other riders',
  leave: 'Stop riding',
};
