/** Reads a text of rides line by line and tells what it finds by the handful. Knows no worker. */
import { joinParts, type ReadFile, type RideFilePart, ridesIn } from '../core/transfer/rideFile.ts';
import { telling } from './rpc.ts';

/** Lines in one handful: few enough to be taken in at a glance of the page. */
const HANDFUL = 100;

/** Some rides, and how much of the text is read by then (0 to 1). */
interface SomeRides {
  readonly share: number;
  readonly rides: ReadFile;
}

async function* ridesOf(text: string): AsyncGenerator<SomeRides> {
  let some: RideFilePart[] = [];
  let share = 0;
  for (const part of ridesIn(text)) {
    some.push(part);
    share = part.share;
    if (some.length < HANDFUL) continue;
    yield { share, rides: joinParts(some) };
    some = [];
  }
  yield { share, rides: joinParts(some) };
}

export const rideFileService = { readRides: telling(ridesOf) };
export type RideFileService = typeof rideFileService;
