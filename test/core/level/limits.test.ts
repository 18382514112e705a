/** A level that is far too much is refused before anybody lists what is wrong with it, in a handful of sentences. */
import { describe, expect, it } from 'vitest';
import { parseLevel, parseLevelText } from '../../../src/core/level/parse.ts';
import type { Problem } from '../../../src/core/level/problems.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { LIMITS } from '../../../src/core/math/limits.ts';
import { levelFromBytes, levelToBytes } from '../../../src/core/transfer/share.ts';
import { BUNDLED } from '../ride/worlds.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const level = (BUNDLED[0] as { level: Level }).level;
const { problems: named, entries, bytes, deep } = LIMITS.level;

function problemsOf(value: unknown): readonly Problem[] {
  const parsed = parseLevel(value);
  return parsed.ok ? [] : parsed.problems;
}

function withUnknown(count: number): Record<string, unknown> {
  return { ...level, ...Object.fromEntries(Array.from({ length: count }, (_, i) => [`part${i}`, 1])) };
}

/** Lists in lists; `count` of them. */
function nest(count: number): unknown {
  let value: unknown = 1;
  for (let i = 0; i < count; i += 1) value = [value];
  return value;
}

describe('a level with far too much in it', () => {
  it('names a handful of problems and counts the others', () => {
    const problems = problemsOf(withUnknown(1_000));
    expect(problems).toHaveLength(named.most + 1);
    expect(problems.at(-1)?.code).toBe('more');
    expect(sentenceOf(problems.at(-1)!)).toContain(String(1_000 - named.most));
    // One too many is no reason to count: it is shown.
    expect(problemsOf(withUnknown(named.most)).map(({ code }) => code)).not.toContain('more');
    expect(problemsOf({ ...level, pieces: level.pieces.map(() => ({ kind: 'flat' })) }).length).toBeLessThan(
      10,
    );
  });

  it('is refused with one sentence when it came with 52,000 parts nobody knows', () => {
    expect(problemsOf(withUnknown(52_000)).map(({ code }) => code)).toEqual(['too-much']);
    const shared = levelFromBytes(levelToBytes(withUnknown(31_000) as unknown as Level));
    expect(shared.ok ? [] : shared.problems.map(({ code }) => code)).toEqual(['too-much']);
  });

  it('is refused with one sentence when its parts lie too deep inside each other', () => {
    const problems = problemsOf({ ...level, cues: nest(100_000) });
    expect(problems.map(({ code }) => code)).toEqual(['too-deep']);
    expect(problemsOf({ ...level, cues: nest(deep.most - 1) }).map(({ code }) => code)).not.toContain(
      'too-deep',
    );
    expect(problemsOf({ ...level, cues: nest(deep.most) }).map(({ code }) => code)).toContain('too-deep');
  });

  it('is refused before it is read when its text is too long', () => {
    const text = JSON.stringify(level);
    expect(parseLevelText(text.padEnd(bytes.most)).ok).toBe(true);
    const longer = parseLevelText(text.padEnd(bytes.most + 1));
    expect(longer.ok ? [] : longer.problems.map(({ code }) => code)).toEqual(['too-big']);
  });

  it('lets in the longest road by the metre', () => {
    // Four pieces of 5,000 steps each, every height with as many digits as there are.
    const heights = (from: number): number[] =>
      Array.from({ length: LIMITS.level.heights.most }, (_, i) => 1_234 + Math.sqrt(from + i + 0.5) / 10);
    const pieces = [0, 1, 2, 3].map((i) => ({
      kind: 'recorded' as const,
      stepM: 1,
      heightsM: heights(i * 4_999),
    }));
    const text = JSON.stringify(
      { ...level, stopLinesM: [], winds: [], surfaces: [], hidden: [], cues: [], pieces },
      null,
      2,
    );
    expect(text.length).toBeLessThan(bytes.most);
    expect(parseLevelText(text)).toMatchObject({ ok: true });
    expect(entries.most).toBeGreaterThan(4 * LIMITS.level.heights.most + 2_000);
  });
});
