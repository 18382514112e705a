/** The numbers of the strip as tables: the ride at even distances, and every shift. Folded away until wanted. */
import type { JSX } from 'preact';
import { sampleAt as tableAt } from '../core/math/numbers.ts';
import { Fold } from '../ui/parts.tsx';
import { ScrollBox, TableHead } from '../ui/tables.tsx';
import type { Format } from '../words/format.ts';
import { words } from '../words/words.ts';
import { nearestSample } from './lookup.ts';
import { gearText, shiftText } from './readout.ts';
import { showsCadence } from './stripLayout.ts';
import type { StripData } from './tracks.tsx';

const say = words('charts');

/** A table longer than this is no longer read (rows). */
const MOST_ROWS = 80;
const STEPS = [10, 20, 50, 100, 200, 500, 1000];

interface TableProps {
  readonly data: StripData;
  readonly format: Format;
}

/** Distance between two rows for a road (m), a round number of the unit (m). */
export function rowStepM(lengthM: number, unitM: number): number {
  const wanted = lengthM / MOST_ROWS / unitM;
  return (STEPS.find((step) => step >= wanted) ?? 1000) * unitM;
}

export function StripTable(props: TableProps): JSX.Element {
  return (
    <Fold look="numbers-fold" title={say('table-summary')}>
      {() => (
        <ScrollBox class="numbers-scroll" label={say('table-summary')}>
          <Places {...props} />
          {props.data.shifts !== null && <ShiftRows {...props} />}
        </ScrollBox>
      )}
    </Fold>
  );
}

const COLUMNS = ['place', 'slope', 'gear', 'cadence', 'band', 'pressure'] as const;
const COLUMNS_OF_BEST = ['bestGear', 'bestCadence'] as const;

function Places({ data, format }: TableProps): JSX.Element {
  const stepM = rowStepM(data.course.lengthM, format.unitM);
  const reachedM = data.trace.samples.at(-1)?.distanceM ?? 0;
  // The last sample lies a little before the finish.
  const places = Array.from({ length: Math.floor((reachedM + 1) / stepM) + 1 }, (_, i) => i * stepM);
  const columns = [...COLUMNS, ...(data.reference === null ? [] : COLUMNS_OF_BEST)];
  return (
    <table data-table="places">
      <caption>{say('table-places', { step: format.distance(stepM) })}</caption>
      <TableHead names={columns.map((name) => say(`table-${name}`))} />
      <tbody>
        {places.map((m) => (
          <PlaceRow key={m} {...{ data, format }} distanceM={m} />
        ))}
      </tbody>
    </table>
  );
}

function PlaceRow(props: TableProps & { readonly distanceM: number }): JSX.Element | null {
  const { data, format, distanceM } = props;
  const sample = data.trace.samples[nearestSample(data.trace.samples, distanceM)];
  const best = data.reference?.samples[nearestSample(data.reference.samples, distanceM)];
  if (sample === undefined) return null;
  const gear = (one: typeof sample): string => gearText(data.machine, one, format);
  const cadence = (one: typeof sample): string => (showsCadence(one) ? format.number(one.cadenceRpm) : '–');
  return (
    <tr>
      <th scope="row">{format.distance(distanceM)}</th>
      <td>{format.percent(tableAt(data.course.slopeRatio, distanceM))}</td>
      <td>{gear(sample)}</td>
      <td>{cadence(sample)}</td>
      <td>
        {format.number(sample.bandLowRpm)}–{format.number(sample.bandHighRpm)}
      </td>
      <td>{format.number(sample.pressureRatio * 100)}</td>
      {best !== undefined && (
        <>
          <td>{gear(best)}</td>
          <td>{cadence(best)}</td>
        </>
      )}
    </tr>
  );
}

function ShiftRows({ data, format }: TableProps): JSX.Element {
  return (
    <table data-table="shifts">
      <caption>{say('table-shifts')}</caption>
      <TableHead
        names={(['begins', 'change', 'took', 'load', 'feel'] as const).map((name) => say(`table-${name}`))}
      />
      <tbody>
        {(data.shifts ?? []).map((shift) => {
          const [from, to] = shiftText(data.machine, shift, format);
          return (
            <tr>
              <th scope="row">{format.distance(shift.startedAtM)}</th>
              <td>{`${from} → ${to}`}</td>
              <td>{format.number(shift.durationS, 1)}</td>
              <td>{format.number(shift.load * 100)}</td>
              <td>{say(`feel-${shift.kind}`)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
