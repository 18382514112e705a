/**
 * What a ridden trace costs, counted with the very functions the plan is made with, so that plans on different
 * grids and the rides that follow them can be compared in one currency. It judges nobody; marks are the coach's.
 */
import { crankTorqueNm } from '../model/legs.ts';
import { gearAt } from '../model/machine.ts';
import { SAMPLE_TICKS, type RideTrace, type TraceSample } from '../ride/trace.ts';
import type { RideEvent, RideWorld } from '../ride/types.ts';
import {
  cadenceCostPerS,
  CROSSED_PER_S,
  FOOT_DOWN,
  overloadCostPerS,
  shiftCost,
  TIME_PER_S,
} from './costs.ts';

type ShiftDone = Extract<RideEvent, { kind: 'shift-done' }>;

/** Movements nearer than this were asked for in one manoeuvre (ticks). */
const SAME_MANOEUVRE_TICKS = 24;

/** Total cost of a ride from its trace. Braking and standing cost only time, as in the plan. */
export function realisedCost(world: RideWorld, trace: RideTrace): number {
  const sampleS = SAMPLE_TICKS * world.tickS;
  let cost = 0;
  // The first sample is the state before the first tick; it lasted no time.
  for (const sample of trace.samples.slice(1)) cost += costPerS(world, sample) * sampleS;
  for (const manoeuvre of manoeuvres(trace)) cost += manoeuvreCost(world, trace, manoeuvre);
  const footDowns = trace.events.filter((event) => event.kind === 'foot-down');
  return cost + footDowns.length * FOOT_DOWN;
}

function costPerS(world: RideWorld, sample: TraceSample): number {
  if (sample.held || !sample.pedalling) return TIME_PER_S;
  const { machine } = world;
  const gear = gearAt(machine, sample.ringIndex, sample.sprocketIndex);
  const highest = sample.ringIndex === machine.ringCount - 1 && sample.sprocketIndex === 0;
  const highRpm = highest ? Number.POSITIVE_INFINITY : sample.bandHighRpm;
  return (
    TIME_PER_S +
    (gear.crossed ? CROSSED_PER_S : 0) +
    cadenceCostPerS(sample.cadenceRpm, sample.bandLowRpm, highRpm) +
    overloadCostPerS(sample.loadRatio)
  );
}

/** Runs of chain movements that follow each other without a pause. */
function manoeuvres(trace: RideTrace): ShiftDone[][] {
  const runs: ShiftDone[][] = [];
  let endTick = Number.NEGATIVE_INFINITY;
  for (const event of trace.events) {
    if (event.kind !== 'shift-done') continue;
    const startTick = event.tick - event.durationS * 120;
    const open = runs.at(-1);
    if (open !== undefined && startTick - endTick < SAME_MANOEUVRE_TICKS) open.push(event);
    else runs.push([event]);
    endTick = Math.max(endTick, event.tick);
  }
  return runs;
}

function manoeuvreCost(world: RideWorld, trace: RideTrace, run: readonly ShiftDone[]): number {
  const startTick = Math.min(...run.map((event) => event.tick - event.durationS * 120));
  const index = Math.min(trace.samples.length - 1, Math.max(0, Math.floor(startTick / SAMPLE_TICKS)));
  const sample = trace.samples[index] as TraceSample;
  const legs = crankTorqueNm(world.machine, 1, sample.cadenceRpm) / world.machine.referenceTorqueNm;
  const steps = (derailleur: 'rear' | 'front'): number =>
    run.reduce(
      (sum, event) => sum + (event.derailleur === derailleur ? event.toIndex - event.fromIndex : 0),
      0,
    );
  return shiftCost(steps('rear'), steps('front'), Math.max(sample.loadRatio, legs));
}
