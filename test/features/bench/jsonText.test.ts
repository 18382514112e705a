/** The level as text beside the form: the same level both ways, and every problem on its line. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelFromJson, levelToJson } from '../../../src/features/bench/jsonText.ts';
import { scanJson } from '../../../src/features/bench/jsonScan.ts';
import { freshLevel } from '../../../src/features/bench/fresh.ts';
import { recordedLevel } from './levels.ts';

const level = freshLevel('A road', 'Up and down.');
const text = levelToJson(level);
const lineOf = (part: string): number => text.slice(0, text.indexOf(part)).split('\n').length;
const problemsOf = (changed: string) => {
  const read = levelFromJson(changed);
  return read.ok ? [] : read.problems.map(({ code, line }) => ({ code, line }));
};

describe('a level as text', () => {
  it('is the same level again, for every bundled level and a recorded one', () => {
    const folder = join(import.meta.dirname, '../../../levels');
    const names = readdirSync(folder).filter((name) => name.endsWith('.json') && !name.includes('schema'));
    expect(names.length).toBeGreaterThan(10);
    for (const name of names) {
      const read = levelFromJson(readFileSync(join(folder, name), 'utf8'));
      if (!read.ok) throw new Error(`${name} is a level`);
      expect(levelFromJson(levelToJson(read.level))).toEqual(read);
    }
    const recorded = recordedLevel();
    expect(levelFromJson(levelToJson(recorded))).toEqual({ ok: true, level: recorded });
  });

  it('shows a wrong number on the line of its piece', () => {
    const changed = text.replace('"slopeRatio": 0.07', '"slopeRatio": 7');
    expect(problemsOf(changed)).toEqual([{ code: 'too-big', line: lineOf('"slopeRatio"') }]);
  });

  it('shows a part that is missing on the line of what it is a part of', () => {
    const changed = text.replace('{ "kind": "flat", "lengthM": 120 }', '{ "kind": "flat" }');
    expect(problemsOf(changed)).toEqual([{ code: 'missing', line: lineOf('"lengthM": 120') }]);
  });

  it('shows an unknown part on its own line, whatever it is called', () => {
    for (const key of ['colour', 'a.b', 'x[3]', '[', '.', 'pieces[9]']) {
      const changed = text.replace('  "seed"', `  ${JSON.stringify(key)}: 1,\n  "seed"`);
      expect(problemsOf(changed)).toEqual([{ code: 'unknown-key', line: lineOf('  "seed"') }]);
    }
  });

  it('shows a missing comma or bracket where reading stops', () => {
    expect(problemsOf(text.replace('"seed": 1,', '"seed": 1'))).toEqual([
      { code: 'not-json', line: lineOf('"seed"') + 1 },
    ]);
    expect(problemsOf(text.replace(/\}\s*$/, ''))).toMatchObject([{ code: 'not-json' }]);
    expect(problemsOf(text.replace('"A road"', '"A ro\nad"'))).toEqual([
      { code: 'not-json', line: lineOf('"A road"') },
    ]);
  });
});

describe('the walk through a text', () => {
  it('finds a fault exactly where the browser finds one', () => {
    const mutate = fc.tuple(fc.nat(text.length), fc.string({ maxLength: 3 }), fc.nat(3));
    fc.assert(
      fc.property(mutate, ([at, put, cut]) => {
        const changed = text.slice(0, at) + put + text.slice(at + cut);
        let good = true;
        try {
          JSON.parse(changed.replace(/^\uFEFF/, ''));
        } catch {
          good = false;
        }
        expect(scanJson(changed).faultLine === null).toBe(good);
      }),
      { numRuns: 2_000, seed: 90 },
    );
  });

  it('is not led astray by depth', () => {
    expect(scanJson('['.repeat(100_000)).faultLine).toBe(1);
  });
});
