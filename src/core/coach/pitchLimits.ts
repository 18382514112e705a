/**
 * How far around its foot a pitch is looked at, and from when on it was taken well: said once for the judge
 * (`foresight.ts`) and for those who picture a group's rides. What is found there is measured in `onPitch.ts`.
 */

/** Where somebody got ready is looked for from so far before the foot (m). */
export const APPROACH_M = 110;
/** A pitch is judged at most so far beyond its foot (m). */
export const JUDGED_M = 80;
/** Credit from which a pitch counts as taken about right (ours). */
export const ABOUT_RIGHT_CREDIT = 0.7;
