/** Keys for two people on one keyboard: one has the letters on the left, the other the arrows. Pause is shared. */
import type { Keys } from '../settings.ts';

export type Side = 'left' | 'right';
export const SIDES = ['left', 'right'] as const satisfies readonly Side[];

export const KEYS_FOR_TWO: Readonly<Record<Side, Keys>> = {
  left: {
    'rear-easier': ['KeyS'],
    'rear-harder': ['KeyW'],
    'front-smaller': ['KeyA'],
    'front-bigger': ['KeyD'],
    ease: ['KeyE'],
    press: ['KeyR'],
    coast: ['KeyC'],
    brake: ['KeyQ'],
    pause: ['Escape'],
  },
  right: {
    'rear-easier': ['ArrowDown'],
    'rear-harder': ['ArrowUp'],
    'front-smaller': ['ArrowLeft'],
    'front-bigger': ['ArrowRight'],
    ease: ['Enter'],
    press: ['KeyP'],
    coast: ['KeyO'],
    brake: ['KeyL'],
    pause: ['Escape'],
  },
};
