/** A whole recorded road from the side, with the chosen stretch between two handles and its holes marked. */
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { RoadStretch } from '../../core/gpx/hardest.ts';
import type { RoadSummary } from '../../core/gpx/summary.ts';
import { sampleAt } from '../../core/math/numbers.ts';
import { px } from '../../charts/lines.ts';
import { Handle } from './handle.tsx';
import { Axis, Gradients, Heights } from './roadNumbers.tsx';
import { useFormat } from './say.ts';
import { shownOf, type Span } from './zoom.ts';
import { ZoomBar } from './zoomBar.tsx';
import { words } from '../../words/words.ts';
import { useWidth } from '../../ui/useWidth.ts';

const say = words('bench');

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
  const format = useFormat();
  const [view, setView] = useState<Span | null>(null);
  const shown = shownOf(view, endM);
  const pxPerM = (width - 2 * SIDE) / (shown.toM - shown.fromM);
  const x = (atM: number): number => SIDE + (atM - shown.fromM) * pxPerM;
  const handle = (end: 'fromM' | 'toM', label: string): JSX.Element | null =>
    stretch[end] < shown.fromM || stretch[end] > shown.toM ? null : (
      <Handle
        label={label}
        value={stretch[end]}
        low={0}
        high={endM}
        step={road.stepM}
        shown={format.distance(stretch[end])}
        axis="along"
        x={x(stretch[end])}
        y={BOTTOM + 22}
        perPx={1 / pxPerM}
        kind="edge"
        onValue={(value) => onMove({ [end]: value })}
      />
    );
  return (
    <>
      <div class="bench-profile" ref={ref}>
        <Drawing {...{ road, stretch, width, shown, x }} />
        {handle('fromM', say('field-fromM'))}
        {handle('toM', say('field-toM'))}
      </div>
      <ZoomBar view={view} lengthM={endM} aroundM={(stretch.fromM + stretch.toM) / 2} onView={setView} />
    </>
  );
}

function Drawing(props: {
  readonly road: RoadSummary;
  readonly stretch: RoadStretch;
  readonly width: number;
  readonly shown: Span;
  readonly x: (atM: number) => number;
}): JSX.Element {
  const { road, stretch, width, shown, x } = props;
  const { outline, y } = useMemo(
    () => outlineOf(road, shown, width - 2 * SIDE),
    [road, width, shown.fromM, shown.toM],
  );
  const heightAt = (atM: number): number => sampleAt(road.heightsM, atM / road.stepM);
  const [left, right] = [x(stretch.fromM), x(stretch.toM)];
  return (
    <svg
      width={width}
      height={HEIGHT}
      viewBox={`0 0 ${width} ${HEIGHT}`}
      role="img"
      aria-label={say('road-profile')}
    >
      <rect class="selected" x={left} y={6} width={Math.max(2, right - left)} height={BOTTOM - 6} />
      <path class="ground" d={`M${SIDE} ${BOTTOM}L${outline}L${px(width - SIDE)} ${BOTTOM}Z`} />
      <path class="outline" d={`M${outline}`} />
      {road.holes.map((hole) => (
        <path key={hole.fromM} class="hole" d={`M${px(x(hole.fromM))} ${BOTTOM - 8}H${px(x(hole.toM))}`} />
      ))}
      <path class="stretch-ends" d={`M${px(left)} 6V${BOTTOM + 6}M${px(right)} 6V${BOTTOM + 6}`} />
      <Heights {...{ shown, heightAt, x, y }} />
      <Gradients part={shown} {...{ shown, heightAt, x, y }} />
      <Axis shown={shown} x={x} y={HEIGHT - 4} />
    </svg>
  );
}

/** The heights of what is shown, at most one point a pixel: the highest of those that fall on it. */
function outlineOf({ heightsM, stepM }: RoadSummary, shown: Span, widthPx: number) {
  const [first, last] = [shown.fromM / stepM, shown.toM / stepM];
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const height of heightsM.subarray(Math.floor(first), Math.ceil(last) + 1)) {
    low = Math.min(low, height);
    high = Math.max(high, height);
  }
  const scale = (BOTTOM - TOP - 20) / Math.max(LEAST_RISE_M, high - low);
  const yOf = (heightM: number): number => BOTTOM - 20 - (heightM - low) * scale;
  const columns = Math.max(1, Math.round(widthPx));
  const points: string[] = [];
  for (let column = 0; column <= columns; column += 1) {
    const from = first + (column / columns) * (last - first);
    const to = first + ((column + 1) / columns) * (last - first);
    let top = sampleAt(heightsM, from);
    for (let i = Math.ceil(from); i < to && i <= last; i += 1) top = Math.max(top, heightsM[i] as number);
    points.push(`${px(SIDE + (column / columns) * widthPx)} ${px(yOf(top))}`);
  }
  return { outline: points.join('L'), y: (atM: number): number => yOf(sampleAt(heightsM, atM / stepM)) };
}
