/** The face that children see is enough to keep the legs in their band: ridden by somebody who looks at nothing else. */
import { describe, expect, it } from 'vitest';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { brakeForLine } from '../../../src/core/ride/pilot.ts';
import { type Controller, rideThrough } from '../../../src/core/ride/run.ts';
import type { RideTrace } from '../../../src/core/ride/trace.ts';
import type { RideWorld } from '../../../src/core/ride/types.ts';
import { moodOf } from '../../../src/game/hud/face.ts';
import { ALL_LEVELS, groundOf } from './riding.ts';

/** Looks at the face and at nothing else: a strained one asks for an easier gear, a whirring one for a harder, once a second. */
function looksAtTheFace(world: RideWorld): Controller {
  const brake = brakeForLine(world);
  let pressedTick = Number.NEGATIVE_INFINITY;
  return (state) => {
    const commands = [...brake(state)];
    const mood = moodOf(frameOf(world, state));
    if ((state.tick - pressedTick) * world.tickS < 1 || mood === 'smiling' || mood === 'resting')
      return commands;
    pressedTick = state.tick;
    return [
      ...commands,
      { kind: 'shift', derailleur: 'rear', direction: mood === 'straining' ? 'easier' : 'harder', steps: 1 },
    ];
  };
}

/** Share of the pedalling in which the legs turn inside their band, or so little outside it that the face still smiles. */
function inBand({ samples }: RideTrace, kindRpm: number): number {
  const turning = samples.filter(({ pedalling }) => pedalling);
  const good = turning.filter(
    ({ cadenceRpm, bandLowRpm, bandHighRpm }) =>
      cadenceRpm >= bandLowRpm - kindRpm && cadenceRpm <= bandHighRpm + kindRpm,
  );
  return good.length / turning.length;
}

describe('whoever looks only at the face', () => {
  const forChildren = ALL_LEVELS.filter(({ audience }) => audience === 'children');
  it.each(forChildren.map((level) => [level.title, level] as const))(
    'has a smiling one seven tenths of the way on %s, and keeps the band nearly as well as the best ride',
    (_title, level) => {
      const { world, reference } = groundOf(level, 'kids-20-1x7', 'child-9');
      const { trace } = rideThrough(world, looksAtTheFace(world));
      expect(inBand(trace, 3)).toBeGreaterThanOrEqual(0.7);
      expect(inBand(trace, 0)).toBeGreaterThanOrEqual(0.8 * inBand(reference, 0));
      // Play is for the youngest: there the band itself is kept that well.
      if (level.carries !== undefined) expect(inBand(trace, 0)).toBeGreaterThanOrEqual(0.7);
    },
  );
});
