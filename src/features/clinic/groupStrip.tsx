/**
 * A road as a group took it: its pitches, where the middle of the group and the best ride had the gear for each, and
 * how many riders were too early, about right and too late; on paper gear and cadence as well. Nobody's own line is
 * drawn. What is framed and counted is the one finding of the road.
 */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { useSize } from '../../ui/hooks.ts';
import type { GroupLines, RoadPicture } from '../../core/group/picture/group.ts';
import type { GroupPitch } from '../../core/group/picture/groupPitches.ts';
import type { Course } from '../../core/course/types.ts';
import { roadPaths } from '../../charts/paths.ts';
import { roadTicks } from '../../charts/stripLayout.ts';
import type { Format } from '../../words/format.ts';
import { KINDS, mostlyNeverReady, ridersBy, pitchName } from './findings.ts';
import {
  bandPath,
  boardFont,
  type GroupLayout,
  groupLayout,
  linePath,
  scaleOf,
  type ShownTracks,
} from './groupLayout.ts';
import { words } from '../../words/words.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const say = words('clinic');

interface GroupStripProps {
  readonly course: Course;
  readonly road: RoadPicture;
  readonly format: Format;
  readonly tracks: ShownTracks;
  /** Pitches are called hills. */
  readonly hills: boolean;
  /** A fixed size instead of the room there is, for paper (px). */
  readonly size?: { readonly width: number; readonly height: number; readonly font: number };
}

export function GroupStrip(props: GroupStripProps): JSX.Element {
  const { course, road, format, size } = props;
  const [measured, box] = useSize();
  const id = useId();
  // Gear and cadence are known of rides that could be ridden again.
  const tracks = road.strip === null && props.tracks === 'all' ? 'taken' : props.tracks;
  const layout = groupLayout(
    size?.width ?? measured.width,
    size?.height ?? measured.height,
    size?.font ?? boardFont(measured.width),
    tracks,
  );
  const { strip } = road;
  const domain = { fromM: 0, toM: course.lengthM };
  return (
    <div class={size === undefined ? 'group-strip fills' : 'group-strip'}>
      <div class="group-strip-box" ref={box}>
        <svg
          viewBox={`0 0 ${layout.width} ${layout.height}`}
          role="img"
          aria-labelledby={id}
          font-size={layout.font}
        >
          <title id={id}>
            {say('picture-stripDesc', { length: format.distance(course.lengthM), rides: road.rides })}
          </title>
          <Road {...props} tracks={tracks} layout={layout} />
          {strip !== null && layout.gear !== null && (
            <Values strip={strip} part="development" track={layout.gear} layout={layout} />
          )}
          {strip !== null && layout.cadence !== null && (
            <Values strip={strip} part="cadenceRpm" track={layout.cadence} layout={layout} />
          )}
          {roadTicks(domain, (layout.right - layout.left) * (14 / layout.font), format.unitM).map((m) => (
            <text
              key={m}
              class="strip-number"
              x={layout.x(m, course.lengthM)}
              y={layout.height - 6}
              text-anchor={m === 0 ? 'start' : m > course.lengthM * 0.96 ? 'end' : 'middle'}
            >
              {format.distance(m)}
            </text>
          ))}
        </svg>
      </div>
      {tracks !== 'road' && <Legend marks={strip !== null} lines={tracks === 'all'} />}
    </div>
  );
}

function Road(props: GroupStripProps & { readonly layout: GroupLayout }): JSX.Element {
  const { course, road, format, layout, tracks, hills } = props;
  const { left, right, font } = layout;
  const paths = roadPaths(course, { fromM: 0, toM: course.lengthM, left, right, ...layout.road });
  const x = (m: number): number => layout.x(m, course.lengthM);
  const feet = course.pitches.map(({ footM }) => x(footM));
  const apart = feet.reduce((least, at, i) => Math.min(least, (feet[i + 1] ?? right) - at), right - left);
  const bar = Math.max(6, Math.min(apart / 3.6, font * 2.2));
  const bottom = (layout.cadence ?? layout.bars ?? layout.road).bottom;
  return (
    <>
      {course.pitches.map(({ footM, endM, steepestRatio }, i) => {
        const at = x(footM);
        const title = pitchName(i, hills);
        const from = at - 1.6 * bar - 6;
        const label = font * (apart < font * 7 ? 1 : apart > font * 4 ? 7 : 4);
        return (
          <g key={footM}>
            {tracks !== 'road' && road.verdict.pitch === i && (
              <rect
                class="strip-worst"
                data-pitch={i}
                x={from}
                y={2}
                width={Math.max(x(endM), at + 1.6 * bar, at + label) + 6 - from}
                height={bottom + 4}
                rx="8"
              />
            )}
            <path class="strip-foot" d={`M${at} ${font * 0.4}V${bottom}`} />
            <text class="strip-label" x={at + 6} y={8 + font}>
              {apart < font * 7 ? i + 1 : title}
              {apart > font * 4 && (
                <tspan class="strip-aside" dx="6">
                  {format.percent(steepestRatio)}
                </tspan>
              )}
            </text>
          </g>
        );
      })}
      <path d={paths.ground} fill="var(--sand)" />
      <path d={paths.hatching} stroke="var(--ink)" stroke-width="1.4" />
      <Stroke d={paths.outline} width={4} stroke-linejoin="round" />
      {tracks !== 'road' &&
        road.pitches.map((pitch) => (
          <Taken key={pitch.index} {...{ pitch, layout, bar, x, road }} y={(m) => paths.y(m)} />
        ))}
    </>
  );
}

/** One pitch: where the gear for it was in, on the road; and how many took it how, as bars before, at and after its foot. */
function Taken(props: {
  readonly pitch: GroupPitch;
  readonly road: RoadPicture;
  readonly layout: GroupLayout;
  /** Width of a bar (px). */
  readonly bar: number;
  readonly x: (distanceM: number) => number;
  readonly y: (distanceM: number) => number;
}): JSX.Element | null {
  const { pitch, road, layout, bar, x, y } = props;
  const { footM, referenceReadyBeforeFootM: best } = pitch;
  // Who never had the gear stands in the numbers at the end of the pitch; nobody was ready there.
  const ready = mostlyNeverReady(pitch) ? null : pitch.readyBeforeFootM;
  const { bars, font } = layout;
  if (footM === null || bars === null || pitch.rides === 0) return null;
  const most = road.pitches.reduce((all, { riders }) => Math.max(all, riders), 1);
  const room = bars.bottom - bars.top - font * 1.2;
  // The group stands on the road, the best ride hangs below it.
  const wedge = (m: number, kind: string, size: number): JSX.Element => (
    <path class={kind} d={`M${x(m)} ${y(m) - 3 * Math.sign(size)}l${size * 0.6} ${-size}h${-1.2 * size}Z`} />
  );
  return (
    <g>
      {ready !== null && (
        <path
          class="strip-half"
          d={placesBetween(footM - ready.threeQuarters, footM - ready.quarter)
            .map((m, i) => `${i === 0 ? 'M' : 'L'}${x(m)} ${y(m) - font * 0.4}`)
            .join('')}
          stroke-width={font * 0.6}
        />
      )}
      {best !== null && wedge(footM - best, 'strip-best-mark', -1.3 * font)}
      {ready !== null && wedge(footM - ready.middle, 'strip-middle-mark', font * 1.3)}
      <path class="strip-base" d={`M${x(footM) - 1.5 * bar} ${bars.bottom}h${3 * bar}`} />
      {KINDS.map((kind, i) => {
        const riders = ridersBy(pitch, kind);
        const height = (room * riders) / most;
        const at = x(footM) + (i - 1.5) * bar;
        return (
          <g key={kind} data-bar={kind} data-pitch={pitch.index} data-riders={riders}>
            <title>{say(`picture-barOf-${kind}`, { count: riders, all: pitch.riders })}</title>
            <rect
              class={`strip-bar ${kind}`}
              x={at + 1}
              y={bars.bottom - height}
              width={bar - 2}
              height={height}
            />
            {riders > 0 && (
              <text class="strip-number" x={at + bar / 2} y={bars.bottom - height - 4} text-anchor="middle">
                {riders}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** So close that a line through them follows the road (m). */
function placesBetween(fromM: number, toM: number): readonly number[] {
  const steps = Math.max(1, Math.ceil((toM - fromM) / 5));
  return Array.from({ length: steps + 1 }, (_, i) => fromM + ((toM - fromM) * i) / steps);
}

/** One track of values: the middle half of the group, its middle, the best ride. */
function Values(props: {
  readonly layout: GroupLayout;
  readonly strip: GroupLines;
  readonly part: 'development' | 'cadenceRpm';
  readonly track: { readonly top: number; readonly bottom: number };
}): JSX.Element {
  const { strip, part, track, layout } = props;
  const best = strip.references[0]?.line[part] ?? new Uint8Array();
  const spread = strip[part];
  const scale = scaleOf([spread.quarter, spread.threeQuarters, best], track, part === 'development');
  const place = (i: number): number => layout.x(i * strip.stepM, strip.lengthM);
  return (
    <g>
      <text class="strip-label" x={4} y={(track.top + track.bottom) / 2}>
        {say(`picture-tracks-${part}`)}
      </text>
      <path class="strip-band" d={bandPath(spread.quarter, spread.threeQuarters, place, scale)} />
      <path class="strip-best" d={linePath(best, place, scale)} />
      <path class="strip-middle" d={linePath(spread.middle, place, scale)} />
    </g>
  );
}

/** What is what: the marks on the road, the bars, and the lines of the tracks below. */
function Legend(props: { readonly marks: boolean; readonly lines: boolean }): JSX.Element {
  return (
    <ul class="wrap group-legend">
      {props.marks && (
        <>
          <li>
            <svg viewBox="0 0 44 18" aria-hidden="true">
              <path class="strip-half" d="M2 12H42" stroke-width="8" />
              <path class="strip-middle-mark" d="M22 16l8 -14h-16Z" />
            </svg>
            {say('picture-legend-middle')}
          </li>
          <li>
            <svg viewBox="0 0 44 18" aria-hidden="true">
              <path class="strip-best-mark" d="M22 2l8 14h-16Z" />
            </svg>
            {say('picture-legend-best')}
          </li>
        </>
      )}
      {KINDS.map((kind) => (
        <li key={kind}>
          <svg viewBox="0 0 44 18" aria-hidden="true">
            <rect class={`strip-bar ${kind}`} x="14" y="2" width="16" height="15" />
          </svg>
          {say(`picture-timing-${kind}`)}
        </li>
      ))}
      {props.lines && (
        <>
          <li>
            <svg viewBox="0 0 44 18" aria-hidden="true">
              <path class="strip-band" d="M2 2H42V16H2Z" />
              <path class="strip-middle" d="M2 9H42" />
            </svg>
            {say('picture-legend-lines')}
          </li>
          <li>
            <svg viewBox="0 0 44 18" aria-hidden="true">
              <path class="strip-best" d="M2 9H42" />
            </svg>
            {say('picture-legend-bestLine')}
          </li>
        </>
      )}
    </ul>
  );
}
