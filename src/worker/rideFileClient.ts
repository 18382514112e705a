/** The page's side of reading a long text of rides: one promise, told how far it is, that can be stopped. */
import { joinFiles, type ReadFile } from '../core/transfer/rideFile.ts';
import type { RideFileService } from './rideFileWork.ts';
import { partsOf } from './asking.ts';
import type { Workplace } from './line.ts';

/** Reads a text of rides; null where it was stopped. */
export async function readRidesAway(
  workplace: Workplace<RideFileService>,
  text: string,
  onShare: (share: number) => void,
  signal: AbortSignal,
): Promise<ReadFile | null> {
  const files: ReadFile[] = [];
  for await (const { share, rides } of partsOf<RideFileService, 'readRides'>(
    { ...workplace, afterSilence: 'nobody' },
    'readRides',
    text,
    signal,
  )) {
    files.push(rides);
    onShare(share);
  }
  return signal.aborted ? null : joinFiles(files);
}
