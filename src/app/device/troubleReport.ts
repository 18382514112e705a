/**
 * A report of what went wrong, as a file a person may pass on: versions, what happened, and the ride. It holds no
 * person: no name, no group, no road somebody made, and of bike and rider only the numbers the ride depends on.
 */
import { RULES_VERSION } from '../../core/coach/rules.ts';
import { PHYSICS_VERSION, type Recording } from '../../core/ride/recording.ts';
import type { Trouble } from './trouble.ts';

/** What a report is made of. */
interface ReportParts {
  /** Names of the files of this build; their names change with their contents. */
  readonly build: readonly string[];
  readonly browser: string;
  readonly troubles: readonly Trouble[];
  readonly recording: Recording | null;
  /** Whether a level of this id comes with the game; others may be called after a place or a person. */
  readonly isBundled: (levelId: string) => boolean;
}

/** The report as plain data. */
export function reportOf({ build, browser, troubles, recording, isBundled }: ReportParts): object {
  return {
    report: 'before-the-hill',
    schema: 1,
    versions: { build, physics: PHYSICS_VERSION, rules: RULES_VERSION, browser },
    happened: troubles,
    ride: recording === null ? null : withoutPerson(recording, isBundled),
  };
}

function withoutPerson(recording: Recording, isBundled: (levelId: string) => boolean): Recording {
  const { levelId, bike, rider } = recording;
  return {
    ...recording,
    levelId: isBundled(levelId) ? levelId : 'own-level',
    bike: { ...bike, id: 'bike' },
    rider: { ...rider, id: 'rider' },
  };
}
