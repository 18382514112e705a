/** Words of the first steps with the levers, seen and heard. */
import { hasHub } from '../core/model/shifters.ts';
import type { Bike } from '../core/model/types.ts';
import type { KeyAction, Keys } from '../core/settings/settings.ts';
import { keyName } from './common.ts';

type Step = 'rear-easier' | 'rear-harder' | 'ease';

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

const done: Readonly<Record<Step, string>> = {
  'rear-easier': 'The chain climbs. Your legs spin.',
  'rear-harder': 'Slower legs, more push.',
  ease: 'Soft feet let the chain move. Now push on again.',
};

/** With the gears in the hub. */
const doneWithHub: Readonly<Record<Step, string>> = {
  ...done,
  'rear-easier': 'The hub takes it when you push less. Your legs spin.',
  ease: 'With the pressure off a hub shifts at once. Now push on again.',
};

const arrows: Readonly<Record<string, string>> = { '↑': 'up', '↓': 'down', '←': 'left', '→': 'right' };

function spokenKey(keys: Keys, action: KeyAction): string {
  const name = keyName(keys[action][0] ?? '');
  const arrow = arrows[name];
  return arrow === undefined ? name : `arrow ${arrow}`;
}

export const firstStepWords = {
  names,
  done: (step: Step, hub: boolean): string => (hub ? doneWithHub : done)[step],
  instead: (pressed: KeyAction): string => `That was ${names[pressed]}. Try this one:`,
  hold: 'hold',
  /** The pad is lit and has the same sign and word. */
  pad: 'tap',
  holdPad: 'hold',
  skip: 'Skip',
  /** All of it in a sentence. */
  spoken(
    shown: { readonly asked: Step | null; readonly instead: KeyAction | null; readonly done: Step | null },
    settings: { readonly keys: Keys; readonly holdMode: 'hold' | 'switch'; readonly bike: Bike },
  ): string {
    const { asked, instead, done: last } = shown;
    const { keys, holdMode, bike } = settings;
    if (asked === null) return last === null ? '' : (hasHub(bike) ? doneWithHub : done)[last];
    const how = asked === 'ease' && holdMode === 'hold' ? 'hold' : 'press';
    const before = instead === null ? '' : `That was ${names[instead]}. `;
    return `${before}For ${names[asked]} ${how} ${spokenKey(keys, asked)}.`;
  },
};
