/**
 * The nouns of a ride: what may be commanded, what can happen, the state between two ticks and the
 * frame a shell is shown. All of it is plain readonly data that survives JSON unchanged.
 */
import type { Course } from '../course/types.ts';
import type { ShiftMovement } from '../model/transmission.ts';
import type { Derailleur, Gear, GearPlace, Machine, Pressure, ShiftDirection } from '../model/types.ts';

export type { Derailleur, ShiftDirection } from '../model/types.ts';

/** Everything a player, a driver or a virtual rider can do. */
export type RideCommand =
  /** `steps` 1 to 3 sprockets in one push of the lever; always 1 in front and towards harder. */
  | {
      readonly kind: 'shift';
      readonly derailleur: Derailleur;
      readonly direction: ShiftDirection;
      readonly steps: number;
    }
  | { readonly kind: 'pressure'; readonly pressure: Pressure }
  | { readonly kind: 'brake'; readonly on: boolean };

/** A command with the tick before which it acts. */
export interface TimedCommand {
  readonly tick: number;
  readonly command: RideCommand;
}

interface At {
  readonly tick: number;
  readonly distanceM: number;
}

/** What happened in a tick. Few and physical. */
export type RideEvent =
  | (At &
      ShiftMovement & {
        readonly kind: 'shift-done';
        /**
         * Crank torque over reference torque, legs and crank motor: the mean while a chain moved. A hub says that of the
         * moment in which it took the gear; of a knock the mean while it waited, and never less than a heavy one.
         */
        readonly load: number;
        readonly durationS: number;
        readonly startedAtM: number;
        /** Asked of a chain while the legs rested: it waited for them. */
        readonly waited?: true;
        /** Mean of the crank motor's part in that load while the chain moved or the hub waited; only where there is one. */
        readonly motorLoad?: number;
        /** Made by a hub; with a load that is not clean it slipped in with a knock. */
        readonly hub?: true;
      })
  | (At & { readonly kind: 'shift-hung'; readonly derailleur: Derailleur; readonly hub?: true })
  | (At & { readonly kind: 'shift-waiting'; readonly derailleur: Derailleur })
  | (At & {
      readonly kind: 'shift-refused';
      readonly derailleur: Derailleur;
      readonly direction: ShiftDirection;
      readonly reason: 'no-more' | 'crossed';
    })
  | (At & { readonly kind: 'chain-crossed' })
  | (At & { readonly kind: 'chain-dropped' })
  | (At & { readonly kind: 'chain-restored' })
  | (At & { readonly kind: 'foot-down' })
  | (At & { readonly kind: 'pushed-off' })
  | (At & { readonly kind: 'stopped-at-line' })
  | (At & { readonly kind: 'line-missed' })
  | (At & { readonly kind: 'battery-empty' })
  | (At & { readonly kind: 'reserve-empty' })
  | (At & { readonly kind: 'reserve-back' })
  | (At & { readonly kind: 'finished' });

/** One movement by one derailleur, or one gear a hub waits for; `index` counts rings, sprockets or gears from the smallest. */
export interface ShiftInProgress {
  readonly direction: ShiftDirection;
  readonly fromIndex: number;
  readonly toIndex: number;
  /** Further sprockets of the same push after this one. */
  readonly stepsLeft: number;
  /** Crank turns at rate 1 that a chain's movement takes, and how many are done; a hub does none. */
  readonly neededTurns: number;
  readonly doneTurns: number;
  /** Crank turns a hub has waited for the load to fall; a chain waits for none. */
  readonly waitedTurns: number;
  /** Rate of the movement in the last tick, 1 free to 0.15 hanging; 0 in a hub that waits for the load to fall. */
  readonly rate: number;
  /** Time the chain has been moving or the hub waiting, and the load summed over it. */
  readonly movingS: number;
  readonly loadSecondsSum: number;
  /** The part of it that a crank motor pulled. */
  readonly motorSecondsSum: number;
  readonly startedAtM: number;
  readonly hungReported: boolean;
  readonly waitReported: boolean;
}

/** A push of a lever that has not begun to move the chain yet. */
export interface QueuedShift {
  readonly derailleur: Derailleur;
  readonly direction: ShiftDirection;
  readonly steps: number;
  /** Delay of cable or motor still to run (s). */
  readonly delayS: number;
}

/** `overrun`: past a stop line without stopping, being braked to rest; `standing`: waiting at (or past) a line. */
type RidePhase = 'riding' | 'foot-down' | 'overrun' | 'standing' | 'finished';

/** A motor between two ticks. */
export interface MotorState {
  /** What it turns with now, at the crank or in the wheel (N m). */
  readonly torqueNm: number;
  /** Way since the pedals were last pushed (m). */
  readonly idleM: number;
  /** What is left in the battery (J). */
  readonly chargeJ: number;
}

/** Where the energy went since the start, in joules. `workIn`, `motorIn` and `pushOff` equal the sum of the rest. */
export interface EnergyLedger {
  readonly workInJ: number;
  /** What the motor gave, before the chain where it sits at the crank. */
  readonly motorInJ: number;
  readonly pushOffJ: number;
  readonly kineticJ: number;
  readonly climbedJ: number;
  readonly airJ: number;
  readonly rollingJ: number;
  readonly bearingsJ: number;
  readonly drivetrainJ: number;
  readonly brakesJ: number;
}

/** The whole truth between two ticks. */
export interface RideState extends GearPlace {
  readonly tick: number;
  readonly distanceM: number;
  readonly speedMps: number;
  readonly pressure: Pressure;
  readonly braking: boolean;
  /** Where the legs are on their way to the commanded pressure (0 to 1.6). */
  readonly pressureRatio: number;
  /** Turned since the start, in whole and part turns. */
  readonly crankTurns: number;
  readonly cadenceRpm: number;
  readonly crankTorqueNm: number;
  readonly rear: ShiftInProgress | null;
  readonly front: ShiftInProgress | null;
  readonly queue: readonly QueuedShift[];
  readonly reserveJ: number;
  /** True from an empty reserve until a quarter of it is back: no pressing. */
  readonly spent: boolean;
  readonly chainOn: boolean;
  readonly phase: RidePhase;
  /** Time left in `foot-down` or `standing`. */
  readonly phaseLeftS: number;
  /** True while getting going again after a stop: a slow bike is then no foot down. */
  readonly startingUp: boolean;
  readonly nextStopIndex: number;
  /** How long the chain has been crossed without a break. */
  readonly crossedS: number;
  /** Null on a bike without one. */
  readonly motor: MotorState | null;
  readonly ledger: EnergyLedger;
}

/** Everything about a ride that does not change while it is ridden. */
export interface RideWorld {
  readonly machine: Machine;
  readonly course: Course;
  /** Length of a tick; always `TICK_S` except in convergence tests. */
  readonly tickS: number;
  /** The game eases for the player while a shift is on its way. */
  readonly autoEase: boolean;
  readonly startSpeedMps: number;
  readonly startRingIndex: number;
  readonly startSprocketIndex: number;
}

export interface MotorFrame {
  readonly place: 'crank' | 'wheel';
  /** What it gives now (W), and what it could give at this speed (0 to 1: all, fading, none). */
  readonly powerW: number;
  readonly helpShare: number;
  /** What is left of the battery's charge at the start, 0 to 1. */
  readonly chargeRatio: number;
}

/** What a shell is shown: the state in the words of a screen. Units in the names. */
export interface RideFrame extends GearPlace {
  readonly tick: number;
  readonly timeS: number;
  readonly distanceM: number;
  readonly lengthM: number;
  readonly speedMps: number;
  readonly slopeRatio: number;
  readonly heightM: number;
  readonly cadenceRpm: number;
  readonly bandLowRpm: number;
  readonly bandHighRpm: number;
  readonly crankTurns: number;
  readonly wheelTurns: number;
  /** Crank torque of the legs over reference torque. */
  readonly torqueRatio: number;
  /** What the motor does now, or null without one. */
  readonly motor: MotorFrame | null;
  readonly pressure: Pressure;
  readonly pressureRatio: number;
  /** The rider has stood up: pressing on a climb. */
  readonly outOfSaddle: boolean;
  readonly braking: boolean;
  readonly ringTeeth: number;
  readonly sprocketTeeth: number;
  /** The gear the drive is in, and the one the levers stand for: where it will be when every push has acted. */
  readonly gear: Gear;
  readonly leverGear: Gear;
  readonly developmentM: number;
  /** Where the chain is now, in ring and sprocket indices, fractional during a movement. */
  readonly chainAtRing: number;
  readonly chainAtSprocket: number;
  readonly chainAngleDeg: number;
  /** Crossed now; `crossedS` says since when. */
  readonly crossed: boolean;
  readonly crossedS: number;
  readonly chainOn: boolean;
  /** The movement to show, rear first; null when the chain is at rest. */
  readonly shift: {
    readonly derailleur: Derailleur;
    readonly direction: ShiftDirection;
    readonly rate: number;
    /** A hub waits for the pressure to go. */
    readonly hub: boolean;
  } | null;
  /** Lever pushes that have not begun to act. */
  readonly waitingShifts: number;
  readonly phase: RidePhase;
  readonly phaseLeftS: number;
  readonly reserveRatio: number;
  readonly spent: boolean;
  readonly windMps: number;
  readonly rollingFactor: number;
  readonly sightM: number;
  /** Distance to the next stop line, or null. */
  readonly stopInM: number | null;
}
