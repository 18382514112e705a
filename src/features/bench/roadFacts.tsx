/** What is known about a recorded road: its numbers, how far its heights can be trusted and why, what was put right. */
import type { JSX } from 'preact';
import type { RoadSummary } from '../../core/gpx/summary.ts';
import { useFormat } from './say.ts';
import { Lines } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { sentenceIn } from '../../words/problems.ts';

const say = words('bench');

export function RoadFacts({ road }: { readonly road: RoadSummary }): JSX.Element {
  const { quality, notes } = road;
  const format = useFormat();
  const sentenceOf = sentenceIn(format);
  return (
    <>
      <p data-road-facts>
        {say('road-facts', {
          length: format.road(road.lengthM),
          climbed: format.distance(road.ascentM),
          steepest: format.percent(road.steepestRatio),
          points: format.number(road.pointCount),
        })}
      </p>
      <h2>{say('road-quality')}</h2>
      <p class={`grade ${quality.grade}`} data-grade={quality.grade}>
        {say(`road-grades-${quality.grade}`)}
      </p>
      {quality.reasons.length > 0 && <Lines lines={quality.reasons.map(sentenceOf)} />}
      {notes.length > 0 && (
        <>
          <h3>{say('road-notes')}</h3>
          <Lines lines={notes.map(sentenceOf)} />
        </>
      )}
      {road.timed && <p>{say('road-timed')}</p>}
    </>
  );
}

/** Names and values beside each other. */
export function FactList(props: { readonly facts: readonly (readonly [string, string])[] }): JSX.Element {
  return (
    <dl class="facts">
      {props.facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
