/** The page's side of taking a copy back: opened by a worker of its own, handed on piece by piece, stopped when told so. */
import type { CopyQuestion, CopyService } from './device/copyWork.ts';
import type { OpenedImport } from '../storage/types.ts';
import { partsOf } from '../worker/asking.ts';
import type { Workplace } from '../worker/line.ts';

/** The file is no copy. */
export class NoCopy extends Error {}

/** The pieces of a copy as they come; `onShare` is told how far they are taken (0 to 1). Throws `NoCopy`. */
export async function* piecesOfCopy(
  workplace: Workplace<CopyService>,
  question: CopyQuestion,
  onShare: (share: number) => void,
  signal: AbortSignal,
): AsyncGenerator<OpenedImport> {
  const opener = {
    ...workplace,
    afterSilence: 'nobody',
    // The text of a large copy is read in one go, and that takes as long as it takes.
    silenceS: Number.POSITIVE_INFINITY,
  } as const;
  for await (const { share, some } of partsOf<CopyService, 'openCopy'>(
    opener,
    'openCopy',
    question,
    signal,
  )) {
    if (some === null) throw new NoCopy();
    yield some;
    // The next one is asked for when this one is kept.
    onShare(share);
  }
}
