/** When less of the picture is drawn, and when more again. */
import { describe, expect, it } from 'vitest';
import { QualityWatch } from '../../src/game/engine/quality.ts';

function show(watch: QualityWatch, frameS: number, forS: number): void {
  for (let t = 0; t < forS; t += frameS) watch.frame(frameS);
}

describe('the picture', () => {
  it('is drawn whole while frames are punctual', () => {
    const watch = new QualityWatch();
    show(watch, 1 / 60, 20);
    expect(watch.level).toBe(2);
  });

  it('loses one step after a while of late frames, and the next if that was not enough', () => {
    const watch = new QualityWatch();
    show(watch, 1 / 30, 2);
    expect(watch.level).toBe(1);
    show(watch, 1 / 30, 4);
    expect(watch.level).toBe(0);
  });

  it('is not changed by one hitch or by a pause', () => {
    const watch = new QualityWatch();
    for (let i = 0; i < 20; i += 1) {
      show(watch, 1 / 60, 1);
      watch.frame(0.12);
      watch.frame(30);
    }
    expect(watch.level).toBe(2);
  });

  it('comes back when there is room again, and more slowly each time it had to go', () => {
    const watch = new QualityWatch();
    show(watch, 1 / 30, 2);
    const first = secondsUntilBack(watch);
    show(watch, 1 / 30, 3);
    const second = secondsUntilBack(watch);
    expect(first).toBeLessThan(40);
    expect(second).toBeGreaterThan(first * 1.5);
  });
});

function secondsUntilBack(watch: QualityWatch): number {
  let passedS = 0;
  while (watch.level < 2 && passedS < 600) {
    watch.frame(1 / 60);
    passedS += 1 / 60;
  }
  return passedS;
}
