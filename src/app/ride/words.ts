/** What is written and said over a running ride: instruments, controls, remarks, and the road for those who ride by ear. */
import type { HandMove } from '../../core/coach/guide.ts';
import { hasHub } from '../../core/model/shifters.ts';
import type { Bike } from '../../core/model/types.ts';

export const padWords = {
  group: 'Controls of the bike',
  labels: {
    'rear-easier': 'easier',
    'rear-harder': 'harder',
    'front-smaller': 'smaller',
    'front-bigger': 'bigger',
    ease: 'soft',
    press: 'push',
    brake: 'brake',
    pause: 'pause',
  },
  spoken: {
    'rear-easier': 'Rear derailleur: easier',
    'rear-harder': 'Rear derailleur: harder',
    'front-smaller': 'Front derailleur: smaller ring',
    'front-bigger': 'Front derailleur: bigger ring',
    ease: 'Soft feet; upper half or slide up: push',
    press: 'Push hard',
    brake: 'Brake',
    pause: 'Pause',
  },
};

/** The same words, and for a hub no derailleur. */
export function padWordsFor(bike: Bike): typeof padWords {
  if (!hasHub(bike)) return padWords;
  const spoken = {
    ...padWords.spoken,
    'rear-easier': 'Hub gears: easier',
    'rear-harder': 'Hub gears: harder',
    ease: 'Pressure off; upper half or slide up: push',
  };
  return { ...padWords, spoken };
}

/** "Easier, 2 steps", "Smaller chainring". */
function hands({ derailleur, direction, steps }: HandMove): string {
  const [rear, front] =
    direction === 'easier' ? ['Easier', 'Smaller chainring'] : ['Harder', 'Bigger chainring'];
  return `${derailleur === 'front' ? front : rear}${steps > 1 ? `, ${steps} steps` : ''}`;
}

export const hudWords = {
  cadence: 'cadence',
  perMinute: 'per minute',
  gear: 'gear',
  pressure: 'legs',
  legs: {
    coast: 'resting',
    ease: 'soft',
    steady: 'steady',
    press: 'pushing',
    'too-slow': 'too slow',
    'too-fast': 'too fast',
  },
  reserve: 'breath',
  roadAhead: 'The next 250 metres of road',
  distance: 'ridden',
  chainFromAbove: 'The chain from above',
  widened: (times: number): string => `width × ${times}`,
  crossed: 'chain crossed',
  chainOff: 'chain off',
  steeper: (times: number): string => `heights × ${times}`,
  stopLine: 'stop in',
  outOfSight: 'out of sight',
  marksSoFar: 'so far, of 100',
  marks: { cadence: 'cadence', easing: 'soft feet', chainLine: 'chain line' },
  step: (first: HandMove, then: HandMove | null): string =>
    then === null ? hands(first) : `${hands(first)}, then ${hands(then).toLowerCase()}`,
  /** How many is left away. */
  move: (first: HandMove): string => hands({ ...first, steps: 1 }),
  stepNow: 'now',
  stepSoon: 'soon',
  stepIn: (distance: string): string => `in ${distance}`,
};

export const remarkWords = {
  'heavy-shift': 'Heavy shift. Soft feet first.',
  'shift-hung': 'The chain is stuck. Soft feet, and it moves.',
  'shift-waiting': 'A chain moves only while you pedal.',
  'hub-knocked': 'A knock. Let the pressure off, then it takes.',
  'motor-pulled': 'The motor still pulled. Soft feet, wait, then shift.',
  'hub-waits': 'The hub waits. Let the pressure off.',
  'no-easier': 'That is the easiest gear.',
  'no-harder': 'That is the hardest gear.',
  'ring-easier': 'No easier sprocket. A smaller chainring is easier.',
  'ring-harder': 'No harder sprocket. A bigger chainring is harder.',
  'no-ring': 'No more chainrings there.',
  'refused-crossed': 'This bike does not cross its chain.',
  crossed: 'The chain is crossed.',
  'chain-dropped': 'Chain off! Soft feet, then push the front lever.',
  'foot-down': 'Foot down. The gear was too hard.',
  'line-missed': 'Over the line. Brake sooner.',
  'battery-empty': 'The battery is empty. Now it is your legs alone.',
  'reserve-empty': 'Out of breath. No hard pushing for a while.',
};

export type RemarkCode = keyof typeof remarkWords;

function spokenMove({ derailleur, direction, steps }: HandMove): string {
  if (derailleur === 'rear') return `${steps} ${direction}`;
  return direction === 'easier' ? 'smaller chainring' : 'bigger chainring';
}

/** Distances come in with their units. */
export const earWords = {
  'pitch-ahead': (distance: string, slope: string, length: string): string =>
    `Pitch in ${distance}: ${slope}, ${length} long.`,
  'pitch-soon': (distance: string): string => `Pitch in ${distance}.`,
  'pitch-now': (): string => 'Foot of the pitch.',
  'pitch-over': (): string => 'Over the top.',
  'stop-ahead': (distance: string): string => `Stop line in ${distance}.`,
  'stop-soon': (distance: string): string => `Stop line in ${distance}. Brake.`,
  /** The number first: it is what the hand needs. */
  hint: (first: HandMove, then: HandMove | null): string =>
    `${then === null ? spokenMove(first) : `${spokenMove(first)}, then ${spokenMove(then)}`}.`,
  /** At the start, before anything has come into reach. */
  begin: (ahead: string | null): string => `Riding. ${ahead ?? 'No pitch is in sight.'}`,
  downhill: (): string => 'Downhill.',
};
