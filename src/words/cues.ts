/** What is said on the way: the cues of levels. */
import type { CueCode } from '../core/level/schema.ts';

export const cueWords = {
  'hill-ahead': 'Hill ahead.',
  'ease-then-shift': 'Soft feet, then shift.',
  'two-easier-now': 'Two easier now.',
  'one-at-a-time': 'One gear at a time.',
  'rest-on-the-way-up': 'The rest on the way up, with soft feet each time.',
  'harder-again': 'Over the top: harder again.',
  'hold-rhythm': 'Keep your legs turning at one pace.',
  'ride-over': 'Short rise: stay in your gear and ride over it.',
  'small-ring': 'Smaller chainring now, on the flat.',
  'big-ring': 'Bigger chainring, there is room for it.',
  'straight-chain': 'Keep the chain straight.',
  'stop-ahead': 'Stop line ahead.',
  'easy-before-stop': 'Shift easier before you stop: you start in that gear.',
  'wind-ahead': 'Head wind ahead. It is a hill you cannot see.',
  'gravel-ahead': 'Gravel ahead. It pulls like a hill.',
  'look-far': 'Look far ahead.',
  'last-pitch': 'The last pitch.',
  'easier-lever': 'The right lever: easier.',
  'harder-lever': 'The right lever: harder.',
} satisfies Record<CueCode, string>;

/** The same where the gears are in the hub: the pressure goes off, and standing is the best time of all. */
const hubCueWords: Partial<Record<CueCode, string>> = {
  'ease-then-shift': 'Take the pressure off, then shift.',
  'rest-on-the-way-up': 'The rest on the way up: pressure off each time.',
  'small-ring': 'An easier gear now, on the flat.',
  'big-ring': 'A harder gear, there is room for it.',
  'easy-before-stop': 'Stop, then shift easier: a hub changes while you wait.',
};

/** What is said for a cue on a bike. */
export function cueText(cue: CueCode, hub: boolean): string {
  return (hub ? hubCueWords[cue] : undefined) ?? cueWords[cue];
}
