/** Levels for the tests of the bench's pages. No expectation lives here. */
import type { Level } from '../../../src/core/level/schema.ts';
import { freshLevel } from '../../../src/features/bench/fresh.ts';

/** Two kilometres as they come out of a recorded file: a height every ten metres, in whole millimetres. */
export function recordedLevel(): Level {
  const heightsM = Array.from({ length: 201 }, (_, i) => Math.round(14_000 * Math.sin(i / 16)) / 1_000);
  return { ...freshLevel('Sunday', 'Up.'), pieces: [{ kind: 'recorded', stepM: 10, heightsM }] };
}
