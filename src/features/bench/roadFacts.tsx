/** What is known about a recorded road: its numbers, how far its heights can be trusted and why, what was put right. */
import type { JSX } from 'preact';
import type { RoadSummary } from '../../core/gpx/summary.ts';
import { benchWords } from './words.ts';
import { metric } from './say.ts';
import { sentenceOf } from '../../words/problems.ts';

export function RoadFacts({ road }: { readonly road: RoadSummary }): JSX.Element {
  const say = benchWords.road;
  const { quality, notes } = road;
  return (
    <>
      <p data-road-facts>
        {say.facts(
          metric.road(road.lengthM),
          metric.distance(road.ascentM),
          metric.percent(road.steepestRatio),
          metric.number(road.pointCount),
        )}
      </p>
      <h2>{say.quality}</h2>
      <p class={`grade ${quality.grade}`} data-grade={quality.grade}>
        {say.grades[quality.grade]}
      </p>
      {quality.reasons.length > 0 && (
        <ul>
          {quality.reasons.map((reason) => (
            <li key={reason.code}>{sentenceOf(reason)}</li>
          ))}
        </ul>
      )}
      {notes.length > 0 && (
        <>
          <h3>{say.notes}</h3>
          <ul>
            {notes.map((note, index) => (
              <li key={index}>{sentenceOf(note)}</li>
            ))}
          </ul>
        </>
      )}
      {road.timed && <p>{say.timed}</p>}
    </>
  );
}
