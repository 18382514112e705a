/**
 * Places to get GPX files from: the collection beside the repository, which is no part of it, and small ones made
 * on the spot. No expectation lives here.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RoadAnswers } from '../../../src/core/gpx/choose.ts';
import { readGpx } from '../../../src/core/gpx/file.ts';
import { importRoad, type Road } from '../../../src/core/gpx/road.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const FOLDER = join(process.cwd(), '../shared/data/gpx/');

/** Whether the collection is there, and what to say where it is not. */
export const collectionIsHere = existsSync(`${FOLDER}nasty/EXPECTED.json`);
export const COLLECTION_REASON = 'the GPX files are not beside the repository (../shared/data/gpx)';
if (!collectionIsHere) process.stdout.write(`Skipped: ${COLLECTION_REASON}\n`);

/** What the collection says should happen to an awkward file. */
export interface Expectation {
  readonly do: string;
  readonly points?: number;
  readonly length_m?: number;
  readonly tolerance_m?: number;
  readonly ascent_m?: number;
  readonly max_grade_pct_true?: number;
  readonly grade_pct?: number;
  readonly with_ele?: number;
}

/** All expectations by name of file; empty where the collection is absent. */
export const EXPECTED: Readonly<Record<string, Expectation>> = collectionIsHere
  ? (JSON.parse(readFileSync(`${FOLDER}nasty/EXPECTED.json`, 'utf8')) as Record<string, Expectation>)
  : {};

/** Names of the awkward files that really lie there. */
export const AWKWARD: readonly string[] = collectionIsHere
  ? readdirSync(`${FOLDER}nasty`).filter((name) => /\.gpx(\.gz)?$/.test(name))
  : [];

/** Bytes of a file of the collection. */
export function collected(name: string): Uint8Array {
  return readFileSync(`${FOLDER}${name}`);
}

export const openDecoder = (label: string): TextDecoder => new TextDecoder(label);

/** Bytes or text, all the way to a road or a refusal. */
export function imported(
  source: Uint8Array | string,
  answers: RoadAnswers = {},
): ReturnType<typeof importRoad> {
  const bytes = typeof source === 'string' ? new TextEncoder().encode(source) : source;
  const read = readGpx(bytes, openDecoder);
  return read.ok ? importRoad(read.file, answers) : read;
}

/** A road that must come out. */
export function roadOf(source: Uint8Array | string, answers: RoadAnswers = {}): Road {
  const made = imported(source, answers);
  if (!made.ok) throw new Error(made.problems.map(sentenceOf).join(' '));
  return made.road;
}

/** The code of a refusal, or "a road". */
export function codeOf(source: Uint8Array | string): string {
  const made = imported(source);
  return made.ok ? 'a road' : (made.problems[0]?.code ?? 'no reason');
}

/** A point of a made-up track; what is left out is left out of the file. */
export interface MadePoint {
  readonly lat: number | string;
  readonly lon: number | string;
  readonly ele?: number | string;
  readonly time?: string;
  readonly inside?: string;
}

export function pointText({ lat, lon, ele, time, inside = '' }: MadePoint, tag = 'trkpt'): string {
  const height = ele === undefined ? '' : `<ele>${ele}</ele>`;
  const when = time === undefined ? '' : `<time>${time}</time>`;
  return `<${tag} lat="${lat}" lon="${lon}">${height}${when}${inside}</${tag}>`;
}

/** Something inside the root element of a GPX 1.1 file. */
export function gpxText(inside: string): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" creator="us" xmlns="http://www.topografix.com/GPX/1/1">${inside}</gpx>\n`;
}

/** A track of one segment. */
export function trackText(points: readonly MadePoint[]): string {
  return `<trk><trkseg>${points.map((point) => pointText(point)).join('\n')}</trkseg></trk>`;
}

/** Metres per degree of latitude at 46° N, nearly. */
const M_PER_DEG = 111_143;

/** Points due north every `stepM`, with heights by distance. */
export function northward(
  count: number,
  stepM: number,
  heightAt: (distanceM: number) => number | undefined,
  from = { lat: 46, lon: 10 },
): MadePoint[] {
  return Array.from({ length: count }, (_, i) => {
    const ele = heightAt(i * stepM);
    const place = { lat: (from.lat + (i * stepM) / M_PER_DEG).toFixed(7), lon: from.lon };
    return ele === undefined ? place : { ...place, ele: ele.toFixed(3) };
  });
}

/** A kilometre that climbs 5 %, as a whole file. */
export const plainClimb = gpxText(trackText(northward(101, 10, (x) => 300 + 0.05 * x)));
