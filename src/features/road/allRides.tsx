/**
 * All kept rides: means over their pitches, month by month beside check rides, and what is kept, to the last number; and
 * what is said of a whole ride, whether it was just brought or is kept.
 */
import type { JSX } from 'preact';
import type { KeptResult } from '../../core/coach/results.ts';
import {
  byMonth,
  type KeptRoadRide,
  type MeanOf,
  meansOf,
  type RoadMeans,
} from '../../core/recorded/kept.ts';
import { Button } from '../../ui/controls.tsx';
import { ScrollBox, TableHead } from '../../ui/tables.tsx';
import { writeMonth } from '../../words/dates.ts';
import { type Format, MILES_PER_M } from '../../words/format.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { FootPicture, pictureText, PitchTable, placeText } from './pitchTable.tsx';

const say = words('road');

/** Fewer pitches than this make no mean worth much. */
const ENOUGH_PITCHES = 10;

/** Above the columns of the months. */
const HEADS = [
  'all-month',
  'all-rides',
  'table-first',
  'table-atFoot',
  'all-fall',
  'all-inBand',
  'all-check',
] as const;

interface Props {
  readonly rides: readonly KeptRoadRide[];
  readonly results: readonly KeptResult[];
  readonly onForget: (id: string) => void;
  readonly format: Format;
}

export function AllRides({ rides, results, onForget, format }: Props): JSX.Element {
  const means = meansOf(rides);
  return (
    <Paper title={say('all-title')} data-kept-rides={rides.length}>
      {rides.length === 0 ? (
        <p>{say('all-empty')}</p>
      ) : (
        <>
          <p>
            {say('all-mean', { rides: means.rides, pitches: means.pitches })}{' '}
            {means.pitches < ENOUGH_PITCHES && say('all-few')}
          </p>
          <Months {...{ rides, results, format }} />
          <details class="fold road-kept" open={lastWasAgain(rides, results)}>
            <summary>{say('all-what')}</summary>
            <p class="quiet">{say('all-whatHint')}</p>
            {rides.map((ride, i) => (
              <Kept key={ride.id} number={i + 1} {...{ ride, results, onForget, format }} />
            ))}
          </details>
        </>
      )}
    </Paper>
  );
}

function Months({ rides, results, format }: Omit<Props, 'onForget'>): JSX.Element {
  const heads = HEADS.map((head) => say(head));
  return (
    <ScrollBox class="scroll-table road-scroll" label={say('all-byMonth')}>
      <table class="card-table">
        <TableHead names={heads} />
        <tbody>
          {byMonth(rides).map(({ month, means }) => (
            <tr key={month ?? ''} data-month={month ?? ''}>
              <th scope="row">{month === null ? say('all-noMonth') : writeMonth(month)}</th>
              <td data-label={say('all-rides')}>
                {say('all-counted', { rides: means.rides, pitches: means.pitches })}
              </td>
              <MeanCells means={means} format={format} />
              <td data-label={say('all-check')}>{checksOf(results, month, format)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

function MeanCells({ means, format }: { means: RoadMeans; format: Format }): JSX.Element {
  const { firstEasierM: first, bestFirstEasierM: best } = means;
  const written = (value: MeanOf | null, write: (n: number) => string): string =>
    value === null
      ? say('unknown')
      : value.giveOrTake === null
        ? write(value.mean)
        : say('all-giveOrTake', { value: write(value.mean), pm: format.number(value.giveOrTake) });
  const own = placeText(first?.mean ?? null, first?.giveOrTake ?? null, format);
  const bestText = best === null ? null : placeText(best.mean, null, format);
  return (
    <>
      <td data-label={say('table-first')}>
        <FootPicture
          firstEasierM={first?.mean ?? null}
          plusMinusM={first?.giveOrTake ?? null}
          bestM={best?.mean ?? null}
          said={pictureText(own, bestText)}
        />
        <span>{first === null ? say('unknown') : own}</span>
      </td>
      <td data-label={say('table-atFoot')}>{written(means.atFootPercent, (n) => format.percent(n / 100))}</td>
      <td data-label={say('all-fall')}>
        {written(means.fallRpm, (n) => say('all-perMinute', { rpm: format.number(n) }))}
      </td>
      <td data-label={say('all-inBand')}>{written(means.inBandPercent, (n) => format.percent(n / 100))}</td>
    </>
  );
}

/** Whether the ride before this visit went over a pitch of a kept ride: its marks stand beside those figures. */
function lastWasAgain(rides: readonly KeptRoadRide[], results: readonly KeptResult[]): boolean {
  const last = results.toSorted((a, b) => b.atMs - a.atMs)[0]?.levelId;
  return last !== undefined && rides.some(({ pitches }) => pitches.some(({ levelId }) => levelId === last));
}

/** Totals of the check rides of a month. */
function checksOf(results: readonly KeptResult[], month: string | null, format: Format): string {
  const totals = results
    .filter(({ kind, atMs }) => kind === 'check' && month !== null && monthOf(atMs) === month)
    .map(({ total }) => format.number(total));
  return totals.length === 0 ? say('unknown') : say('all-checks', { totals: totals.join(', ') });
}

function monthOf(atMs: number): string {
  const date = new Date(atMs);
  return `${date.getFullYear()}-${String(date.getMonth() + 1).padStart(2, '0')}`;
}

function Kept(
  props: Omit<Props, 'rides'> & { readonly ride: KeptRoadRide; readonly number: number },
): JSX.Element {
  const { ride, results, onForget, format } = props;
  const title = say('all-numbered', {
    number: props.number,
    title: titleOf(ride.month, ride.lengthKm, format),
  });
  return (
    <div class="road-kept-ride" data-kept-ride={ride.id}>
      <h3>{title}</h3>
      <p>
        {ride.teethKnown && say('all-parts', { parts: format.parts(ride) })}{' '}
        {summaryText(ride.readablePercent / 100, ride.pitches.length, format)}{' '}
        {habitsText(ride.changesPerKm, ride.inBandPercent === null ? null : ride.inBandPercent / 100, format)}
      </p>
      {ride.pitches.length > 0 && (
        <PitchTable
          {...{ results, format }}
          pitches={ride.pitches}
          onAgain={null}
          label={say('ride-pitchesOf', { title })}
        />
      )}
      <Button aria-label={say('all-forgetThis', { ride: title })} onClick={() => onForget(ride.id)}>
        {say('all-forget')}
      </Button>
    </div>
  );
}

/** A ride by its month, where that is known, and its length in whole units: that is all that is kept of it. */
export function titleOf(month: string | null, lengthKm: number, format: Format): string {
  const length = format.road(lengthKm * 1000, 0);
  return month === null
    ? say('ride-titleNoMonth', { length })
    : say('ride-title', { month: writeMonth(month), length });
}

/** How much of it could be read, as a share, and how many pitches were found. */
export function summaryText(readableShare: number, found: number, format: Format): string {
  return say('ride-summary', { readable: format.percent(readableShare), found });
}

/** Changes of gear a km, and the share of the pedalled time in the band; what is null is left out. */
export function habitsText(changesPerKm: number | null, shareInBand: number | null, format: Format): string {
  return [
    changesPerKm === null ? '' : changesText(changesPerKm, format),
    shareInBand === null ? '' : say('ride-inBand', { share: format.percent(shareInBand) }),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function changesText(perKm: number, format: Format): string {
  return format.unitM === 1
    ? say('ride-changes', { per: 'km', changes: format.number(perKm, 1) })
    : say('ride-changes', { per: 'mile', changes: format.number(perKm / (1000 * MILES_PER_M), 1) });
}
