/**
 * A bike from what a person knows of it. What nobody measures at home (where rings and sprockets stand, how heavy
 * the wheels turn) follows from the counts and the tyre; the rest stays as on the bike the form began with.
 */
import type { Bike } from '../../core/model/types.ts';

/** What the form asks for. */
type ToldBike = Pick<
  Bike,
  | 'chainringsTeeth'
  | 'sprocketsTeeth'
  | 'tyreWidthMm'
  | 'beadSeatMm'
  | 'crankLengthMm'
  | 'massKg'
  | 'shifter'
  | 'refusesCrossed'
  | 'hub'
  | 'backPedalBrake'
  | 'motor'
>;

/** Id of a bike that is not one of the bundled ones. */
const OWN_BIKE_ID = 'own';

/** Distance of neighbouring sprockets by how many there are (mm; common practice, no source). */
const SPROCKET_PITCH_MM: Readonly<Record<number, number>> = {
  8: 4.8,
  9: 4.34,
  10: 3.95,
  11: 3.74,
  12: 3.6,
  13: 3.5,
};
const WIDE_PITCH_MM = 5;
const FRONT_CHAIN_LINE_MM: Readonly<Record<number, number>> = { 1: 46, 2: 43.5, 3: 47.5 };

/** Builds the bike. */
export function bikeOf(base: Bike, told: ToldBike): Bike {
  const rings = told.chainringsTeeth.length;
  const sprockets = told.sprocketsTeeth.length;
  // Mass at the rim and its radius both grow with the wheel: inertia goes with the third power.
  const wheel = told.beadSeatMm / base.beadSeatMm;
  return {
    ...withoutMeasured(base, told),
    ...told,
    id: OWN_BIKE_ID,
    // Only electronic shifters can refuse.
    refusesCrossed: told.shifter === 'electronic' && told.refusesCrossed,
    frontChainLineMm:
      rings === base.chainringsTeeth.length
        ? base.frontChainLineMm
        : (FRONT_CHAIN_LINE_MM[rings] ?? base.frontChainLineMm),
    sprocketPitchMm:
      sprockets === base.sprocketsTeeth.length
        ? base.sprocketPitchMm
        : (SPROCKET_PITCH_MM[sprockets] ?? WIDE_PITCH_MM),
    wheelInertiaKgM2: base.wheelInertiaKgM2 * wheel * wheel * wheel,
  };
}

/** What is not told anew: a measured circumference belongs to the tyre it was measured on. */
function withoutMeasured(base: Bike, told: ToldBike): Bike {
  // What the hub is, its brake and a motor stand in what was told.
  const { measuredCircumferenceM, ...rest } = base;
  delete (rest as { hub?: unknown }).hub;
  delete (rest as { backPedalBrake?: unknown }).backPedalBrake;
  delete (rest as { motor?: unknown }).motor;
  const sameTyre = told.tyreWidthMm === base.tyreWidthMm && told.beadSeatMm === base.beadSeatMm;
  return sameTyre && measuredCircumferenceM !== undefined ? { ...rest, measuredCircumferenceM } : rest;
}
