/** All rides of a session in a table, with nicknames; only shown where the plan or the coach says so. */
import type { JSX } from 'preact';
import type { RideRecord } from '../../core/group/records/record.ts';
import { type Column, RowCells, TableHead } from '../../ui/tableHead.tsx';
import type { Format } from '../../words/format.ts';
import { nameOf } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

function columnsOf(format: Format): readonly Column<RideRecord>[] {
  return [
    { name: say('picture-table-rider'), cell: (record) => nameOf(record.nickname) },
    { name: say('picture-table-ride'), cell: (record) => record.rideIndex + 1 },
    { name: say('picture-table-attempt'), cell: (record) => record.attempt },
    { name: say('picture-table-total'), cell: (record) => format.number(record.total) },
    {
      name: say('picture-table-pitches'),
      cell: ({ pitches }) =>
        pitches.map((pitch) => pitch.creditPercent ?? say('picture-table-none')).join(' · '),
    },
  ];
}

/** The table. */
export function RideTable(props: {
  readonly records: readonly RideRecord[];
  readonly format: Format;
}): JSX.Element {
  const columns = columnsOf(props.format);
  const rows = props.records.toSorted(
    (a, b) =>
      (a.nickname < b.nickname ? -1 : a.nickname > b.nickname ? 1 : 0) ||
      a.rideIndex - b.rideIndex ||
      a.attempt - b.attempt,
  );
  return (
    <div class="table-scroll">
      <table class="ride-table">
        <TableHead names={columns.map(({ name }) => name)} />
        <tbody>
          {rows.map((record) => (
            <tr key={record.id}>
              <RowCells columns={columns} row={record} />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
