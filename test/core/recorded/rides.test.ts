/**
 * What is read out of rides as a device writes them, against what the riders of the core really did: gears, places of
 * shifts, habits; and that nothing of where and when is in what is kept.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { levelOfPitch } from '../../../src/core/recorded/again.ts';
import { possibleDevelopments, readGears } from '../../../src/core/recorded/gears.ts';
import { byMonth, keptRide, meansOf, readKeptRide } from '../../../src/core/recorded/kept.ts';
import { figuresOf } from '../../../src/core/recorded/pitchFigures.ts';
import { type RoadRideResult, riderOf, roadRide, withBest } from '../../../src/core/recorded/rideFigures.ts';
import { type RecordedSample, recordedRide } from '../../../src/core/gpx/recorded.ts';
import { powerOfSamples, withSteadyPower } from '../../../src/core/recorded/steadyPower.ts';
import { buildCourse } from '../../../src/core/course/build.ts';
import { timesOfBoth } from '../../../src/core/coach/recorded.ts';
import { sampleAt } from '../../../src/core/math/numbers.ts';
import { policyDriver } from '../../../src/core/planner/driver.ts';
import { planRoad } from '../../../src/core/planner/plan.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { PLAIN } from '../ride/worlds.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { NAMED_HABITS } from '../../../src/core/virtual/riders.ts';
import { roadOf } from '../gpx/files.ts';
import { type MadeRide, madeRide, roadOfPitches } from './made.ts';

const WHO = [
  ['road-2x11', 'adult-weekly'],
  ['trekking-3x8', 'adult-new'],
  ['gravel-1x12', 'adult-strong'],
] as const;
const HABITS = ['late', 'early'] as const;
const PITCHES = 12;

interface Looked {
  readonly habit: (typeof HABITS)[number];
  readonly bikeId: string;
  readonly made: MadeRide;
  readonly result: Extract<RoadRideResult, { ok: true }>;
}

function who(bikeId: string, riderId: string, teethKnown = true) {
  return { bike: bikeById(bikeId)!, rider: riderById(riderId)!, teethKnown };
}

function look(made: MadeRide, bikeId: string, riderId: string): Extract<RoadRideResult, { ok: true }> {
  const result = roadRide(made.road, made.file.month, who(bikeId, riderId));
  if (!result.ok) throw new Error(result.why);
  return result;
}

let rides: readonly Looked[] = [];
beforeAll(() => {
  rides = WHO.flatMap(([bikeId, riderId], k) =>
    HABITS.map((habit) => {
      const made = madeRide(roadOfPitches(PITCHES, 31 + k), bikeId, riderId, NAMED_HABITS[habit], 7 + k);
      return { habit, bikeId, made, result: look(made, bikeId, riderId) };
    }),
  );
});

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;

describe('gears of rides that were made', () => {
  it.each([true, false])('are right in at least 95 of 100 claimed seconds (teeth known: %s)', (known) => {
    let right = 0;
    let claimed = 0;
    let moving = 0;
    for (const { bikeId, made, result } of rides) {
      const machine = known ? buildMachine(bikeById(bikeId)!, riderById('adult-new')!) : null;
      const gears = readGears(result.seconds, possibleDevelopments(machine));
      moving += result.seconds.length;
      for (const [i, m] of gears.developmentM.entries()) {
        const truth = made.samples[(result.seconds[i]?.timeS ?? 0) * 10];
        if (m === null || truth === undefined) continue;
        claimed += 1;
        // Nearer than half a step of a close cassette.
        if (Math.abs(m / truth.developmentM - 1) < 0.05) right += 1;
      }
    }
    expect(right / claimed).toBeGreaterThan(0.95);
    // And something is claimed at all.
    expect(claimed / moving).toBeGreaterThan(known ? 0.5 : 0.35);
  });

  it('are not claimed where the legs rest or cadence is lost', () => {
    for (const { result } of rides) {
      const gears = readGears(result.seconds, possibleDevelopments(null));
      for (const [i, { cadenceRpm }] of result.seconds.entries())
        if (cadenceRpm === null || cadenceRpm === 0) expect(gears.nearlyM[i]).toBeNull();
    }
  });
});

/** What was found and what is true, for every pitch of every ride that has both. */
function pairs(ride: Looked) {
  const { made, result } = ride;
  const stretch = made.road.lengthM / made.course.lengthM;
  const places = made.samples.map((s) => ({ ...s, cadenceRpm: s.pedalling ? s.cadenceRpm : 0 }));
  return made.course.pitches.flatMap((pitch) => {
    const found = result.figures.pitches.find((one) => Math.abs(one.footM - pitch.footM * stretch) < 25);
    return found === undefined ? [] : [{ found, truth: figuresOf(places, pitch) }];
  });
}

describe('pitches of rides that were made', () => {
  it('are found where they are, and no others', () => {
    for (const ride of rides) {
      expect(ride.result.figures.pitches.length).toBe(PITCHES);
      expect(pairs(ride).length).toBe(PITCHES);
    }
  });

  it('have their first easier gear within 15 m, in the median, and mostly within what is said', () => {
    const errors = rides.flatMap((ride) =>
      pairs(ride).flatMap(({ found, truth }) =>
        found.firstEasierM === null || truth.firstEasierM === null
          ? []
          : [{ off: Math.abs(found.firstEasierM - truth.firstEasierM), within: found.plusMinusM ?? 0 }],
      ),
    );
    expect(errors.length).toBeGreaterThan(0.8 * rides.length * PITCHES);
    expect(median(errors.map(({ off }) => off))).toBeLessThan(15);
    const kept = errors.filter(({ off, within }) => off <= 2 * within).length;
    expect(kept / errors.length).toBeGreaterThan(0.85);
  });

  it('have their slowest legs within 3 turns a minute', () => {
    const errors = rides.flatMap((ride) =>
      pairs(ride).flatMap(({ found, truth }) =>
        found.lowestRpm === null || truth.lowestRpm === null
          ? []
          : [Math.abs(found.lowestRpm - truth.lowestRpm)],
      ),
    );
    expect(median(errors)).toBeLessThan(3);
  });
});

describe('habits', () => {
  it('late and early are told apart by twenty pitches in at least 95 of 100 draws', () => {
    const random = seededRandom(5);
    for (const [bikeId] of WHO) {
      const firsts = (habit: string): number[] =>
        rides
          .filter((one) => one.bikeId === bikeId && one.habit === habit)
          .flatMap(({ result }) => result.figures.pitches.flatMap(({ firstEasierM }) => firstEasierM ?? []));
      const draw = (values: readonly number[]): number =>
        Array.from({ length: 20 }, () => values[Math.floor(random() * values.length)] as number).reduce(
          (a, b) => a + b,
        ) / 20;
      const [late, early] = [firsts('late'), firsts('early')];
      let right = 0;
      for (let i = 0; i < 200; i += 1) right += draw(late) > 0 && draw(early) < 0 ? 1 : 0;
      expect(right / 200).toBeGreaterThanOrEqual(0.95);
    }
  });

  it('the best ride of the rider’s own power shifts before the foot', () => {
    const { made, result } = rides.find(
      ({ habit, bikeId }) => habit === 'late' && bikeId === 'trekking-3x8',
    )!;
    const { bike, rider } = who('trekking-3x8', 'adult-new');
    const judged = result.figures.pitches
      .slice(0, 3)
      .map((pitch) => withBest(made.road, pitch, bike, riderOf(result.figures, rider)));
    for (const { best, firstEasierM } of judged) {
      expect(best?.firstEasierM).toBeLessThan(0);
      expect(firstEasierM).toBeGreaterThan(best?.firstEasierM ?? 0);
    }
  });

  it('power is told from the hills where legs are in their band', () => {
    const early = rides.filter(({ habit, result }) => habit === 'early' && result.figures.powerMeasured);
    expect(early.length).toBeGreaterThan(0);
    for (const { bikeId, result } of early) {
      const riderId = WHO.find(([id]) => id === bikeId)![1];
      expect(result.figures.steadyPowerW / riderById(riderId)!.steadyPowerW).toBeGreaterThan(0.85);
      expect(result.figures.steadyPowerW / riderById(riderId)!.steadyPowerW).toBeLessThan(1.15);
    }
  });
});

describe('power told from a stretch of a recorded ride', () => {
  it('is that of its rider, within what the whole ride tells', () => {
    for (const { bikeId, made } of rides.filter(({ habit }) => habit === 'early')) {
      const rider = riderById(WHO.find(([id]) => id === bikeId)![1])!;
      const samples = recordedRide(made.road, { fromM: 0, toM: made.road.lengthM });
      const { stepM, heightsM } = made.road.profile;
      const powerOf = (list: readonly RecordedSample[], id = bikeId) =>
        powerOfSamples(list, (atM) => heightsM[Math.round(atM / stepM)] ?? 0, { bike: bikeById(id)!, rider });
      const powerW = powerOf(samples ?? []);
      expect((powerW ?? 0) / rider.steadyPowerW).toBeGreaterThan(0.85);
      expect((powerW ?? 0) / rider.steadyPowerW).toBeLessThan(1.15);
      // With a motor, and where nobody climbed for a minute, nothing is told.
      expect(powerOf(samples ?? [], 'trekking-1x10-crank')).toBeNull();
      expect(powerOf((samples ?? []).slice(0, 15))).toBeNull();
    }
  });
});

describe('power told from a climb longer than the reserve lasts', () => {
  it('is that of its rider, and the plan with it takes as long as the ride did', () => {
    const { bike, rider } = who('road-2x11', 'adult-weekly');
    const course = buildCourse({
      ...PLAIN,
      pieces: [
        { kind: 'flat', lengthM: 100 },
        { kind: 'climb', lengthM: 1_800, slopeRatio: 0.075 },
      ],
    });
    const made = madeRide(course, bike.id, rider.id, NAMED_HABITS.early, 5);
    const samples = recordedRide(made.road, { fromM: 0, toM: made.road.lengthM }) ?? [];
    const powerW = powerOfSamples(samples, (atM) => sampleAt(course.heightM, atM), { bike, rider }) ?? 0;
    expect(powerW / rider.steadyPowerW).toBeGreaterThan(0.92);
    expect(powerW / rider.steadyPowerW).toBeLessThan(1.08);
    const world = buildRideWorld(course, bike, withSteadyPower(rider, powerW));
    const { trace } = rideThrough(world, policyDriver(world, planRoad(world)));
    const both = timesOfBoth(samples, trace.samples);
    expect((both?.referenceS ?? 0) / (both?.recordedS ?? 1)).toBeGreaterThan(0.95);
    expect((both?.referenceS ?? 0) / (both?.recordedS ?? 1)).toBeLessThan(1.05);
  });
});

describe('a ride with a motor', () => {
  const { bike, rider } = who('trekking-1x10-crank', 'adult-new');
  const made = madeRide(roadOfPitches(4, 31), bike.id, rider.id, NAMED_HABITS.early, 7);
  const read = (helpRatio: number) => {
    const ridden = { ...bike, motor: { ...bike.motor!, helpRatio } };
    const result = roadRide(made.road, null, { bike: ridden, rider, teethKnown: true });
    if (!result.ok) throw new Error(result.why);
    return result.figures;
  };

  it('is not told the power of the legs: the hills show what both gave', () => {
    const helped = read(1);
    expect([helped.powerMeasured, helped.steadyPowerW]).toEqual([false, rider.steadyPowerW]);
    // What would be said if the same file were taken for a ride with the motor off.
    const asIfAlone = read(0);
    expect(asIfAlone.powerMeasured).toBe(true);
    expect(asIfAlone.steadyPowerW).toBeGreaterThan(1.3 * rider.steadyPowerW);
  });

  it('is read gear by gear and pitch by pitch like any other', () => {
    const { readableShare, pitches } = read(1);
    expect(readableShare).toBeGreaterThan(0.4);
    expect(pitches).toHaveLength(4);
  });
});

describe('what is kept', () => {
  const kept = () => rides.map(({ result, bikeId }) => keptRide(result.figures, bikeById(bikeId)!, true));

  it('is whole numbers, the month and teeth: no place, no time of day, no trace, no name', () => {
    for (const [i, ride] of kept().entries()) {
      const text = JSON.stringify(ride);
      expect(ride.month).toBe('2026-05');
      expect(text).not.toMatch(
        /Sunday|lake|T09|09:30|2026-05-17|47\.0|8\.00|lat|lon|trace|samples|footM|endM/,
      );
      // A pitch is some ten numbers; a trace of the ride would be thousands.
      expect(text.length).toBeLessThan(400 + 330 * PITCHES);
      expect(rides[i]!.made.text).toContain('Sunday at the lake');
    }
  });

  it('comes back as it was, and anything else does not', () => {
    for (const ride of kept()) {
      expect(readKeptRide(JSON.parse(JSON.stringify(ride)))).toEqual(ride);
      expect(readKeptRide({ ...ride, lat: 47, trace: [1] })).toEqual(ride);
      expect(readKeptRide({ ...ride, month: '2026-05-17' })).toBeNull();
      expect(readKeptRide({ ...ride, pitches: [{ lengthM: 'x' }] })).toBeNull();
      expect(readKeptRide(null)).toBeNull();
    }
  });

  it('has the same id for the same ride, and another for another', () => {
    const ids = kept().map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(kept().map(({ id }) => id)).toEqual(ids);
  });

  it('becomes means over pitches, month by month, with what they rest on', () => {
    const [first, second] = kept() as [ReturnType<typeof keptRide>, ReturnType<typeof keptRide>];
    const months = byMonth([{ ...first, month: null }, { ...second, month: '2026-07' }, first]);
    expect(months.map(({ month }) => month)).toEqual(['2026-05', '2026-07', null]);
    const all = first.pitches.flatMap(({ firstEasierM }) => firstEasierM ?? []);
    const means = meansOf([first]);
    const mean = all.reduce((a, b) => a + b, 0) / all.length;
    const spread = Math.sqrt(all.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (all.length - 1));
    expect(means.firstEasierM?.mean).toBeCloseTo(mean, 9);
    expect(means.firstEasierM?.giveOrTake).toBeCloseTo((2 * spread) / Math.sqrt(all.length), 9);
    expect(means.pitches).toBe(PITCHES);
    expect(meansOf([])).toMatchObject({ rides: 0, pitches: 0, firstEasierM: null });
  });
});

describe('ride it again', () => {
  it('is a level of about 90 seconds at the speed of the ride, with the pitch in it and nothing of where it was', () => {
    const { made, result } = rides[3]!;
    const pitch = result.figures.pitches[2]!;
    const level = levelOfPitch(made.road, result.seconds, pitch, {
      id: 'pitch-1',
      title: 'Your pitch',
      sentence: 'A pitch.',
    });
    if (!level.ok) throw new Error(level.problems[0]?.code);
    const course = courseOfLevel(level.level);
    const speed = result.figures.lengthM / result.figures.movingS;
    expect(course.lengthM / speed).toBeGreaterThan(45);
    expect(course.lengthM / speed).toBeLessThan(150);
    const slope = Math.max(...course.pitches.map(({ steepestRatio }) => steepestRatio));
    expect(Math.abs(slope - pitch.slopeRatio)).toBeLessThan(0.03);
    expect(JSON.stringify(level.level)).not.toMatch(/Sunday|2026|lat|lon/);
  });
});

describe('files that tell nothing', () => {
  it.each([
    ['timeS', 'no-times'],
    ['cadenceRpm', 'no-cadence'],
  ] as const)('without %s say why: %s', (column, why) => {
    const { road } = rides[0]!.made;
    const recorded = { ...road.recorded, [column]: road.recorded[column].map(() => Number.NaN) };
    expect(roadRide({ ...road, recorded }, null, who('road-2x11', 'adult-new'))).toEqual({ ok: false, why });
  });

  it('with a point every few seconds say that these are too far apart, not that there are none', () => {
    const { text } = rides[0]!.made;
    const points = text.match(/<trkpt.*?<\/trkpt>/g) ?? [];
    for (const keeps of [
      (i: number) => i % 4 === 0,
      (i: number) => i % 30 === 0,
      (i: number) => i % 13 > 7,
    ]) {
      const sparse = text.replace(/<trkpt.*<\/trkpt>/, points.filter((_, i) => keeps(i)).join(''));
      expect(roadRide(roadOf(sparse), null, who('road-2x11', 'adult-new'))).toEqual({
        ok: false,
        why: 'too-sparse',
      });
    }
  });
});
