/**
 * From points to a road to a level, against independent programs: geodesics on the ellipsoid, and smoothing by
 * fitted lines. And that a level carries nothing personal.
 */
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { readGpx } from '../../../src/core/gpx/file.ts';
import { distanceM, globePoint } from '../../../src/core/gpx/globe.ts';
import { bridgeImpossible, medianOfFive, resample } from '../../../src/core/gpx/grid.ts';
import { hardestStretch } from '../../../src/core/gpx/hardest.ts';
import { levelFromRoad } from '../../../src/core/gpx/level.ts';
import { recordedRide } from '../../../src/core/gpx/recorded.ts';
import { ascentM, fittedSlopes } from '../../../src/core/gpx/smooth.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import {
  collected,
  collectionIsHere,
  gpxText,
  northward,
  openDecoder,
  plainClimb,
  roadOf,
  trackText,
} from './files.ts';
import { SavitzkyGolay } from './smoothing.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const exactM = (a: readonly [number, number], b: readonly [number, number]): number =>
  geodesic.Geodesic.WGS84.Inverse(a[0], a[1], b[0], b[1]).s12 ?? Number.NaN;

function cut(source: Parameters<typeof roadOf>[0], fromM: number, toM: number): Level {
  const made = levelFromRoad(roadOf(source), { fromM, toM, title: 'My road', sentence: 'Up and down.' });
  if (!made.ok) throw new Error(made.problems.map(sentenceOf).join(' '));
  return made.level;
}

/** A road with waves of three lengths and a little noise. */
const wavy = gpxText(
  trackText(
    northward(601, 10, (x) => 300 + 14 * Math.sin(x / 160) + 5 * Math.sin(x / 47) + 0.4 * Math.sin(x / 3.1)),
  ),
);

describe('distances', () => {
  it('of steps below 20 km are within 0.01 % of the geodesic, from pole to pole and over the date line', () => {
    const random = seededRandom(11);
    let worst = 0;
    for (let i = 0; i < 4_000; i += 1) {
      const lat = -90 + 180 * random();
      const lon = -180 + 360 * random();
      const reach = 0.0001 + 0.12 * random();
      const to = [
        Math.max(-90, Math.min(90, lat + reach * (random() - 0.5) * 2)),
        lon + reach * (random() - 0.5),
      ] as const;
      const wantedM = exactM([lat, lon], to);
      if (wantedM < 0.5 || wantedM > 20_000) continue;
      worst = Math.max(worst, Math.abs(distanceM(globePoint(lat, lon), globePoint(...to)) / wantedM - 1));
    }
    expect(worst).toBeLessThan(1e-4);
    expect(worst).toBeGreaterThan(0);
  });

  it
    .skipIf(!collectionIsHere)
    .each([
      'hills_climb_27km.gpx',
      'undulating_24km.gpx',
      'offroad_noisy_33km.gpx',
      'steep_short_5km.gpx',
      'rolling_road_40km.gpx',
      'multitrack_52km.gpx',
      'gap_segments_27km.gpx',
      'nasty/00_good_sine_5km.gpx',
      'nasty/27_lat_lon_swapped.gpx',
      'nasty/36_huge_60000_points.gpx.gz',
    ])(
    'the whole of %s is within 0.1 % of the sum of geodesics, and shorter only by what is scatter of rests',
    (name) => {
      const bytes = collected(name);
      const read = readGpx(bytes, openDecoder);
      const points = read.ok
        ? read.file.tracks.flatMap(({ segments }) =>
            segments.flatMap((s) => s.latDeg.map((lat, i) => [lat, s.lonDeg[i] ?? 0] as const)),
          )
        : [];
      const wantedM = points.slice(1).reduce((sum, point, i) => sum + exactM(points[i] ?? [0, 0], point), 0);
      const road = roadOf(bytes);
      const rested = road.problems.some(({ code }) => code === 'stops');
      expect(road.lengthM / wantedM).toBeLessThan(1.001);
      expect(road.lengthM / wantedM).toBeGreaterThan(rested ? 0.97 : 0.999);
    },
  );
});

describe('slopes', () => {
  it.each([30, 50, 80, 100] as const)(
    'fitted over ±%d m equal a first-order Savitzky–Golay derivative',
    (halfM) => {
      const heights = resample(
        Array.from({ length: 301 }, (_, i) => i * 10),
        Array.from({ length: 301 }, (_, i) => 300 + 9 * Math.sin(i / 7) + 2 * Math.sin(i / 2.3)),
      );
      const half = halfM / 10;
      const wanted = SavitzkyGolay([...heights], 10, {
        windowSize: 2 * half + 1,
        derivative: 1,
        polynomial: 1,
      });
      const ours = [...fittedSlopes(heights, halfM)].slice(half, -half);
      expect(ours).toHaveLength(wanted.length);
      ours.forEach((slope, i) => expect(slope).toBeCloseTo(wanted[i] as number, 12));
    },
  );

  it('of a level are those of the imported road, but for the short curve every course puts at its joins', () => {
    const road = roadOf(wavy);
    const course = courseOfLevel(cut(wavy, 1_000, 4_000));
    const { slopesRatio } = road.profile;
    for (let k = 1; k < 300; k += 1) {
      const [a, b, c] = [slopesRatio[99 + k], slopesRatio[100 + k], slopesRatio[101 + k]] as [
        number,
        number,
        number,
      ];
      // Half a metre-step of 10 m on both sides: a quarter of each neighbour.
      expect(Math.abs((course.slopeRatio[k * 10] as number) - (a + 2 * b + c) / 4)).toBeLessThan(1.5e-4);
      expect(Math.abs((course.slopeRatio[k * 10] as number) - b)).toBeLessThan(0.004);
    }
  });

  it('of a level never pass 20 %, even where the record does, and heights go on from there', () => {
    const cliff = gpxText(
      trackText(
        northward(201, 10, (x) => 300 + (x > 800 && x < 1_100 ? (x - 800) * 0.3 : x >= 1_100 ? 90 : 0)),
      ),
    );
    const [piece] = cut(cliff, 0, 2_000).pieces;
    const heights = piece?.kind === 'recorded' ? piece.heightsM : [];
    const rises = heights.slice(1).map((height, i) => height - (heights[i] as number));
    expect(Math.max(...rises)).toBeCloseTo(2, 9);
    expect(heights.at(-1)).toBeGreaterThan(60);
    expect(heights.at(-1)).toBeLessThan(75);
  });
});

describe('cleaning', () => {
  it('joins known heights by straight lines every 10 m, level beyond both ends', () => {
    const samples = resample([0, 15, 25, 40], [Number.NaN, 100, 110, Number.NaN]);
    expect([...samples]).toEqual([100, 100, 105, 110, 110]);
  });

  it('cuts lone samples off by a median of five', () => {
    const samples = Float64Array.of(0, 1, 90, 95, 4, 5, 6);
    expect([...medianOfFive(samples)]).toEqual([0, 1, 4, 5, 6, 5, 6]);
  });

  it('bridges a spike of any width straight, and a lasting jump at 35 %', () => {
    const spike = bridgeImpossible(Float64Array.of(0, 0, 50, 50, 50, 0, 0));
    expect([...spike.samples]).toEqual([0, 0, 0, 0, 0, 0, 0]);
    expect(spike.bridgedCount).toBe(3);
    const jump = bridgeImpossible(Float64Array.from({ length: 21 }, (_, i) => (i < 10 ? 0 : 10)));
    const steps = [...jump.samples].slice(1).map((height, i) => height - (jump.samples[i] as number));
    expect(Math.max(...steps)).toBeLessThanOrEqual(3.52);
    expect(jump.samples.at(-1)).toBe(10);
    const first = bridgeImpossible(Float64Array.of(800, 300, 300, 300));
    expect([...first.samples]).toEqual([300, 300, 300, 300]);
  });

  it('counts ascent between turning points of 3 m', () => {
    expect(ascentM([0, 10])).toBe(10);
    expect(ascentM([0, 2, 0, 2, 0, 2])).toBe(0);
    expect(ascentM([0, 10, 8, 12])).toBe(12);
    expect(ascentM([0, 10, 6, 12])).toBe(16);
    expect(ascentM([10, 8, 20, 0])).toBe(12);
    expect(ascentM([10, 0])).toBe(0);
  });
});

describe('a level from a road', () => {
  it('is the stretch that was asked for, relative to its start', () => {
    const { pieces } = cut(plainClimb, 200, 700);
    expect(pieces).toHaveLength(1);
    const [piece] = pieces;
    if (piece?.kind !== 'recorded') throw new Error('a recorded piece is expected');
    expect([piece.stepM, piece.heightsM.length, piece.heightsM[0]]).toEqual([10, 51, 0]);
    expect(piece.heightsM.at(-1)).toBeCloseTo(25, 1);
  });

  it('says what is wrong with a stretch that is none, or too short', () => {
    const road = roadOf(plainClimb);
    const wish = { title: 'T', sentence: 'S' };
    expect(levelFromRoad(road, { ...wish, fromM: 500, toM: 500 })).toMatchObject({
      problems: [{ code: 'backwards' }],
    });
    expect(levelFromRoad(road, { ...wish, fromM: Number.NaN, toM: 900 })).toMatchObject({ ok: false });
    expect(levelFromRoad(road, { ...wish, fromM: 500, toM: 560 })).toMatchObject({
      problems: [{ code: 'too-short' }],
    });
    expect(levelFromRoad(road, { ...wish, title: '', fromM: 0, toM: 900 })).toMatchObject({
      problems: [{ path: 'title' }],
    });
  });

  it('of a fall of more than 500 m keeps its slopes', () => {
    const fall = gpxText(trackText(northward(1_001, 10, (x) => 2_000 - 0.1 * x)));
    const course = courseOfLevel(cut(fall, 0, 9_900));
    expect(course.slopeRatio[5_000]).toBeCloseTo(-0.1, 3);
  });

  it('proposes the two kilometres that climb hardest, and no hole', () => {
    const heights = (x: number): number => (x < 3_000 ? 300 : x < 4_000 ? 300 + (x - 3_000) * 0.1 : 400);
    const road = roadOf(gpxText(trackText(northward(801, 10, heights))));
    const found = hardestStretch(road);
    expect(found.toM - found.fromM).toBe(2_000);
    expect(found.fromM).toBeLessThanOrEqual(2_960);
    expect(found.toM).toBeGreaterThanOrEqual(4_040);
    expect(hardestStretch(roadOf(plainClimb), 5_000)).toEqual({ fromM: 0, toM: 1_000 });
    const holed = northward(801, 10, (x) => 300 + 0.05 * x + (x > 5_000 ? 400 : 0)).filter(
      (__, i) => i < 480 || i > 520,
    );
    const around = hardestStretch(roadOf(gpxText(trackText(holed))));
    expect(around.toM <= 4_800 || around.fromM >= 5_200).toBe(true);
  });

  it('holds no place, no time and no name of the file', () => {
    const points = northward(201, 10, (x) => 300 + 20 * Math.sin(x / 160)).map((point, i) => ({
      ...point,
      time: `2031-07-09T11:${String(Math.floor(i / 60)).padStart(2, '0')}:${String(i % 60).padStart(2, '0')}Z`,
      inside: '<name>Lindenweg</name><extensions><x:hr xmlns:x="urn:x">147</x:hr><cad>83</cad></extensions>',
    }));
    const text = gpxText(
      `<metadata><author><name>Friederike</name></author></metadata>${trackText(points).replace('<trk>', '<trk><name>Heimweg</name>')}`,
    );
    const saved = JSON.stringify(cut(text, 0, 2_000));
    const personal = [
      'Lindenweg',
      'Friederike',
      'Heimweg',
      '2031-',
      'T11:',
      'lat',
      'lon',
      'time',
      'cad"',
      'hr',
      'creator',
    ];
    for (const value of personal) expect(saved).not.toContain(value);
    for (const { lat } of points) expect(saved).not.toContain(String(lat));
    expect(Object.keys(cut(text, 0, 2_000).pieces[0] ?? {}).toSorted()).toEqual([
      'heightsM',
      'kind',
      'stepM',
    ]);
    const { recorded, ...rest } = roadOf(text);
    expect(JSON.stringify(rest)).not.toMatch(/Lindenweg|Friederike|Heimweg|2031-|T11:/);
    expect(recorded.timeS[0]).toBe(0);
  });

  it('leaves speed and cadence to the comparison: 10 m a second at 83 and 84 rpm', () => {
    const points = northward(101, 10, () => 300).map((point, i) => ({
      ...point,
      time: `2031-07-09T11:${String(Math.floor(i / 60)).padStart(2, '0')}:${String(i % 60).padStart(2, '0')}Z`,
      inside: `<extensions><cad>${83 + (i % 2)}</cad></extensions>`,
    }));
    const ride = recordedRide(roadOf(gpxText(trackText(points))), { fromM: 200, toM: 500 }) ?? [];
    expect(ride).toHaveLength(31);
    for (const { speedMps, cadenceRpm } of ride) {
      expect(speedMps).toBeCloseTo(10, 1);
      expect([83, 84]).toContain(cadenceRpm);
    }
    expect(ride.at(-1)?.timeS).toBeCloseTo(30, 0);
  });
});
