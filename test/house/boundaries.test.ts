/**
 * Holds the sources against the import table, the length of files and the list at the top. The checker
 * itself is tested next door, with sources that are wrong on purpose.
 */
import { describe, expect, it } from 'vitest';
import { checkBoundaries, findFolderCycles, findLongFiles, LONG_LINES } from './boundaries.ts';
import { findSharedNames, findUnusedExports } from './exports.ts';
import { checkTopLevel, findPrivatePlaces, listFiles, readTexts } from './files.ts';

const files = listFiles();
const texts = readTexts(files);

/** So many names at most are exported for nobody but tests of code. */
const FOR_TESTS_ALONE = 40;
/** Scripts that measure and write, comparisons with the literature, and the page of the model are more than that. */
const measures = (path: string): boolean =>
  /^test\/(figures|published)\//.test(path) || /(modelDoc\.test|limitsTable)\.ts$/.test(path);

describe('the house', () => {
  it('is looked at: the core and its tests are among the files read', () => {
    expect([...texts.keys()]).toContain('src/core/ride/types.ts');
    expect([...texts.keys()]).toContain('test/house/boundaries.test.ts');
  });

  it('keeps every room to the import table, free of cycles, and the core pure', () => {
    expect(checkBoundaries(texts)).toEqual([]);
  });

  it('has no ring of folders', () => {
    expect(findFolderCycles(texts)).toEqual([]);
  });

  it('offers no name that nobody takes', () => {
    expect(findUnusedExports(texts).map(({ path, name }) => `${path} ${name}`)).toEqual([]);
  });

  it('opens few doors for tests alone', () => {
    const offered = findUnusedExports(texts, measures).map(({ path, name }) => `${path} ${name}`);
    // Pure rules with a fact of their own. Whoever adds one first looks whether the fact can be seen from outside.
    expect(offered.length, offered.join('\n')).toBeLessThanOrEqual(FOR_TESTS_ALONE);
  });

  it('has one name for one thing: no two files offer the same', () => {
    expect(findSharedNames(texts)).toEqual([]);
  });

  it('has no file longer than 600 lines, and says which are longer than 300', () => {
    const long = findLongFiles(texts, LONG_LINES);
    if (long.length > 0) process.stdout.write(`${long.join('\n')}\n`);
    expect(findLongFiles(texts)).toEqual([]);
  });

  it('has at its top what belongs there and nothing else', () => {
    expect(checkTopLevel(files)).toEqual([]);
  });

  it('names no path of one computer and no host packages came from', () => {
    expect(findPrivatePlaces(texts)).toEqual([]);
  });
});
