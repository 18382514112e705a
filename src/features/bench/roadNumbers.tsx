/**
 * What stands on a drawn road: how steep it is between two places, how high it goes, how far along it is, and the shifts of
 * the reference ride (a triangle up for easier, down for harder).
 */
import type { ComponentChildren, JSX } from 'preact';
import { roadTicks, roundStep } from '../../charts/stripLayout.ts';
import { gearWords, useFormat } from './say.ts';
import type { Span } from './zoom.tsx';
import type { RideReport, ShiftReport } from '../../core/coach/types.ts';
import { afterMovement } from '../../core/model/transmission.ts';
import type { GearPlace, Machine } from '../../core/model/types.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';

export type Across = (atM: number) => number;

/** A part of a road as it is drawn, and where its places are (px). */
export interface DrawnRoad {
  readonly shown: Span;
  readonly heightAt: Across;
  readonly x: Across;
  readonly y: Across;
}

/** Numbers of gradient need so much room (px). */
const GRADIENT_GAP_PX = 46;
/** Heights stand at both ends of the drawing, so far into it (px). */
const HEIGHTS_PX = 60;
/** Longer roads are numbered in km or miles (m). */
const LONG_ROAD_M = 10_000;
const MILE_M = 1_609.344;

/** Mean gradients of equal parts of a road that has no gradients of its own to show. */
export function Gradients(props: DrawnRoad & { readonly part: Span }): JSX.Element {
  const { part, shown, heightAt, x, y } = props;
  const format = useFormat();
  const perM = (x(shown.toM) - x(shown.fromM)) / (shown.toM - shown.fromM);
  const stepM = Math.max(10, roundStep(GRADIENT_GAP_PX / Math.max(perM, 1e-6) / format.unitM)) * format.unitM;
  const texts: JSX.Element[] = [];
  const first = Math.ceil(Math.max(part.fromM, shown.fromM) / stepM) * stepM;
  for (let fromM = first; fromM + stepM <= Math.min(part.toM, shown.toM); fromM += stepM) {
    const atPx = x(fromM + stepM / 2);
    if (Math.min(atPx - x(shown.fromM), x(shown.toM) - atPx) < HEIGHTS_PX) continue;
    const ratio = (heightAt(fromM + stepM) - heightAt(fromM)) / stepM;
    const middleM = fromM + stepM / 2;
    texts.push(
      <text key={fromM} x={atPx} y={Math.max(16, y(middleM) - 12)} text-anchor="middle">
        {format.percent(Math.round(ratio * 100) / 100 || 0)}
      </text>,
    );
  }
  return (
    <g class="gradients" aria-hidden="true">
      {texts}
    </g>
  );
}

/** The highest and the lowest place that are shown, as heights over the start. */
export function Heights({ shown, heightAt, x, y }: DrawnRoad): JSX.Element {
  const format = useFormat();
  let [lowAtM, highAtM] = [shown.fromM, shown.fromM];
  const stepM = Math.max(1, (shown.toM - shown.fromM) / 400);
  for (let atM = shown.fromM; atM <= shown.toM; atM += stepM) {
    if (heightAt(atM) < heightAt(lowAtM)) lowAtM = atM;
    if (heightAt(atM) > heightAt(highAtM)) highAtM = atM;
  }
  const [left, right] = [x(shown.fromM), x(shown.toM)];
  const middleM = (shown.fromM + shown.toM) / 2;
  return (
    <g class="heights" aria-hidden="true">
      {[highAtM, lowAtM].map((atM, i) => (
        <g key={i}>
          <path d={`M${left} ${y(atM).toFixed(1)}H${right}`} />
          {/* On the far side, where the road itself and its gradients are not. */}
          <text
            x={atM > middleM ? left : right}
            y={y(atM) + (i === 0 ? -5 : 15)}
            text-anchor={atM > middleM ? 'start' : 'end'}
          >
            {format.distance(heightAt(atM) - heightAt(0))}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Distances along the lower edge. */
export function Axis(props: Pick<DrawnRoad, 'shown' | 'x'> & { readonly y: number }): JSX.Element {
  const { shown, x, y } = props;
  const format = useFormat();
  const isLong = shown.toM - shown.fromM > LONG_ROAD_M;
  const longUnitM = format.unitM === 1 ? 1_000 : MILE_M;
  const marks = roadTicks(shown, x(shown.toM) - x(shown.fromM), isLong ? longUnitM : format.unitM);
  // Numbers at the ends stay inside of the drawing.
  const anchorOf = (atM: number): 'start' | 'middle' | 'end' => {
    const share = (atM - shown.fromM) / (shown.toM - shown.fromM);
    return share < 0.02 ? 'start' : share > 0.97 ? 'end' : 'middle';
  };
  return (
    <g aria-hidden="true">
      {marks.map((atM) => (
        <text key={atM} x={x(atM)} y={y} text-anchor={anchorOf(atM)}>
          {isLong ? format.road(atM, 0) : format.distance(atM)}
        </text>
      ))}
    </g>
  );
}

/** A drawing in its own pixels; `label` says what it is. */
export function Drawing(props: {
  readonly width: number;
  readonly height: number;
  readonly label: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { width, height, label, children } = props;
  return (
    <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      {children}
    </svg>
  );
}

const say = words('bench');

/** A shift with the gear it leads to. */
interface ShownShift {
  readonly shift: ShiftReport;
  readonly easier: boolean;
  readonly gear: string;
}

/** Follows both derailleurs, beginning in the gear the ride began in. */
export function shownShifts(
  shifts: readonly ShiftReport[],
  machine: Machine,
  start: GearPlace,
): readonly ShownShift[] {
  let place = start;
  return shifts.map((shift) => {
    place = afterMovement(place, shift);
    return {
      shift,
      easier: shift.direction === 'easier',
      gear: gearWords(machine, place),
    };
  });
}

/** What a shift is, in words. */
export function shiftWords({ shift, easier, gear }: ShownShift, format: Format): string {
  return say('reference-shift', {
    direction: easier ? 'easier' : 'harder',
    at: format.distance(shift.distanceM),
    gear,
  });
}

export function ShiftMarks(props: {
  readonly report: RideReport;
  readonly x: (atM: number) => number;
  readonly y: (atM: number) => number;
}): JSX.Element {
  const { report, x, y } = props;
  return (
    <g class="shift-marks" aria-hidden="true">
      {report.shifts.map((shift, index) => {
        const easier = shift.direction === 'easier';
        const at = `translate(${x(shift.distanceM).toFixed(1)} ${(y(shift.distanceM) + 16).toFixed(1)})`;
        return (
          <path
            key={`${index}`}
            class={easier ? 'easier' : 'harder'}
            transform={at}
            d={easier ? 'M0 -6 6 5H-6Z' : 'M0 6 6 -5H-6Z'}
          />
        );
      })}
    </g>
  );
}
