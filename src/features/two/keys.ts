/** Keys for two people on one keyboard: what one hand reaches on either side. Pause is shared. */
import { type Keys, KEYS_FOR_ONE_HAND } from '../../core/settings/settings.ts';

export type Side = 'left' | 'right';
export const SIDES = ['left', 'right'] as const satisfies readonly Side[];

const PAUSE = ['Escape'];

export const KEYS_FOR_TWO: Readonly<Record<Side, Keys>> = {
  left: { ...KEYS_FOR_ONE_HAND.left, pause: PAUSE },
  right: { ...KEYS_FOR_ONE_HAND.right, pause: PAUSE },
};
