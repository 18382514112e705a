/** Numbers of pieces and places: every value between the limits gives a level that can be ridden or says why not. */
import { describe, expect, it } from 'vitest';
import { applyEdit, startHistory } from '../../../src/core/level/edit.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { levelAtStep } from '../../../src/core/level/generate.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { createLevelEditor, isUnsaved, type Selection } from '../../../src/features/bench/levelEditor.ts';
import { fieldsOf, placeOfProblem, selectionAt } from '../../../src/features/bench/fields.ts';
import {
  addPlaced,
  freeStretch,
  placeForNew,
  freshId,
  freshLevel,
  FRESH_PIECES,
  PLACED_LISTS,
} from '../../../src/features/bench/fresh.ts';
import { ENGLISH, speak } from '../../../src/words/words.ts';

const edited = (level: Level, edit: Parameters<typeof applyEdit>[1]): Level =>
  applyEdit(startHistory(level), edit).present;

/** A level with everything that can be added by hand. */
function everything(): Level {
  let level = freshLevel('All', 'All of it.');
  for (const piece of Object.values(FRESH_PIECES))
    level = edited(level, { kind: 'add-piece', index: level.pieces.length, piece });
  for (const list of PLACED_LISTS) level = edited(level, addPlaced(level, list, { fromM: 100, toM: 200 }));
  return level;
}

const selections = (level: Level): Selection[] =>
  (['pieces', ...PLACED_LISTS] as const).flatMap((list) =>
    level[list].map((_: unknown, index: number) => ({ list, index })),
  );

it('a new level is marked with the language its words are in', () => {
  speak('fr');
  expect(freshLevel('Une côte', 'Passe plus facile.').lang).toBe('fr');
  speak(ENGLISH);
  expect(freshLevel('A hill', 'Shift.').lang).toBe(ENGLISH);
});

describe('what can be added', () => {
  it('makes a level that can be ridden at once', () => {
    const made = parseLevel(everything());
    expect(made.ok ? [] : made.problems).toEqual([]);
  });

  it.each(Object.values(FRESH_PIECES).filter(({ kind }) => kind !== 'flat'))(
    'is steeper in a harder version of its level: $kind',
    (piece) => {
      const level: Level = { ...freshLevel('One', 'One piece.'), pieces: [piece] };
      const steepest = (difficultyStep: number): number => {
        const { slopeRatio } = courseOfLevel(levelAtStep(level, difficultyStep, level.seed));
        return Math.max(...slopeRatio.map((ratio) => Math.abs(ratio)));
      };
      expect(steepest(1) / steepest(0)).toBeCloseTo(1.12, 9);
    },
  );

  it('fills what is asked for as far as it is free, and finds room nearby where it is not', () => {
    const taken = [{ fromM: 100, toM: 200 }];
    expect(freeStretch([], 400, { fromM: 320, toM: 400 })).toEqual({ fromM: 320, toM: 400 });
    expect(freeStretch(taken, 400, { fromM: 150, toM: 300 })).toEqual({ fromM: 200, toM: 300 });
    expect(freeStretch(taken, 400, { fromM: 120, toM: 180 })).toEqual({ fromM: 40, toM: 100 });
    expect(freeStretch(taken, 400, { fromM: 160, toM: 200 })).toEqual({ fromM: 200, toM: 240 });
  });

  it('lies on the piece that is selected, and on the same piece again when its own stop line is', () => {
    const level = freshLevel('New', 'New.');
    const pitch = { list: 'pieces', index: 1 } as const;
    const place = placeOfProblem(level, pitch);
    expect(placeForNew(level, pitch)).toEqual(place);
    const lined = edited(level, addPlaced(level, 'stopLinesM', placeForNew(level, pitch)));
    const line = { list: 'stopLinesM', index: 0 } as const;
    expect(placeForNew(lined, line)).toEqual(place);
    expect(edited(lined, addPlaced(lined, 'winds', placeForNew(lined, line))).winds).toEqual([
      { ...place, windMps: 5 },
    ]);
  });

  it('gets an id of its own, whatever the title', () => {
    for (const title of ['Größe', '雨', '<script>', '', 'x'.repeat(200)]) {
      expect(freshId(title)).toMatch(/^[a-z0-9][a-z0-9-]{0,59}$/);
      expect(freshId(title)).not.toBe(freshId(title));
    }
  });
});

describe('the numbers of what is selected', () => {
  it('are what they say, and their limits are good values', () => {
    const level = everything();
    const seen = new Set<string>();
    for (const selection of selections(level))
      for (const field of fieldsOf(level, selection)) {
        seen.add(field.name);
        expect(field.value).toBeGreaterThanOrEqual(field.low);
        expect(field.value).toBeLessThanOrEqual(field.high);
        for (const value of [field.low, field.high]) {
          const next = edited(level, field.edit(value));
          const again = fieldsOf(next, selection).find(({ name }) => name === field.name);
          expect(again?.value).toBeCloseTo(value, 6);
          const parsed = parseLevel(next);
          // Shape is never wrong; what does not fit together is told with a place to go to.
          for (const problem of parsed.ok ? [] : parsed.problems)
            expect(problem.path).toMatch(/^(pieces|stopLinesM|winds|surfaces|hidden|cues)/);
        }
      }
    expect([...seen].toSorted()).toEqual([
      'atM',
      'beforeEach',
      'fromM',
      'gentlest',
      'lengthM',
      'pitchCount',
      'sightM',
      'slope',
      'steepest',
      'toM',
      'waveM',
      'windMps',
    ]);
  });

  it('give every random pitch the road before it that the piece has room for, or leave it to chance', () => {
    const piece = {
      kind: 'random-pitches',
      lengthM: 600,
      pitchCount: 3,
      gentlestRatio: 0.05,
      steepestRatio: 0.09,
    } as const;
    const level = edited(freshLevel('Pitches', 'Three of them.'), { kind: 'add-piece', index: 0, piece });
    const field = (of: Level) =>
      fieldsOf(of, { list: 'pieces', index: 0 }).find(({ name }) => name === 'beforeEach')!;
    const spaced = edited(level, field(level).edit(field(level).high));
    expect(parseLevel(spaced).ok).toBe(true);
    const pitches = courseOfLevel(spaced).pitches.filter(({ endM }) => endM < piece.lengthM + 1);
    expect(pitches).toHaveLength(3);
    pitches.forEach(({ footM }, i) => {
      const beforeM = footM - (pitches[i - 1]?.endM ?? 0);
      expect(Math.abs(beforeM - field(level).high)).toBeLessThanOrEqual(12);
    });
    expect(spaced.pieces[0]).toHaveProperty('beforeM', field(level).high);
    expect(edited(spaced, field(spaced).edit(0)).pieces[0]).toEqual(piece);
    const denser = parseLevel({ ...spaced, pieces: [{ ...spaced.pieces[0], pitchCount: 4 }] });
    expect(denser.ok ? [] : denser.problems).toMatchObject([{ code: 'pitches-too-dense' }]);
  });

  it('lie where a warning points', () => {
    const level = everything();
    expect(selectionAt('winds[0].toM')).toEqual({ list: 'winds', index: 0 });
    expect(selectionAt('title')).toBeNull();
    expect(placeOfProblem(level, { list: 'pieces', index: 1 })).toEqual({ fromM: 120, toM: 200 });
    expect(placeOfProblem(level, { list: 'pieces', index: 99 })).toBeNull();
  });
});

describe('the desk', () => {
  it('takes edits back exactly, drops a selection that points at nothing, and knows what is kept', () => {
    const levelEditor = createLevelEditor();
    const level = everything();
    levelEditor.open(level, true);
    const unsaved = (): boolean => isUnsaved(levelEditor.draft() ?? expect.fail('no draft'));
    expect(unsaved()).toBe(false);
    levelEditor.change({ selection: { list: 'cues', index: 0 } });
    levelEditor.edit({ kind: 'remove-entry', list: 'cues', index: 0 });
    expect(levelEditor.draft()?.selection).toBeNull();
    expect(unsaved()).toBe(true);
    levelEditor.undo();
    expect(levelEditor.draft()?.history.present).toBe(level);
    expect(unsaved()).toBe(false);
    levelEditor.redo();
    const present = levelEditor.draft()?.history.present ?? expect.fail('no level');
    const kept = { ...present, id: 'kept' };
    levelEditor.markKept(present, kept);
    expect(unsaved()).toBe(false);
    levelEditor.replace({ ...kept, title: 'Other' });
    levelEditor.markKept(kept, kept);
    expect(unsaved()).toBe(true);
  });
});
