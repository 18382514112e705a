/** One sheet of A4 about a session, black on white, the same on the screen as on paper. */
import type { JSX } from 'preact';
import type { RoadPicture } from '../../core/group/picture/group.ts';
import { BOARDS, headlineOf } from './findings.ts';
import { GroupStrip } from './groupStrip.tsx';
import { courseOfRoad, titleOfRoad } from './road.ts';
import { dayOf, planFacts } from './say.ts';
import { Totals } from './totals.tsx';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { ClinicProps } from './services.ts';

/** Width of the drawing on paper (px). */
const PAPER_PX = 900;

/** The sheet. Only the road that was ridden most has room for its picture. */
export function ReportSheet(props: {
  readonly props: ClinicProps;
  readonly session: SavedRound;
  readonly named: boolean;
}): JSX.Element {
  const { session, named } = props;
  const { words, format, picture, notCounted } = props.props;
  const uncounted = notCounted ? words.picture.failed : words.picture.working;
  const [road] = picture?.roads ?? [];
  const course = road === undefined ? null : courseOfRoad(road, session, props.props);
  return (
    <article class="report-sheet">
      <header>
        <h2>{session.plan.title}</h2>
        <p>
          {dayOf(session.startedAtMs)}
          {picture !== null && ` · ${words.report.rides(picture.rides, picture.riders)}`} ·{' '}
          {planFacts(session.plan, words)}
        </p>
      </header>
      {picture === null || picture.rides === 0 ? (
        <p>{picture === null ? uncounted : words.picture.none}</p>
      ) : (
        <ul class="report-says">
          {BOARDS.filter((board) => board !== 'table').map((board) => (
            <li key={board}>{headlineOf(board, picture, road, words, format)}.</li>
          ))}
          {picture.attempts.pairs > 0 && (
            <li>
              {words.report.attempts}:{' '}
              {words.picture.changeSays(
                picture.attempts.better,
                picture.attempts.withinChance,
                picture.attempts.worse,
                picture.attempts.chance,
              )}
            </li>
          )}
        </ul>
      )}
      {road !== undefined && course !== null && (
        <>
          <h3>{titleOfRoad(road, session, props.props)}</h3>
          <GroupStrip {...{ course, road, words, format }} tracks="all" hills={false} width={PAPER_PX} />
        </>
      )}
      {road !== undefined && road.pitches.length > 0 && <Pitches road={road} props={props.props} />}
      {named && (
        <>
          <h3>{words.report.all}</h3>
          <Totals {...{ session }} props={props.props} />
        </>
      )}
      <footer>{words.report.footer}</footer>
    </article>
  );
}

function Pitches({ road, props }: { readonly road: RoadPicture; readonly props: ClinicProps }): JSX.Element {
  const { words, format } = props;
  const { report, picture } = words;
  const place = (m: number | null | undefined): string => {
    if (m === null || m === undefined) return picture.table.none;
    return m >= 0 ? report.before(format.distance(m)) : report.after(format.distance(-m));
  };
  return (
    <table class="report-pitches">
      <thead>
        <tr>
          {[report.pitch, report.caught, report.timing, report.group, report.best].map((title) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {road.pitches.map((pitch) => (
          <tr key={pitch.index}>
            <th scope="row">
              {pitch.index + 1}
              {pitch.steepestRatio !== null && ` (${format.percent(pitch.steepestRatio)})`}
            </th>
            <td>
              {pitch.caughtRiders} / {pitch.riders}
            </td>
            <td>
              {pitch.timing.tooEarly} / {pitch.timing.aboutRight} / {pitch.timing.tooLate}
            </td>
            <td>{place(pitch.firstShiftBeforeFootM?.middle)}</td>
            <td>{place(pitch.referenceFirstShiftBeforeFootM)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
