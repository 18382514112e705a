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
    wrong: {
      late: (pitch: number, n: number, all: number): string =>
        `Pitch ${pitch}: ${of(n, all)} riders too late`,
      early: (pitch: number, n: number, all: number): string =>
        `Pitch ${pitch}: ${of(n, all)} riders too early`,
      mixed: (pitch: number, early: number, late: number, all: number): string =>
        `Pitch ${pitch}: of ${riders(all)}, ${early} too early and ${late} too late`,
    },
    right: 'No pitch was taken too early or too late',
    ready: (group: string, best: string): string => `Group ready ${group}, best ride ${best}.`,
    neverReady: (best: string): string => `Most were never ready for it, the best ride ${best}.`,
    noPitch: 'This road has no pitch that asks for a shift',
    noLines: 'These rides came without their lines; only marks can be shown.',
    ownRoads: 'Everybody rode a road of their own, so there is no common line.',
    tracks: { development: 'Gear', cadenceRpm: 'Cadence' },
    legend: {
      best: 'best ride ready',
      middle: 'group ready',
    },
    stripDesc: (length: string, n: number): string =>
      `${rides(n)} over ${length} of road: for each pitch where the group and the best ride had their gear ready, and how many riders were too early, about right and too late.`,
    barOf: (kind: string, n: number, all: number): string => `${kind}: ${of(n, all)} riders`,
    pitch: (n: number): string => `Pitch ${n}`,
    caughtShort: (caught: number, all: number): string => `caught ${of(caught, all)}`,
    dots: 'One dot is one rider; a filled one was caught at least once.',
    group: 'group ready',
    best: 'best ride ready',
    never: 'never',
    timing: { tooEarly: 'too early', aboutRight: 'about right', tooLate: 'too late' },
    shares: (one: string, other: string): string => `${one}, ${other}`,
    timingCount: (n: number, all: number): string => `${of(n, all)} times over a pitch`,
    change: (better: number, worse: number, all: number, isRiders: boolean): string =>
      `${of(better, all)} ${isRiders ? 'riders' : 'pairs of rides'} clearly better${worse === 0 ? '' : `, ${worse} clearly worse`}`,
    changeSame: 'Nobody changed by more than chance makes',
    changeNone: 'Nobody has ridden anything twice yet',
    changeSays: (better: number, same: number, worse: number, chance: number): string =>
      `${better} clearly better, ${worse} clearly worse, ${same} within what chance makes (less than ${chance} points).`,
    first: 'First attempt',
    last: 'Last attempt',
    points: 'points',
    bins: (low: number, high: number, n: number): string => `${low} to ${high} points: ${n}`,
    question: {
      where: 'When did we shift for the hill?',
      caught: 'Which hill caught most of us?',
      timing: 'Were we early, right, or late?',
      change: 'Did we get better with practice?',
      table: 'How did it go?',
    },
    answer: {
      caught: (hill: number, n: number, all: number): string => `Hill ${hill} caught ${of(n, all)} of us`,
      nobody: 'No hill caught us. Well shifted!',
      noHill: 'No hill here asked us to click',
      where: {
        late: (hill: number, n: number, all: number): string =>
          `Hill ${hill}: ${of(n, all)} of us clicked too late`,
        early: (hill: number, n: number, all: number): string =>
          `Hill ${hill}: ${of(n, all)} of us clicked too early`,
        mixed: (hill: number, n: number, all: number): string =>
          `Hill ${hill}: ${of(n, all)} of us were early or late`,
      },
      always: 'Right every time. Well shifted!',
      often: {
        late: 'More often too late than right',
        early: 'More often too early than right',
        mixed: 'Sometimes too early, sometimes too late',
      },
      sometimes: {
        late: 'Mostly right, sometimes too late',
        early: 'Mostly right, sometimes too early',
        mixed: 'Mostly right, sometimes early, sometimes late',
      },
      better: (better: number, all: number, isRiders: boolean): string =>
        isRiders
          ? `${of(better, all)} of us got clearly better`
          : `We got clearly better ${of(better, all)} times`,
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
    intro: 'A page for each road in black and white, and files for a spreadsheet or another program.',
    names: 'With animals and nicknames',
    namesHint: 'Without it the page holds no names. Files always hold nicknames.',
    print: 'Print',
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
    caught: 'Caught (riders)',
    timing: 'Early / right / late (rides)',
    group: 'Group ready',
    best: 'Best ride ready',
    ready: 'Ready: the gear for the pitch is in and its last shift finished.',
    before: (metres: string): string => `${metres} before the foot`,
    after: (metres: string): string => `${metres} after the foot`,
    attempts: 'First and last attempt',
    all: 'Totals, attempt by attempt',
    footer:
      'Marks come from a model of riding. They tell the timing of shifts on these roads, not the worth of a rider.',
  },
};
