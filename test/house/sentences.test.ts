/** The core speaks codes: no sentence for a person stands in it, and the finder sees the ones it is shown. */
import { describe, expect, it } from 'vitest';
import { listFiles, readTexts } from './files.ts';
import { findSentences } from './sentences.ts';
import { readModule } from './syntax.ts';

const sentencesIn = (text: string): string[] =>
  findSentences(readModule('src/core/level/b.ts', text)).map((found) => found.text);

describe('the core speaks codes', () => {
  it('has no sentence for people in any of its files', () => {
    const sources = [...readTexts(listFiles())].filter(([path]) => /^src\/core\/.*\.ts$/.test(path));
    expect(sources.length).toBeGreaterThan(90);
    const found = sources.flatMap(([path, text]) =>
      findSentences(readModule(path, text)).map((one) => `${path}:${one.line} ${one.text}`),
    );
    expect(found).toEqual([]);
  });

  it.each([
    ["const a = 'This file is empty.';"],
    ['const a = `The road is ${lengthM} m long; it needs at least ${leastM} m.`;'],
    ['const a = (n: number) => `${n} chainrings are more than a bike has.`;'],
    ["const a = { code: 'x', sentence: 'Check commas, quotes and brackets.' };"],
    ["const a = say('Is that the road?');"],
    ['const a = `"${key}" is not a part of a plan. Remove it.`;'],
  ])('sees %s', (text) => {
    expect(sentencesIn(text)).toHaveLength(1);
  });

  it.each([
    ["const a = problem('pieces', 'too-short', { lengthM });"],
    ["throw new Error('a machine has at least one gear');"],
    ['const key = `${record.deviceId} ${record.nickname}`;'],
    ["const a = { title: 'Check ride', sentence: 'A road you have not seen, without help.' };"],
    ["import { a } from '../level/parse.ts';"],
    ['const version = `${name}.${seq}`;'],
  ])('lets pass %s', (text) => {
    expect(sentencesIn(text)).toEqual([]);
  });
});
