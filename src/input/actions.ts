/**
 * What comes out of a rider's hands, whatever they hold. Which actions there are is said with the settings; what an
 * action does to the ride is decided in `hub.ts`.
 */
import { KEY_ACTIONS, type KeyAction, type Keys } from '../core/settings/settings.ts';
import type { RideCommand } from '../core/ride/types.ts';

/** What comes out of a hand: a command for the ride, or the wish to stop the clock. */
export type InputCommand = RideCommand | { readonly kind: 'pause' };

/** `hold`: acts as long as it is held. `switch`: one push on, the next push off. */
export type HoldMode = 'hold' | 'switch';

/** The action of a key, or null. */
export function actionOfKey(keys: Keys, code: string): KeyAction | null {
  return KEY_ACTIONS.find((action) => keys[action].includes(code)) ?? null;
}
