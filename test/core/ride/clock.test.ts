/** Real time becomes whole ticks: none is lost, none invented, and a long pause is dropped. */
import { describe, expect, it } from 'vitest';
import { FRESH_CLOCK, ticksDue } from '../../../src/core/ride/clock.ts';

/** Ticks of a run of frames at these times (ms). */
function run(timesMs: readonly number[], pace = 1): number[] {
  let clock = FRESH_CLOCK;
  return timesMs.map((ms) => {
    const due = ticksDue(clock, ms, pace);
    clock = due.clock;
    return due.ticks;
  });
}

const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

describe('ticks and frames', () => {
  it.each([30, 60, 90, 120, 144, 240])('ten seconds at %d Hz make 1200 ticks, give or take one', (hz) => {
    const frames = Array.from({ length: hz * 10 + 1 }, (_, i) => (i * 1000) / hz);
    expect(Math.abs(sum(run(frames)) - 1200)).toBeLessThanOrEqual(1);
  });

  it('a frame can hold no tick', () => {
    expect(run([0, 4, 8, 12])).toContain(0);
    expect(run([5000])).toEqual([0]);
  });

  it('a pause of 3 s is worth a quarter of a second', () => {
    const ticks = run([0, 3000])[1] ?? 0;
    expect(Math.abs(ticks - 0.25 * 120)).toBeLessThanOrEqual(1);
  });

  it('time that runs backwards gives nothing', () => {
    expect(run([1000, 400, 401])).toEqual([0, 0, 0]);
  });

  it('half pace makes half the ticks', () => {
    const frames = Array.from({ length: 601 }, (_, i) => (i * 1000) / 60);
    expect(Math.abs(sum(run(frames, 0.5)) - 600)).toBeLessThanOrEqual(1);
  });
});
