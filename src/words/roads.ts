/** The sentences about recorded roads: why none can be made, what a person may decide, how far heights can be trusted. */
import type { RoadCode, RoadQuestion } from '../core/gpx/types.ts';
import type { Problem } from '../core/level/problems.ts';
import { counted, number, type Say, text } from './values.ts';

/** What a file is that is no GPX file, by what the core says it is. */
const IS: Readonly<Record<string, string>> = {
  'web-page-at-once': 'This is a web page, not a GPX file. Perhaps the download asked to sign in.',
  'web-page': 'This is a web page, not a GPX file.',
  kml: 'This is a KML file. Export the ride as GPX, with its elevations.',
  tcx: 'This is a TCX file. Export the ride as GPX instead.',
  json: 'This is JSON, not a GPX file. Export the ride as GPX.',
  pdf: 'This is a PDF document, not a GPX file.',
  picture: 'This is a picture, not a GPX file.',
  fit: 'This is a FIT file. Export the ride as GPX instead.',
  binary: 'This is not a text file, so it is no GPX file.',
  other: 'This is not a GPX file; it does not begin with "<".',
};

const share = ({ values }: Problem): string => {
  const percent = number(values, 'share') * 100;
  return `${percent < 0.95 ? percent.toFixed(1) : Math.round(percent)} %`;
};

const isFile: Say = ({ values }) => {
  const is = text(values, 'is');
  if (is === 'xml') return `This is XML, but no GPX: it begins with <${text(values, 'root')}>.`;
  return IS[is] ?? 'This is not a GPX file.';
};

/** By code. */
export const ROAD: Readonly<Record<RoadCode, Say>> = {
  'too-big': 'This file is too big for one ride. Export a shorter one.',
  truncated: ({ values }) =>
    `The file stops in the middle, at line ${number(values, 'line')}. Export or copy it again.`,
  empty: 'This file is empty.',
  'not-gpx': isFile,
  'not-xml': isFile,
  packed:
    'This file is packed in a way that cannot be opened here. Unpack it first; the file inside ends in .gpx.',
  'packed-damaged':
    'This packed file is damaged or locked with a password, so it cannot be opened. Unpack it first, or export it again.',
  'packed-without': 'There is no GPX file in this archive. The file inside must end in .gpx.',
  'packed-several': 'There are several GPX files in this archive. Unpack it and choose one of them.',
  encoding: ({ values }) =>
    `The file is written in an encoding that cannot be read here (${text(values, 'label')}). Save it as UTF-8.`,
  'not-well-formed': ({ values }) =>
    `The file is damaged at line ${number(values, 'line')}: it is no well-formed XML there. Export it again.`,
  doctype:
    'The file brings a document type of its own (DOCTYPE), which is never needed and not safe. Export it again as plain GPX.',
  'too-deep': ({ values }) => `The file has more than ${number(values, 'most')} elements inside one another.`,
  'too-many-points': ({ values }) =>
    `The file has more than ${number(values, 'most')} points. Export a shorter ride.`,
  'no-such-track': ({ values }) =>
    `There is no track ${number(values, 'track')}; the file has ${number(values, 'trackCount')}.`,
  'no-readable-points': ({ values }) =>
    `None of the ${number(values, 'pointCount')} points has a place on the globe that can be read.`,
  'only-waypoints': ({ values }) =>
    `The file holds ${number(values, 'waypointCount')} single places (waypoints) but no track and no route. Export the ride itself.`,
  'no-points': 'The file holds no track and no route with points in it.',
  'no-length': 'The track never leaves its first place, so it has no length.',
  'too-short': ({ values }) =>
    `The road is ${Math.round(number(values, 'lengthM'))} m long; a level needs at least ${number(values, 'leastM')} m.`,
  'too-long': ({ values }) =>
    `The track is ${Math.round(number(values, 'lengthM') / 1_000)} km long, which no ride is. Export a single ride.`,
  'no-elevation':
    'The file has no elevations, so nothing is known about its hills. Export it from a program that adds them.',
  backwards: 'The stretch ends before it begins. Choose where it starts and where it ends.',
  unreadable: 'The file could not be read. Was it moved or changed meanwhile? Choose it again.',
  'no-reader': 'The part that reads files does not answer. Load the page anew, then choose the file again.',
  'no-road': 'The road is no longer here. Choose the file again.',
  'several-tracks': (problem) => {
    const { taken } = problem as RoadQuestion;
    const done = taken === 'join' ? 'They were joined end to end' : `Track ${taken} was taken`;
    return `The file holds ${number(problem.values, 'trackCount')} tracks. ${done}. Is that the road?`;
  },
  holes: (problem) => {
    const { values } = problem;
    if (values['share'] !== undefined)
      return `${share(problem)} of the road are holes crossed in a straight line.`;
    const count = number(values, 'holeCount');
    return `The track has ${count === 1 ? 'a hole' : `${count} holes`}; the longest is ${number(values, 'longestM')} m, ${number(values, 'atM')} m from the start. It was crossed in a straight line. Keep that, or take only the longest part without a hole?`;
  },
  'perhaps-feet': ({ values }) => {
    const why =
      values['climbMph'] === undefined
        ? `${Math.round(number(values, 'share') * 100)} % of this road would be steeper than ${Math.round(number(values, 'steepRatio') * 100)} %`
        : `The rider would have climbed ${Math.round(number(values, 'climbMph'))} m an hour, which no legs do`;
    return `${why}. Perhaps the heights of the file are in feet. Which are they?`;
  },
  salvaged: ({ values }) =>
    `The file is damaged at line ${number(values, 'line')}. What could be read was kept: ${counted(number(values, 'pointCount'), 'point')}. Look whether the road is all there.`,
  stops: ({ values }) => {
    const stoppedS = number(values, 'stoppedS');
    const long =
      stoppedS === 0
        ? ''
        : ` (${stoppedS < 90 ? `${Math.round(stoppedS)} s` : `${Math.round(stoppedS / 60)} min`} in all)`;
    return `Rests were taken out, so that the scatter of the places is no road: ${number(values, 'stopCount')}${long}.`;
  },
  'zero-elevations': ({ values }) =>
    `Elevations of exactly 0 m where the road is nowhere near were left out: ${number(values, 'pointCount')}.`,
  'impossible-points': ({ values }) =>
    `${counted(number(values, 'pointCount'), 'point was', 'points were')} left out: nobody can have been there.`,
  'unreadable-points': ({ values }) =>
    `Points without a readable place were left out: ${number(values, 'pointCount')}.`,
  'unreadable-elevations': ({ values }) =>
    `Elevations that are no height were left out: ${number(values, 'pointCount')}.`,
  'elevation-spikes': ({ values }) =>
    `Lone spikes of elevation were left out: ${number(values, 'pointCount')}.`,
  'time-backwards':
    'The times run backwards in places, so nothing is compared with them. The road itself does not need them.',
  capped: ({ values }) => {
    const limit = number(values, 'limitRatio') * 100;
    const steepest = (number(values, 'steepestRatio') * 100).toFixed(1);
    return `${number(values, 'cappedM')} m of the road are steeper than ${limit} % (up to ${steepest} %); a level limits them to ${limit} %.`;
  },
  sparse: ({ values }) =>
    `The points are ${Math.round(number(values, 'stepM'))} m apart: too few for hills in between.`,
  'elevation-missing': (problem) =>
    `Elevations are missing on ${share(problem)} of the road; straight lines stand in for them.`,
  bridged: (problem) =>
    `On ${share(problem)} of the road the elevations jump as no road does; that was bridged.`,
  noisy: ({ values }) =>
    `The elevations stray by ${number(values, 'noiseM').toFixed(1)} m from point to point; slopes may be off by ${(number(values, 'slopeNoiseRatio') * 100).toFixed(1)} points although they were averaged over ${2 * number(values, 'halfWidthM')} m.`,
  spikes: (problem) => `${share(problem)} of the elevations are lone spikes; they were left out.`,
  'whole-metres': 'The elevations are whole metres, so small rises are blurred.',
  'all-equal': 'All elevations are equal. Either the road is level like water, or they were never measured.',
};
