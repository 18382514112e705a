/** Problems as they are printed: what the core found, with its sentence beside it. */
import type { Problem } from '../core/level/problems.ts';
import type { RecordingProblem } from '../core/ride/recording.ts';
import { sentenceOf } from '../words/problems.ts';

/** A problem with its sentence; everything else it has stays. */
export function spoken<P extends Problem>(problem: P): Omit<P, 'about'> & { readonly sentence: string } {
  const { about: _, path, code, ...rest } = problem;
  return { path, code, sentence: sentenceOf(problem), ...rest } as Omit<P, 'about'> & { sentence: string };
}

const RECORDING: Readonly<Record<RecordingProblem['code'], (where: string) => string>> = {
  'newer-schema': () =>
    'This ride was saved by a newer version. Update the game to read it; it was left as it is.',
  'not-a-recording': (where) =>
    `This is no recording of a ride (look at "${where}"). Choose a saved ride file.`,
  'out-of-order': () => 'The commands of this recording are not in order of time.',
};

/** Why something cannot be ridden again. */
export function recordingSentence({ code, where }: RecordingProblem): string {
  return RECORDING[code](where);
}
