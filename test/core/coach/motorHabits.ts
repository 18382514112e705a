/**
 * Riders who do not know their motor, or ride a hub like a chain: each does one thing wrong over the best ride's own
 * manoeuvres. What a coach would say to each stands beside it.
 */
import type { Verdict } from '../../../src/core/coach/types.ts';
import { gearAt } from '../../../src/core/model/machine.ts';
import { FADES_FROM_MPS, loadsChain } from '../../../src/core/model/motor.ts';
import { hasHub } from '../../../src/core/model/shifters.ts';
import { type Manoeuvre, scriptDriver } from '../../../src/core/planner/script.ts';
import type { Controller } from '../../../src/core/ride/run.ts';
import { isShifting } from '../../../src/core/ride/step.ts';
import type { RideCommand, RideWorld } from '../../../src/core/ride/types.ts';
import { CHEATS, rides } from './exploits.ts';
import { pedalsOn, restsForShifts } from './hubHabits.ts';

type Change = Verdict['change'];

/** A habit, on which bikes and roads it can be had, and the headlines that name it. */
export interface Habit {
  readonly habit: string;
  /** Null where this bike or road has no room for it. */
  readonly rider: (world: RideWorld, script: readonly Manoeuvre[], seed: number) => Controller | null;
  readonly isNamedBy: (change: Change, world: RideWorld) => boolean;
  /** Whether it rides otherwise with another seed. */
  readonly varies?: true;
}

const isSoft = (one: RideCommand): boolean =>
  one.kind === 'pressure' && (one.pressure === 'ease' || one.pressure === 'coast');

/** The best ride's levers, and never soft feet: a motor pulls on at full. */
function neverSoft(world: RideWorld, script: readonly Manoeuvre[]): Controller {
  const drive = scriptDriver(world, script);
  return (state) => drive(state).filter((one) => !isSoft(one));
}

/** The best ride's levers, with feet that go soft in the moment of the lever: legs are soft at once, a motor is not. */
function softWithTheLever(world: RideWorld, script: readonly Manoeuvre[]): Controller {
  const drive = scriptDriver(world, script);
  return (state) => {
    const commands = drive(state);
    const rest = commands.filter((one) => !isSoft(one));
    return commands.some(({ kind }) => kind === 'shift')
      ? [{ kind: 'pressure', pressure: 'ease' }, ...rest]
      : rest;
  };
}

/** So far before a line the gear to start in is taken, and so far behind it it is late (m). */
const STOP_ZONE_M = { before: 70, behind: 25 };

/** The best ride, without what it shifts for the start at a line; null where it shifts nothing there. */
function noChangeAtTheStop(world: RideWorld, script: readonly Manoeuvre[]): Controller | null {
  const start = { ringIndex: world.startRingIndex, sprocketIndex: world.startSprocketIndex };
  const gear = ({ ringIndex, sprocketIndex }: Omit<Manoeuvre, 'atM'>): number =>
    gearAt(world.machine, ringIndex, sprocketIndex).developmentM;
  const kept = script.filter((one, i) => {
    const near = world.course.stopLinesM.some(
      (lineM) => one.atM > lineM - STOP_ZONE_M.before && one.atM < lineM + STOP_ZONE_M.behind,
    );
    return !near || gear(one) >= gear(script[i - 1] ?? start);
  });
  return kept.length === script.length ? null : scriptDriver(world, kept);
}

/** The best ride, but no lever towards easier before the motor helps again: above its limit it is waited for. */
function waitsForTheHelp(world: RideWorld, script: readonly Manoeuvre[]): Controller | null {
  if (world.machine.bike.motor === undefined) return null;
  const drive = scriptDriver(world, script);
  let held: RideCommand[] = [];
  return (state) => {
    const out: RideCommand[] = [];
    for (const one of drive(state))
      if (one.kind === 'shift' && one.direction === 'easier' && state.speedMps > FADES_FROM_MPS)
        held.push(one);
      else out.push(one);
    if (held.length > 0 && state.speedMps <= FADES_FROM_MPS) {
      out.push(...held);
      held = [];
    }
    return out;
  };
}

function lowestWithSoftFeet(world: RideWorld): Controller {
  const lowest = { ring: 0, sprocket: world.machine.sprocketCount - 1 };
  const soft = hasHub(world.machine.bike) ? 'coast' : 'ease';
  return rides(world, (state) => ({ gear: lowest, pressure: isShifting(state) ? soft : 'steady' }));
}

/** The motor is named with it only where it pulled: near its limit of speed it gives next to nothing. */
const saysEase: Habit['isNamedBy'] = (change, { machine: { bike } }) =>
  change.code === 'ease' && (change.hub === true) === hasHub(bike);

/** What is asked of every bike with a hub or a motor. */
export const HABITS: readonly Habit[] = [
  {
    habit: 'pushing on through every shift, motor at full',
    rider: neverSoft,
    isNamedBy: saysEase,
  },
  {
    habit: 'the same, looking ahead by habit',
    rider: (world, _, seed) => pedalsOn(world, [0.5, 0.75, 1][seed % 3]!, seed),
    isNamedBy: saysEase,
    varies: true,
  },
  {
    habit: 'soft feet only with the lever',
    rider: (world, script) => (loadsChain(world.machine.bike) ? softWithTheLever(world, script) : null),
    // A hub waits until the motor has let go, and so the gear comes late.
    isNamedBy: (change, world) =>
      saysEase(change, world) || (hasHub(world.machine.bike) && change.code === 'late-pitch'),
  },
  {
    habit: 'legs at rest for the shift of a chain',
    rider: (world, _, seed) => (hasHub(world.machine.bike) ? null : restsForShifts(world, seed)),
    isNamedBy: ({ code }) => code === 'stood-still',
    varies: true,
  },
  {
    habit: 'no change for the start at a line',
    rider: noChangeAtTheStop,
    isNamedBy: ({ code }) => ['slow-legs', 'late-pitch', 'few-steps', 'foot-down'].includes(code),
  },
  {
    habit: 'waiting for the help to come back',
    rider: waitsForTheHelp,
    isNamedBy: ({ code }) => ['late-pitch', 'few-steps', 'pushed', 'foot-down', 'slow-legs'].includes(code),
  },
  {
    habit: 'lowest gear all the way, taken with soft feet',
    rider: lowestWithSoftFeet,
    isNamedBy: ({ code }) => code === 'fast-legs',
  },
];

/** Riders who pass nowhere on a bike with a hub or a motor. */
export const PASS_NOWHERE: Readonly<Record<string, (world: RideWorld) => Controller>> = {
  'looking ahead, never soft': (world) => pedalsOn(world, 1, 3),
  'lowest gear all the way, taken with soft feet': lowestWithSoftFeet,
  ...Object.fromEntries(
    ['hardest all the way', 'never a lever', 'pressing all the way without a shift'].map((name) => [
      name,
      (world: RideWorld) => CHEATS[name]!(world, []),
    ]),
  ),
};
