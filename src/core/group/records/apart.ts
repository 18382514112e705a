/**
 * Why a ride is set apart from a group's table, in a file of its own: pages say it without all the riding and marking that
 * finds it out (`remark.ts`).
 */

/** Why a ride was set apart. */
export type ApartCode =
  /** Marks only; nothing to ride again. The record may still be used as it is. */
  | 'no-recording'
  | 'unknown-level'
  /** The level was changed since, or is another one under the same id. */
  | 'other-level'
  /** The recording is of another ride than the record says. */
  | 'other-setup'
  /** A bike or rider under the name of a bundled one, with other numbers. */
  | 'changed-bike'
  | 'changed-rider'
  /** Bike or rider with which no ride is possible. */
  | 'impossible-setup'
  | 'too-long'
  | 'not-finished'
  /** Ridden and marked by another version of the game, so it cannot be ridden again. Its marks may be used as they came. */
  | 'other-version'
  /** Riding it again gave other fingerprints. */
  | 'not-same-ride'
  /** The same ride, but other marks than the record says. */
  | 'other-marks';

/** Why a record counts with the marks it came with although it was not ridden again here: that is no reason to doubt it. */
export function countsAsItCame(code: ApartCode): boolean {
  return code === 'no-recording' || code === 'unknown-level' || code === 'other-version';
}
