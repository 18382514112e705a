/** How grass stands and bends: pure numbers of the moving verge. */
import { describe, expect, it } from 'vitest';
import { tuftPlaces } from '../../src/game/views/grass.ts';
import { bendRatio } from '../../src/game/views/wind.ts';
import { literalCourse } from '../core/ride/worlds.ts';

describe('bending grass', () => {
  it('leans to the left in a head wind and to the right in a tail wind, at every moment of a gust', () => {
    for (let timeS = 0; timeS < 20; timeS += 0.13) {
      expect(bendRatio(8, timeS, 3)).toBeLessThan(0);
      expect(bendRatio(-8, timeS, 3)).toBeGreaterThan(0);
    }
  });

  it('swings wider the harder it blows, and never lies flat', () => {
    const swing = (windMps: number): number => {
      const bends = Array.from({ length: 400 }, (_, i) => bendRatio(windMps, i * 0.05, 0));
      expect(Math.max(...bends.map(Math.abs))).toBeLessThan(0.9);
      return Math.max(...bends) - Math.min(...bends);
    };
    expect(swing(0)).toBeGreaterThan(0);
    expect(swing(4)).toBeGreaterThan(swing(0));
    expect(swing(9)).toBeGreaterThan(swing(4));
  });

  it('stands only where no ink of a pitch must be read, in order and the same for a seed', () => {
    const course = literalCourse(1000, (m) => (m > 400 && m < 600 ? 0.07 : 0));
    const places = tuftPlaces(course, 4);
    expect(places.length).toBeGreaterThan(60);
    expect(places.filter((m) => m > 402 && m < 598)).toEqual([]);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(tuftPlaces(course, 4)).toEqual(places);
    expect(tuftPlaces(course, 5)).not.toEqual(places);
  });
});
