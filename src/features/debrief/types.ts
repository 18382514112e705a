/**
 * What the debrief is given. Plain data and callbacks: keeping, planning, replaying and going to other pages
 * are the business of whoever shows it.
 */
import type { Guess } from '../../core/coach/results.ts';
import type { RideReport } from '../../core/coach/types.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import type { RideTrace } from '../../core/ride/trace.ts';

export interface DebriefProps {
  readonly level: Level;
  /** What it is called now; in another language than when it was ridden, perhaps. */
  readonly levelTitle: string;
  /** Seed of the road that was ridden. */
  readonly seed: number;
  readonly bike: Bike;
  readonly rider: Rider;
  readonly trace: RideTrace;
  /** The best ride, or null while it is being worked out. */
  readonly reference: RideTrace | null;
  readonly report: RideReport | null;
  /** Share of the planning that is done (0 to 1), `failed` where it found no ride, or null while nothing is planned. */
  readonly share: number | 'failed' | null;
  /** False if the recording, ridden again, came out differently. */
  readonly same: boolean;
  readonly units: 'metric' | 'imperial';
  /** What bike and rider are called, and the cautions for the printed sheet. */
  readonly bikeName: string;
  readonly riderName: string;
  readonly cautions: readonly string[];
  readonly saved: {
    readonly state: 'saving' | 'saved' | 'not-saved';
    /** Why not, or where. */
    readonly sentence?: string;
  };
  readonly guess: Guess | null;
  /** The explanation is unfolded. */
  readonly unfolded: boolean;
  /** Said after the first ride: what counts on a real bike. */
  readonly outside: { readonly title: string; readonly sentences: readonly string[] } | null;
  readonly nextLevelTitle: string | null;
  /** What the first button says instead of riding again, where it leads somewhere else. */
  readonly againLabel?: string;
  readonly onGuess: (guess: Guess) => void;
  readonly onUnfold: (unfolded: boolean) => void;
  readonly onWatch: (distanceM: number) => void;
  readonly onRideAgain: () => void;
  readonly onNextLevel: () => void;
  readonly onPrint: () => void;
  readonly onSaveRide: () => void;
  /** The strip of the whole road as a PNG. */
  readonly onSavePicture: (picture: Blob) => void;
}
