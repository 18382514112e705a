/**
 * The level that lies on the bench: its history, what is selected, and whether it is kept. It stays while a test ride
 * takes the page away. Knows no page and no keeping.
 */
import { useFollowed } from '../../ui/hooks.ts';
import {
  applyEdit,
  type LevelEdit,
  type LevelHistory,
  type PlacedList,
  redo,
  replaceLevel,
  startHistory,
  undo,
} from '../../core/level/edit.ts';
import type { RecordedSample } from '../../core/gpx/recorded.ts';
import type { Level } from '../../core/level/schema.ts';
import { Listeners } from '../../state/listeners.ts';
import type { Laying } from './services.ts';

/** Least road of a test ride (m). */
export const LEAST_TRY_M = 100;

/** A piece of road or something that lies on it. */
export interface Selection {
  readonly list: 'pieces' | PlacedList;
  readonly index: number;
}

/** What lies on the bench. */
export interface Draft {
  readonly history: LevelHistory;
  /** The level as it is kept on this device, or null while it never was. */
  readonly kept: Level | null;
  /** Why it was not kept when it last should have been, as a code of the keeping. */
  readonly notKept: string | null;
  readonly selection: Selection | null;
  /** Where test rides begin (m). */
  readonly tryFromM: number;
  /** What was ridden on the road that came in with it, and for which pieces that holds. */
  readonly recorded: { readonly samples: readonly RecordedSample[]; readonly pieces: Level['pieces'] } | null;
}

/** The bench. */
export interface LevelEditor {
  draft(): Draft | null;
  open(level: Level, kept: boolean, recorded?: readonly RecordedSample[] | null): void;
  /** It should have been kept and was not. */
  markNotKept(code: string): void;
  /** Lays down again what lay there before, with nothing to be taken back. */
  resume(laying: Laying): void;
  edit(edit: LevelEdit, gesture?: string | null): void;
  replace(level: Level, gesture?: string | null): void;
  undo(): void;
  redo(): void;
  change(change: Partial<Pick<Draft, 'selection' | 'tryFromM' | 'recorded'>>): void;
  /** This level has been kept, in this form. What was changed while it was being kept stays changed. */
  markKept(level: Level, kept: Level): void;
  close(): void;
  subscribe(listener: () => void): () => void;
}

/** An empty bench. */
export function createLevelEditor(): LevelEditor {
  let draft: Draft | null = null;
  const listeners = new Listeners();
  const set = (next: Draft | null): void => {
    if (next === draft) return;
    draft = next;
    listeners.tell();
  };
  const onHistory = (change: (history: LevelHistory) => LevelHistory): void => {
    if (draft === null) return;
    const history = change(draft.history);
    if (history !== draft.history) set(fitted({ ...draft, history }));
  };
  const resume = ({ level, kept, recorded }: Laying): void =>
    set({
      history: startHistory(level),
      kept,
      notKept: null,
      selection: null,
      tryFromM: 0,
      recorded: recorded === null ? null : { samples: recorded, pieces: level.pieces },
    });
  return {
    draft: () => draft,
    open: (level, kept, recorded = null) => resume({ level, kept: kept ? level : null, recorded }),
    resume,
    edit: (edit, gesture = null) => onHistory((history) => applyEdit(history, edit, gesture)),
    replace: (level, gesture = null) => onHistory((history) => replaceLevel(history, level, gesture)),
    undo: () => onHistory(undo),
    redo: () => onHistory(redo),
    change: (change) => draft !== null && set({ ...draft, ...change }),
    markNotKept: (code) => draft !== null && set({ ...draft, notKept: code }),
    markKept(level, kept) {
      if (draft === null) return;
      const { history } = draft;
      const present = history.present === level ? kept : history.present;
      set({ ...draft, kept, notKept: null, history: { ...history, present } });
    },
    close: () => set(null),
    subscribe: listeners.add,
  };
}

/** The bench of this browser tab. */
export const levelEditor = createLevelEditor();

/** Draws anew when something on the bench has changed. */
export function useDraft(): Draft | null {
  useFollowed(levelEditor);
  return levelEditor.draft();
}

/** Whether there is something that is not kept. */
export function isUnsaved({ history, kept }: Draft): boolean {
  return history.present !== kept;
}

/** A selection that points at nothing any more is dropped. */
function fitted(draft: Draft): Draft {
  const { selection, history } = draft;
  const there = selection === null || selection.index < history.present[selection.list].length;
  return there ? draft : { ...draft, selection: null };
}
