/** A road as a relay: where riders change, and what the legs have of the whole. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { parseLevel, parseLevelText } from '../../../src/core/level/parse.ts';
import { mostRelayRiders, relayGates, relayLegs } from '../../../src/core/level/relay.ts';
import { levelOf } from './benchLevels.ts';

const folder = new URL('../../../levels/', import.meta.url);
const levels = readdirSync(folder)
  .filter((name) => name !== 'level.schema.json')
  .map((name) => parseLevelText(readFileSync(new URL(name, folder), 'utf8')))
  .flatMap((read) => (read.ok ? [read.level] : []));

describe('a relay', () => {
  it.each(levels.map((level) => [level.id, level] as const))(
    'on %s gives everybody a pitch, loses nothing of the road, and changes where it is gentle',
    (_, level) => {
      const course = courseOfLevel(level);
      for (let riders = 2; riders <= mostRelayRiders(course); riders += 1) {
        const legs = relayLegs(level, riders);
        const courses = legs.map((leg) => courseOfLevel(leg));
        expect(legs.map((leg) => parseLevel(leg).ok)).toEqual(legs.map(() => true));
        expect(courses.reduce((sum, { lengthM }) => sum + lengthM, 0)).toBe(course.lengthM);
        expect(Math.min(...courses.map(({ pitches }) => pitches.length))).toBeGreaterThan(0);
        expect(legs.flatMap(({ stopLinesM }) => stopLinesM)).toHaveLength(level.stopLinesM.length);
        const rise = courses.reduce((sum, { heightM, lengthM }) => sum + (heightM[lengthM] ?? 0), 0);
        expect(Math.abs(rise - (course.heightM[course.lengthM] ?? 0))).toBeLessThan(0.35 * riders);
        for (const gateM of relayGates(course, riders))
          expect(Math.abs(course.slopeRatio[gateM] ?? 1)).toBeLessThan(0.05);
      }
    },
  );

  it('is none where only one would have a pitch, or the road is short', () => {
    const hill = { kind: 'pitch', lengthM: 60, slopeRatio: 0.08 } as const;
    const flat = { kind: 'flat', lengthM: 200 } as const;
    const most = (pieces: readonly (typeof hill | typeof flat)[]): number =>
      mostRelayRiders(courseOfLevel(levelOf({ pieces: [...pieces] })));
    expect(most([flat, hill, flat])).toBe(1);
    expect(most([flat, hill, flat, hill, flat])).toBe(2);
    expect(most(Array.from({ length: 20 }, () => [flat, hill]).flat())).toBe(6);
    const alone = courseOfLevel(levelOf({ pieces: [flat, hill, flat] }));
    expect(() => relayGates(alone, 2)).toThrow('so many');
  });
});
