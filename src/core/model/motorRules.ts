/**
 * What some places say about bicycles with a motor: for information only, with source and the year it is of. The law of
 * the place and the day is what counts; bikes here are ridden by the first of them.
 */

interface MotorRule {
  readonly place: 'eu' | 'uk' | 'us' | 'california' | 'canada' | 'australia' | 'new-zealand' | 'japan';
  /** Rated power (W), or null where none was found. */
  readonly ratedW: number | null;
  /** Speed at which the help must be gone (km/h), or null where none was found. */
  readonly helpToKmh: number | null;
  /** The standard or law it was read in; null where it was reported, not checked against the law's text. */
  readonly source: string | null;
  /** The year it is of, or null where the page did not say. */
  readonly year: number | null;
}

export const MOTOR_RULES: readonly MotorRule[] = [
  { place: 'eu', ratedW: 250, helpToKmh: 25, source: 'EN 15194', year: 2017 },
  { place: 'uk', ratedW: 250, helpToKmh: 25, source: null, year: 2015 },
  { place: 'us', ratedW: 750, helpToKmh: 32, source: 'Public Law 107-319', year: 2002 },
  { place: 'california', ratedW: null, helpToKmh: 32, source: 'Vehicle Code 312.5, class 1', year: 2016 },
  { place: 'canada', ratedW: 500, helpToKmh: 32, source: null, year: null },
  { place: 'australia', ratedW: 250, helpToKmh: 25, source: null, year: 2012 },
  { place: 'new-zealand', ratedW: 300, helpToKmh: null, source: null, year: null },
  { place: 'japan', ratedW: null, helpToKmh: 24, source: null, year: 2008 },
];
