/**
 * Reads the text of a GPX file piece by piece: tracks, routes and their points, of GPX 1.0 and 1.1, with or
 * without a namespace. Fetches nothing and expands nothing. Of a damaged file it takes what is well-formed and says where
 * the damage is; what is no GPX it refuses with a code.
 * What kind of road the points make is left to others.
 */
import { SaxesParser, type SaxesTagNS } from 'saxes';
import { LIMITS } from '../math/limits.ts';
import { type PointSink, pointSink } from './points.ts';
import type { Problem } from '../level/problems.ts';
import { type Damage, type GpxResult, refused, type RoadCode } from './types.ts';

const MOST = LIMITS.gpx;
/** So much is waited for before the file is judged by how it begins (characters). */
const LONGEST_HEAD = 4_096;

/** Elements whose text is read; a spare elevation stands in extensions. */
type Value = 'ele' | 'spare-ele' | 'time' | 'cadence' | 'power';

/** What an element is to us; everything inside an `other` is one too. */
type Role = 'gpx' | 'trk' | 'trkseg' | 'rte' | 'point' | 'extensions' | Value | 'other';

class Refusal extends Error {
  readonly code: RoadCode;
  readonly values: Problem['values'];
  constructor(code: RoadCode, values: Problem['values'] = {}) {
    super(code);
    this.code = code;
    this.values = values;
  }
}

/** What is known of the reading so far. */
interface Progress {
  /** The first fault, if there is one. */
  damage: Damage | null;
  /** Lines that were left out before the first element. */
  skippedLines: number;
  /** Whether the file has ended, so that what is missing was cut off. */
  ended: boolean;
}

/** Takes text as it comes; after the first fault it takes no more. */
export function createGpxReader() {
  const sink = pointSink();
  const progress: Progress = { damage: null, skippedLines: 0, ended: false };
  const { parser, isInPoint } = createParser(sink, progress);
  const mend = ampersandMender();
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
  const begin = (): void => {
    begun = true;
    const text = head.trimStart();
    checkBeginning(text);
    progress.skippedLines = head.slice(0, head.length - text.length).split('\n').length - 1;
    parser.write(mend(text));
  };
  return {
    /** False once the file is refused; the rest of it need not be read then. */
    push: (text: string): boolean =>
      attempt(() => {
        length += text.length;
        if (length > MOST.characters.most) throw new Refusal('too-big');
        if (begun) {
          parser.write(mend(text));
          return;
        }
        head += text;
        if (head.length >= LONGEST_HEAD || head.trimStart().length >= 20) begin();
      }),
    end(): GpxResult {
      attempt(() => {
        if (!begun) begin();
        parser.write(mend('', true));
        progress.ended = true;
        parser.close();
      });
      if (refusal !== null) return refused(refusal.code, refusal.values);
      const { damage } = progress;
      if (damage !== null && isInPoint()) sink.dropLast();
      const file = sink.file(damage);
      if (damage !== null && file.pointCount === 0) return refused(damage.code, { line: damage.line });
      return { ok: true, file };
    },
  };
}

/** An ampersand that begins nothing XML knows without a document type. */
const BARE_AMPERSAND = /&(?!(?:amp|lt|gt|quot|apos|#\d{1,7}|#[xX][\da-fA-F]{1,6});)/g;
/** So long is the longest reference (characters). */
const LONGEST_REFERENCE = 10;

/**
 * Writes bare ampersands, as names of roads have them, the way XML wants them. What ends within a possible reference is
 * held back until more has come.
 */
function ampersandMender(): (text: string, last?: boolean) => string {
  let held = '';
  return (text, last = false) => {
    const all = held + text;
    const at = all.lastIndexOf('&');
    const isOpen = at >= 0 && at > all.length - LONGEST_REFERENCE && !all.includes(';', at);
    const end = isOpen && !last ? at : all.length;
    held = all.slice(end);
    return all.slice(0, end).replace(BARE_AMPERSAND, '&amp;');
  };
}

function checkBeginning(text: string): void {
  if (text === '') throw new Refusal('empty');
  if (/^<(!doctype\s+html|html)\b/i.test(text)) throw new Refusal('not-gpx', { is: 'web-page-at-once' });
  if (/^[{[]/.test(text)) throw new Refusal('not-xml', { is: 'json' });
  if (!text.startsWith('<')) throw new Refusal('not-xml', { is: 'other' });
}

/**
 * The parser with all handlers set; they throw a `Refusal`, which ends the reading. Faults are noted and read over as
 * long as the elements around them are still known.
 */
function createParser(sink: PointSink, progress: Progress) {
  // A prefix nobody declared is an extension like any other; device makers forget it often.
  const resolvePrefix = (prefix: string): string => (prefix === '' ? '' : `undeclared:${prefix}`);
  const parser = new SaxesParser({ xmlns: true, position: true, resolvePrefix });
  const roles: Role[] = [];
  let space = '';
  let value = '';
  parser.on('error', () => {
    const code = progress.ended ? 'truncated' : 'not-well-formed';
    progress.damage ??= { code, line: parser.line + progress.skippedLines };
  });
  parser.on('doctype', (named) => {
    throw /^\s*html\b/i.test(named) ? new Refusal('not-gpx', { is: 'web-page' }) : new Refusal('doctype');
  });
  parser.on('opentag', (tag) => {
    const parent = roles.at(-1);
    if (roles.length >= MOST.deep.most) throw new Refusal('too-deep', { most: MOST.deep.most });
    const isStray = parent === undefined && progress.damage !== null && tag.local.toLowerCase() !== 'gpx';
    if (parent === undefined && !isStray) space = rootSpace(tag);
    const role = isStray ? strayRole(tag, space) : parent === undefined ? 'gpx' : roleOf(tag, parent, space);
    if (isValue(parent)) value = '?';
    else if (isValue(role)) value = '';
    roles.push(role);
    openRole(sink, role, tag);
    if (parent === 'gpx' && tag.local.toLowerCase() === 'wpt') sink.waypoint();
  });
  const takeText = (text: string): void => {
    if (!isValue(roles.at(-1))) return;
    value = value.length + text.length > MOST.value.most ? '?' : value + text;
  };
  parser.on('text', takeText);
  parser.on('cdata', takeText);
  parser.on('closetag', () => closeRole(sink, roles.pop() ?? 'other', value));
  return { parser, isInPoint: () => roles.includes('point') };
}

/** Whether the text of an element is read. */
function isValue(role: Role | undefined): boolean {
  return role === 'ele' || role === 'spare-ele' || role === 'time' || role === 'cadence' || role === 'power';
}

function openRole(sink: PointSink, role: Role, tag: SaxesTagNS): void {
  if (role === 'trk' || role === 'rte') sink.track(role === 'trk' ? 'track' : 'route');
  else if (role === 'trkseg') sink.segment();
  else if (role === 'point' && sink.point(attribute(tag, 'lat'), attribute(tag, 'lon')) > MOST.points.most)
    throw new Refusal('too-many-points', { most: MOST.points.most });
}

/** An attribute by its name in small letters. */
function attribute(tag: SaxesTagNS, name: string): string | undefined {
  const found =
    tag.attributes[name] ?? Object.values(tag.attributes).find((one) => one.local.toLowerCase() === name);
  return found?.value;
}

function closeRole(sink: PointSink, role: Role, value: string): void {
  if (role === 'ele' || role === 'spare-ele') sink.height(value, role === 'spare-ele');
  else if (role === 'time') sink.time(value);
  else if (role === 'cadence') sink.cadence(value);
  else if (role === 'power') sink.power(value);
}

/** The namespace of the file's own elements. */
function rootSpace(tag: SaxesTagNS): string {
  const name = tag.local.toLowerCase();
  if (name === 'gpx') return tag.uri;
  if (name === 'kml') throw new Refusal('not-gpx', { is: 'kml' });
  if (name === 'trainingcenterdatabase') throw new Refusal('not-gpx', { is: 'tcx' });
  if (name === 'html') throw new Refusal('not-gpx', { is: 'web-page' });
  throw new Refusal('not-gpx', { is: 'xml', root: tag.local.slice(0, 40) });
}

/**
 * What an element is, by its place and its name in letters of any size. In extensions the namespace does not matter,
 * elsewhere it must be the file's, or none.
 */
function roleOf(tag: SaxesTagNS, parent: Role, space: string): Role {
  const name = tag.local.toLowerCase();
  if (parent === 'extensions') return inExtensions(name);
  if (tag.uri !== space && tag.uri !== '') return 'other';
  if (parent === 'gpx') return name === 'trk' || name === 'rte' ? name : 'other';
  // Some programs leave segments out.
  if (parent === 'trk') return name === 'trkseg' ? 'trkseg' : name === 'trkpt' ? 'point' : 'other';
  if (parent === 'trkseg') return name === 'trkpt' ? 'point' : 'other';
  if (parent === 'rte') return name === 'rtept' ? 'point' : 'other';
  if (parent !== 'point') return 'other';
  if (name === 'ele' || name === 'time' || name === 'extensions' || name === 'cadence') return name;
  return 'other';
}

/** Where an element belongs by its name. */
const AROUND: Readonly<Record<string, Role>> = {
  trk: 'gpx',
  rte: 'gpx',
  trkseg: 'trk',
  trkpt: 'trkseg',
  rtept: 'rte',
};

/** What an element is whose surroundings were closed by a fault. */
function strayRole(tag: SaxesTagNS, space: string): Role {
  return roleOf(tag, AROUND[tag.local.toLowerCase()] ?? 'other', space);
}

function inExtensions(name: string): Role {
  if (/^cad(ence)?$/.test(name)) return 'cadence';
  if (/^(power|powerinwatts|watts)$/.test(name)) return 'power';
  return /^(ele|elevation|alt|altitude|height)$/.test(name) ? 'spare-ele' : 'extensions';
}
