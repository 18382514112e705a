/** Which ride the big button begins for this state. */
import type { Level } from '../core/level/schema.ts';
import { nextLevel, suitsBike } from '../core/coach/ladder.ts';
import { shiftsInFront } from '../core/model/shifters.ts';
import { isChild } from '../core/settings/settings.ts';
import type { State } from './store.ts';

/** The next sensible level for the chosen rider and bike, or null without levels. */
export function levelForButton(state: State): Level | null {
  const { rider, bike } = state.settings;
  const fitting = state.levels.filter((level) => suitsBike(level, bike));
  return nextLevel(fitting, state.doneIds, isChild(rider), shiftsInFront(bike));
}
