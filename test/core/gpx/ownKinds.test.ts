/**
 * Forty awkward files of our own kinds, made on the spot from one known hill: 2 km due north, level but for 500 m at
 * 8 % in the middle, ridden at 5 m/s. Each must come out as that road, be asked about, or be refused for the true reason.
 */
import { gzipSync } from 'node:zlib';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { sentenceOf } from '../../../src/words/problems.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { roughNormal } from '../math/roughNormal.ts';
import { readGpx } from '../../../src/core/gpx/file.ts';
import { gpxText, imported, type MadePoint, northward, openDecoder, trackText } from './files.ts';

const hillM = (x: number): number => 420 + 0.08 * Math.max(0, Math.min(500, x - 750));
const stamp = (second: number): string => new Date(Date.UTC(2024, 4, 1, 9) + second * 1_000).toISOString();
const timed = (points: readonly MadePoint[], fromS = 0, stepS = 2): MadePoint[] =>
  points.map((point, i) => ({ ...point, time: stamp(fromS + i * stepS) }));
const ridden = timed(northward(201, 10, hillM));
const file = (points: readonly MadePoint[]): string => gpxText(trackText(points));
const plain = file(ridden);
const heightsAs = (write: (m: number, i: number) => string | number): string =>
  file(ridden.map((point, i) => ({ ...point, ele: write(Number(point.ele), i) })));
const inExtensions = (name: string): string =>
  plain.replace(
    /<ele>([^<]*)<\/ele>(<time>[^<]*<\/time>)/g,
    `$2<extensions><d:x><d:${name}>$1</d:${name}></d:x></extensions>`,
  );

/** Points of somebody who stands at a place of the line: noise of every point, and a drift that lasts (m). */
function standing(atM: number, seconds: number, noiseM: number, driftM: number, seed: number): MadePoint[] {
  const random = seededRandom(seed);
  const normal = (): number => roughNormal(random);
  let [east, north, up] = [0, 0, 0];
  return Array.from({ length: seconds }, () => {
    const keep = 1 - 1 / 60;
    const push = driftM * Math.sqrt(1 - keep * keep);
    [east, north, up] = [
      east * keep + push * normal(),
      north * keep + push * normal(),
      up * keep + 0.2 * normal(),
    ];
    return {
      lat: (46 + (atM + north + noiseM * normal()) / 111_143).toFixed(7),
      lon: (10 + (east + noiseM * normal()) / 77_400).toFixed(7),
      ele: (hillM(atM) + up).toFixed(2),
    };
  });
}

function withRest(rest: readonly MadePoint[], atIndex: number, stepS = 1): MadePoint[] {
  const before = ridden.slice(0, atIndex);
  const fromS = atIndex * 2;
  const after = timed(northward(201, 10, hillM).slice(atIndex), fromS + rest.length * stepS);
  return [...before, ...timed(rest, fromS, stepS), ...after];
}

const noTimes = (points: readonly MadePoint[]): MadePoint[] =>
  points.map(({ lat, lon, ele }) => ({ lat, lon, ...(ele === undefined ? {} : { ele }) }));
const cafe = standing(1_600, 1_800, 3, 12, 5);
const harsh = standing(1_600, 1_800, 10, 15, 7);
const feet = (m: number): string => (m / 0.3048).toFixed(1);
const zip = (files: Record<string, string | Uint8Array>): Uint8Array =>
  zipSync(
    Object.fromEntries(
      Object.entries(files).map(([name, content]) => [
        name,
        typeof content === 'string' ? strToU8(content) : content,
      ]),
    ),
  );

interface Wanted {
  readonly notes?: readonly string[];
  readonly asks?: readonly string[];
  /** Share of the road that may be gone or added, and climb (m) and steepest slope otherwise. */
  readonly within?: number;
  readonly climbM?: number;
  readonly steepest?: number;
  readonly refused?: string;
  /** A reason why the heights are trusted less. */
  readonly quality?: string;
  /** Cadence that is believed in the middle of its readings (rpm), and the month of the ride. */
  readonly cadenceRpm?: number;
  readonly month?: string;
}

const FILES: readonly (readonly [string, string | Uint8Array, Wanted])[] = [
  // Rests.
  ['half an hour at a café with times', file(withRest(cafe, 160)), { notes: ['stops'], within: 0.01 }],
  [
    'half an hour between high houses',
    file(withRest(harsh, 160)),
    { notes: ['impossible-points', 'stops'], within: 0.02 },
  ],
  [
    'a café, and a file without times',
    file(noTimes(withRest(cafe, 160))),
    { notes: ['stops'], within: 0.02 },
  ],
  [
    'high houses, and a file without times',
    file(noTimes(withRest(harsh, 160))),
    { notes: ['stops'], within: 0.03 },
  ],
  [
    'five minutes before the start',
    file(withRest(standing(0, 300, 3, 5, 11), 0)),
    { notes: ['stops'], within: 0.02 },
  ],
  [
    'ten minutes after the end',
    file(withRest(standing(2_000, 600, 3, 8, 13), 201)),
    { notes: ['stops'], within: 0.02 },
  ],
  [
    'a rest in the middle of the pitch',
    file(withRest(standing(1_000, 600, 4, 6, 17), 100)),
    { notes: ['stops'], within: 0.02 },
  ],
  [
    'a pause of the device for an hour',
    file([...ridden.slice(0, 90), ...timed(northward(201, 10, hillM).slice(90), 3_900)]),
    {},
  ],
  // Heights that are none.
  [
    'zeros on 100 m of the pitch',
    heightsAs((m, i) => (i >= 90 && i < 100 ? 0 : m)),
    { notes: ['zero-elevations'] },
  ],
  [
    'zeros until the device knows its height',
    heightsAs((m, i) => (i < 30 ? '0.0' : m)),
    { notes: ['zero-elevations'] },
  ],
  ['zeros at the end', heightsAs((m, i) => (i > 180 ? '0' : m)), { notes: ['zero-elevations'] }],
  [
    'three runs of zeros',
    heightsAs((m, i) => ([20, 80, 150].some((at) => i >= at && i < at + 6) ? 0 : m)),
    { notes: ['zero-elevations'] },
  ],
  ['a road by the sea, at zero and over a dyke', file(timed(northward(201, 10, (x) => hillM(x) - 420))), {}],
  [
    'no height for every other point',
    file(ridden.map((point, i) => (i % 2 === 1 ? noHeight(point) : point))),
    { notes: ['unwritten-elevations'] },
  ],
  [
    '"unknown" as a word',
    heightsAs((m, i) => (i % 50 === 3 ? 'n/a' : m)),
    { notes: ['unreadable-elevations'] },
  ],
  // Feet.
  ['feet that say so', heightsAs((m) => `${feet(m)} ft`), {}],
  [
    'feet that say nothing',
    heightsAs((m) => feet(m)),
    { asks: ['perhaps-feet'], climbM: 131.2, steepest: 0.2625 },
  ],
  [
    'feet on a long gentle climb, told by the times',
    file(timed(northward(301, 10, (x) => (0.04 * x) / 0.3048))),
    { asks: ['perhaps-feet'], climbM: 393.7, steepest: 0.1312, within: 0.6 },
  ],
  // Units and places of heights.
  ['metres that say so', heightsAs((m) => `${m.toFixed(1)} m`), {}],
  ['metres with a decimal comma and a unit', heightsAs((m) => `${m.toFixed(1).replace('.', ',')}m`), {}],
  ['elements in capitals', plain.replace(/<(\/?)ele>/g, '<$1ELE>'), {}],
  [
    'everything in capitals',
    plain
      .replace(
        /<(\/?)(gpx|trkseg|trkpt|trk|ele|time)\b/g,
        (_, slash: string, name: string) => `<${slash}${name.toUpperCase()}`,
      )
      .replaceAll('lat=', 'LAT=')
      .replaceAll('lon=', 'Lon='),
    {},
  ],
  ['heights in extensions', inExtensions('ele'), {}],
  ['altitude in extensions', inExtensions('Altitude'), {}],
  [
    'a spare height in extensions that is another',
    plain.replaceAll('</trkpt>', '<extensions><d:elevation>9</d:elevation></extensions></trkpt>'),
    {},
  ],
  // Text that is not quite XML.
  ['a bare ampersand in a name', plain.replace('<trk>', '<trk><name>Hill & Dale</name>'), {}],
  ['an entity of web pages in a name', plain.replace('<trk>', '<trk><name>H&uuml;gel&nbsp;2</name>'), {}],
  ['blank lines before the beginning', `\n\r\n  \n${plain}`, {}],
  ['no namespace on the points', plain.replaceAll('<trkpt ', '<trkpt xmlns="" '), {}],
  // Damage.
  [
    'cut off within a point',
    plain.slice(0, plain.indexOf('lat=', plain.length - 300) + 7),
    { notes: ['salvaged'] },
  ],
  [
    'a letter lost in one tag',
    plain.replace('</ele><time>2024-05-01T09:03', '</el><time>2024-05-01T09:03'),
    { notes: ['salvaged'] },
  ],
  ['cut off in its first line', plain.slice(0, 60), { refused: 'truncated' }],
  [
    'two files one behind the other',
    `${plain}\n${plain.replace(/^<\?xml.*\n/, '')}`,
    { notes: ['salvaged'], asks: ['several-tracks'] },
  ],
  // Packed.
  ['gzip', gzipSync(plain), {}],
  [
    'an archive with one ride and a picture',
    zip({ 'a/readme.png': 'x', 'a/Ride.GPX': plain, '__MACOSX/._Ride.gpx': 'x' }),
    {},
  ],
  ['a packed ride in an archive', zip({ 'ride.gpx.gz': gzipSync(plain) }), {}],
  ['a packed file without its end', gzipSync(plain).subarray(0, -60), { notes: ['salvaged'], within: 0.1 }],
  [
    'an archive with three rides',
    zip({ '1.gpx': plain, '2.gpx': plain, '3.gpx': plain }),
    { refused: 'packed-several' },
  ],
  ['an archive without a ride', zip({ 'photo.jpg': 'x' }), { refused: 'packed-without' }],
  [
    'a packed file that would burst',
    gzipSync(`${plain.slice(0, 400)}${' '.repeat(70_000_000)}`),
    { refused: 'too-big' },
  ],
];

/** What is handed over by mistake, cut differently, or written by programs that count and pack in ways of their own. */
const MORE: readonly (readonly [string, string | Uint8Array, Wanted])[] = [
  ['a FIT file in gzip', gzipSync(binary('0e105c08c8000000', '.FIT')), { refused: 'not-xml' }],
  ['a moving picture for pages', binary('474946383961'), { refused: 'not-xml' }],
  ['a picture of a phone', binary('00000018', 'ftypheic'), { refused: 'not-xml' }],
  ['an archive of another kind', binary('526172211a0700'), { refused: 'packed' }],
  [
    'a tape archive in gzip',
    gzipSync(strToU8(`a/ride.gpx${'\0'.repeat(90)}${plain}`)),
    { refused: 'packed' },
  ],
  ['a web page behind a remark', '<!-- x -->\n<!DOCTYPE html>\n<html></html>', { refused: 'not-gpx' }],
  [
    'a strict web page',
    '<?xml version="1.0"?>\n<!DOCTYPE html PUBLIC "a" "b">\n<html/>',
    { refused: 'not-gpx' },
  ],
  [
    'a document type of its own',
    plain.replace('<gpx', '<!DOCTYPE gpx [<!ENTITY a "b">]>\n<gpx'),
    { refused: 'doctype' },
  ],
  ['longitudes counted eastward to 360', plain.replaceAll('lon="10"', 'lon="350.5"'), {}],
  ['longitudes beyond that', plain.replaceAll('lon="10"', 'lon="361"'), { refused: 'no-readable-points' }],
  ['points in no segment', plain.replace(/<\/?trkseg>/g, ''), {}],
  ['elements with a prefix', plain.replace(/<(\/?)(\w+)/g, '<$1g:$2').replace('xmlns=', 'xmlns:g='), {}],
  [
    'heights with a mark between thousands',
    heightsAs((m) => `1,${m.toFixed(1)}`),
    { refused: 'no-readable-elevation' },
  ],
  ['a number for "unknown" everywhere', heightsAs(() => -9_999), { refused: 'no-readable-elevation' }],
  [
    'a number for "unknown" here and there',
    heightsAs((m, i) => (i % 10 === 3 ? 32_767 : m)),
    { notes: ['unreadable-elevations'] },
  ],
  ['no heights at all', file(ridden.map(noHeight)), { refused: 'no-elevation' }],
  ['every point three times', file(ridden.flatMap((point) => [point, point, point])), {}],
  [
    'the same ride as two tracks',
    gpxText(trackText(ridden) + trackText(ridden)),
    { asks: ['several-tracks'] },
  ],
  [
    'a lasting error of the place',
    file(ridden.map((point, i) => (i % 40 === 20 ? { ...point, lat: 46.5 } : point))),
    { notes: ['impossible-points'] },
  ],
  ['zeros of a disk behind the end', `${plain}${'\0'.repeat(600)}`, { notes: ['salvaged'] }],
  [
    'heights set anew under way',
    heightsAs((m, i) => (i > 150 ? m + 200 : m)),
    { quality: 'jumps', climbM: 41 },
  ],
  [
    'two devices on one round, which are no two rounds',
    gpxText(trackText(round(0)) + trackText(round(3))),
    { asks: ['several-tracks'] },
  ],
  ['ten points a second', file(tenths((i) => i / 10)), {}],
  ['ten points a second with whole seconds', file(tenths((i) => Math.floor(i / 10))), {}],
  ['one point in thirty seconds', file(timed(northward(15, 142.86, hillM), 0, 30)), { quality: 'sparse' }],
  [
    'places rounded to eleven metres',
    file(diagonal(4)),
    { quality: 'rounded-places', within: 0.3, steepest: 0.07 },
  ],
  ['places rounded to a metre', file(diagonal(5)), {}],
  [
    'a drive of 100 km between two halves',
    file(ridden.map((point, i) => (i < 101 ? point : { ...point, lat: Number(point.lat) + 0.9 }))),
    { asks: ['holes'], within: 51, quality: 'holes' },
  ],
  [
    'a ride indoors, on one spot',
    file(ridden.map((point) => ({ ...point, lat: 46 }))),
    { refused: 'no-length' },
  ],
  [
    'places in millionths of a degree',
    file(ridden.map((point) => ({ ...point, lat: Number(point.lat) * 1e6 }))),
    { refused: 'no-readable-points' },
  ],
  [
    'legs counted foot by foot',
    withCadence((i) => 160 + (i % 9)),
    { notes: ['cadence-halved'], cadenceRpm: 82 },
  ],
  ['one number for all of the cadence', withCadence(() => 80), { notes: ['cadence-stuck'] }],
  [
    'numbers for "unknown" among the cadence',
    withCadence((i) => [255, 254, -1, 78 + (i % 9)][Math.min(3, i % 12)] ?? 0),
    { cadenceRpm: 82 },
  ],
  ['cadence with a decimal comma', withCadence((i) => `${78 + (i % 9)},0`), { cadenceRpm: 82 }],
  [
    'a clock that is set under way',
    file(ridden.map((point, i) => (i < 5 ? { ...point, time: `1979-07-01T00:00:0${2 * i}Z` } : point))),
    { month: '2024-05' },
  ],
  ['along the date line', file(ridden.map(({ lat, ele }, i) => eastward(Number(lat) - 46, ele, i))), {}],
];

/** Once round, over the same hill and down again to where it began. */
function round(fromS: number): MadePoint[] {
  return Array.from({ length: 201 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 200;
    return {
      lat: (46 + (318.31 * Math.sin(angle)) / 111_143).toFixed(7),
      lon: (10 + (318.31 * (1 - Math.cos(angle))) / 77_400).toFixed(7),
      ele: (hillM(10 * i) - 0.04 * Math.max(0, 10 * i - 1_500)).toFixed(3),
      time: stamp(fromS + 2 * i),
    };
  });
}

/** The line at 5 m/s with ten points a second. */
function tenths(secondOf: (i: number) => number): MadePoint[] {
  return northward(4_001, 0.5, hillM).map((point, i) => ({ ...point, time: stamp(secondOf(i)) }));
}

/** The line turned to the north-east, with places of so many decimals. */
function diagonal(decimals: number): MadePoint[] {
  const along = Array.from({ length: 401 }, (_, i) => (5 * i) / Math.SQRT2);
  return timed(
    along.map((m, i) => ({
      lat: (46 + m / 111_143).toFixed(decimals),
      lon: (10 + m / 77_400).toFixed(decimals),
      ele: hillM(5 * i).toFixed(1),
    })),
    0,
    1,
  );
}

/** The plain file with what a sensor at the cranks wrote. */
function withCadence(rpmAt: (i: number) => number | string): string {
  let i = -1;
  return plain.replaceAll('</trkpt>', () => `<extensions><cad>${rpmAt((i += 1))}</cad></extensions></trkpt>`);
}

/** A file of these first bytes (hex) and signs, with nothing behind them. */
function binary(hex: string, signs = ''): Uint8Array {
  return new Uint8Array([...Buffer.from(hex, 'hex'), ...Buffer.from(signs), ...new Uint8Array(300)]);
}

/** A point of the line turned to the east on the equator, across 180°. */
function eastward(deg: number, ele: MadePoint['ele'], i: number): MadePoint {
  // A degree of longitude there is longer than one of latitude at 46°.
  const lon = 179.995 + deg * (111_143 / 111_320);
  return { lat: 0, lon: (lon > 180 ? lon - 360 : lon).toFixed(7), ele: ele ?? 0, time: stamp(2 * i) };
}

function noHeight({ lat, lon, time }: MadePoint): MadePoint {
  return { lat, lon, ...(time === undefined ? {} : { time }) };
}

function monthOf(source: string | Uint8Array): string | null {
  const read = readGpx(Buffer.from(source), openDecoder);
  return read.ok ? read.file.month : null;
}

/** A refusal says the reason and, in a last sentence, what to do. */
function judged(source: string | Uint8Array, wanted: Wanted): void {
  const made = imported(source);
  if (!made.ok) {
    expect(made.problems.map(({ code }) => code)).toEqual([wanted.refused]);
    return expect(sentenceOf(made.problems[0]!)).toMatch(
      /^[A-Z].+\b(Export|Unpack|Download|Save|Choose|must end)\b.+\.$/,
    );
  }
  expect(wanted.refused).toBeUndefined();
  const { lengthM, ascentM, steepestRatio, problems, questions, quality, recorded } = made.road;
  expect(questions.map(({ code }) => code)).toEqual(wanted.asks ?? []);
  expect(problems.map(({ code }) => code).filter((code) => code !== 'capped')).toEqual(wanted.notes ?? []);
  if (wanted.quality !== undefined) expect(quality.reasons.map(({ code }) => code)).toContain(wanted.quality);
  for (const told of [...problems, ...questions, ...quality.reasons])
    expect(sentenceOf(told)).toMatch(/^[A-Z0-9].+[.?]$/);
  const believed = recorded.cadenceRpm.filter((rpm) => rpm > 0).toSorted((a, b) => a - b);
  expect(believed[believed.length >> 1]).toBe(wanted.cadenceRpm);
  if (wanted.month !== undefined) expect(monthOf(source)).toBe(wanted.month);
  expect(Math.abs(lengthM / 2_000 - 1)).toBeLessThan(wanted.within ?? 0.01);
  expect(Math.abs(ascentM / (wanted.climbM ?? 40) - 1)).toBeLessThan(0.05);
  expect(Math.abs(steepestRatio - (wanted.steepest ?? 0.08))).toBeLessThan(0.006);
}

describe('forty awkward files of our own kinds', () => {
  it('are forty', () => expect(FILES).toHaveLength(40));

  it.each(FILES)('%s', (_, source, wanted) => judged(source, wanted));

  it.each(MORE)('and %s', (_, source, wanted) => judged(source, wanted));

  it('feet that were asked about come out right once somebody says so', () => {
    const made = imported(heightsAs(feet), { heights: 'feet' });
    if (!made.ok) throw new Error('no road');
    expect(made.road.questions).toEqual([]);
    expect(made.road.ascentM).toBeCloseTo(40, 0);
    expect(made.road.steepestRatio).toBeCloseTo(0.08, 3);
  });
});
