/** Problems as they are printed: what the core found, with its sentence beside it. */
import type { Problem } from '../../core/level/problems.ts';
import type { RecordingProblem } from '../../core/ride/recording.ts';
import { sentenceOf } from '../../words/problems.ts';

/** A problem with its sentence, ready to be printed; everything else it has stays. */
export function spoken<P extends Problem>(problem: P): P & { readonly sentence: string } {
  return { ...problem, sentence: sentenceOf(problem) };
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
