/**
 * The sentences of the forms for an own bike and an own rider. What is wrong with a tooth count or a tyre stands in
 * `src/words/bike.ts`.
 */
import type { TapResult } from '../../core/coach/tapTest.ts';
import type { HubKind } from '../../core/model/hubKinds.ts';
import type { BikeWarning } from '../../core/model/bikeInput.ts';

type TapRefusal = Extract<TapResult, { ok: false }>['code'];

/** English. */
export const ownBikeWords = {
  title: 'Own bike',
  intro: 'Count the teeth, or read the numbers stamped on them.',
  rings: 'Chainrings',
  ringsHint: 'For example 50/34, or 32.',
  gearing: 'Gears at the rear',
  onSprockets: 'Sprockets and a derailleur',
  inHub: {
    three: 'Hub with 3 gears',
    'three-wide': 'Hub with 3 gears, wider steps',
    five: 'Hub with 5 gears',
    'five-wide': 'Hub with 5 gears, wider steps',
    seven: 'Hub with 7 gears',
    eight: 'Hub with 8 gears, close steps',
    'eight-wide': 'Hub with 8 gears, wide steps',
    fourteen: 'Hub with 14 gears',
  } satisfies Record<HubKind, string>,
  hubSprocket: 'Sprocket before the hub',
  hubSprocketHint: 'Its teeth, like 19.',
  hubSprocketWrong: 'A hub has one sprocket. Write its teeth, for example 19.',
  backPedalBrake: 'Brakes when I pedal backwards',
  hubRule: 'A hub changes while you do not push: let the pressure off, or stand still.',
  motor: 'Motor',
  noMotor: 'No motor',
  motorAt: { crank: 'Motor at the crank', wheel: 'Motor in a wheel' },
  help: 'Its help',
  helpOf: {
    0: 'Off',
    0.5: 'Half as much as you',
    1: 'As much as you',
    2: 'Twice as much as you',
  },
  battery: 'In the battery',
  batteryHint: 'In watt hours, when a ride begins, like 500.',
  batteryWrong: 'Write the watt hours in the battery, from 0 to 999, for example 500.',
  brakeSwitches: 'The brake levers switch it off',
  hubGears: (rings: number, gears: number): string =>
    rings === 1 ? `${gears} gears in the hub` : `${rings} × ${gears} gears, ${gears} of them in the hub`,
  way: 'Sprockets',
  range: 'From smallest to biggest',
  each: 'One by one',
  sprockets: 'Range of the cassette',
  sprocketsHint: 'For example 11-32.',
  count: 'How many sprockets',
  completed: (teeth: string): string => `Taken as ${teeth}. Not yours? Write them one by one.`,
  sprocket: (place: number): string => `Sprocket ${place}`,
  sprocketTeeth: 'Teeth of each sprocket',
  add: 'Add a sprocket',
  remove: (place: number): string => `Take sprocket ${place} away`,
  emptySprocket: (place: number): string => `Sprocket ${place} is empty. Write its teeth, or take it away.`,
  tyre: 'Tyre',
  tyreHint: 'The mark on its side, like 28-622.',
  crank: 'Crank length',
  crankHint: 'In mm, stamped on the inside, like 170.',
  crankWrong: 'Write the crank length in mm, from 90 to 200, for example 170.',
  mass: 'Weight of the bike',
  massHint: 'In kg. A guess is good enough.',
  massWrong: 'Write the weight in kg, from 5 to 40, for example 14 or 9.5.',
  shifters: 'Shifters',
  mechanical: 'Cable',
  electronic: 'Electronic',
  refuses: 'Refuses gears that cross the chain',
  stacks: (rings: string, sprockets: string): string => `Chainrings ${rings}. Sprockets ${sprockets}.`,
  gears: (rings: number, sprockets: number): string => `${rings} × ${sprockets} gears`,
  lastGood: 'Drawn is the last bike that was possible.',
  warnings: (warning: BikeWarning): string => {
    switch (warning.code) {
      case 'capacity':
        return `This asks the rear derailleur to take up ${warning.capacityTeeth} teeth of chain; usual ones take up at most ${warning.usualTeeth}. Ask a mechanic, and read the maker’s documents.`;
      case 'big-step':
        return `From ${warning.fromTeeth} to ${warning.toTeeth} teeth is a big step for a front derailleur. Ask a mechanic, and read the maker’s documents.`;
    }
  },
  rider: {
    title: 'Rider',
    way: 'How well do you know yourself?',
    feel: 'By feel',
    numbers: 'By numbers',
    mass: 'Weight of the rider',
    massHint: 'In kg, with clothes.',
    massWrong: 'Write the weight in kg, from 15 to 200, for example 68.',
    power: 'Steady power',
    powerHint: 'In watts, what you hold for an hour of talking.',
    powerWrong: 'Write the power in watts, from 20 to 450, for example 130.',
    low: 'Slowest cadence you like',
    high: 'Fastest cadence you like',
    perMinute: 'Turns of the pedals in a minute.',
    lowWrong: 'Write turns a minute, from 40 to 120, for example 70.',
    highWrong: 'Write turns a minute, from 45 to 130, for example 90.',
    narrow: 'The fastest must be at least 5 above the slowest.',
  },
  tap: {
    title: 'Tap test',
    intro:
      'Turn your pedals as you like it, or think of it. Tap once each time the same foot is down, for 20 seconds. Space works too.',
    first: 'Tap',
    firstHint: 'The time begins with your first tap.',
    left: (secs: number): string => `${secs} s`,
    taps: (n: number): string => (n === 1 ? '1 tap' : `${n} taps`),
    stop: 'Stop',
    again: 'Tap again',
    found: (rpm: string, low: string, high: string): string =>
      `You turn about ${rpm} times a minute. Your band is now ${low} to ${high}.`,
    slips: (missed: number, doubled: number): string =>
      [
        missed === 0 ? '' : missed === 1 ? 'One turn without a tap' : `${missed} turns without a tap`,
        doubled === 0 ? '' : doubled === 1 ? 'one tap too many' : `${doubled} taps too many`,
      ]
        .filter((part) => part !== '')
        .join(' and '),
    slipsPutRight: (slips: string): string => `${slips}: put right.`,
    undo: 'Band as it was',
    undone: 'Your band is as it was.',
    refused: {
      'too-few': 'Too few taps to tell. Tap once for every turn until the time is over.',
      'too-short': 'Too short to tell. Keep on until the time is over.',
      'too-slow': 'That is slower than pedalling. Tap at every turn, not at every second one.',
      'too-fast': 'That is faster than pedalling. Tap with one foot only, once for a whole turn.',
      unsteady: 'The taps came unevenly. Find a beat first, then begin.',
    } satisfies Record<TapRefusal, string>,
    unchanged: 'Your band has not changed.',
  },
};

export type OwnBikeWords = typeof ownBikeWords;

/** Sentences of the page of bike and rider, besides the forms for a bike and numbers of one's own. */
export const bikePageWords = {
  intro: 'Take the bike that is most like yours. It rides as its gears, wheels and weight say.',
  bikes: 'Bike',
  ownHint: 'Your own tooth counts and tyres',
  rings: 'Chainring',
  sprockets: 'Sprockets',
  hubSprocket: 'gears in the hub behind a sprocket of',
  backPedal: 'back-pedal brake',
  motorTitle: 'Before you ride with a motor',
  tyre: 'Tyre',
  mechanical: 'cable',
  electronic: 'electronic',
  riderHints: {
    'child-9': 'Light, and quick legs for small hills.',
    'adult-new': 'Gets out of breath on a bridge.',
    'adult-weekly': 'Likes hills that end.',
    'adult-strong': 'Looks for the hill.',
  } as Readonly<Record<string, string>>,
  done: 'Ride this bike',
};
