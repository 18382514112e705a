/**
 * What foresight says of pitches that people really rode (`test/published/rides.ts` says whose): the recorded seconds are
 * judged as if they had been ridden here, with the riders' own torque and cadence on the flat as reference, against the
 * best ride over the same road. Shifts are not recorded, so only what the hill did to the legs and what came before its foot
 * counts. By hand: `npx tsx test/figures/openRides.ts [EVERY]`, which looks at every
 * so-many-eth pitch.
 */
import { judgePitches } from '../../src/core/coach/foresight.ts';
import type { PitchReport } from '../../src/core/coach/types.ts';
import { findPitches } from '../../src/core/course/pitches.ts';
import { sampleAt } from '../../src/core/math/numbers.ts';
import { bandLowRpm, comfortLoad } from '../../src/core/model/legs.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { planRoad } from '../../src/core/planner/plan.ts';
import { referenceRide } from '../../src/core/planner/reference.ts';
import { LEAD_S } from '../../src/core/ride/frame.ts';
import type { RideTrace, TraceSample } from '../../src/core/ride/trace.ts';
import type { RideWorld } from '../../src/core/ride/types.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import {
  flatLegs,
  openPitches,
  openRides,
  quantile,
  roadOfPitch,
  type Second,
  torqueNm,
} from '../published/rides.ts';

const EVERY = Number(process.argv[2] ?? 1);
const BEFORE_S = 30;
/** Half of the band around the cadence on the flat (rpm); bundled riders have 8 to 10. */
const HALF_BAND_RPM = 8;
/** A pitch found on the road is the one meant when its foot lies so near (m). */
const SAME_FOOT_M = 50;

function recorded(world: RideWorld, seconds: readonly Second[]): TraceSample[] {
  const { machine, course } = world;
  const places: number[] = [];
  seconds.reduce((wayM, { speedMps }) => {
    places.push(wayM);
    return wayM + speedMps;
  }, 0);
  const load = (i: number): number => {
    const second = seconds[i];
    return second === undefined || second.cadenceRpm <= 0 ? 0 : torqueNm(second) / machine.referenceTorqueNm;
  };
  const slope = (i: number): number => sampleAt(course.slopeRatio, places[i] ?? 0);
  const beyond = (i: number): number => (i >= seconds.length ? 0 : load(i) - comfortLoad(machine, slope(i)));
  let developmentM = 5;
  return seconds.map((second, i) => {
    const { speedMps, cadenceRpm } = second;
    const pedalling = cadenceRpm > 0 && second.powerW > 0;
    if (pedalling && cadenceRpm > 30) developmentM = (60 * speedMps) / cadenceRpm;
    return {
      timeS: i,
      distanceM: places[i] ?? 0,
      speedMps,
      cadenceRpm,
      bandLowRpm: bandLowRpm(machine.rider, slope(i)),
      bandHighRpm: machine.rider.cadenceHighRpm,
      pressureRatio: pedalling ? 1 : 0,
      torqueRatio: load(i),
      loadRatio: load(i),
      overloadRatio: Math.max(0, beyond(i), beyond(i + LEAD_S)),
      ringIndex: 0,
      sprocketIndex: 0,
      developmentM,
      crossedS: 0,
      pedalling,
      held: false,
    };
  });
}

const reports: PitchReport[] = [];
let pitchesInAll = 0;
for (const [name, seconds] of openRides()) {
  const flat = flatLegs(seconds);
  const flatRpm = (flat.powerW * 30) / (flat.torqueNm * Math.PI);
  const rider = {
    ...riderById('adult-strong')!,
    steadyPowerW: flat.powerW,
    criticalPowerW: 1.2 * flat.powerW,
    cadenceLowRpm: flatRpm - HALF_BAND_RPM,
    cadenceHighRpm: flatRpm + HALF_BAND_RPM,
  };
  for (const pitch of openPitches(name, seconds)) {
    pitchesInAll += 1;
    if (pitchesInAll % EVERY !== 0) continue;
    const { course, footM } = roadOfPitch(seconds, pitch, BEFORE_S);
    const world = buildRideWorld(
      { ...course, pitches: findPitches(course.slopeRatio) },
      bikeById('road-2x11')!,
      rider,
    );
    const reference = referenceRide(world, planRoad(world)).trace;
    const part = seconds.slice(Math.max(0, pitch.from - BEFORE_S), Math.min(seconds.length, pitch.to + 5));
    const trace: RideTrace = {
      samples: recorded(world, part),
      events: [],
      beforePitch: reference.beforePitch,
    };
    const near = judgePitches(world, trace, reference)
      .filter((report) => Math.abs(report.footM - footM) <= SAME_FOOT_M)
      .toSorted((a, b) => Math.abs(a.footM - footM) - Math.abs(b.footM - footM))[0];
    if (near?.asked === true) reports.push(near);
  }
}
const credits = reports.map(({ credit }) => credit);
const right = reports.filter(({ timing }) => timing === 'about-right').length;
console.log(
  `${pitchesInAll} pitches; ${reports.length} asked the best ride. Credit: median ${quantile(credits, 0.5).toFixed(2)}, quarter below ${quantile(credits, 0.25).toFixed(2)}; about right on ${right}, too early ${reports.filter(({ timing }) => timing === 'too-early').length}, too late ${reports.filter(({ timing }) => timing === 'too-late').length}.`,
);
