/** Sine and cosine from additions and multiplications alone. */
import { describe, expect, it } from 'vitest';
import { cosDeg, sinDeg } from '../../../src/core/math/angles.ts';

describe('angles in degrees', () => {
  it('are within 1e-14 of the exact sine and cosine from −360° to 360°', () => {
    let worst = 0;
    for (let angleDeg = -360; angleDeg <= 360; angleDeg += 0.037) {
      const rad = (angleDeg * Math.PI) / 180;
      worst = Math.max(
        worst,
        Math.abs(sinDeg(angleDeg) - Math.sin(rad)),
        Math.abs(cosDeg(angleDeg) - Math.cos(rad)),
      );
    }
    expect(worst).toBeLessThan(1e-14);
  });

  it.each([
    [0, 0, 1],
    [30, 0.5, Math.sqrt(3) / 2],
    [90, 1, 0],
    [180, 0, -1],
    [-90, -1, 0],
    [270, -1, 0],
  ])('at %d° the sine is %d and the cosine %d', (angleDeg, sine, cosine) => {
    expect(sinDeg(angleDeg)).toBeCloseTo(sine, 15);
    expect(cosDeg(angleDeg)).toBeCloseTo(cosine, 15);
  });

  it('are exact at quarter turns, so that a pole is one place', () => {
    expect([cosDeg(90), cosDeg(-90), sinDeg(180), sinDeg(-180)].map(Math.abs)).toEqual([0, 0, 0, 0]);
  });
});
