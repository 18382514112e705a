/** What counts as a pitch, and where its foot is. */
import { describe, expect, it } from 'vitest';
import { buildCourse } from '../../../src/core/course/build.ts';
import { findPitches } from '../../../src/core/course/pitches.ts';
import type { Piece } from '../../../src/core/course/pieces.ts';

function pitchesOf(...pieces: Piece[]) {
  return buildCourse({ pieces, joinM: 10, seed: 1, stopLinesM: [], winds: [], surfaces: [], hidden: [] })
    .pitches;
}

const flat = (lengthM: number): Piece => ({ kind: 'flat', lengthM });
const climb = (lengthM: number, slopeRatio: number): Piece => ({ kind: 'climb', lengthM, slopeRatio });

describe('pitches', () => {
  it('a sharp rise is a pitch whose foot is the corner', () => {
    const [pitch, ...rest] = pitchesOf(flat(100), climb(60, 0.08), flat(100));
    expect(rest).toEqual([]);
    expect(Math.abs((pitch?.footM ?? 0) - 100)).toBeLessThanOrEqual(1);
    expect(Math.abs((pitch?.endM ?? 0) - 160)).toBeLessThanOrEqual(3);
    expect(pitch?.steepestRatio).toBeCloseTo(0.08, 9);
  });

  it.each([
    ['a rise of 2.5 points', [flat(100), climb(60, 0.025), flat(100)]],
    ['a rise from −3 % to 3 %, which is not steep', [climb(100, -0.03), climb(60, 0.03), flat(100)]],
    ['a climb from the start', [climb(200, 0.08)]],
  ] as [string, Piece[]][])('%s is none', (_what, pieces) => {
    expect(pitchesOf(...pieces)).toEqual([]);
  });

  it('a climb that gets steeper over 300 m is one from where it has become steep', () => {
    const steps = [climb(75, 0.01), climb(75, 0.02), climb(75, 0.03), climb(75, 0.04), climb(50, 0.05)];
    const [pitch, ...more] = pitchesOf(flat(100), ...steps);
    expect(more).toEqual([]);
    expect(pitch?.footM).toBeGreaterThan(280);
    expect(pitch?.footM).toBeLessThan(330);
    expect(pitch?.endM).toBeGreaterThan(440);
  });

  it('3 points to 3.5 % are just enough', () => {
    expect(pitchesOf(flat(100), climb(60, 0.035), flat(100))).toHaveLength(1);
  });

  it('a pitch within a climb counts, and begins where it gets steeper', () => {
    const [pitch] = pitchesOf(flat(100), climb(200, 0.02), climb(60, 0.09), climb(100, 0.02));
    expect(Math.abs((pitch?.footM ?? 0) - 300)).toBeLessThanOrEqual(1);
  });

  it('two pitches with flat between are two, each ending before the next begins', () => {
    const found = pitchesOf(flat(100), climb(60, 0.08), flat(60), climb(50, 0.1), flat(100));
    expect(found).toHaveLength(2);
    expect(found[0]?.endM).toBeLessThanOrEqual(found[1]?.footM ?? 0);
    expect(found.map((p) => p.steepestRatio.toFixed(3))).toEqual(['0.080', '0.100']);
  });

  it('a road too short for any is answered with none', () => {
    expect(findPitches([0])).toEqual([]);
    expect(findPitches([])).toEqual([]);
  });
});
