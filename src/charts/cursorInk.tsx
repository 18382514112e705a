/** The cursor on the strip: a line through all tracks, a dot on each curve, gear and cadence beside their dots. */
import type { JSX } from 'preact';
import type { TraceSample } from '../core/ride/trace.ts';
import type { Format } from '../words/format.ts';
import { px } from './lines.ts';
import { gearText } from './readout.ts';
import { showsCadence, type StripLayout, type StripScales } from './stripLayout.ts';
import type { StripData } from './tracks.tsx';

export function CursorInk(props: {
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
