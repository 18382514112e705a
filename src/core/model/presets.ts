/**
 * Bikes and riders that come with the game, as data. Tooth counts and sizes are ordinary ones of their kind
 * (common practice, no source); lateral places after the sprocket pitches quoted in MODEL.md.
 */
import type { Bike, Rider } from './types.ts';

const ADULT_WHEELS_KG_M2 = 0.14;

/** Bundled bikes, from small to fast. */
export const BIKES: readonly Bike[] = [
  {
    id: 'kids-20-1x7',
    chainringsTeeth: [32],
    sprocketsTeeth: [12, 14, 16, 18, 21, 26, 32],
    tyreWidthMm: 47,
    beadSeatMm: 406,
    crankLengthMm: 140,
    chainstayMm: 370,
    frontChainLineMm: 45,
    rearChainLineMm: 45,
    ringSpacingMm: 7,
    sprocketPitchMm: 5,
    shifter: 'mechanical',
    refusesCrossed: false,
    massKg: 9.5,
    cdaM2: 0.3,
    rollingCoefficient: 0.007,
    wheelInertiaKgM2: 0.06,
  },
  {
    id: 'kids-24-1x8',
    chainringsTeeth: [32],
    sprocketsTeeth: [12, 14, 16, 18, 21, 24, 28, 32],
    tyreWidthMm: 47,
    beadSeatMm: 507,
    crankLengthMm: 152,
    chainstayMm: 395,
    frontChainLineMm: 45,
    rearChainLineMm: 45,
    ringSpacingMm: 7,
    sprocketPitchMm: 4.8,
    shifter: 'mechanical',
    refusesCrossed: false,
    massKg: 11,
    cdaM2: 0.32,
    rollingCoefficient: 0.0065,
    wheelInertiaKgM2: 0.09,
  },
  {
    id: 'town-1x9',
    chainringsTeeth: [38],
    sprocketsTeeth: [11, 13, 15, 17, 20, 23, 26, 30, 34],
    tyreWidthMm: 37,
    beadSeatMm: 622,
    crankLengthMm: 170,
    chainstayMm: 445,
    frontChainLineMm: 46,
    rearChainLineMm: 45,
    ringSpacingMm: 7,
    sprocketPitchMm: 4.34,
    shifter: 'mechanical',
    refusesCrossed: false,
    massKg: 15,
    cdaM2: 0.45,
    rollingCoefficient: 0.006,
    wheelInertiaKgM2: 0.18,
  },
  {
    id: 'trekking-3x8',
    chainringsTeeth: [26, 36, 48],
    sprocketsTeeth: [11, 13, 15, 18, 21, 24, 28, 32],
    tyreWidthMm: 40,
    beadSeatMm: 622,
    crankLengthMm: 170,
    chainstayMm: 445,
    frontChainLineMm: 47.5,
    rearChainLineMm: 45,
    ringSpacingMm: 8,
    sprocketPitchMm: 4.8,
    shifter: 'mechanical',
    refusesCrossed: false,
    massKg: 16,
    cdaM2: 0.42,
    rollingCoefficient: 0.006,
    wheelInertiaKgM2: 0.18,
  },
  {
    id: 'road-2x11',
    chainringsTeeth: [34, 50],
    sprocketsTeeth: [11, 12, 13, 14, 15, 17, 19, 21, 23, 25, 28],
    tyreWidthMm: 25,
    beadSeatMm: 622,
    crankLengthMm: 172.5,
    chainstayMm: 410,
    frontChainLineMm: 43.5,
    rearChainLineMm: 43.5,
    ringSpacingMm: 7,
    sprocketPitchMm: 3.74,
    shifter: 'mechanical',
    refusesCrossed: false,
    massKg: 8.5,
    cdaM2: 0.32,
    rollingCoefficient: 0.004,
    wheelInertiaKgM2: ADULT_WHEELS_KG_M2,
  },
  {
    id: 'gravel-1x12',
    chainringsTeeth: [40],
    sprocketsTeeth: [10, 11, 13, 15, 17, 19, 21, 24, 28, 32, 38, 44],
    tyreWidthMm: 40,
    beadSeatMm: 622,
    crankLengthMm: 172.5,
    chainstayMm: 430,
    frontChainLineMm: 46,
    rearChainLineMm: 45,
    ringSpacingMm: 7,
    sprocketPitchMm: 3.6,
    shifter: 'electronic',
    refusesCrossed: false,
    massKg: 10,
    cdaM2: 0.36,
    rollingCoefficient: 0.005,
    wheelInertiaKgM2: 0.16,
  },
];

/** Bundled riders. Powers are what such a rider holds for a lesson, not what they can do at most. */
export const RIDERS: readonly Rider[] = [
  {
    id: 'child-9',
    massKg: 31,
    steadyPowerW: 50,
    cadenceLowRpm: 65,
    cadenceHighRpm: 85,
    criticalPowerW: 58,
    reserveJ: 3_000,
  },
  {
    id: 'adult-new',
    massKg: 75,
    steadyPowerW: 130,
    cadenceLowRpm: 70,
    cadenceHighRpm: 90,
    criticalPowerW: 150,
    reserveJ: 10_000,
  },
  {
    id: 'adult-weekly',
    massKg: 75,
    steadyPowerW: 180,
    cadenceLowRpm: 78,
    cadenceHighRpm: 94,
    criticalPowerW: 210,
    reserveJ: 14_000,
  },
  {
    id: 'adult-strong',
    massKg: 70,
    steadyPowerW: 250,
    cadenceLowRpm: 82,
    cadenceHighRpm: 98,
    criticalPowerW: 280,
    reserveJ: 20_000,
  },
];

/** The rider that suits a bundled bike when nobody has chosen one. */
export const MATCHING_RIDER: Readonly<Record<string, string>> = {
  'kids-20-1x7': 'child-9',
  'kids-24-1x8': 'child-9',
  'town-1x9': 'adult-new',
  'trekking-3x8': 'adult-weekly',
  'road-2x11': 'adult-weekly',
  'gravel-1x12': 'adult-strong',
};

/** A bundled bike by id, or undefined. */
export function bikeById(id: string): Bike | undefined {
  return BIKES.find((bike) => bike.id === id);
}

/** A bundled rider by id, or undefined. */
export function riderById(id: string): Rider | undefined {
  return RIDERS.find((rider) => rider.id === id);
}
