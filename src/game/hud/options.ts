/** What the instruments need to be told: how numbers are written, and which of them are shown. */
import type { Course } from '../../core/course/types.ts';
import type { Gear, Machine, Pressure } from '../../core/model/types.ts';
import type { KeyAction } from '../../core/settings/settings.ts';
import type { Beside } from '../engine/types.ts';

/** How the legs push; and where they push as usual, whether they turn too slowly or too fast for it. */
export type LegsShown = Pressure | 'too-slow' | 'too-fast';

/** What a motor does: it pulls, it rests, it may not help at this speed, or its battery is empty. */
export type MotorShown = 'pulls' | 'rests' | 'too-fast' | 'empty';

/** How numbers are written, handed in by the caller. */
export interface HudFormats {
  /** "34 × 17". */
  readonly gearName: (gear: Gear) => string;
  /** Where the shifters are on their way to, seen from a gear. */
  readonly gearWanted: (from: Gear, to: Gear) => string;
  /** Speed with its unit. */
  readonly speed: (speedMps: number) => string;
  /** The speed above which a motor gives nothing. */
  readonly helpLimit: string;
  /** Metres with their unit. */
  readonly metres: (metres: number) => string;
  /** From one mark on the road ahead to the next (m); every other one is named. */
  readonly markM: number;
  /** Speed and distance in km/h and m for those who read the page by program, where people read other units. */
  readonly plain: {
    readonly speed: (speedMps: number) => string;
    readonly metres: (metres: number) => string;
  } | null;
  /** A slope as people say it, "8 %". */
  readonly percent: (slopeRatio: number) => string;
}

/** Which instruments are shown; all of them unless switched off. */
export interface HudAids {
  readonly roadAhead: boolean;
  readonly gear: boolean;
  readonly chainLine: boolean;
  readonly cadence: boolean;
  readonly pressure: boolean;
  readonly cue: boolean;
  readonly nextStep: boolean;
  readonly liveMarks: boolean;
  readonly clickTrack: boolean;
}

export interface HudOptions {
  readonly course: Course;
  readonly machine: Machine;
  /** Thumb pads are on screen: their corners stay free. */
  readonly touch: boolean;
  readonly reducedMotion: boolean;
  /** Numbers are shown; without them a face says how the legs turn. */
  readonly numbers: boolean;
  /** Children's play: the face, the road ahead and what is said, and nothing else. */
  readonly play: boolean;
  /** Something else speaks: the instruments are kept from screen readers. */
  readonly silent: boolean;
  /** Who is seen riding beside: they are named for the first seconds. */
  readonly beside: readonly Beside[];
  /** The sign of what a hand does. */
  readonly drawSign: (action: KeyAction) => SVGElement;
}
