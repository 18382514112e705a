/** The first steps with the levers, said aloud: on the page and in a ride by ear. */
import { loadsChain } from '../core/model/motor.ts';
import { hasHub } from '../core/model/shifters.ts';
import type { Bike } from '../core/model/types.ts';
import type { KeyAction, Keys } from '../core/settings/settings.ts';
import { keyName, keyWords } from './common.ts';
import { words } from './words.ts';

const say = words('ride');

type Step = 'rear-easier' | 'rear-harder' | 'ease';

export const stepDone = (step: Step, bike: Bike): string =>
  say(`done-${step}`, {
    gears: hasHub(bike) ? 'hub' : 'sprockets',
    motor: loadsChain(bike) ? 'pulls' : 'none',
  });

function spokenKey(keys: Keys, action: KeyAction): string {
  const code = keys[action][0] ?? '';
  const name = `spoken-${code}`;
  return keyWords.has(name) ? keyWords(name) : keyName(code);
}

/** All of a step: what was pressed in its place, what is asked for, and with which key. */
export function firstStepsAloud(
  shown: { readonly asked: Step | null; readonly instead: KeyAction | null; readonly done: Step | null },
  settings: { readonly keys: Keys; readonly holdMode: 'hold' | 'switch'; readonly bike: Bike },
): string {
  const { asked, instead, done } = shown;
  const { keys, holdMode, bike } = settings;
  if (asked === null) return done === null ? '' : stepDone(done, bike);
  const ask = say(`say-${asked}`, {
    key: spokenKey(keys, asked),
    how: holdMode === 'hold' ? 'hold' : 'press',
  });
  return instead === null ? ask : `${say(`wrong-${instead}`)} ${ask}`;
}
