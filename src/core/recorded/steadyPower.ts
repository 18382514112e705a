/**
 * The steady power of whoever rode a real road, told from its climbs: there speed says what was pushed, and little of it
 * went into wind that nobody wrote down. The best ride beside a recorded one is ridden with the same power.
 */
import type { RecordedSample } from '../gpx/recorded.ts';
import { bandLowRpm, slopeEffort } from '../model/legs.ts';
import { buildMachine, powerForSpeedW, steadyQuestion } from '../model/machine.ts';
import { helpsAtAll } from '../model/motor.ts';
import { lowestGear } from '../model/transmission.ts';
import type { Bike, Machine, Rider } from '../model/types.ts';
import { MOVING_MPS } from './gears.ts';

/** What was ridden at a place of the road, and for how long (s). */
interface Ridden {
  readonly slopeRatio: number;
  readonly speedMps: number;
  /** 0 while the legs rest, null where it was not recorded. */
  readonly cadenceRpm: number | null;
  readonly forS: number;
}

/** From a cadence, a slope and a speed like these on, power is told from the hill. */
const CLIMB_RATIO = 0.03;
const LEAST_CLIMB_S = 60;
/** Legs far below their band are forced to give more than they hold; those seconds tell no steady power (rpm). */
const NEAR_BAND_RPM = 8;

/**
 * Median of what pedalled time uphill asked, over what legs give there more than on the flat (W). Null where there was
 * too little climbing, or a motor helped: the hill tells what both gave, and no file says how much of it was the motor.
 */
export function steadyPowerOf(ridden: readonly Ridden[], machine: Machine): number | null {
  if (helpsAtAll(machine.bike)) return null;
  const uphill = ridden
    .filter(
      ({ slopeRatio, cadenceRpm, speedMps }) =>
        slopeRatio >= CLIMB_RATIO &&
        (cadenceRpm ?? 0) >= bandLowRpm(machine.rider, slopeRatio) - NEAR_BAND_RPM &&
        speedMps >= MOVING_MPS,
    )
    .map((one) => ({ powerW: askedW(one, machine) / slopeEffort(one.slopeRatio), forS: one.forS }))
    .toSorted((a, b) => a.powerW - b.powerW);
  const allS = uphill.reduce((sum, { forS }) => sum + forS, 0);
  if (allS < LEAST_CLIMB_S) return null;
  let passedS = 0;
  for (const { powerW, forS } of uphill) {
    passedS += forS;
    if (2 * passedS > allS) return powerW;
  }
  return null;
}

/** What a speed on a slope asks of the legs (W), without wind; none where the bike rolls by itself. */
function askedW({ slopeRatio, speedMps }: Ridden, machine: Machine): number {
  const road = { slopeRatio, windMps: 0, rollingFactor: 1 };
  return Math.max(0, powerForSpeedW(speedMps, steadyQuestion(machine, lowestGear(machine), road)));
}

/** The same body and band with another steady power; what can be given for longer goes with it. */
export function withSteadyPower(rider: Rider, steadyPowerW: number): Rider {
  const share = steadyPowerW / rider.steadyPowerW;
  return { ...rider, id: 'own', steadyPowerW, criticalPowerW: rider.criticalPowerW * share };
}

/**
 * The steady power of who rode a stretch of road (W), null where that cannot be told. What is given uphill beyond critical
 * power is limited by the reserve, so whoever rode a long climb must have more than its effort alone would say. Where no
 * cadence was recorded every metre uphill counts as pedalled.
 * @param heightM height at a distance from the start of the samples (m)
 */
export function powerOfSamples(
  samples: readonly RecordedSample[],
  heightM: (distanceM: number) => number,
  { bike, rider }: { readonly bike: Bike; readonly rider: Rider },
): number | null {
  const machine = buildMachine(bike, rider);
  const withCadence = samples.some(({ cadenceRpm }) => (cadenceRpm ?? 0) > 0);
  const ridden = samples.slice(1).map(({ distanceM, speedMps, timeS, cadenceRpm }, i): Ridden => {
    const before = samples[i] as RecordedSample;
    const spanM = distanceM - before.distanceM;
    return {
      slopeRatio: spanM > 0 ? (heightM(distanceM) - heightM(before.distanceM)) / spanM : 0,
      speedMps,
      cadenceRpm: withCadence ? cadenceRpm : Number.POSITIVE_INFINITY,
      forS: timeS - before.timeS,
    };
  });
  const steadyW = steadyPowerOf(ridden, machine);
  if (steadyW === null) return null;
  const allS = ridden.reduce((sum, { forS }) => sum + forS, 0);
  const workJ = ridden.reduce((sum, one) => sum + askedW(one, machine) * one.forS, 0);
  const criticalW = (workJ - rider.reserveJ) / allS;
  return Math.max(steadyW, (criticalW * rider.steadyPowerW) / rider.criticalPowerW);
}
