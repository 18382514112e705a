/**
 * Which gears can be reached from which in one manoeuvre: up to three sprockets easier, two harder, or a
 * ring change with up to three sprockets of compensation. Computed once per machine.
 */
import type { Machine } from '../model/types.ts';

/** One manoeuvre between two gears (indices into `machine.gears`). */
export interface Move {
  readonly toGear: number;
  /** Sprockets moved, positive easier; rings moved, positive bigger. */
  readonly rearSteps: number;
  readonly ringSteps: number;
}

const EASIER_AT_ONCE = 3;
const HARDER_AT_ONCE = 2;
const COMPENSATION = 3;

/** All manoeuvres from each gear; crossed gears can be left but, where refused, not entered. */
export function possibleMoves(machine: Machine): readonly (readonly Move[])[] {
  const refuses = machine.bike.shifter === 'electronic' && machine.bike.refusesCrossed;
  return machine.gears.map((gear) => {
    const moves: Move[] = [];
    const add = (ringSteps: number, rearSteps: number): void => {
      const ring = gear.ringIndex + ringSteps;
      const sprocket = gear.sprocketIndex + rearSteps;
      if (ring < 0 || ring >= machine.ringCount || sprocket < 0 || sprocket >= machine.sprocketCount) return;
      const toGear = ring * machine.sprocketCount + sprocket;
      if (refuses && machine.gears[toGear]?.crossed === true) return;
      moves.push({ toGear, rearSteps, ringSteps });
    };
    for (let n = 1; n <= EASIER_AT_ONCE; n += 1) add(0, n);
    for (let n = 1; n <= HARDER_AT_ONCE; n += 1) add(0, -n);
    for (let n = 0; n <= COMPENSATION; n += 1) {
      add(1, n);
      add(-1, -n);
    }
    return moves;
  });
}
