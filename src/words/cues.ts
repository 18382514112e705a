/** What is said on the way for a cue of a level; on a bike with gears in the hub some things are the other way round. */
import type { CueCode } from '../core/level/schema.ts';
import { loadsChain } from '../core/model/motor.ts';
import { hasHub } from '../core/model/shifters.ts';
import type { Bike } from '../core/model/types.ts';
import { words } from './words.ts';

const say = words('cues');

/** What is said for a cue, on a bike if one is known: a hub wants the pressure off, a motor at the crank time to let go. */
export function cueText(cue: CueCode, bike?: Bike): string {
  const gears = bike !== undefined && hasHub(bike) ? 'hub' : 'sprockets';
  const motor = bike !== undefined && loadsChain(bike) ? 'pulls' : 'none';
  return say(cue, { gears, motor });
}
