/**
 * What the ride picture is asked to show: light and look, chosen by the level and the settings.
 * Nothing here knows physics; the ride itself arrives as one `RideFrame` per update.
 */

import type { OutfitLook } from '../../core/settings/outfit.ts';
import type { Air, Companion, Place } from '../../core/level/schema.ts';

/** Land, time of day, air, company, and the seed that places hills, trees and clouds. */
export interface Scenery {
  readonly place: Place;
  readonly light: 'day' | 'evening' | 'mist';
  readonly air: Air;
  readonly company: readonly Companion[];
  /** Apples are carried in a basket. */
  readonly apples: boolean;
  readonly seed: number;
  /** Signs carry the percent beside the wedge. */
  readonly numbers: boolean;
}

/** How the player likes to see it. */
export interface Look {
  /** `indoor` is calm cut paper, `field` white paper with strong ink for sunlight. */
  readonly theme: 'indoor' | 'field';
  /** No bobbing, swaying, drifting or camera nudges. */
  readonly reducedMotion: boolean;
  /** A small rider with a big head and playful colours. */
  readonly childRider: boolean;
  /** A dog keeps the rider company. */
  readonly dog: boolean;
  readonly kit: OutfitLook;
  /** What a friend on the road wears. */
  readonly friendKit: OutfitLook;
}

/** Somebody who rides the same road in the picture and not on it: the best ride, or the rider's own last one. */
export interface Beside {
  readonly who: 'best' | 'last';
  /** Where they are (m) and how far their cranks have turned, so long after the start (s); null while that is not known. */
  readonly at: (timeS: number) => { readonly distanceM: number; readonly crankTurns: number } | null;
}

/** Heights are drawn this much steeper than life, so that 4 % looks like something. */
export const VERTICAL_EXAGGERATION = 2.2;
