/**
 * What the page "On the road" says of rides, measured: rides of the core written down as a device would (their truth is
 * known), and the six open rides (`test/published/rides.ts` says whose), of which no teeth are known.
 * By hand: `npx tsx test/figures/onTheRoad.ts`.
 */
import { findPitches } from '../../src/core/course/pitches.ts';
import { buildMachine } from '../../src/core/model/machine.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { possibleDevelopments, readGears } from '../../src/core/recorded/gears.ts';
import { figuresOf } from '../../src/core/recorded/pitchFigures.ts';
import { figuresOfRide, roadRide } from '../../src/core/recorded/rideFigures.ts';
import type { RoadSecond } from '../../src/core/recorded/seconds.ts';
import { NAMED_HABITS } from '../../src/core/virtual/riders.ts';
import { madeRide, roadOfPitches } from '../core/recorded/made.ts';
import {
  gradientLagS,
  openRides,
  quantile,
  REASON,
  RIDES_HERE,
  type Second,
  smoothGradients,
  withGradientsInTime,
} from '../published/rides.ts';

const MADE = [
  ['road-2x11', 'adult-weekly'],
  ['trekking-3x8', 'adult-new'],
  ['gravel-1x12', 'adult-strong'],
  ['kids-20-1x7', 'child-9'],
] as const;

function madeRides(): void {
  for (const [bikeId, riderId] of MADE)
    for (const habit of ['late', 'early'] as const) {
      const made = madeRide(roadOfPitches(20, 71), bikeId, riderId, NAMED_HABITS[habit], 3);
      const who = { bike: bikeById(bikeId)!, rider: riderById(riderId)!, teethKnown: true };
      const result = roadRide(made.road, made.file.month, who);
      if (!result.ok) throw new Error(result.why);
      const gears = readGears(result.seconds, possibleDevelopments(buildMachine(who.bike, who.rider)));
      const claimed = gears.developmentM.flatMap((m, i) => {
        const truth = made.samples[(result.seconds[i]?.timeS ?? 0) * 10];
        return m === null || truth === undefined ? [] : [Math.abs(m / truth.developmentM - 1) < 0.05];
      });
      const stretch = made.road.lengthM / made.course.lengthM;
      const places = made.samples.map((s) => ({ ...s, cadenceRpm: s.pedalling ? s.cadenceRpm : 0 }));
      const errors = made.course.pitches.flatMap((pitch) => {
        const found = result.figures.pitches.find((one) => Math.abs(one.footM - pitch.footM * stretch) < 25);
        const truth = figuresOf(places, pitch);
        return found === undefined || found.firstEasierM === null || truth.firstEasierM === null
          ? []
          : [{ off: found.firstEasierM - truth.firstEasierM, plusMinusM: found.plusMinusM ?? 0 }];
      });
      const firsts = result.figures.pitches.flatMap(({ firstEasierM }) => firstEasierM ?? []);
      const right = claimed.filter(Boolean).length / claimed.length;
      console.log(
        `${bikeId} ${habit}: gear claimed on ${share(claimed.length / result.seconds.length)} %, right on ${share(right)} %; ${result.figures.pitches.length} of ${made.course.pitches.length} pitches; place off by ${quantile(
          errors.map(({ off }) => Math.abs(off)),
          0.5,
        ).toFixed(
          0,
        )} m (median of ${errors.length}, mean ${(errors.reduce((a, { off }) => a + off, 0) / errors.length).toFixed(0)}), said ± ${quantile(
          errors.map((e) => e.plusMinusM),
          0.5,
        ).toFixed(0)} m; first easier gear ${quantile(firsts, 0.5).toFixed(0)} m from the foot`,
      );
    }
}

function share(of: number): string {
  return (100 * of).toFixed(1);
}

/** An open ride as seconds of a road, with its pitches. */
function roadSeconds(seconds: readonly Second[]): { seconds: RoadSecond[]; slopes: number[] } {
  const gradients = smoothGradients(seconds, 7);
  const slopes: number[] = [];
  let distanceM = 0;
  const out = seconds.map(({ timeS, speedMps, cadenceRpm, powerW }, i) => {
    const slopeRatio = (gradients[i] ?? 0) / 100;
    distanceM += speedMps;
    while (slopes.length <= distanceM) slopes.push(slopeRatio);
    return {
      timeS,
      distanceM,
      speedMps,
      cadenceRpm: Number.isNaN(cadenceRpm) ? null : cadenceRpm,
      powerW: Number.isNaN(powerW) ? null : powerW,
      slopeRatio,
    };
  });
  return { seconds: out, slopes };
}

function realRides(what: string, inTime: boolean): void {
  console.log(what);
  const who = { bike: bikeById('road-2x11')!, rider: riderById('adult-strong')!, teethKnown: false };
  const all = [...openRides()].map(([name, recorded]) => {
    const heightsLateS = inTime ? gradientLagS(recorded) : null;
    const { seconds, slopes } = roadSeconds(inTime ? withGradientsInTime(recorded) : recorded);
    const figures = figuresOfRide(
      seconds,
      findPitches(slopes),
      { month: null, heightsLateS, cadenceHalved: false },
      who,
    );
    const told = figures.pitches.filter(({ firstEasierM }) => firstEasierM !== null);
    console.log(
      `${name}: gear readable on ${share(figures.readableShare)} % of the moving seconds, ${figures.changesPerKm?.toFixed(1)} changes a km, ${figures.pitches.length} pitches, ${told.length} with a first easier gear`,
    );
    return told;
  });
  const told = all.flat();
  const firsts = told.map(({ firstEasierM }) => firstEasierM ?? 0);
  const done = told.reduce((sum, { shareAtFoot }) => sum + (shareAtFoot ?? 0), 0) / told.length;
  console.log(
    `Together: first easier gear ${quantile(firsts, 0.5).toFixed(0)} m from the foot (middle half ${quantile(firsts, 0.25).toFixed(0)} to ${quantile(firsts, 0.75).toFixed(0)}), within ${quantile(
      told.map((p) => p.plusMinusM ?? 0),
      0.25,
    ).toFixed(0)} to ${quantile(
      told.map((p) => p.plusMinusM ?? 0),
      0.75,
    ).toFixed(0)} m; ${share(done)} % of the change done at the foot`,
  );
}

madeRides();
if (RIDES_HERE) {
  realRides('Open rides as recorded', false);
  realRides('Open rides, gradients moved to where the legs met them', true);
} else console.log(REASON);
