/**
 * What the pages of a group session are given and what they ask for. Keeping, riding, marking again and
 * counting the group picture are the owner's; these pages only draw and say what a person wants.
 */
import type { JSX } from 'preact';
import type { GroupPicture } from '../../core/group/picture/group.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { RideRecord } from '../../core/group/records/record.ts';
import type { RiddenTurn, SavedRound } from '../../core/group/savedRound.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Format } from '../../words/format.ts';

/** A ride the owner is asked to begin. */
export interface RideStart extends RiddenTurn {
  /** With seed and aids of this turn. */
  readonly level: Level;
  /** Id of a bundled bike, or `own` for the one set on the device. */
  readonly bikeId: string;
  /** Id of a bundled rider, or `by-bike` for the one that suits the bike. */
  readonly riderId: string;
}

/** A ride that is over and is being marked, or could not be. */
interface Marking {
  readonly planId: string;
  readonly nickname: string;
  readonly failed: boolean;
}

/** What the owner knows. */
export interface ClinicState {
  readonly saved: {
    readonly plans: readonly ClinicPlan[];
    readonly rounds: readonly SavedRound[];
    readonly records: readonly RideRecord[];
  };
  readonly ownLevels: readonly Level[];
  /** False once something could not be kept on this device. */
  readonly kept: boolean;
  readonly marking: Marking | null;
  /** Id of the record whose whole debrief can be opened, or null. */
  readonly debriefOf: string | null;
  /** Picture of the session that is looked at; null while it is being counted. */
  readonly picture: GroupPicture | null;
  /** The picture that is looked at cannot be counted. */
  readonly notCounted: boolean;
  /** Checksums of rides that count nowhere, because they did not come out as their marks say. */
  readonly apart: readonly string[];
}

/** Everything a session can ask of its owner. */
interface ClinicWishes {
  readonly onSavePlan: (plan: ClinicPlan) => void;
  readonly onDeletePlan: (planId: string) => void;
  readonly onSaveRound: (saved: SavedRound) => Promise<void>;
  /** Begins the turn in its round, keeps that, and then begins the ride; only once the cautions have been read. */
  readonly onRide: (start: RideStart) => void;
  /** The coach takes a ride back: its record goes, and the last ride of a round leaves it too. */
  readonly onTakeBack: (recordId: string) => Promise<void>;
  /** The ride that was just finished was ridden by somebody else in line. */
  readonly onGive: (recordId: string, nickname: string) => Promise<void>;
  readonly onDeleteSession: (planId: string) => Promise<void>;
  /** A fresh id for a plan, session or device: small letters, digits and dashes, at most 60. */
  readonly newId: () => string;
  /** A fresh seed, a whole number below 2^32. */
  readonly newSeed: () => number;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

/** The owner of everything that must survive a reload. */
export interface ClinicDesk extends ClinicWishes {
  /** Comes when another tab has taken over what is kept; this one knows nothing new from then on. */
  readonly gone: Promise<void>;
  state(): ClinicState;
  /** Calls back after every change; the answer stops it. */
  subscribe(listener: () => void): () => void;
  /** Another place is looked at; its picture is wanted, if it shows one. */
  look(place: string): void;
}

/** What the pages ask of the app. */
export interface ClinicServices {
  /** The owner of group sessions, fetched when it is first wanted. */
  clinic(): Promise<ClinicDesk>;
}

/** Everything the pages are given. */
export interface ClinicProps extends ClinicWishes, ClinicState {
  /** What `onPlace` was told last; empty for the first page. */
  readonly place: string;
  readonly levels: readonly Level[];
  readonly format: Format;
  readonly onSaveFile: (name: string, text: string) => void;
  readonly onPrint: () => void;
  /** Opens the whole debrief of the last ride. */
  readonly onDebrief: () => void;
  /** Another place within these pages; comes back as `place`, so that a reload opens the same one. */
  readonly onPlace: (place: string) => void;
  /** What goes from a session to a club's own store, on every page of it. */
  readonly outgoing: JSX.Element | null;
}

/** What a part of one session is given. */
export interface InSession {
  readonly props: ClinicProps;
  readonly session: SavedRound;
}
