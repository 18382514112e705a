/**
 * Reads the text of a GPX file piece by piece: tracks, routes and their points, of GPX 1.0 and 1.1, with or
 * without a namespace. Fetches nothing, expands nothing, and refuses what is no well-formed GPX with a code.
 * What kind of road the points make is left to others.
 */
import { SaxesParser, type SaxesTagNS } from 'saxes';
import { LIMITS } from '../math/limits.ts';
import { type PointSink, pointSink } from './points.ts';
import type { Problem } from '../level/problems.ts';
import { type GpxResult, refused, type RoadCode } from './types.ts';

const MOST = LIMITS.gpx;
/** So much is waited for before the file is judged by how it begins (characters). */
const LONGEST_HEAD = 4_096;

/** Takes text as it comes; after the first fault it takes no more. */
interface GpxReader {
  /** False once the file is refused; the rest of it need not be read then. */
  push(text: string): boolean;
  end(): GpxResult;
}

/** What an element is to us; everything inside an `other` is one too. */
type Role = 'gpx' | 'trk' | 'trkseg' | 'rte' | 'point' | 'extensions' | 'ele' | 'time' | 'cadence' | 'other';

class Refusal extends Error {
  readonly code: RoadCode;
  readonly values: Problem['values'];
  constructor(code: RoadCode, values: Problem['values'] = {}) {
    super(code);
    this.code = code;
    this.values = values;
  }
}

/** Starts reading a file. */
export function createGpxReader(): GpxReader {
  const sink = pointSink();
  const parser = createParser(sink);
  let refusal: Refusal | null = null;
  let head = '';
  let begun = false;
  let length = 0;
  const attempt = (work: () => void): boolean => {
    if (refusal !== null) return false;
    try {
      work();
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      refusal = error;
    }
    return refusal === null;
  };
  return {
    push: (text) =>
      attempt(() => {
        length += text.length;
        if (length > MOST.characters.most) throw new Refusal('too-big');
        if (begun) {
          parser.write(text);
          return;
        }
        head += text;
        if (head.length < LONGEST_HEAD && head.trimStart().length < 20) return;
        begun = true;
        checkBeginning(head);
        parser.write(head);
      }),
    end() {
      attempt(() => {
        if (!begun) checkBeginning(head);
        if (!begun) parser.write(head);
        begun = true;
        finish(parser);
      });
      return refusal === null ? { ok: true, file: sink.file() } : refused(refusal.code, refusal.values);
    },
  };
}

function finish(parser: SaxesParser<{ xmlns: true }>): void {
  const { line } = parser;
  try {
    parser.close();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new Refusal('truncated', { line });
  }
}

function checkBeginning(head: string): void {
  const text = head.replace(/^\uFEFF/, '').trimStart();
  if (text === '') throw new Refusal('empty');
  if (/^<(!doctype\s+html|html)\b/i.test(text)) throw new Refusal('not-gpx', { is: 'web-page-at-once' });
  if (/^[{[]/.test(text)) throw new Refusal('not-xml', { is: 'json' });
  if (!text.startsWith('<')) throw new Refusal('not-xml', { is: 'other' });
}

/** The parser with all handlers set; they throw a `Refusal`, which ends the reading. */
function createParser(sink: PointSink): SaxesParser<{ xmlns: true }> {
  // A prefix nobody declared is an extension like any other; device makers forget it often.
  const resolvePrefix = (prefix: string): string => `undeclared:${prefix}`;
  const parser = new SaxesParser({ xmlns: true, position: true, resolvePrefix });
  const roles: Role[] = [];
  let space = '';
  let value = '';
  parser.on('error', () => {
    throw new Refusal('not-well-formed', { line: parser.line });
  });
  parser.on('doctype', () => {
    throw new Refusal('doctype');
  });
  parser.on('opentag', (tag) => {
    const parent = roles.at(-1);
    if (roles.length >= MOST.deep.most) throw new Refusal('too-deep', { most: MOST.deep.most });
    if (parent === undefined) space = rootSpace(tag);
    const role = parent === undefined ? 'gpx' : roleOf(tag, parent, space);
    if (parent === 'ele' || parent === 'time' || parent === 'cadence') value = '?';
    else if (role === 'ele' || role === 'time' || role === 'cadence') value = '';
    roles.push(role);
    openRole(sink, role, tag);
    if (parent === 'gpx' && tag.local === 'wpt') sink.waypoint();
  });
  const takeText = (text: string): void => {
    const role = roles.at(-1);
    if (role !== 'ele' && role !== 'time' && role !== 'cadence') return;
    value = value.length + text.length > MOST.value.most ? '?' : value + text;
  };
  parser.on('text', takeText);
  parser.on('cdata', takeText);
  parser.on('closetag', () => closeRole(sink, roles.pop() ?? 'other', value));
  return parser;
}

function openRole(sink: PointSink, role: Role, tag: SaxesTagNS): void {
  if (role === 'trk' || role === 'rte') sink.track(role === 'trk' ? 'track' : 'route');
  else if (role === 'trkseg') sink.segment();
  else if (
    role === 'point' &&
    sink.point(tag.attributes['lat']?.value, tag.attributes['lon']?.value) > MOST.points.most
  )
    throw new Refusal('too-many-points', { most: MOST.points.most });
}

function closeRole(sink: PointSink, role: Role, value: string): void {
  if (role === 'ele') sink.height(value);
  else if (role === 'time') sink.time(value);
  else if (role === 'cadence') sink.cadence(value);
}

/** The namespace of the file's own elements. */
function rootSpace(tag: SaxesTagNS): string {
  const name = tag.local.toLowerCase();
  if (tag.local === 'gpx') return tag.uri;
  if (name === 'kml') throw new Refusal('not-gpx', { is: 'kml' });
  if (name === 'trainingcenterdatabase') throw new Refusal('not-gpx', { is: 'tcx' });
  if (name === 'html') throw new Refusal('not-gpx', { is: 'web-page' });
  throw new Refusal('not-gpx', { is: 'xml', root: tag.local.slice(0, 40) });
}

/** What an element is, by its place. In extensions the namespace does not matter, elsewhere it must be the file's. */
function roleOf(tag: SaxesTagNS, parent: Role, space: string): Role {
  const name = tag.local;
  if (parent === 'extensions') return /^cad(ence)?$/i.test(name) ? 'cadence' : 'extensions';
  if (tag.uri !== space) return 'other';
  if (parent === 'gpx') return name === 'trk' || name === 'rte' ? name : 'other';
  if (parent === 'trk') return name === 'trkseg' ? 'trkseg' : 'other';
  if (parent === 'trkseg') return name === 'trkpt' ? 'point' : 'other';
  if (parent === 'rte') return name === 'rtept' ? 'point' : 'other';
  if (parent !== 'point') return 'other';
  if (name === 'ele' || name === 'time' || name === 'extensions' || name === 'cadence') return name;
  return 'other';
}
