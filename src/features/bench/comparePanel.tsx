/** What was really ridden on the road of the bench, beside the reference ride: a sentence, and what becomes of it. */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { compareRecorded, timesOfBoth } from '../../core/coach/recorded.ts';
import type { Course } from '../../core/course/types.ts';
import type { RecordedSample } from '../../core/gpx/recorded.ts';
import { sampleAt } from '../../core/math/numbers.ts';
import { helpsAtAll } from '../../core/model/motor.ts';
import type { Machine, Rider } from '../../core/model/types.ts';
import { bareLength, gearWords, notKept, useFormat, useTold } from './say.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import type { BenchServices, ReferenceRide, Who } from './services.ts';
import { powerOfSamples, withSteadyPower } from '../../core/recorded/steadyPower.ts';

const say = words('bench');

export function ComparePanel(props: {
  readonly samples: readonly RecordedSample[];
  readonly course: Course;
  readonly machine: Machine;
  readonly who: Who;
  /** The rider with the power of the recorded ride; null where it tells none. */
  readonly asRidden: Rider | null;
  readonly ride: ReferenceRide | null;
  /** Id under which the level is kept, or null. */
  readonly keptId: string | null;
  readonly services: BenchServices;
  readonly onForgotten: () => void;
}): JSX.Element {
  const { samples, keptId, services } = props;
  const [told, tell] = useTold(() => say('compare-notKept'));
  const keep = async (): Promise<void> => {
    if (keptId === null) return tell(() => say('compare-saveFirst'));
    const answer = await services.keepRecorded({ levelId: keptId, samples });
    tell(() => (answer.saved ? say('compare-kept') : notKept(answer.code)));
  };
  const forget = async (): Promise<void> => {
    if (keptId !== null) await services.forgetRecorded(keptId);
    props.onForgotten();
  };
  return (
    <Paper title={say('compare-title')} data-compare>
      <Times {...props} />
      <Power {...props} />
      <Sentence {...props} />
      <output class="told">{told}</output>
      <div class="row thing-doing">
        <Button look="small-button" data-keep-recorded onClick={() => void keep()}>
          {say('compare-keep')}
        </Button>
        <Button look="small-button" data-forget-recorded onClick={() => void forget()}>
          {say('compare-forget')}
        </Button>
      </div>
    </Paper>
  );
}

/** How long the rider took, and the best ride. */
function Times(props: {
  readonly samples: readonly RecordedSample[];
  readonly ride: ReferenceRide | null;
}): JSX.Element | null {
  const { samples, ride } = props;
  const format = useFormat();
  const both = ride === null ? null : timesOfBoth(samples, ride.trace.samples);
  if (both === null) return null;
  return (
    <p data-compare-times>
      {say('compare-times', {
        from: bareLength(format, both.fromM),
        to: format.distance(both.toM),
        rode: format.time(both.recordedS),
        best: format.time(both.referenceS),
      })}
    </p>
  );
}

/** Whether the best ride has the power of the rider of the file, and how much both have. */
function Power(props: { readonly who: Who; readonly asRidden: Rider | null }): JSX.Element {
  const { who, asRidden } = props;
  const format = useFormat();
  const how = helpsAtAll(who.bike)
    ? 'helped'
    : asRidden === null
      ? 'unknown'
      : who.rider.id === AS_RIDDEN
        ? 'same'
        : 'other';
  return (
    <p data-compare-power={how}>
      {say('compare-power', {
        how,
        watts: asRidden === null ? '' : format.number(asRidden.steadyPowerW),
        theirs: format.number(who.rider.steadyPowerW),
      })}
    </p>
  );
}

function Sentence(props: {
  readonly samples: readonly RecordedSample[];
  readonly course: Course;
  readonly machine: Machine;
  readonly ride: ReferenceRide | null;
}): JSX.Element {
  const { samples, course, machine, ride } = props;
  const format = useFormat();
  const found = useMemo(
    () =>
      ride === null
        ? null
        : compareRecorded(samples, ride.trace.samples, (atM) => sampleAt(course.heightM, atM)),
    [samples, ride, course],
  );
  if (found === null) return <p>{say('compare-waits')}</p>;
  const where = { from: bareLength(format, found.fromM), to: format.distance(found.toM) };
  const gear = gearWords(machine, found.gear);
  if (found.recordedCadenceRpm === null)
    return (
      <p data-compare-sentence>
        {say('compare-withSpeed', {
          ...where,
          gear,
          rode: format.speed(found.recordedSpeedMps),
          speed: format.speed(found.referenceSpeedMps),
        })}{' '}
        {say('compare-noCadence')}
      </p>
    );
  return (
    <p data-compare-sentence>
      {say('compare-withCadence', {
        ...where,
        gear,
        rode: format.number(found.recordedCadenceRpm),
        cadence: format.number(found.referenceCadenceRpm),
      })}
    </p>
  );
}

/** Id of that rider among those that can be chosen. */
export const AS_RIDDEN = 'as-ridden';

/**
 * The rider of the settings with the power that a recorded ride tells, so that the best ride beside it has the same;
 * null where the climbs of the ride tell no power.
 */
export function riderAsRidden(samples: readonly RecordedSample[], course: Course, who: Who): Rider | null {
  const powerW = powerOfSamples(samples, (atM) => sampleAt(course.heightM, atM), who);
  return powerW === null ? null : { ...withSteadyPower(who.rider, Math.round(powerW)), id: AS_RIDDEN };
}
