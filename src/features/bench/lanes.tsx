/**
 * Cadence and speed below the profile, over the same metres: the reference ride as a full line, what was really
 * ridden as a dashed one.
 */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { RecordedSample } from '../../core/gpx/recorded.ts';
import type { TraceSample } from '../../core/ride/trace.ts';
import { px } from '../../charts/paths.ts';
import { useFormat } from './say.ts';
import { SIDE } from './profile.tsx';
import { Drawing } from './roadNumbers.tsx';
import type { Span } from './zoom.tsx';
import { words } from '../../words/words.ts';
import { useWidth } from '../../ui/hooks.ts';

const say = words('bench');

/** The paper of each curve (px). */
const PAPER = { height: 96, top: 26, bottom: 84 };
/** The scale of speeds reaches at least so far (m/s): 30 km/h. */
const FAST_MPS = 30 / 3.6;

interface Curve {
  readonly kind: 'best' | 'ridden';
  /** Distance (m) and value; null is a gap. */
  readonly points: readonly (readonly [atM: number, value: number | null])[];
}

export function Lanes(props: {
  /** The same part of the road as the drawing above shows. */
  readonly shown: Span;
  readonly reference: readonly TraceSample[];
  readonly recorded: readonly RecordedSample[] | null;
}): JSX.Element {
  const { shown, reference, recorded } = props;
  const format = useFormat();
  const { cadence, speed } = useMemo(() => {
    const ridden = recorded ?? [];
    return {
      cadence: [
        best(reference, (one, rolls) => (rolls ? one.cadenceRpm : null)),
        { kind: 'ridden', points: ridden.map((one) => [one.distanceM, one.cadenceRpm || null] as const) },
      ] satisfies Curve[],
      speed: [
        best(reference, (one) => one.speedMps),
        { kind: 'ridden', points: ridden.map((one) => [one.distanceM, one.speedMps] as const) },
      ] satisfies Curve[],
    };
  }, [reference, recorded]);
  return (
    <div class="lanes">
      <Lane
        title={say('reference-cadenceLane')}
        curves={cadence}
        shown={shown}
        scale={format.number}
        least={40}
        most={110}
      />
      {recorded !== null && (
        <>
          <Lane
            title={say('reference-speedLane')}
            curves={speed}
            shown={shown}
            scale={format.speed}
            least={0}
            most={FAST_MPS}
          />
          <p class="row lane-legend">
            <svg width="34" height="10" aria-hidden="true">
              <path class="curve best" d="M0 5H34" />
            </svg>
            {say('reference-best')}
            <svg width="34" height="10" aria-hidden="true">
              <path class="curve ridden" d="M0 5H34" />
            </svg>
            {say('reference-ridden')}
          </p>
        </>
      )}
    </div>
  );
}

function best(
  reference: readonly TraceSample[],
  value: (one: TraceSample, rolls: boolean) => number | null,
): Curve {
  const rolls = isRolling(reference);
  const points = reference.map((one, index) => [one.distanceM, value(one, rolls[index] === true)] as const);
  return { kind: 'best', points };
}

function Lane(props: {
  readonly title: string;
  readonly curves: readonly Curve[];
  readonly shown: Span;
  /** How the ends of the scale are written. */
  readonly scale: (value: number) => string;
  /** The scale holds at least these two. */
  readonly least: number;
  readonly most: number;
}): JSX.Element {
  const { title, curves, shown, scale } = props;
  const [width, ref] = useWidth();
  const all = curves.flatMap(({ points }) => points.flatMap(([, value]) => (value === null ? [] : [value])));
  const low = all.reduce((a, b) => Math.min(a, b), props.least);
  const high = all.reduce((a, b) => Math.max(a, b), props.most);
  const x = (atM: number): number =>
    SIDE + ((atM - shown.fromM) / (shown.toM - shown.fromM)) * (width - 2 * SIDE);
  const y = (value: number): number =>
    PAPER.bottom - ((value - low) / (high - low)) * (PAPER.bottom - PAPER.top);
  const range = say('reference-scale', { low: scale(low), high: scale(high) });
  return (
    <div ref={ref}>
      <Drawing width={width} height={PAPER.height} label={say('reference-lane', { what: title, range })}>
        <text x={SIDE} y={16}>
          {title}
        </text>
        <text x={width - SIDE} y={16} text-anchor="end">
          {range}
        </text>
        <path
          class="lane-edge"
          d={`M${SIDE} ${PAPER.top}H${width - SIDE}M${SIDE} ${PAPER.bottom}H${width - SIDE}`}
        />
        {curves.map(({ kind, points }) => (
          <path key={kind} class={`curve ${kind}`} d={curvePath(points, x, y)} />
        ))}
      </Drawing>
    </div>
  );
}

/** A line through the last point of every pixel; a null lifts the pen. */
function curvePath(
  points: Curve['points'],
  x: (atM: number) => number,
  y: (value: number) => number,
): string {
  let path = '';
  let down = false;
  let lastPx = Number.NEGATIVE_INFINITY;
  for (const [atM, value] of points) {
    if (value === null) {
      down = false;
      continue;
    }
    const atPx = x(atM);
    if (down && atPx - lastPx < 1) continue;
    path += `${down ? 'L' : 'M'}${px(atPx)} ${px(y(value))}`;
    down = true;
    lastPx = atPx;
  }
  return path;
}

/** After a standstill a start takes about so long (s). */
const START_S = 6;
/** Slower than this is standing or pushing off (m/s). */
const STANDING_MPS = 1;

/**
 * Whether a sample belongs to the part of a ride in which the bike rolls, one for each: starting off is slow on every road
 * and says nothing about it.
 */
function isRolling(samples: readonly TraceSample[]): readonly boolean[] {
  let startedS = 0;
  return samples.map((one) => {
    if (one.speedMps < STANDING_MPS) startedS = one.timeS;
    return one.pedalling && one.cadenceRpm > 0 && one.timeS - startedS >= START_S;
  });
}

/** The samples of that part. */
export function rolling(samples: readonly TraceSample[]): readonly TraceSample[] {
  const rolls = isRolling(samples);
  return samples.filter((_, index) => rolls[index]);
}
