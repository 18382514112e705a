/**
 * Bikes and riders that come with the game, as data. Tooth counts and sizes are ordinary ones of their kind
 * (common practice, no source); lateral places after the sprocket pitches quoted in MODEL.md.
 */
import { canonicalJson } from '../math/hash.ts';
import { FALLS_S } from './motor.ts';
import type { Bike, Motor, Rider } from './types.ts';

/** What nearly all bikes have in common. */
const USUAL = {
  beadSeatMm: 622,
  crankLengthMm: 170,
  ringSpacingMm: 7,
  sprocketPitchMm: 5,
  shifter: 'mechanical',
  refusesCrossed: false,
} as const;

const KIDS_20 = {
  ...USUAL,
  tyreWidthMm: 47,
  beadSeatMm: 406,
  crankLengthMm: 140,
  chainstayMm: 370,
  cdaM2: 0.3,
  rollingCoefficient: 0.007,
  wheelInertiaKgM2: 0.06,
} as const;

const TOWN_HUB = {
  ...USUAL,
  chainringsTeeth: [38],
  sprocketsTeeth: [20],
  tyreWidthMm: 40,
  chainstayMm: 460,
  frontChainLineMm: 44,
  rearChainLineMm: 44,
  massKg: 17.5,
  rollingCoefficient: 0.006,
  wheelInertiaKgM2: 0.19,
} as const;

const TREKKING_CRANK = {
  ...USUAL,
  chainringsTeeth: [38],
  tyreWidthMm: 47,
  chainstayMm: 475,
  frontChainLineMm: 48,
  rollingCoefficient: 0.0065,
  wheelInertiaKgM2: 0.2,
} as const;

/** Bundled bikes, from small to fast. */
export const BIKES: readonly Bike[] = [
  {
    ...KIDS_20,
    id: 'kids-20-1x7',
    chainringsTeeth: [32],
    sprocketsTeeth: [12, 14, 16, 18, 21, 26, 32],
    frontChainLineMm: 45,
    rearChainLineMm: 45,
    massKg: 9.5,
  },
  {
    ...USUAL,
    id: 'kids-24-1x8',
    chainringsTeeth: [32],
    sprocketsTeeth: [12, 14, 16, 18, 21, 24, 28, 32],
    tyreWidthMm: 47,
    beadSeatMm: 507,
    crankLengthMm: 152,
    chainstayMm: 395,
    frontChainLineMm: 45,
    rearChainLineMm: 45,
    sprocketPitchMm: 4.8,
    massKg: 11,
    cdaM2: 0.32,
    rollingCoefficient: 0.0065,
    wheelInertiaKgM2: 0.09,
  },
  {
    ...USUAL,
    id: 'town-1x9',
    chainringsTeeth: [38],
    sprocketsTeeth: [11, 13, 15, 17, 20, 23, 26, 30, 34],
    tyreWidthMm: 37,
    chainstayMm: 445,
    frontChainLineMm: 46,
    rearChainLineMm: 45,
    sprocketPitchMm: 4.34,
    massKg: 15,
    cdaM2: 0.45,
    rollingCoefficient: 0.006,
    wheelInertiaKgM2: 0.18,
  },
  {
    ...USUAL,
    id: 'trekking-3x8',
    chainringsTeeth: [26, 36, 48],
    sprocketsTeeth: [11, 13, 15, 18, 21, 24, 28, 32],
    tyreWidthMm: 40,
    chainstayMm: 445,
    frontChainLineMm: 47.5,
    rearChainLineMm: 45,
    ringSpacingMm: 8,
    sprocketPitchMm: 4.8,
    massKg: 16,
    cdaM2: 0.42,
    rollingCoefficient: 0.006,
    wheelInertiaKgM2: 0.18,
  },
  {
    ...KIDS_20,
    id: 'kids-20-hub-3',
    chainringsTeeth: [34],
    sprocketsTeeth: [18],
    hub: 'three',
    backPedalBrake: true,
    frontChainLineMm: 43,
    rearChainLineMm: 43,
    massKg: 10.5,
  },
  { ...TOWN_HUB, id: 'town-hub-3', hub: 'three', backPedalBrake: true, cdaM2: 0.48 },
  { ...TOWN_HUB, id: 'town-hub-7', hub: 'seven', cdaM2: 0.47 },
  {
    ...TREKKING_CRANK,
    id: 'trekking-hub-8-crank',
    sprocketsTeeth: [20],
    hub: 'eight-wide',
    motor: { place: 'crank', helpRatio: 1, batteryWh: 500, brakeSwitches: true, fallsS: FALLS_S },
    rearChainLineMm: 48,
    massKg: 27,
    cdaM2: 0.46,
  },
  {
    ...TREKKING_CRANK,
    id: 'trekking-1x10-crank',
    sprocketsTeeth: [11, 13, 15, 17, 19, 21, 24, 28, 32, 36],
    motor: { place: 'crank', helpRatio: 1, batteryWh: 500, fallsS: FALLS_S },
    rearChainLineMm: 46,
    sprocketPitchMm: 3.95,
    massKg: 25,
    cdaM2: 0.44,
  },
  {
    ...TOWN_HUB,
    id: 'town-hub-7-wheel',
    hub: 'seven',
    motor: { place: 'wheel', helpRatio: 1, batteryWh: 400, fallsS: FALLS_S },
    backPedalBrake: true,
    tyreWidthMm: 47,
    chainstayMm: 470,
    massKg: 25,
    cdaM2: 0.48,
    rollingCoefficient: 0.0065,
    wheelInertiaKgM2: 0.22,
  },
  {
    ...USUAL,
    id: 'road-2x11',
    chainringsTeeth: [34, 50],
    sprocketsTeeth: [11, 12, 13, 14, 15, 17, 19, 21, 23, 25, 28],
    tyreWidthMm: 25,
    crankLengthMm: 172.5,
    chainstayMm: 410,
    frontChainLineMm: 43.5,
    rearChainLineMm: 43.5,
    sprocketPitchMm: 3.74,
    massKg: 8.5,
    cdaM2: 0.32,
    rollingCoefficient: 0.004,
    wheelInertiaKgM2: 0.14,
  },
  {
    ...USUAL,
    id: 'gravel-1x12',
    chainringsTeeth: [40],
    sprocketsTeeth: [10, 11, 13, 15, 17, 19, 21, 24, 28, 32, 38, 44],
    tyreWidthMm: 40,
    crankLengthMm: 172.5,
    chainstayMm: 430,
    frontChainLineMm: 46,
    rearChainLineMm: 45,
    sprocketPitchMm: 3.6,
    shifter: 'electronic',
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
  'kids-20-hub-3': 'child-9',
  'town-hub-3': 'adult-new',
  'town-hub-7': 'adult-new',
  'trekking-hub-8-crank': 'adult-new',
  'trekking-1x10-crank': 'adult-new',
  'town-hub-7-wheel': 'adult-new',
  'trekking-3x8': 'adult-weekly',
  'road-2x11': 'adult-weekly',
  'gravel-1x12': 'adult-strong',
};

export function bikeById(id: string): Bike | undefined {
  return BIKES.find((bike) => bike.id === id);
}

/** A bundled bike as recordings and settings of before have it, when motors had no lag of their own; null where it is as it was. */
export function earlierBike(bike: Bike): Bike | null {
  const withoutLag = ({ fallsS: _, ...motor }: Motor): Motor => motor;
  return bike.motor?.fallsS === undefined ? null : { ...bike, motor: withoutLag(bike.motor) };
}

/** Today's form of a bundled bike that was kept before; any other bike as it is. */
export function todaysBike(bike: Bike): Bike {
  const today = bikeById(bike.id);
  const earlier = today === undefined ? null : earlierBike(today);
  return today !== undefined && earlier !== null && canonicalJson(earlier) === canonicalJson(bike)
    ? today
    : bike;
}

export function riderById(id: string): Rider | undefined {
  return RIDERS.find((rider) => rider.id === id);
}
