/** Path data of the charts: no peak is lost, no column is drawn twice, steps stay steps. */
import { describe, expect, it } from 'vitest';
import type { TraceSample } from '../../src/core/ride/trace.ts';
import { createFormat } from '../../src/words/format.ts';
import { moveByKey, nearestSample } from '../../src/charts/lookup.ts';
import { columnLine, stepLine } from '../../src/charts/paths.ts';
import { rowStepM } from '../../src/charts/stripTable.tsx';
import { roadTicks } from '../../src/charts/stripLayout.ts';

const samples = (values: readonly (readonly [distanceM: number, cadenceRpm: number])[]): TraceSample[] =>
  values.map(([distanceM, cadenceRpm]) => ({ distanceM, cadenceRpm }) as TraceSample);
const y = (sample: TraceSample): number => sample.cadenceRpm;

describe('a flowing curve', () => {
  it('keeps a peak of one sample among thousands in few points', () => {
    const many = samples(Array.from({ length: 10_000 }, (_, i) => [i / 10, i === 5003 ? 200 : 80]));
    const path = columnLine(many, (m) => m / 10, y);
    expect(path).toContain(' 200');
    expect(path.match(/[ML]/g)?.length).toBeLessThanOrEqual(4 * 100);
  });

  it('draws few samples where they are', () => {
    expect(
      columnLine(
        samples([
          [0, 5],
          [0.5, 6],
          [3, 7],
        ]),
        (m) => m,
        y,
      ),
    ).toBe('M0 5L0.5 6L3 7');
  });

  it('has a gap where there is nothing to show', () => {
    const path = columnLine(
      samples([
        [0, 5],
        [1, 0],
        [2, 7],
      ]),
      (m) => m,
      (s) => (s.cadenceRpm === 0 ? null : y(s)),
    );
    expect(path).toBe('M0 5M2 7');
  });
});

describe('a curve of steps', () => {
  it('is level, jumps, and runs to the end', () => {
    expect(
      stepLine(
        samples([
          [0, 5],
          [4, 5],
          [6, 2],
          [9, 2],
        ]),
        (m) => m,
        y,
      ),
    ).toBe('M0 5H6V2H9');
  });
});

describe('looking up places', () => {
  const list = samples([
    [0, 0],
    [1, 1],
    [1, 2],
    [1, 3],
    [2, 4],
  ]);
  it('finds the nearest sample', () => {
    expect([-3, 0.4, 0.6, 1.4, 1.6, 99].map((m) => nearestSample(list, m))).toEqual([0, 0, 1, 3, 4, 4]);
  });
  it('steps over samples at the same place', () => {
    expect(moveByKey(list, [], 1, 'ArrowRight')).toBe(4);
    expect(moveByKey(list, [], 3, 'ArrowLeft')).toBe(0);
    expect(moveByKey(list, [], 4, 'ArrowRight')).toBe(4);
  });
});

describe('long roads', () => {
  it('get tables and scales that can be read', () => {
    expect(20_000 / rowStepM(20_000, 1)).toBeLessThanOrEqual(80);
    expect(rowStepM(700, 1)).toBe(10);
    expect(roadTicks({ fromM: 0, toM: 20_000 }, 1000, 1).length).toBeLessThan(15);
    expect(roadTicks({ fromM: 430, toM: 640 }, 340, 1)).toEqual([500, 600]);
  });

  it('are divided at round numbers of the unit people read', () => {
    const { distance, unitM } = createFormat('imperial', 'en');
    expect(roadTicks({ fromM: 0, toM: 400 }, 340, unitM).map((m) => distance(m))).toEqual([
      '0 ft',
      '500 ft',
      '1,000 ft',
    ]);
    expect(rowStepM(700, unitM) / unitM).toBeCloseTo(50, 9);
  });
});
