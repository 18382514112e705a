/** `steady`: how fast a rider goes on a slope when nothing changes, and in which gear that is comfortable. */
import { AIR_DENSITY_KG_M3, roadLoad, totalForceN } from '../../core/model/load.ts';
import { buildMachine, steadyGear } from '../../core/model/machine.ts';
import { gearName } from '../../words/gears.ts';
import { numberOf } from '../common/args.ts';
import { bikeFrom, riderFrom } from '../common/choose.ts';
import { fixed } from '../common/print.ts';
import type { Verb } from '../common/verb.ts';

const SLOPE = { low: -0.3, high: 0.3, what: 'the slope (rise over run, so that 8 % is 0.08)' };
const WIND = { low: -20, high: 20, what: 'the wind along the road (m/s, head wind positive)' };
const POWER = { low: 1, high: 2000, what: 'the power at the pedals (W)' };

export const steady: Verb = {
  usage: '--bike ID --rider ID --slope S [--wind W] [--power P]',
  summary: 'says how fast a steady rider goes on a slope, and in which gear',
  flags: { bike: 'text', rider: 'text', slope: 'text', wind: 'text', power: 'text' },
  takesFiles: false,
  run(args) {
    const bike = bikeFrom(args);
    const rider = riderFrom(args);
    const slopeRatio = numberOf(args, 'slope', SLOPE);
    const windMps = numberOf(args, 'wind', WIND, 0);
    const powerW = numberOf(args, 'power', POWER, rider.steadyPowerW);
    const machine = buildMachine(bike, rider);
    const { gear, speedMps, cadenceRpm } = steadyGear(machine, powerW, slopeRatio, windMps);
    const { totalMassKg } = machine;
    const { cdaM2, rollingCoefficient: crr } = bike;
    const load = roadLoad(speedMps, slopeRatio, windMps, totalMassKg, cdaM2, crr);
    return {
      json: {
        bikeId: bike.id,
        riderId: rider.id,
        powerW,
        slopeRatio,
        windMps,
        speedMps,
        gear,
        cadenceRpm,
        resistingForceN: totalForceN(load),
        ...load,
        totalMassKg,
        cdaM2,
        crr,
        efficiency: gear.efficiency,
        airDensityKgM3: AIR_DENSITY_KG_M3,
      },
      text: [
        `${fixed(powerW, 0)} W on ${fixed(slopeRatio * 100, 1)} % with ${fixed(windMps, 1)} m/s of wind from ahead:`,
        `${fixed(speedMps * 3.6, 1)} km/h, best in ${gearName(gear)} at ${fixed(cadenceRpm, 0)} rpm against ${fixed(totalForceN(load), 1)} N.`,
        `Worked out with ${fixed(totalMassKg, 1)} kg, CdA ${cdaM2} m², Crr ${crr}, efficiency ${fixed(gear.efficiency, 4)}, air of ${AIR_DENSITY_KG_M3} kg/m³.`,
      ].join('\n'),
    };
  },
};
