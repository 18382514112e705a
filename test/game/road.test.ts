/** Facts about the drawn road: seamless tiles, recycled stretches, ink that follows the gradient. */
import { describe, expect, it } from 'vitest';
import type { Course } from '../../src/core/course/types.ts';
import { steepParts } from '../../src/game/hud/steepParts.ts';
import { VERTICAL_EXAGGERATION } from '../../src/game/engine/types.ts';
import { Camera, CHUNK_M, layoutFor, roadHeightM } from '../../src/game/views/layout.ts';
import { sampleAt } from '../../src/core/math/numbers.ts';
import { strokesBefore, strokesBetween } from '../../src/game/views/roadInk.ts';
import { postPlaces } from '../../src/game/views/posts.ts';
import {
  chunkAt,
  outlineAt,
  remainder,
  slotsNeeded,
  TILE_PX,
  wrapOffset,
} from '../../src/game/views/tiles.ts';

function road(slopes: readonly [lengthM: number, slopeRatio: number][]): Course {
  const slope: number[] = slopes.flatMap(([lengthM, slopeRatio]) => Array<number>(lengthM).fill(slopeRatio));
  const lengthM = slope.length;
  slope.push(slope.at(-1) ?? 0);
  const height = new Float64Array(lengthM + 1);
  for (let m = 1; m <= lengthM; m++) height[m] = (height[m - 1] ?? 0) + (slope[m - 1] ?? 0);
  const flat = () => new Float64Array(lengthM + 1);
  return {
    lengthM,
    heightM: height,
    slopeRatio: Float64Array.from(slope),
    windMps: flat(),
    rollingFactor: flat().fill(1),
    sightM: flat().fill(300),
    stopLinesM: [],
    pitches: [],
  };
}

describe('a hill tile', () => {
  const waves = [
    { turnsPerTile: 2, heightPx: 40, startTurns: 0.3 },
    { turnsPerTile: 7, heightPx: 9, startTurns: 0.81 },
  ];

  it('ends where it begins, in height and in slope', () => {
    for (const x of [0, 3, 411]) {
      expect(outlineAt(waves, x + TILE_PX)).toBeCloseTo(outlineAt(waves, x), 9);
    }
    const slopeAt = (x: number) => outlineAt(waves, x + 0.5) - outlineAt(waves, x - 0.5);
    expect(slopeAt(1792)).toBeCloseTo(slopeAt(0), 9);
  });

  it('starts left of the picture however far it was scrolled', () => {
    for (const scroll of [-5000.5, -1, 0, 1, 1791, 1792, 99999.25]) {
      const left = wrapOffset(scroll, 1792);
      expect(left).toBeLessThanOrEqual(0);
      expect(left).toBeGreaterThan(-1792);
      expect(Math.abs((left + scroll) % 1792)).toBeCloseTo(0, 6);
    }
  });
});

describe('stretches of road', () => {
  it('never share a slot while both can be seen', () => {
    for (const visibleM of [38, 61, 75.5, 120]) {
      const slots = slotsNeeded(visibleM);
      for (let left = -60; left < 400; left += 3.7) {
        const first = chunkAt(left);
        const last = chunkAt(left + visibleM);
        const used = new Set<number>();
        for (let chunk = first; chunk <= last + 0; chunk++) used.add(remainder(chunk, slots));
        expect(used.size).toBe(last - first + 1);
      }
    }
  });

  it('go back into the same slots in order, also before the start', () => {
    expect([-2, -1, 0, 1, 2, 3, 4].map((chunk) => remainder(chunk, 4))).toEqual([2, 3, 0, 1, 2, 3, 0]);
  });
});

describe('the picture', () => {
  it('shows 40 m ahead at 1280 pixels and at least 25 m on a phone', () => {
    const wide = layoutFor(1280, 720, 1);
    expect((wide.width - wide.riderX) / wide.pxPerM).toBeCloseTo(40, 0);
    const phone = layoutFor(390, 844, 2);
    expect((phone.width - phone.riderX) / phone.pxPerM).toBeGreaterThanOrEqual(25);
  });

  it('draws heights steeper than life by the factor it states', () => {
    const layout = layoutFor(1024, 768, 1);
    expect(layout.heightPxPerM / layout.pxPerM).toBeCloseTo(VERTICAL_EXAGGERATION, 9);
  });

  it('has stretches of whole pixels', () => {
    for (const width of [390, 412, 768, 1024, 1280, 1920]) {
      const px = layoutFor(width, 800, 1).pxPerM * CHUNK_M;
      expect(px).toBeCloseTo(Math.round(px), 9);
    }
  });

  it('keeps the rider in view on a long climb and a long descent', () => {
    for (const slope of [0.15, -0.12]) {
      const course = road([
        [60, 0],
        [300, slope],
      ]);
      const camera = new Camera(layoutFor(1280, 720, 1), course, false);
      for (let m = 0; m < 300; m += 0.1) camera.update(m, 6, 1 / 60);
      const y = camera.roadY(camera.riderX);
      expect(y).toBeGreaterThan(260);
      expect(y).toBeLessThan(640);
    }
  });
});

describe('roadside posts', () => {
  it('stand every 50 m, but not where a pitch sign or a stop board stands', () => {
    const plain = road([[260, 0]]);
    expect(postPlaces(plain)).toEqual([50, 100, 150, 200, 250]);
    const pitches = [{ footM: 102, endM: 140, steepestRatio: 0.08 }];
    expect(postPlaces({ ...plain, pitches, stopLinesM: [200] })).toEqual([50, 150, 250]);
  });
});

describe('ink under the road', () => {
  const course = road([
    [50, 0],
    [100, 0.05],
    [100, 0.1],
    [50, -0.06],
  ]);
  const sums = strokesBefore(course, 20);

  it('is absent on the flat and twice as dense on 10 % as on 5 %', () => {
    expect(strokesBetween(sums, 2, 48)).toHaveLength(0);
    const gentle = strokesBetween(sums, 60, 140).length;
    const steep = strokesBetween(sums, 160, 240).length;
    expect(gentle).toBeGreaterThan(50);
    expect(steep / gentle).toBeCloseTo(2, 1);
  });

  it('is the same whether drawn in one piece or in two', () => {
    const whole = strokesBetween(sums, 40, 260);
    const parts = [...strokesBetween(sums, 40, 168), ...strokesBetween(sums, 168, 260)];
    expect(parts).toEqual(whole);
  });

  it('is also drawn downhill', () => {
    expect(strokesBetween(sums, 255, 295).length).toBeGreaterThan(20);
  });
});

describe('the strip of road ahead', () => {
  it('numbers each steep part by its steepest place, up and down apart', () => {
    const parts = steepParts(
      road([
        [40, 0],
        [60, 0.08],
        [40, -0.05],
        [8, 0.04],
        [40, 0],
      ]),
    );
    expect(parts.map((part) => part.slopeRatio)).toEqual([0.08, -0.05]);
    expect(parts[0]?.fromM).toBe(40);
  });
});

describe('sampling', () => {
  it('is linear between metres and holds the ends', () => {
    const values = Float64Array.from([0, 2, 6]);
    expect(sampleAt(values, 0.5)).toBe(1);
    expect(sampleAt(values, 1.5)).toBe(4);
    expect(sampleAt(values, -3)).toBe(0);
    expect(sampleAt(values, 40)).toBe(6);
  });

  it('carries the road on past its ends without a step', () => {
    const course = road([
      [30, 0.05],
      [30, 0.02],
    ]);
    expect(roadHeightM(course, -0.001)).toBeCloseTo(roadHeightM(course, 0), 3);
    expect(roadHeightM(course, 60.001)).toBeCloseTo(roadHeightM(course, 60), 3);
  });
});
