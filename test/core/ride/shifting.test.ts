/**
 * How the chain moves: in crank turns, slowed by load, after a delay. Most checks hold the cadence by hand,
 * as on rollers, so that only the shift is looked at.
 */
import { describe, expect, it } from 'vitest';
import { chainPull, pullAtAngle, shiftRate } from '../../../src/core/model/shift.ts';
import type { Bike } from '../../../src/core/model/types.ts';
import { buildMachine, gearAt } from '../../../src/core/model/machine.ts';
import { stepRide } from '../../../src/core/ride/step.ts';
import type { RideCommand, RideEvent, RideState, RideWorld } from '../../../src/core/ride/types.ts';
import { startState } from '../../../src/core/ride/world.ts';
import {
  BIGGER_RING,
  bike,
  COAST,
  EASE,
  EASIER,
  eventsOf,
  HARDER,
  handRide,
  literalCourse,
  PRESS,
  SMALLER_RING,
  STEADY,
  worldOn,
} from './worlds.ts';

const FLAT = literalCourse(20_000, 0);

/** A state whose speed is this cadence in this gear, legs already at a pressure. */
function turning(
  world: RideWorld,
  cadenceRpm: number,
  ringIndex: number,
  sprocketIndex: number,
  pressure: 'coast' | 'ease' | 'steady' | 'press' = 'ease',
): RideState {
  const { developmentM } = gearAt(world.machine, ringIndex, sprocketIndex);
  const start = startState(world, { speedMps: (cadenceRpm * developmentM) / 60, ringIndex, sprocketIndex });
  return { ...start, pressure, pressureRatio: { coast: 0, ease: 0.4, steady: 1, press: 1.6 }[pressure] };
}

/** Legs so light that the load slows no shift down, even at 30 rpm. */
const LIGHT = 0.15;

/** Gives a command and keeps cadence and legs where they are until the shift is done. */
function shiftOnRollers(world: RideWorld, from: RideState, command: RideCommand) {
  const events: RideEvent[] = [];
  let state = from;
  for (let i = 0; i < 120 * 30; i += 1) {
    const result = stepRide(world, state, i === 0 ? [command] : []);
    events.push(...result.events);
    const { speedMps, cadenceRpm, pressureRatio } = from;
    state = { ...result.state, speedMps, cadenceRpm, pressureRatio };
    const [done] = eventsOf(events, 'shift-done');
    if (done !== undefined) return { done, events, ticks: state.tick };
  }
  throw new Error('the shift was never done');
}

describe('time of a shift', () => {
  const world = worldOn(FLAT);
  const light = (rpm: number, ring: number, sprocket: number): RideState => ({
    ...turning(world, rpm, ring, sprocket),
    pressureRatio: LIGHT,
  });

  it.each([
    ['rear easier', EASIER, 0, 5, 0.5],
    ['rear harder', HARDER, 0, 5, 0.25],
    ['front bigger', BIGGER_RING, 0, 5, 1],
    ['front smaller', SMALLER_RING, 1, 5, 0.5],
  ] as const)(
    '%s takes its crank turns, so twice as long at 40 rpm as at 80',
    (_name, command, ring, sprocket, turns) => {
      const fast = shiftOnRollers(world, light(80, ring, sprocket), command).done;
      const slow = shiftOnRollers(world, light(40, ring, sprocket), command).done;
      // A shift ends with a tick, so it may last up to one tick longer than the turns.
      expect(Math.abs(fast.durationS - (60 * turns) / 80)).toBeLessThan(1.01 / 120);
      expect(Math.abs(slow.durationS - (60 * turns) / 40)).toBeLessThan(1.01 / 120);
      expect(slow.durationS / fast.durationS).toBeGreaterThan(1.9);
      expect(slow.durationS / fast.durationS).toBeLessThan(2.1);
    },
  );

  it('goes with 1/cadence over the whole range', () => {
    const products = [30, 45, 60, 90, 120].map(
      (rpm) => shiftOnRollers(world, light(rpm, 0, 5), EASIER).done.durationS * rpm,
    );
    for (const product of products) expect(Math.abs(product / 30 - 1)).toBeLessThan(0.04);
  });

  it('with the legs steady it takes longer still at 40 rpm, for slow legs are forced to push', () => {
    const at = (rpm: number): number =>
      shiftOnRollers(world, turning(world, rpm, 0, 5, 'steady'), EASIER).done.durationS;
    expect(at(40) / at(80)).toBeGreaterThan(2.4);
  });

  it('slow and light against slow and firm: easing more than halves a shift at 45 rpm', () => {
    const at = (pressure: 'ease' | 'steady'): number =>
      shiftOnRollers(world, turning(world, 45, 0, 7, pressure), EASIER).done.durationS;
    expect(at('ease')).toBeLessThan(at('steady') / 1.4);
  });

  it('an electronic derailleur begins after 0.06 s, a cable after 0.12 s', () => {
    const delay = (kind: Bike['shifter']): number => {
      const w = worldOn(FLAT, { ...bike('road-2x11'), shifter: kind });
      const { done, ticks } = shiftOnRollers(w, turning(w, 80, 0, 5), EASIER);
      return ticks / 120 - done.durationS;
    };
    expect(Math.abs(delay('mechanical') - 0.12)).toBeLessThan(2.1 / 120);
    expect(Math.abs(delay('electronic') - 0.06)).toBeLessThan(2.1 / 120);
    expect(delay('mechanical')).toBeGreaterThan(delay('electronic'));
  });

  it('three sprockets in one push pass one after the other; harder goes one at a time', () => {
    const ride = handRide(world, turning(world, 80, 0, 3));
    ride.go(3, { kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 3 });
    expect(eventsOf(ride.events, 'shift-done').map((e) => e.toIndex)).toEqual([4, 5, 6]);
    ride.go(3, { kind: 'shift', derailleur: 'rear', direction: 'harder', steps: 3 });
    expect(ride.state.sprocketIndex).toBe(5);
  });

  it('commands queue: two pushes give two shifts', () => {
    const ride = handRide(world, turning(world, 80, 0, 3));
    ride.go(2, EASIER, EASIER);
    expect(ride.state.sprocketIndex).toBe(5);
  });
});

describe('load and the shift', () => {
  it('the chain moves freely under 0.3 of the rider’s weight and at 0.15 of that from 1.2 on, straight between', () => {
    expect([shiftRate(0), shiftRate(0.3)]).toEqual([1, 1]);
    expect(shiftRate(0.75)).toBeCloseTo(0.575, 10);
    expect([shiftRate(1.2), shiftRate(3)]).toEqual([0.15, 0.15]);
  });

  it('the pull goes with the angle of the cranks: none upright, one and a half times forward, the mean over half a turn', () => {
    expect([pullAtAngle(0), pullAtAngle(0.5), pullAtAngle(7)]).toEqual([0, 0, 0]);
    expect([pullAtAngle(0.25), pullAtAngle(0.75), pullAtAngle(12.25)]).toEqual([1.5, 1.5, 1.5]);
    const angles = Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000);
    const mean = angles.reduce((sum, turns) => sum + pullAtAngle(turns), 0) / angles.length;
    expect(mean).toBeCloseTo(1, 5);
    // Close to the sine of a weight on a crank, which other browsers would work out in other bits.
    for (const turns of angles) {
      const sine = (Math.PI / 2) * Math.abs(Math.sin(2 * Math.PI * turns));
      expect(Math.abs(pullAtAngle(turns) - sine)).toBeLessThan(0.1);
    }
  });

  it('a bigger ring takes the same torque with less pull, and a heavier rider weighs a pull less', () => {
    const { machine } = worldOn(FLAT);
    expect(chainPull(machine, 40, 34) / chainPull(machine, 40, 50)).toBeCloseTo(50 / 34, 12);
    const heavy = buildMachine(machine.bike, { ...machine.rider, massKg: 150 });
    expect(chainPull(machine, 40, 34) / chainPull(heavy, 40, 34)).toBeCloseTo(2, 12);
  });

  it('under full pressure on 12 % a shift hangs for more than a second and is done in the end; eased at once it is not slow', () => {
    const world = worldOn(literalCourse(2000, 0.12));
    const forced = handRide(world, turning(world, 55, 0, 9, 'press'));
    forced.go(6, PRESS, EASIER);
    expect(eventsOf(forced.events, 'shift-hung')).toHaveLength(1);
    const [late] = eventsOf(forced.events, 'shift-done');
    expect(late?.durationS).toBeGreaterThan(1.2);
    // What 24 heavy shifts in open rides took at most, with a second of reading on either side.
    expect(late?.durationS).toBeLessThan(4);
    const eased = handRide(world, turning(world, 55, 0, 9, 'press'));
    eased.go(0.3, EASE);
    eased.go(1, EASIER);
    eased.go(2, PRESS);
    const [soft] = eventsOf(eased.events, 'shift-done');
    expect(eventsOf(eased.events, 'shift-hung')).toHaveLength(0);
    expect(soft?.durationS).toBeLessThan((late?.durationS ?? 0) / 2);
    expect(eased.state.phase).toBe('riding');
  });

  it('easing in the middle frees a shift that hangs', () => {
    const world = worldOn(literalCourse(2000, 0.12));
    const ride = handRide(world, turning(world, 50, 0, 9, 'press'));
    ride.until((r) => eventsOf(r.events, 'shift-hung').length > 0, 4, PRESS, EASIER);
    expect(eventsOf(ride.events, 'shift-done')).toHaveLength(0);
    ride.until((r) => r.state.sprocketIndex === 10, 1, EASE);
  });

  it('the load of a shift is the mean crank torque over the reference torque while the chain moved', () => {
    const world = worldOn(FLAT);
    const from = turning(world, 86, 0, 5, 'steady');
    // At mid band and steady the crank torque is the reference torque by definition.
    expect(shiftOnRollers(world, from, EASIER).done.load).toBeGreaterThan(0.97);
    expect(shiftOnRollers(world, from, EASIER).done.load).toBeLessThan(1.001);
    expect(shiftOnRollers(world, turning(world, 86, 0, 5, 'ease'), EASIER).done.load).toBeCloseTo(0.4, 1);
  });
});

describe('coasting', () => {
  it('a derailleur shifts only while pedalling: the push waits, says so once, and is done when the legs turn', () => {
    const world = worldOn(FLAT);
    const ride = handRide(world, turning(world, 80, 0, 5, 'coast'));
    ride.go(0.1, COAST);
    ride.go(3, EASIER);
    expect(eventsOf(ride.events, 'shift-waiting')).toHaveLength(1);
    expect(eventsOf(ride.events, 'shift-done')).toHaveLength(0);
    expect(ride.state.sprocketIndex).toBe(5);
    ride.go(1.5, EASE);
    expect(eventsOf(ride.events, 'shift-done')).toHaveLength(1);
    expect(ride.state.sprocketIndex).toBe(6);
  });
});

describe('refusals', () => {
  it('beyond the last sprocket or ring there is no more, and a long push stops at the end', () => {
    const world = worldOn(FLAT);
    const ride = handRide(world, turning(world, 80, 1, 9));
    ride.go(2, { kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 3 });
    expect(ride.state.sprocketIndex).toBe(10);
    ride.go(1, EASIER, BIGGER_RING);
    expect(eventsOf(ride.events, 'shift-refused').map((e) => [e.derailleur, e.reason])).toEqual([
      ['rear', 'no-more'],
      ['front', 'no-more'],
    ]);
  });

  it('an electronic derailleur told so refuses crossed gears from either side; a cable never does', () => {
    const refusing: Bike = { ...bike('road-2x11'), shifter: 'electronic', refusesCrossed: true };
    const world = worldOn(FLAT, refusing);
    const lastStraight = world.machine.gears.filter((g) => g.ringIndex === 1 && !g.crossed).at(-1);
    const from = turning(world, 80, 1, lastStraight?.sprocketIndex ?? 0);
    const ride = handRide(world, from);
    ride.go(1, EASIER);
    expect(eventsOf(ride.events, 'shift-refused').map((e) => e.reason)).toEqual(['crossed']);
    expect(ride.state.sprocketIndex).toBe(from.sprocketIndex);

    const front = handRide(world, turning(world, 80, 0, 10));
    front.go(2, BIGGER_RING);
    expect(eventsOf(front.events, 'shift-refused').map((e) => e.reason)).toEqual(['crossed']);
    expect(front.state.ringIndex).toBe(0);

    const cable = worldOn(FLAT, { ...refusing, shifter: 'mechanical' });
    const crossing = handRide(cable, turning(cable, 80, 1, from.sprocketIndex));
    crossing.go(2, EASIER);
    expect(crossing.state.sprocketIndex).toBe(from.sprocketIndex + 1);
  });

  it('a chain that stays crossed is reported once, after a second and a half', () => {
    const world = worldOn(FLAT);
    const ride = handRide(world, turning(world, 80, 1, 10, 'steady'));
    ride.go(1.4);
    expect(eventsOf(ride.events, 'chain-crossed')).toHaveLength(0);
    ride.go(3);
    expect(eventsOf(ride.events, 'chain-crossed')).toHaveLength(1);
  });
});

describe('dropping the chain', () => {
  const world = worldOn(literalCourse(20_000, 0.06));

  function dropped() {
    const ride = handRide(world, turning(world, 45, 1, 10, 'press'));
    ride.until((r) => !r.state.chainOn, 20, SMALLER_RING);
    return ride;
  }

  it('a front shift out of a crossed gear under full pressure drops it, and then nothing drives', () => {
    const ride = dropped();
    const [shift] = eventsOf(ride.events, 'shift-done');
    const { machine } = world;
    const pull = chainPull(machine, (shift?.load ?? 0) * machine.referenceTorqueNm, 50);
    expect(pull).toBeGreaterThan(0.75);
    expect(eventsOf(ride.events, 'chain-dropped')).toHaveLength(1);
    ride.go(0.5);
    expect(ride.state.crankTorqueNm).toBe(0);
  });

  it('the same shift eased, or out of a straight gear, keeps the chain on', () => {
    const eased = handRide(world, turning(world, 45, 1, 10, 'ease'));
    eased.go(4, EASE, SMALLER_RING);
    expect([eased.state.chainOn, eased.state.ringIndex]).toEqual([true, 0]);
    const straight = handRide(world, turning(world, 45, 1, 5, 'press'));
    straight.until((r) => r.state.ringIndex === 0, 30, PRESS, SMALLER_RING);
    expect(straight.state.chainOn).toBe(true);
  });

  it('while pressing on it does not come back; eased and shifted it does', () => {
    const ride = dropped();
    ride.go(1, SMALLER_RING, PRESS);
    ride.go(0.5, BIGGER_RING);
    expect(ride.state.chainOn).toBe(false);
    ride.go(3, EASE);
    expect(eventsOf(ride.events, 'chain-restored')).toHaveLength(1);
    expect(ride.state.chainOn).toBe(true);
  });

  it('a rider who takes a good second to notice has it back about 3 s after it dropped', () => {
    const ride = dropped();
    const atTick = ride.state.tick;
    ride.go(1.2, PRESS);
    ride.until((r) => r.state.chainOn, 10, EASE, BIGGER_RING);
    const offS = (ride.state.tick - atTick) / 120;
    expect(offS).toBeGreaterThan(2.5);
    expect(offS).toBeLessThan(3.5);
  });

  it('and loses 2 to 4 s on the way to the 300 m mark of a 6 % road', () => {
    /** Time to the mark, steady, after a front shift that drops the chain or is said not to. */
    const timeTo300 = (keepsChain: boolean): number => {
      const ride = dropped();
      if (keepsChain) ride.state = { ...ride.state, chainOn: true };
      else {
        ride.go(1.2, PRESS);
        ride.until((r) => r.state.chainOn, 10, EASE, BIGGER_RING);
      }
      // Both go on in the same gear.
      ride.state = { ...ride.state, ringIndex: 0, sprocketIndex: 5, queue: [], front: null, rear: null };
      ride.until((r) => r.state.distanceM > 300, 300, STEADY);
      return ride.state.tick / 120;
    };
    const lostS = timeTo300(false) - timeTo300(true);
    expect(lostS).toBeGreaterThan(2);
    expect(lostS).toBeLessThan(4);
  });
});

describe('easing done by the game', () => {
  it('a shift is light without a command, and the legs come back when it is done', () => {
    const plain = worldOn(FLAT);
    const helped = worldOn(FLAT, 'road-2x11', 'adult-weekly', { autoEase: true });
    const [heavy, light] = [plain, helped].map((world) => {
      const ride = handRide(world, turning(world, 86, 0, 5, 'steady'));
      ride.go(2, EASIER);
      expect(ride.state.pressureRatio).toBeGreaterThan(0.95);
      return eventsOf(ride.events, 'shift-done')[0]?.load ?? 0;
    });
    expect(heavy).toBeGreaterThan(0.95);
    expect(light).toBeLessThan(0.7);
  });
});
