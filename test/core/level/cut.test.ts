/** A test ride from a place on: the same road as behind that place, and a level that can be ridden. */
import { describe, expect, it } from 'vitest';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { levelFrom } from '../../../src/core/level/cut.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import { levelOf, recordedLevel } from './benchLevels.ts';

const level = levelOf({
  pieces: [
    { kind: 'flat', lengthM: 200 },
    { kind: 'pitch', lengthM: 80, slopeRatio: 0.2 },
    { kind: 'rollers', lengthM: 400, waveM: 120, steepestRatio: 0.06 },
    { kind: 'descent', lengthM: 100, slopeRatio: 0.05 },
  ],
  stopLinesM: [100, 300, 500],
  winds: [{ fromM: 50, toM: 150, windMps: 4 }],
  surfaces: [{ fromM: 300, toM: 400, surface: 'gravel' }],
  cues: [
    { atM: 60, cue: 'hill-ahead' },
    { atM: 320, text: 'Now!' },
  ],
});

describe('a level from a place on', () => {
  it('is the level itself at its start', () => {
    expect(levelFrom(level, 0)).toBe(level);
    expect(levelFrom(level, -20)).toBe(level);
  });

  it('can be ridden from every place, also from behind its end', () => {
    for (const one of [level, recordedLevel()])
      for (let fromM = 0; fromM < 2_400; fromM += 37) {
        const made = parseLevel(levelFrom(one, fromM));
        expect(made.ok ? [] : made.problems).toEqual([]);
        if (made.ok) expect(courseOfLevel(made.level).lengthM).toBeGreaterThanOrEqual(100);
      }
  });

  it('has the heights of the road behind that place, to a few centimetres at the joins', () => {
    const whole = courseOfLevel(level);
    const part = courseOfLevel(levelFrom(level, 150));
    expect(part.lengthM).toBe(whole.lengthM - 150);
    for (let atM = 0; atM <= part.lengthM; atM += 1) {
      const rise = (whole.heightM[150 + atM] as number) - (whole.heightM[150] as number);
      expect(Math.abs((part.heightM[atM] as number) - rise)).toBeLessThan(0.35);
    }
  });

  it('brings along what lies there, moved, and leaves out what lies before', () => {
    const part = levelFrom(level, 120);
    expect(part.stopLinesM).toEqual([180, 380]);
    expect(part.winds).toEqual([{ fromM: 0, toM: 30, windMps: 4 }]);
    expect(part.surfaces).toEqual([{ fromM: 180, toM: 280, surface: 'gravel' }]);
    expect(part.cues).toEqual([{ atM: 200, text: 'Now!' }]);
  });
});
