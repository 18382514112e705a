/** The model as it is told to coaches must be the model that is ridden: its tables are held against the code. */
import {
  CUT_OFF_MPS,
  FADES_FROM_MPS,
  FALLS_S,
  MOTOR_EFFICIENCY,
  offWithinM,
  RATED_W,
  RISES_S,
  START_HELP_MPS,
  startHelpN,
} from '../../../src/core/model/motor.ts';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { LONGEST_JOIN_M, OPEN_SIGHT_M, SHORTEST_JOIN_M } from '../../../src/core/course/build.ts';
import { STEEPEST_RATIO } from '../../../src/core/level/schema.ts';
import { CROSSED_ANGLE_DEG, CROSSED_TWIN_RATIO } from '../../../src/core/model/gears.ts';
import {
  bodyWeightTorqueNm,
  crankTorqueNm,
  LEG_LAG_S,
  MAXIMUM_CADENCE_RPM,
  midBandRpm,
  pressureTarget,
  slopeEffort,
} from '../../../src/core/model/legs.ts';
import { AIR_DENSITY_KG_M3, bearingForceN, GRAVITY } from '../../../src/core/model/load.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { BIKES, RIDERS } from '../../../src/core/model/presets.ts';
import { bike, rider } from '../ride/worlds.ts';
import * as costs from '../../../src/core/planner/costs.ts';
import {
  CLEAN_LOAD,
  DROP_PULL,
  FREE_LEGS_RPM,
  HUNG_AFTER_S,
  HEAVY_LOAD,
  HUNG_PULL,
  neededTurns,
  RESTORE_TURNS,
  shiftRate,
  pullAtAngle,
} from '../../../src/core/model/shift.ts';
import { FOOT_DOWN_S, PUSH_OFF_MPS, STOP_ZONE_M } from '../../../src/core/ride/happenings.ts';
import { TICK_S } from '../../../src/core/ride/clock.ts';
import { BRAKE_MPS2, FASTEST_MPS } from '../../../src/core/ride/step.ts';

const doc = readFileSync(
  fileURLToPath(new URL('../../../src/core/model/MODEL.md', import.meta.url)),
  'utf8',
).replace(/\s+/g, ' ');

const MOTOR = { place: 'crank', helpRatio: 1, batteryWh: 500 } as const;

describe('the model told to coaches', () => {
  it.each(RIDERS.map((rider) => [rider.id, rider] as const))('names %s as the game has it', (id, r) => {
    const row = `| ${id} | ${r.massKg} | ${r.steadyPowerW} | ${r.cadenceLowRpm} to ${r.cadenceHighRpm} | ${r.criticalPowerW} | ${r.reserveJ.toLocaleString('en-US')} |`;
    expect(doc).toContain(row);
  });

  it.each([
    `${SHORTEST_JOIN_M} to ${LONGEST_JOIN_M} m long`,
    `steepest road that can be built | ${STEEPEST_RATIO * 100} %`,
    `sight on an open road | ${OPEN_SIGHT_M} m`,
    `_crossed_ from ${CROSSED_ANGLE_DEG}° on`,
    `straighter gear within ${CROSSED_TWIN_RATIO * 100} %`,
    `density ${AIR_DENSITY_KG_M3} kg/m³`,
    `g ${GRAVITY} m/s²`,
    `${bearingForceN(0)} + ${(bearingForceN(1) - bearingForceN(0)).toFixed(4)} × speed`,
    `to nothing at ${MAXIMUM_CADENCE_RPM} rpm`,
    `Coast ${pressureTarget('coast')}, ease ${pressureTarget('ease')}, steady ${pressureTarget('steady')}, press ${pressureTarget('press')} times`,
    `lag of ${LEG_LAG_S} s`,
    `after ${HUNG_AFTER_S} s under a mean pull above ${HUNG_PULL}`,
    `front shift under a mean pull above ${DROP_PULL}`,
    `clean up to ${CLEAN_LOAD} and heavy from ${HEAVY_LOAD} times`,
    `${pullAtAngle(0.25)} times the mean with one forward`,
    `falling to ${shiftRate(9)} of it at 1.2`,
    `${Math.round(HUNG_PULL * rider('child-9').massKg * GRAVITY)} N under the child and ${Math.round(HUNG_PULL * 75 * GRAVITY)} N under 75 kg`,
    `effort × (1 + ${((slopeEffort(0.01) - 1) * 100).toFixed(0)} × slope), at most × ${slopeEffort(0.2)}`,
    `${bodyWeightTorqueNm(rider('adult-new'), { crankLengthMm: 170 }).toFixed(1)} N m for 75 kg on 170 mm`,
    `${costs.OVERLOAD_PER_S} a second for each unit`,
    `${costs.PRESS_PER_S} a second for each further steady effort`,
    `${costs.SHIFT_LOAD} for each unit above ${costs.SHIFT_LOAD_FROM} times steady effort`,
    `${costs.CROSSED_PER_S}, ${costs.TIME_PER_S}, ${costs.FOOT_DOWN} |`,
    `free cranks (${FREE_LEGS_RPM} rpm)`,
    `steps of 1/${Math.round(1 / TICK_S)} s`,
    `${FOOT_DOWN_S} s, then two sprockets easier and a push to ${PUSH_OFF_MPS} m/s`,
    `at rest within ${STOP_ZONE_M} m before it`,
    `brakes | ${BRAKE_MPS2} m/s²`,
    `| ${RATED_W} W `,
    `| ${CUT_OFF_MPS * 3.6} km/h, ${FADES_FROM_MPS * 3.6} km/h`,
    `up to ${START_HELP_MPS * 3.6} km/h, ${startHelpN(0)} N at the wheel`,
    `lags of ${RISES_S} s and ${FALLS_S} s`,
    `${MOTOR_EFFICIENCY * 100} %`,
    `within ${offWithinM({ ...MOTOR })} m, or ${offWithinM({ ...MOTOR, brakeSwitches: true })} m`,
    `above ${Math.round(FASTEST_MPS * 3.6)} km/h`,
  ])('says “%s”', (words) => {
    expect(doc).toContain(words);
  });

  it('names the mass of the wheels as each bike has it', () => {
    const massKg = (id: string): string => {
      const machine = buildMachine(bike(id), rider('adult-new'));
      return (machine.effectiveMassKg - machine.totalMassKg).toFixed(2);
    };
    expect(BIKES).toHaveLength(12);
    expect(doc).toContain(
      `the road bike carries ${massKg('road-2x11')} kg of it, the gravel bike ${massKg('gravel-1x12')}, the trekking bike ${massKg('trekking-3x8')}, the town bike ${massKg('town-1x9')} and the two children's bikes ${massKg('kids-24-1x8')} and ${massKg('kids-20-1x7')}, with gears in the hub ${massKg('town-hub-3')}, ${massKg('town-hub-7')} and ${massKg('kids-20-hub-3')}, with a motor ${massKg('trekking-hub-8-crank')}, ${massKg('trekking-1x10-crank')} and ${massKg('town-hub-7-wheel')}`,
    );
  });

  it('tells the speed of the chain, the standing share and the middle of the bands as they are', () => {
    expect([shiftRate(0.3), shiftRate(0.31) < 1, shiftRate(1.19) > shiftRate(1.2)]).toEqual([1, true, true]);
    expect(doc).toContain('full up to a pull of 0.3');
    const machine = buildMachine(bike('road-2x11'), rider('adult-new'));
    const standing = crankTorqueNm(machine, 1.6, 0, 0.1) / crankTorqueNm(machine, 1, 0, 0.1) - 1;
    expect(doc).toContain(`standing, the most | ${(standing * 100).toFixed(1)} % more`);
    const [weekly, strong] = ['adult-weekly', 'adult-strong'].map((id) => midBandRpm(rider(id)));
    expect(doc).toContain(`The weekly and the strong rider are at home at ${weekly} and ${strong}.`);
    expect(doc).toContain(`the middle of the band stays at ${midBandRpm(rider('adult-new'))}`);
  });

  it('names the turns of each shift', () => {
    expect([neededTurns('rear', 'easier'), neededTurns('rear', 'harder')]).toEqual([0.5, 0.25]);
    expect([neededTurns('front', 'harder'), neededTurns('front', 'easier')]).toEqual([1, 0.5]);
    expect(RESTORE_TURNS).toBe(1.5);
    expect(doc).toContain('rear easier, rear harder | ½ and ¼ turn');
    expect(doc).toContain('front bigger, front smaller | 1 and ½ turn');
    expect(doc).toContain('1½ turns of the free cranks');
  });
});
