/** A level as a link and back, and links that are broken or meant to harm. */
import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { levelHash } from '../../../src/core/level/build.ts';
import { packBytes } from '../../../src/core/transfer/share.ts';
import { parseAddress } from '../../../src/state/address.ts';
import { levelOfText, linkOf, sharedText } from '../../../src/features/bench/shareLink.ts';
import { freshLevel } from '../../../src/features/bench/fresh.ts';
import { recordedLevel } from './levels.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const BASE = 'https://example.org/game/?x=1#bench/edit';
const opened = async (link: string) => {
  const text = sharedText(parseAddress(new URL(link).hash).rest);
  return text === null ? null : levelOfText(text);
};

describe('a link', () => {
  it('brings the same level to another browser', async () => {
    for (const level of [recordedLevel(), freshLevel('Größe “<b>”', 'Böse.')]) {
      const link = await linkOf(level, BASE);
      expect(link).toMatch(/^https:\/\/example\.org\/game\/#bench\/level\.[\w-]+$/);
      const result = await opened(link);
      if (result === null || !result.ok) throw new Error('the link opens');
      expect(result.level).toEqual(level);
      expect(levelHash(result.level)).toBe(levelHash(level));
    }
  });

  it('of two recorded kilometres is short enough for a code', async () => {
    expect((await linkOf(recordedLevel(), BASE)).length).toBeLessThan(1_400);
  });

  it('that was cut or changed says so', async () => {
    const link = await linkOf(recordedLevel(), BASE);
    for (const bad of [link.slice(0, -3), link.replace(/.$/, (c) => (c === 'A' ? 'B' : 'A')), `${link}!`]) {
      const result = await opened(bad);
      expect(result?.ok).toBe(false);
      if (result?.ok === false) expect(sentenceOf(result.problems[0]!).length).toBeGreaterThan(20);
    }
  });

  it('that unpacks to gigabytes is refused', async () => {
    const bomb = deflateRawSync(Buffer.alloc(80_000_000));
    const result = await levelOfText(packBytes(new Uint8Array(bomb), 'deflated'));
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'too-big' }] });
  });

  it('that holds no packed bytes is refused', async () => {
    const result = await levelOfText(packBytes(new Uint8Array([1, 2, 3, 250]), 'deflated'));
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'not-packed' }] });
  });
});
