/** Marks over time as small charts of one size, one for each mark, and the same as a table. */
import type { KeptResult } from '../../core/coach/results.ts';
import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { MARK_NAMES, type MarkName } from '../../core/coach/types.ts';
import { px } from '../../charts/paths.ts';
import { Select } from '../../ui/controls.tsx';
import { ScrollBox, TableHead } from '../../ui/tables.tsx';
import type { Format } from '../../words/format.ts';
import { Paper } from '../../ui/parts.tsx';
import { writeDate } from '../../words/dates.ts';
import { words } from '../../words/words.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const say = words('progress');

/** More rides than this are not drawn; the latest are. */
const MOST_SHOWN = 40;
/** The paper of each chart (units of its drawing). */
const PAPER = { width: 320, height: 128, left: 30, right: 308, top: 12, bottom: 116 };

/** The language the title of a level is in (BCP 47), by the level's id; undefined where it is that of the page. */
export type LangOf = (levelId: string) => string | undefined;

interface MultiplesProps {
  /** Oldest first. */
  readonly rides: readonly KeptResult[];
  readonly langOf: LangOf;
  readonly format: Format;
}

const KINDS = ['ride', 'check', 'clinic'] as const satisfies readonly KeptResult['kind'][];

/** The section with its choice of level. */
export function Multiples({ rides, langOf, format }: MultiplesProps): JSX.Element {
  const [chosen, choose] = useState('');
  const titles = new Map(rides.map(({ levelId, levelTitle }) => [levelId, levelTitle]));
  const all = titles.has(chosen) ? rides.filter(({ levelId }) => levelId === chosen) : rides;
  const shown = all.slice(-MOST_SHOWN);
  return (
    <Paper title={say('marks-title')}>
      <p class="quiet">
        {say('marks-hint')}{' '}
        {shown.length < all.length && say('marks-shown', { shown: shown.length, all: all.length })}
      </p>
      {titles.size > 1 && (
        <Select
          look="row progress-choice"
          label={say('marks-which')}
          value={chosen}
          options={[
            ['', say('marks-all')],
            ...[...titles].map(([levelId, title]) => [levelId, title, langOf(levelId)] as const),
          ]}
          onChoose={choose}
        />
      )}
      <ul class="legend progress-legend">
        {KINDS.filter((kind) => shown.some((ride) => ride.kind === kind)).map((kind) => (
          <li key={kind}>
            <svg width="18" height="18" viewBox="-9 -9 18 18" aria-hidden="true">
              <Dot kind={kind} x={0} y={0} />
            </svg>
            {say(`kind-${kind}`)}
          </li>
        ))}
      </ul>
      <div class="progress-multiples">
        {MARK_NAMES.map((name) => (
          <Multiple key={name} name={name} rides={shown} format={format} />
        ))}
        <Multiple name="total" rides={shown} format={format} />
      </div>
      <details class="fold progress-fold">
        <summary>{say('marks-table')}</summary>
        <RideTable rides={shown} {...{ langOf, format }} />
      </details>
    </Paper>
  );
}

function valueOf(ride: KeptResult, name: MarkName | 'total'): number | null {
  return name === 'total' ? ride.total : ride.marks[name];
}

function Multiple(props: {
  readonly name: MarkName | 'total';
  readonly rides: readonly KeptResult[];
  readonly format: Format;
}): JSX.Element {
  const { name, rides, format } = props;
  const id = useId();
  const title = say(`mark-${name}`);
  const step = rides.length < 2 ? 0 : (PAPER.right - PAPER.left - 20) / (rides.length - 1);
  // A mark a ride did not give keeps its place empty, so that all charts have the same rides one below another.
  const points = rides.flatMap((ride, i) => {
    const value = valueOf(ride, name);
    const y = PAPER.bottom - ((PAPER.bottom - PAPER.top) * (value ?? 0)) / 100;
    return value === null ? [] : [{ ride, value, x: PAPER.left + 10 + i * step, y }];
  });
  const first = points[0];
  const latest = points.at(-1);
  return (
    <figure class="progress-multiple" data-marks={name}>
      <figcaption class="row">
        <b>{title}</b>
        {latest === undefined ? (
          <span>{say('marks-none')}</span>
        ) : (
          <span>
            {say('marks-latest')} <b>{format.number(latest.value)}</b>
          </span>
        )}
      </figcaption>
      {first !== undefined && latest !== undefined && (
        <svg viewBox={`0 0 ${PAPER.width} ${PAPER.height}`} role="img" aria-labelledby={id}>
          <title id={id}>
            {say('marks-desc', {
              name: title,
              rides: points.length,
              first: Math.round(first.value),
              latest: Math.round(latest.value),
            })}
          </title>
          <path
            d={`M${PAPER.left} ${PAPER.top}H${PAPER.right}M${PAPER.left} ${(PAPER.top + PAPER.bottom) / 2}H${PAPER.right}`}
            stroke="var(--sand)"
          />
          <path
            d={`M${PAPER.left} ${PAPER.bottom}H${PAPER.right}`}
            stroke="var(--sand-dark)"
            stroke-width="1.4"
          />
          <g font-size="12" fill="var(--ink-soft)" text-anchor="end">
            <text x={PAPER.left - 6} y={PAPER.top + 5}>
              {format.number(100)}
            </text>
            <text x={PAPER.left - 6} y={PAPER.bottom + 4}>
              {format.number(0)}
            </text>
          </g>
          <Stroke
            d={points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('')}
            colour="var(--sand-dark)"
            width={1.6}
          />
          {points.map(({ ride, x, y }) => (
            <Dot key={ride.id} kind={ride.kind} x={x} y={y} />
          ))}
        </svg>
      )}
    </figure>
  );
}

function RideTable({ rides, langOf, format }: MultiplesProps): JSX.Element {
  const marks = MARK_NAMES.map((name) => `mark-${name}` as const);
  const heads = ['table-date', 'table-level', 'table-kind', 'table-total', ...marks, 'table-passed'] as const;
  return (
    <ScrollBox class="progress-scroll" label={say('marks-table')}>
      <table>
        <TableHead names={heads.map((head) => say(head))} />
        <tbody>
          {rides.toReversed().map((ride) => (
            <tr key={ride.id}>
              <th scope="row">{writeDate(ride.atMs)}</th>
              <td lang={langOf(ride.levelId)}>{ride.levelTitle}</td>
              <td>{say(`kind-${ride.kind}`)}</td>
              <td>{format.number(ride.total)}</td>
              {MARK_NAMES.map((name) => {
                const value = ride.marks[name];
                return <td key={name}>{value === null ? '–' : format.number(value)}</td>;
              })}
              <td>{say(ride.passed ? 'table-yes' : 'table-no')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

/** Practice is an open ring, a check ride a full diamond, a clinic a full square. */
export function Dot(props: {
  readonly kind: KeptResult['kind'];
  readonly x: number;
  readonly y: number;
}): JSX.Element {
  const { kind, x, y } = props;
  const at = `translate(${px(x)} ${px(y)})`;
  if (kind === 'check') return <path transform={at} d="M0 -7L7 0L0 7L-7 0Z" fill="var(--rider-deep)" />;
  if (kind === 'clinic') return <path transform={at} d="M-4 -4H4V4H-4Z" fill="var(--ink)" />;
  return <circle transform={at} r="3.8" fill="var(--paper)" stroke="var(--ink)" stroke-width="1.8" />;
}
