/**
 * The strip with its cursor: pointer, finger or keys choose a place, which is read out below. What is drawn of
 * the ride is in `tracks.tsx`; nothing here judges.
 */
import type { JSX, TargetedPointerEvent } from 'preact';
import { useId, useMemo, useRef, useState } from 'preact/hooks';
import { Button } from '../ui/controls.tsx';
import { useWidth } from '../ui/hooks.ts';
import type { Format } from '../words/format.ts';
import { words } from '../words/words.ts';
import { jump, moveByKey, nearestSample, PAGE_M } from './lookup.ts';
import { gearText, type ReadItem, readPlace } from './readout.ts';
import {
  type Domain,
  NARROW_PX,
  showsCadence,
  stripLayout,
  type StripLayout,
  stripScales,
  type StripScales,
} from './stripLayout.ts';
import { around, domainOf, StripLegend, ZoomButtons, type ZoomedPart } from './stripHead.tsx';
import { StripTable } from './stripTable.tsx';
import { type StripData, Tracks } from './tracks.tsx';
import type { TraceSample } from '../core/ride/trace.ts';
import { px } from './paths.ts';

interface StripProps {
  readonly data: StripData;
  /** The pitch a narrow screen shows first, or null. */
  readonly pitch: number | null;
  readonly format: Format;
  readonly onWatch: (distanceM: number) => void;
}

const say = words('charts');

/** Width of the scrubber's handle, as in the style sheet (px). */
const THUMB_PX = 22;

export function Strip({ data, pitch, format, onWatch }: StripProps): JSX.Element {
  const [width, paper] = useWidth();
  const [cursor, setCursor] = useState<number | null>(null);
  const [chosen, choose] = useState<ZoomedPart | null>(null);
  const scrubber = useRef<HTMLInputElement | null>(null);
  const { samples } = data.trace;
  const view = chosen ?? (width < NARROW_PX && pitch !== null ? pitch : 'whole');
  const domain = useMemo(() => domainOf(data, view), [data, view]);
  const move = (to: number | null): void => {
    if (to === null) return;
    setCursor(to);
    const atM = samples[to]?.distanceM ?? 0;
    if (atM < domain.fromM || atM > domain.toM) choose(around(atM, domain, data.course.lengthM));
  };
  const touch = (distanceM: number): void => {
    // Keys go on from where the finger was.
    scrubber.current?.focus({ preventScroll: true });
    move(nearestSample(samples, distanceM));
  };
  return (
    <div class="strip">
      <div class="strip-head">
        <StripLegend data={data} />
        <ZoomButtons data={data} view={view} onChoose={choose} />
      </div>
      <div class="strip-paper" ref={paper}>
        <Drawing {...{ data, width, domain, cursor, format }} onPlace={touch} />
        <Scrubber {...{ data, width, domain, cursor, format }} input={scrubber} onMove={move} />
      </div>
      <Readout
        items={cursor === null ? [] : readPlace(data, cursor, format)}
        hint={say('drag')}
        keysHint={`${say('keys', { step: format.distance(PAGE_M) })}${data.shifts === null ? '' : ` ${say('jumps')}`}`}
      />
      <StripButtons {...{ data, cursor, onWatch }} onMove={move} />
      <StripTable data={data} format={format} />
    </div>
  );
}

type Moving = Pick<StripProps, 'data'> & {
  readonly cursor: number | null;
  readonly onMove: (to: number | null) => void;
};

/** The handle below the picture: takes focus, fingers and keys. */
function Scrubber(
  props: Moving & {
    readonly width: number;
    readonly domain: Domain;
    readonly format: Format;
    readonly input: { current: HTMLInputElement | null };
  },
): JSX.Element {
  const { data, cursor, format, width, domain, input, onMove } = props;
  const { samples } = data.trace;
  const { left, right } = stripLayout(width);
  const distanceM = cursor === null ? domain.fromM : (samples[cursor]?.distanceM ?? 0);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const to = moveByKey(samples, data.shifts ?? [], cursor, event.key);
    if (to === null) return;
    event.preventDefault();
    onMove(to);
  };
  return (
    <input
      ref={input}
      class="strip-scrubber"
      type="range"
      min={domain.fromM}
      max={domain.toM}
      step="any"
      value={distanceM}
      aria-label={say('place')}
      aria-valuetext={format.distance(distanceM)}
      style={{ marginLeft: `${left - THUMB_PX / 2}px`, width: `${right - left + THUMB_PX}px` }}
      onKeyDown={onKeyDown}
      onInput={(event) => onMove(nearestSample(samples, event.currentTarget.valueAsNumber))}
    />
  );
}

function StripButtons(props: Moving & Pick<StripProps, 'onWatch'>): JSX.Element {
  const { data, cursor, onMove, onWatch } = props;
  const { samples } = data.trace;
  const shifts = data.shifts ?? [];
  const distanceM = cursor === null ? undefined : samples[cursor]?.distanceM;
  return (
    <div class="strip-buttons">
      {shifts.length > 0 && (
        <>
          <Button look="small" onClick={() => onMove(jump(samples, shifts, cursor, -1))}>
            ← {say('lastShift')}
          </Button>
          <Button look="small" onClick={() => onMove(jump(samples, shifts, cursor, 1))}>
            {say('nextShift')} →
          </Button>
        </>
      )}
      {distanceM !== undefined && (
        <Button look="small" onClick={() => onWatch(distanceM)}>
          ▶ {say('watchHere')}
        </Button>
      )}
    </div>
  );
}

/** The picture with the cursor on it; the tracks are drawn again only when something else than the cursor moves. */
function Drawing(props: {
  readonly data: StripData;
  readonly width: number;
  readonly domain: Domain;
  readonly cursor: number | null;
  readonly format: Format;
  readonly onPlace: (distanceM: number) => void;
}): JSX.Element {
  const { data, width, domain, cursor, format } = props;
  const id = useId();
  const layout = useMemo(() => stripLayout(width), [width]);
  const scales = useMemo(
    () =>
      stripScales(
        layout,
        domain,
        data.machine,
        data.reference === null ? [data.trace] : [data.trace, data.reference],
      ),
    [layout, domain, data],
  );
  const tracks = useMemo(
    () => <Tracks {...{ data, layout, scales, domain, format }} id={`strip-${id}`} />,
    [data, layout, scales, domain, format, id],
  );
  const place = (event: TargetedPointerEvent<SVGSVGElement>): void => {
    const box = event.currentTarget.getBoundingClientRect();
    const x = ((event.clientX - box.left) / Math.max(1, box.width)) * layout.width;
    const share = (x - layout.left) / (layout.right - layout.left);
    props.onPlace(domain.fromM + Math.min(1, Math.max(0, share)) * (domain.toM - domain.fromM));
  };
  const length = format.distance(data.course.lengthM);
  return (
    <svg
      class="strip-svg"
      viewBox={`0 0 ${layout.width} ${layout.height}`}
      role="img"
      aria-labelledby={`t-${id} d-${id}`}
      onPointerDown={place}
      onPointerMove={place}
    >
      <title id={`t-${id}`}>{say('title')}</title>
      <desc id={`d-${id}`}>
        {data.shifts === null
          ? say('descClosed', { length })
          : say('desc', { length, shifts: data.shifts.length })}
      </desc>
      {tracks}
      {cursor !== null && <CursorInk {...{ data, layout, scales, cursor, format }} />}
    </svg>
  );
}

function Readout(props: {
  readonly items: readonly ReadItem[];
  readonly hint: string;
  /** Left away where there are only fingers. */
  readonly keysHint: string;
}): JSX.Element {
  const { items, hint, keysHint } = props;
  return (
    <output class="strip-readout" aria-live="polite">
      {items.length === 0 && (
        <span class="hint">
          {hint} <span class="for-keys">{keysHint}</span>
        </span>
      )}
      {items.map((item) => (
        <span key={item.name} data-read={item.name}>
          <span class="label">{item.label}</span> <b>{item.value}</b>
          {item.aside !== undefined && <span class="aside"> {item.aside}</span>}{' '}
        </span>
      ))}
    </output>
  );
}

/** The cursor on the strip: a line through all tracks, a dot on each curve, gear and cadence beside their dots. */
function CursorInk(props: {
  readonly data: StripData;
  readonly layout: StripLayout;
  readonly scales: StripScales;
  readonly cursor: number;
  readonly format: Format;
}): JSX.Element | null {
  const { data, layout, scales, format } = props;
  const sample: TraceSample | undefined = data.trace.samples[props.cursor];
  if (sample === undefined) return null;
  const x = scales.x(sample.distanceM);
  const leftward = x > layout.right - 90;
  const text = {
    x: px(x + (leftward ? -9 : 9)),
    'text-anchor': leftward ? ('end' as const) : ('start' as const),
    'font-size': 14,
    'font-weight': 800,
    fill: 'var(--ink)',
    stroke: 'var(--paper)',
    'stroke-width': 6,
    'paint-order': 'stroke',
    'stroke-linejoin': 'round' as const,
    style: { fontFamily: 'var(--font)' },
  };
  const gearY = scales.gearY(sample.developmentM);
  const cadenceY = showsCadence(sample) ? scales.cadenceY(sample.cadenceRpm) : null;
  const dots = [gearY, cadenceY, scales.pressureY(sample.pressureRatio)];
  return (
    <g data-cursor={px(sample.distanceM)} pointer-events="none">
      <path
        d={`M${px(x)} ${layout.road.top}V${layout.pressure.bottom}`}
        stroke="var(--rider-deep)"
        stroke-width="2"
      />
      {dots.map(
        (y) =>
          y !== null && (
            <circle
              cx={px(x)}
              cy={px(y)}
              r="5"
              fill="var(--rider-deep)"
              stroke="var(--paper)"
              stroke-width="2"
            />
          ),
      )}
      <text {...text} y={px(gearY - 8)}>
        {gearText(data.machine, sample, format)}
      </text>
      {cadenceY !== null && (
        <text {...text} y={px(cadenceY - 8)}>
          {format.number(sample.cadenceRpm)}
        </text>
      )}
    </g>
  );
}
