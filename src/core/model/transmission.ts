/**
 * The transmission as one idea: which gears there are, where the shifters stand, which pushes lead from one gear to
 * another, and what a push does. Rings and sprockets are taken apart here, in the shifting itself and in drawings;
 * whoever plans, judges or tells a ride asks.
 */
import { clamp, isRising } from '../math/numbers.ts';
import { gearAt } from './machine.ts';
import { hasHub, shifterPlaces } from './shifters.ts';
import type { Bike, Derailleur, Gear, GearParts, GearPlace, Machine, ShiftDirection } from './types.ts';

/** One push of a shifter, `steps` gears at once. */
export interface Push {
  readonly derailleur: Derailleur;
  readonly direction: ShiftDirection;
  readonly steps: number;
}

/** One movement of one shifter by one gear; `fromIndex` and `toIndex` are its places. */
export interface ShiftMovement {
  readonly derailleur: Derailleur;
  readonly direction: ShiftDirection;
  readonly fromIndex: number;
  readonly toIndex: number;
}

/** How far the shifters are moved: at the rear positive is easier, in front positive is a bigger ring. */
export interface Steps {
  readonly rearSteps: number;
  readonly ringSteps: number;
}

/** One manoeuvre between two gears (numbers in `machine.gears`). */
export interface Move extends Steps {
  readonly toGear: number;
}

/** One push of a lever sweeps up to so many gears towards easier (common practice). */
export const SWEEP_SPROCKETS = 3;
/** What a practised rider moves in one manoeuvre: easier, harder, and at the rear to make up for a ring. */
const EASIER_AT_ONCE = 3;
const HARDER_AT_ONCE = 2;
const COMPENSATION = 3;

function exists(machine: Machine, { ringIndex, sprocketIndex }: GearPlace): boolean {
  return (
    ringIndex >= 0 &&
    ringIndex < machine.ringCount &&
    sprocketIndex >= 0 &&
    sprocketIndex < machine.sprocketCount
  );
}

/** The gear of a place. Throws on an impossible one. */
export function gearOf(machine: Machine, place: GearPlace): Gear {
  return gearAt(machine, place.ringIndex, place.sprocketIndex);
}

/** Its number in `machine.gears`. */
export function gearNumber(machine: Machine, { ringIndex, sprocketIndex }: GearPlace): number {
  return ringIndex * machine.sprocketCount + sprocketIndex;
}

/** Only the place of something that has one. */
export function placeOf({ ringIndex, sprocketIndex }: GearPlace): GearPlace {
  return { ringIndex, sprocketIndex };
}

export function samePlace(a: GearPlace, b: GearPlace): boolean {
  return a.ringIndex === b.ringIndex && a.sprocketIndex === b.sprocketIndex;
}

/** A place as two numbers for a file, and back. */
export function numbersOfPlace({ ringIndex, sprocketIndex }: GearPlace): readonly [number, number] {
  return [ringIndex, sprocketIndex];
}

export function placeOfNumbers(ringIndex: number, sprocketIndex: number): GearPlace {
  return { ringIndex, sprocketIndex };
}

export function lowestGear(machine: Machine): Gear {
  return gearAt(machine, 0, machine.sprocketCount - 1);
}

export function highestGear(machine: Machine): Gear {
  return gearAt(machine, machine.ringCount - 1, 0);
}

/** Whether there is no harder gear than this one. */
export function isHighest(machine: Machine, place: GearPlace): boolean {
  return place.ringIndex === machine.ringCount - 1 && place.sprocketIndex === 0;
}

/** What a push adds to the index of its shifter: easier is a bigger sprocket, but a smaller ring. */
export function indexStep(derailleur: Derailleur, direction: ShiftDirection): 1 | -1 {
  return (derailleur === 'rear') === (direction === 'easier') ? 1 : -1;
}

/** Index of the last place of a shifter. */
export function lastIndex(machine: Machine, derailleur: Derailleur): number {
  return (derailleur === 'rear' ? machine.sprocketCount : machine.ringCount) - 1;
}

/** Pushes of one step that a shifter has room for, from where it stands. */
export function roomFor(
  machine: Machine,
  place: GearPlace,
  derailleur: Derailleur,
  direction: ShiftDirection,
): number {
  const index = derailleur === 'rear' ? place.sprocketIndex : place.ringIndex;
  return indexStep(derailleur, direction) === 1 ? lastIndex(machine, derailleur) - index : index;
}

/** Where a push leads, or null beyond the last gear. */
export function pushed(machine: Machine, place: GearPlace, push: Push): GearPlace | null {
  const to = afterPush(place, push);
  return exists(machine, to) ? to : null;
}

/** The same for a push that is known to have room. */
export function afterPush({ ringIndex, sprocketIndex }: GearPlace, push: Push): GearPlace {
  const by = push.steps * indexStep(push.derailleur, push.direction);
  return push.derailleur === 'front'
    ? { ringIndex: ringIndex + by, sprocketIndex }
    : { ringIndex, sprocketIndex: sprocketIndex + by };
}

/** The place there is nearest to one that may lie beyond the last ring or sprocket. */
export function nearestPlace(machine: Machine, { ringIndex, sprocketIndex }: GearPlace): GearPlace {
  return {
    ringIndex: clamp(ringIndex, 0, machine.ringCount - 1),
    sprocketIndex: clamp(sprocketIndex, 0, machine.sprocketCount - 1),
  };
}

/** So many steps easier at the rear (harder where negative), as far as there are gears. */
export function easierBehind(machine: Machine, place: GearPlace, steps: number): GearPlace {
  return nearestPlace(machine, {
    ringIndex: place.ringIndex,
    sprocketIndex: place.sprocketIndex + steps,
  });
}

/** Where a movement that has come to its end leaves the shifters. */
export function afterMovement(
  { ringIndex, sprocketIndex }: GearPlace,
  moved: Pick<ShiftMovement, 'derailleur' | 'toIndex'>,
): GearPlace {
  return moved.derailleur === 'front'
    ? { ringIndex: moved.toIndex, sprocketIndex }
    : { ringIndex, sprocketIndex: moved.toIndex };
}

/** Only the movement of something that has one. */
export function movementOf({ derailleur, direction, fromIndex, toIndex }: ShiftMovement): ShiftMovement {
  return { derailleur, direction, fromIndex, toIndex };
}

/** How far movements went, all together. */
export function stepsOf(movements: readonly ShiftMovement[]): Steps {
  let rearSteps = 0;
  let ringSteps = 0;
  for (const { derailleur, fromIndex, toIndex } of movements)
    if (derailleur === 'rear') rearSteps += toIndex - fromIndex;
    else ringSteps += toIndex - fromIndex;
  return { rearSteps, ringSteps };
}

/** How far the shifters must be moved from one place to another. */
export function stepsBetween(from: GearPlace, to: GearPlace): Steps {
  return {
    rearSteps: to.sprocketIndex - from.sprocketIndex,
    ringSteps: to.ringIndex - from.ringIndex,
  };
}

/** Lever pushes for so many steps: rings first, then sprockets; easier in sweeps, harder one click at a time. */
export function pushesFor({ rearSteps, ringSteps }: Steps): Push[] {
  const pushes: Push[] = [];
  for (let n = 0; n < Math.abs(ringSteps); n += 1)
    pushes.push({ derailleur: 'front', direction: ringSteps > 0 ? 'harder' : 'easier', steps: 1 });
  for (let left = rearSteps; left > 0; left -= SWEEP_SPROCKETS)
    pushes.push({ derailleur: 'rear', direction: 'easier', steps: Math.min(SWEEP_SPROCKETS, left) });
  for (let n = 0; n < -rearSteps; n += 1) pushes.push({ derailleur: 'rear', direction: 'harder', steps: 1 });
  return pushes;
}

/** All manoeuvres from each gear; crossed gears can be left but, where refused, not entered. */
export function possibleMoves(machine: Machine): readonly (readonly Move[])[] {
  const refuses = machine.bike.shifter === 'electronic' && machine.bike.refusesCrossed;
  // The grip of a hub goes through any number of gears in one turn.
  const all = machine.sprocketCount - 1;
  const [easier, harder] = hasHub(machine.bike) ? [all, all] : [EASIER_AT_ONCE, HARDER_AT_ONCE];
  return machine.gears.map((gear) => {
    const moves: Move[] = [];
    const add = (ringSteps: number, rearSteps: number): void => {
      const to = {
        ringIndex: gear.ringIndex + ringSteps,
        sprocketIndex: gear.sprocketIndex + rearSteps,
      };
      if (!exists(machine, to)) return;
      const toGear = gearNumber(machine, to);
      if (refuses && machine.gears[toGear]?.crossed === true) return;
      moves.push({ toGear, rearSteps, ringSteps });
    };
    for (let n = 1; n <= easier; n += 1) add(0, n);
    for (let n = 1; n <= harder; n += 1) add(0, -n);
    for (let n = 0; n <= COMPENSATION; n += 1) {
      add(1, n);
      add(-1, -n);
    }
    return moves;
  });
}

/** Gears worth trying instead: a step or two to either side, and the nearest one on another ring. */
export function neighbours(machine: Machine, at: GearPlace): GearPlace[] {
  const found: GearPlace[] = [];
  for (const step of [-1, 1, -2, 2]) {
    const other = { ringIndex: at.ringIndex, sprocketIndex: at.sprocketIndex + step };
    if (exists(machine, other)) found.push(other);
  }
  const wantedM = gearOf(machine, at).developmentM;
  for (const ringIndex of [at.ringIndex - 1, at.ringIndex + 1]) {
    if (ringIndex < 0 || ringIndex >= machine.ringCount) continue;
    let sprocketIndex = 0;
    for (let s = 1; s < machine.sprocketCount; s += 1) {
      const miss = (index: number): number =>
        Math.abs(gearAt(machine, ringIndex, index).developmentM - wantedM);
      if (miss(s) < miss(sprocketIndex)) sprocketIndex = s;
    }
    found.push({ ringIndex, sprocketIndex });
  }
  return found;
}

/** What names a gear: teeth, or which gear of a hub. */
export type GearTold = Pick<Gear, 'ringTeeth' | 'sprocketTeeth'> & Partial<Pick<Gear, 'hub'>>;

/** What a sentence about a gear needs. */
export function gearValues({ ringTeeth, sprocketTeeth, hub }: Gear): Readonly<Record<string, number>> {
  return { ringTeeth, sprocketTeeth, ...(hub === null ? {} : { hubGear: hub.number, hubGears: hub.of }) };
}

/** The gear in such values. */
export function gearOfValues(values: Readonly<Record<string, unknown>>): GearTold {
  const teeth = { ringTeeth: Number(values['ringTeeth']), sprocketTeeth: Number(values['sprocketTeeth']) };
  if (values['hubGear'] === undefined) return teeth;
  return { ...teeth, hub: { number: Number(values['hubGear']), of: Number(values['hubGears']), ratio: 1 } };
}

/** Whether rings and sprockets stand in the order in which they are told, and are no more than a bike has. */
export function isPossibleTransmission(bike: GearParts & Pick<Bike, 'hub'>): boolean {
  const { chainringsTeeth, sprocketsTeeth, hub } = bike;
  if (hub !== undefined && sprocketsTeeth.length !== 1) return false;
  return chainringsTeeth.length <= 3 && isRising(chainringsTeeth) && isRising(sprocketsTeeth);
}

/** What the shifter of a movement showed before and after it: teeth, or the number of a hub's gear. */
export function numbersOfMovement(
  { bike }: Machine,
  moved: Pick<ShiftMovement, 'derailleur' | 'fromIndex' | 'toIndex'>,
): readonly [number, number] {
  if (hasHub(bike) && moved.derailleur === 'rear') {
    const [, count = 0] = shifterPlaces(bike);
    return [count - moved.fromIndex, count - moved.toIndex];
  }
  const teeth = moved.derailleur === 'front' ? bike.chainringsTeeth : bike.sprocketsTeeth;
  return [teeth[moved.fromIndex] ?? 0, teeth[moved.toIndex] ?? 0];
}
