/**
 * Every ride on one strip over the same road: pitches, where easier shifts were made against the best ride, gears
 * and cadence. Single rides are faint, the middle half of the group is a band, its middle a strong line.
 */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { useWidth } from '../../ui/useWidth.ts';
import { type RoadPicture, SHIFT_BIN_M, type GroupLines } from '../../core/group/picture/group.ts';
import type { RideLine } from '../../core/group/records/rideLine.ts';
import type { SpreadSeries } from '../../core/group/picture/spread.ts';
import type { Course } from '../../core/course/types.ts';
import { roadPaths } from '../../charts/road.ts';
import { type Domain, roadTicks } from '../../charts/stripLayout.ts';
import type { Format } from '../../words/format.ts';
import type { ClinicWords } from './words.ts';
import {
  bandPath,
  type GroupLayout,
  groupLayout,
  linePath,
  scaleOf,
  type ValueScale,
} from './groupLayout.ts';

/** More single lines than this only make a grey cloud. */
const MOST_LINES = 40;

interface GroupStripProps {
  readonly course: Course;
  readonly road: RoadPicture;
  readonly words: ClinicWords;
  readonly format: Format;
  /** How much is on it: the bare road, who was caught where, shifts, or everything. */
  readonly tracks: 'road' | 'caught' | 'shifts' | 'all';
  /** Pitches are called hills. */
  readonly hills: boolean;
  /** A fixed width instead of that of the page, for paper (px). */
  readonly width?: number;
}

/** The strip. */
export function GroupStrip(props: GroupStripProps): JSX.Element {
  const { course, road, words, format, tracks } = props;
  const [measured, box] = useWidth();
  const id = useId();
  const layout = groupLayout(
    props.width ?? measured,
    road.strip === null && tracks !== 'caught' ? 'road' : tracks,
  );
  const domain: Domain = { fromM: 0, toM: course.lengthM };
  const { strip } = road;
  return (
    <div class="group-strip" ref={box}>
      <svg
        viewBox={`0 0 ${layout.width} ${layout.height}`}
        role="img"
        aria-labelledby={id}
        font-size={layout.font}
      >
        <title id={id}>{words.picture.stripDesc(format.distance(course.lengthM), road.rides)}</title>
        <Road {...props} layout={layout} domain={domain} />
        {strip !== null && layout.shifts !== null && <Shifts {...{ strip, layout, words }} road={road} />}
        {strip !== null && layout.gear !== null && (
          <Values
            strip={strip}
            part="development"
            track={layout.gear}
            {...{ layout, label: words.picture.tracks.gear }}
          />
        )}
        {strip !== null && layout.cadence !== null && (
          <Values
            strip={strip}
            part="cadenceRpm"
            track={layout.cadence}
            {...{ layout, label: words.picture.tracks.cadence }}
          />
        )}
        {roadTicks(domain, layout.right - layout.left, format.unitM).map((m) => (
          <text
            key={m}
            class="strip-number"
            x={layout.x(m, course.lengthM)}
            y={layout.height - 6}
            text-anchor="middle"
          >
            {format.distance(m)}
          </text>
        ))}
      </svg>
      {layout.shifts !== null && <Legend words={words} lines={tracks === 'all'} />}
    </div>
  );
}

type Placed = { readonly layout: GroupLayout };

function Road(props: GroupStripProps & Placed & { readonly domain: Domain }): JSX.Element {
  const { course, road, words, format, layout, domain, tracks, hills } = props;
  const { left, right } = layout;
  const paths = roadPaths(course, { ...domain, left, right, ...layout.road });
  const x = (m: number): number => layout.x(m, course.lengthM);
  return (
    <>
      {course.pitches.map(({ footM, endM, steepestRatio }, i) => {
        const pitch = road.pitches[i];
        const worst = tracks !== 'road' && road.caughtPitch === i;
        const title = hills ? words.picture.answer.hill(i + 1) : words.picture.pitch(i + 1);
        return (
          <g key={footM}>
            {worst && (
              <rect
                class="strip-worst"
                x={x(footM) - 8}
                y={2}
                width={x(endM) - x(footM) + 16}
                height={layout.height - 32}
                rx="8"
              />
            )}
            <path class="strip-foot" d={`M${x(footM)} ${layout.namesTop}V${layout.height - 30}`} />
            <text class="strip-label" x={x(footM) + 6} y={layout.namesTop + layout.font * 0.85}>
              {layout.narrow ? i + 1 : title}
              <tspan class="strip-aside" dx="6">
                {format.percent(steepestRatio)}
              </tspan>
            </text>
            {tracks === 'caught' && pitch !== undefined && pitch.riders > 0 && (
              <text class="strip-caught" x={x(footM) + 6} y={layout.namesTop + layout.font * 2.1}>
                {layout.narrow
                  ? `${pitch.caughtRiders}/${pitch.riders}`
                  : words.picture.caughtShort(pitch.caughtRiders, pitch.riders)}
              </text>
            )}
          </g>
        );
      })}
      <path d={paths.ground} fill="var(--sand)" />
      <path d={paths.hatching} stroke="var(--ink)" stroke-width="1.4" />
      <path d={paths.outline} fill="none" stroke="var(--ink)" stroke-width="4" stroke-linejoin="round" />
    </>
  );
}

/** Easier shifts of the group as bars that stand on a line, those of the best ride as wedges below it. */
function Shifts(
  props: Placed & { readonly strip: GroupLines; readonly road: RoadPicture; readonly words: ClinicWords },
): JSX.Element {
  const { strip, layout, words } = props;
  const track = layout.shifts ?? { top: 0, bottom: 0 };
  const most = strip.easier.reduce((a, b) => Math.max(a, b), 1);
  const base = track.bottom - 18;
  const width = Math.max(3, layout.x(SHIFT_BIN_M, strip.lengthM) - layout.left - 1);
  const best = strip.references[0]?.line.easierAtM ?? new Uint16Array();
  return (
    <g>
      <TrackLabel layout={layout} track={track} label={words.picture.tracks.shifts} />
      {[...strip.easier].map((shifts, bin) =>
        shifts === 0 ? null : (
          <rect
            key={bin}
            class="strip-bar"
            x={layout.x(bin * SHIFT_BIN_M, strip.lengthM)}
            y={base - ((base - track.top) * shifts) / most}
            width={width}
            height={((base - track.top) * shifts) / most}
          />
        ),
      )}
      <path d={`M${layout.left} ${base}H${layout.right}`} stroke="var(--ink)" stroke-width="2" />
      {[...best].map((m, i) => {
        const at = layout.x(m, strip.lengthM);
        return <path key={`${m} ${i}`} class="strip-best-mark" d={`M${at} ${base + 2}l7 13h-14Z`} />;
      })}
    </g>
  );
}

/** One track of values: every ride, the middle half, the middle, the best ride. */
function Values(
  props: Placed & {
    readonly strip: GroupLines;
    readonly part: 'development' | 'cadenceRpm';
    readonly track: { readonly top: number; readonly bottom: number };
    readonly label: string;
  },
): JSX.Element {
  const { strip, part, track, layout, label } = props;
  const best = strip.references[0]?.line[part];
  const spread: SpreadSeries = strip[part];
  const lines: readonly Uint8Array[] = strip.lines.slice(0, MOST_LINES).map((line: RideLine) => line[part]);
  const scale: ValueScale = scaleOf(
    [...lines, ...(best === undefined ? [] : [best])],
    track,
    part === 'development',
  );
  const place = (i: number): number => layout.x(i * strip.stepM, strip.lengthM);
  return (
    <g>
      <TrackLabel layout={layout} track={track} label={label} />
      {lines.map((line, i) => (
        <path key={i} class="strip-each" d={linePath(line, place, scale)} />
      ))}
      <path class="strip-half" d={bandPath(spread.quarter, spread.threeQuarters, place, scale)} />
      {best !== undefined && <path class="strip-best" d={linePath(best, place, scale)} />}
      <path class="strip-middle" d={linePath(spread.middle, place, scale)} />
    </g>
  );
}

function TrackLabel(
  props: Placed & {
    readonly track: { readonly top: number; readonly bottom: number };
    readonly label: string;
  },
): JSX.Element {
  const { layout, track, label } = props;
  const y = layout.narrow ? track.top - 6 : (track.top + track.bottom) / 2;
  return (
    <text class="strip-label" x={layout.narrow ? layout.left : 4} y={y}>
      {label}
    </text>
  );
}

function Legend({ words, lines }: { readonly words: ClinicWords; readonly lines: boolean }): JSX.Element {
  const { legend } = words.picture;
  return (
    <ul class="group-legend">
      <li>
        <svg viewBox="0 0 44 18" aria-hidden="true">
          <path class="strip-bar" d="M6 17V8h8v9ZM16 17V2h8v15ZM26 17v-6h8v6Z" />
        </svg>
        {words.picture.tracks.shifts}
      </li>
      <li>
        <svg viewBox="0 0 44 18" aria-hidden="true">
          <path class="strip-best-mark" d="M10 3l7 13h-14Z" />
          <path class="strip-best" d="M22 10H44" />
        </svg>
        {legend.best}
      </li>
      {lines && (
        <li>
          <svg viewBox="0 0 44 18" aria-hidden="true">
            <path class="strip-half" d="M0 2H44V16H0Z" />
            <path class="strip-middle" d="M0 9H44" />
          </svg>
          {legend.middle}, {legend.half}
        </li>
      )}
    </ul>
  );
}
