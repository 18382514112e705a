/** What is said on the way for a cue of a level; on a bike with gears in the hub some things are the other way round. */
import type { CueCode } from '../core/level/schema.ts';
import { words } from './words.ts';

const say = words('cues');

export function cueText(cue: CueCode, hub = false): string {
  return say(cue, { gears: hub ? 'hub' : 'sprockets' });
}
