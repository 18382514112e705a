/** The sentences about recorded roads: why none can be made, what a person may decide, how far heights can be trusted. */
import type { RoadCode, RoadQuestion } from '../core/gpx/types.ts';
import type { Problem } from '../core/level/problems.ts';
import type { Format } from './format.ts';
import { number, text, written } from './values.ts';
import { words } from './words.ts';

const say = words('roadFile');

/** Shorter rests are told in seconds (s). */
const MINUTES_FROM_S = 90;

export function roadSentence(problem: Problem, format: Format): string {
  const { values } = problem;
  const code = problem.code as RoadCode;
  switch (code) {
    case 'not-gpx':
    case 'not-xml':
      return fileSentence(values);
    case 'several-tracks': {
      const { taken } = problem as RoadQuestion;
      const trackCount = number(values, 'trackCount');
      return say('several-tracks', { how: taken === 'join' ? 'joined' : 'one', trackCount, track: taken });
    }
    case 'perhaps-feet':
      return say.coded(
        values['climbMph'] === undefined ? 'perhaps-feet-steep' : 'perhaps-feet-fast',
        written(values, format),
      );
    case 'holes':
      return say.coded(values['share'] === undefined ? 'holes' : 'holes-share', written(values, format));
    case 'too-long':
      return say('too-long', { length: format.road(number(values, 'lengthM'), 0) });
    case 'capped':
      return say('capped', {
        length: format.distance(number(values, 'cappedM')),
        limit: format.percent(number(values, 'limitRatio')),
        steepest: format.percent(number(values, 'steepestRatio'), 1),
      });
    case 'noisy':
      return say('noisy', {
        noise: format.distance(number(values, 'noiseM'), 1),
        points: format.number(number(values, 'slopeNoiseRatio') * 100, 1),
        width: format.distance(2 * number(values, 'halfWidthM')),
      });
    case 'stops': {
      const stoppedS = number(values, 'stoppedS');
      const isLong = stoppedS >= MINUTES_FROM_S;
      return say('stops', {
        count: number(values, 'stopCount'),
        long: stoppedS === 0 ? 'unknown' : isLong ? 'minutes' : 'seconds',
        time: Math.round(isLong ? stoppedS / 60 : stoppedS),
      });
    }
    default:
      return say.coded(code, written(values, format));
  }
}

/** What a file is that is no GPX file, by what the core says it is. */
function fileSentence(values: Problem['values']): string {
  const is = text(values, 'is');
  if (is === 'xml') return say('is-xml', { root: text(values, 'root') });
  const name = `is-${is}`;
  return say.has(name) ? say(name) : say('is-other');
}
