/** Editing at the level bench: every edit can be taken back and done again, exactly. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdit, type LevelEdit, redo, startHistory, undo } from '../../../src/core/level/edit.ts';
import { edits, levelOf } from './benchLevels.ts';

const RUNS = { numRuns: 1_000, seed: 4_711 };
const level = levelOf({
  pieces: [
    { kind: 'flat', lengthM: 200 },
    { kind: 'pitch', lengthM: 60, slopeRatio: 0.08 },
    { kind: 'flat', lengthM: 240 },
  ],
  stopLinesM: [150, 400],
  hidden: [{ fromM: 190, toM: 250, sightM: 30 }],
  cues: [{ atM: 100, cue: 'hill-ahead' }],
});
const flat = (lengthM: number) => ({ kind: 'flat', lengthM }) as const;

describe('undo and redo', () => {
  it('any sequence of edits taken back gives exactly the first level, and done again exactly the last', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(edits, fc.constantFrom(null, 'drag', 'pull')), { maxLength: 25 }),
        (list) => {
          const first = structuredClone(level);
          let history = startHistory(level);
          for (const [edit, gesture] of list) history = applyEdit(history, edit, gesture);
          const last = structuredClone(history.present);
          const steps = history.past.length;
          for (let i = 0; i < steps; i += 1) history = undo(history);
          expect(history.present).toEqual(first);
          expect(undo(history)).toBe(history);
          for (let i = 0; i < steps; i += 1) history = redo(history);
          expect(history.present).toEqual(last);
          expect(redo(history)).toBe(history);
        },
      ),
      RUNS,
    );
  });

  it('an edit after an undo forgets what was taken back', () => {
    const two = applyEdit(startHistory(level), { kind: 'set', values: { title: 'Two' } });
    const three = applyEdit(undo(two), { kind: 'set', values: { title: 'Three' } });
    expect(redo(three)).toBe(three);
    expect(undo(three).present).toBe(level);
  });

  it('a handle that is dragged is one step back, two drags are two', () => {
    let history = startHistory(level);
    for (const lengthM of [61, 62, 63])
      history = applyEdit(history, { kind: 'change-piece', index: 1, piece: flat(lengthM) }, 'drag 1');
    expect(history.past).toHaveLength(1);
    history = applyEdit(history, { kind: 'change-piece', index: 1, piece: flat(64) }, 'drag 2');
    expect(history.past).toHaveLength(2);
    expect(undo(undo(history)).present).toBe(level);
  });

  it('the history survives being saved', () => {
    const history = applyEdit(startHistory(level), { kind: 'remove-piece', index: 0 });
    expect(JSON.parse(JSON.stringify(history))).toEqual(history);
  });
});

describe('edits', () => {
  const after = (edit: LevelEdit) => applyEdit(startHistory(level), edit).present;

  it.each<[string, LevelEdit]>([
    ['a piece beyond the list', { kind: 'remove-piece', index: 3 }],
    ['a piece before the list', { kind: 'change-piece', index: -1, piece: flat(1) }],
    ['a piece added beyond the end', { kind: 'add-piece', index: 4, piece: flat(1) }],
    ['half an index', { kind: 'remove-piece', index: 0.5 }],
    ['a move to nowhere', { kind: 'move-piece', from: 0, to: 3 }],
    ['a move to the same place', { kind: 'move-piece', from: 1, to: 1 }],
    ['a stop line that is not there', { kind: 'remove-entry', list: 'stopLinesM', index: 2 }],
    ['the title it has', { kind: 'set', values: { title: 'Bench' } }],
  ])('%s changes nothing and is no step', (_, edit) => {
    const history = startHistory(level);
    expect(applyEdit(history, edit)).toBe(history);
  });

  it('pieces are added, changed, moved and removed', () => {
    expect(after({ kind: 'add-piece', index: 1, piece: flat(9) }).pieces.map((p) => p.kind)).toEqual([
      'flat',
      'flat',
      'pitch',
      'flat',
    ]);
    expect(after({ kind: 'change-piece', index: 0, piece: flat(9) }).pieces[0]).toEqual(flat(9));
    expect(after({ kind: 'move-piece', from: 1, to: 2 }).pieces.map((p) => p.kind)).toEqual([
      'flat',
      'flat',
      'pitch',
    ]);
    expect(after({ kind: 'remove-piece', index: 1 }).pieces).toHaveLength(2);
  });

  it('places stay where they are, or follow the road behind a changed piece', () => {
    const stay = after({ kind: 'change-piece', index: 1, piece: flat(100) });
    expect(stay.stopLinesM).toEqual([150, 400]);
    const follow = after({ kind: 'change-piece', index: 1, piece: flat(100), follow: true });
    expect(follow.stopLinesM).toEqual([150, 440]);
    expect(follow.hidden).toEqual([{ fromM: 190, toM: 250, sightM: 30 }]);
    expect(follow.cues).toEqual([{ atM: 100, cue: 'hill-ahead' }]);
    expect(after({ kind: 'remove-piece', index: 0, follow: true }).stopLinesM).toEqual([150, 200]);
  });

  it('stop lines, winds, surfaces, hidden stretches and cues are added, changed and removed', () => {
    expect(after({ kind: 'add-entry', list: 'stopLinesM', entry: 300 }).stopLinesM).toEqual([150, 400, 300]);
    expect(after({ kind: 'change-entry', list: 'stopLinesM', index: 0, entry: 160 }).stopLinesM).toEqual([
      160, 400,
    ]);
    expect(after({ kind: 'remove-entry', list: 'hidden', index: 0 }).hidden).toEqual([]);
    const wind = { fromM: 0, toM: 100, windMps: 4 };
    expect(after({ kind: 'add-entry', list: 'winds', entry: wind }).winds).toEqual([wind]);
  });
});
