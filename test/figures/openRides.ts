/**
 * What foresight says of pitches that people really rode (`test/published/rides.ts` says whose): the recorded seconds are
 * judged as if they had been ridden here, with the riders' own torque and cadence on the flat as reference, against the
 * best ride over the same road that comes to it at the same speed. What a pitch asks of the legs is worked out as in the
 * game, from road, speed and gear; the recorded gradients are moved to where the legs met them first, as five of the six
 * come several seconds late. Shifts are not recorded, so where a gear was changed counts only by what it did.
 *
 * By hand: `npx tsx test/figures/openRides.ts [EVERY]`, which looks at every so-many-eth pitch.
 */
import { judgePitches } from '../../src/core/coach/foresight.ts';
import type { PitchReport } from '../../src/core/coach/types.ts';
import { findPitches } from '../../src/core/course/pitches.ts';
import { sampleAt } from '../../src/core/math/numbers.ts';
import { bandLowRpm, comfortLoad, slopeEffort } from '../../src/core/model/legs.ts';
import { roadLoad, totalForceN } from '../../src/core/model/load.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { lowestGear } from '../../src/core/model/transmission.ts';
import { planRoad } from '../../src/core/planner/plan.ts';
import { referenceRide } from '../../src/core/planner/reference.ts';
import { LEAD_S } from '../../src/core/ride/load.ts';
import type { RideTrace, TraceSample } from '../../src/core/ride/trace.ts';
import type { RideWorld } from '../../src/core/ride/types.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import {
  flatLegs,
  gradientLagS,
  mean,
  openPitches,
  openRides,
  quantile,
  roadOfPitch,
  type Second,
  torqueNm,
  withGradientsInTime,
} from '../published/rides.ts';

const EVERY = Number(process.argv[2] ?? 1);
/** Road before the foot: as far as rules look, and not so far that pace instead of gears decides how fast one arrives. */
const BEFORE_S = 15;
/** Half of the band around the cadence on the flat (rpm); bundled riders have 8 to 10. */
const HALF_BAND_RPM = 8;
/** A pitch found on the road is the one meant when its foot lies so near (m). */
const SAME_FOOT_M = 50;
/** Pedalled up to: so much of the last seconds before the foot, with so much of the power on the flat. */
const LAST_S = 8;
const PEDALLED_SHARE = 0.9;
const POWER_SHARE = 0.7;

/** Means over so many seconds on either side. */
function smooth(values: readonly number[], sideS: number): readonly number[] {
  return values.map((_, i) => mean(values.slice(Math.max(0, i - sideS), i + sideS + 1)));
}

/** A ride without a motor, written down once a second, as the samples a ride of the game would have left. */
function recorded(world: RideWorld, seconds: readonly Second[]): TraceSample[] {
  const { machine, course } = world;
  const { bike } = machine;
  const places: number[] = [];
  seconds.reduce((wayM, { speedMps }) => {
    places.push(wayM);
    return wayM + speedMps;
  }, 0);
  let developmentM = 5;
  const developments = seconds.map(({ speedMps, cadenceRpm, powerW }) => {
    if (cadenceRpm > 30 && powerW > 0) developmentM = (60 * speedMps) / cadenceRpm;
    return developmentM;
  });
  const gearsM = smooth(developments, 1);
  const speedsMps = smooth(
    seconds.map(({ speedMps }) => speedMps),
    1,
  );
  const torquesNm = smooth(
    seconds.map((second) => (second.cadenceRpm > 0 ? torqueNm(second) : 0)),
    2,
  );
  const slope = (atM: number): number => sampleAt(course.slopeRatio, atM);
  const { efficiency } = lowestGear(machine);
  const loadAt = (i: number, atM: number): number => {
    const force = totalForceN(
      roadLoad(speedsMps[i] ?? 0, slope(atM), 0, machine.totalMassKg, bike.cdaM2, bike.rollingCoefficient),
    );
    return (force * (gearsM[i] ?? 0)) / (2 * Math.PI * efficiency * machine.referenceTorqueNm);
  };
  return seconds.map(({ cadenceRpm, powerW }, i) => {
    const distanceM = places[i] ?? 0;
    const aheadM = distanceM + LEAD_S * (speedsMps[i] ?? 0);
    const beyond = (atM: number): number => loadAt(i, atM) - comfortLoad(machine, slope(atM));
    const pedalling = cadenceRpm > 0 && powerW > 0;
    return {
      timeS: i,
      distanceM,
      speedMps: speedsMps[i] ?? 0,
      cadenceRpm,
      bandLowRpm: bandLowRpm(machine.rider, slope(distanceM)),
      bandHighRpm: machine.rider.cadenceHighRpm,
      pressureRatio: pedalling
        ? (torquesNm[i] ?? 0) / (machine.referenceTorqueNm * slopeEffort(slope(distanceM)))
        : 0,
      torqueRatio: (torquesNm[i] ?? 0) / machine.referenceTorqueNm,
      loadRatio: loadAt(i, distanceM),
      overloadRatio: Math.max(0, beyond(distanceM), beyond(aheadM)),
      ringIndex: 0,
      sprocketIndex: 0,
      developmentM: gearsM[i] ?? 0,
      crossedS: 0,
      pedalling,
      held: false,
    };
  });
}

/** Whether the legs worked up to the foot, as they do in the game where nobody rests or brakes. */
function pedalledUpTo(seconds: readonly Second[], footS: number, flatW: number): boolean {
  const last = seconds.slice(Math.max(0, footS - LAST_S), footS);
  const turned = last.filter(({ powerW, cadenceRpm }) => powerW > 0 && cadenceRpm > 0);
  return (
    turned.length >= PEDALLED_SHARE * last.length &&
    mean(last.map(({ powerW }) => powerW)) >= POWER_SHARE * flatW
  );
}

function say(what: string, reports: readonly PitchReport[]): void {
  const credits = reports.map(({ credit }) => credit);
  const count = (timing: PitchReport['timing']): number =>
    reports.filter((report) => report.timing === timing).length;
  const slow = reports.filter(
    ({ timing, earlyBy }) => timing === 'too-early' && (earlyBy === 'slow' || earlyBy === 'coasted'),
  ).length;
  console.log(
    `${what}: ${reports.length}. Credit: median ${quantile(credits, 0.5).toFixed(2)}, quarter below ${quantile(credits, 0.25).toFixed(2)}; about right on ${count('about-right')}, too early ${count('too-early')} (${slow} of them slow or freewheeling), too late ${count('too-late')}.`,
  );
}

const asked: PitchReport[] = [];
const pedalled: PitchReport[] = [];
let pitchesInAll = 0;
for (const [name, asRecorded] of openRides()) {
  const seconds = withGradientsInTime(asRecorded);
  const flat = flatLegs(seconds);
  const flatRpm = (flat.powerW * 30) / (flat.torqueNm * Math.PI);
  const rider = {
    ...riderById('adult-strong')!,
    steadyPowerW: flat.powerW,
    criticalPowerW: 1.2 * flat.powerW,
    cadenceLowRpm: flatRpm - HALF_BAND_RPM,
    cadenceHighRpm: flatRpm + HALF_BAND_RPM,
  };
  const pitches = openPitches(name, seconds);
  console.log(`${name}: gradients ${gradientLagS(asRecorded)} s late, ${pitches.length} pitches`);
  for (const pitch of pitches) {
    pitchesInAll += 1;
    if (pitchesInAll % EVERY !== 0) continue;
    const { course, footM } = roadOfPitch(seconds, pitch, BEFORE_S);
    const part = seconds.slice(Math.max(0, pitch.from - BEFORE_S), Math.min(seconds.length, pitch.to + 5));
    const world: RideWorld = {
      ...buildRideWorld(
        { ...course, pitches: findPitches(course.slopeRatio) },
        bikeById('road-2x11')!,
        rider,
      ),
      startSpeedMps: Math.max(2, part[0]?.speedMps ?? 0),
    };
    const reference = referenceRide(world, planRoad(world)).trace;
    const trace: RideTrace = {
      samples: recorded(world, part),
      events: [],
      beforePitch: reference.beforePitch,
    };
    const near = judgePitches(world, trace, reference)
      .filter((report) => Math.abs(report.footM - footM) <= SAME_FOOT_M)
      .toSorted((a, b) => Math.abs(a.footM - footM) - Math.abs(b.footM - footM))[0];
    if (near?.asked !== true) continue;
    asked.push(near);
    const footS = trace.samples.findIndex(({ distanceM }) => distanceM >= near.footM);
    if (pedalledUpTo(part, footS, flat.powerW)) pedalled.push(near);
  }
}
say(`${pitchesInAll} pitches; asked the best ride`, asked);
say('of these pedalled up to', pedalled);
