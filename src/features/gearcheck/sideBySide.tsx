/** Two rides over the same road: cadence as two lines over the band, and the figures of both in a small table. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { GearOutcome, RidePoint } from '../../core/coach/gearCheck.ts';
import { STEEPEST_MEAN_M } from '../../core/coach/gearSteady.ts';
import { px } from '../../charts/paths.ts';
import { roadTicks } from '../../charts/stripLayout.ts';
import { useWidth } from '../../ui/hooks.ts';
import { TableHead } from '../../ui/tables.tsx';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { lowestTeeth } from './answerText.tsx';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const say = words('gearcheck');

/** The paper; `left` and `right` are its margins (px). */
const PAPER = { height: 190, top: 14, bottom: 150, left: 34, right: 10 };
const HIGHEST_RPM = 120;
const LINES_RPM = [30, 60, 90];

interface Props {
  readonly own: GearOutcome;
  readonly other: GearOutcome;
  /** The other parts, written. */
  readonly parts: string;
  readonly format: Format;
}

export function SideBySide({ own, other, parts, format }: Props): JSX.Element {
  const [width, paper] = useWidth();
  const id = useId();
  const lengthM = Math.max(1, own.ride.at(-1)?.distanceM ?? 1, other.ride.at(-1)?.distanceM ?? 1);
  const x = (m: number): number => PAPER.left + (m / lengthM) * (width - PAPER.left - PAPER.right);
  return (
    <div class="gear-compare" ref={paper}>
      <svg viewBox={`0 0 ${width} ${PAPER.height}`} role="img" aria-labelledby={id}>
        <title id={id}>{say('compare-desc', { parts })}</title>
        <path d={bandPath(own.ride, x)} fill="var(--leaf)" opacity="0.3" />
        {LINES_RPM.map((rpm) => (
          <g key={rpm}>
            <path
              d={`M${PAPER.left} ${px(yOf(rpm))}H${width - PAPER.right}`}
              stroke="var(--sand-dark)"
              stroke-width="1"
            />
            <text x="0" y={px(yOf(rpm) + 4)} font-size="12" fill="var(--ink-soft)">
              {format.number(rpm)}
            </text>
          </g>
        ))}
        <Stroke d={cadencePath(own.ride, x)} width={2} stroke-dasharray="5 4" />
        <Stroke d={cadencePath(other.ride, x)} colour="var(--rider-deep)" width={2.6} />
        {roadTicks({ fromM: 0, toM: lengthM }, width - PAPER.left - PAPER.right, format.unitM).map((m) => (
          <text
            key={m}
            x={px(x(m))}
            y={PAPER.bottom + 20}
            font-size="12"
            fill="var(--ink-soft)"
            text-anchor={m > lengthM * 0.95 ? 'end' : 'middle'}
          >
            {format.distance(m)}
          </text>
        ))}
      </svg>
      <ul class="legend gear-legend">
        <li>
          <LegendLine dashed />
          {say('compare-yours')}
        </li>
        <li>
          <LegendLine />
          {parts}
        </li>
        <li>
          <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
            <rect x="1" y="6" width="18" height="9" fill="var(--leaf)" opacity="0.5" />
          </svg>
          {say('compare-band')}
        </li>
      </ul>
      <Figures {...{ own, other, parts, format }} />
    </div>
  );
}

function Figures({ own, other, parts, format }: Props): JSX.Element {
  const rpm = (value: number): string => say('perMinute', { rpm: Math.round(value) });
  const low = (of: GearOutcome): string =>
    say('compare-gear', {
      gear: format.gear(lowestTeeth(of)),
      metres: format.metres(of.lowestDevelopmentM),
    });
  const rows: readonly (readonly [string, (of: GearOutcome) => string])[] = [
    [
      say('getsUp'),
      (of) => (of.mustWalk ? say('getsUp-walking', { time: format.time(of.walkedS) }) : say('getsUp-riding')),
    ],
    [say('minute'), (of) => rpm(of.hardest.meanRpm)],
    [say('inBand'), (of) => format.percent(of.shareInBand)],
    [say('steepest', { length: format.distance(STEEPEST_MEAN_M) }), (of) => rpm(of.steady.cadenceRpm)],
    [say('compare-lowest'), low],
    [say('compare-time'), (of) => format.time(of.finishedS)],
    [say('compare-shifts'), (of) => format.number(of.shifts)],
  ];
  return (
    <table class="gear-figures">
      <TableHead names={[say('compare-figure'), say('yours'), parts]} />
      <tbody>
        {rows.map(([head, tell]) => (
          <tr key={head}>
            <th scope="row">{head}</th>
            <td>{tell(own)}</td>
            <td>{tell(other)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function yOf(rpm: number): number {
  return PAPER.bottom - (Math.min(HIGHEST_RPM, rpm) / HIGHEST_RPM) * (PAPER.bottom - PAPER.top);
}

/** The curve; broken where the legs rest. */
function cadencePath(ride: readonly RidePoint[], x: (m: number) => number): string {
  return ride
    .map(({ distanceM, cadenceRpm }, i) =>
      cadenceRpm === null
        ? ''
        : `${(ride[i - 1]?.cadenceRpm ?? null) === null ? 'M' : 'L'}${px(x(distanceM))} ${px(yOf(cadenceRpm))}`,
    )
    .join('');
}

/** From the lower edge of the band upwards, as a strip. */
function bandPath(ride: readonly RidePoint[], x: (m: number) => number): string {
  const edge = ride.map(({ distanceM, bandLowRpm }) => `${px(x(distanceM))} ${px(yOf(bandLowRpm))}`);
  const back = ride
    .toReversed()
    .map(({ distanceM, bandLowRpm }) => `${px(x(distanceM))} ${px(yOf(bandLowRpm) - 6)}`);
  return edge.length === 0 ? '' : `M${[...edge, ...back].join('L')}Z`;
}

function LegendLine({ dashed = false }: { readonly dashed?: boolean }): JSX.Element {
  return (
    <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
      <path
        d="M0 10H20"
        stroke={dashed ? 'var(--ink)' : 'var(--rider-deep)'}
        stroke-width={dashed ? 2 : 3}
        stroke-dasharray={dashed ? '5 4' : undefined}
      />
    </svg>
  );
}
