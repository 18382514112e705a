/** What is left of a session: one page for paper, files, and deleting it. Names are only on paper when wanted. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { csvReport, jsonReport } from '../../core/group/records/report.ts';
import { Button, Tick } from '../../ui/controls.tsx';
import { Question } from '../../ui/parts.tsx';
import { courseOfRoad, ridesOf, titleOfRoad } from './session.ts';
import type { ClinicProps, InSession } from './services.ts';
import { nameOf, planTitle } from '../../words/group.ts';
import { fileNameOf } from '../../words/fileName.ts';
import { words } from '../../words/words.ts';
import type { RoadPicture } from '../../core/group/picture/group.ts';
import type { GroupPitch } from '../../core/group/picture/groupPitches.ts';
import { ridersOf } from '../../core/group/picture/verdict.ts';
import { bikeById } from '../../core/model/presets.ts';
import { type Column, RowCells, TableHead } from '../../ui/tables.tsx';
import { outsideLines } from '../../words/cautions.ts';
import {
  BOARDS,
  detailOf,
  hasOwnRoads,
  headlineOf,
  mostlyNeverReady,
  type PictureView,
  placeAtFoot,
  viewOf,
} from './findings.ts';
import { GroupStrip } from './groupStrip.tsx';
import type { Format } from '../../words/format.ts';
import { writeDay } from '../../words/dates.ts';
import { planFacts, rideTitle } from './say.ts';
import { personOf } from '../../core/group/picture/groupRide.ts';
import { groupBy } from '../../core/group/records/merge.ts';
import type { RideRecord } from '../../core/group/records/record.ts';

const say = words('clinic');

export function Report({ props, session }: InSession): JSX.Element {
  const { saved, apart, onSaveFile, onPrint, onDeleteSession, onPlace } = props;
  const [named, setNamed] = useState(false);
  const [asking, setAsking] = useState(false);
  const rides = ridesOf(session, saved.records, apart);
  const name = fileNameOf(planTitle(session.plan), say('report-fileName'));
  const csv = (): void => onSaveFile(`${name}.csv`, csvReport(rides));
  const json = (): void => onSaveFile(`${name}.json`, `${JSON.stringify(jsonReport(rides), null, 1)}\n`);
  return (
    <div class="report-page">
      <section class="paper report-tools">
        <h2>{say('report-title')}</h2>
        <p>{say('report-intro')}</p>
        {apart.length > 0 && <p role="note">{say('picture-apart', { rides: apart.length })}</p>}
        <Tick label={say('report-names')} checked={named} onChange={setNamed} />
        <p class="hint">{say('report-namesHint')}</p>
        <div class="buttons">
          <Button strong data-print onClick={onPrint}>
            {say('report-print')}
          </Button>
          <Button data-csv onClick={csv}>
            {say('report-csv')}
          </Button>
          <Button data-json onClick={json}>
            {say('report-json')}
          </Button>
          <Button data-delete onClick={() => setAsking(true)}>
            {say('report-remove')}
          </Button>
        </div>
      </section>
      <section class="report-preview" aria-label={say('report-sheet')}>
        <ReportSheet {...{ props, session, named }} />
      </section>
      {asking && (
        <Question
          title={say('report-sureTitle')}
          text={say('report-sure', { rides: rides.length })}
          keep={say('report-keep')}
          onKeep={() => setAsking(false)}
        >
          <Button onClick={json}>{say('report-saveFirst')}</Button>
          <Button
            data-delete-sure
            onClick={() => {
              void onDeleteSession(session.plan.id);
              onPlace('');
            }}
          >
            {say('report-removeSure')}
          </Button>
        </Question>
      )}
    </div>
  );
}

const cautions = words('cautions');

/** Size of the drawing and of its text on paper (px). */
const PAPER = { width: 900, height: 590, font: 17 };
/** Height that leaves room for a table of all rides on the same page (px). */
const BESIDE_TABLE = 390;

/**
 * A session on paper, black on white, the same on the screen as on paper: a sheet of A4 for every road, and one for all
 * together where everybody rode a road of their own.
 */
function ReportSheet(props: InSession & { readonly named: boolean }): JSX.Element {
  const { session, named } = props;
  const { picture, notCounted } = props.props;
  const uncounted = notCounted ? say('picture-failed') : say('picture-working');
  const views =
    picture === null
      ? []
      : (hasOwnRoads(picture) ? [0] : picture.roads.map((_, i) => i)).map((i) => viewOf(picture, i));
  return (
    <article class="report-sheet on-paper">
      {views.map((view, i) => (
        <RoadPage key={i} view={view} session={session} props={props.props} low={named} />
      ))}
      {views.length === 0 && (
        <section class="report-road">
          <Head session={session} />
          <p>{picture === null ? uncounted : say('picture-none')}</p>
        </section>
      )}
      {named && (
        <section>
          <h3>{say('report-all')}</h3>
          <Totals {...{ session }} props={props.props} />
        </section>
      )}
    </article>
  );
}

function Head(props: Pick<InSession, 'session'> & { readonly view?: PictureView }): JSX.Element {
  const { session, view } = props;
  return (
    <header>
      <h2>{planTitle(session.plan)}</h2>
      <p>
        {[
          writeDay(session.startedAtMs),
          ...(view === undefined ? [] : [say('report-rides', { rides: view.rides, riders: view.riders })]),
          planFacts(session.plan),
        ].join(' · ')}
      </p>
    </header>
  );
}

/** Everything about one road, on a page of its own. */
function RoadPage(
  props: InSession & {
    readonly view: PictureView;
    /** Leaves room below. */
    readonly low: boolean;
  },
): JSX.Element {
  const { session, view, low } = props;
  const { format } = props.props;
  const size = low ? { ...PAPER, height: BESIDE_TABLE } : PAPER;
  const { road, attempts } = view;
  const course = road === null ? null : courseOfRoad(road, session, props.props);
  const detail = detailOf(view, format);
  return (
    <section class="report-road">
      <Head {...{ session, view }} />
      {road !== null && <h3>{titleOfRoad(road, session, props.props)}</h3>}
      <ul class="report-says">
        {BOARDS.filter((board) => board !== 'table').map((board) => (
          <li key={board} data-says={board}>
            {say('report-sentence', { sentence: headlineOf(board, view, format) })}
            {board === 'where' && detail !== null && ` ${detail}`}
          </li>
        ))}
        {attempts.pairs > 0 && (
          <li>
            {say('report-attempts', {
              better: attempts.better,
              same: attempts.withinChance,
              worse: attempts.worse,
              chance: attempts.chance,
            })}
          </li>
        )}
      </ul>
      {road !== null && course !== null && (
        <GroupStrip {...{ course, road, format }} tracks="all" hills={false} size={size} />
      )}
      {road !== null && road.pitches.length > 0 && (
        <>
          <Pitches road={road} props={props.props} />
          <p>{say('report-ready')}</p>
        </>
      )}
      <footer>
        {say('report-footer')} {cautions('title')} {outsideLines(bikeById(session.plan.bike) ?? {}).join(' ')}
      </footer>
    </section>
  );
}

function Pitches({ road, props }: { readonly road: RoadPicture; readonly props: ClinicProps }): JSX.Element {
  const columns = pitchColumns(road, props.format);
  return (
    <table class="report-pitches">
      <TableHead names={columns.map(({ name }) => name)} />
      <tbody>
        {road.pitches.map((pitch) => (
          <tr
            key={pitch.index}
            class={pitch.index === road.verdict.pitch ? 'worst' : ''}
            data-pitch={pitch.index}
          >
            <RowCells columns={columns} row={pitch} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function pitchColumns({ verdict }: RoadPicture, format: Format): readonly Column<GroupPitch>[] {
  const place = (m: number | null | undefined): string =>
    m === null || m === undefined ? say('picture-table-none') : placeAtFoot(m, format);
  return [
    {
      name: say('report-pitch'),
      cell: ({ index, steepestRatio }) =>
        steepestRatio === null ? index + 1 : `${index + 1} (${format.percent(steepestRatio)})`,
    },
    { name: say('report-caught'), cell: (pitch) => `${ridersOf(pitch, verdict.kind)} / ${pitch.riders}` },
    {
      name: say('report-timing'),
      cell: ({ timing }) => `${timing.tooEarly} / ${timing.aboutRight} / ${timing.tooLate}`,
    },
    {
      name: say('report-group'),
      cell: (pitch) =>
        mostlyNeverReady(pitch) ? say('picture-never') : place(pitch.readyBeforeFootM?.middle),
    },
    { name: say('report-best'), cell: (pitch) => place(pitch.referenceReadyBeforeFootM) },
  ];
}

/**
 * Totals of every rider: a row for each, a column for each ride, attempts in their order. Riders of several devices may
 * share a nickname; each has a row of their own.
 */
function Totals(props: InSession): JSX.Element {
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
