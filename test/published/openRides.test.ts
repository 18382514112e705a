/**
 * Road load, legs and shifts against rides people really rode (`rides.ts` says whose). They are read where they lie
 * beside the repository and are no part of it; without them these checks are skipped and say so.
 */
import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { bandLowRpm, slopeEffort } from '../../src/core/model/legs.ts';
import { buildMachine, gearAt, powerForSpeedW } from '../../src/core/model/machine.ts';
import { stepRide } from '../../src/core/ride/step.ts';
import type { RideState } from '../../src/core/ride/types.ts';
import { startRide } from '../../src/core/ride/run.ts';
import { startState } from '../../src/core/ride/world.ts';
import { NAMED_HABITS, virtualRider } from '../../src/core/virtual/riders.ts';
import { bike, EASIER, literalCourse, rider, worldOn } from '../core/ride/worlds.ts';
import {
  FOLDER,
  gradientLagS,
  mean,
  openEasierShifts,
  openPitches,
  openRides,
  quantile,
  REASON,
  RIDES_HERE as here,
  roadOfPitch,
  type Second,
  withGradientsInTime,
  withGradientsMoved,
} from './rides.ts';

const CADENCES = `${FOLDER}cadence_and_gear_by_gradient.csv`;
if (!here) process.stdout.write(`Skipped: ${REASON}\n`);

const BLOCK_S = 60;
/** At least this many of its seconds are pedalled; otherwise coasting is what would be measured. */
const PEDALLED_S = 48;
const CLASSES = [
  { from: -3, to: -1, publishedW: 165 },
  { from: -1, to: -0.3, publishedW: 190 },
  { from: -0.3, to: 0.3, publishedW: 194 },
  { from: 0.3, to: 1, publishedW: 204 },
  { from: 1, to: 3, publishedW: 236 },
  { from: 3, to: 5, publishedW: 278 },
  { from: 5, to: 12, publishedW: 309 },
] as const;

interface Block {
  readonly gradientPercent: number;
  readonly measuredW: number;
  readonly modelW: number;
}

/** Averages first, physics afterwards: single seconds with noisy gradients make climbs look too strong. */
function toBlock(seconds: readonly Second[]): Block {
  const first = seconds[0] as Second;
  const last = seconds.at(-1) as Second;
  const gradientPercent = mean(seconds.map((s) => s.gradientPercent));
  const efficiency = 0.976;
  const massKg = 85;
  const steadyW = powerForSpeedW(mean(seconds.map((s) => s.speedMps)), {
    slopeRatio: gradientPercent / 100,
    windMps: 0,
    massKg,
    cdaM2: 0.32,
    rollingCoefficient: 0.005,
    efficiency,
  });
  const gainedJ = (massKg * (last.speedMps ** 2 - first.speedMps ** 2)) / 2;
  const modelW = steadyW + gainedJ / (last.timeS - first.timeS) / efficiency;
  return { gradientPercent, measuredW: mean(seconds.map((s) => s.powerW)), modelW };
}

function blocks(): Block[] {
  const rides = openRides();
  const out: Block[] = [];
  for (const ride of [1, 2, 3, 4]) {
    const seconds = rides.get(`road_${ride}`) ?? [];
    for (let i = 0; i + BLOCK_S <= seconds.length; i += BLOCK_S) {
      const part = seconds.slice(i, i + BLOCK_S);
      const unbroken = (part.at(-1) as Second).timeS - (part[0] as Second).timeS === BLOCK_S - 1;
      const pedalled = part.filter((second) => second.cadenceRpm > 0).length;
      if (unbroken && pedalled >= PEDALLED_S) out.push(toBlock(part));
    }
  }
  return out;
}

describe('four open road rides, minutes of pedalling: 85 kg, CdA 0.32, Crr 0.005, efficiency 0.976', () => {
  beforeEach((context) => context.skip(!here, REASON));
  const minutes = here ? blocks() : [];

  it.each(CLASSES)(
    'from $from to $to % the model asks what was measured, within 8 %',
    ({ from, to, publishedW }) => {
      const inClass = minutes.filter((m) => m.gradientPercent >= from && m.gradientPercent < to);
      expect(inClass.length).toBeGreaterThan(25);
      const measuredW = inClass.reduce((sum, m) => sum + m.measuredW, 0) / inClass.length;
      const modelW = inClass.reduce((sum, m) => sum + m.modelW, 0) / inClass.length;
      // The published class means confirm that the same minutes were chosen; how many count as pedalled is not published.
      expect(Math.abs(measuredW / publishedW - 1)).toBeLessThan(0.04);
      expect(Math.abs(modelW / measuredW - 1)).toBeLessThan(0.08);
    },
  );
});

describe('when the recorded gradients come', () => {
  beforeEach((context) => context.skip(!here, REASON));

  it('four of the six rides have them 5 to 7 s after the legs met the hill', () => {
    const lagsS = [...openRides().values()].map(gradientLagS);
    expect(lagsS.filter((lagS) => lagS >= 5 && lagS <= 7).length).toBeGreaterThanOrEqual(4);
  });

  it('a ride whose heights come later is found so much later, and in time once they are moved back', () => {
    const hills = openRides().get('road_2') ?? [];
    const moved = withGradientsMoved(hills, 3);
    expect(gradientLagS(moved)).toBe(gradientLagS(hills) + 3);
    expect(gradientLagS(withGradientsInTime(moved))).toBe(0);
  });
});

describe('cadence on climbs in the open rides', () => {
  beforeEach((context) => context.skip(!here, REASON));

  /** Change of mean cadence per 1 % of gradient, weighted by the time spent. */
  function fallPerPercent(ride: string): number {
    const rows = readFileSync(CADENCES, 'utf8')
      .trim()
      .split('\n')
      .map((line) => line.split(','))
      .filter(([name]) => name === ride)
      .map((cells) => {
        const [low, high] = (cells[1] as string).split('..').map(Number) as [number, number];
        return { x: (low + high) / 2, y: Number(cells[5]), w: Number(cells[2]) };
      });
    const total = rows.reduce((sum, row) => sum + row.w, 0);
    const x0 = rows.reduce((sum, row) => sum + row.w * row.x, 0) / total;
    const y0 = rows.reduce((sum, row) => sum + row.w * row.y, 0) / total;
    const xy = rows.reduce((sum, row) => sum + row.w * (row.x - x0) * (row.y - y0), 0);
    return -xy / rows.reduce((sum, row) => sum + row.w * (row.x - x0) ** 2, 0);
  }

  // A flat ride and one gently rolling one, whose climbs hardly leave 3 %, fall outside and are left out.
  it.each(['ride_hills_27km', 'road_1', 'road_2', 'road_3', 'road_4'])(
    '%s falls by 1.3 to 1.8 rpm per 1 %, and so does our band',
    (ride) => {
      const fall = fallPerPercent(ride);
      expect(fall).toBeGreaterThan(1.3);
      expect(fall).toBeLessThan(1.8);
      const weekly = rider('adult-weekly');
      const ours = weekly.cadenceLowRpm - bandLowRpm(weekly, 0.01);
      expect(Math.abs(ours - fall)).toBeLessThan(0.25);
    },
  );
});

describe('legs on the pitches of six open rides (at least 4 %, each ridden without a stop)', () => {
  beforeEach((context) => context.skip(!here, REASON));
  const rides = here ? openRides() : new Map<string, readonly Second[]>();
  const pitches = [...rides].flatMap(([name, seconds]) => openPitches(name, seconds));

  it('riders give about 1.55 times the power of the flat, from some 78 rpm at the foot down to 72, a tenth below 60', () => {
    expect(pitches.length).toBeGreaterThan(140);
    expect(
      Math.abs(
        quantile(
          pitches.map((p) => p.powerRatio),
          0.5,
        ) - 1.55,
      ),
    ).toBeLessThan(0.1);
    expect(
      Math.abs(
        quantile(
          pitches.map((p) => p.footRpm),
          0.5,
        ) - 80,
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        quantile(
          pitches.map((p) => p.leastRpm),
          0.5,
        ) - 74,
      ),
    ).toBeLessThan(4);
    expect(
      quantile(
        pitches.map((p) => p.leastRpm),
        0.1,
      ),
    ).toBeLessThan(60);
  });

  it('steady legs push as much harder on such pitches: within 15 %, and never more than nine riders in ten', () => {
    const ours = pitches.map((p) => slopeEffort(meanSlope(rides.get(p.ride) ?? [], p.from, p.to)));
    const theirs = pitches.map((p) => p.powerRatio);
    expect(Math.abs(quantile(ours, 0.5) / quantile(theirs, 0.5) - 1)).toBeLessThan(0.15);
    expect(Math.abs(mean(ours) / mean(theirs) - 1)).toBeLessThan(0.15);
    expect(Math.max(...ours)).toBeLessThan(quantile(theirs, 0.9));
  });

  it.each([
    [1, 3],
    [3, 5],
    [5, 12],
  ])(
    'minute by minute from %d to %d % the effort of a slope lies within 15 % of what riders gave over the flat',
    (from, to) => {
      const minutes = here ? blocks() : [];
      const powerIn = (low: number, high: number): number =>
        mean(
          minutes.filter((m) => m.gradientPercent >= low && m.gradientPercent < high).map((m) => m.measuredW),
        );
      const inClass = minutes.filter((m) => m.gradientPercent >= from && m.gradientPercent < to);
      const ours = mean(inClass.map((m) => slopeEffort(m.gradientPercent / 100)));
      expect(Math.abs(ours / (powerIn(from, to) / powerIn(-0.3, 0.3)) - 1)).toBeLessThan(0.15);
    },
  );

  it.each([
    ['adult-weekly', 'all', 1],
    ['adult-strong', 'every fourth', 4],
  ] as const)(
    'the late rider as %s climbs %s of them without a foot down, at least cadences that riders reach',
    (riderId, _which, every) => {
      const least: number[] = [];
      const feet: string[] = [];
      for (const pitch of pitches.filter((_, i) => i % every === 0)) {
        const { course, footM } = roadOfPitch(rides.get(pitch.ride) ?? [], pitch, 30);
        const world = worldOn(course, 'road-2x11', riderId);
        const hands = virtualRider(world, NAMED_HABITS.late, 1);
        const live = startRide(world);
        const rpm: number[] = [];
        while (live.now.phase !== 'finished') {
          const { now } = live;
          if (now.tick % 120 === 0 && now.cadenceRpm > 0 && now.distanceM >= footM) rpm.push(now.cadenceRpm);
          for (const event of live.step(hands(now)))
            if (event.kind === 'foot-down') feet.push(`${pitch.ride} ${pitch.from}`);
        }
        least.push(Math.min(...rpm.slice(4).map((_, i) => mean(rpm.slice(i, i + 5)))));
      }
      expect(feet).toEqual([]);
      // The late rider's median may be as low as the slowest quarter of them, the slowest tenth not much below theirs.
      const theirs = pitches.map((p) => p.leastRpm);
      expect(quantile(least, 0.5)).toBeGreaterThan(quantile(theirs, 0.1) - 2);
      expect(quantile(least, 0.5)).toBeLessThan(quantile(theirs, 0.5));
      expect(quantile(least, 0.1)).toBeGreaterThan(quantile(theirs, 0.1) - 9);
    },
  );
});

/** Mean slope (rise over run) of some seconds, without the spikes. */
function meanSlope(seconds: readonly Second[], from: number, to: number): number {
  const part = seconds.slice(from, to);
  return Math.max(
    0,
    Math.min(
      0.2,
      quantile(
        part.map((s) => s.gradientPercent),
        0.5,
      ) / 100,
    ),
  );
}

describe('changing to an easier gear under load in six open rides', () => {
  beforeEach((context) => context.skip(!here, REASON));
  const shifts = here ? [...openRides().values()].flatMap((seconds) => openEasierShifts(seconds)) : [];
  const heavyS = shifts.filter((s) => s.load >= 1.9).map((s) => s.tookS);
  const otherS = shifts.filter((s) => s.load < 1.9).map((s) => s.tookS);

  it('takes riders about as long at 1.9 times the torque of the flat as at less: some 4 to 5 s between readings of a second', () => {
    expect(heavyS.length).toBeGreaterThanOrEqual(24);
    expect(Math.abs(quantile(otherS, 0.5) - 4)).toBeLessThanOrEqual(1);
    expect(quantile(heavyS, 0.5) - quantile(otherS, 0.5)).toBeLessThanOrEqual(1);
  });

  it.each(['child-9', 'adult-new', 'adult-weekly', 'adult-strong'])(
    'so does the chain of %s: no step takes 1.5 s longer at twice the torque of the flat than eased, from 55 to 85 rpm',
    (riderId) => {
      const who = rider(riderId);
      const world = worldOn(
        literalCourse(20_000, 0),
        riderId === 'child-9' ? 'kids-20-1x7' : 'road-2x11',
        riderId,
      );
      for (const rpm of [55, 65, 75, 85]) {
        const heavy = stepS(world, rpm, 2 * buildMachine(bike('road-2x11'), who).referenceTorqueNm);
        const light = stepS(world, rpm, 0.4 * buildMachine(bike('road-2x11'), who).referenceTorqueNm);
        expect(heavy).toBeGreaterThanOrEqual(light);
        expect([rpm, heavy - light < 1.5]).toEqual([rpm, true]);
        // Two readings blur what riders' plateaus show; so long may our own step take at most.
        expect(heavy).toBeLessThan(quantile(heavyS, 0.5) - 2);
      }
    },
  );

  /** Time of a step to the next bigger sprocket with cadence and torque held by hand (s). */
  function stepS(world: ReturnType<typeof worldOn>, rpm: number, torqueNm: number): number {
    const { developmentM } = gearAt(world.machine, 0, 4);
    const from = startState(world, { speedMps: (rpm * developmentM) / 60, ringIndex: 0, sprocketIndex: 4 });
    let state: RideState = { ...from, cadenceRpm: rpm, crankTorqueNm: torqueNm };
    for (let i = 0; i < 120 * 20; i += 1) {
      const { state: next, events } = stepRide(world, state, i === 0 ? [EASIER] : []);
      for (const event of events) if (event.kind === 'shift-done') return event.durationS;
      state = { ...next, speedMps: from.speedMps, cadenceRpm: rpm, crankTorqueNm: torqueNm };
    }
    throw new Error('never done');
  }
});
