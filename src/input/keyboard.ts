/**
 * Keys become actions. Listens on the window, so a ride can be played without clicking anything first;
 * leaves typing in fields, combinations with modifier keys and all keys without an action alone.
 */
import { KEY_ACTIONS, type KeyAction, type Keys } from '../core/settings/settings.ts';
import type { InputHub } from './hub.ts';

interface KeyboardOptions {
  readonly target: Window;
  readonly hub: InputHub;
  readonly keys: () => Keys;
  /** Keys count only while this is true; afterwards a page may use them again. */
  readonly active: () => boolean;
}

/** Starts listening; the answer stops it. */
export function listenToKeys({ target, hub, keys, active }: KeyboardOptions): () => void {
  const onDown = (event: KeyboardEvent): void => {
    if (!active() || isForSomebodyElse(event)) return;
    const action = actionOfKey(keys(), event.code);
    if (action === null) return;
    // Arrows would scroll and Space would push the focused button.
    event.preventDefault();
    if (!event.repeat) hub.down(action, sourceOf(event), event.timeStamp);
  };
  const onUp = (event: KeyboardEvent): void => {
    if (active() && actionOfKey(keys(), event.code) !== null && !isForSomebodyElse(event))
      event.preventDefault();
    hub.up(sourceOf(event));
  };
  target.addEventListener('keydown', onDown);
  target.addEventListener('keyup', onUp);
  return () => {
    target.removeEventListener('keydown', onDown);
    target.removeEventListener('keyup', onUp);
  };
}

function actionOfKey(keys: Keys, code: string): KeyAction | null {
  return KEY_ACTIONS.find((action) => keys[action].includes(code)) ?? null;
}

function sourceOf(event: KeyboardEvent): string {
  return `key:${event.code}`;
}

function isForSomebodyElse(event: KeyboardEvent): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) return true;
  const target = event.target as Partial<HTMLElement> | null;
  return target?.isContentEditable === true || /^(INPUT|SELECT|TEXTAREA)$/.test(target?.tagName ?? '');
}
