/** Every sentence of the page about rides on real roads. Numbers with units come in written. */
import type { RoadRideProblem } from '../../core/recorded/rideFigures.ts';

const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
/** A small count as a word, a bigger one in digits. */
const count = (n: number): string => COUNTS[n] ?? String(n);
const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

const pitches = (n: number): string => (n === 1 ? 'one pitch' : `${count(n)} pitches`);

/** English. */
export const roadWords = {
  title: 'On the road',
  intro: 'What recorded rides show of your shifting, pitch by pitch.',
  opening: 'One moment: your rides are being fetched.',
  openFailed: 'What is kept could not be opened. Load the page anew.',
  bring: {
    title: 'Bring a ride',
    what: 'GPX files with cadence, one point a second. Several at once are fine.',
    bike: (parts: string, tyre: string): string => `Ridden on ${parts} with a tyre of ${tyre}.`,
    otherBike: 'It was another bike',
    teeth: 'These are not the teeth it was ridden with',
    teethHint: 'Then gears are told apart without a name, and fewer of them.',
    files: 'Choose GPX files',
    metres: 'They are in metres',
    feet: 'They are in feet',
    privacy:
      'The file stays on this device and is not kept. Only numbers for each pitch and the month are kept: no place, no time of day, no trace.',
    reading: (share: string): string => `Reading … ${share}`,
    judging: (done: number, all: number): string =>
      `The best ride of your power rides the same pitches: ${done} of ${all} …`,
  },
  problems: {
    'no-times': 'This file does not say when it was ridden, or its times run backwards. Record with times.',
    'no-cadence':
      'There is no cadence in this file, so gears cannot be told. A sensor at the cranks writes it; export with all data.',
    'no-road': 'This file could not be looked at. Choose it again.',
  } as Readonly<Record<RoadRideProblem | 'no-road', string>>,
  refused: (name: string): string => `${name} was not taken`,
  ride: {
    title: (month: string | null, length: string): string =>
      month === null ? `A ride of ${length}` : `${month}: a ride of ${length}`,
    named: (title: string, file: string): string => `${title} (${file})`,
    pitchesOf: (title: string): string => `Pitches: ${title}`,
    summary: (readable: string, found: number): string =>
      `The gear could be read on ${readable} of the time. ${capital(pitches(found))} found.`,
    habits: (perKm: string | null, inBand: string | null): string =>
      [
        perKm === null ? '' : `${perKm} changes of gear a km.`,
        inBand === null ? '' : `${inBand} of the pedalled time in your band.`,
      ]
        .filter((part) => part !== '')
        .join(' '),
    power: (watts: string): string =>
      `The hills say that you ride with about ${watts} W; the best ride beside yours has the same power.`,
    powerUnknown:
      'There was too little climbing in your band to tell your power; the best ride has that of your rider here.',
    noPitch: 'No pitch was found: the road never gets three points steeper at once.',
    keep: 'Keep the numbers',
    kept: 'Kept: the numbers you see here and nothing else.',
    already: 'This ride is kept already.',
    notKept: 'It could not be kept on this device.',
  },
  picture: {
    title: 'Where the first easier gear came',
    desc: (own: string, best: string | null): string =>
      best === null ? `First easier gear ${own}.` : `First easier gear ${own}; the best ride ${best}.`,
    foot: 'foot',
    before: 'before',
    beyond: 'on the pitch',
    own: 'you, give or take',
    best: 'best ride of your power',
  },
  table: {
    pitch: 'Pitch',
    first: 'First easier gear',
    atFoot: 'Done at the foot',
    cadence: 'Legs: before, foot, slowest',
    best: 'Best ride',
    again: 'Again',
    name: (slope: string, length: string): string => `${slope}, ${length}`,
    before: (metres: string, pm: string | null): string =>
      `${metres} before the foot${pm === null ? '' : ` ± ${pm}`}`,
    after: (metres: string, pm: string | null): string =>
      `${metres} behind the foot${pm === null ? '' : ` ± ${pm}`}`,
    none: 'no easier gear',
    unread: 'gears not readable',
    unknown: '–',
    best2: (place: string, share: string | null): string =>
      share === null ? place : `${place}, ${share} done`,
    ride: 'Ride it again',
    rideThis: (pitch: string): string => `Ride it again: ${pitch}`,
    inGame: (foresight: string, total: string): string =>
      `In the game: foresight ${foresight}, total ${total}.`,
    notMade: 'No level can be made of this place.',
  },
  level: {
    title: (slope: string, length: string): string => `Your pitch: ${slope}, ${length}`,
    sentence: 'A pitch from a ride of your own, with the way to it.',
  },
  all: {
    title: 'All kept rides',
    empty: 'No ride is kept yet.',
    mean: (rides: number, found: number): string =>
      `${capital(rides === 1 ? 'one ride' : `${count(rides)} rides`)}, ${pitches(found)}.`,
    month: 'Month',
    noMonth: 'month not known',
    rides: 'Rides',
    pitches: 'Pitches',
    first: 'First easier gear',
    atFoot: 'Done at the foot',
    fall: 'Legs fall by',
    inBand: 'In band',
    check: 'Check rides in the game',
    perMinute: (n: string): string => `${n}/min`,
    giveOrTake: (value: string, pm: string | null): string => (pm === null ? value : `${value} ± ${pm}`),
    checks: (totals: string): string => `total ${totals}`,
    few: 'Below ten pitches a mean says little.',
    byMonth: 'Month by month',
    numbered: (n: number, title: string): string => `${n}. ${title}`,
    what: 'What is kept',
    whatHint: 'This is all, as it is kept. It says nothing of where or at what time you rode.',
    forget: 'Remove',
    forgetThis: (ride: string): string => `Remove from this device: ${ride}`,
  },
  limits:
    'A reading a second cannot tell soft feet, the second of a shift, or the chain line. Places of shifts lie within what stands behind ±; wind, traffic and company are not in it.',
};

export type RoadWords = typeof roadWords;
