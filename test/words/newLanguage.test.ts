/**
 * The guide "How to add a language" in DEVELOPERS.md, done once: a sixth language with two messages of its own, Esperanto.
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carriedWords, ENGLISH, languages, wordFiles } from '../../assets/words/carry.ts';
import { speak, spokenLocale, take, UNTRANSLATED, words } from '../../src/words/words.ts';

const GUIDE = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
const folder = `${mkdtempSync(join(tmpdir(), 'words-'))}/`;

beforeAll(() => {
  mkdirSync(`${folder}eo`);
  writeFileSync(`${folder}eo/start.ftl`, 'ride = Biciklu\n');
  writeFileSync(
    `${folder}eo/levels.ftl`,
    'pitches =\n    { $count ->\n        [one] { $count } krutaĵo\n       *[other] { $count } krutaĵoj\n    }\n',
  );
  for (const file of wordFiles()) {
    take(ENGLISH, file, carriedWords(ENGLISH, file));
    take('eo', file, carriedWords('eo', file, folder));
  }
});
afterAll(() => {
  speak(ENGLISH);
  rmSync(folder, { recursive: true });
});

describe('a language is added', () => {
  it('by making a folder, and nothing else', () => {
    expect(languages(folder)).toEqual(['eo']);
  });

  it('and says what is translated, and English for the rest', () => {
    const start = words('start');
    const english = start('ride');
    speak('eo');
    expect(start('ride')).toBe('Biciklu');
    expect(english).not.toBe('Biciklu');
    const levels = words('levels');
    expect([1, 2].map((count) => levels('pitches', { count }))).toEqual(['1 krutaĵo', '2 krutaĵoj']);
    const cautions = words('cautions');
    const said = carriedWords(ENGLISH, 'cautions').map(([id]) => cautions.coded(id as never, {}));
    speak(ENGLISH);
    expect(said).toEqual(carriedWords(ENGLISH, 'cautions').map(([id]) => cautions.coded(id as never, {})));
    expect(spokenLocale()).toBe(ENGLISH);
  });

  it('and what is missing is counted, so that the settings can say so', () => {
    const missing = (file: string) =>
      carriedWords('eo', file, folder).find(([id]) => id === UNTRANSLATED)?.[1];
    const all = (file: string): number =>
      carriedWords(ENGLISH, file).filter(([id]) => !id.startsWith('-')).length;
    expect(missing('start')).toBe(String(all('start') - 1));
    expect(missing('cautions')).toBe(String(all('cautions')));
  });

  it('beginning with files that are there', () => {
    const steps = /\*\*a language\*\*[\s\S]*?\*\*a migration\*\*/.exec(GUIDE)?.[0] ?? '';
    const named = [...steps.matchAll(/`(\w+)\.ftl`/g)].map(([, file]) => file);
    expect(named.length).toBeGreaterThan(3);
    expect(named.filter((file) => !wordFiles().includes(file ?? ''))).toEqual([]);
  });
});
