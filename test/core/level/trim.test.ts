/** A recorded road without the stretch that cannot be ridden: which part is left, and what goes with it. */
import { describe, expect, it } from 'vitest';
import { lintLevel } from '../../../src/core/level/lint.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import { OWN_LEVEL } from '../../../src/core/level/own.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { trimmed } from '../../../src/core/level/cut.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

/** Gentle ground for 600 m, a wall of 20 % for 100 m, gentle ground for 300 m; heights every 10 m. */
const slopes = [
  ...Array<number>(60).fill(0.01),
  ...Array<number>(10).fill(0.2),
  ...Array<number>(30).fill(0.01),
];
const heightsM = slopes.reduce<number[]>(
  (list, slope) => [...list, Math.round((list.at(-1)! + slope * 10) * 1000) / 1000],
  [0],
);
const parsed = parseLevel({
  schema: 1,
  id: 'wall',
  title: 'A wall',
  sentence: 'A wall.',
  ...OWN_LEVEL,
  pieces: [{ kind: 'recorded', stepM: 10, heightsM }],
  stopLinesM: [300, 900],
  winds: [{ fromM: 500, toM: 800, windMps: 3 }],
});
if (!parsed.ok) throw new Error(parsed.problems[0]?.code);
const level: Level = parsed.level;
const child = buildMachine(bikeById('kids-20-1x7')!, riderById('child-9')!);

describe('a stretch that cannot be ridden', () => {
  const wall = lintLevel(level, child).find(({ code }) => code === 'cannot-climb');

  it('is told from its beginning to its end, with what it would take', () => {
    expect(Math.abs(wall!.fromM - 600)).toBeLessThan(30);
    expect(Math.abs(wall!.toM - 700)).toBeLessThan(30);
    // 40.5 kg up 20 % at 0.9 m/s: m g sin + a little for rolling, over 96 %.
    const byHand = (40.5 * 9.80665 * (0.2 / Math.sqrt(1.04) + 0.007) * 0.9) / 0.96;
    expect(wall!.values['neededPowerW']! / byHand).toBeGreaterThan(0.97);
    expect(wall!.values['neededPowerW']! / byHand).toBeLessThan(1.05);
    expect(sentenceOf(wall!)).toMatch(
      /has to walk from \d+ m to \d+ m \(up to 20 %\).* No gear helps; riding it would take more than 75 W\./,
    );
  });

  it('is none for who can ride it', () => {
    const strong = buildMachine(bikeById('gravel-1x12')!, riderById('adult-strong')!);
    expect(lintLevel(level, strong).map(({ code }) => code)).not.toContain('cannot-climb');
  });

  it('can be trimmed off: the longer part is left, with all that lies on it', () => {
    const cut = trimmed(level, wall!.fromM, wall!.toM)!;
    const piece = cut.pieces[0]!;
    expect(piece.kind === 'recorded' && piece.heightsM).toEqual(
      heightsM.slice(0, Math.floor(wall!.fromM / 10) + 1),
    );
    expect(cut.stopLinesM).toEqual([300]);
    expect(cut.winds).toEqual([{ fromM: 500, toM: 10 * Math.floor(wall!.fromM / 10), windMps: 3 }]);
    expect(parseLevel(cut).ok).toBe(true);
    expect(lintLevel(cut, child).map(({ code }) => code)).not.toContain('cannot-climb');
  });

  it('in the first half leaves the part behind it, from its own start', () => {
    const cut = trimmed(level, 100, 150)!;
    const piece = cut.pieces[0]!;
    expect(piece.kind === 'recorded' && [piece.heightsM[0], piece.heightsM.length]).toEqual([0, 86]);
    expect(cut.stopLinesM).toEqual([150, 750]);
    expect(cut.winds).toEqual([{ fromM: 350, toM: 650, windMps: 3 }]);
  });

  it('is not cut where too little would be left, or the road is built of pieces', () => {
    expect(trimmed(level, 20, 980)).toBeNull();
    expect(trimmed({ ...level, pieces: [{ kind: 'flat', lengthM: 900 }] }, 300, 400)).toBeNull();
  });
});
