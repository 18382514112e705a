/** Words of the first steps with the levers, seen and heard. */
import type { KeyAction, Keys } from '../core/settings/settings.ts';
import type { FirstStep, FirstStepShown } from '../state/firstSteps.ts';
import { keyName } from './common.ts';

const names: Readonly<Record<KeyAction, string>> = {
  'rear-easier': 'easier',
  'rear-harder': 'harder',
  'front-smaller': 'a smaller ring',
  'front-bigger': 'a bigger ring',
  ease: 'soft feet',
  press: 'pushing',
  coast: 'coasting',
  brake: 'the brake',
  pause: 'pause',
};

const done: Readonly<Record<FirstStep, string>> = {
  'rear-easier': 'The chain climbs. Your legs spin.',
  'rear-harder': 'Slower legs, more push.',
  ease: 'Soft feet let the chain move. Let go and push on.',
};

const arrows: Readonly<Record<string, string>> = { '↑': 'up', '↓': 'down', '←': 'left', '→': 'right' };

function spokenKey(keys: Keys, action: KeyAction): string {
  const name = keyName(keys[action][0] ?? '');
  const arrow = arrows[name];
  return arrow === undefined ? name : `arrow ${arrow}`;
}

export const firstStepWords = {
  names,
  done,
  instead: (pressed: KeyAction): string => `That was ${names[pressed]}. Try this one:`,
  hold: 'hold',
  pad: 'tap the lit pad',
  holdPad: 'hold the lit half',
  skip: 'Skip',
  /** All of it in a sentence. */
  spoken({ asked, instead, done: last }: FirstStepShown, keys: Keys): string {
    if (asked === null) return last === null ? '' : done[last];
    const how = asked === 'ease' ? 'hold' : 'press';
    const before = instead === null ? '' : `That was ${names[instead]}. `;
    return `${before}For ${names[asked]} ${how} ${spokenKey(keys, asked)}.`;
  },
};
