/** Levels as short texts: what goes in comes out, and whatever is wrong with a text becomes a sentence. */
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bytesFromText, textFromBytes } from '../../../src/core/transfer/base64.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import { levelFromBytes, levelToBytes, packBytes, unpackText } from '../../../src/core/transfer/share.ts';
import { applyEdit, startHistory } from '../../../src/core/level/edit.ts';
import type { ParseResult } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { LIMITS } from '../../../src/core/math/limits.ts';
import { BUNDLED } from '../ride/worlds.ts';
import { edits, levelOf, recordedLevel } from '../level/benchLevels.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

/** A level as a page without compression shares it. */
const levelToText = (level: Level): string => packBytes(levelToBytes(level), 'plain');

const RUNS = { numRuns: 2_000, seed: 99 };

function received(text: string): ParseResult {
  const opened = unpackText(text);
  if (!opened.ok) return opened;
  return levelFromBytes(opened.packing === 'plain' ? opened.bytes : inflateRawSync(opened.bytes));
}

const codeOf = (result: ParseResult): string => (result.ok ? 'a level' : (result.problems[0]?.code ?? ''));

describe('a shared level', () => {
  const all = [
    ...BUNDLED.map(({ level }) => level),
    recordedLevel('Größe 🚴'),
    levelOf({ title: '"\\\u2028\u0000' }),
  ];

  it.each(all.map((level) => [level.id, level] as const))(
    '%s comes back exactly, plain and compressed',
    (_, level) => {
      expect(received(levelToText(level))).toEqual({ ok: true, level });
      const small = packBytes(new Uint8Array(deflateRawSync(levelToBytes(level))), 'deflated');
      expect(received(small)).toEqual({ ok: true, level });
      expect(small).toMatch(/^1d[0-9a-f]{16}[A-Za-z0-9_-]+$/);
      expect(received(levelToText(parseLevel(level).ok ? level : levelOf({})))).toEqual({ ok: true, level });
    },
  );

  it('is short: two recorded kilometres fit into a QR code of 2,900 bytes, a drawn level into 1,000', () => {
    const length = (level: (typeof all)[number]): number =>
      packBytes(new Uint8Array(deflateRawSync(levelToBytes(level))), 'deflated').length;
    expect(length(recordedLevel())).toBeLessThan(2_900);
    for (const { level } of BUNDLED) expect(length(level)).toBeLessThan(1_000);
  });

  it('keeps heights finer than a millimetre as they are', () => {
    const heightsM = [0, 0.12345678, 0.3, 1 / 3, 0.5, 0.1 + 0.2, 1, 1, 1, 1, 1];
    const level = levelOf({ pieces: [{ kind: 'recorded', stepM: 10, heightsM }] });
    expect(received(levelToText(level))).toEqual({ ok: true, level });
  });
});

describe('a text that is no shared level', () => {
  const text = levelToText(levelOf({}));
  it.each([
    ['nothing', '', 'not-shared'],
    ['something else', 'https://example.org/#level', 'not-shared'],
    ['the first half', text.slice(0, 200), 'damaged'],
    ['one letter changed', text.slice(0, -5) + (text.at(-5) === 'A' ? 'B' : 'A') + text.slice(-4), 'damaged'],
    ['the head of another', levelToText(recordedLevel()).slice(0, 18) + text.slice(18), 'damaged'],
    ['a newer version', text.replace(/^1/, '7'), 'newer-version'],
    ['far too much', 'A'.repeat(LIMITS.link.levelCharacters.most + 1), 'too-big'],
    ['no JSON in it', packBytes(Uint8Array.of(1, 2, 3), 'plain'), 'not-json'],
    ['no level in it', packBytes(Uint8Array.of(0x5b, 0x5d), 'plain'), 'not-a-level'],
    ['an unknown packing', text.replace(/^1p/, '1z'), 'damaged'],
  ])('%s gets a sentence', (_, wrong, code) => {
    const result = received(wrong);
    expect(codeOf(result)).toBe(code);
    expect(result.ok ? '' : sentenceOf(result.problems[0]!)).toMatch(/^[A-Z].+\.$/);
  });

  it('blanks and line breaks of a mail do not matter', () => {
    expect(received(` ${text.slice(0, 40)}\r\n ${text.slice(40)}\n`).ok).toBe(true);
  });

  it('bytes that swell beyond any level are refused', () => {
    expect(codeOf(levelFromBytes(new Uint8Array(LIMITS.link.unpackedBytes.most + 1)))).toBe('too-big');
  });

  it('2,000 spoiled texts never crash and never pass for another level', () => {
    const sent = levelOf({});
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(text.length), fc.nat(4), fc.string({ maxLength: 4 })), {
          minLength: 1,
          maxLength: 3,
        }),
        (changes) => {
          const spoiled = changes.reduce(
            (t, [at, cut, put]) => t.slice(0, at) + put + t.slice(at + cut),
            text,
          );
          const result = received(spoiled);
          if (result.ok) expect(result.level).toEqual(sent);
          else expect(result.problems.every((problem) => sentenceOf(problem).length > 10)).toBe(true);
        },
      ),
      RUNS,
    );
  });

  it('2,000 well-packed texts with anything in them end in a level or in sentences', () => {
    const pieces = fc.array(
      fc.record({ kind: fc.constant('recorded'), stepM: fc.nat(20), risesMm: fc.anything() }),
    );
    const content = fc.oneof(
      fc.anything(),
      fc.record({ schema: fc.constant(1), pieces }),
      pieces.map((list) => ({ ...levelOf({}), pieces: list })),
    );
    fc.assert(
      fc.property(content, (value) => {
        const json = JSON.stringify(value, (_, item: unknown) => (typeof item === 'bigint' ? 1 : item)) ?? '';
        const result = received(packBytes(new TextEncoder().encode(json), 'plain'));
        if (!result.ok) expect(sentenceOf(result.problems[0]!)).toMatch(/\S{2,}/);
      }),
      RUNS,
    );
  });
});

describe('spoiled levels', () => {
  it('2,000 edited levels are a level or have problems with sentences', () => {
    fc.assert(
      fc.property(fc.array(edits, { maxLength: 8 }), (list) => {
        const { present } = list.reduce(
          (history, edit) => applyEdit(history, edit),
          startHistory(levelOf({})),
        );
        const result = parseLevel(present);
        if (!result.ok) {
          for (const problem of result.problems)
            expect([typeof problem.path, sentenceOf(problem).length > 10]).toEqual(['string', true]);
          return;
        }
        expect(received(levelToText(result.level))).toEqual({ ok: true, level: result.level });
      }),
      RUNS,
    );
  });
});

describe('letters for bytes', () => {
  it('are the same as those of the host', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const text = textFromBytes(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(bytesFromText(text)).toEqual(bytes);
      }),
      { seed: 1 },
    );
  });

  it('that were not made from bytes are refused', () => {
    expect(['A', 'AB+C', 'AB', 'AAB'].map((text) => bytesFromText(text))).toEqual([null, null, null, null]);
  });
});
