/** A whole recorded road from the side, with the chosen stretch between two handles and its holes marked. */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { RoadStretch } from '../../core/gpx/hardest.ts';
import type { RoadSummary } from '../../core/gpx/summary.ts';
import { px } from '../../charts/lines.ts';
import { benchWords } from './words.ts';
import { Handle } from './handle.tsx';
import { metric } from './say.ts';
import { useWidth } from '../../ui/useWidth.ts';

const HEIGHT = 230;
const TOP = 24;
const BOTTOM = 176;
const SIDE = 24;
/** A road never looks hillier than this many metres over the whole height (m). */
const LEAST_RISE_M = 20;

interface StretchProps {
  readonly road: RoadSummary;
  readonly stretch: RoadStretch;
  readonly onMove: (change: Partial<RoadStretch>) => void;
}

export function StretchProfile({ road, stretch, onMove }: StretchProps): JSX.Element {
  const [width, ref] = useWidth();
  const endM = (road.heightsM.length - 1) * road.stepM;
  const pxPerM = (width - 2 * SIDE) / endM;
  const x = (atM: number): number => SIDE + atM * pxPerM;
  const handle = (end: 'fromM' | 'toM', label: string): JSX.Element => (
    <Handle
      label={label}
      value={stretch[end]}
      low={0}
      high={endM}
      step={road.stepM}
      shown={metric.distance(stretch[end])}
      axis="along"
      x={x(stretch[end])}
      y={BOTTOM + 22}
      perPx={1 / pxPerM}
      kind="edge"
      onValue={(value) => onMove({ [end]: value })}
    />
  );
  return (
    <div class="bench-profile" ref={ref}>
      <Drawing {...{ road, stretch, width, endM, x }} />
      {handle('fromM', benchWords.road.from)}
      {handle('toM', benchWords.road.to)}
    </div>
  );
}

function Drawing(props: {
  readonly road: RoadSummary;
  readonly stretch: RoadStretch;
  readonly width: number;
  readonly endM: number;
  readonly x: (atM: number) => number;
}): JSX.Element {
  const { road, stretch, width, endM, x } = props;
  const outline = useMemo(() => outlineOf(road, width - 2 * SIDE), [road, width]);
  const [left, right] = [x(stretch.fromM), x(stretch.toM)];
  return (
    <svg
      width={width}
      height={HEIGHT}
      viewBox={`0 0 ${width} ${HEIGHT}`}
      role="img"
      aria-label={benchWords.road.profile}
    >
      <rect class="selected" x={left} y={6} width={Math.max(2, right - left)} height={BOTTOM - 6} />
      <path class="ground" d={`M${SIDE} ${BOTTOM}L${outline}L${px(width - SIDE)} ${BOTTOM}Z`} />
      <path class="outline" d={`M${outline}`} />
      {road.holes.map((hole) => (
        <path
          key={hole.fromM}
          class="hole"
          d={`M${px(x(hole.fromM))} ${BOTTOM - 8}H${px(x(Math.min(endM, hole.toM)))}`}
        />
      ))}
      <path class="stretch-ends" d={`M${px(left)} 6V${BOTTOM + 6}M${px(right)} 6V${BOTTOM + 6}`} />
      <g class="axis" aria-hidden="true">
        <text x={SIDE} y={HEIGHT - 4}>
          {metric.road(0)}
        </text>
        <text x={width - SIDE} y={HEIGHT - 4} text-anchor="end">
          {metric.road(endM)}
        </text>
      </g>
    </svg>
  );
}

/** The heights, at most one point a pixel: the highest of those that fall on it. */
function outlineOf(road: RoadSummary, widthPx: number): string {
  const { heightsM } = road;
  const low = heightsM.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const high = heightsM.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const scale = (BOTTOM - TOP - 20) / Math.max(LEAST_RISE_M, high - low);
  const last = heightsM.length - 1;
  const columns = Math.min(last, Math.round(widthPx));
  const points: string[] = [];
  for (let column = 0; column <= columns; column += 1) {
    const from = Math.floor((column / columns) * last);
    const to = Math.max(from + 1, Math.floor(((column + 1) / columns) * last));
    let top = heightsM[from] as number;
    for (let i = from; i < to && i <= last; i += 1) top = Math.max(top, heightsM[i] as number);
    points.push(`${px(SIDE + (column / columns) * widthPx)} ${px(BOTTOM - 20 - (top - low) * scale)}`);
  }
  return points.join('L');
}
