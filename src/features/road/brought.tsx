/** A file that was brought: how far it is read, why it cannot be used, or what was ridden, with a way to keep the numbers. */
import type { JSX } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import type { HeightUnit } from '../../core/gpx/choose.ts';
import type { RoadQuestion } from '../../core/gpx/types.ts';
import type { KeptResult } from '../../core/coach/results.ts';
import { helpsAtAll } from '../../core/model/motor.ts';
import { keptLengthKm, keptRide, type KeptPitch, type KeptRoadRide } from '../../core/recorded/kept.ts';
import type { RoadRider, RoadRideFigures } from '../../core/recorded/rideFigures.ts';
import { Button } from '../../ui/controls.tsx';
import type { Format } from '../../words/format.ts';
import { sentenceOf } from '../../words/problems.ts';
import { words } from '../../words/words.ts';
import { pitchNameOf, PitchTable } from './pitchTable.tsx';
import { habitsText, summaryText, titleOf } from './allRides.tsx';
import type { BroughtRide, RideFile } from './services.ts';

const say = words('road');

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
  /** The last thing that happened to it: whether its numbers were kept, or the pitch no level can be made of. */
  readonly told: 'kept' | 'notKept' | KeptPitch | null;
}

interface Props {
  readonly file: BroughtFile;
  /** Whether it is the uppermost of those that were chosen together. */
  readonly isFirst: boolean;
  readonly kept: readonly KeptRoadRide[];
  readonly results: readonly KeptResult[];
  readonly onHeights: (unit: HeightUnit) => void;
  readonly onKeep: (ride: KeptRoadRide) => void;
  readonly onAgain: (index: number) => void;
  readonly format: Format;
}

export function Brought(props: Props): JSX.Element {
  const { file, format } = props;
  const id = useId();
  const { outcome } = file;
  const top = useRef<HTMLElement>(null);
  // Whoever chose files on a small screen would not see that anything became of them.
  useEffect(() => {
    if (props.isFirst) top.current?.scrollIntoView({ block: 'start' });
  }, []);
  const title =
    outcome?.kind === 'ride'
      ? say('ride-named', {
          title: titleOf(outcome.figures.month, keptLengthKm(outcome.figures), format),
          file: file.name,
        })
      : file.name;
  return (
    <section
      ref={top}
      class="paper"
      aria-labelledby={id}
      aria-live="polite"
      data-brought={outcome?.kind ?? 'reading'}
      data-done={file.done}
    >
      <h2 id={id}>
        {outcome === null || outcome.kind === 'ride' ? title : say('refused', { name: file.name })}
      </h2>
      {outcome === null && <p>{say('bring-reading', { share: format.percent(file.share) })}</p>}
      {outcome?.kind === 'useless' && <p>{say(`useless-${outcome.why}`)}</p>}
      {outcome?.kind === 'refused' &&
        outcome.problems.map((problem) => <p key={problem.code}>{sentenceOf(problem)}</p>)}
      {file.feet !== null && <Heights question={file.feet} onHeights={props.onHeights} />}
      {outcome?.kind === 'ride' && <Ride {...props} figures={outcome.figures} title={title} />}
    </section>
  );
}

/** Heights that may be in feet would make pitches three times too steep, so nothing is kept before that is known. */
function Heights(props: Pick<Props, 'onHeights'> & { readonly question: RoadQuestion }): JSX.Element {
  const { question, onHeights } = props;
  return (
    <div data-heights>
      <p>{sentenceOf(question)}</p>
      <div class="buttons">
        <Button onClick={() => onHeights('metres')}>{say('bring-metres')}</Button>
        <Button onClick={() => onHeights('feet')}>{say('bring-feet')}</Button>
      </div>
    </div>
  );
}

function Ride(props: Props & { readonly figures: RoadRideFigures; readonly title: string }): JSX.Element {
  const { file, figures, title, kept, results, onKeep, onAgain, format } = props;
  const numbers = keptRide(figures, file.who.bike, file.who.teethKnown);
  const already = kept.find((one) => one.id === numbers.id);
  const found = figures.pitches.length;
  const judged = figures.pitches.filter(({ best }) => best !== null).length;
  return (
    <>
      <p class="road-summary">
        {summaryText(figures.readableShare, found, format)}{' '}
        {habitsText(figures.changesPerKm, figures.shareInBand, format)}
      </p>
      <p class="quiet">
        {figures.powerMeasured
          ? say('ride-power', { watts: format.number(5 * Math.round(figures.steadyPowerW / 5)) })
          : say(helpsAtAll(file.who.bike) ? 'ride-powerHelped' : 'ride-powerUnknown')}{' '}
        {figures.heightsLateS === null
          ? say('ride-heightsUnknown')
          : say('ride-heights', { late: figures.heightsLateS })}
        {figures.cadenceHalved && ` ${say('ride-cadenceHalved')}`}
      </p>
      {found === 0 ? (
        <p>{say('ride-noPitch')}</p>
      ) : (
        <>
          <ul class="wrap road-legend" aria-hidden="true">
            <li class="own">{say('picture-own')}</li>
            <li class="best">{say('picture-best')}</li>
          </ul>
          <PitchTable
            {...{ results, format }}
            pitches={(already ?? numbers).pitches}
            label={say('ride-pitchesOf', { title })}
            onAgain={file.done && file.feet === null ? onAgain : null}
          />
        </>
      )}
      {!file.done && found > 0 && (
        <output class="quiet">{say('bring-judging', { done: judged, all: found })}</output>
      )}
      <div class="buttons">
        <Button
          disabled={!file.done || file.feet !== null || already !== undefined}
          data-keep-ride
          onClick={() => onKeep(numbers)}
        >
          {say('ride-keep')}
        </Button>
      </div>
      <output class="quiet">{toldOf(file, already !== undefined, format)}</output>
    </>
  );
}

function toldOf({ told }: BroughtFile, already: boolean, format: Format): string {
  if (told === null) return already ? say('ride-already') : '';
  if (told === 'kept' || told === 'notKept') return say(`ride-${told}`);
  return say('table-notMade', { pitch: pitchNameOf(told, format) });
}
