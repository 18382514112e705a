/** What a level says follows the language that is spoken now, unless somebody here wrote it. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carriedWords, ENGLISH } from '../../assets/words/carry.ts';
import { checkLevel, freeLevel } from '../../src/core/level/generate.ts';
import { levelWords } from '../../src/words/common.ts';
import { speak, take } from '../../src/words/words.ts';
import { ALL_LEVELS } from '../core/coach/riding.ts';

const bundled = ALL_LEVELS.map((level) => ({ ...level, title: `de ${level.id}` }));

beforeAll(() => {
  for (const language of [ENGLISH, 'de']) take(language, 'names', carriedWords(language, 'names'));
  speak('de');
});
afterAll(() => speak(ENGLISH));

describe('the words of a level', () => {
  it.each([
    ['everyone', undefined],
    ['children', undefined],
    ['children', 'hub'],
    ['everyone', 'crank-motor'],
  ] as const)('are said for a check ride (%s, %s)', (audience, needs) => {
    const level = checkLevel(7, audience, 'alone', needs);
    expect(levelWords(level, bundled)).toEqual({
      title: 'Vergleichsfahrt',
      sentence: 'Eine Straße, die du nicht kennst, ohne Hilfe.',
    });
  });

  it('are said for a free ride', () => {
    const level = freeLevel({ seed: 3, lengthM: 2000, hilliness: 0.4 });
    expect(levelWords(level, bundled).title).toBe('Freie Fahrt');
  });

  it('are those of the bundled level, however it was called when it was ridden', () => {
    const [level] = ALL_LEVELS;
    expect(levelWords(level!, bundled).title).toBe(`de ${level!.id}`);
  });

  it('are its own where somebody here drew it', () => {
    const own = { id: 'behind-our-club', title: 'Behind our club', sentence: 'Mind the dog.' };
    expect(levelWords(own, bundled)).toEqual(own);
  });
});
