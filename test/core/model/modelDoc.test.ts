/** The model as it is told to coaches must be the model that is ridden: its tables are held against the code. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { LONGEST_JOIN_M, OPEN_SIGHT_M, SHORTEST_JOIN_M } from '../../../src/core/course/build.ts';
import { STEEPEST_RATIO } from '../../../src/core/level/schema.ts';
import { CROSSED_ANGLE_DEG, CROSSED_TWIN_RATIO } from '../../../src/core/model/gears.ts';
import { LEG_LAG_S, MAXIMUM_CADENCE_RPM, pressureTarget } from '../../../src/core/model/legs.ts';
import { AIR_DENSITY_KG_M3, bearingForceN, GRAVITY } from '../../../src/core/model/load.ts';
import { RIDERS } from '../../../src/core/model/presets.ts';
import {
  DROP_LOAD,
  FREE_LEGS_RPM,
  HUNG_AFTER_S,
  HUNG_RATE,
  neededTurns,
  RESTORE_TURNS,
} from '../../../src/core/model/shift.ts';
import { FOOT_DOWN_S, PUSH_OFF_MPS, STOP_ZONE_M } from '../../../src/core/ride/happenings.ts';
import { BRAKE_MPS2, FASTEST_MPS, TICK_S } from '../../../src/core/ride/step.ts';

const doc = readFileSync(
  fileURLToPath(new URL('../../../src/core/model/MODEL.md', import.meta.url)),
  'utf8',
).replace(/\s+/g, ' ');

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
    `below ${HUNG_RATE} of its speed for ${HUNG_AFTER_S} s`,
    `finished above ${DROP_LOAD} times`,
    `free cranks (${FREE_LEGS_RPM} rpm)`,
    `steps of 1/${Math.round(1 / TICK_S)} s`,
    `${FOOT_DOWN_S} s, then two sprockets easier and a push to ${PUSH_OFF_MPS} m/s`,
    `at rest within ${STOP_ZONE_M} m before it`,
    `brakes | ${BRAKE_MPS2} m/s²`,
    `above ${Math.round(FASTEST_MPS * 3.6)} km/h`,
  ])('says “%s”', (words) => {
    expect(doc).toContain(words);
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
