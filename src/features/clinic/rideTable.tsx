/** All rides of a session in a table, with nicknames; only shown where the plan or the coach says so. */
import type { JSX } from 'preact';
import type { RideRecord } from '../../core/group/records/record.ts';
import { TableHead } from '../../ui/tableHead.tsx';
import type { Format } from '../../words/format.ts';
import { nameOf } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

const COLUMNS = ['rider', 'ride', 'attempt', 'total', 'pitches'] as const;

/** The table. */
export function RideTable(props: {
  readonly records: readonly RideRecord[];
  readonly format: Format;
}): JSX.Element {
  const { records, format } = props;
  const rows = records.toSorted(
    (a, b) =>
      (a.nickname < b.nickname ? -1 : a.nickname > b.nickname ? 1 : 0) ||
      a.rideIndex - b.rideIndex ||
      a.attempt - b.attempt,
  );
  return (
    <div class="table-scroll">
      <table class="ride-table">
        <TableHead names={COLUMNS.map((column) => say(`picture-table-${column}`))} />
        <tbody>
          {rows.map((record) => (
            <tr key={record.id}>
              <th scope="row">{nameOf(record.nickname)}</th>
              <td>{record.rideIndex + 1}</td>
              <td>{record.attempt}</td>
              <td>{format.number(record.total)}</td>
              <td>
                {record.pitches.map((pitch) => pitch.creditPercent ?? say('picture-table-none')).join(' · ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
