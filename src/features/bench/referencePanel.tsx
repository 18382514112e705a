/** What the road would feel like: the reference ride of a chosen rider on a chosen bike, in a few facts. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import type { PitchReport } from '../../core/coach/types.ts';
import type { Course } from '../../core/course/types.ts';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import type { Machine } from '../../core/model/types.ts';
import { benchWords } from './words.ts';
import { rolling } from './rolling.ts';
import { metric } from './say.ts';
import { shiftWords, shownShifts } from './shiftMarks.tsx';
import type { ReferenceRide, Who } from './services.ts';
import type { Planning } from './usePlanning.ts';
import { bikeName, riderName } from '../../words/common.ts';

/** Gentler roads are called level (rise over run). */
const WORTH_TELLING_RATIO = 0.01;

interface WhoProps {
  readonly who: Who;
  /** Bike and rider of the settings come first. */
  readonly own: Who;
  readonly onWho: (who: Who) => void;
}

export function ReferencePanel(
  props: WhoProps & {
    readonly course: Course;
    readonly machine: Machine;
    readonly planning: Planning;
    readonly onAsk: () => void;
  },
): JSX.Element {
  const { planning, machine, course } = props;
  const say = benchWords.reference;
  return (
    <section class="paper" aria-labelledby="bench-reference" data-reference={planning.kind}>
      <h2 id="bench-reference">{say.title}</h2>
      <p>{say.intro}</p>
      <WhoChoice {...props} />
      <div aria-live="polite">
        {planning.kind === 'waits' && <p>{say.waits}</p>}
        {planning.kind === 'working' && <p>{say.working(metric.percent(planning.share))}</p>}
        {planning.kind === 'failed' && <p>{say.failed}</p>}
        {planning.kind === 'ask' && <p>{say.long}</p>}
      </div>
      {(planning.kind === 'ask' || planning.kind === 'failed') && (
        <Button look="small-button" data-plan onClick={props.onAsk}>
          {say.ask}
        </Button>
      )}
      {planning.kind === 'done' && <Facts ride={planning.ride} {...{ machine, course }} />}
    </section>
  );
}

function WhoChoice({ who, own, onWho }: WhoProps): JSX.Element {
  const say = benchWords.reference;
  const bikes = [own.bike, ...BIKES.filter((bike) => bike.id !== own.bike.id)];
  const riders = [own.rider, ...RIDERS.filter((rider) => rider.id !== own.rider.id)];
  return (
    <div class="thing-fields">
      <label class="select-field">
        <span>{say.bike}</span>
        <select
          data-bench-bike
          value={who.bike.id}
          onChange={({ currentTarget }) => {
            const bike = bikes.find((one) => one.id === currentTarget.value);
            if (bike !== undefined) onWho({ ...who, bike });
          }}
        >
          {bikes.map(({ id }) => (
            <option key={id} value={id}>
              {bikeName(id)}
            </option>
          ))}
        </select>
      </label>
      <label class="select-field">
        <span>{say.rider}</span>
        <select
          data-bench-rider
          value={who.rider.id}
          onChange={({ currentTarget }) => {
            const rider = riders.find((one) => one.id === currentTarget.value);
            if (rider !== undefined) onWho({ ...who, rider });
          }}
        >
          {riders.map(({ id }) => (
            <option key={id} value={id}>
              {riderName(id)}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}

function Facts(props: {
  readonly ride: ReferenceRide;
  readonly machine: Machine;
  readonly course: Course;
}): JSX.Element {
  const { ride, machine, course } = props;
  const say = benchWords.reference;
  const { report, trace } = ride;
  const worst = worstPitch(ride);
  // A start on a pitch is no ordinary start: what it does to the legs counts.
  const slow = rolling(trace.samples).map(({ cadenceRpm, distanceM }) => ({ cadenceRpm, distanceM }));
  if (worst !== null) slow.push({ cadenceRpm: worst.worstCadenceRpm, distanceM: worst.footM });
  const lowest = slow.toSorted((a, b) => a.cadenceRpm - b.cadenceRpm)[0] ?? null;
  const start = trace.samples[0];
  const list = start === undefined ? [] : shownShifts(report.shifts, machine, start);
  const lowestWords =
    lowest === null ? '–' : say.lowestAt(metric.number(lowest.cadenceRpm), metric.distance(lowest.distanceM));
  const facts: readonly (readonly [string, string])[] = [
    [say.time, metric.time(report.finishedS)],
    [say.worst, worstWords(worst, course)],
    [say.lowest, lowestWords],
    [say.shifts, metric.number(report.shiftCount)],
    ...(report.footDowns > 0 ? [[say.feet, metric.number(report.footDowns)] as const] : []),
  ];
  return (
    <>
      <dl class="facts">
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {list.length > 0 && (
        <details>
          <summary>{say.list}</summary>
          <p>{say.legend}</p>
          <ol class="shift-list">
            {list.map((one, index) => (
              <li key={index}>{shiftWords(one)}</li>
            ))}
          </ol>
        </details>
      )}
    </>
  );
}

/** The pitch that slows the legs most. */
function worstPitch({ report }: ReferenceRide): PitchReport | null {
  return report.pitches.toSorted((a, b) => a.worstCadenceRpm - b.worstCadenceRpm)[0] ?? null;
}

/** That pitch in words, or, where there is none, the steepest place. */
function worstWords(worst: PitchReport | null, course: Course): string {
  const say = benchWords.reference;
  if (worst !== null)
    return say.worstIs(
      metric.percent(worst.steepestRatio),
      metric.distance(worst.footM),
      metric.number(worst.worstCadenceRpm),
    );
  const steepest = course.slopeRatio.reduce((a, b) => Math.max(a, b), 0);
  if (steepest < WORTH_TELLING_RATIO) return say.level;
  return say.noPitch(metric.percent(steepest), metric.distance(course.slopeRatio.indexOf(steepest)));
}
