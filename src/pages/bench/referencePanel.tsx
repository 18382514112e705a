/** What the road would feel like: the reference ride of a chosen rider on a chosen bike, in a few facts. */
import type { JSX } from 'preact';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import type { Machine } from '../../core/model/types.ts';
import { words } from '../words.ts';
import { benchWords } from '../words/bench.ts';
import { metric } from './say.ts';
import { shiftWords, shownShifts } from './shiftMarks.tsx';
import type { ReferenceRide, Who } from './types.ts';
import type { Planning } from './usePlanning.ts';

export function ReferencePanel(props: {
  readonly who: Who;
  readonly onWho: (who: Who) => void;
  readonly own: Who;
  readonly machine: Machine;
  readonly planning: Planning;
  readonly onAsk: () => void;
}): JSX.Element {
  const { who, own, onWho, planning, machine } = props;
  const say = benchWords.reference;
  const bikes = [own.bike, ...BIKES.filter((bike) => bike.id !== own.bike.id)];
  const riders = [own.rider, ...RIDERS.filter((rider) => rider.id !== own.rider.id)];
  return (
    <section class="paper" aria-labelledby="bench-reference" data-reference={planning.kind}>
      <h2 id="bench-reference">{say.title}</h2>
      <p>{say.intro}</p>
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
                {words.bike.names[id] ?? words.bike.own}
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
                {words.bike.riderNames[id] ?? words.bike.ownRider}
              </option>
            ))}
          </select>
        </label>
      </div>
      <div aria-live="polite">
        {planning.kind === 'waits' && <p>{say.waits}</p>}
        {planning.kind === 'working' && <p>{say.working(metric.percent(planning.share))}</p>}
        {planning.kind === 'failed' && <p>{say.failed}</p>}
        {planning.kind === 'ask' && <p>{say.long}</p>}
      </div>
      {(planning.kind === 'ask' || planning.kind === 'failed') && (
        <button type="button" class="small-button" onClick={props.onAsk}>
          {say.ask}
        </button>
      )}
      {planning.kind === 'done' && <Facts ride={planning.ride} machine={machine} />}
    </section>
  );
}

function Facts({ ride, machine }: { readonly ride: ReferenceRide; readonly machine: Machine }): JSX.Element {
  const say = benchWords.reference;
  const { report, trace } = ride;
  const turning = trace.samples.filter((one) => one.pedalling && one.cadenceRpm > 0 && one.timeS > SETTLED_S);
  const lowest = turning.toSorted((a, b) => a.cadenceRpm - b.cadenceRpm)[0] ?? null;
  const worst = report.pitches.toSorted((a, b) => a.worstCadenceRpm - b.worstCadenceRpm)[0] ?? null;
  const start = trace.samples[0];
  const list = start === undefined ? [] : shownShifts(report.shifts, machine, start);
  const facts: readonly (readonly [string, string])[] = [
    [say.time, metric.time(report.finishedS)],
    [
      say.worst,
      worst === null
        ? say.noPitch
        : say.worstIs(
            metric.percent(worst.steepestRatio),
            metric.distance(worst.footM),
            metric.number(worst.worstCadenceRpm),
          ),
    ],
    [
      say.lowest,
      lowest === null
        ? '–'
        : say.lowestAt(metric.number(lowest.cadenceRpm), metric.distance(lowest.distanceM)),
    ],
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

/** Pushing off is slow on every road (s). */
const SETTLED_S = 5;
