/**
 * What some places say about bicycles with a motor: for information only, with source and the year it is of. The law of
 * the place and the day is what counts; bikes here are ridden by the first of them.
 */

/** What one place says. */
export interface MotorRule {
  readonly place: 'eu' | 'uk' | 'us' | 'california' | 'canada' | 'australia' | 'new-zealand' | 'japan';
  /** Rated power (W), or null where none was found. */
  readonly ratedW: number | null;
  /** Speed at which the help must be gone (km/h), or null where none was found. */
  readonly helpToKmh: number | null;
  /** Where it was read, and of which year it is; null where the page did not say. */
  readonly source: string;
  readonly year: number | null;
}

export const MOTOR_RULES: readonly MotorRule[] = [
  { place: 'eu', ratedW: 250, helpToKmh: 25, source: 'EN 15194', year: 2017 },
  { place: 'uk', ratedW: 250, helpToKmh: 25, source: 'second hand', year: 2015 },
  { place: 'us', ratedW: 750, helpToKmh: 32, source: 'Public Law 107-319', year: 2002 },
  { place: 'california', ratedW: null, helpToKmh: 32, source: 'Vehicle Code 312.5, class 1', year: 2016 },
  { place: 'canada', ratedW: 500, helpToKmh: 32, source: 'second hand, most provinces', year: null },
  { place: 'australia', ratedW: 250, helpToKmh: 25, source: 'second hand', year: 2012 },
  { place: 'new-zealand', ratedW: 300, helpToKmh: null, source: 'second hand', year: null },
  { place: 'japan', ratedW: null, helpToKmh: 24, source: 'second hand', year: 2008 },
];
