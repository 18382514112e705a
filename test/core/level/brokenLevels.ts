/**
 * Levels with one thing wrong each, as text the way a file would hold it, and the place that must be named.
 * Used by the tests of the parser and of the command line.
 */
import { BUNDLED } from '../ride/worlds.ts';

/** One broken level. */
export interface BrokenLevel {
  readonly what: string;
  readonly text: string;
  /** Path that must be named, empty for the whole file. */
  readonly path: string;
  /** Words the sentence must contain, so that it tells what to do. */
  readonly says: RegExp;
}

type Json = Record<string, unknown>;

/** A sound level with stop lines, winds, hidden stretches and cues. */
function sound(): Json {
  const found = BUNDLED.find(({ level }) => level.stopLinesM.length > 1 && level.winds.length > 1);
  if (found === undefined) throw new Error('no bundled level has stops and winds');
  return JSON.parse(found.text) as Json;
}

/** The sound level with parts replaced; `undefined` leaves a part out. */
function withPart(part: Json): string {
  return JSON.stringify({ ...sound(), ...part });
}

function broken(what: string, part: Json, path: string, says: RegExp): BrokenLevel {
  return { what, text: withPart(part), path, says };
}

const flat = { kind: 'flat', lengthM: 2000 };
const pieces = (...first: Json[]): Json => ({ pieces: [...first, flat] });
const aids = (): Json => sound()['aids'] as Json;
const weights = (): Json => sound()['weights'] as Json;

const files: BrokenLevel[] = [
  { what: 'an empty file', text: '', path: '', says: /empty/ },
  { what: 'a word', text: 'hello', path: '', says: /JSON/ },
  {
    what: 'a file cut in the middle',
    text: withPart({}).slice(0, 200),
    path: '',
    says: /JSON; (it ends too early|the fault is near line 1)/,
  },
  { what: 'a comma too many', text: '{\n  "schema": 1,\n}', path: '', says: /near line 3.*comma/ },
  { what: 'a list', text: '[]', path: '', says: /braces/ },
  { what: 'a number', text: '42', path: '', says: /braces/ },
  { what: 'null', text: 'null', path: '', says: /braces/ },
];

const heads: BrokenLevel[] = [
  broken('no schema', { schema: undefined }, 'schema', /missing.*1/),
  broken('a newer schema', { schema: 2 }, 'schema', /newer/),
  broken('an older schema', { schema: 0 }, 'schema', /0.*1/),
  broken('a schema in words', { schema: 'one' }, 'schema', /"one".*1/),
  broken('no id', { id: undefined }, 'id', /missing/),
  broken('an id with blanks and capitals', { id: 'My Level' }, 'id', /small letters/),
  broken('no title', { title: undefined }, 'title', /missing.*text/),
  broken('an empty title', { title: '' }, 'title', /at least 1 character; it has 0/),
  broken('an endless title', { title: 'x'.repeat(81) }, 'title', /at most 80 characters; it has 81/),
  broken('a title that is a number', { title: 7 }, 'title', /7.*text/),
  broken('an unknown lesson', { teaches: 'flying' }, 'teaches', /flying.*look-ahead/),
  broken('no lesson', { teaches: undefined }, 'teaches', /missing.*look-ahead/),
  broken('an unknown audience', { audience: 'dogs' }, 'audience', /children/),
  broken('a seed with a fraction', { seed: 1.5 }, 'seed', /1\.5.*whole/),
  broken('a negative seed', { seed: -1 }, 'seed', /at least 0/),
  broken('a misspelt part', { wind: [] }, 'wind', /spelling/),
  broken('a pass mark of 150', { passMark: 150 }, 'passMark', /150.*100/),
  broken('light that does not exist', { light: 'disco' }, 'light', /evening/),
];

const roads: BrokenLevel[] = [
  broken('no pieces', { pieces: undefined }, 'pieces', /missing.*list/),
  broken('an empty list of pieces', { pieces: [] }, 'pieces', /at least 1 entry; it has 0/),
  broken('pieces that are no list', { pieces: { kind: 'flat', lengthM: 900 } }, 'pieces', /An object.*list/),
  broken(
    'a piece of an unknown kind',
    pieces({ kind: 'tunnel', lengthM: 50 }),
    'pieces[0].kind',
    /tunnel.*rollers/,
  ),
  broken('a piece without a kind', pieces({ lengthM: 50 }), 'pieces[0].kind', /missing.*rollers/),
  broken('a piece that is a word', { pieces: ['flat', flat] }, 'pieces[0]', /"flat".*object/),
  broken('a piece that is null', { pieces: [flat, null] }, 'pieces[1]', /object/),
  broken('a piece without a length', pieces({ kind: 'flat' }), 'pieces[0].lengthM', /missing.*number/),
  broken('a length in quotes', pieces({ kind: 'flat', lengthM: '50' }), 'pieces[0].lengthM', /"50".*number/),
  broken('a length below zero', pieces({ kind: 'flat', lengthM: -5 }), 'pieces[0].lengthM', /-5.*at least 1/),
  broken(
    'a length with a fraction',
    pieces({ kind: 'flat', lengthM: 10.5 }),
    'pieces[0].lengthM',
    /10\.5.*whole/,
  ),
  broken(
    'a gradient in percent',
    pieces({ kind: 'climb', lengthM: 50, slopeRatio: 8 }),
    'pieces[0].slopeRatio',
    /8 is out.*0\.2.*0\.08/,
  ),
  broken(
    'a pitch that falls',
    pieces({ kind: 'pitch', lengthM: 50, slopeRatio: -0.1 }),
    'pieces[0].slopeRatio',
    /at least 0/,
  ),
  broken(
    'a slope on a flat piece',
    pieces({ kind: 'flat', lengthM: 50, slopeRatio: 0 }),
    'pieces[0].slopeRatio',
    /spelling/,
  ),
  broken(
    'a road of 80 m',
    { pieces: [{ kind: 'flat', lengthM: 80 }], stopLinesM: [], winds: [], hidden: [], cues: [] },
    'pieces',
    /80 m.*at least 100 m/,
  ),
  broken(
    'a road of 30 km',
    pieces({ kind: 'flat', lengthM: 20000 }, { kind: 'flat', lengthM: 8000 }),
    'pieces',
    /30,000 m.*20,000 m/,
  ),
  broken(
    'the gentlest pitch steeper than the steepest',
    pieces({ kind: 'random-pitches', lengthM: 500, pitchCount: 2, gentlestRatio: 0.1, steepestRatio: 0.05 }),
    'pieces[0].gentlestRatio',
    /Swap/,
  ),
  broken(
    'ten pitches in 300 m',
    pieces({ kind: 'random-pitches', lengthM: 300, pitchCount: 10, gentlestRatio: 0.05, steepestRatio: 0.1 }),
    'pieces[0].pitchCount',
    /800 m/,
  ),
  broken(
    'waves of 5 m',
    pieces({ kind: 'rollers', lengthM: 300, waveM: 5, steepestRatio: 0.05 }),
    'pieces[0].waveM',
    /5 is out.*40/,
  ),
  broken(
    'a cliff in recorded heights',
    pieces({ kind: 'recorded', stepM: 10, heightsM: [0, 1, 9, 9] }),
    'pieces[0].heightsM[2]',
    /steeper/,
  ),
  broken(
    'one recorded height',
    pieces({ kind: 'recorded', stepM: 10, heightsM: [0] }),
    'pieces[0].heightsM',
    /at least 2 entries/,
  ),
  broken(
    'a recorded height that is null',
    pieces({ kind: 'recorded', stepM: 10, heightsM: [0, null, 1] }),
    'pieces[0].heightsM[1]',
    /null.*number/,
  ),
  broken('a join of 50 m', { joinM: 50 }, 'joinM', /50.*20/),
];

const laidOver: BrokenLevel[] = [
  broken('a stop line at the start', { stopLinesM: [5] }, 'stopLinesM[0]', /5 m.*40 m/),
  broken('a stop line beyond the end', { stopLinesM: [9000] }, 'stopLinesM[0]', /beyond/),
  broken('two stop lines 10 m apart', { stopLinesM: [300, 310] }, 'stopLinesM[1]', /310 m.*40 m/),
  broken(
    'a wind that ends before it begins',
    { winds: [{ fromM: 500, toM: 400, windMps: 3 }] },
    'winds[0].toM',
    /before it begins/,
  ),
  broken(
    'a wind beyond the end',
    { winds: [{ fromM: 500, toM: 5000, windMps: 3 }] },
    'winds[0].toM',
    /beyond/,
  ),
  broken('a storm', { winds: [{ fromM: 0, toM: 100, windMps: 40 }] }, 'winds[0].windMps', /40.*15/),
  broken(
    'two winds at one place',
    {
      winds: [
        { fromM: 0, toM: 100, windMps: 2 },
        { fromM: 50, toM: 150, windMps: 3 },
      ],
    },
    'winds[1]',
    /overlaps with winds\[0\]/,
  ),
  broken(
    'an unknown surface',
    { surfaces: [{ fromM: 0, toM: 90, surface: 'ice' }] },
    'surfaces[0].surface',
    /ice.*gravel/,
  ),
  broken(
    'a hidden stretch without sight',
    { hidden: [{ fromM: 0, toM: 90 }] },
    'hidden[0].sightM',
    /missing.*number/,
  ),
  broken('an unknown cue', { cues: [{ atM: 10, cue: 'jump' }] }, 'cues[0].cue', /jump.*hill-ahead/),
  broken('a cue without words', { cues: [{ atM: 10 }] }, 'cues[0]', /"cue".*"text"/),
  broken(
    'a cue with too many words',
    { cues: [{ atM: 10, text: 'x'.repeat(77) }] },
    'cues[0].text',
    /at most 76/,
  ),
  broken('a cue beyond the end', { cues: [{ atM: 9000, cue: 'hill-ahead' }] }, 'cues[0].atM', /beyond/),
  broken('an aid that is a word', { aids: { ...aids(), cues: 'yes' } }, 'aids.cues', /"yes".*true or false/),
  broken('an aid left out', { aids: { ...aids(), cues: undefined } }, 'aids.cues', /missing.*true or false/),
  broken('no weights', { weights: undefined }, 'weights', /missing.*object/),
  broken('a weight below zero', { weights: { ...weights(), easing: -1 } }, 'weights.easing', /at least 0/),
  broken(
    'weights that are all zero',
    { weights: { cadence: 0, foresight: 0, easing: 0, chainLine: 0, economy: 0 } },
    'weights',
    /above 0/,
  ),
];

const sly: BrokenLevel[] = [
  {
    what: 'a number too big to be one',
    text: withPart({}).replace('"seed":41', '"seed":1e999'),
    path: 'seed',
    says: /too big/,
  },
  {
    what: 'a part named __proto__',
    text: withPart({}).replace('{', '{"__proto__":{"x":1},'),
    path: '__proto__',
    says: /spelling/,
  },
  broken('a part with a name as long as a page', { ['x'.repeat(5000)]: 1 }, `${'x'.repeat(57)}…`, /spelling/),
];

/** All of them. */
export const BROKEN_LEVELS: readonly BrokenLevel[] = [...files, ...heads, ...roads, ...laidOver, ...sly];
