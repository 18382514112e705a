/** A rider who does exactly what the guide says, and a listener that writes down everything the guide said. */
import { createGuide, type NextStep } from '../../../src/core/coach/guide.ts';
import type { Push } from '../../../src/core/model/transmission.ts';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { brakeForLine } from '../../../src/core/ride/pilot.ts';
import type { Controller } from '../../../src/core/ride/run.ts';
import type { RideTrace } from '../../../src/core/ride/trace.ts';
import type { RideCommand, RideWorld } from '../../../src/core/ride/types.ts';

/** One hint as it stood on the screen for the first time. */
export interface Told {
  readonly atM: number;
  readonly timeS: number;
  readonly step: NextStep;
  readonly gear: readonly [ring: number, sprocket: number];
}

/** Lever pushes of a move: easier at the back in sweeps, everything else click by click. */
function pushes({ derailleur, direction, steps }: Push): RideCommand[] {
  const sweep = derailleur === 'rear' && direction === 'easier' ? 3 : 1;
  const commands: RideCommand[] = [];
  for (let left = steps; left > 0; left -= sweep)
    commands.push({ kind: 'shift', derailleur, direction, steps: Math.min(sweep, left) });
  return commands;
}

/** Eases when a hint says now, pushes after `reactionS`, and lets go when the chain has moved. */
export function obeys(
  world: RideWorld,
  reference: RideTrace,
  { reactionS = 0.5, told = [] as Told[] } = {},
): Controller {
  const brake = brakeForLine(world);
  const guide = createGuide(world, () => reference);
  let pushTick = -1;
  let waiting: RideCommand[] | null = null;
  let shown = '';
  return (state) => {
    const commands: RideCommand[] = [...brake(state)];
    const moving = state.rear !== null || state.front !== null || state.queue.length > 0;
    if (waiting !== null) {
      if (state.tick === pushTick) commands.push(...waiting);
      if (state.tick > pushTick && !moving) {
        waiting = null;
        commands.push({ kind: 'pressure', pressure: 'steady' });
      }
      return commands;
    }
    if (state.tick % 6 !== 0) return commands;
    const frame = frameOf(world, state);
    const step = guide.hint(frame);
    const text = step === null ? '' : `${step.makes} ${step.derailleur} ${step.steps} ${step.inM === 0}`;
    if (step !== null && text !== shown)
      told.push({
        atM: frame.distanceM,
        timeS: frame.timeS,
        step,
        gear: [frame.ringIndex, frame.sprocketIndex],
      });
    shown = text;
    if (step === null || step.inM > 0 || moving || state.phase !== 'riding' || state.braking) return commands;
    waiting = [...pushes(step), ...(step.second === null ? [] : pushes(step.second))];
    pushTick = state.tick + Math.round(reactionS * 120);
    return [...commands, { kind: 'pressure', pressure: 'ease' }];
  };
}
