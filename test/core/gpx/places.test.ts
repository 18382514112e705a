/** Places and heights that no honest road has, and what is made of them: dropped, bridged, smoothed, or named. */
import { describe, expect, it } from 'vitest';
import { codeOf, gpxText, northward, roadOf, trackText } from './files.ts';

const climb = (x: number): number => 300 + 0.05 * x;

describe('places', () => {
  it('a road over the date line is as long as anywhere', () => {
    const points = Array.from({ length: 101 }, (_, i) => {
      const lon = 179.99 + i * 0.0002;
      return { lat: 0, lon: (lon > 180 ? lon - 360 : lon).toFixed(6), ele: 10 + i * 0.3 };
    });
    const { lengthM, questions, problems } = roadOf(gpxText(trackText(points)));
    expect(lengthM).toBeCloseTo(2_226.4, 0);
    expect([...questions, ...problems]).toEqual([]);
  });

  it('a road over the pole is straight', () => {
    const points = Array.from({ length: 101 }, (_, i) => {
      const lat = 89.995 + i * 0.0001;
      return { lat: (lat > 90 ? 180 - lat : lat).toFixed(6), lon: lat > 90 ? 180 : 0, ele: 10 };
    });
    const { lengthM, quality } = roadOf(gpxText(trackText(points)));
    expect(lengthM).toBeCloseTo(1_117, 0);
    expect(quality.reasons.map(({ code }) => code)).toContain('all-equal');
  });

  it('a track round the globe is refused, however many holes it has', () => {
    const points = Array.from({ length: 150_000 }, (_, i) => ({
      lat: i % 2 === 0 ? 60 : -60,
      lon: i % 300,
      ele: 1,
    }));
    expect(codeOf(gpxText(trackText(points.map((point) => ({ ...point, lon: point.lon - 150 })))))).toBe(
      'too-long',
    );
  });

  it('a place nobody can have been at is dropped, at the start, within and at the end', () => {
    for (const at of [0, 50, 100]) {
      const points = northward(101, 10, climb);
      points[at] = { lat: 0, lon: 0, ele: 0 };
      const road = roadOf(gpxText(trackText(points)));
      expect(road.problems.map(({ code }) => code)).toEqual(['impossible-points']);
      expect(Math.abs(road.lengthM - 1_000)).toBeLessThan(21);
    }
  });

  it('with times, what counts is whether anybody rides that fast', () => {
    const timed = (stepS: number): string => {
      const points = northward(101, 10, climb).map((point, i) => {
        const time = `2020-01-01T00:${String(Math.floor((i * stepS) / 60)).padStart(2, '0')}:${String((i * stepS) % 60).padStart(2, '0')}Z`;
        return i === 50 ? { ...point, lon: 10.002, time } : { ...point, time };
      });
      return gpxText(trackText(points));
    };
    expect(roadOf(timed(1)).problems.map(({ code }) => code)).toEqual(['impossible-points']);
    expect(roadOf(timed(10)).problems).toEqual([]);
  });

  it('a lasting jump of elevation, as from metres to feet, makes the quality poor, and no slope beyond 35 %', () => {
    const road = roadOf(gpxText(trackText(northward(601, 10, (x) => (x < 3_000 ? 300 : 984)))));
    expect(road.quality.grade).toBe('poor');
    expect(road.quality.reasons.map(({ code }) => code)).toContain('jumps');
    expect(road.steepestRatio).toBeLessThan(0.12);
  });

  it('elevations in whole metres or in feet still make a road, the coarser with a word about it', () => {
    const whole = roadOf(gpxText(trackText(northward(301, 10, (x) => Math.round(climb(x))))));
    expect(whole.quality.grade).toBe('fair');
    expect(whole.quality.reasons.map(({ code }) => code)).toContain('whole-metres');
    expect(whole.steepestRatio).toBeLessThan(0.062);
    const feet = roadOf(
      gpxText(trackText(northward(301, 10, (x) => Math.round(climb(x) / 0.3048) * 0.3048))),
    );
    expect(feet.quality.grade).toBe('good');
  });

  it('noise widens the fit and is named', () => {
    let seed = 7;
    const noise = (): number => {
      seed = (seed * 16_807) % 2_147_483_647;
      return (seed / 2_147_483_647 - 0.5) * 8;
    };
    const road = roadOf(gpxText(trackText(northward(401, 10, (x) => climb(x) + noise()))));
    expect(road.halfWidthM).toBe(100);
    expect(road.quality.reasons.map(({ code }) => code)).toContain('noisy');
  });
});
