/**
 * Wheel, development, chain line and drivetrain losses: everything that is known of a gear before
 * anybody pedals. `buildMachine` in `machine.ts` computes it once per bike.
 */
import { PI, smallAtanDeg } from '../math/numbers.ts';
import { HUBS } from './hub.ts';
import type { HubKind } from './hubKinds.ts';
import type { Bike, Gear, GearParts } from './types.ts';

/** A chain on more than one ring is marked as crossed from this angle on (ours; no published limit was found). */
export const CROSSED_ANGLE_DEG = 2.2;
/** …and only where another ring offers a gear this near, at a straighter angle (ours). */
export const CROSSED_TWIN_RATIO = 0.08;

/** Circumference in metres from the ISO 5775 mark: π (bead seat + 2 × width). */
export function circumferenceFromIsoM(tyreWidthMm: number, beadSeatMm: number): number {
  return (PI * (beadSeatMm + 2 * tyreWidthMm)) / 1000;
}

/** Circumference of this bike's wheel (m): measured if somebody measured it, else from the mark. */
export function wheelCircumferenceM(bike: Bike): number {
  return bike.measuredCircumferenceM ?? circumferenceFromIsoM(bike.tyreWidthMm, bike.beadSeatMm);
}

/** Metres travelled per crank turn. */
export function developmentM(circumferenceM: number, ringTeeth: number, sprocketTeeth: number): number {
  return (circumferenceM * ringTeeth) / sprocketTeeth;
}

/** What a rear derailleur must take up: biggest minus smallest, rings and sprockets added (teeth). */
export function capacityTeeth(bike: GearParts): number {
  return spread(bike.chainringsTeeth) + spread(bike.sprocketsTeeth);
}

/**
 * Share of pedal power that reaches the wheel on a straight chain: 0.987 − 0.1231 (1/ring + 1/sprocket).
 * Slope of the loss from the pin friction theory of Spicer et al. 2001; 50 × 17 gives 0.977 (Martin et al. 1998).
 */
export function straightEfficiency(ringTeeth: number, sprocketTeeth: number): number {
  return 0.987 - 0.1231 * (1 / ringTeeth + 1 / sprocketTeeth);
}

/** What a chain at an angle costs on top: at most 0.15 % of power, growing with the square up to 4°. */
export function chainAngleLoss(angleDeg: number): number {
  const share = Math.min(Math.abs(angleDeg), 4) / 4;
  return 0.0015 * share * share;
}

/** Place of a ring, in mm from the bike's mid plane; ring 0 is the smallest and innermost. */
export function ringPlaceMm(bike: Bike, ringIndex: number): number {
  const middle = (bike.chainringsTeeth.length - 1) / 2;
  return bike.frontChainLineMm + (ringIndex - middle) * bike.ringSpacingMm;
}

/** Place of a sprocket, in mm from the mid plane; sprocket 0 is the smallest and outermost. */
export function sprocketPlaceMm(bike: Bike, sprocketIndex: number): number {
  const middle = (bike.sprocketsTeeth.length - 1) / 2;
  return bike.rearChainLineMm + (middle - sprocketIndex) * bike.sprocketPitchMm;
}

/** Signed chain angle in degrees; positive when the sprocket is further in than the ring. Indices may be fractional. */
export function chainAngleDeg(bike: Bike, ringIndex: number, sprocketIndex: number): number {
  return smallAtanDeg(
    (ringPlaceMm(bike, ringIndex) - sprocketPlaceMm(bike, sprocketIndex)) / bike.chainstayMm,
  );
}

/** All gears, ring by ring from the smallest, sprocket by sprocket from the smallest. */
export function buildGears(bike: Bike): Gear[] {
  const circumferenceM = wheelCircumferenceM(bike);
  const bare =
    bike.hub === undefined ? derailleurGears(bike, circumferenceM) : hubGears(bike, bike.hub, circumferenceM);
  return bare.map((gear) => ({ ...gear, crossed: isCrossed(gear, bare) }));
}

function derailleurGears(bike: Bike, circumferenceM: number): Gear[] {
  return bike.chainringsTeeth.flatMap((ringTeeth, ringIndex) =>
    bike.sprocketsTeeth.map((sprocketTeeth, sprocketIndex) => {
      const angleDeg = chainAngleDeg(bike, ringIndex, sprocketIndex);
      return {
        ringIndex,
        sprocketIndex,
        ringTeeth,
        sprocketTeeth,
        hub: null,
        ratio: ringTeeth / sprocketTeeth,
        developmentM: developmentM(circumferenceM, ringTeeth, sprocketTeeth),
        chainAngleDeg: angleDeg,
        crossed: false,
        efficiency: straightEfficiency(ringTeeth, sprocketTeeth) - chainAngleLoss(angleDeg),
      };
    }),
  );
}

/** Ring by ring, the fastest gear of the hub first; all of them on the one sprocket. */
function hubGears(bike: Bike, kind: HubKind, circumferenceM: number): Gear[] {
  const { ratios, efficiencies } = HUBS[kind];
  const sprocketTeeth = bike.sprocketsTeeth[0] as number;
  return bike.chainringsTeeth.flatMap((ringTeeth, ringIndex) =>
    ratios
      .map((hubRatio, at) => {
        const angleDeg = chainAngleDeg(bike, ringIndex, 0);
        const chain = straightEfficiency(ringTeeth, sprocketTeeth) - chainAngleLoss(angleDeg);
        return {
          ringIndex,
          sprocketIndex: ratios.length - 1 - at,
          ringTeeth,
          sprocketTeeth,
          hub: { number: at + 1, of: ratios.length, ratio: hubRatio },
          ratio: (ringTeeth / sprocketTeeth) * hubRatio,
          developmentM: developmentM(circumferenceM, ringTeeth, sprocketTeeth) * hubRatio,
          chainAngleDeg: angleDeg,
          crossed: false,
          efficiency: chain * (efficiencies[at] as number),
        };
      })
      .toReversed(),
  );
}

function isCrossed(gear: Gear, all: readonly Gear[]): boolean {
  if (Math.abs(gear.chainAngleDeg) < CROSSED_ANGLE_DEG) return false;
  return all.some(
    (other) =>
      other.ringIndex !== gear.ringIndex &&
      Math.abs(other.ratio / gear.ratio - 1) <= CROSSED_TWIN_RATIO &&
      Math.abs(other.chainAngleDeg) < Math.abs(gear.chainAngleDeg),
  );
}

function spread(teeth: readonly number[]): number {
  return Math.max(...teeth) - Math.min(...teeth);
}
