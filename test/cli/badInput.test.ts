/**
 * Whatever is wrong with what was given, the answer is one sentence on the error stream and exit code 2;
 * no stack trace, nothing on the other stream, and no file harmed.
 */
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BROKEN_LEVELS } from '../core/level/brokenLevels.ts';
import { levelFile, repository, run, start, workshop, WHO } from './workshop.ts';

const shop = workshop();
const level = levelFile('one-pitch-announced');
const brokenJson = shop.write('broken.json', '{"schema": 1');
const notes = shop.write('notes.txt', 'keep me');
const rideWords = ['ride', '--level', level, ...WHO, '--player', 'never'];
const steadyWords = ['steady', ...WHO];
mkdirSync(shop.path('folder.ndjson'));

/** Words, and what the sentence must speak of. */
const BAD: [string, string[], RegExp][] = [
  ['an unknown verb', ['fly'], /no verb "fly".*levels/],
  ['a verb that is a word of the language', ['constructor'], /no verb/],
  ['an unknown flag', ['gears', '--bike', 'road-2x11', '--speed', '9'], /"--speed" is not known.*--bike/],
  ['a flag of another verb', ['gears', '--bike', 'road-2x11', '--rider', 'child-9'], /"--rider"/],
  ['a flag with one dash', ['gears', '-bike', 'road-2x11'], /"-bike"/],
  ['a flag named __proto__', ['gears', '--__proto__', 'x'], /__proto__/],
  ['a flag without its value', ['gears', '--bike'], /--bike needs a value/],
  ['a flag instead of a value', ['gears', '--bike', '--json'], /--bike needs a value/],
  ['an empty value', ['gears', '--bike='], /--bike needs a value/],
  ['a flag given twice', ['gears', '--bike', 'road-2x11', '--bike', 'town-1x9'], /twice/],
  ['a value for a flag that stands alone', ['gears', '--bike', 'road-2x11', '--json=yes'], /stands alone/],
  ['a word nobody asked for', ['gears', 'road-2x11'], /"road-2x11"/],
  ['no bike', ['gears'], /--bike is missing/],
  ['an unknown bike', ['gears', '--bike', 'penny-farthing'], /penny-farthing.*kids-20-1x7.*gravel-1x12/],
  [
    'an unknown rider',
    ['steady', '--bike', 'road-2x11', '--rider', 'nobody', '--slope', '0'],
    /nobody.*child-9/,
  ],
  ['no slope', steadyWords, /--slope is missing/],
  ['a slope in percent', [...steadyWords, '--slope', '8'], /8 after --slope.*0\.08/],
  ['a slope with a decimal comma', [...steadyWords, '--slope', '0,08'], /"0,08".*point/],
  ['a slope with a percent sign', [...steadyWords, '--slope', '8%'], /"8%"/],
  ['a slope that is a word', [...steadyWords, '--slope', 'steep'], /"steep"/],
  ['a slope that is NaN', [...steadyWords, '--slope', 'NaN'], /"NaN"/],
  ['an endless slope', [...steadyWords, '--slope', 'Infinity'], /"Infinity"/],
  ['a slope beyond all numbers', [...steadyWords, '--slope', '1e999'], /out of range/],
  ['a slope in hexadecimal', [...steadyWords, '--slope', '0x1'], /"0x1"/],
  ['power below zero', [...steadyWords, '--slope', '0', '--power', '-5'], /-5 after --power.*out of range/],
  ['power of a horse team', [...steadyWords, '--slope', '0', '--power', '9999'], /out of range/],
  ['a hurricane', [...steadyWords, '--slope', '0', '--wind', '60'], /--wind.*out of range/],
  ['a level file that is missing', ['levels', shop.path('none.json')], /none\.json/],
  ['a folder instead of a level', ['levels', shop.folder], /level file/],
  [
    'a missing level to ride',
    rideWords.map((word) => (word === level ? shop.path('none.json') : word)),
    /There is no file/,
  ],
  ['a folder to ride', rideWords.map((word) => (word === level ? shop.folder : word)), /folder/],
  [
    'broken JSON to ride',
    rideWords.map((word) => (word === level ? brokenJson : word)),
    /not readable as JSON/,
  ],
  [
    'something that is no level to ride',
    rideWords.map((word) => (word === level ? join(repository, 'package.json') : word)),
    /no level.*schema/,
  ],
  ['no player', rideWords.slice(0, -2), /--player is missing.*late-easing/],
  ['an unknown player', [...rideWords.slice(0, -1), 'somebody'], /no player "somebody".*never/],
  ['a player file that is missing', [...rideWords.slice(0, -1), shop.path('none.json')], /There is no file/],
  ['a player file that is no JSON', [...rideWords.slice(0, -1), notes], /not readable as JSON/],
  ['a player file that is a level', [...rideWords.slice(0, -1), level], /cannot be ridden/],
  [
    'commands that are none',
    [...rideWords.slice(0, -1), shop.write('c.json', '[{"tick": 1}]')],
    /no list of commands/,
  ],
  [
    'commands out of order',
    [
      ...rideWords.slice(0, -1),
      shop.write(
        'o.json',
        JSON.stringify([9, 3].map((tick) => ({ tick, command: { kind: 'brake', on: true } }))),
      ),
    ],
    /order/,
  ],
  ['a seed with a fraction', [...rideWords, '--seed', '1.5'], /whole number/],
  ['a seed in letters', [...rideWords, '--seed', 'abc'], /a whole number, like 7/],
  ['a seed below zero', [...rideWords, '--seed', '-1'], /out of range/],
  ['a trace over a file that is no trace', [...rideWords, '--trace', notes], /left alone/],
  ['a trace over a folder', [...rideWords, '--trace', shop.path('folder.ndjson')], /folder/],
  [
    'a trace into a folder that is not there',
    [...rideWords, '--trace', shop.path('no/where.ndjson')],
    /folder does not exist/,
  ],
  ['a trace over the level', [...rideWords, '--trace', level], /read in this ride/],
  ['no recording', ['replay'], /--recording is missing/],
  ['a recording that is a level', ['replay', '--recording', level], /no recording/],
  ['a recording that is a folder', ['replay', '--recording', shop.folder], /folder/],
  ['a file name with a null byte', ['levels', 'a\0b'], /level file/],
  ['a file name as long as a book', ['levels', 'x'.repeat(5000)], /level file/],
];

describe('bad input', () => {
  it.each(BAD)('%s ends in a sentence and exit code 2', (_what, words, says) => {
    const { exitCode, out, err } = run(...words);
    expect([exitCode, err]).toEqual([2, expect.stringMatching(says)]);
    expect(err).toMatch(/[.)]$/);
    expect(err).not.toMatch(/\n\s+at |Error:|undefined|\[object/);
    if (words[0] !== 'levels' && !words.includes('--json')) expect(out).toBe('');
  });

  it('with --json it is the same, and an object on the other stream', () => {
    const plain = run('gears', '--bike', 'x');
    const { out, ...rest } = run('gears', '--bike', 'x', '--json');
    expect(rest).toEqual({ exitCode: plain.exitCode, err: plain.err });
    expect(JSON.parse(out)).toEqual({ fault: { sentence: plain.err, exitCode: 2 } });
  });

  it('no word at all brings the list of verbs, on the error stream', () => {
    const { exitCode, out, err } = run();
    expect([exitCode, out]).toEqual([2, '']);
    for (const verb of ['levels', 'gears', 'steady', 'ride', 'replay']) expect(err).toContain(`  ${verb} `);
  });

  it('a file that was refused is still what it was', () => {
    run(...rideWords, '--trace', notes);
    expect(shop.read('notes.txt')).toBe('keep me');
  });
});

describe('broken levels on disk', () => {
  it.each(BROKEN_LEVELS.map((broken, i) => ({ ...broken, name: `level-${i}.json` })))(
    '$what: exit code 2, place and sentence, file unharmed',
    ({ text, path, says, name }) => {
      const file = shop.write(name, text);
      const before = statSync(file).mtimeMs;
      const { exitCode, out, err } = run('levels', file, '--json');
      expect([exitCode, err]).toEqual([2, expect.stringContaining(name)]);
      const answer = JSON.parse(out) as {
        ok: boolean;
        problems: { file: string; path: string; sentence: string }[];
      };
      expect(answer.ok).toBe(false);
      const problem = answer.problems.find((candidate) => candidate.path === path);
      expect(problem?.file).toBe(file);
      expect(problem?.sentence).toMatch(says);
      const plain = run('levels', file);
      expect(plain.exitCode).toBe(2);
      expect(plain.out).toContain(problem?.sentence);
      expect(shop.read(name)).toBe(text);
      expect(statSync(file).mtimeMs).toBe(before);
    },
  );
});

describe('as a process', () => {
  it('started somewhere else, it says where the levels are', () => {
    const { status, stderr } = start(shop.folder, 'levels');
    expect([status, stderr.trim()]).toEqual([2, expect.stringMatching(/top of the repository/)]);
  });

  it.each([
    ['an unknown verb', ['fly']],
    [
      'a missing file',
      ['ride', '--level', 'none.json', '--bike', 'road-2x11', '--rider', 'child-9', '--player', 'late'],
    ],
    ['a broken level', ['levels', brokenJson]],
    ['a nonsense number', [...steadyWords, '--slope', 'NaN']],
  ])('%s ends with code 2 and a sentence', (_what, words) => {
    const { status, stderr } = start(repository, ...words);
    expect(status).toBe(2);
    expect(stderr.trim()).toMatch(/^[A-Z0-9"].*\.$/);
    expect(stderr).not.toMatch(/\n\s+at /);
  });
});
