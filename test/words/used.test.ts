/** Every message is said somewhere: what nobody says any more would be translated for nothing. */
import { describe, expect, it } from 'vitest';
import { carriedWords, ENGLISH, wordFiles } from '../../assets/words/carry.ts';
import { listFiles, readTexts } from '../house/files.ts';

const sources = [
  ...readTexts(
    listFiles().filter(
      (path) =>
        path !== 'src/words/messages.ts' &&
        (/^src\/.*\.tsx?$/.test(path) || /^\.ci\/.*\.(mjs|ts)$/.test(path)),
    ),
  ).values(),
].join('\n');

/** Names and codes that stand in the sources as they are. */
const named = new Set([...sources.matchAll(/['"`]([\w-]+)['"`]/g)].map(([, name]) => name ?? ''));
/** Names that are made of a code: what stands before it and behind it. */
const made = [...sources.matchAll(/`([\w-]*)\$\{[^`]*?\}([\w-]*)`/g)]
  .map(([, before = '', behind = '']) => [before, behind] as const)
  .filter(([before, behind]) => before.length + behind.length > 2);

const isSaid = (id: string): boolean =>
  named.has(id) ||
  made.some(
    ([before, behind]) =>
      id.length > before.length + behind.length && id.startsWith(before) && id.endsWith(behind),
  );

/** Messages that other messages hold. */
const within = (carried: unknown): ReadonlySet<string> =>
  new Set(
    [...JSON.stringify(carried).matchAll(/"type":"mesg","name":"([\w-]+)"/g)].map(([, name]) => name ?? ''),
  );

describe('a message', () => {
  it.each(wordFiles())('of %s.ftl is said by somebody', (file) => {
    const carried = carriedWords(ENGLISH, file);
    const inner = within(carried);
    const unsaid = carried.flatMap(([id]) => (id.startsWith('-') || isSaid(id) || inner.has(id) ? [] : [id]));
    expect(unsaid).toEqual([]);
  });

  it('that nobody says is found', () => {
    expect(isSaid('nobody-says-this-at-all')).toBe(false);
  });
});
