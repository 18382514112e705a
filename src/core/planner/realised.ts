/**
 * What a ridden trace costs, at the prices the plan is made with (`costs.ts`), so that plans on different grids and the
 * rides that follow them can be compared in one currency. What leaned on the chain is that of the moment itself, where
 * `plan.ts` has it from tables of the grid; a test compares. It judges nobody; marks are the coach's.
 */
import { sampleAt } from '../math/numbers.ts';
import { crankTorqueNm, slopeEffort } from '../model/legs.ts';
import { gearOf, isHighest, type Steps, stepsOf } from '../model/transmission.ts';
import { hasHub } from '../model/shifters.ts';
import type { GearPlace } from '../model/types.ts';
import { roadLoadRatio } from '../ride/load.ts';
import {
  beganTick,
  doneShifts,
  type RideTrace,
  SAMPLE_TICKS,
  type ShiftDone,
  type TraceSample,
} from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import {
  cadenceCostPerS,
  CROSSED_PER_S,
  FOOT_DOWN,
  effortCostPerS,
  shiftCost,
  undoneCost,
  TIME_PER_S,
} from './costs.ts';
import { rearAlone } from './script.ts';

/** Movements nearer than this were asked for in one manoeuvre (ticks). */
const SAME_MANOEUVRE_TICKS = 24;

/** Total cost of a ride from its trace. Braking and standing cost only time, as in the plan. */
export function realisedCost(world: RideWorld, trace: RideTrace): number {
  const sampleS = SAMPLE_TICKS * world.tickS;
  let cost = 0;
  // The first sample is the state before the first tick; it lasted no time.
  for (const sample of trace.samples.slice(1)) cost += costPerS(world, sample) * sampleS;
  let before = { steps: 0, atM: 0, endTick: 0 };
  for (const run of manoeuvres(trace)) {
    const agoS = (beganTick(run[0]) - before.endTick) * world.tickS;
    const steps = rearAlone(stepsOf(run));
    const atM = run[0].startedAtM;
    cost += runCost(world, trace, run) + undoneCost(world.course, { ...before, agoS }, steps, atM);
    before = { steps, atM, endTick: (run.at(-1) as ShiftDone).tick };
  }
  const footDowns = trace.events.filter((event) => event.kind === 'foot-down');
  return cost + footDowns.length * FOOT_DOWN;
}

/** Cost of a second like this sample. */
export function costPerS(world: RideWorld, sample: TraceSample): number {
  if (sample.held || !sample.pedalling) return TIME_PER_S;
  const { machine } = world;
  const gear = gearOf(machine, sample);
  const highRpm = isHighest(machine, sample) ? Number.POSITIVE_INFINITY : sample.bandHighRpm;
  return (
    TIME_PER_S +
    (gear.crossed ? CROSSED_PER_S : 0) +
    cadenceCostPerS(sample.cadenceRpm, sample.bandLowRpm, highRpm) +
    effortCostPerS(sample.overloadRatio, sample.pressureRatio)
  );
}

type Run = [ShiftDone, ...ShiftDone[]];

/** Runs of chain movements that follow each other without a pause. */
function manoeuvres(trace: RideTrace): Run[] {
  const runs: Run[] = [];
  let endTick = Number.NEGATIVE_INFINITY;
  for (const event of doneShifts(trace)) {
    const open = runs.at(-1);
    if (open !== undefined && beganTick(event) - endTick < SAME_MANOEUVRE_TICKS) open.push(event);
    else runs.push([event]);
    endTick = Math.max(endTick, event.tick);
  }
  return runs;
}

function runCost(world: RideWorld, trace: RideTrace, run: readonly ShiftDone[]): number {
  const startTick = Math.min(...run.map(beganTick));
  const index = Math.min(trace.samples.length - 1, Math.max(0, Math.floor(startTick / SAMPLE_TICKS)));
  const sample = trace.samples[index] as TraceSample;
  return manoeuvreCost(world, sample, stepsOf(run));
}

/** Cost of a manoeuvre begun in this moment: its steps, and what leans on the chain whether or not one eases. */
export function manoeuvreCost(
  world: RideWorld,
  at: Pick<TraceSample, 'distanceM' | 'speedMps' | 'cadenceRpm' | 'unhelped'> & GearPlace,
  { rearSteps, ringSteps }: Steps,
): number {
  // Nothing leans on a hub that is changed with the legs at rest.
  if (hasHub(world.machine.bike) && at.cadenceRpm === 0) return shiftCost(rearSteps, ringSteps, 0);
  const slopeRatio = sampleAt(world.course.slopeRatio, at.distanceM);
  const legs = crankTorqueNm(world.machine, 1, at.cadenceRpm, slopeRatio) / world.machine.referenceTorqueNm;
  const load = Math.max(roadLoadRatio(world, at), legs) / slopeEffort(slopeRatio);
  return shiftCost(rearSteps, ringSteps, load);
}
