/** Every bundled road has a land, light and air of its own; company is beside it. Others have theirs by the seed. */
import { describe, expect, it } from 'vitest';
import { bundledLevels } from '../../src/app/levels.ts';
import { sceneryOf } from '../../src/app/ride/scenery.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { checkLevel, freeLevel } from '../../src/core/level/generate.ts';

const levels = bundledLevels();

describe('the journey', () => {
  it('leads through six lands', () => {
    expect(new Set(levels.map((level) => sceneryOf(level, true).place)).size).toBe(6);
  });

  it('is nowhere the same twice', () => {
    const seen = levels.map((level) => {
      const { place, light, air } = sceneryOf(level, true);
      return `${place} ${light} ${air}`;
    });
    expect(seen.filter((one, i) => seen.indexOf(one) !== i)).toEqual([]);
  });

  it('names its land in every file', () => {
    expect(levels.filter(({ place, air }) => place === undefined || air === undefined)).toEqual([]);
  });

  it('has company on the road, and never behind its end', () => {
    for (const level of levels)
      for (const { atM } of level.company ?? []) expect(atM).toBeLessThan(courseOfLevel(level).lengthM);
  });

  it('draws the eye right before each pitch on the road that is about it', () => {
    const level = levels.find(({ id }) => id === 'look-who-is-there')!;
    for (const { footM } of courseOfLevel(level).pitches)
      expect((level.company ?? []).some(({ atM }) => atM > footM - 40 && atM < footM)).toBe(true);
  });
});

describe('roads without a land', () => {
  it('have one by their seed', () => {
    const places = [1, 2, 3, 4, 5, 6].map((seed) => {
      const level = freeLevel({ seed, hilliness: 0.5, lengthM: 1000 });
      return sceneryOf(level, true).place;
    });
    expect(new Set(places).size).toBeGreaterThan(3);
  });

  it('look alike where rides are compared', () => {
    const looks = [1, 2, 3, 4].map((seed) => {
      const { place, light, air, company } = sceneryOf(checkLevel(seed, 'everyone'), true);
      return JSON.stringify([place, light, air, company]);
    });
    expect(new Set(looks).size).toBe(1);
  });
});
