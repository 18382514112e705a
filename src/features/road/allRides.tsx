/** All kept rides: means over their pitches, month by month beside check rides, and what is kept, to the last number. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { KeptResult } from '../../core/coach/results.ts';
import {
  byMonth,
  type KeptRoadRide,
  type MeanOf,
  meansOf,
  type RoadMeans,
} from '../../core/recorded/kept.ts';
import { Button } from '../../ui/controls.tsx';
import { ScrollBox } from '../../ui/scrollBox.tsx';
import type { Format } from '../../words/format.ts';
import { FootPicture } from './footPicture.tsx';
import { PitchTable, placeText } from './pitchTable.tsx';
import { monthText } from './months.ts';
import type { RoadWords } from './words.ts';

/** Fewer pitches than this make no mean worth much. */
const ENOUGH_PITCHES = 10;

interface Props {
  readonly rides: readonly KeptRoadRide[];
  readonly results: readonly KeptResult[];
  readonly onForget: (id: string) => void;
  readonly words: RoadWords;
  readonly format: Format;
}

/** The card. */
export function AllRides({ rides, results, onForget, words, format }: Props): JSX.Element {
  const id = useId();
  const { all } = words;
  const means = meansOf(rides);
  return (
    <section class="paper" aria-labelledby={id} data-kept-rides={rides.length}>
      <h2 id={id}>{all.title}</h2>
      {rides.length === 0 ? (
        <p>{all.empty}</p>
      ) : (
        <>
          <p>
            {all.mean(means.rides, means.pitches)} {means.pitches < ENOUGH_PITCHES && all.few}
          </p>
          <Months {...{ rides, results, words, format }} />
          <details class="road-kept">
            <summary>{all.what}</summary>
            <p class="quiet">{all.whatHint}</p>
            {rides.map((ride, i) => (
              <Kept key={ride.id} number={i + 1} {...{ ride, results, onForget, words, format }} />
            ))}
          </details>
        </>
      )}
    </section>
  );
}

function Months({ rides, results, words, format }: Omit<Props, 'onForget'>): JSX.Element {
  const { all } = words;
  const heads = [all.month, all.rides, all.first, all.atFoot, all.fall, all.inBand, all.check];
  return (
    <ScrollBox class="scroll-table road-scroll" label={all.byMonth}>
      <table class="road-months">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {byMonth(rides).map(({ month, means }) => (
            <tr key={month ?? ''} data-month={month ?? ''}>
              <th scope="row">{month === null ? all.noMonth : monthText(month)}</th>
              <td data-label={all.rides}>
                {format.number(means.rides)} · {format.number(means.pitches)} {all.pitches.toLowerCase()}
              </td>
              <MeanCells means={means} words={words} format={format} />
              <td data-label={all.check}>{checksOf(results, month, words, format)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

function MeanCells({
  means,
  words,
  format,
}: {
  means: RoadMeans;
  words: RoadWords;
  format: Format;
}): JSX.Element {
  const { all, table, picture } = words;
  const { firstEasierM: first, bestFirstEasierM: best } = means;
  const written = (value: MeanOf | null, write: (n: number) => string): string =>
    value === null
      ? table.unknown
      : all.giveOrTake(write(value.mean), value.giveOrTake === null ? null : format.number(value.giveOrTake));
  const own = placeText(first?.mean ?? null, first?.giveOrTake ?? null, words, format);
  const bestText = best === null ? null : placeText(best.mean, null, words, format);
  return (
    <>
      <td data-label={all.first}>
        <FootPicture
          firstEasierM={first?.mean ?? null}
          plusMinusM={first?.giveOrTake ?? null}
          bestM={best?.mean ?? null}
          said={picture.desc(own, bestText)}
        />
        <span>{first === null ? table.unknown : own}</span>
      </td>
      <td data-label={all.atFoot}>{written(means.atFootPercent, (n) => format.percent(n / 100))}</td>
      <td data-label={all.fall}>{written(means.fallRpm, (n) => all.perMinute(format.number(n)))}</td>
      <td data-label={all.inBand}>{written(means.inBandPercent, (n) => format.percent(n / 100))}</td>
    </>
  );
}

/** Totals of the check rides of a month. */
function checksOf(
  results: readonly KeptResult[],
  month: string | null,
  { all, table }: RoadWords,
  format: Format,
): string {
  const totals = results
    .filter(({ kind, atMs }) => kind === 'check' && month !== null && monthOf(atMs) === month)
    .map(({ total }) => format.number(total));
  return totals.length === 0 ? table.unknown : all.checks(totals.join(', '));
}

function monthOf(atMs: number): string {
  const date = new Date(atMs);
  return `${date.getFullYear()}-${String(date.getMonth() + 1).padStart(2, '0')}`;
}

function Kept(
  props: Omit<Props, 'rides'> & { readonly ride: KeptRoadRide; readonly number: number },
): JSX.Element {
  const { ride, results, onForget, words, format } = props;
  const { all } = words;
  const title = all.numbered(
    props.number,
    words.ride.title(ride.month === null ? null : monthText(ride.month), format.road(ride.lengthKm * 1000)),
  );
  return (
    <div class="road-kept-ride" data-kept-ride={ride.id}>
      <h3>{title}</h3>
      <p>
        {ride.teethKnown && `${format.parts(ride)}. `}
        {words.ride.summary(format.percent(ride.readablePercent / 100), ride.pitches.length)}{' '}
        {words.ride.habits(
          ride.changesPerKm === null ? null : format.number(ride.changesPerKm, 1),
          ride.inBandPercent === null ? null : format.percent(ride.inBandPercent / 100),
        )}
      </p>
      {ride.pitches.length > 0 && (
        <PitchTable
          {...{ results, words, format }}
          pitches={ride.pitches}
          onAgain={null}
          label={words.ride.pitchesOf(title)}
        />
      )}
      <Button small aria-label={all.forgetThis(title)} onClick={() => onForget(ride.id)}>
        {all.forget}
      </Button>
    </div>
  );
}
