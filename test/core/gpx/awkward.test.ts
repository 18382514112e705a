/** Files as no honest device writes them, and some as devices do write them, made on the spot. */
import { describe, expect, it } from 'vitest';
import { createGpxBytes, readGpx } from '../../../src/core/gpx/file.ts';
import { createGpxReader } from '../../../src/core/gpx/reader.ts';
import { readDecimal, readTimeS } from '../../../src/core/gpx/values.ts';
import {
  codeOf,
  gpxText,
  imported,
  northward,
  openDecoder,
  plainClimb,
  pointText,
  roadOf,
  trackText,
} from './files.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const climb = (x: number): number => 300 + 0.05 * x;
const plain = roadOf(plainClimb).profile;

function utf16(text: string, order: 'le' | 'be', mark: boolean): Uint8Array {
  const bytes = Buffer.from(`${mark ? '\uFEFF' : ''}${text}`, 'utf16le');
  return order === 'le' ? bytes : bytes.swap16();
}

describe('encodings', () => {
  it.each([
    ['UTF-16, little end first', utf16(plainClimb, 'le', true)],
    ['UTF-16, big end first', utf16(plainClimb, 'be', true)],
    ['UTF-16 without a mark', utf16(plainClimb, 'le', false)],
    ['UTF-16, big end first, without a mark', utf16(plainClimb, 'be', false)],
    ['UTF-8 with a mark', Buffer.from(`\uFEFF${plainClimb}`)],
    [
      'windows-1252',
      Buffer.from(plainClimb.replace('UTF-8', 'windows-1252').replace('us', 'Gr\u00f6\u00dfe'), 'latin1'),
    ],
    [
      'ISO-8859-1',
      Buffer.from(plainClimb.replace('UTF-8', 'iso-8859-1').replace('us', 'Gr\u00f6\u00dfe'), 'latin1'),
    ],
    ['bytes that are no UTF-8 in a name', Buffer.from(plainClimb.replace('us', 'Gr\u00f6\u00dfe'), 'latin1')],
    ['single bytes that call themselves UTF-16', Buffer.from(plainClimb.replace('UTF-8', 'UTF-16'))],
    ['no declaration at all', Buffer.from(plainClimb.replace(/^<\?xml.*\n/, ''))],
  ])('%s makes the same road', (_, bytes) => {
    expect(roadOf(bytes).profile).toEqual(plain);
  });

  it.each([
    ['an unknown encoding', Buffer.from(plainClimb.replace('UTF-8', 'klingon')), 'encoding'],
    ['UTF-32', Buffer.from([0xff, 0xfe, 0, 0, 0x3c, 0, 0, 0]), 'encoding'],
    ['a way of packing nobody opens here', Buffer.from('425a6839314159265359', 'hex'), 'packed'],
    ['the beginning of an archive', Buffer.from('504b030414000000', 'hex'), 'packed-without'],
    ['random bytes', Buffer.from(Array.from({ length: 500 }, (__, i) => (i * 97 + 3) % 256)), 'not-xml'],
    ['a picture', Buffer.from('89504e470d0a1a0a', 'hex'), 'not-xml'],
    ['a FIT file', Buffer.from('0e100000000000002e46495400000000', 'hex'), 'not-xml'],
  ])('%s is refused', (_, bytes, code) => {
    expect(codeOf(bytes)).toBe(code);
  });

  it('a file comes out the same in pieces of any size, cut within letters too', () => {
    const text = plainClimb.replace('us', 'Größe 🚴🚴');
    for (const bytes of [Buffer.from(text), utf16(text, 'le', true)]) {
      for (const size of [1, 7, 255, 4_096]) {
        const file = createGpxBytes(openDecoder);
        for (let i = 0; i < bytes.length; i += size)
          expect(file.push(bytes.subarray(i, i + size))).toBe(true);
        const read = file.end();
        expect(read.ok && read.file.tracks[0]?.segments[0]?.heightM.slice(0, 3)).toEqual([300, 300.5, 301]);
      }
    }
  });
});

describe('the shape of a file', () => {
  const points = northward(101, 10, climb);
  it.each([
    [
      'a prefix on every element',
      plainClimb.replace(/<(\/?)(gpx|trk|trkseg|trkpt|ele)\b/g, '<$1g:$2').replace('xmlns=', 'xmlns:g='),
    ],
    [
      'two prefixes for one namespace',
      plainClimb
        .replace('<gpx ', '<gpx xmlns:g="http://www.topografix.com/GPX/1/1" ')
        .replace(/<(\/?)ele>/g, '<$1g:ele>'),
    ],
    ['GPX 1.0', plainClimb.replace('GPX/1/1', 'GPX/1/0').replace('version="1.1"', 'version="1.0"')],
    [
      'an undeclared prefix in extensions',
      plainClimb.replace('</ele>', '</ele><extensions><dev:hr>150</dev:hr></extensions>'),
    ],
    [
      'a height of another namespace',
      plainClimb.replaceAll('<ele>', '<o:ele xmlns:o="urn:other">9</o:ele><ele>'),
    ],
    ['heights in CDATA', plainClimb.replace(/<ele>(.*?)<\/ele>/g, '<ele><![CDATA[$1]]></ele>')],
    ['comments inside numbers', plainClimb.replace(/<ele>(\d+)/g, '<ele>$1<!-- m -->')],
    [
      'character references in numbers',
      plainClimb.replaceAll('<ele>3', '<ele>&#51;').replaceAll('lat="4', 'lat="&#x34;'),
    ],
    ['exponents', plainClimb.replace(/<ele>(\d+\.\d+)/g, (_, ele: string) => `<ele>${Number(ele) / 100}E+2`)],
    ['blanks and plus signs', plainClimb.replace(/<ele>/g, '<ele>\n\t +')],
    ['heights given twice', plainClimb.replaceAll('</ele>', '</ele><ele>9</ele>')],
    [
      'waypoints, and a route nobody rode',
      plainClimb.replace(
        '<trk>',
        `<wpt lat="1" lon="1"><ele>1</ele></wpt><rte>${pointText({ lat: 1, lon: 1, ele: 5 }, 'rtept')}</rte><trk>`,
      ),
    ],
    [
      'empty segments and tracks first',
      plainClimb.replace('<trk>', '<trk/><trk><trkseg/></trk><trk><trkseg></trkseg>'),
    ],
    ['each point in a segment of its own', plainClimb.replaceAll('</trkpt>\n', '</trkpt></trkseg><trkseg>')],
    ['every point twice', gpxText(trackText(points.flatMap((point) => [point, point])))],
    [
      'points of tracks inside extensions',
      plainClimb.replace(
        '<trk>',
        '<extensions><trk><trkseg><trkpt lat="1" lon="1"/></trkseg></trk></extensions><trk>',
      ),
    ],
    ['a very long attribute', plainClimb.replace('creator="us"', `creator="${'x'.repeat(2_000_000)}"`)],
    [
      'ten thousand attributes',
      plainClimb.replace('creator="us"', Array.from({ length: 10_000 }, (_, i) => `a${i}="1"`).join(' ')),
    ],
    [
      'a point with only junk around it',
      plainClimb.replace(
        '<trkseg>',
        '<trkseg><trkpt/><trkpt lat="x" lon="1"/><trkpt lat="91" lon="10"><ele>1</ele></trkpt>',
      ),
    ],
  ])('%s makes the same road', (_, text) => {
    const { heightsM } = roadOf(text).profile;
    expect(heightsM).toHaveLength(plain.heightsM.length);
    heightsM.forEach((height, i) => expect(height).toBeCloseTo(plain.heightsM[i] as number, 6));
  });

  it.each([
    ['KML', '<?xml version="1.0"?><kml xmlns="http://www.opengis.net/kml/2.2"><Document/></kml>', 'not-gpx'],
    ['TCX', '<?xml version="1.0"?><TrainingCenterDatabase><Activities/></TrainingCenterDatabase>', 'not-gpx'],
    ['another root', '<?xml version="1.0"?><osm version="0.6"><node id="1"/></osm>', 'not-gpx'],
    ['a web page without a document type', '<html><body>Please sign in to go on</body></html>', 'not-gpx'],
    [
      'a web page in XML',
      '<?xml version="1.0"?><html xmlns="http://www.w3.org/1999/xhtml"><p/></html>',
      'not-gpx',
    ],
    ['a table', 'lat,lon,ele\n46.0,10.0,300\n46.1,10.0,310\n', 'not-xml'],
    ['blanks', ' \n\t '.repeat(100), 'empty'],
    ['only a declaration', '<?xml version="1.0" encoding="UTF-8"?>\n', 'truncated'],
    ['a document type', plainClimb.replace('<gpx', '<!DOCTYPE gpx>\n<gpx'), 'doctype'],
    [
      'a document type without an end',
      `<?xml version="1.0"?><!DOCTYPE gpx [${'<!ENTITY a "b">'.repeat(50_000)}`,
      'truncated',
    ],
    ['no readable place', plainClimb.replace(/lat="4/g, 'lat="4x'), 'no-readable-points'],
    ['elements a thousand deep', gpxText(`${'<a>'.repeat(1_000)}${'</a>'.repeat(1_000)}`), 'too-deep'],
  ])('%s is refused', (_, text, code) => {
    expect(codeOf(text)).toBe(code);
  });

  it.each([
    ['a stop in mid-tag', plainClimb.slice(0, plainClimb.indexOf('lat=', 2_000) + 9), 'truncated'],
    [
      'a stop in mid-comment',
      `${plainClimb.slice(0, plainClimb.indexOf('<trkpt', 2_000))}<!-- and then`,
      'truncated',
    ],
    ['no end of the root', plainClimb.replace('</gpx>', ''), 'truncated'],
    ['two roots', plainClimb + plainClimb.replace(/^<\?xml.*\n/, ''), 'not-well-formed'],
    ['crossed tags', plainClimb.replace('</ele></trkpt>', '</trkpt></ele>'), 'not-well-formed'],
    ['an attribute twice', plainClimb.replace('lat=', 'lat="1" lat='), 'not-well-formed'],
  ])('%s costs no more than the points it spoils, and is said', (_, text, code) => {
    const read = readGpx(Buffer.from(text), openDecoder);
    expect(read.ok && read.file.damage?.code).toBe(code);
    const { problems, profile } = roadOf(text);
    expect(problems.map((problem) => problem.code)).toContain('salvaged');
    profile.rawHeightsM.forEach((heightM, i) =>
      expect(heightM).toBeCloseTo(plain.rawHeightsM[i] as number, 1),
    );
  });

  it('names the line of the damage where nothing can be saved, and takes no text of a refused file', () => {
    const reader = createGpxReader();
    expect(reader.push('<?xml version="1.0"?>\n<gpx>\n<trk>\n</gpx>')).toBe(true);
    const other = createGpxReader();
    expect(other.push('<!DOCTYPE html><html><body>Sign in')).toBe(false);
    expect(other.push('<more/>')).toBe(false);
    const read = reader.end();
    expect(read.ok ? '' : sentenceOf(read.problems[0]!)).toMatch(/line 4/);
  });

  it('a route is a road as well', () => {
    const rte = `<rte>${northward(101, 10, climb)
      .map((point) => pointText(point, 'rtept'))
      .join('')}</rte>`;
    expect(roadOf(gpxText(rte)).profile).toEqual(plain);
  });

  it('tracks far from one another are not joined; the longest is taken and the rest can be asked for', () => {
    const far = northward(301, 10, climb, { lat: 47, lon: 11 });
    const text = gpxText(trackText(northward(101, 10, climb)) + trackText(far));
    const road = roadOf(text);
    expect(road.questions).toMatchObject([{ code: 'several-tracks', taken: '2' }]);
    expect(road.lengthM).toBeGreaterThan(2_900);
    expect(roadOf(text, { tracks: 1 }).lengthM).toBeLessThan(1_100);
    expect(imported(text, { tracks: 3 })).toMatchObject({ ok: false, problems: [{ code: 'no-such-track' }] });
  });
});

describe('numbers and times', () => {
  it.each([
    'NaN',
    'INF',
    '-Infinity',
    '1e999',
    '0x1F',
    '300 m',
    '1,234.5',
    '1.234,5',
    '--3',
    '',
    '.',
    '٣٠٠',
    `3${'0'.repeat(60)}`,
  ])('"%s" is no number', (text) => {
    expect(readDecimal(text)).toBeNaN();
  });

  it('reads points, commas, signs and exponents', () => {
    expect(['300', ' 300.5\n', '300,5', '+3e2', '-.5', '5.'].map(readDecimal)).toEqual([
      300, 300.5, 300.5, 300, -0.5, 5,
    ]);
  });

  it('reads times as the clock of the host would', () => {
    for (const text of [
      '2020-02-29T23:59:59Z',
      '2024-12-31T00:00:00.250Z',
      '1969-07-20T20:17:40Z',
      '2021-03-01T00:00:00+02:00',
    ])
      expect(readTimeS(text)).toBeCloseTo(Date.parse(text) / 1_000, 6);
    expect(readTimeS('2021-13-01T00:00:00Z')).toBeNaN();
    expect(readTimeS('yesterday')).toBeNaN();
  });

  it('what devices write for "unknown" is no height, and the road goes on without', () => {
    for (const ele of ['-9999', '-32768', '65535', 'NaN', '1e9', '']) {
      const points = northward(101, 10, climb).map((point, i) =>
        i % 3 === 1 && i < 99 ? { ...point, ele } : point,
      );
      const road = roadOf(gpxText(trackText(points)));
      road.profile.heightsM.forEach((height, i) =>
        expect(height).toBeCloseTo(plain.heightsM[i] as number, 1),
      );
      expect(road.problems.map(({ code }) => code)).toEqual([
        ele === '' ? 'unwritten-elevations' : 'unreadable-elevations',
      ]);
    }
  });
});
