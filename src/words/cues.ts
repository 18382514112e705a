/**
 * What is said on the way for a cue of a level; on a bike with gears in the hub some things are the other way round. And
 * the speed at which a motor falls silent, of which levels and pages speak.
 */
import type { CueCode } from '../core/level/schema.ts';
import { CUT_OFF_MPS, loadsChain } from '../core/model/motor.ts';
import { hasHub } from '../core/model/shifters.ts';
import type { Bike } from '../core/model/types.ts';
import type { Format } from './format.ts';
import { words } from './words.ts';

const say = words('cues');

/** What is said for a cue, on a bike if one is known: a hub wants the pressure off, a motor at the crank time to let go. */
export function cueText(cue: CueCode, bike?: Bike): string {
  const gears = bike !== undefined && hasHub(bike) ? 'hub' : 'sprockets';
  const motor = bike !== undefined && loadsChain(bike) ? 'pulls' : 'none';
  return say(cue, { gears, motor });
}

/** The speed above which a motor gives nothing, as people know it: 25 km/h, 15.5 mph. */
export const helpLimit = ({ speed, unitM }: Format): string => speed(CUT_OFF_MPS, unitM === 1 ? 0 : 1);
