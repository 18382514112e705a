/**
 * How much is let in at every door, in one table: each limit with its number, its unit and what it is for. A limit
 * is far above what honest things need and low enough that looking at anything below it does not make a page wait.
 * The page "What is trusted" prints this table with the reasons, which are comments, so that no page has to fetch
 * them; who measures against it stands at the doors.
 */

/** One limit: `most` is still let in, one more is not. The unit `deep` is how far lists and objects may lie inside each other. */
export interface Limit {
  readonly most: number;
  readonly unit: string;
}

/** Texts and values that lie inside each other deeper than this are nobody's work. */
const DEEP: Limit = { most: 64, unit: 'deep' }; // ours are at most ten deep

/** All limits by door. */
export const LIMITS = {
  level: {
    bytes: { most: 2_000_000, unit: 'bytes' }, // twenty kilometres by the metre, written wide, take a third
    deep: DEEP,
    entries: { most: 30_000, unit: 'entries' }, // values in it; twenty kilometres by the metre have two thirds
    pieces: { most: 200, unit: 'pieces' }, // a road with a new piece every hundred metres
    heights: { most: 5_000, unit: 'heights' }, // in one recorded piece
    problems: { most: 8, unit: 'entries' }, // problems that are named; the others are only counted
  },
  link: {
    characters: { most: 900_000, unit: 'characters' }, // an address; a plan in 999 codes takes 800,000
    levelCharacters: { most: 200_000, unit: 'characters' }, // a level in a link
    unpackedBytes: { most: 500_000, unit: 'bytes' }, // a level once it is unpacked, whatever it was packed into
    storeCharacters: { most: 8_000, unit: 'characters' }, // a text in which the settings of a store are looked for; four longest parts in any script take 6,500
    storePart: { most: 400, unit: 'characters' }, // address, database, name or password of a store; a long address has a hundred
  },
  code: {
    characters: { most: 800, unit: 'characters' }, // one code a camera can read
    frames: { most: 999, unit: 'frames' }, // codes of one message
    messages: { most: 50, unit: 'messages' }, // a camera held at anything must not fill the memory
    damaged: { most: 200, unit: 'frames' }, // damaged codes that are remembered
    unpackedBytes: { most: 4_000_000, unit: 'bytes' }, // a message once it is unpacked
  },
  gpx: {
    bytes: { most: 300_000_000, unit: 'bytes' }, // what is read of a file, in slices and in a worker
    characters: { most: 64_000_000, unit: 'characters' }, // text in it, after its encoding
    points: { most: 500_000, unit: 'points' }, // a point a second for six days
    deep: { most: 100, unit: 'deep' }, // real files are some ten elements deep
    value: { most: 200, unit: 'characters' }, // text where a number or a time should stand
  },
  ride: {
    seconds: { most: 14_400, unit: 'seconds' }, // four hours of riding
    commands: { most: 100_000, unit: 'commands' }, // seven a second for four hours
    checkpoints: { most: 10_000, unit: 'entries' }, // fingerprints on the way; four hours have 2,880
  },
  copy: {
    bytes: { most: 256_000_000, unit: 'bytes' }, // five thousand long rides
    records: { most: 100_000, unit: 'records' }, // three hundred evenings with three hundred rides
    deep: DEEP,
  },
  plan: {
    characters: { most: 8_000_000, unit: 'characters' }, // twelve own roads of twenty kilometres
    deep: DEEP,
    entries: { most: 500, unit: 'entries' }, // values in it, own roads aside; an evening has sixty
    rides: { most: 12, unit: 'rides' }, // an evening
    attempts: { most: 10, unit: 'rides' }, // attempts of one rider on one ride
    problems: { most: 8, unit: 'entries' }, // problems that are named; the others are only counted
  },
  sessionPlan: {
    characters: { most: 60_000, unit: 'characters' }, // a sheet of A4 has four thousand
    deep: DEEP,
    lines: { most: 12, unit: 'lines' }, // sentences of one part; ours have at most five
    lineCharacters: { most: 300, unit: 'characters' }, // one sentence
  },
  rideFile: {
    characters: { most: 60_000_000, unit: 'characters' }, // ten evenings of a hundred rides with recordings
    lines: { most: 20_000, unit: 'lines' }, // sixty riders, twelve rides, ten attempts, three times over
    lineCharacters: { most: 8_000_000, unit: 'characters' }, // a ride of an hour with a command a second has a tenth
    withdrawn: { most: 10_000, unit: 'records' }, // rides one device has taken back
    deep: DEEP,
  },
  store: {
    bytes: { most: 16_000_000, unit: 'bytes' }, // one answer; two hundred long rides
    rows: { most: 200, unit: 'rows' }, // in one answer, as many as were asked for
    pages: { most: 500, unit: 'pages' }, // answers in a row before a person is asked
    seconds: { most: 30, unit: 'seconds' }, // a store that says nothing for so long is taken for gone
    allSeconds: { most: 300, unit: 'seconds' }, // reading in one go; the rest comes the next time
    place: { most: 8_000, unit: 'characters' }, // how far its list has been read, in its own words
    deep: DEEP,
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Limit>>>>;
