/** What the page of recorded rides asks of the app. Plain types; who answers reads files in a worker and keeps numbers. */
import type { HeightUnit } from '../../core/gpx/choose.ts';
import type { RoadQuestion } from '../../core/gpx/types.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Problem } from '../../core/level/problems.ts';
import type { ParseResult } from '../../core/level/parse.ts';
import type { KeptRoadRide } from '../../core/recorded/kept.ts';
import type {
  RoadPitch,
  RoadRider,
  RoadRideFigures,
  RoadRideProblem,
} from '../../core/recorded/rideFigures.ts';

/** A recorded ride, and what its heights are in where somebody said so. */
export interface RideFile {
  readonly file: Blob;
  readonly heights: HeightUnit | null;
}

/** What became of a file. */
export type BroughtRide =
  | { readonly kind: 'ride'; readonly figures: RoadRideFigures }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'useless'; readonly why: RoadRideProblem | 'no-road' };

/** Told while a file is looked at: what is known so far. */
export interface RoadTold {
  readonly onShare: (share: number) => void;
  /** Its heights may be in feet. */
  readonly onFeet: (question: RoadQuestion) => void;
  /** The ride without the best rides, then with more and more of them. */
  readonly onFigures: (figures: RoadRideFigures) => void;
}

/** What the page works with. */
export interface RoadDesk {
  /** Reads one file after the other, in the order they were given. Never rejects. */
  read(ride: RideFile, who: RoadRider, told: RoadTold): Promise<BroughtRide>;
  /** A pitch of a file as a level. */
  again(
    ride: RideFile,
    who: RoadRider,
    pitch: RoadPitch,
    words: { readonly id: string; readonly title: string; readonly sentence: string },
  ): Promise<ParseResult>;
  /** Keeps a level among the own ones; false where that did not work. */
  keepLevel(level: Level): Promise<boolean>;
  rides(): Promise<readonly KeptRoadRide[]>;
  keep(ride: KeptRoadRide): Promise<boolean>;
  forget(id: string): Promise<void>;
}

/** What the page asks of the app. */
export interface RoadServices {
  /** Fetched when the page is opened. */
  onTheRoad(): Promise<RoadDesk>;
}
