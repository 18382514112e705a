/**
 * Drawings of single questions: who was caught by which pitch, how timing was shared out, first against last attempts; and
 * all rides as a table.
 */
import type { JSX } from 'preact';
import type { AttemptPicture, RoadPicture } from '../../core/group/picture/group.ts';
import { ridersOf } from '../../core/group/picture/verdict.ts';
import type { Format } from '../../words/format.ts';
import { KINDS, markedKinds, type PictureView, pitchName, sharesOf, sum } from './findings.ts';
import { words } from '../../words/words.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';
import type { RideRecord } from '../../core/group/records/record.ts';
import { type Column, RowCells, TableHead } from '../../ui/tables.tsx';
import { nameOf } from '../../words/group.ts';

const say = words('clinic');

interface Saying {
  readonly format: Format;
}

/** More riders than this are a bar instead of dots. */
const MOST_DOTS = 24;
/** So much is drawn big. */
const FEW_PITCHES = 4;
const FEW_RIDERS = 12;

/** Every pitch with a dot for each rider; filled are those the finding of the road is about. */
export function Caught(props: { readonly road: RoadPicture; readonly talk: boolean }): JSX.Element {
  const { road, talk } = props;
  const asked = road.pitches.filter((pitch) => pitch.riders > 0);
  return (
    <>
      <ul
        class={asked.length <= FEW_PITCHES && road.riders <= FEW_RIDERS ? 'caught-list few' : 'caught-list'}
      >
        {asked.map((pitch) => {
          const caught = ridersOf(pitch, road.verdict.kind);
          return (
            <li
              key={pitch.index}
              class={pitch.index === road.verdict.pitch ? 'worst' : ''}
              data-pitch={pitch.index}
              data-riders={caught}
            >
              <strong>{pitchName(pitch.index, talk)}</strong>
              <span class="caught-count">
                {say('picture-caughtShort', { count: caught, all: pitch.riders })}
              </span>
              <Dots caught={caught} all={pitch.riders} />
            </li>
          );
        })}
      </ul>
      <p class="board-hint">{say('picture-dots')}</p>
    </>
  );
}

function Dots({ caught, all }: { readonly caught: number; readonly all: number }): JSX.Element {
  if (all > MOST_DOTS) return <progress class="caught-bar" max={all} value={caught} />;
  return (
    <span class="wrap dots" aria-hidden="true">
      {Array.from({ length: all }, (_, i) => (
        <i key={i} class={i < caught ? 'full' : ''} />
      ))}
    </span>
  );
}

/** A foot of a hill, and a wedge before, at or after it. */
const WEDGES: Readonly<Record<(typeof KINDS)[number], number>> = {
  tooEarly: 22,
  aboutRight: 58,
  tooLate: 92,
};

/** Shares of too early, about right, too late over all times a pitch was ridden. */
export function TimingBoard(
  props: Saying & { readonly view: PictureView; readonly closed: boolean },
): JSX.Element {
  const { view, closed, format } = props;
  const { timing } = view;
  const all = sum(timing);
  const shares = sharesOf(timing);
  const marked = closed ? [] : markedKinds(view);
  return (
    <ul class="timing-list">
      {KINDS.map((kind) => (
        <li
          key={kind}
          class={marked.includes(kind) ? 'worst' : ''}
          data-kind={kind}
          data-times={timing[kind]}
        >
          <svg viewBox="0 0 130 62" aria-hidden="true">
            <path d="M0 46H66L122 20V62H0Z" fill="var(--sand)" />
            <Stroke d="M0 46H66L124 19" width={4} />
            <path
              d={`M${WEDGES[kind]} ${kind === 'tooLate' ? 28 : 40}l-10 -20h20Z`}
              fill="var(--rider-deep)"
            />
          </svg>
          <strong>{say(`picture-timing-${kind}`)}</strong>
          {!closed && (
            <>
              <span class="timing-share">{format.percent(shares[kind])}</span>
              <span class={`timing-bar ${kind}`} aria-hidden="true">
                <i style={{ width: `${all === 0 ? 0 : (100 * timing[kind]) / all}%` }} />
              </span>
              <span class="board-hint">{say('picture-timingCount', { count: timing[kind], all })}</span>
            </>
          )}
        </li>
      ))}
    </ul>
  );
}

/** First and last attempts: how totals were spread, and what became of the pairs. */
export function Change(
  props: Saying & { readonly attempts: AttemptPicture; readonly talk: boolean },
): JSX.Element | null {
  const { attempts, format, talk } = props;
  const { firstBins, lastBins, first, last, better, worse, withinChance, chance, pairs } = attempts;
  if (pairs === 0 || first === null || last === null) return null;
  const most = Math.max(1, ...firstBins, ...lastBins);
  const rows = [
    [say('picture-first'), firstBins, first.middle],
    [say('picture-last'), lastBins, last.middle],
  ] as const;
  return (
    <>
      <div class="change">
        {rows.map(([title, bins, middle]) => (
          <Bins key={title} {...{ title, bins, most, middle, format }} />
        ))}
      </div>
      {!talk && (
        <p class="change-says">{say('picture-changeSays', { better, same: withinChance, worse, chance })}</p>
      )}
    </>
  );
}

const BIN_X = 58;
const BINS_TOP = 40;
const BINS_HEIGHT = 190;

function Bins(
  props: Saying & {
    readonly title: string;
    readonly bins: Uint32Array;
    readonly most: number;
    readonly middle: number;
  },
): JSX.Element {
  const { title, bins, most, middle, format } = props;
  const base = BINS_TOP + BINS_HEIGHT;
  return (
    <figure>
      <figcaption>
        {title} <b>{format.number(middle)}</b>
      </figcaption>
      <svg viewBox={`0 0 ${10 * BIN_X + 20} ${base + 46}`} role="img" aria-label={title}>
        {[...bins].map((riders, bin) => {
          const height = (BINS_HEIGHT * riders) / most;
          return (
            <g key={bin}>
              <title>
                {say('picture-bins', { low: bin * 10, high: bin === 9 ? 100 : bin * 10 + 9, count: riders })}
              </title>
              <rect
                class="bin"
                x={10 + bin * BIN_X + 3}
                y={base - height}
                width={BIN_X - 6}
                height={height}
                rx="4"
              />
              {riders > 0 && (
                <text
                  class="bin-count"
                  x={10 + bin * BIN_X + BIN_X / 2}
                  y={base - height - 7}
                  text-anchor="middle"
                >
                  {riders}
                </text>
              )}
            </g>
          );
        })}
        <path d={`M10 ${base}H${10 + 10 * BIN_X}`} stroke="var(--ink)" stroke-width="3" />
        <path class="bin-middle" d={`M${10 + (middle / 10) * BIN_X} ${base + 2}l9 14h-18Z`} />
        {[0, 50, 100].map((points) => (
          <text
            key={points}
            class="bin-axis"
            x={10 + (points / 10) * BIN_X}
            y={base + 42}
            text-anchor={points === 0 ? 'start' : points === 100 ? 'end' : 'middle'}
          >
            {points}
          </text>
        ))}
      </svg>
    </figure>
  );
}

function columnsOf(format: Format): readonly Column<RideRecord>[] {
  return [
    { name: say('picture-table-rider'), cell: (record) => nameOf(record.nickname) },
    { name: say('picture-table-ride'), cell: (record) => record.rideIndex + 1 },
    { name: say('picture-table-attempt'), cell: (record) => record.attempt },
    { name: say('picture-table-total'), cell: (record) => format.number(record.total) },
    {
      name: say('picture-table-pitches'),
      cell: ({ pitches }) =>
        pitches.map((pitch) => pitch.creditPercent ?? say('picture-table-none')).join(' · '),
    },
  ];
}

/** All rides of a session in a table, with nicknames; only shown where the plan or the coach says so. */
export function RideTable(props: {
  readonly records: readonly RideRecord[];
  readonly format: Format;
}): JSX.Element {
  const columns = columnsOf(props.format);
  const rows = props.records.toSorted(
    (a, b) =>
      (a.nickname < b.nickname ? -1 : a.nickname > b.nickname ? 1 : 0) ||
      a.rideIndex - b.rideIndex ||
      a.attempt - b.attempt,
  );
  return (
    <div class="table-scroll">
      <table class="ride-table">
        <TableHead names={columns.map(({ name }) => name)} />
        <tbody>
          {rows.map((record) => (
            <tr key={record.id}>
              <RowCells columns={columns} row={record} />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
