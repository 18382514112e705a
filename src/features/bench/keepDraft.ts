/**
 * What lies on the bench outlives the page: a moment after every change it is kept, and it comes back when the bench
 * is opened anew. Until it is kept, the browser asks before the tab is closed.
 */
import type { Level } from '../../core/level/schema.ts';
import { type LevelEditor, isUnsaved } from './levelEditor.ts';
import type { DraftStore } from './services.ts';

/** Hands rest for so long before something is kept (ms). */
const REST_MS = 400;

const watched = new WeakSet<LevelEditor>();

/** Brings back what lay on an empty bench, and keeps what will lie there. A second call changes nothing. */
export async function keepDraft(levelEditor: LevelEditor, drafts: DraftStore): Promise<void> {
  if (watched.has(levelEditor)) return;
  watched.add(levelEditor);
  const last = levelEditor.draft() === null ? await drafts.unfinished().catch(() => null) : null;
  if (last !== null && levelEditor.draft() === null) levelEditor.resume(last);
  watch(levelEditor, drafts, last?.level ?? null);
}

/** `stored` is what is kept already. */
function watch(levelEditor: LevelEditor, drafts: DraftStore, stored: Level | null): void {
  let safe = stored;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const unsafe = (): Level | null => {
    const draft = levelEditor.draft();
    return draft !== null && isUnsaved(draft) && draft.history.present !== safe
      ? draft.history.present
      : null;
  };
  const keep = async (): Promise<void> => {
    clearTimeout(timer);
    const draft = levelEditor.draft();
    if (draft === null || !isUnsaved(draft)) {
      if (safe === null) return;
      safe = null;
      return drafts.dropUnfinished();
    }
    const level = draft.history.present;
    if (level === safe) return;
    if (await drafts.keepUnfinished(level)) safe = level;
  };
  const keepQuietly = (): void => void keep().catch(() => undefined);
  levelEditor.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(keepQuietly, REST_MS);
  });
  addEventListener('pagehide', keepQuietly);
  addEventListener('beforeunload', (event) => {
    if (unsafe() !== null) event.preventDefault();
  });
  // A road that came in from a file may lie there already.
  if (unsafe() !== null) keepQuietly();
}
