/**
 * The awkward and the real GPX files of the collection: what is made of each is what the collection says. Its
 * lengths were worked out on a sphere; ours are on the ellipsoid, so both are looked at.
 */
import { describe, expect, it } from 'vitest';
import { hardestStretch } from '../../../src/core/gpx/hardest.ts';
import { levelFromRoad } from '../../../src/core/gpx/level.ts';
import { readGpx } from '../../../src/core/gpx/file.ts';
import { recordedRide } from '../../../src/core/gpx/recorded.ts';
import {
  AWKWARD,
  codeOf,
  collected,
  collectionIsHere,
  EXPECTED,
  imported,
  openDecoder,
  roadOf,
} from './files.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const awkward = (name: string): Uint8Array => collected(`nasty/${name}`);

/** Codes of the refusals; every file that is not here must become a road. */
const REFUSED: Readonly<Record<string, string>> = {
  '01_no_elevation.gpx': 'no-elevation',
  '05_waypoints_only.gpx': 'only-waypoints',
  '06_empty_track.gpx': 'no-points',
  '07_zero_bytes.gpx': 'empty',
  '08_single_point.gpx': 'no-length',
  '14_html_page.gpx': 'not-gpx',
  '15_xxe_local_file.gpx': 'doctype',
  '17_entity_expansion_1e9.gpx': 'doctype',
  '18_external_dtd.gpx': 'doctype',
  '37_all_same_place.gpx': 'no-length',
  '38_80_metres.gpx': 'too-short',
  '41_geojson_named.gpx': 'not-xml',
  '44_deep_nesting_5000.gpx': 'too-deep',
};

/** Length of the line through all points on a sphere, as the collection counts. */
function sphereLengthM(bytes: Uint8Array): number {
  const read = readGpx(bytes, openDecoder);
  if (!read.ok) return Number.NaN;
  const points = read.file.tracks.flatMap(({ segments }) =>
    segments.flatMap(({ latDeg, lonDeg }) => latDeg.map((lat, i) => [lat, lonDeg[i] as number] as const)),
  );
  const rad = Math.PI / 180;
  return points.slice(1).reduce((sum, [lat, lon], i) => {
    const [lat0, lon0] = points[i] as readonly [number, number];
    const h =
      Math.sin(((lat - lat0) * rad) / 2) ** 2 +
      Math.cos(lat * rad) * Math.cos(lat0 * rad) * Math.sin(((lon - lon0) * rad) / 2) ** 2;
    return sum + 2 * 6_371_008.8 * Math.asin(Math.sqrt(h));
  }, 0);
}

describe.skipIf(!collectionIsHere)('the awkward files', () => {
  it('are all there, and each has an expectation', () => {
    expect(AWKWARD.toSorted()).toEqual(Object.keys(EXPECTED).toSorted());
    expect(AWKWARD).toHaveLength(33);
  });

  it.each(AWKWARD)('%s is accepted or refused as it should be, with a sentence', (name) => {
    const made = imported(awkward(name));
    expect(codeOf(awkward(name))).toBe(REFUSED[name] ?? 'a road');
    const wanted = EXPECTED[name]?.do ?? '';
    if (/^reject(?!.*\bor\b)/.test(wanted)) expect(made.ok).toBe(false);
    if (/^(accept|gunzip)(?!.*\bor reject\b)/.test(wanted)) expect(made.ok).toBe(true);
    if (!made.ok)
      for (const problem of made.problems) expect(sentenceOf(problem)).toMatch(/^[A-Z].{10,}[.]$/);
  });

  it.each(AWKWARD.filter((name) => !(name in REFUSED)))(
    '%s has the points, length and ascent that are expected',
    (name) => {
      const road = roadOf(awkward(name));
      const wanted = EXPECTED[name] ?? { do: '' };
      if (wanted.points !== undefined) expect(road.points).toBe(wanted.points);
      if (wanted.ascent_m !== undefined) {
        expect(road.ascentM).toBeGreaterThan(wanted.ascent_m * 0.96);
        expect(road.ascentM).toBeLessThan(wanted.ascent_m * 1.01);
      }
      if (wanted.grade_pct !== undefined) expect(road.steepestRatio * 100).toBeCloseTo(wanted.grade_pct, 1);
      if (wanted.length_m !== undefined) {
        const toleranceM = wanted.tolerance_m ?? wanted.length_m * 0.002;
        const sphereM = sphereLengthM(awkward(name));
        expect(Math.abs(sphereM - wanted.length_m)).toBeLessThan(toleranceM);
        expect(Math.abs(road.lengthM / sphereM - 1)).toBeLessThan(0.003);
      }
      expect(levelFromRoad(road, { ...hardestStretch(road), title: 'A road', sentence: 'Ride.' }).ok).toBe(
        true,
      );
    },
  );

  it('says which elevations were missing, and how many were lone spikes', () => {
    const partial = roadOf(awkward('02_partial_elevation.gpx'));
    expect(partial.problems).toMatchObject([{ code: 'unwritten-elevations', values: { pointCount: 150 } }]);
    expect(partial.quality.grade).toBe('good');
    expect(partial.steepestRatio).toBeCloseTo(0.1246, 3);
    const spiky = roadOf(awkward('10_elevation_spikes.gpx'));
    expect(spiky.problems).toMatchObject([{ code: 'elevation-spikes', values: { pointCount: 3 } }]);
    expect(spiky.steepestRatio).toBeCloseTo(0.1248, 3);
  });

  it('takes a decimal comma for a decimal point: the road is the same', () => {
    expect(roadOf(awkward('25_decimal_comma.gpx')).profile).toEqual(
      roadOf(awkward('00_good_sine_5km.gpx')).profile,
    );
  });

  it('makes the same road whatever surrounds the points: marks, encodings, namespaces, comments, names', () => {
    const plain = roadOf(awkward('00_good_sine_5km.gpx')).profile;
    const others = AWKWARD.filter((name) => /^(20|21|24|29|30|32|43|48)_/.test(name));
    expect(others).toHaveLength(8);
    for (const name of others) expect(roadOf(awkward(name)).profile).toEqual(plain);
  });

  it('of a file that stops in the middle it takes what is there, and says where it stops', () => {
    const road = roadOf(awkward('12_truncated.gpx'));
    expect(road.problems.map(({ code }) => code)).toEqual(['salvaged']);
    const whole = roadOf(awkward('00_good_sine_5km.gpx'));
    expect(road.lengthM).toBeLessThan(whole.lengthM);
    road.profile.rawHeightsM.forEach((heightM, i) =>
      expect(heightM).toBeCloseTo(whole.profile.rawHeightsM[i] ?? 0, 2),
    );
  });

  it('says that times run backwards and then compares nothing with them', () => {
    const road = roadOf(awkward('32_time_backwards.gpx'));
    expect(road.problems.map(({ code }) => code)).toEqual(['time-backwards']);
    expect(recordedRide(road, { fromM: 0, toM: 1_000 })).toBeNull();
  });

  it('asks about two tracks, joins them meanwhile, and takes one if told to', () => {
    const road = roadOf(awkward('35_two_tracks.gpx'));
    expect(road.questions).toMatchObject([
      { code: 'several-tracks', taken: 'join', options: ['join', '1', '2'] },
    ]);
    const [first, second] = [1, 2].map((tracks) => roadOf(awkward('35_two_tracks.gpx'), { tracks }));
    expect(first?.questions).toEqual([]);
    expect((first?.lengthM ?? 0) + (second?.lengthM ?? 0)).toBeCloseTo(road.lengthM, 3);
  });

  it('keeps 35 % in the record, and limits the level to 20 % and says so', () => {
    const road = roadOf(awkward('47_steep_35pct.gpx'));
    expect(road.steepestRatio).toBeGreaterThan(0.345);
    expect(road.problems).toMatchObject([{ code: 'capped', values: { cappedM: 290, limitRatio: 0.2 } }]);
    const made = levelFromRoad(road, { fromM: 0, toM: 5_000, title: 'Wall', sentence: 'Up.' });
    expect(made.ok).toBe(true);
  });

  it('warns that points a kilometre apart know nothing of hills', () => {
    const { quality, questions } = roadOf(awkward('39_sparse_1km.gpx'));
    expect(quality.grade).toBe('poor');
    expect(quality.reasons.map(({ code }) => code)).toContain('sparse');
    expect(questions).toEqual([]);
  });
});

describe.skipIf(!collectionIsHere)('the real rides', () => {
  it.each([
    ['hills_climb_27km.gpx', 'good', 26_666, 0],
    ['rolling_road_40km.gpx', 'good', 40_054, 0],
    ['undulating_24km.gpx', 'fair', 23_874, 0],
    ['offroad_noisy_33km.gpx', 'fair', 32_880, 0],
    ['steep_short_5km.gpx', 'fair', 4_965, 0],
    ['multitrack_52km.gpx', 'poor', 52_101, 1],
    ['gap_segments_27km.gpx', 'poor', 26_731, 1],
  ])('%s is of %s quality and %d m long, with %d question', (name, grade, lengthM, questionCount) => {
    const road = roadOf(collected(name));
    expect(road.quality.grade).toBe(grade);
    // The independent lengths have the scatter of rests in them.
    const rested = road.problems.some(({ code }) => code === 'stops');
    expect(road.lengthM / lengthM).toBeLessThan(1.001);
    expect(road.lengthM / lengthM).toBeGreaterThan(rested ? 0.97 : 0.999);
    expect(road.questions).toHaveLength(questionCount);
    expect(road.quality.reasons.length > 0).toBe(grade !== 'good');
  });

  it('hills_climb_27km.gpx climbs 747 m within 8 m', () => {
    const road = roadOf(collected('hills_climb_27km.gpx'));
    expect(road.halfWidthM).toBe(30);
    expect(Math.abs(road.ascentM - 747)).toBeLessThanOrEqual(8);
  });

  it('a hole of 12.7 km is asked about, and the longest part can be taken instead', () => {
    const file = collected('gap_segments_27km.gpx');
    expect(roadOf(file).questions).toMatchObject([
      { code: 'holes', values: { holeCount: 2, longestM: 12_715 } },
    ]);
    const part = roadOf(file, { holes: 'longest-part' });
    expect(part.lengthM).toBeLessThan(13_800);
    expect(part.questions).toEqual([]);
    expect(part.holes).toEqual([]);
  });

  it('what was ridden can be compared: speed and cadence of the stretch, and nothing if it has no times', () => {
    const road = roadOf(collected('hills_climb_27km.gpx'));
    const ride = recordedRide(road, { fromM: 3_000, toM: 5_000 }) ?? [];
    expect(ride).toHaveLength(201);
    const last = ride.at(-1);
    expect(last?.distanceM).toBe(2_000);
    const mean = 2_000 / (last?.timeS ?? 0);
    expect(mean).toBeGreaterThan(2);
    expect(mean).toBeLessThan(10);
    const cadences = ride.flatMap(({ cadenceRpm }) =>
      cadenceRpm === null || cadenceRpm === 0 ? [] : [cadenceRpm],
    );
    expect(cadences.length).toBeGreaterThan(150);
    expect(Math.min(...cadences)).toBeGreaterThan(20);
    expect(
      recordedRide(roadOf(collected('nasty/10_elevation_spikes.gpx')), { fromM: 0, toM: 1_000 }),
    ).toBeNull();
  });
});
