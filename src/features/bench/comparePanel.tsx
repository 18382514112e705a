/** What was really ridden on the road of the bench, beside the reference ride: a sentence, and what becomes of it. */
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { compareRecorded } from '../../core/coach/recorded.ts';
import type { Course } from '../../core/course/types.ts';
import type { RecordedSample } from '../../core/gpx/recorded.ts';
import { sampleAt } from '../../core/math/numbers.ts';
import type { Machine } from '../../core/model/types.ts';
import { benchWords } from './words.ts';
import { gearWords, metric } from './say.ts';
import type { BenchServices, ReferenceRide } from './services.ts';

export function ComparePanel(props: {
  readonly samples: readonly RecordedSample[];
  readonly course: Course;
  readonly machine: Machine;
  readonly ride: ReferenceRide | null;
  /** Id under which the level is kept, or null. */
  readonly keptId: string | null;
  readonly services: BenchServices;
  readonly onForgotten: () => void;
}): JSX.Element {
  const { samples, keptId, services } = props;
  const say = benchWords.compare;
  const [told, setTold] = useState<string>(say.notKept);
  const keep = async (): Promise<void> => {
    if (keptId === null) return setTold(say.saveFirst);
    const answer = await services.keepRecorded({ levelId: keptId, samples });
    setTold(answer.saved ? say.kept : (benchWords.keep.codes[answer.code] ?? benchWords.keep.failed));
  };
  const forget = async (): Promise<void> => {
    if (keptId !== null) await services.forgetRecorded(keptId);
    props.onForgotten();
  };
  return (
    <section class="paper" aria-labelledby="bench-compare" data-compare>
      <h2 id="bench-compare">{say.title}</h2>
      <Sentence {...props} />
      <output class="told">{told}</output>
      <div class="thing-doing">
        <Button look="small-button" data-keep-recorded onClick={() => void keep()}>
          {say.keep}
        </Button>
        <Button look="small-button" data-forget-recorded onClick={() => void forget()}>
          {say.forget}
        </Button>
      </div>
    </section>
  );
}

function Sentence(props: {
  readonly samples: readonly RecordedSample[];
  readonly course: Course;
  readonly machine: Machine;
  readonly ride: ReferenceRide | null;
}): JSX.Element {
  const { samples, course, machine, ride } = props;
  const say = benchWords.compare;
  const found = useMemo(
    () =>
      ride === null
        ? null
        : compareRecorded(samples, ride.trace.samples, (atM) => sampleAt(course.heightM, atM)),
    [samples, ride, course],
  );
  if (found === null) return <p>{say.waits}</p>;
  const [from, to] = [metric.number(found.fromM), metric.distance(found.toM)];
  const gear = gearWords(machine, found.gear);
  if (found.recordedCadenceRpm === null)
    return (
      <p data-compare-sentence>
        {say.withSpeed(
          from,
          to,
          metric.speed(found.recordedSpeedMps),
          gear,
          metric.speed(found.referenceSpeedMps),
        )}{' '}
        {say.noCadence}
      </p>
    );
  return (
    <p data-compare-sentence>
      {say.withCadence(
        from,
        to,
        metric.number(found.recordedCadenceRpm),
        gear,
        metric.number(found.referenceCadenceRpm),
      )}
    </p>
  );
}
