/**
 * Levels come in through one door: sound ones unharmed, broken ones with a place and a sentence for a
 * person, and whatever else somebody may drop in without a crash.
 */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelHash } from '../../../src/core/level/build.ts';
import { levelLengthM, parseLevel, parseLevelText, readUnfinished } from '../../../src/core/level/parse.ts';
import { BUNDLED } from '../ride/worlds.ts';
import { BROKEN_LEVELS } from './brokenLevels.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const first = BUNDLED[0];
if (first === undefined) throw new Error('there are no bundled levels');

describe('broken levels', () => {
  it('there are at least thirty', () => {
    expect(BROKEN_LEVELS.length).toBeGreaterThanOrEqual(30);
  });

  it.each(BROKEN_LEVELS)('$what is named with place and sentence', ({ text, path, says }) => {
    const parsed = parseLevelText(text);
    if (parsed.ok) throw new Error('it was taken for a sound level');
    const places = parsed.problems.map((problem) => problem.path);
    expect(places).toContain(path);
    const problem = parsed.problems.find((candidate) => candidate.path === path);
    expect(sentenceOf(problem!)).toMatch(says);
    for (const each of parsed.problems) {
      const { path: place, code } = each;
      const sentence = sentenceOf(each);
      expect(sentence).toMatch(/^("|[A-Z0-9-]|null|true|false)[\s\S]*[.…]$/);
      expect(sentence).not.toMatch(/undefined|NaN|\[object|Infinity|expected|\{\$/i);
      expect(sentence.length).toBeLessThan(400);
      expect(place.length).toBeLessThan(120);
      expect(code).toMatch(/^[a-z-]+$/);
    }
  });

  it('one fault is one problem, not an avalanche', () => {
    const counts = BROKEN_LEVELS.map(({ text }) => {
      const parsed = parseLevelText(text);
      return parsed.ok ? 0 : parsed.problems.length;
    });
    expect(counts.filter((count) => count > 3)).toEqual([]);
  });

  it('many faults are listed together, at most a handful and a count', () => {
    const level = { ...first.level, title: 1, seed: 'x', passMark: -1 };
    const parsed = parseLevel(level);
    expect(parsed.ok ? [] : parsed.problems.map((p) => p.path).sort()).toEqual(['passMark', 'seed', 'title']);
    const pieces = Array.from({ length: 100 }, () => ({ kind: 'flat', lengthM: -1 }));
    const avalanche = parseLevel({ ...first.level, pieces });
    expect(avalanche.ok ? 0 : avalanche.problems.length).toBe(9);
    expect(avalanche.ok ? '' : sentenceOf(avalanche.problems.at(-1)!)).toContain('92 more');
  });
});

describe('sound levels', () => {
  it('parts left out get their usual value and the value given is not changed', () => {
    const value = JSON.parse(first.text) as Record<string, unknown>;
    for (const key of ['joinM', 'light', 'winds', 'surfaces', 'hidden', 'cues', 'stopLinesM'])
      delete value[key];
    const before = JSON.stringify(value);
    const parsed = parseLevel(value);
    if (!parsed.ok) throw new Error(parsed.problems.map(sentenceOf).join(' '));
    expect([parsed.level.joinM, parsed.level.light, parsed.level.winds]).toEqual([10, 'day', []]);
    expect(JSON.stringify(value)).toBe(before);
  });

  it('a level written out and read again is the same level', () => {
    for (const { level } of BUNDLED) {
      const again = parseLevelText(JSON.stringify(level));
      expect(again).toEqual({ ok: true, level });
    }
  });

  it('an invisible mark before the first brace does no harm', () => {
    expect(parseLevelText(`\uFEFF${first.text}`).ok).toBe(true);
  });

  it('say in which language their words are, as a tag of BCP 47, and are the same road for it', () => {
    for (const lang of ['de', 'pt-BR', 'zh-Hant-TW']) {
      const parsed = parseLevel({ ...first.level, lang });
      expect(parsed.ok && [parsed.level.lang, levelHash(parsed.level)]).toEqual([
        lang,
        levelHash(first.level),
      ]);
    }
    for (const lang of ['', 'deutsch bitte', '12', 'd']) {
      const parsed = parseLevel({ ...first.level, lang });
      expect(parsed.ok ? [] : parsed.problems.map(({ path }) => path), lang).toEqual(['lang']);
    }
  });

  it('the fingerprint looks at road and weights, not at title, words or seed', () => {
    const { level } = first;
    expect(levelHash({ ...level, title: 'Other', sentence: 'Other.', seed: 1, cues: [] })).toBe(
      levelHash(level),
    );
    expect(levelHash({ ...level, joinM: level.joinM === 6 ? 7 : 6 })).not.toBe(levelHash(level));
    expect(levelHash({ ...level, weights: { ...level.weights, easing: 9 } })).not.toBe(levelHash(level));
  });

  it('the length of a level is that of its pieces; recorded ground counts its steps', () => {
    const pieces = [
      { kind: 'flat', lengthM: 120 },
      { kind: 'recorded', stepM: 10, heightsM: [0, 1, 1.5] },
    ] as const;
    expect(levelLengthM({ pieces: pieces.map((piece) => ({ ...piece, heightsM: [0, 1, 1.5] })) })).toBe(140);
  });
});

describe('levels that are still being made', () => {
  it('are read when every part is in shape, whether or not the parts fit together', () => {
    const { level } = first;
    const beyond = { ...level, stopLinesM: [19_000] };
    expect(parseLevel(beyond).ok).toBe(false);
    expect(readUnfinished(JSON.parse(JSON.stringify(beyond)))).toEqual(beyond);
    expect(readUnfinished(level)).toEqual(level);
    const halves = [null, [], 'a', { ...level, pieces: 3 }, { ...level, pieces: [{ kind: 'flat' }] }];
    for (const value of halves) expect(readUnfinished(value)).toBeNull();
  });
});

describe('anything at all', () => {
  it('500 random JSON values are refused with sentences, none crashes', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), (value) => {
        const parsed = parseLevel(value);
        expect(parsed.ok).toBe(false);
        if (!parsed.ok) for (const problem of parsed.problems) expect(sentenceOf(problem)).toMatch(/[.…]$/);
      }),
      { seed: 77, numRuns: 500 },
    );
  });

  it('2000 sound levels with one part replaced by anything are taken or refused, none crashes', () => {
    const keys = Object.keys(first.level);
    fc.assert(
      fc.property(fc.constantFrom(...keys), fc.jsonValue({ maxDepth: 3 }), (key, value) => {
        const parsed = parseLevel({ ...first.level, [key]: value });
        if (parsed.ok) return;
        // A road that has become shorter or longer is complained about where it matters.
        expect(parsed.problems.length).toBeGreaterThan(0);
        for (const problem of parsed.problems) expect(sentenceOf(problem)).not.toMatch(/undefined|\[object/);
      }),
      { seed: 78, numRuns: 2000 },
    );
  });

  it('a list a hundred thousand deep is refused like any other', () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    const parsed = parseLevelText(first.text.replace(/"title":\s*"[^"]*"/, `"title": ${deep}`));
    expect(parsed.ok ? [] : parsed.problems.map((p) => [p.path, sentenceOf(p)])).toEqual([
      ['', 'There is far more in this than any level has. Ask for it again, as a link or a file.'],
    ]);
  });
});
