/** The page's side of taking a copy back: opened by a worker of its own, handed on piece by piece, stopped when told so. */
import workerAddress from './copy.worker.ts?worker&url';
import type { CopyQuestion } from './copyWork.ts';
import type { OpenedImport } from '../storage/types.ts';
import { trustedScript } from './device/trustedScripts.ts';
import { askFor } from '../worker/longWork.ts';
import { startWorker } from '../worker/startWorker.ts';

/** The file is no copy. */
export class NoCopy extends Error {}

/** The pieces of a copy as they come; `onShare` is told how far they are taken (0 to 1). Throws `NoCopy`. */
export async function* piecesOfCopy(
  question: CopyQuestion,
  onShare: (share: number) => void,
  signal: AbortSignal,
): AsyncGenerator<OpenedImport> {
  const start = (): Worker | null => startWorker(workerAddress, trustedScript);
  const here = async () => (await import('./copyWork.ts')).openCopy;
  for await (const { share, value } of askFor({ start, here }, question, signal)) {
    if (value === null) throw new NoCopy();
    yield value;
    // The next one is asked for when this one is kept.
    onShare(share);
  }
}
