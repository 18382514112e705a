/**
 * What a rider's hands can do, whatever they hold: the names that keys, pads and buttons are tied to.
 * What an action does to the ride is decided in `hub.ts`; the words for it are handed in by `main`.
 */
import type { RideCommand } from '../core/ride/types.ts';

/** Everything that can be pressed during a ride, in the order of a settings page. */
export const ACTIONS = [
  'rear-easier',
  'rear-harder',
  'front-smaller',
  'front-bigger',
  'ease',
  'press',
  'coast',
  'brake',
  'pause',
] as const;

export type InputAction = (typeof ACTIONS)[number];

/** What comes out of a hand: a command for the ride, or the wish to stop the clock. */
export type InputCommand = RideCommand | { readonly kind: 'pause' };

/** `hold`: acts as long as it is held. `switch`: one push on, the next push off. */
export type HoldMode = 'hold' | 'switch';

/** Keys of each action, as `KeyboardEvent.code` (the place on the keyboard, not the letter printed there). */
export type KeyBindings = Readonly<Record<InputAction, readonly string[]>>;

/** The keys a new player finds. */
export const DEFAULT_KEYS: KeyBindings = {
  'rear-easier': ['ArrowDown'],
  'rear-harder': ['ArrowUp'],
  'front-smaller': ['KeyS'],
  'front-bigger': ['KeyW'],
  ease: ['Space'],
  press: ['ArrowRight'],
  coast: ['KeyC'],
  brake: ['ArrowLeft'],
  pause: ['Escape', 'KeyP'],
};

/** The action of a key, or null. */
export function actionOfKey(keys: KeyBindings, code: string): InputAction | null {
  return ACTIONS.find((action) => keys[action].includes(code)) ?? null;
}
