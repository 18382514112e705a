/**
 * The ink of the strip: road, gear, cadence and pressure over distance, the reference ride faint behind.
 * Draws what it is given; cursor, keys and zoom belong to `strip.tsx`.
 */
import type { ComponentChildren, JSX } from 'preact';
import type { ShiftReport } from '../core/coach/types.ts';
import type { Course } from '../core/course/types.ts';
import type { Level } from '../core/level/schema.ts';
import { sampleAt } from '../core/math/numbers.ts';
import { bandLowRpm } from '../core/model/legs.ts';
import type { Machine } from '../core/model/types.ts';
import { decisionPlaceM, type RideTrace, type TraceSample } from '../core/ride/trace.ts';
import type { Format } from '../words/format.ts';
import { words } from '../words/words.ts';
import { columnLine, px, roadPaths, stepLine } from './paths.ts';
import { MISHAPS, MishapMark, ShiftMark } from './shiftMark.tsx';
import {
  type Domain,
  roadTicks,
  samplesWithin,
  showsCadence,
  type StripLayout,
  type StripScales,
  type Track,
} from './stripLayout.ts';
import { Stroke } from '../ui/pictures/stroke.tsx';

const say = words('charts');

/** Width of a letter of a tick, roughly (px). */
const TICK_LETTER_PX = 6.6;

/** What the strip shows of a ride. */
export interface StripData {
  readonly course: Course;
  readonly machine: Machine;
  readonly trace: RideTrace;
  /** The best ride, or null while it is unknown or must not be shown yet. */
  readonly reference: RideTrace | null;
  /** Null while how heavy a shift was must not be shown yet. */
  readonly shifts: readonly ShiftReport[] | null;
  /** Who it is told. */
  readonly audience: Level['audience'];
}

interface TracksProps {
  readonly data: StripData;
  readonly layout: StripLayout;
  readonly scales: StripScales;
  readonly domain: Domain;
  /** Unique within the document; names the clipping region. */
  readonly id: string;
  readonly format: Format;
}

export function Tracks(props: TracksProps): JSX.Element {
  const { data, layout, scales, domain, id } = props;
  const { left, right, height } = layout;
  const own = samplesWithin(data.trace.samples, domain);
  const best = data.reference === null ? [] : samplesWithin(data.reference.samples, domain);
  return (
    <>
      <clipPath id={id}>
        <rect x={left} y="0" width={right - left} height={height} />
      </clipPath>
      <g clip-path={`url(#${id})`}>
        <PitchZones {...props} />
        <RoadTrack {...props} />
        <BandArea {...props} />
        <PressureLines {...props} />
        {data.reference !== null && <Curves samples={best} scales={scales} best={true} />}
        <Curves samples={own} scales={scales} best={false} />
        <Feet {...props} />
        <Mishaps {...props} />
        {data.shifts !== null && <Shifts {...props} />}
      </g>
      <Labels {...props} />
    </>
  );
}

function Curves(props: {
  readonly samples: readonly TraceSample[];
  readonly scales: StripScales;
  readonly best: boolean;
}): JSX.Element {
  const { samples, scales, best } = props;
  const pen = best
    ? { stroke: 'var(--sand-dark)', 'stroke-width': 4, opacity: 0.85 }
    : { stroke: 'var(--ink)', 'stroke-width': 2.2 };
  const cadence = (s: TraceSample): number | null => (showsCadence(s) ? scales.cadenceY(s.cadenceRpm) : null);
  return (
    <g fill="none" stroke-linejoin="round" data-ride={best ? 'best' : 'own'} {...pen}>
      <path d={stepLine(samples, scales.x, (s) => scales.gearY(s.developmentM))} />
      <path d={columnLine(samples, scales.x, cadence)} />
      <path d={columnLine(samples, scales.x, (s) => scales.pressureY(s.pressureRatio))} />
    </g>
  );
}

function PitchZones({ data, layout, scales }: TracksProps): JSX.Element {
  return (
    <g fill="var(--attention)" opacity="0.17">
      {data.course.pitches.map((pitch) => {
        const x = scales.x(decisionPlaceM(data.course, pitch));
        return <rect x={px(x)} y="4" width={px(scales.x(pitch.endM) - x)} height={layout.pressure.bottom} />;
      })}
    </g>
  );
}

function RoadTrack({ data, layout, domain }: TracksProps): JSX.Element {
  const { left, right, road } = layout;
  const paths = roadPaths(data.course, { ...domain, left, right, top: road.top + 18, bottom: road.bottom });
  return (
    <g data-track="road">
      <path d={paths.ground} fill="var(--sand)" />
      <path d={paths.hatching} stroke="var(--ink)" stroke-width="1.1" />
      <Stroke d={paths.outline} width={2.6} />
    </g>
  );
}

function BandArea({ data, layout, scales, domain }: TracksProps): JSX.Element {
  const { rider } = data.machine;
  const high = scales.cadenceY(rider.cadenceHighRpm);
  const { left, right } = layout;
  const points: string[] = [];
  for (let x = left; x <= right; x += 3) {
    const m = domain.fromM + ((x - left) / (right - left)) * (domain.toM - domain.fromM);
    points.push(`${px(x)} ${px(scales.cadenceY(bandLowRpm(rider, sampleAt(data.course.slopeRatio, m))))}`);
  }
  const lower = `M${points.join('L')}`;
  return (
    <g>
      <path d={`${lower}L${right} ${px(high)}H${left}Z`} fill="var(--leaf-pale)" opacity="0.75" />
      <Stroke d={`${lower}M${left} ${px(high)}H${right}`} colour="var(--leaf)" width={1} />
    </g>
  );
}

function PressureLines({ layout, scales }: TracksProps): JSX.Element {
  const lines = [0, 1]
    .map((ratio) => `M${layout.left} ${px(scales.pressureY(ratio))}H${layout.right}`)
    .join('');
  return <path d={lines} stroke="var(--sand)" stroke-width="1" />;
}

/** Dotted lines at the feet and bars at stop lines, over everything that flows. */
function Feet({ data, layout, scales }: TracksProps): JSX.Element {
  const { road, gear, cadence, pressure } = layout;
  // On a narrow paper the names of the tracks stand between them, where no line may cross them.
  const pieces: readonly Track[] = layout.narrow
    ? [road, { top: gear.top, bottom: layout.easierY + 6 }, cadence, pressure]
    : [{ top: road.top - 6, bottom: pressure.bottom }];
  const line = (m: number): string =>
    pieces.map(({ top, bottom }) => `M${px(scales.x(m))} ${top}V${bottom}`).join('');
  return (
    <>
      <path
        d={data.course.pitches.map((pitch) => line(pitch.footM)).join('')}
        stroke="var(--ink)"
        stroke-width="1.6"
        stroke-dasharray="2 4"
      />
      <path
        d={data.course.stopLinesM
          .map((m) => `M${px(scales.x(m))} ${layout.road.top + 12}V${layout.road.bottom}`)
          .join('')}
        stroke="var(--rider-deep)"
        stroke-width="3"
        stroke-dasharray="6 3"
      />
    </>
  );
}

/** What went wrong bodily; the rider knows that without being told. */
function Mishaps({ data, layout, scales }: TracksProps): JSX.Element {
  return (
    <>
      {MISHAPS.flatMap((kind) =>
        data.trace.events
          .filter((event) => event.kind === kind)
          .map((event) => (
            <MishapMark kind={kind} x={scales.x(event.distanceM)} y={layout.cadence.bottom - 2} />
          )),
      )}
    </>
  );
}

function Shifts({ data, layout, scales }: TracksProps): JSX.Element {
  return (
    <g data-track="shifts">
      {data.shifts?.map((shift) => (
        <ShiftMark
          kind={shift.kind}
          x={scales.x(shift.startedAtM)}
          y={shift.direction === 'harder' ? layout.harderY : layout.easierY}
        />
      ))}
    </g>
  );
}

function Labels(props: TracksProps): JSX.Element {
  const { data, layout, scales, domain, format } = props;
  const { rider } = data.machine;
  const inside = (m: number): boolean => m >= domain.fromM && m <= domain.toM;
  const ticks = roadTicks(domain, layout.right - layout.left, format.unitM);
  return (
    <g fill="var(--ink)" font-size="14" style={{ fontFamily: 'var(--font)' }}>
      <TrackName track={layout.road} layout={layout}>
        {say('road')}
      </TrackName>
      <TrackName track={layout.gear} layout={layout} hint={say('hint-gear')}>
        {say('gear')}
      </TrackName>
      {data.shifts !== null && !layout.narrow && (
        <text x="4" y={(layout.harderY + layout.easierY) / 2 + 5} font-weight="700">
          {say('shifts-title')}
        </text>
      )}
      <TrackName
        track={layout.cadence}
        layout={layout}
        hint={say('hint-cadence', {
          low: Math.round(rider.cadenceLowRpm),
          high: Math.round(rider.cadenceHighRpm),
        })}
      >
        {say('cadence')}
      </TrackName>
      <TrackName track={layout.pressure} layout={layout} hint={say('hint-pressure')}>
        {say('pressure')}
      </TrackName>
      {data.course.pitches
        .filter((pitch) => inside(pitch.footM))
        .map((pitch) => (
          <text x={px(scales.x(pitch.footM) + 6)} y={layout.road.top + 6} font-weight="800" font-size="15">
            {format.percent(pitch.steepestRatio)}
          </text>
        ))}
      {ticks.map((m) => {
        const x = scales.x(m);
        const text = format.distance(m);
        const half = (text.length * TICK_LETTER_PX) / 2;
        return (
          <text
            x={px(x)}
            y={layout.axisY + 14}
            font-size="12"
            fill="var(--ink-soft)"
            text-anchor={x - half < layout.left ? 'start' : x + half > layout.width ? 'end' : 'middle'}
          >
            {text}
          </text>
        );
      })}
    </g>
  );
}

function TrackName(props: {
  readonly track: Track;
  readonly layout: StripLayout;
  readonly hint?: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { track, layout, hint } = props;
  if (layout.narrow)
    return (
      <text x={layout.left} y={track.top - 8} font-weight="700">
        {props.children}
        {hint !== undefined && (
          <tspan dx="6" font-size="11" font-weight="500" fill="var(--ink-soft)">
            {hint}
          </tspan>
        )}
      </text>
    );
  const middle = (track.top + track.bottom) / 2;
  return (
    <>
      <text x="4" y={middle + (hint === undefined ? 5 : -2)} font-weight="700">
        {props.children}
      </text>
      {hint !== undefined && (
        <text x="4" y={middle + 15} font-size="12" fill="var(--ink-soft)">
          {hint}
        </text>
      )}
    </>
  );
}
