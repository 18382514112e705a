/**
 * What lies on the bench outlives the page: a moment after every change it is kept, and it comes back when the bench
 * is opened anew. Until it is kept, the browser asks before the tab is closed.
 */
import type { Level } from '../../core/level/schema.ts';
import { type Desk, isUnsaved } from './desk.ts';
import type { UnfinishedShelf } from './services.ts';

/** Hands rest for so long before something is kept (ms). */
const REST_MS = 400;

const watched = new WeakSet<Desk>();

/** Brings back what lay on an empty bench, and keeps what will lie there. A second call changes nothing. */
export async function outlive(desk: Desk, shelf: UnfinishedShelf): Promise<void> {
  if (watched.has(desk)) return;
  watched.add(desk);
  const last = desk.draft() === null ? await shelf.unfinished().catch(() => null) : null;
  if (last !== null && desk.draft() === null) desk.resume(last);
  watch(desk, shelf, last?.level ?? null);
}

/** `onShelf` is what is kept already. */
function watch(desk: Desk, shelf: UnfinishedShelf, onShelf: Level | null): void {
  let safe = onShelf;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const unsafe = (): Level | null => {
    const draft = desk.draft();
    return draft !== null && isUnsaved(draft) && draft.history.present !== safe
      ? draft.history.present
      : null;
  };
  const keep = async (): Promise<void> => {
    clearTimeout(timer);
    const draft = desk.draft();
    if (draft === null || !isUnsaved(draft)) {
      if (safe === null) return;
      safe = null;
      return shelf.dropUnfinished();
    }
    const level = draft.history.present;
    if (level === safe) return;
    if (await shelf.keepUnfinished(level)) safe = level;
  };
  const keepQuietly = (): void => void keep().catch(() => undefined);
  desk.subscribe(() => {
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
