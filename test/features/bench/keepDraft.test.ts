/** What lies on the bench is kept a moment after each change and comes back to an empty bench. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Level } from '../../../src/core/level/schema.ts';
import { createLevelEditor } from '../../../src/features/bench/levelEditor.ts';
import { freshLevel } from '../../../src/features/bench/fresh.ts';
import { keepDraft } from '../../../src/features/bench/keepDraft.ts';
import type { DraftStore } from '../../../src/features/bench/services.ts';

interface Shelf extends DraftStore {
  lies: Level | null;
  /** The level as it is kept under its own id. */
  kept: Level | null;
  works: boolean;
  writes: number;
}

function emptyShelf(): Shelf {
  const drafts: Shelf = {
    lies: null,
    kept: null,
    works: true,
    writes: 0,
    keepUnfinished: async (level) => {
      drafts.writes += 1;
      if (drafts.works) drafts.lies = level;
      return drafts.works;
    },
    dropUnfinished: async () => {
      drafts.lies = null;
    },
    unfinished: async () =>
      drafts.lies === null ? null : { level: drafts.lies, kept: drafts.kept, recorded: null },
  };
  return drafts;
}

/** Whether the browser would ask before the tab is closed. */
function asks(): boolean {
  const event = new Event('beforeunload', { cancelable: true });
  window.dispatchEvent(event);
  return event.defaultPrevented;
}

const rest = (): Promise<unknown> => vi.advanceTimersByTimeAsync(1_000);
const titled = (level: Level, title: string): Level => ({ ...level, title });

beforeEach(() => {
  vi.useFakeTimers();
});

afterEach(() => {
  vi.useRealTimers();
});

describe('the bench', () => {
  it('is kept when hands have rested, the last state only, and the browser asks until then', async () => {
    const [levelEditor, drafts] = [createLevelEditor(), emptyShelf()];
    await keepDraft(levelEditor, drafts);
    const level = freshLevel('A road', 'Up and down.');
    levelEditor.open(level, false);
    levelEditor.replace(titled(level, 'B'));
    levelEditor.replace(titled(level, 'C'));
    expect(asks()).toBe(true);
    expect(drafts.writes).toBe(0);
    await rest();
    expect(drafts.lies?.title).toBe('C');
    expect(drafts.writes).toBe(1);
    expect(asks()).toBe(false);
  });

  it('comes back as it was, and knows which level it was made of', async () => {
    const drafts = emptyShelf();
    const level = freshLevel('A road', 'Up and down.');
    drafts.kept = level;
    drafts.lies = titled(level, 'Changed');
    const levelEditor = createLevelEditor();
    await keepDraft(levelEditor, drafts);
    expect(levelEditor.draft()).toMatchObject({
      history: { present: { title: 'Changed' }, past: [] },
      kept: level,
    });
    expect(asks()).toBe(false);
    await rest();
    expect(drafts.writes).toBe(0);
  });

  it('that is not empty stays as it is, and is kept', async () => {
    const [levelEditor, drafts] = [createLevelEditor(), emptyShelf()];
    const level = freshLevel('A road', 'Up and down.');
    drafts.lies = titled(level, 'Older');
    levelEditor.open(titled(level, 'Newer'), false);
    await keepDraft(levelEditor, drafts);
    await rest();
    expect(levelEditor.draft()?.history.present.title).toBe('Newer');
    expect(drafts.lies.title).toBe('Newer');
  });

  it('that was saved or cleared leaves nothing behind', async () => {
    const [levelEditor, drafts] = [createLevelEditor(), emptyShelf()];
    await keepDraft(levelEditor, drafts);
    const level = freshLevel('A road', 'Up and down.');
    levelEditor.open(level, false);
    await rest();
    expect(drafts.lies).not.toBeNull();
    levelEditor.markKept(level, level);
    await rest();
    expect(drafts.lies).toBeNull();
    expect(asks()).toBe(false);
  });

  it('that cannot be kept makes the browser ask, and is tried again with the next change', async () => {
    const [levelEditor, drafts] = [createLevelEditor(), emptyShelf()];
    drafts.works = false;
    await keepDraft(levelEditor, drafts);
    const level = freshLevel('A road', 'Up and down.');
    levelEditor.open(level, false);
    await rest();
    expect(asks()).toBe(true);
    drafts.works = true;
    levelEditor.replace(titled(level, 'B'));
    await rest();
    expect(drafts.lies?.title).toBe('B');
    expect(asks()).toBe(false);
  });
});
