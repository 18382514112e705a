/**
 * What the gear check is given. Plain data and callbacks: riding the candidates is done by whoever answers
 * `onCompute`, choosing and keeping by whoever shows the page.
 */
import type { GearCandidate, GearOutcome, GearParts } from '../../core/coach/gearCheck.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import type { RideJob } from '../../core/ride/job.ts';
import type { Format } from '../../words/format.ts';

/** One road, one bike, one rider; and parts, where only those are to be tried. */
export interface GearQuestion extends Omit<RideJob, 'autoEase'> {
  readonly asked?: GearParts | undefined;
}

/** Told what has been found so far; nothing is heard any more after the question was given up. */
interface GearListener {
  readonly onOwn: (outcome: GearOutcome) => void;
  readonly onCandidate: (candidate: GearCandidate) => void;
  readonly onDone: () => void;
  readonly onFailed: () => void;
}

/** What the page asks of the app. */
export interface GearCheckServices {
  /** Works on a gear check; the answer gives it up. */
  readonly checkGears: (question: GearQuestion, told: GearListener) => () => void;
}

export interface GearCheckProps {
  readonly bike: Bike;
  readonly rider: Rider;
  /** Levels that come with the game, and roads made or imported on this device. */
  readonly levels: readonly Level[];
  readonly ownLevels: readonly Level[];
  /** An unknown id means the first level. */
  readonly chosenLevelId: string;
  /** Begins to work on a question; the answer gives it up. Must stay the same function between two drawings. */
  readonly onCompute: (question: GearQuestion, told: GearListener) => () => void;
  readonly onChooseLevel: (levelId: string) => void;
  /** The rider's bike with other parts; its id is `own`. */
  readonly onTakeBike: (bike: Bike) => void;
  readonly format: Format;
}
