/** What a display can say before the chain has moved: the gear the levers stand for. */
import { describe, expect, it } from 'vitest';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { stepRide } from '../../../src/core/ride/step.ts';
import type { RideCommand, RideState } from '../../../src/core/ride/types.ts';
import { startState } from '../../../src/core/ride/world.ts';
import { BIGGER_RING, bike, EASIER, HARDER, literalCourse, SMALLER_RING, worldOn } from './worlds.ts';

const world = worldOn(literalCourse(5_000, 0), bike('road-2x11'));
const { sprocketsTeeth, chainringsTeeth } = world.machine.bike;
const middle = startState(world, { speedMps: 6, ringIndex: 1, sprocketIndex: 5 });

function after(state: RideState, commands: readonly RideCommand[], ticks = 1): RideState {
  let now = state;
  for (let i = 0; i < ticks; i += 1) now = stepRide(world, now, i === 0 ? commands : []).state;
  return now;
}

describe('the gear the levers stand for', () => {
  it('is the one the chain is on while nothing is pushed', () => {
    const { leverGear, gear } = frameOf(world, middle);
    expect(leverGear).toBe(gear);
    expect(gear.sprocketTeeth).toBe(sprocketsTeeth[5]);
  });

  it('answers a push in the same tick, long before the chain', () => {
    const frame = frameOf(world, after(middle, [EASIER]));
    expect(frame.leverGear.sprocketTeeth).toBe(sprocketsTeeth[6]);
    expect(frame.sprocketTeeth).toBe(sprocketsTeeth[5]);
  });

  it('counts every push that waits, on both sides, and those under way', () => {
    const frame = frameOf(world, after(middle, [EASIER, EASIER, SMALLER_RING]));
    expect(frame.leverGear.sprocketTeeth).toBe(sprocketsTeeth[7]);
    expect(frame.leverGear.ringTeeth).toBe(chainringsTeeth[0]);
    const underWay = after(after(middle, [EASIER], 40), [HARDER]);
    expect(underWay.rear).not.toBeNull();
    expect(frameOf(world, underWay).leverGear.sprocketTeeth).toBe(sprocketsTeeth[5]);
  });

  it('agrees with the chain once everything has acted', () => {
    const frame = frameOf(world, after(middle, [EASIER, EASIER, SMALLER_RING], 120 * 8));
    expect(frame.shift).toBeNull();
    expect([frame.ringTeeth, frame.sprocketTeeth]).toEqual([chainringsTeeth[0], sprocketsTeeth[7]]);
    expect(frame.leverGear).toBe(frame.gear);
  });

  it('stays on the bike where a push lifts a dropped chain back on', () => {
    const off: RideState = { ...middle, chainOn: false };
    expect(frameOf(world, after(off, [BIGGER_RING])).leverGear.ringTeeth).toBe(chainringsTeeth[1]);
  });
});
