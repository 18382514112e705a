/** Names that ask for nobody's real one: offered from lists, or typed and then made harmless. */
import { describe, expect, it } from 'vitest';
import { refusalOf, startQueue } from '../../../src/core/group/turnQueue.ts';
import { offerNicknames, ownNickname, readNickname } from '../../../src/core/group/nicknames.ts';
import { planWith } from './rides.ts';

const ALL = offerNicknames([], 10_000, 1);
const COLOURS = new Set(ALL.map((id) => id.split('-')[0] ?? ''));
const ANIMALS = new Set(ALL.map((id) => id.split('-')[1] ?? ''));

describe('nicknames', () => {
  it('offers free ones, different animals first, and the same for a seed', () => {
    const offered = offerNicknames(['red-fox'], 20, 3);
    expect(offered).toEqual(offerNicknames(['red-fox'], 20, 3));
    const animals = offered.map((id) => id.split('-')[1]);
    expect(new Set([...animals, 'fox']).size).toBe(21);
    expect(new Set(ALL).size).toBe(ANIMALS.size * COLOURS.size);
  });

  it('no colour is common in a group, nor among those who come late', () => {
    for (let seed = 1; seed <= 20; seed += 1)
      for (const taken of [[], ['blue-fox', 'blue-owl', 'blue-hare']]) {
        const group = [...taken, ...offerNicknames(taken, 24 - taken.length, seed)];
        for (const colour of COLOURS)
          expect(group.filter((id) => id.startsWith(`${colour}-`)).length, colour).toBeLessThanOrEqual(
            colour === 'blue' && taken.length > 0 ? 6 : 3,
          );
      }
  });

  it('every offered nickname can be read', () => {
    for (const id of offerNicknames([], 10_000, 1))
      expect(readNickname(id)).toMatchObject({ kind: 'listed' });
  });

  it.each([
    ['  Mia \t', '~Mia'],
    ['a\u0000b\u202Ec\u200Bd\nE', '~abcd E'],
    ['x'.repeat(10_000), `~${'x'.repeat(20)}`],
    ['😀'.repeat(30), `~${'😀'.repeat(20)}`],
    ['\ud800\udfff\ud800x', '~\u{103ff}x'],
    ['<script>alert(1)</script>', '~<script>alert(1)</sc'],
    ['\u200F\u202E \u0007', null],
    ['', null],
  ])('an own name %# is cleaned and cut', (text, id) => {
    expect(ownNickname(text)).toBe(id);
    if (id !== null) expect(readNickname(id)).toEqual({ kind: 'own', text: id.slice(1) });
  });

  it.each(['', '~', 'fox', 'red-', '-fox', 'red-fox-', '~a\u202E', `~${'x'.repeat(21)}`, '__proto__', '~ a'])(
    '%j is no nickname',
    (id) => {
      expect(readNickname(id)).toBeNull();
      expect(refusalOf(startQueue(planWith()), { kind: 'add', nickname: id })).toBe('not-a-nickname');
    },
  );
});
