/** A card for each pitch: what it asked for, what was done, what the best ride did, and a small picture. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { PitchReport, ShiftReport } from '../../core/coach/types.ts';
import type { Course, Pitch } from '../../core/course/types.ts';
import type { Machine } from '../../core/model/types.ts';
import { cardStretch, PitchPicture } from '../../charts/pitchPicture.tsx';
import { footPlace, shiftText } from '../../charts/readout.ts';
import type { Speech } from './say.ts';

interface PitchCardsProps {
  readonly course: Course;
  readonly machine: Machine;
  readonly pitches: readonly PitchReport[];
  readonly own: readonly ShiftReport[];
  readonly best: readonly ShiftReport[];
  readonly speech: Speech;
  readonly onWatch: (distanceM: number) => void;
}

/** A replay begins so far before a foot (m). */
const WATCH_BEFORE_M = 60;

/** All cards, or nothing on a road without pitches. */
export function PitchCards(props: PitchCardsProps): JSX.Element | null {
  const { pitches, speech } = props;
  if (pitches.length === 0) return null;
  return (
    <section aria-labelledby="pitches-title">
      <h2 id="pitches-title">{speech.words.cards.title}</h2>
      <div class="pitch-cards">
        {pitches.map((pitch) => (
          <PitchCard key={pitch.index} {...props} report={pitch} />
        ))}
      </div>
    </section>
  );
}

function PitchCard(props: PitchCardsProps & { readonly report: PitchReport }): JSX.Element | null {
  const { course, report, own, best, speech, onWatch } = props;
  const { words, format } = speech;
  const { cards } = words;
  const pitch = course.pitches[report.index];
  if (pitch === undefined) return null;
  const name = words.pitch(report.index, course.pitches.length);
  return (
    <article class="paper-card pitch-card" data-pitch={report.index}>
      <header>
        <h3>{words.pitchTitle(report.index, course.pitches.length)}</h3>
        <span>
          {cards.steep(format.percent(report.steepestRatio), format.distance(report.endM - report.footM))}
        </span>
        {(report.asked || report.footDown) && <b class="timing">{sayTiming(report, speech)}</b>}
      </header>
      <PitchPicture
        {...{ course, pitch, own, best }}
        title={cards.picture(name)}
        desc={cards.pictureDesc}
        you={cards.you}
        bestName={cards.best}
      />
      <div class="pitch-told">
        <PitchNumbers report={report} speech={speech} />
        <p>{sayBest(report, speech)}</p>
        {report.footDown && <p>{cards.footDown}</p>}
        {!report.asked && !report.footDown && report.stepsNeeded > 0 && (
          <p class="quiet">{cards.asksNothing}</p>
        )}
      </div>
      <div class="card-foot">
        <Button look="small" onClick={() => onWatch(Math.max(0, report.footM - WATCH_BEFORE_M))}>
          ▶ {cards.watch}
        </Button>
        <PitchTable {...props} pitch={pitch} />
      </div>
    </article>
  );
}

/** Where the card says right, the headline never says wrong: what was nearly right is told as that. */
function sayTiming({ timing, tendency }: PitchReport, { words: { cards } }: Speech): string {
  return timing === 'about-right' ? cards.tendency(tendency) : cards.timing(timing);
}

/** What the best ride does from the player's own state; the picture shows the one over the whole road. */
function sayBest(report: PitchReport, { words, format }: Speech): string {
  const first = report.referenceFirstShiftBeforeFootM;
  if (first === null || report.stepsNeeded === 0) return words.cards.bestStays;
  return words.cards.bestDoes(report.stepsNeeded, report.referenceStepsBeforeFoot, footPlace(first, format));
}

function PitchNumbers({
  report,
  speech,
}: {
  readonly report: PitchReport;
  readonly speech: Speech;
}): JSX.Element {
  const { cards } = speech.words;
  const { format } = speech;
  const numbers = [
    [cards.needed, format.number(report.stepsNeeded)],
    [cards.before, cards.ofMade(report.stepsBeforeFoot, report.stepsMade)],
    [
      cards.worst,
      cards.worstPair(format.number(report.worstCadenceRpm), format.number(report.referenceWorstCadenceRpm)),
    ],
  ] as const;
  return (
    <dl>
      {numbers.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** The shifts of the picture as a table; filled when it is opened. */
function PitchTable(props: PitchTableProps): JSX.Element {
  const [opened, setOpened] = useState(false);
  return (
    <details class="numbers-fold" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>{props.speech.words.table.summary}</summary>
      {opened && <PitchShifts {...props} />}
    </details>
  );
}

type PitchTableProps = PitchCardsProps & { readonly report: PitchReport; readonly pitch: Pitch };

function PitchShifts(props: PitchTableProps): JSX.Element {
  const { course, machine, pitch, own, best, speech } = props;
  const { words, format } = speech;
  const { cards, table } = words;
  const { fromM, toM } = cardStretch(course, pitch);
  const rows = [
    ...own.map((shift) => [cards.you, shift] as const),
    ...best.map((shift) => [cards.best, shift] as const),
  ].filter(([, shift]) => shift.startedAtM >= fromM && shift.startedAtM <= toM);
  return (
    <table>
      <caption>{cards.table}</caption>
      <thead>
        <tr>
          {[cards.who, cards.where, table.change, table.feel].map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([who, shift]) => (
          <tr>
            <th scope="row">{who}</th>
            <td>{cards.nearFoot(footPlace(pitch.footM - shift.startedAtM, format))}</td>
            <td>{shiftText(machine, shift, format).join(' → ')}</td>
            <td>{table.kinds[shift.kind]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
