/**
 * Which sounds an event makes at once. Pure: an event in, a list of sounds out; whether they can be
 * played at the moment is the player's business.
 */
import { CLEAN_LOAD, HEAVY_LOAD } from '../core/model/shift.ts';
import type { ShiftDone } from '../core/ride/trace.ts';
import type { RideEvent } from '../core/ride/types.ts';
import type { ShotName } from './sounds.ts';

/** `gain` 0 to 1 before the player's volumes; `rate` 1 as recorded. */
interface Shot {
  readonly name: ShotName;
  readonly gain: number;
  readonly rate: number;
}

/** Clean: the click alone. In between the crunch comes up under it. Heavy: the crunch, the click only a remainder. */
function shiftShots(event: ShiftDone): readonly Shot[] {
  if (event.hub === true) return hubShots(event);
  const crunch = Math.min(1, Math.max(0, (event.load - CLEAN_LOAD) / (HEAVY_LOAD - CLEAN_LOAD)));
  // A bigger sprocket is a bigger bell: an ear learns where on the cassette it is.
  const rate = event.derailleur === 'rear' ? Math.max(0.9, 1.07 - 0.015 * event.toIndex) : 1;
  const seat: Shot = {
    name: event.derailleur === 'rear' ? 'shift-click' : 'front-clunk',
    gain: 1 - 0.7 * crunch,
    rate,
  };
  if (crunch === 0) return [seat];
  return [seat, { name: 'shift-crunch', gain: crunch, rate: event.derailleur === 'rear' ? 1 : 0.88 }];
}

/** A hub that takes is a small click deep in the wheel; one that slips in under load is a knock. */
function hubShots({ load }: ShiftDone): readonly Shot[] {
  if (load <= CLEAN_LOAD) return [{ name: 'shift-click', gain: 0.8, rate: 0.82 }];
  return [
    { name: 'front-clunk', gain: 1, rate: 0.72 },
    { name: 'shift-crunch', gain: 0.35, rate: 0.7 },
  ];
}

/** What is heard of all other events; most are seen only. */
const HEARD: Readonly<Record<Exclude<RideEvent['kind'], 'shift-done'>, ShotName | null>> = {
  'shift-refused': 'shift-stop',
  'chain-dropped': 'chain-drop',
  'chain-restored': 'chain-back',
  'foot-down': 'foot-down',
  finished: 'finish',
  'shift-hung': null,
  'shift-waiting': null,
  'chain-crossed': null,
  'pushed-off': null,
  'stopped-at-line': null,
  'line-missed': null,
  'reserve-empty': null,
  'battery-empty': null,
  'reserve-back': null,
};

export function shotsOf(event: RideEvent): readonly Shot[] {
  if (event.kind === 'shift-done') return shiftShots(event);
  const name = HEARD[event.kind];
  return name === null ? [] : [{ name, gain: 1, rate: 1 }];
}
