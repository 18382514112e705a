/** Check rides: what they say in a sentence, drawn beside what chance can make, and as a table. */
import type { JSX } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { Button, Select } from '../../ui/controls.tsx';
import { chancePoints, type ProgressFinding, RIDES_A_SIDE } from '../../core/coach/progress.ts';
import { minutesSaid } from '../../core/group/minutes.ts';
import type { CheckedApart } from '../../core/level/generate.ts';
import { px } from '../../charts/paths.ts';
import { ScrollBox, TableHead } from '../../ui/tables.tsx';
import { useWidth } from '../../ui/hooks.ts';
import type { Format } from '../../words/format.ts';
import { Paper } from '../../ui/parts.tsx';
import { writeDate } from '../../words/dates.ts';
import { bikeName } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import type { CheckGroup, CheckRide } from './checks.ts';
import { Dot } from './multiples.tsx';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const say = words('progress');

type Audience = 'everyone' | 'children';

export interface CheckCardProps {
  readonly groups: readonly CheckGroup[];
  readonly format: Format;
  /** Whose check ride the bike has that is ridden now; absent for the one of derailleurs. */
  readonly needs?: CheckedApart | undefined;
  /** How long the ride takes on the bike that is ridden now (s); slow, since it is ridden for the answer. */
  readonly secondsOf: (audience: Audience) => number;
  readonly onCheckRide: (audience: Audience) => void;
}

/** The paper; `edge` is left free before the first ride and behind the last (px). */
const PAPER = { height: 190, top: 14, bottom: 146, left: 34, edge: 44 };

export function CheckCard(props: CheckCardProps): JSX.Element {
  const { groups, needs, onCheckRide } = props;
  const [chosen, choose] = useState<string | null>(null);
  const minutes = useMinutes(props.secondsOf);
  const group = groups.find(({ key }) => key === chosen) ?? groups[0];
  return (
    <Paper look="progress-check" title={say('check-title')}>
      <p class="lead" data-finding={group?.finding.code ?? 'need-first'}>
        {sayFinding(group?.finding ?? { code: 'need-first' })}
      </p>
      <p>{say('check-what')}</p>
      <p class="progress-minutes">{minutes !== null && say('check-minutes', minutes)}</p>
      {needs !== undefined && <p data-needs={needs}>{say(`check-own-${needs}`)}</p>}
      {groups.length > 1 && group !== undefined && (
        <Select
          look="row progress-choice"
          label={say('check-group')}
          value={group.key}
          options={groups.map(({ key, bikeId, road }) => [
            key,
            say('check-groupOf', { road, bike: bikeName(bikeId) }),
          ])}
          onChoose={choose}
        />
      )}
      {group !== undefined && <Checks {...props} group={group} />}
      <div class="buttons">
        <Button strong data-check="everyone" onClick={() => onCheckRide('everyone')}>
          {say('check-ride-everyone')}
        </Button>
        <Button data-check="children" onClick={() => onCheckRide('children')}>
          {say('check-ride-children')}
        </Button>
      </div>
    </Paper>
  );
}

/** Minutes of both check rides, or null until they are worked out, after the page is drawn. */
function useMinutes(
  secondsOf: CheckCardProps['secondsOf'],
): { readonly everyone: number; readonly children: number } | null {
  const [minutes, setMinutes] = useState<ReturnType<typeof useMinutes>>(null);
  useEffect(() => {
    const timer = setTimeout(() => {
      const of = (audience: Audience): number => minutesSaid(secondsOf(audience));
      setMinutes({ everyone: of('everyone'), children: of('children') });
    }, 0);
    return () => clearTimeout(timer);
  }, []);
  return minutes;
}

/** What the check rides of a group can tell. */
function sayFinding(finding: ProgressFinding): string {
  if (finding.code === 'need-first') return say('finding-need-first');
  const { first } = finding;
  if (finding.code === 'need-second') return say('finding-need-second', { first });
  const { latest, change, certain } = finding;
  const way = change > 0 ? 'up' : change < 0 ? 'down' : 'same';
  const moved = { first, latest, way, points: Math.abs(change) } as const;
  if (finding.code === 'same-day')
    return say('finding-same-day', { ...moved, certain: certain ? 'yes' : 'no' });
  const { days, chance } = finding;
  const sure = !certain ? 'no' : change > 0 ? 'better' : 'worse';
  return say('finding-retest', { ...moved, days, chance, certain: sure });
}

/** How many rides of both days were taken together, and whether more would tell more. */
function saySides({ before, after }: { readonly before: number; readonly after: number }): string {
  const which = before >= RIDES_A_SIDE && after >= RIDES_A_SIDE ? 'all' : 'few';
  return say('check-sides', { which, before, after, most: RIDES_A_SIDE });
}

function Checks(props: CheckCardProps & { readonly group: CheckGroup }): JSX.Element {
  const { group, format } = props;
  const [width, paper] = useWidth();
  const id = useId();
  const { rides } = group;
  const first = rides[0]?.result.total ?? 0;
  const latest = rides.at(-1)?.result.total ?? 0;
  const y = (total: number): number => PAPER.bottom - ((PAPER.bottom - PAPER.top) * total) / 100;
  const { finding } = group;
  const retest = finding.code === 'retest' ? finding : null;
  const chance = retest?.chance ?? chancePoints(1, 1);
  const low = Math.max(0, (retest?.first ?? first) - chance);
  const high = Math.min(100, (retest?.first ?? first) + chance);
  const step =
    rides.length < 2 ? 0 : Math.min(150, (width - PAPER.left - 2 * PAPER.edge) / (rides.length - 1));
  const places = rides.map((ride, i) => ({
    ride,
    x: PAPER.left + PAPER.edge + i * step,
    y: y(ride.result.total),
  }));
  return (
    <>
      <div ref={paper}>
        <svg viewBox={`0 0 ${width} ${PAPER.height}`} role="img" aria-labelledby={id}>
          <title id={id}>
            {say('check-desc', {
              rides: rides.length,
              first: Math.round(first),
              latest: Math.round(latest),
            })}
          </title>
          {rides.length > 1 && (
            <rect
              x={PAPER.left}
              y={px(y(high))}
              width={width - PAPER.left}
              height={px(y(low) - y(high))}
              fill="var(--leaf-pale)"
              opacity="0.6"
            />
          )}
          <Scale left={PAPER.left} right={width} y={y} />
          <Stroke
            d={places.map(({ x, y: atY }, i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(atY)}`).join('')}
            width={2.4}
          />
          {places.map((place, i) => (
            <Check
              key={place.ride.result.id}
              {...place}
              named={i === 0 || i === rides.length - 1 || step > 92}
              format={format}
            />
          ))}
        </svg>
      </div>
      {rides.length > 1 && (
        <p class="progress-key">
          <svg width="26" height="16" viewBox="0 0 26 16" aria-hidden="true">
            <rect width="26" height="16" fill="var(--leaf-pale)" stroke="var(--leaf-deep)" />
          </svg>
          {say('check-chance', { points: chance })}
        </p>
      )}
      {retest !== null && <p data-sides>{saySides(retest)}</p>}
      <CheckTable {...props} />
    </>
  );
}

/** Lines at 0, 50 and 100 with their numbers. */
function Scale(props: {
  readonly left: number;
  readonly right: number;
  readonly y: (total: number) => number;
}): JSX.Element {
  const { left, right, y } = props;
  return (
    <g font-size="12" fill="var(--ink-soft)">
      {[0, 50, 100].map((total) => (
        <g key={total}>
          <path d={`M${left} ${px(y(total))}H${px(right)}`} stroke="var(--sand)" stroke-width="1.4" />
          <text x={left - 6} y={px(y(total) + 4)} text-anchor="end">
            {total}
          </text>
        </g>
      ))}
    </g>
  );
}

function Check(props: {
  readonly ride: CheckRide;
  readonly x: number;
  readonly y: number;
  readonly named: boolean;
  readonly format: Format;
}): JSX.Element {
  const { ride, x, y, named, format } = props;
  const { result, role } = ride;
  return (
    <g data-check-ride={role} fill="var(--ink)" text-anchor="middle">
      <Dot kind="check" x={x} y={y} />
      <text x={px(x)} y={px(y < PAPER.top + 22 ? y + 26 : y - 13)} font-size="15" font-weight="800">
        {format.number(result.total)}
      </text>
      {named && (
        <>
          <text x={px(x)} y={PAPER.bottom + 20} font-size="13" font-weight="700">
            {say(`role-${role}`)}
          </text>
          <text x={px(x)} y={PAPER.bottom + 37} font-size="12" fill="var(--ink-soft)">
            {writeDate(result.atMs)}
          </text>
        </>
      )}
    </g>
  );
}

function CheckTable(props: CheckCardProps & { readonly group: CheckGroup }): JSX.Element {
  const { group, format } = props;
  return (
    <details class="fold progress-fold">
      <summary>{say('check-table')}</summary>
      <ScrollBox class="progress-scroll" label={say('check-table')}>
        <table>
          <TableHead names={(['date', 'role', 'total'] as const).map((head) => say(`table-${head}`))} />
          <tbody>
            {group.rides.map(({ result, role }) => (
              <tr key={result.id}>
                <th scope="row">{writeDate(result.atMs)}</th>
                <td>{say(`role-${role}`)}</td>
                <td>{format.number(result.total)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </details>
  );
}
