/** Words of the group picture and of the report of a session. English. */
import { capital } from '../../words/counting.ts';

const of = (n: number, all: number): string => `${n} of ${all}`;
const riders = (n: number): string => (n === 1 ? '1 rider' : `${n} riders`);
const rides = (n: number): string => (n === 1 ? '1 ride' : `${n} rides`);

/** English. */
export const clinicPictureWords = {
  picture: {
    working: 'The group picture is being counted …',
    failed: 'The picture could not be counted. Load the page anew, then open it again.',
    none: 'No ride yet. The picture grows with every ride.',
    closed: 'In this plan everybody sees their own marks only.',
    apart: (n: number): string =>
      `${rides(n)} did not come out as the marks say, and ${n === 1 ? 'is' : 'are'} not counted here.`,
    otherVersion: (n: number): string =>
      `${rides(n)} came from another version of the game: the marks count as they came, but they cannot be ridden again here.`,
    open: 'Show it to the group all the same',
    road: 'Road',
    roadName: (title: string, n: number): string => `${title} (${rides(n)})`,
    boards: {
      where: 'Along the road',
      caught: 'Pitch by pitch',
      timing: 'When',
      change: 'First and last',
      table: 'Table',
    },
    label: 'What is shown',
    talk: 'Talk with children',
    show: 'Show the answer',
    hide: 'Ask again',
    guess: 'First guess, then look.',
    rides: (r: number, n: number): string => `${rides(r)} by ${riders(n)}, without names`,
    caught: (pitch: number, caught: number, all: number): string =>
      `Pitch ${pitch} caught ${of(caught, all)} riders`,
    caughtNobody: 'No pitch caught anybody',
    noPitch: 'This road has no pitch',
    later: (metres: string, pitch: number): string =>
      `At pitch ${pitch} the group shifts ${metres} later than the best ride`,
    sooner: (metres: string, pitch: number): string =>
      `At pitch ${pitch} the group shifts ${metres} sooner than the best ride`,
    likeBest: 'The group shifts where the best ride does',
    noLines: 'These rides came without their lines; only marks can be shown.',
    ownRoads: 'Everybody rode a road of their own, so there is no common line.',
    tracks: { road: 'Road', shifts: 'Easier shifts', gear: 'Gear', cadence: 'Cadence' },
    legend: {
      best: 'best ride',
      half: 'middle half of the group',
      middle: 'middle of the group',
      each: 'each ride',
    },
    stripDesc: (length: string, n: number): string =>
      `${rides(n)} over ${length} of road: the road with its pitches, where easier shifts were made, gear and cadence, with the best ride.`,
    pitch: (n: number): string => `Pitch ${n}`,
    caughtShort: (caught: number, all: number): string => `caught ${of(caught, all)}`,
    dots: 'One dot is one rider; a filled one was caught.',
    foot: 'foot',
    firstShift: 'First easier shift, metres before the foot',
    group: 'group',
    best: 'best ride',
    without: (pitch: number, without: number, all: number): string =>
      `No easier shift for pitch ${pitch} in ${of(without, all)} rides`,
    noShift: 'no shift',
    timing: { tooEarly: 'too early', aboutRight: 'about right', tooLate: 'too late' },
    timingTitle: (share: string): string => `${share} of all pitches were taken about right`,
    timingCount: (n: number): string => (n === 1 ? '1 pitch' : `${n} pitches`),
    change: (first: string, last: string): string => `The middle of the group went from ${first} to ${last}`,
    changeNone: 'Nobody has ridden anything twice yet',
    changeSays: (better: number, same: number, worse: number, chance: number): string =>
      `${better} clearly better, ${worse} clearly worse, ${same} within what chance makes (less than ${chance} points).`,
    first: 'First attempt',
    last: 'Last attempt',
    points: 'points',
    bins: (low: number, high: number, n: number): string => `${low} to ${high} points: ${n}`,
    question: {
      where: 'When did we shift for the hill?',
      caught: 'Where did most of us get stuck?',
      timing: 'Were we early, right, or late?',
      change: 'Did we get better with practice?',
      table: 'How did it go?',
    },
    answer: {
      caught: (pitch: number, caught: number, all: number): string =>
        `Hill ${pitch}: ${of(caught, all)} of us got stuck there`,
      nobody: 'Nobody got stuck. Well shifted!',
      later: (metres: string): string => `We clicked ${metres} later than the best ride`,
      sooner: (metres: string): string => `We clicked ${metres} earlier than the best ride`,
      without: (hill: number): string => `Most of us did not click for hill ${hill} at all`,
      like: 'We clicked where the best ride does',
      timing: (most: string): string => `Mostly ${most}`,
      better: (better: number, all: number): string => `${of(better, all)} of us got clearly better`,
      hill: (n: number): string => `Hill ${n}`,
    },
    table: {
      rider: 'Rider',
      ride: 'Ride',
      attempt: 'Attempt',
      total: 'Total',
      pitches: 'Pitches (%)',
      none: '–',
    },
  },
  report: {
    title: 'Report',
    intro: 'One page in black and white, and files for a spreadsheet or another program.',
    names: 'With animals and nicknames',
    namesHint: 'Without it the page holds no names. Files always hold nicknames.',
    print: 'Print one page',
    csv: 'Save as CSV',
    json: 'Save as JSON',
    remove: 'Delete the session',
    sureTitle: 'Delete the session?',
    sure: (n: number): string =>
      `${capital(rides(n))} and the round go from this device. This cannot be undone.`,
    keep: 'Keep it',
    saveFirst: 'Save it first',
    removeSure: 'Delete it',
    sheet: 'Preview',
    rides: (r: number, n: number): string => `${rides(r)}, ${riders(n)}`,
    table: 'Pitches',
    pitch: 'Pitch',
    caught: 'Caught',
    timing: 'Early / right / late',
    group: 'Group shifts',
    best: 'Best ride shifts',
    before: (metres: string): string => `${metres} before the foot`,
    after: (metres: string): string => `${metres} after the foot`,
    attempts: 'First and last attempt',
    all: 'Totals, attempt by attempt',
    footer:
      'Marks come from a model of riding. They tell the timing of shifts on these roads, not the worth of a rider.',
  },
};
