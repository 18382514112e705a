/** The rider of the settings with the power that a recorded ride tells, so that the best ride beside it has the same. */
import type { Course } from '../../core/course/types.ts';
import type { RecordedSample } from '../../core/gpx/recorded.ts';
import { sampleAt } from '../../core/math/numbers.ts';
import type { Rider } from '../../core/model/types.ts';
import { powerOfSamples, withSteadyPower } from '../../core/recorded/steadyPower.ts';
import type { Who } from './services.ts';

/** Id of that rider among those that can be chosen. */
export const AS_RIDDEN = 'as-ridden';

/** Null where the climbs of the ride tell no power. */
export function riderAsRidden(samples: readonly RecordedSample[], course: Course, who: Who): Rider | null {
  const powerW = powerOfSamples(samples, (atM) => sampleAt(course.heightM, atM), who);
  return powerW === null ? null : { ...withSteadyPower(who.rider, Math.round(powerW)), id: AS_RIDDEN };
}
