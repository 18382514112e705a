/** Totals of every rider on one sheet: a row for each, a column for each ride, attempts in their order. */
import type { JSX } from 'preact';
import { personOf } from '../../core/group/picture/groupRide.ts';
import { groupBy } from '../../core/group/records/merge.ts';
import type { RideRecord } from '../../core/group/records/record.ts';
import { TableHead } from '../../ui/tableHead.tsx';
import { rideTitle } from './say.ts';
import { ridesOf } from './session.ts';
import type { ClinicProps, InSession } from './services.ts';
import { nameOf } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** The table. Riders of several devices may share a nickname; each has a row of their own. */
export function Totals(props: InSession): JSX.Element {
  const { session } = props;
  const { saved, apart, levels } = props.props;
  const records = ridesOf(session, saved.records, apart);
  const riders = [...groupBy(records, personOf)].map(([id, own]) => ({
    id,
    nickname: own[0]?.nickname ?? '',
    own,
  }));
  return (
    <table class="ride-table">
      <TableHead
        names={[
          say('picture-table-rider'),
          ...session.plan.rides.map(
            (ride, i) => rideTitle(ride, levels) ?? say('picture-table-rideNumber', { ride: i + 1 }),
          ),
        ]}
      />
      <tbody>
        {riders
          .toSorted((a, b) => ((a.nickname === b.nickname ? a.id < b.id : a.nickname < b.nickname) ? -1 : 1))
          .map(({ id, nickname, own }) => (
            <tr key={id}>
              <th scope="row">{nameOf(nickname)}</th>
              {session.plan.rides.map((_, i) => (
                <td key={i}>{totalsOf(own, i, props.props)}</td>
              ))}
            </tr>
          ))}
      </tbody>
    </table>
  );
}

function totalsOf(own: readonly RideRecord[], rideIndex: number, { format }: ClinicProps): string {
  const totals = own
    .filter((record) => record.rideIndex === rideIndex)
    .toSorted((a, b) => a.attempt - b.attempt)
    .map((record) => format.number(record.total));
  return totals.length === 0 ? say('picture-table-none') : totals.join(' · ');
}
