/**
 * How many apples have hopped out of the basket on a children's road: at every jerk of the chain, and while the legs grind
 * so slowly, or whirr so fast, that the bike rocks. Counted from the trace, so that the picture while riding and the party
 * afterwards agree; no mark knows of it. The counts are ours: a ride without a lever pushed loses some, a good one few.
 */
import { HEAVY_LOAD } from '../model/shift.ts';
import { type RideTrace, SAMPLE_S } from '../ride/trace.ts';
import type { RideEvent } from '../ride/types.ts';

/** Apples in the basket at the start; the last one always stays. */
export const APPLES = 8;

/** Legs this far below or above their band rock the bike (rpm), and an apple goes each time they did for so long (s). */
const GRINDS_RPM = 7;
const GRINDS_S = 1.6;
const WHIRRS_RPM = 24;
const WHIRRS_S = 2.5;

/** What has been counted of a trace before its first sample. Plain data. */
export const ALL_APPLES = {
  samplesSeen: 0,
  eventsSeen: 0,
  spilled: 0,
  /** Of them at jolts, from grinding and from whirring legs. */
  jolts: 0,
  grinding: 0,
  whirring: 0,
  grindingS: 0,
  whirringS: 0,
};
type AppleCount = Readonly<typeof ALL_APPLES>;

/** The game eases for children while the chain moves; a click on the hill still jerks, one before it does not. */
const JERK_LOAD = 0.66;

/** Apples that hop out at one event: every second jerk throws one out. */
function jolt(event: RideEvent): number {
  if (event.kind === 'shift-done') return event.load >= HEAVY_LOAD ? 1 : event.load >= JERK_LOAD ? 0.5 : 0;
  if (event.kind === 'shift-hung') return 1;
  return event.kind === 'chain-dropped' || event.kind === 'foot-down' ? 2 : 0;
}

/** Counts on from where `before` ended. */
export function countApples(trace: RideTrace, before: AppleCount): AppleCount {
  let { jolts, grinding, whirring, grindingS, whirringS } = before;
  for (let i = before.samplesSeen; i < trace.samples.length; i += 1) {
    const sample = trace.samples[i];
    if (sample === undefined || !sample.pedalling || sample.held) continue;
    if (sample.cadenceRpm < sample.bandLowRpm - GRINDS_RPM) grindingS += SAMPLE_S;
    if (sample.cadenceRpm > sample.bandHighRpm + WHIRRS_RPM) whirringS += SAMPLE_S;
    if (grindingS >= GRINDS_S) {
      grinding += 1;
      grindingS = 0;
    }
    if (whirringS >= WHIRRS_S) {
      whirring += 1;
      whirringS = 0;
    }
  }
  for (let i = before.eventsSeen; i < trace.events.length; i += 1) {
    const event = trace.events[i];
    if (event !== undefined) jolts += jolt(event);
  }
  return {
    samplesSeen: trace.samples.length,
    eventsSeen: trace.events.length,
    spilled: Math.min(APPLES - 1, Math.floor(jolts + grinding + whirring)),
    jolts,
    grinding,
    whirring,
    grindingS,
    whirringS,
  };
}

/** Of a whole ride: what was carried to its end, what hopped out on the way, and what made most of it hop. */
export function applesOf(trace: RideTrace) {
  const { spilled, jolts, grinding, whirring } = countApples(trace, ALL_APPLES);
  const worst = Math.max(jolts, grinding, whirring);
  const most = worst === grinding ? 'grinding' : worst === jolts ? 'jolts' : 'whirring';
  return { carried: APPLES - spilled, spilled, most: spilled === 0 ? 'none' : most } as const;
}
