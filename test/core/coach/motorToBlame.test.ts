/** What a ride on a bike with a motor is told of its heavy shifts: only what the motor did is put down to it. */
import { describe, expect, it } from 'vitest';
import { suitsBike } from '../../../src/core/coach/ladder.ts';
import { motorToBlame } from '../../../src/core/coach/shifts.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { CLEAN_LOAD, HEAVY_LOAD } from '../../../src/core/model/shift.ts';
import type { RideEvent } from '../../../src/core/ride/types.ts';

const CRANK = bikeById('trekking-hub-8-crank')!;
const OFF = { ...CRANK, motor: { ...CRANK.motor!, helpRatio: 0 } };
const blame = (events: RideEvent[], bike = CRANK) =>
  motorToBlame({ machine: buildMachine(bike, riderById('adult-new')!) }, { events });

const at = (tick: number) => ({ tick, distanceM: tick / 10 });
const shift = (load: number, motorLoad: number): RideEvent => ({
  kind: 'shift-done',
  derailleur: 'rear',
  direction: 'easier',
  fromIndex: 3,
  toIndex: 2,
  durationS: 0.5,
  startedAtM: 0,
  hub: true,
  load,
  motorLoad,
  ...at(100),
});
const held = (tick: number): RideEvent => ({
  kind: 'shift-hung',
  derailleur: 'rear',
  hub: true,
  ...at(tick),
});
const empty: RideEvent = { kind: 'battery-empty', ...at(500) };
const byMotor = shift(HEAVY_LOAD + 0.1, HEAVY_LOAD / 2);
const byLegs = shift(HEAVY_LOAD + 0.1, 0.05);
const notQuiteClean = shift(CLEAN_LOAD + 0.05, CLEAN_LOAD / 2);

describe('heavy shifts', () => {
  it('are put down to the motor where it made most of them, and only those it made are counted', () => {
    expect(blame([byMotor, byMotor, byLegs])).toEqual({ heavy: 2 });
    expect(blame([byMotor, byLegs])).toBeNull();
    expect(blame([byMotor, byLegs, byLegs, notQuiteClean, notQuiteClean])).toBeNull();
  });

  it('speak before those that a hub held, and these before the ones that were not quite clean', () => {
    expect(blame([byLegs, held(10), held(20)])).toBeNull();
    expect(blame([held(10), held(20)])).toEqual({ heavy: 0 });
    expect(blame([notQuiteClean])).toEqual({ heavy: 0 });
    expect(blame([])).toBeNull();
  });
});

describe('a motor that gave nothing', () => {
  it('is blamed for no shift, with its help off or its battery empty', () => {
    expect(blame([held(10)], OFF)).toBeNull();
    expect(blame([empty, held(510)])).toBeNull();
    expect(blame([held(10), held(20), empty, held(510)])).toEqual({ heavy: 0 });
  });

  it('suits no level about motors', () => {
    for (const needs of ['motor', 'crank-motor'] as const)
      expect([CRANK, OFF].map((bike) => suitsBike({ needs }, bike))).toEqual([true, false]);
    expect([CRANK, OFF].map((bike) => suitsBike({ needs: 'hub' }, bike))).toEqual([false, true]);
  });
});
