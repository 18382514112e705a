/** A card for each pitch: what it asked for, what was done, what the best ride did, and a small picture. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import type { PitchReport, ShiftReport } from '../../core/coach/types.ts';
import type { Course, Pitch } from '../../core/course/types.ts';
import type { Machine } from '../../core/model/types.ts';
import { cardStretch, PitchPicture } from '../../charts/pitchPicture.tsx';
import { footPlace, shiftText } from '../../charts/readout.ts';
import { Fold } from '../../ui/parts.tsx';
import { ScrollBox } from '../../ui/tables.tsx';
import { TableHead } from '../../ui/tables.tsx';
import { words } from '../../words/words.ts';
import { sayPitchTitle } from './say.ts';
import type { Speech } from './speech.ts';

const chart = words('charts');

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
      <h2 id="pitches-title">{speech.say('cards-title')}</h2>
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
  const { say, format } = speech;
  const pitch = course.pitches[report.index];
  if (pitch === undefined) return null;
  return (
    <article class="cut paper-card pitch-card" data-pitch={report.index}>
      <header>
        <h3>{sayPitchTitle(report.index, speech)}</h3>
        <span>
          {say('card-steep', {
            percent: format.percent(report.steepestRatio),
            length: format.distance(report.endM - report.footM),
          })}
        </span>
        {(report.asked || report.footDown) && <b class="timing">{sayTiming(report, speech)}</b>}
      </header>
      <PitchPicture
        {...{ course, pitch, own, best }}
        title={say('card-picture', { pitch: report.index + 1, pitches: speech.pitchCount })}
        desc={say('card-pictureDesc')}
        you={say('card-you')}
        bestName={say('card-best')}
      />
      <div class="pitch-told">
        <PitchNumbers report={report} speech={speech} />
        <p>{sayBest(report, speech)}</p>
        {report.footDown && <p>{say('card-footDown')}</p>}
        {!report.asked && !report.footDown && report.referenceSteps > 0 && (
          <p class="quiet">{say('card-asksNothing')}</p>
        )}
      </div>
      <div class="card-foot">
        <Button look="small" onClick={() => onWatch(Math.max(0, report.footM - WATCH_BEFORE_M))}>
          ▶ {say('card-watch')}
        </Button>
        <PitchTable {...props} pitch={pitch} />
      </div>
    </article>
  );
}

/** Where the card says right, the headline never says wrong: what was nearly right is told as that. */
function sayTiming({ timing, tendency }: PitchReport, { say }: Speech): string {
  return timing === 'about-right'
    ? say('card-tendency', { timing: tendency })
    : say('card-timing', { timing });
}

/** What the best ride does on this pitch, in the gear it comes in. */
function sayBest(report: PitchReport, { say, format }: Speech): string {
  const first = report.referenceFirstShiftBeforeFootM;
  if (first === null || report.referenceSteps === 0) return say('card-bestStays');
  const { referenceSteps: gears, referenceStepsBeforeFoot: before } = report;
  const which = before === gears ? 'all' : before === 0 ? 'none' : 'some';
  return say('card-bestDoes', { gears, before, which, ...footPlace(first, format) });
}

function PitchNumbers({
  report,
  speech,
}: {
  readonly report: PitchReport;
  readonly speech: Speech;
}): JSX.Element {
  const { say, format } = speech;
  const numbers = [
    [say('card-needed'), format.number(report.referenceSteps)],
    [say('card-before'), say('card-ofMade', { before: report.stepsBeforeFoot, made: report.stepsMade })],
    [
      say('card-worst'),
      say('card-worstPair', {
        own: Math.round(report.worstCadenceRpm),
        best: Math.round(report.referenceWorstCadenceRpm),
      }),
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

/** The shifts of the picture as a table. */
function PitchTable(props: PitchTableProps): JSX.Element {
  return (
    <Fold look="numbers-fold" title={chart('table-summary')}>
      {() => (
        <ScrollBox
          class="numbers-scroll"
          label={`${sayPitchTitle(props.report.index, props.speech)} · ${props.speech.say('card-table')}`}
        >
          <PitchShifts {...props} />
        </ScrollBox>
      )}
    </Fold>
  );
}

type PitchTableProps = PitchCardsProps & { readonly report: PitchReport; readonly pitch: Pitch };

function PitchShifts(props: PitchTableProps): JSX.Element {
  const { course, machine, pitch, own, best, speech } = props;
  const { say, format } = speech;
  const { fromM, toM } = cardStretch(course, pitch);
  const rows = [
    ...own.map((shift) => [say('card-you'), shift] as const),
    ...best.map((shift) => [say('card-best'), shift] as const),
  ].filter(([, shift]) => shift.startedAtM >= fromM && shift.startedAtM <= toM);
  return (
    <table>
      <caption>{say('card-table')}</caption>
      <TableHead names={[say('card-who'), say('card-where'), chart('table-change'), chart('table-feel')]} />
      <tbody>
        {rows.map(([who, shift]) => (
          <tr>
            <th scope="row">{who}</th>
            <td>{say('near', footPlace(pitch.footM - shift.startedAtM, format))}</td>
            <td>{shiftText(machine, shift, format).join(' → ')}</td>
            <td>{chart(`feel-${shift.kind}`)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
