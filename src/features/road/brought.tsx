/** A file that was brought: how far it is read, why it cannot be used, or what was ridden, with a way to keep the numbers. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { HeightUnit } from '../../core/gpx/choose.ts';
import type { RoadQuestion } from '../../core/gpx/types.ts';
import type { KeptResult } from '../../core/coach/results.ts';
import { keptRide, type KeptRoadRide } from '../../core/recorded/kept.ts';
import type { RoadRider, RoadRideFigures } from '../../core/recorded/rideFigures.ts';
import { Button } from '../../ui/controls.tsx';
import type { Format } from '../../words/format.ts';
import { sentenceOf } from '../../words/problems.ts';
import { monthText } from './months.ts';
import { PitchTable } from './pitchTable.tsx';
import type { BroughtRide, RideFile } from './services.ts';
import type { RoadWords } from './words.ts';

/** A file of this visit. */
export interface BroughtFile extends RideFile {
  readonly id: number;
  readonly file: File;
  readonly name: string;
  readonly who: RoadRider;
  /** The question whether its heights are in feet, where that is to be asked. */
  readonly feet: RoadQuestion | null;
  /** Share that has been read, 0 to 1. */
  readonly share: number;
  /** What is known so far; null while it is being read. */
  readonly outcome: BroughtRide | null;
  /** True once the best rides are there too. */
  readonly done: boolean;
  /** The last thing that happened to it. */
  readonly told: string;
}

interface Props {
  readonly file: BroughtFile;
  readonly kept: readonly KeptRoadRide[];
  readonly results: readonly KeptResult[];
  readonly onHeights: (unit: HeightUnit) => void;
  readonly onKeep: (ride: KeptRoadRide) => void;
  readonly onAgain: (index: number) => void;
  readonly words: RoadWords;
  readonly format: Format;
}

/** The card. */
export function Brought(props: Props): JSX.Element {
  const { file, words, format } = props;
  const id = useId();
  const { outcome } = file;
  const title =
    outcome?.kind === 'ride'
      ? words.ride.named(
          words.ride.title(
            outcome.figures.month === null ? null : monthText(outcome.figures.month),
            format.road(outcome.figures.lengthM),
          ),
          file.name,
        )
      : file.name;
  return (
    <section
      class="paper"
      aria-labelledby={id}
      aria-live="polite"
      data-brought={outcome?.kind ?? 'reading'}
      data-done={file.done}
    >
      <h2 id={id}>{outcome === null || outcome.kind === 'ride' ? title : words.refused(file.name)}</h2>
      {outcome === null && <p>{words.bring.reading(format.percent(file.share))}</p>}
      {outcome?.kind === 'useless' && <p>{words.problems[outcome.why]}</p>}
      {outcome?.kind === 'refused' &&
        outcome.problems.map((problem) => <p key={problem.code}>{sentenceOf(problem)}</p>)}
      {file.feet !== null && <Heights question={file.feet} onHeights={props.onHeights} words={words} />}
      {outcome?.kind === 'ride' && <Ride {...props} figures={outcome.figures} title={title} />}
    </section>
  );
}

/** Heights that may be in feet would make pitches three times too steep, so nothing is kept before that is known. */
function Heights(
  props: Pick<Props, 'onHeights' | 'words'> & { readonly question: RoadQuestion },
): JSX.Element {
  const { question, onHeights, words } = props;
  return (
    <div data-heights>
      <p>{sentenceOf(question)}</p>
      <div class="buttons">
        <Button onClick={() => onHeights('metres')}>{words.bring.metres}</Button>
        <Button onClick={() => onHeights('feet')}>{words.bring.feet}</Button>
      </div>
    </div>
  );
}

function Ride(props: Props & { readonly figures: RoadRideFigures; readonly title: string }): JSX.Element {
  const { file, figures, title, kept, results, onKeep, onAgain, words, format } = props;
  const { ride, bring, picture } = words;
  const numbers = keptRide(figures, file.who.bike, file.who.teethKnown);
  const already = kept.find((one) => one.id === numbers.id);
  const found = figures.pitches.length;
  const judged = figures.pitches.filter(({ best }) => best !== null).length;
  return (
    <>
      <p class="road-summary">
        {ride.summary(format.percent(figures.readableShare), found)}{' '}
        {ride.habits(
          figures.changesPerKm === null ? null : format.number(figures.changesPerKm, 1),
          figures.shareInBand === null ? null : format.percent(figures.shareInBand),
        )}
      </p>
      <p class="quiet">
        {figures.powerMeasured
          ? ride.power(format.number(5 * Math.round(figures.steadyPowerW / 5)))
          : ride.powerUnknown}
      </p>
      {found === 0 ? (
        <p>{ride.noPitch}</p>
      ) : (
        <>
          <ul class="road-legend" aria-hidden="true">
            <li class="own">{picture.own}</li>
            <li class="best">{picture.best}</li>
          </ul>
          <PitchTable
            {...{ results, words, format }}
            pitches={(already ?? numbers).pitches}
            label={ride.pitchesOf(title)}
            onAgain={file.done && file.feet === null ? onAgain : null}
          />
        </>
      )}
      {!file.done && found > 0 && <output class="quiet">{bring.judging(judged, found)}</output>}
      <div class="buttons">
        <Button
          disabled={!file.done || file.feet !== null || already !== undefined}
          data-keep-ride
          onClick={() => onKeep(numbers)}
        >
          {ride.keep}
        </Button>
      </div>
      <output class="quiet">{file.told === '' && already !== undefined ? ride.already : file.told}</output>
    </>
  );
}
