/**
 * What the ride picture is asked to show: light and look, chosen by the level and the settings.
 * Nothing here knows physics; the ride itself arrives as one `RideFrame` per update.
 */

/** Time of day and the seed that places hills, trees and clouds. */
export interface Scenery {
  readonly light: 'day' | 'evening' | 'mist';
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
}

/** Colours (`#rrggbb`) and shapes the rider has chosen. */
export interface OutfitLook {
  /** The jersey in the light, in its folds and on its lit edge. */
  readonly jersey: Readonly<Record<'tone' | 'dark' | 'light', string>>;
  /** The frame and its lit edge; null leaves the bike as it comes. */
  readonly frame: Readonly<Record<'tone' | 'light', string>> | null;
  readonly pattern: 'plain' | 'band' | 'dots';
  readonly helmet: 'holes' | 'star' | 'crest';
}

/** Heights are drawn this much steeper than life, so that 4 % looks like something. */
export const VERTICAL_EXAGGERATION = 2.2;
