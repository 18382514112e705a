/** A session on paper, a sheet of A4 for each road, black on white, the same on the screen as on paper. */
import type { JSX } from 'preact';
import type { RoadPicture } from '../../core/group/picture/group.ts';
import type { GroupPitch } from '../../core/group/picture/groupPitches.ts';
import { ridersOf } from '../../core/group/picture/verdict.ts';
import { bikeById } from '../../core/model/presets.ts';
import { type Column, RowCells, TableHead } from '../../ui/tableHead.tsx';
import { outsideLines } from '../../words/cautions.ts';
import { planTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';
import {
  BOARDS,
  detailOf,
  hasOwnRoads,
  headlineOf,
  mostlyNeverReady,
  placeAtFoot,
  type PictureView,
  viewOf,
} from './findings.ts';
import { GroupStrip } from './groupStrip.tsx';
import { courseOfRoad, titleOfRoad } from './road.ts';
import type { Format } from '../../words/format.ts';
import { writeDay } from '../../words/dates.ts';
import { planFacts } from './say.ts';
import { Totals } from './totals.tsx';
import type { ClinicProps, InSession } from './services.ts';

const cautions = words('cautions');
const say = words('clinic');

/** Size of the drawing and of its text on paper (px). */
const PAPER = { width: 900, height: 590, font: 17 };
/** Height that leaves room for a table of all rides on the same page (px). */
const BESIDE_TABLE = 390;

/** The sheet: a page for every road, and one for all together where everybody rode a road of their own. */
export function ReportSheet(props: InSession & { readonly named: boolean }): JSX.Element {
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
