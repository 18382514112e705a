/**
 * The nouns of the machine and its rider, as plain readonly data. Formulas live beside this file;
 * where a bike or rider comes from (preset, form, file) is the business of `level` and the shells.
 */
import type { HubKind } from './hubKinds.ts';

/** How the shifting is worked. Electronic ones act sooner and can be told to refuse a crossed chain. */
export type ShifterKind = 'mechanical' | 'electronic';

/** The shifter at the rear wheel (a derailleur or a hub), and the one at the chainrings. Files have always called them so. */
export type Derailleur = 'rear' | 'front';
export type ShiftDirection = 'easier' | 'harder';

/**
 * Where the two shifters stand: rings counted from the smallest, at the rear from the hardest gear, which is the
 * smallest sprocket or the fastest gear of a hub.
 */
export interface GearPlace {
  readonly ringIndex: number;
  readonly sprocketIndex: number;
}

/** A motor that helps while one pedals, and its battery. */
export interface Motor {
  /** At the crank it pulls on the chain as the legs do; in a wheel it leaves the chain alone. */
  readonly place: 'crank' | 'wheel';
  /** Help as a multiple of the rider's own torque; 0 is off. */
  readonly helpRatio: number;
  /** Energy in the battery when a ride begins (Wh). */
  readonly batteryWh: number;
  /** Each brake lever has a switch that turns the motor off at once. */
  readonly brakeSwitches?: boolean;
  /** Lag with which the help falls when feet go soft (s); bikes of earlier recordings do not name theirs. */
  readonly fallsS?: number;
}

/** One bike. Lists run from small to big: `chainringsTeeth[0]` is the smallest ring, `sprocketsTeeth[0]` the smallest sprocket. */
export interface Bike {
  readonly id: string;
  /** Teeth of the chainrings, ascending; 1 to 3 of them. */
  readonly chainringsTeeth: readonly number[];
  /** Teeth of the sprockets, ascending; 1 to 13 of them. */
  readonly sprocketsTeeth: readonly number[];
  /** Gears inside the rear hub instead of a rear derailleur; there is one sprocket then. */
  readonly hub?: HubKind;
  readonly motor?: Motor;
  /** The rear brake is worked by pedalling backwards, so that the pedals cannot be turned back. */
  readonly backPedalBrake?: boolean;
  /** Tyre width and bead seat diameter of the ISO 5775 mark `width-BSD`. */
  readonly tyreWidthMm: number;
  readonly beadSeatMm: number;
  /** A measured roll-out of the wheel in metres, if somebody measured it; wins over the ISO mark. */
  readonly measuredCircumferenceM?: number;
  readonly crankLengthMm: number;
  readonly chainstayMm: number;
  /** Distance of the chainrings' middle, and of the cassette's middle, from the bike's mid plane. */
  readonly frontChainLineMm: number;
  readonly rearChainLineMm: number;
  readonly ringSpacingMm: number;
  readonly sprocketPitchMm: number;
  readonly shifter: ShifterKind;
  /** Only meaningful on electronic shifters: crossed gears are not offered. */
  readonly refusesCrossed: boolean;
  readonly massKg: number;
  /** Drag area of bike with rider in its usual position. */
  readonly cdaM2: number;
  /** Rolling coefficient on good asphalt. */
  readonly rollingCoefficient: number;
  /** Moment of inertia of both wheels together (kg m²). */
  readonly wheelInertiaKgM2: number;
}

/** Chainrings and sprockets, from small to big. */
export type GearParts = Pick<Bike, 'chainringsTeeth' | 'sprocketsTeeth'>;

export interface Rider {
  readonly id: string;
  readonly massKg: number;
  /** Power held for as long as the lesson lasts (W). */
  readonly steadyPowerW: number;
  /** Comfortable cadence on the flat, lower and upper edge (rpm). */
  readonly cadenceLowRpm: number;
  readonly cadenceHighRpm: number;
  /** Critical power (W) and the work above it (J) that can be spent before it must come back. */
  readonly criticalPowerW: number;
  readonly reserveJ: number;
}

/** What the legs are asked to do. */
export type Pressure = 'coast' | 'ease' | 'steady' | 'press';

/** One gear, computed once per bike. */
export interface Gear extends GearPlace {
  readonly ringTeeth: number;
  readonly sprocketTeeth: number;
  /** In a hub: which of its gears, counted from the slowest, and turns of the wheel for one of the sprocket. */
  readonly hub: { readonly number: number; readonly of: number; readonly ratio: number } | null;
  /** Turns of the wheel for one of the cranks. */
  readonly ratio: number;
  /** Metres per crank turn. */
  readonly developmentM: number;
  /** Signed: positive when the chain runs inwards (towards the big sprockets) going back. */
  readonly chainAngleDeg: number;
  readonly crossed: boolean;
  /** Share of pedal power that reaches the wheel in this gear, chain angle included. */
  readonly efficiency: number;
}

/** Everything the step needs of bike and rider, precomputed. Plain data; `gears[ring * sprockets + sprocket]`. */
export interface Machine {
  readonly bike: Bike;
  readonly rider: Rider;
  readonly ringCount: number;
  /** Places of the rear shifter: sprockets, or gears of the hub. */
  readonly sprocketCount: number;
  readonly gears: readonly Gear[];
  readonly circumferenceM: number;
  readonly totalMassKg: number;
  /** Total mass plus the wheels' rotational share. */
  readonly effectiveMassKg: number;
  readonly referenceTorqueNm: number;
  /** Standstill end of the line of steady effort on the flat (N m); falls linearly to 0 at 150 rpm. */
  readonly standstillTorqueNm: number;
  /** The body's weight on one pedal, mean of a turn (N m): more cannot be given sitting. */
  readonly bodyWeightTorqueNm: number;
  readonly shiftDelayS: number;
}
