/** Reads a text of rides line by line and gives what it finds by the handful. Knows no worker. */
import { joinParts, type ReadFile, type RideFilePart, ridesIn } from '../core/transfer/rideFile.ts';
import type { Made } from './longWork.ts';

/** Lines in one handful: few enough to be taken in at a glance of the page. */
const HANDFUL = 100;

/** All rides in a text. */
export async function* readRidesOf(text: string): AsyncGenerator<Made<ReadFile>> {
  let some: RideFilePart[] = [];
  let share = 0;
  for (const part of ridesIn(text)) {
    some.push(part);
    share = part.share;
    if (some.length < HANDFUL) continue;
    yield { share, value: joinParts(some) };
    some = [];
  }
  yield { share, value: joinParts(some) };
}
