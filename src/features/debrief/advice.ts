/** The one thing to change after a ride, said alone, for places that show no whole debrief. */
import type { RideReport } from '../../core/coach/types.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Settings } from '../../core/settings/settings.ts';
import { createFormat } from '../../words/format.ts';
import { sayChange } from './say.ts';
import { debriefFor } from './speech.ts';

/** In the words for who the level is for. */
export function adviceOf(level: Level, report: RideReport, units: Settings['units']): string {
  return sayChange(report.verdict.change, {
    say: debriefFor(level.audience),
    format: createFormat(units),
    pitchCount: courseOfLevel(level).pitches.length,
  });
}
