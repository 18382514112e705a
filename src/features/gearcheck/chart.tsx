/** All gears of a bike by development, a row for each ring; overlaps and crossed gears told by shape and in words. */
import type { JSX } from 'preact';
import { useId, useMemo } from 'preact/hooks';
import { type GearRow, gearChart } from '../../core/coach/gearCheck.ts';
import { midBandRpm } from '../../core/model/legs.ts';
import { buildMachine } from '../../core/model/machine.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import { px } from '../../charts/lines.ts';
import { ScrollBox } from '../../ui/scrollBox.tsx';
import { useWidth } from '../../ui/useWidth.ts';
import type { Format } from '../../words/format.ts';
import type { GearCheckWords } from './words.ts';
import {
  type ChartLayout,
  chartLayout,
  differentGears,
  type GearMark,
  type GearShape,
  shapeOf,
} from './chartLayout.ts';

interface ChartProps {
  readonly bike: Bike;
  readonly rider: Rider;
  readonly words: GearCheckWords;
  readonly format: Format;
}

const SHAPES: readonly GearShape[] = ['single', 'twin', 'crossed'];

/** The chart, its legend, and its numbers as a table. */
export function GearChart({ bike, rider, words, format }: ChartProps): JSX.Element {
  const [width, paper] = useWidth();
  const id = useId();
  const rows = useMemo(() => gearChart(buildMachine(bike, rider)), [bike, rider]);
  const layout = chartLayout(rows, width);
  const count = (shape: GearShape): number => rows.filter((row) => shapeOf(row) === shape).length;
  const { chart } = words;
  return (
    <section class="paper" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{chart.title}</h2>
      <p class="quiet">
        {chart.really(rows.length, differentGears(rows))} {chart.hint}
      </p>
      <div class="gear-chart" ref={paper}>
        <svg viewBox={`0 0 ${width} ${layout.height}`} role="img" aria-labelledby={id}>
          <title id={id}>
            {chart.desc(rows.length, rows.filter(({ twin }) => twin !== null).length, count('crossed'))}
          </title>
          <Grid layout={layout} words={words} format={format} />
          {layout.marks.map((mark) => (
            <Mark key={`${mark.row.gear.ringTeeth}-${mark.row.gear.sprocketTeeth}`} mark={mark} />
          ))}
        </svg>
      </div>
      <ul class="gear-legend">
        {SHAPES.filter((shape) => count(shape) > 0).map((shape) => (
          <li key={shape}>
            <svg width="20" height="20" viewBox="-10 -10 20 20" aria-hidden="true">
              <Shape shape={shape} />
            </svg>
            {chart[shape]}
          </li>
        ))}
      </ul>
      <details class="gear-fold">
        <summary>{chart.table}</summary>
        <GearTable rows={rows} rpm={midBandRpm(rider)} words={words} format={format} />
      </details>
    </section>
  );
}

function Grid(props: {
  readonly layout: ChartLayout;
  readonly words: GearCheckWords;
  readonly format: Format;
}): JSX.Element {
  const { layout, words, format } = props;
  const { marks, lanes } = layout;
  return (
    <g fill="var(--ink)" font-size="12" style={{ fontFamily: 'var(--font)' }}>
      {layout.ticks.map(({ developmentM, x }) => (
        <g key={developmentM}>
          <path d={`M${px(x)} 12V${layout.axisY}`} stroke="var(--sand)" stroke-width="1.4" />
          <text x={px(x)} y={layout.axisY + 16} text-anchor="middle" fill="var(--ink-soft)">
            {words.metres(format.number(developmentM, developmentM % 1 === 0 ? 0 : 1))}
          </text>
        </g>
      ))}
      <path d={twinLines(marks)} stroke="var(--sand-dark)" stroke-width="1.6" stroke-dasharray="2 3" />
      {lanes.map(({ ringTeeth, y }) => {
        const own = marks.filter(({ row }) => row.gear.ringTeeth === ringTeeth);
        return (
          <g key={ringTeeth}>
            <path
              d={`M${px(own[0]?.x ?? 0)} ${y}H${px(own.at(-1)?.x ?? 0)}`}
              stroke="var(--ink)"
              stroke-width="2"
            />
            <text x="0" y={y + 6} font-size="17" font-weight="900">
              {format.number(ringTeeth)}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** From each gear to its twin on a bigger ring. */
function twinLines(marks: readonly GearMark[]): string {
  return marks
    .map(({ row, x, y }) => {
      const { twin } = row;
      const other = marks.find(
        ({ row: { gear } }) =>
          gear.ringTeeth === twin?.ringTeeth && gear.sprocketTeeth === twin.sprocketTeeth,
      );
      return other === undefined || other.y > y ? '' : `M${px(x)} ${px(y)}L${px(other.x)} ${px(other.y)}`;
    })
    .join('');
}

function Mark({ mark }: { readonly mark: GearMark }): JSX.Element {
  const { row, shape, x, y, labelY } = mark;
  return (
    <g data-gear={`${row.gear.ringTeeth}x${row.gear.sprocketTeeth}`} data-shape={shape}>
      <g transform={`translate(${px(x)} ${px(y)})`}>
        <Shape shape={shape} />
      </g>
      <text
        x={px(x)}
        y={px(labelY)}
        text-anchor="middle"
        font-size="12"
        font-weight="700"
        fill="var(--ink)"
        style={{ fontFamily: 'var(--font)' }}
      >
        {row.gear.sprocketTeeth}
      </text>
    </g>
  );
}

function Shape({ shape }: { readonly shape: GearShape }): JSX.Element {
  if (shape === 'single') return <circle r="6.5" fill="var(--leaf)" stroke="var(--ink)" stroke-width="2" />;
  if (shape === 'twin')
    return <path d="M0 -8L8 0L0 8L-8 0Z" fill="var(--paper)" stroke="var(--ink)" stroke-width="2" />;
  return (
    <>
      <path d="M-6 -6L6 6M6 -6L-6 6" stroke="var(--paper)" stroke-width="7" />
      <path d="M-6 -6L6 6M6 -6L-6 6" stroke="var(--rider-deep)" stroke-width="3.4" />
    </>
  );
}

function GearTable(props: {
  readonly rows: readonly GearRow[];
  readonly rpm: number;
  readonly words: GearCheckWords;
  readonly format: Format;
}): JSX.Element {
  const { rows, rpm, words, format } = props;
  const { chart } = words;
  const heads = [chart.gear, chart.development, chart.step, chart.speed(format.number(rpm)), chart.note];
  return (
    <ScrollBox class="gear-scroll" label={chart.table}>
      <table>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ gear, twin, stepRatio }) => (
            <tr key={`${gear.ringTeeth}-${gear.sprocketTeeth}`}>
              <th scope="row">{format.gear(gear.ringTeeth, gear.sprocketTeeth)}</th>
              <td>{words.metres(format.number(gear.developmentM, 2))}</td>
              <td>{stepRatio === null ? '' : format.percent(stepRatio)}</td>
              <td>{format.speed((gear.developmentM * rpm) / 60)}</td>
              <td>
                {[
                  gear.crossed ? chart.noteCrossed : '',
                  twin === null ? '' : chart.noteTwin(format.gear(twin.ringTeeth, twin.sprocketTeeth)),
                ]
                  .filter((note) => note !== '')
                  .join(', ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}
