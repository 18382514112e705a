/**
 * How a hub shifts: at once where nothing pushes, not while somebody pushes on, and with a knock where it slips in.
 * The reverse of a derailleur in the same moments.
 */
import { describe, expect, it } from 'vitest';
import { HEAVY_LOAD } from '../../../src/core/model/shift.ts';
import { gearOf, numbersOfMovement } from '../../../src/core/model/transmission.ts';
import { parseRecording, readBike } from '../../../src/core/ride/recording.ts';
import { replayRecording, rideThrough } from '../../../src/core/ride/run.ts';
import { setupOfJob } from '../../../src/core/ride/job.ts';
import { stepRide } from '../../../src/core/ride/step.ts';
import type { RideCommand, RideEvent, RideState } from '../../../src/core/ride/types.ts';
import { startState } from '../../../src/core/ride/world.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import { bike, BUNDLED, literalCourse, rider, worldOn } from './worlds.ts';

const EASIER: RideCommand = { kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 };
const flat = literalCourse(2000, 0);
const hub = worldOn(flat, 'town-hub-7', 'adult-new');
const chain = worldOn(flat, 'town-1x9', 'adult-new');

function follow(
  world: typeof hub,
  from: RideState,
  commands: readonly (readonly [tick: number, command: RideCommand])[],
  ticks: number,
): { readonly state: RideState; readonly events: RideEvent[] } {
  let state = from;
  const events: RideEvent[] = [];
  for (let i = 0; i < ticks; i += 1) {
    const due = commands.filter(([tick]) => tick === i).map(([, command]) => command);
    const result = stepRide(world, state, due);
    state = result.state;
    events.push(...result.events);
  }
  return { state, events };
}

const done = (events: readonly RideEvent[]) =>
  events.filter((event): event is Extract<RideEvent, { kind: 'shift-done' }> => event.kind === 'shift-done');
const press = (pressure: 'coast' | 'ease' | 'steady' | 'press'): RideCommand => ({
  kind: 'pressure',
  pressure,
});
const rolling = startState(hub, { speedMps: 5.5, ringIndex: 0, sprocketIndex: 2 });

describe('a hub', () => {
  it('takes a gear within the delay of its cable and a tick or two when the legs rest', () => {
    const { events, state } = follow(
      hub,
      rolling,
      [
        [0, press('coast')],
        [90, EASIER],
      ],
      120,
    );
    expect(state.sprocketIndex).toBe(3);
    expect(done(events)).toHaveLength(1);
    expect(done(events)[0]?.load).toBeLessThan(0.05);
    expect(done(events)[0]?.durationS).toBeLessThan(0.03);
  });

  it('waits while the legs push, and takes its gear when they let go', () => {
    const { events } = follow(
      hub,
      rolling,
      [
        [0, EASIER],
        [60, press('ease')],
      ],
      150,
    );
    const [shift] = done(events);
    expect(shift?.tick).toBeGreaterThan(60);
    expect(shift?.load).toBeLessThan(0.65);
    expect(shift?.hub).toBe(true);
  });

  it('slips in with a knock where somebody pushes on, never in the first turn of the cranks', () => {
    const { events } = follow(hub, rolling, [[0, EASIER]], 360);
    const [shift] = done(events);
    expect(shift?.load).toBeGreaterThanOrEqual(HEAVY_LOAD);
    expect(shift?.durationS).toBeGreaterThan(60 / 75 - 0.05);
  });

  it('stays in its gear for as long as somebody stands on the pedals, and says that it waits', () => {
    const uphill = worldOn(literalCourse(2000, 0.07), 'town-hub-7', 'adult-new');
    const climbing = startState(uphill, { speedMps: 2.2, ringIndex: 0, sprocketIndex: 3 });
    const { events, state } = follow(
      uphill,
      climbing,
      [
        [0, press('press')],
        [60, EASIER],
      ],
      300,
    );
    expect(state.sprocketIndex).toBe(3);
    expect(events.filter(({ kind }) => kind === 'shift-hung')).toHaveLength(1);
  });

  it('changes at a standstill, where a chain waits for the cranks', () => {
    const line = literalCourse(600, 0, { stopLinesM: [300] });
    for (const [bikeId, moved] of [
      ['town-hub-7', 2],
      ['town-1x9', 0],
    ] as const) {
      const world = worldOn(line, bikeId, 'adult-new');
      const standing: RideState = {
        ...startState(world, { distanceM: 299, speedMps: 0, ringIndex: 0, sprocketIndex: 2 }),
        phase: 'standing',
        phaseLeftS: 2,
        nextStopIndex: 1,
        pressureRatio: 0,
      };
      const { state } = follow(
        world,
        standing,
        [
          [0, EASIER],
          [20, EASIER],
        ],
        100,
      );
      expect(state.sprocketIndex - 2, bikeId).toBe(moved);
      expect(state.phase).toBe('standing');
    }
  });

  it('wants of legs what a chain must not have: with resting legs the chain waits', () => {
    const from = startState(chain, { speedMps: 5.5, ringIndex: 0, sprocketIndex: 3 });
    const { events, state } = follow(
      chain,
      from,
      [
        [0, press('coast')],
        [90, EASIER],
      ],
      200,
    );
    expect(state.sprocketIndex).toBe(3);
    expect(events.some(({ kind }) => kind === 'shift-waiting')).toBe(true);
  });

  it('is let go by the game where it eases for the rider', () => {
    const helped = worldOn(flat, 'town-hub-7', 'adult-new', { autoEase: true });
    const { events } = follow(helped, rolling, [[0, EASIER]], 120);
    expect(done(events)[0]?.load).toBeLessThan(0.65);
  });

  it('keeps its chain on one sprocket, and counts its gears from the slowest', () => {
    const gears = hub.machine.gears.map(({ hub: told }) => told?.number);
    expect(gears).toEqual([7, 6, 5, 4, 3, 2, 1]);
    expect(new Set(hub.machine.gears.map(({ sprocketTeeth }) => sprocketTeeth)).size).toBe(1);
    expect(hub.machine.gears.every(({ crossed }) => !crossed)).toBe(true);
    const moved = { derailleur: 'rear', fromIndex: 2, toIndex: 3 } as const;
    expect(numbersOfMovement(hub.machine, moved)).toEqual([5, 4]);
    expect(gearOf(hub.machine, rolling).hub?.number).toBe(5);
  });
});

describe('a ride with a hub', () => {
  it('is kept like any other and comes out the same when it is ridden again', () => {
    const level = BUNDLED[0]!.level;
    const job = {
      level,
      seed: level.seed,
      bike: bike('town-hub-3'),
      rider: rider('adult-new'),
      autoEase: false,
    };
    const world = worldOn(literalCourse(400, 0.03), 'town-hub-3', 'adult-new');
    const ride = rideThrough(world, virtualRider(world, NAMED_HABITS.early, 3));
    const read = parseRecording(JSON.parse(JSON.stringify(ride.recording(setupOfJob(job)))));
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    expect(read.recording.bike).toEqual(bike('town-hub-3'));
    expect(replayRecording(world, read.recording).same).toBe(true);
  });

  it('is refused for a hub nobody knows', () => {
    expect(readBike(bike('town-hub-3'))).not.toBeNull();
    expect(readBike({ ...bike('town-hub-3'), hub: 'ninety' })).toBeNull();
  });
});
