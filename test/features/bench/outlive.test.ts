/** What lies on the bench is kept a moment after each change and comes back to an empty bench. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Level } from '../../../src/core/level/schema.ts';
import { createDesk } from '../../../src/features/bench/desk.ts';
import { freshLevel } from '../../../src/features/bench/fresh.ts';
import { outlive } from '../../../src/features/bench/outlive.ts';
import type { UnfinishedShelf } from '../../../src/features/bench/services.ts';

interface Shelf extends UnfinishedShelf {
  lies: Level | null;
  /** The level as it is kept under its own id. */
  kept: Level | null;
  works: boolean;
  writes: number;
}

function emptyShelf(): Shelf {
  const shelf: Shelf = {
    lies: null,
    kept: null,
    works: true,
    writes: 0,
    keepUnfinished: async (level) => {
      shelf.writes += 1;
      if (shelf.works) shelf.lies = level;
      return shelf.works;
    },
    dropUnfinished: async () => {
      shelf.lies = null;
    },
    unfinished: async () =>
      shelf.lies === null ? null : { level: shelf.lies, kept: shelf.kept, recorded: null },
  };
  return shelf;
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
    const [desk, shelf] = [createDesk(), emptyShelf()];
    await outlive(desk, shelf);
    const level = freshLevel('A road', 'Up and down.');
    desk.open(level, false);
    desk.replace(titled(level, 'B'));
    desk.replace(titled(level, 'C'));
    expect(asks()).toBe(true);
    expect(shelf.writes).toBe(0);
    await rest();
    expect(shelf.lies?.title).toBe('C');
    expect(shelf.writes).toBe(1);
    expect(asks()).toBe(false);
  });

  it('comes back as it was, and knows which level it was made of', async () => {
    const shelf = emptyShelf();
    const level = freshLevel('A road', 'Up and down.');
    shelf.kept = level;
    shelf.lies = titled(level, 'Changed');
    const desk = createDesk();
    await outlive(desk, shelf);
    expect(desk.draft()).toMatchObject({ history: { present: { title: 'Changed' }, past: [] }, kept: level });
    expect(asks()).toBe(false);
    await rest();
    expect(shelf.writes).toBe(0);
  });

  it('that is not empty stays as it is, and is kept', async () => {
    const [desk, shelf] = [createDesk(), emptyShelf()];
    const level = freshLevel('A road', 'Up and down.');
    shelf.lies = titled(level, 'Older');
    desk.open(titled(level, 'Newer'), false);
    await outlive(desk, shelf);
    await rest();
    expect(desk.draft()?.history.present.title).toBe('Newer');
    expect(shelf.lies.title).toBe('Newer');
  });

  it('that was saved or cleared leaves nothing behind', async () => {
    const [desk, shelf] = [createDesk(), emptyShelf()];
    await outlive(desk, shelf);
    const level = freshLevel('A road', 'Up and down.');
    desk.open(level, false);
    await rest();
    expect(shelf.lies).not.toBeNull();
    desk.markKept(level, level);
    await rest();
    expect(shelf.lies).toBeNull();
    expect(asks()).toBe(false);
  });

  it('that cannot be kept makes the browser ask, and is tried again with the next change', async () => {
    const [desk, shelf] = [createDesk(), emptyShelf()];
    shelf.works = false;
    await outlive(desk, shelf);
    const level = freshLevel('A road', 'Up and down.');
    desk.open(level, false);
    await rest();
    expect(asks()).toBe(true);
    shelf.works = true;
    desk.replace(titled(level, 'B'));
    await rest();
    expect(shelf.lies?.title).toBe('B');
    expect(asks()).toBe(false);
  });
});
