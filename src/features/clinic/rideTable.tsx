/** All rides of a session in a table, with nicknames; only shown where the plan or the coach says so. */
import type { JSX } from 'preact';
import type { RideRecord } from '../../core/group/records/record.ts';
import type { Format } from '../../words/format.ts';
import type { ClinicWords } from './words.ts';
import { nameOf } from './say.ts';

/** The table. */
export function RideTable(props: {
  readonly records: readonly RideRecord[];
  readonly words: ClinicWords;
  readonly format: Format;
}): JSX.Element {
  const { records, words, format } = props;
  const { table } = words.picture;
  const rows = records.toSorted(
    (a, b) =>
      (a.nickname < b.nickname ? -1 : a.nickname > b.nickname ? 1 : 0) ||
      a.rideIndex - b.rideIndex ||
      a.attempt - b.attempt,
  );
  return (
    <div class="table-scroll">
      <table class="ride-table">
        <thead>
          <tr>
            <th scope="col">{table.rider}</th>
            <th scope="col">{table.ride}</th>
            <th scope="col">{table.attempt}</th>
            <th scope="col">{table.total}</th>
            <th scope="col">{table.pitches}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((record) => (
            <tr key={record.id}>
              <th scope="row">{nameOf(record.nickname, words)}</th>
              <td>{record.rideIndex + 1}</td>
              <td>{record.attempt}</td>
              <td>{format.number(record.total)}</td>
              <td>{record.pitches.map((pitch) => pitch.creditPercent ?? table.none).join(' · ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
