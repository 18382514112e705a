/** What a level made by a person begins with, from pieces or from a recorded road, until they choose otherwise. */
import { allAids, type Level } from './schema.ts';

export const OWN_LEVEL: Pick<Level, 'teaches' | 'audience' | 'seed' | 'aids' | 'weights' | 'passMark'> = {
  teaches: 'everything',
  audience: 'everyone',
  seed: 1,
  aids: { ...allAids(true), nextStep: false, clickTrack: false, liveMarks: false },
  weights: { cadence: 1, foresight: 1, easing: 1, chainLine: 1, economy: 1 },
  passMark: 70,
};

/** A road with nothing along it, beside the ladder. */
export const BARE_ROAD: Pick<
  Level,
  'rung' | 'joinM' | 'stopLinesM' | 'winds' | 'surfaces' | 'hidden' | 'cues' | 'light'
> = {
  rung: 0,
  joinM: 10,
  stopLinesM: [],
  winds: [],
  surfaces: [],
  hidden: [],
  cues: [],
  light: 'day',
};
