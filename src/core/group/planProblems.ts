/**
 * Turns what the plan's schema finds into a path and a sentence. Types and limits are said as for levels;
 * only what would speak of a level is said here in a plan's own words.
 */
import type * as z from 'zod/mini';
import { type Problem, sentenceFor } from '../level/problems.ts';

/** One or more problems for a finding of the schema. */
export function planSentence(issue: z.core.$ZodIssue, root: unknown): Problem[] {
  return sentenceFor(issue, root).map((problem) => {
    switch (problem.code) {
      case 'unknown-key':
        return { ...problem, sentence: 'This is not a part of a plan. Remove it or check its spelling.' };
      case 'unknown-kind':
        return { ...problem, sentence: 'A ride of a plan has the kind bundled, own or check.' };
      case 'bad-format':
        return {
          ...problem,
          sentence: 'Use small letters, digits and dashes only, for example "first-evening".',
        };
      case 'invalid':
        return { ...problem, sentence: 'This does not fit here. Compare with a ready plan.' };
      default:
        return problem;
    }
  });
}
