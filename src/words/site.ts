/**
 * Every sentence a person reads, in one typed object. Another language is another object of the type `Words`;
 * numbers and units are put into words by `format.ts`, codes come from the core.
 */
import type { CueCode } from '../core/level/schema.ts';
import { commonWords } from './common.ts';
import { aboutWords, cautionsWords } from './about.ts';
import { afterWords } from './after.ts';
import { arrivalWords } from './arrival.ts';
import { earWords } from './ear.ts';
import { serviceWords } from './kept.ts';
import { troubleWords, unfinishedWords } from './unfinished.ts';

/** English. */
export const words = {
  ...commonWords,
  arrival: arrivalWords,
  after: afterWords,
  services: serviceWords,
  trouble: troubleWords,
  unfinished: unfinishedWords,
  start: {
    intro: 'The road goes up. Your legs notice late, your gears notice later. Here you learn to be early.',
    ride: 'Ride',
    rideAgain: 'Ride on',
    nextRide: (title: string): string => `Next: ${title}`,
    levels: 'All levels',
    levelsHint: (done: number, all: number): string => `${done} of ${all} ridden`,
    bike: 'My bike',
    about: 'How to play',
    aboutHint: 'and care, and privacy',
    progress: 'Progress',
    progressHint: 'Check rides, your marks, and what is kept',
    gearCheck: 'Gear check',
    gearCheckHint: 'Would other sprockets get me up this hill?',
    two: 'Two at once',
    twoHint: 'Side by side on the same road',
    join: 'Join a session',
    collect: 'Collect rides',
    clinic: 'Clinic',
    clinicHint: 'A group on one device or many, no names',
    newer: 'A newer version is here.',
    loadNewer: 'Use it',
    picture: 'A rider on a bicycle comes to the foot of a hill.',
  },
  /** The rest of the level bench's words comes with the bench. */
  bench: {
    title: 'Level bench',
    hint: 'Build a road, or bring one you rode',
    back: 'Back to the level bench',
  },
  levels: {
    title: 'Levels',
    intro: 'From top to bottom, or wherever you like. Each one teaches one thing.',
    everyone: 'The ladder',
    children: 'For children',
    own: 'Your own',
    ridden: 'Ridden',
    best: (total: string): string => `Best: ${total} of 100`,
    next: 'Next',
    length: (length: string): string => `${length} long`,
    pitches: (count: number): string => (count === 1 ? '1 pitch' : `${count} pitches`),
    profile: (steepest: string): string => `Profile of the road, at most ${steepest} steep`,
    none: 'No levels were found in this copy of the game.',
  },
  patches: {
    title: 'Patches',
    fresh: (lesson: string): string => `A new patch is yours: ${lesson}.`,
  },
  bike: {
    ...commonWords.bike,
    title: 'Bike and rider',
    intro: 'Take the bike that is most like yours. It rides as its gears, wheels and weight say.',
    bikes: 'Bike',
    ownHint: 'Your own tooth counts and tyres',
    rings: 'Chainring',
    sprockets: 'Sprockets',
    tyre: 'Tyre',
    mechanical: 'cable',
    electronic: 'electronic',
    riderHints: {
      'child-9': 'Light, and quick legs for small hills.',
      'adult-new': 'Gets out of breath on a bridge.',
      'adult-weekly': 'Likes hills that end.',
      'adult-strong': 'Looks for the hill.',
    } as Readonly<Record<string, string>>,
    cadence: (low: string, high: string): string => `turns the pedals ${low} to ${high} times a minute`,
    done: 'Ride this bike',
  },
  pads: {
    group: 'Controls of the bike',
    labels: {
      'rear-easier': 'easier',
      'rear-harder': 'harder',
      'front-smaller': 'smaller',
      'front-bigger': 'bigger',
      ease: 'ease',
      press: 'press',
      brake: 'brake',
      pause: 'pause',
    },
    spoken: {
      'rear-easier': 'Rear derailleur: easier',
      'rear-harder': 'Rear derailleur: harder',
      'front-smaller': 'Front derailleur: smaller ring',
      'front-bigger': 'Front derailleur: bigger ring',
      ease: 'Ease the pedals; upper half or slide up: press',
      press: 'Press the pedals',
      brake: 'Brake',
      pause: 'Pause',
    },
  },
  ride: {
    title: (level: string): string => `Riding: ${level}`,
    loading: 'The road is being unrolled …',
    failed: {
      'not-fetched': 'The picture of the ride could not be loaded. Check the connection, then try again.',
      'no-canvas':
        'This browser does not let the game draw a picture, so there is nothing to ride by. Allow it in its settings (often under privacy), or open the game in another browser.',
      broken:
        'This ride cannot be started: something about it does not work. Try another level, or choose the bike anew.',
    },
    again: 'Try again',
    soon: 'Ready?',
    paused: 'Paused',
    pausedHint: 'The road waits. So does your gear.',
    on: 'Ride on',
    restart: 'From the start',
    leave: 'Stop riding',
    controls: 'Keys',
  },
  hud: {
    cadence: 'cadence',
    perMinute: 'per minute',
    gear: 'gear',
    pressure: 'legs',
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
    marks: { cadence: 'cadence', easing: 'easing', chainLine: 'chain line' },
    step: (derailleur: 'front' | 'rear', direction: 'easier' | 'harder', steps: number): string =>
      derailleur === 'front'
        ? direction === 'easier'
          ? 'Smaller chainring'
          : 'Bigger chainring'
        : `${direction === 'easier' ? 'Easier' : 'Harder'}${steps > 1 ? `, ${steps} steps` : ''}`,
    stepNow: 'now',
    stepIn: (distance: string): string => `in ${distance}`,
  },
  ear: earWords,
  cues: {
    'hill-ahead': 'Hill ahead.',
    'ease-then-shift': 'Ease the pedals, then shift.',
    'two-easier-now': 'Two easier now.',
    'one-at-a-time': 'One gear at a time.',
    'rest-on-the-way-up': 'The rest on the way up, easing each time.',
    'harder-again': 'Over the top: harder again.',
    'hold-rhythm': 'Keep your legs turning at one pace.',
    'ride-over': 'Short rise: stay in your gear and ride over it.',
    'small-ring': 'Smaller chainring now, on the flat.',
    'big-ring': 'Bigger chainring, there is room for it.',
    'straight-chain': 'Keep the chain straight.',
    'stop-ahead': 'Stop line ahead.',
    'easy-before-stop': 'Shift easier before you stop: you start in that gear.',
    'wind-ahead': 'Head wind ahead. It is a hill you cannot see.',
    'gravel-ahead': 'Gravel ahead. It pulls like a hill.',
    'look-far': 'Look far ahead.',
    'last-pitch': 'The last pitch.',
    'easier-lever': 'The right lever: easier.',
    'harder-lever': 'The right lever: harder.',
  } satisfies Record<CueCode, string>,
  remarks: {
    'heavy-shift': 'Heavy shift. Ease first.',
    'shift-hung': 'The chain is stuck. Ease, and it moves.',
    'shift-waiting': 'A chain moves only while you pedal.',
    'no-easier': 'That is the easiest gear.',
    'no-harder': 'That is the hardest gear.',
    'no-ring': 'No more chainrings there.',
    'refused-crossed': 'This bike does not cross its chain.',
    crossed: 'The chain is crossed.',
    'chain-dropped': 'Chain off! Ease, then push the front lever.',
    'foot-down': 'Foot down. The gear was too hard.',
    'line-missed': 'Over the line. Brake sooner.',
    'reserve-empty': 'Out of breath. No pressing for a while.',
  },
  cautions: cautionsWords,
  about: aboutWords,
};

export type Words = typeof words;
export type RemarkCode = keyof Words['remarks'];
