/** The page's side of reading a long text of rides: one promise, told how far it is, that can be stopped. */
import { joinFiles, type ReadFile } from '../core/transfer/rideFile.ts';
import type { rideFileService } from './rideFileWork.ts';
import { partsOf } from './rpc.ts';

/** Reads a text of rides; null where it was stopped. */
export async function readRidesAway(
  start: () => Worker | null,
  text: string,
  onShare: (share: number) => void,
  signal: AbortSignal,
): Promise<ReadFile | null> {
  const files: ReadFile[] = [];
  const here = async () => (await import('./rideFileWork.ts')).rideFileService;
  const reader = { start, here, afterSilence: 'nobody' } as const;
  for await (const { share, rides } of partsOf<typeof rideFileService, 'readRides'>(
    reader,
    'readRides',
    text,
    signal,
  )) {
    files.push(rides);
    onShare(share);
  }
  return signal.aborted ? null : joinFiles(files);
}
