/**
 * The version of riding and judging together, which every kept ride and every ride of a group names. Apart from the
 * judge, so that a page that only compares versions does not fetch one; the physics alone have `ride/recording.ts`.
 */

/** Raised when any ride or mark comes out differently than before. */
export const RULES_VERSION = '5';
