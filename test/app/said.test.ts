/** What is said on the road beside the hints: nothing that could say the opposite of them. */
import { expect, it } from 'vitest';
import { defaultSettings, KEY_ACTIONS, type Keys } from '../../src/core/settings/settings.ts';
import { createSaid } from '../../src/app/ride/said.ts';
import { levelById } from '../core/ride/worlds.ts';

const keys = Object.fromEntries(KEY_ACTIONS.map((action, i) => [action, [`Key${i}`]])) as unknown as Keys;
const level = levelById('over-the-roots');

it('what was written for a place is silent while a hint tells the hands, and comes back after it', () => {
  const shown: (string | null)[] = [];
  let handsTold = false;
  const said = createSaid({
    level,
    settings: () => defaultSettings(keys),
    views: () => ({ say: (cue) => shown.push(cue) }),
    ear: () => null,
    handsTold: () => handsTold,
  });
  const [first] = level.cues;
  if (first === undefined || !('text' in first)) throw new Error('the level says nothing of its own');
  for (const told of [false, true, false]) {
    handsTold = told;
    said.say(first.text, null, false);
  }
  // A word of the game's own knows of the hints, and is left out elsewhere.
  handsTold = true;
  said.say('Look far ahead.', null, false);
  expect(shown).toEqual([first.text, null, first.text, 'Look far ahead.']);
});
