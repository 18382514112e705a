/**
 * Names that several pages say: the game, its places, lessons, bikes, riders and keys. What only one page says lies
 * with that page.
 */
import type { Lesson } from '../core/level/schema.ts';
import { hasHub, shifterPlaces } from '../core/model/shifters.ts';
import type { Bike } from '../core/model/types.ts';

/** English. */
export const commonWords = {
  name: 'Before the Hill',
  promise: 'Be in the right gear before you need it.',
  nav: {
    home: 'Start',
    levels: 'Levels',
    children: 'For children',
    bike: 'Bike and rider',
    about: 'How to play',
    progress: 'Progress',
    gearCheck: 'Gear check',
    settings: 'Settings',
    close: 'Close',
    debrief: 'Your ride',
    bench: 'Level bench',
    road: 'On the road',
    two: 'Two at once',
    clinic: 'Clinic',
    join: 'Join a session',
    collect: 'Collect rides',
    teach: 'Session plans',
    skip: 'Skip to the page',
  },
  /** A page that is fetched when it is opened. */
  coming: {
    loading: 'One moment: this page is on its way.',
    failed: 'This page could not be loaded. Check the connection, then try again.',
    tryAgain: 'Try again',
  },
  /** What a person should know about the keeping, by its code. */
  health: {
    'not-fetched':
      'A part of the game could not be fetched, so nothing is kept yet and your own levels are not shown. Check the connection; the game tries again by itself.',
    slow: 'What is kept on this device has not been opened yet, so your own levels and your results are not shown. If this stays, load the page anew.',
    memory: 'This window keeps nothing. Your rides are gone when you close it.',
    'small-copy': 'Only your newest marks are kept in this window, not the rides.',
    'disk-full':
      'This device has no room left, so new rides are not kept. Make room; the game will try again.',
    'recordings-lost':
      'Some rides are here with their marks only: the rides themselves are lost and cannot be watched again.',
  } as Readonly<Record<string, string>>,
  ladder: { everyone: 'The ladder', children: 'For children' },
  profile: (steepest: string): string => `Profile of the road, at most ${steepest} steep`,
  /** While a ride is fetched, and while it waits. */
  riding: {
    loading: 'The road is being unrolled …',
    paused: 'Paused',
    on: 'Ride on',
  },
  lessons: {
    levers: 'The two levers',
    cadence: 'Cadence',
    easing: 'Soft feet for a shift',
    'look-ahead': 'Looking ahead',
    rolling: 'Shifting with the road',
    'chain-line': 'A straight chain',
    'ring-change': 'Changing the chainring',
    'ride-over': 'When not to shift',
    hidden: 'What you cannot see',
    'stop-gear': 'The gear for starting',
    'wind-and-gravel': 'Wind and gravel',
    everything: 'All of it together',
    check: 'Check ride',
    free: 'Free ride',
  } satisfies Record<Lesson, string>,
  bike: {
    names: {
      'kids-20-1x7': 'Children’s 20 inch',
      'kids-24-1x8': 'Children’s 24 inch',
      'town-1x9': 'Town',
      'kids-20-hub-3': 'Children’s 20 inch, hub 3',
      'town-hub-3': 'Town with hub 3',
      'town-hub-7': 'Town with hub 7',
      'trekking-3x8': 'Trekking',
      'road-2x11': 'Road',
      'gravel-1x12': 'Gravel',
    } as Readonly<Record<string, string>>,
    own: 'Own bike',
    gears: (bike: Bike): string => {
      const [rings = 1, rear = 1] = shifterPlaces(bike);
      if (!hasHub(bike)) return `${rings} × ${rear} gears`;
      return rings === 1 ? `${rear} gears inside` : `${rings} × ${rear} gears, ${rear} of them inside`;
    },
    riderNames: {
      'child-9': 'A child of about nine',
      'adult-new': 'New to it',
      'adult-weekly': 'Rides every week',
      'adult-strong': 'Strong',
    } as Readonly<Record<string, string>>,
    ownRider: 'Own numbers',
  },
  keys: {
    'rear-easier': 'Rear: easier',
    'rear-harder': 'Rear: harder',
    'front-smaller': 'Front: smaller ring',
    'front-bigger': 'Front: bigger ring',
    ease: 'Soft feet',
    press: 'Push hard',
    coast: 'Coast',
    brake: 'Brake',
    pause: 'Pause',
  },
  keyNames: { Space: 'Space', Escape: 'Esc', Enter: 'Enter', Tab: 'Tab' } as Readonly<Record<string, string>>,
};

/** How a key is called: its letter, its arrow, or its name. */
export function keyName(code: string): string {
  const arrow = { ArrowUp: '↑', ArrowDown: '↓', ArrowLeft: '←', ArrowRight: '→' }[code];
  return arrow ?? commonWords.keyNames[code] ?? code.replace(/^(Key|Digit)/, '');
}
