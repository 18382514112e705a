/**
 * Shows the checker of the house sources that are wrong on purpose, one fault at a time, and right ones
 * that look suspicious. A check that never complains would be worse than none.
 */
import { describe, expect, it } from 'vitest';
import { checkBoundaries, findFolderCycles, findLongFiles, LONG_LINES } from './boundaries.ts';
import { findSharedNames, findUnusedExports } from './exports.ts';
import { checkTopLevel, findPrivatePlaces, readIgnoreList, topLevel } from './files.ts';

/** Files every example may refer to. */
const neighbours: readonly string[] = [
  'src/core/math/a.ts',
  'src/core/course/a.ts',
  'src/core/ride/a.ts',
  'src/core/planner/a.ts',
  'src/game/a.ts',
  'src/audio/a.ts',
  'src/worker/a.ts',
  'src/cli/a.ts',
  'src/ui/a.ts',
  'src/charts/a.ts',
  'src/app/a.ts',
  'src/features/bike/a.ts',
  'src/features/progress/a.ts',
  'src/a.ts',
];

/** What the checker says about one file among its neighbours. */
function check(path: string, text: string): string[] {
  return checkBoundaries(new Map([...neighbours.map((name) => [name, ''] as const), [path, text]]));
}

describe('rings of folders', () => {
  const sources = (late: string): Map<string, string> =>
    new Map([
      ['src/app/a.ts', "import { x } from './ride/a.ts';"],
      ['src/app/ride/a.ts', "import { x } from '../../state/a.ts';\nimport { y } from './b.ts';"],
      ['src/app/ride/b.ts', late],
      ['src/state/a.ts', ''],
    ]);

  it.each([
    ["import { x } from '../../state/a.ts';", 0],
    // No file is in a ring, but the folders are; by a type and by an import in time alike.
    ["import type { X } from '../b.ts';", 1],
    ["const f = () => import('../b.ts');", 1],
  ])('in %s', (late, count) => {
    expect(findFolderCycles(sources(late))).toHaveLength(count);
  });
});

describe('imports between rooms', () => {
  it.each([
    ['core/math may import nothing', 'src/core/math/b.ts', "import { x } from '../course/a.ts';"],
    ['core/ride is left of core/planner', 'src/core/ride/b.ts', "import { x } from '../planner/a.ts';"],
    ['a type is an import too', 'src/core/ride/b.ts', "import type { X } from '../planner/a.ts';"],
    ['an inline type import', 'src/core/ride/b.ts', "export type Y = import('../planner/a.ts').X;"],
    ['the core knows no shell', 'src/core/ride/b.ts', "import { x } from '../../game/a.ts';"],
    ['a shell knows no other shell', 'src/charts/b.ts', "import { x } from '../game/a.ts';"],
    ['not by its types', 'src/game/b.ts', "import type { X } from '../audio/a.ts';"],
    ['not by passing them on', 'src/game/b.ts', "export { x } from '../audio/a.ts';"],
    ['not by passing all of them on', 'src/game/b.ts', "export * from '../audio/a.ts';"],
    ['not late', 'src/game/b.ts', "const f = () => import('../audio/a.ts');"],
    ['not with a template', 'src/game/b.ts', 'const f = () => import(`../audio/a.ts`);'],
    ['not by address', 'src/game/b.ts', "new Worker(new URL('../worker/a.ts', import.meta.url));"],
    ['not by pattern', 'src/game/b.ts', "import.meta.glob('../charts/*.ts');"],
    ['not by one of several patterns', 'src/game/b.ts', "import.meta.glob(['./*.ts', '../charts/*.ts']);"],
    ['a room does not import main', 'src/charts/b.ts', "import { x } from '../a.ts';"],
    ['no feature knows another', 'src/features/bike/b.ts', "import { x } from '../progress/a.ts';"],
    ['nor the app that shows it', 'src/features/bike/b.ts', "import type { X } from '../../app/a.ts';"],
    ['charts know no feature', 'src/charts/b.ts', "import { x } from '../features/bike/a.ts';"],
    ['ui knows no charts', 'src/ui/b.ts', "import { x } from '../charts/a.ts';"],
    ['main does not import the command line', 'src/b.ts', "import { x } from './cli/a.ts';"],
    ['main loads the game late', 'src/main.tsx', "import { x } from './game/a.ts';"],
    ['also when it passes it on', 'src/main.tsx', "export * from './game/a.ts';"],
    ['also as an empty import of types', 'src/main.tsx', "import { type X } from './game/a.ts';"],
  ])('%s', (_name, path, text) => {
    expect(check(path, text)).toHaveLength(1);
    expect(check(path, text)[0]).toContain(`${path}:1 `);
  });

  it('allows what the table allows', () => {
    expect(check('src/core/planner/b.ts', "import { x } from '../ride/a.ts';")).toEqual([]);
    expect(check('src/charts/b.tsx', "import type { X } from '../core/ride/a.ts';")).toEqual([]);
    expect(check('src/features/bike/b.ts', "import { x } from '../../charts/a.ts';")).toEqual([]);
    expect(check('src/app/b.ts', "const f = () => import('../features/bike/a.ts');")).toEqual([]);
    expect(check('src/main.tsx', "const f = () => import('./game/a.ts');")).toEqual([]);
    expect(check('src/main.tsx', "import type { X } from './game/a.ts';")).toEqual([]);
    expect(check('src/main.tsx', "new Worker(new URL('./worker/a.ts', import.meta.url));")).toEqual([]);
    expect(check('src/app/b.ts', "import.meta.glob('../../levels/*.json');")).toEqual([]);
    expect(check('src/app/b.ts', "import.meta.glob(['../../levels/*.json', '!**/a.json']);")).toEqual([]);
    expect(check('src/audio/b.ts', "new URL('../../assets/click.webm', import.meta.url);")).toEqual([]);
  });

  it('sees through a query behind the name', () => {
    expect(check('src/b.ts', "import W from './worker/a.ts?worker';")).toEqual([]);
    expect(check('src/charts/b.ts', "import W from '../worker/a.ts?worker';")).toHaveLength(1);
  });

  it('names the line', () => {
    expect(check('src/charts/b.ts', "\n\nimport '../game/a.ts';")).toEqual([
      'src/charts/b.ts:3 charts must not import game',
    ]);
  });
});

describe('places', () => {
  it.each([
    ['a room that is not in the table', 'src/util/b.ts', ''],
    ['a file directly in the core', 'src/core/b.ts', ''],
    ['a room of the core that is not in the table', 'src/core/util/b.ts', ''],
    ['a file that does not exist', 'src/game/b.ts', "import './c.ts';"],
    ['an import without its ending', 'src/game/b.ts', "import './a';"],
    ['a path from the top', 'src/game/b.ts', "import '/src/game/a.ts';"],
    ['a test in a shell', 'src/game/b.ts', "import '../../test/x.ts';"],
    ['levels anywhere but in main', 'src/charts/b.ts', "import.meta.glob('../../levels/*.json');"],
    ['a name made while running', 'src/game/b.ts', 'const f = (n: string) => import(`./${n}.ts`);'],
    [
      'what stands at an address, in a wrong room',
      'src/audio/b.ts',
      "import at from '../game/a.ts?worker&url';",
    ],
    ['a file that cannot be parsed', 'src/game/b.ts', 'const = 3;'],
  ])('complains about %s', (_name, path, text) => {
    expect(check(path, text)).toHaveLength(1);
  });
});

describe('packages', () => {
  it.each([
    ['src/core/planner/b.ts', "import * as z from 'zod';"],
    ['src/core/ride/b.ts', "const f = () => import('phaser');"],
    ['src/charts/b.ts', "import Phaser from 'phaser';"],
    ['src/main.tsx', "const f = () => import('phaser');"],
    ['src/game/b.tsx', 'export const x = <p>text</p>;'],
    ['src/game/b.tsx', 'export const x = <>text</>;'],
    ['src/worker/b.ts', "import { readFileSync } from 'node:fs';"],
    ['src/worker/b.ts', "import { readFileSync } from 'fs';"],
    ['src/charts/b.ts', "import x from '@somebody/something/deep';"],
    ['src/storage/b.ts', "import { x } from 'idb-other';"],
    ['src/charts/b.ts', "const x = require('howler');"],
  ])('%s must not say %s', (path, text) => {
    expect(check(path, text)).toHaveLength(1);
  });

  it('allows each room its own', () => {
    expect(check('src/core/level/b.ts', "import * as z from 'zod';")).toEqual([]);
    expect(check('src/game/b.ts', "import Phaser from 'phaser';")).toEqual([]);
    expect(check('src/charts/b.tsx', "import { useState } from 'preact/hooks'; <p>text</p>;")).toEqual([]);
    expect(check('src/storage/b.ts', "import { openDB } from 'idb'; import * as z from 'zod';")).toEqual([]);
    expect(check('src/cli/b.ts', "import { readFileSync } from 'node:fs';")).toEqual([]);
  });
});

describe('the pure core', () => {
  it.each([
    'const t = Date.now();',
    'let t: Date;',
    'const o = { Date };',
    'performance.now();',
    'setTimeout(f, 1);',
    'globalThis.setTimeout(f, 1);',
    'crypto.getRandomValues(a);',
    'const r = Math.random();',
    'const s = Math.sin(1);',
    'const h = Math.hypot(3, 4);',
    "const s = Math['sin'](1);",
    'const { sin } = Math;',
    'const m = Math;',
    'const p = 2 ** 3;',
    'p **= 2;',
    'const e = import.meta.env;',
    'a.toLocaleString();',
    'fetch(x);',
  ])('complains about %s', (text) => {
    expect(check('src/core/ride/b.ts', text)).toHaveLength(1);
    expect(check('src/game/b.ts', text)).toEqual([]);
  });

  it('allows exact arithmetic and words that only look like a clock', () => {
    const text = `
      const a = Math.sqrt(2) + Math.max(1, Math.PI) * Math.floor(0.5);
      const b = { performance: 1, Date: 2 };
      const c = b.performance + b.Date;
      interface D { readonly crypto: number }
      // Date.now() in a comment, and 2 ** 3
      const e = 'Math.random()';
    `;
    expect(check('src/core/ride/b.ts', text)).toEqual([]);
  });
});

describe('cycles', () => {
  const cycle = (...pairs: readonly (readonly [string, string])[]): string[] =>
    checkBoundaries(new Map(pairs));

  it('are found among values, types and late imports, and each told once', () => {
    const found = cycle(
      ['src/game/a.ts', "import './b.ts';"],
      ['src/game/b.ts', "import type { X } from './c.ts';"],
      ['src/game/c.ts', "const f = () => import('./a.ts');"],
    );
    expect(found).toEqual(['import cycle: src/game/a.ts > src/game/b.ts > src/game/c.ts > src/game/a.ts']);
  });

  it('include a file that imports itself', () => {
    expect(cycle(['src/game/a.ts', "import './a.ts';"])).toHaveLength(1);
  });

  it('are not confused with two ways to one file', () => {
    const diamond = cycle(
      ['src/game/a.ts', "import './b.ts'; import './c.ts';"],
      ['src/game/b.ts', "import './d.ts';"],
      ['src/game/c.ts', "import './d.ts';"],
      ['src/game/d.ts', ''],
    );
    expect(diamond).toEqual([]);
  });
});

describe('files', () => {
  it('may have 600 lines and not one more', () => {
    const lines = (count: number): string => 'x;\n'.repeat(count);
    expect(findLongFiles(new Map([['src/game/a.ts', lines(600)]]))).toEqual([]);
    expect(findLongFiles(new Map([['test/game/a.test.tsx', lines(601)]]))).toHaveLength(1);
    expect(findLongFiles(new Map([['levels/long.json', lines(601)]]))).toEqual([]);
  });

  it('are named from a length on that somebody chooses', () => {
    const long = new Map([['src/game/a.ts', 'x;\n'.repeat(301)]]);
    expect(findLongFiles(long, LONG_LINES)).toEqual(['src/game/a.ts has 301 lines, more than 300']);
  });

  it('at the top are the fixed ones', () => {
    expect(checkTopLevel(topLevel)).toEqual([]);
    expect(checkTopLevel([...topLevel, 'notes.md'])).toEqual(['notes.md does not belong at the top']);
    expect(checkTopLevel(topLevel.filter((name) => name !== 'LICENSE'))).toEqual([
      'LICENSE is missing at the top',
    ]);
  });

  it('are left out as the ignore list says', () => {
    const isIgnored = readIgnoreList('node_modules/\n# a remark\n\n*.log\n');
    expect(['node_modules', 'error.log', '.git'].every(isIgnored)).toBe(true);
    expect(['src', 'logs', '# a remark', ''].some(isIgnored)).toBe(false);
  });

  it('name no computer', () => {
    // Put together here, because this file is read by the same check.
    const path = ['', 'home', 'somebody', 'x'].join('/');
    const host = ['https://registry', 'example', 'org/zod'].join('.');
    expect(findPrivatePlaces(new Map([['a.md', `one\nsee ${path}`]]))).toHaveLength(1);
    expect(findPrivatePlaces(new Map([['a.json', `"${host}"`]]))).toHaveLength(1);
    expect(
      findPrivatePlaces(new Map([['a.ts', "import '../home/somebody.ts'; a.tmp/b; 'at work/play'"]])),
    ).toEqual([]);
  });
});

describe('names', () => {
  const names = (...files: readonly (readonly [string, string])[]) => new Map(files);

  it('that two files offer are found, passing one on is no second offer', () => {
    const twice = names(['src/a.ts', 'export const x = 1;'], ['src/b.ts', 'export function x() {}']);
    expect(findSharedNames(twice)).toEqual(['x: src/a.ts, src/b.ts']);
    const passed = names(
      ['src/a.ts', 'export type X = 1;'],
      ['src/b.ts', "export type { X } from './a.ts';"],
    );
    expect(findSharedNames(passed)).toEqual([]);
  });

  it('that nobody takes are found, however they are offered', () => {
    const text =
      'export const { a, b: [c] } = d; export class E {} export interface F {} export const g = 1;';
    const all = names(['src/a.ts', text], ['src/b.ts', "import { g } from './a.ts';"]);
    expect(findUnusedExports(all).map(({ name }) => name)).toEqual(['a', 'c', 'E', 'F']);
  });

  it('that only a test takes are offered to nobody but tests', () => {
    const all = names(
      ['src/a.ts', 'export const x = 1;'],
      ['test/a.test.ts', "import { x } from '../src/a.ts';"],
    );
    expect(findUnusedExports(all, () => false)).toEqual([{ path: 'src/a.ts', name: 'x' }]);
    expect(findUnusedExports(all)).toEqual([]);
  });

  it.each(["import * as all from './a.ts';", "export * from './a.ts';", "void import('./a.ts');"])(
    'of a file are all taken by %s',
    (text) => {
      expect(findUnusedExports(names(['src/a.ts', 'export const x = 1;'], ['src/b.ts', text]))).toEqual([]);
    },
  );
});
