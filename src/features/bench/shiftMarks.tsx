/** The shifts of the reference ride on the profile: a triangle up for easier, down for harder, each with its words. */
import type { JSX } from 'preact';
import type { RideReport, ShiftReport } from '../../core/coach/types.ts';
import { afterMovement } from '../../core/model/transmission.ts';
import type { GearPlace, Machine } from '../../core/model/types.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { gearWords } from './say.ts';

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
