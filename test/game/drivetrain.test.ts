/** Facts about the drawn drivetrain: teeth, tangents, length of the chain, movement between sprockets. */
import { describe, expect, it } from 'vitest';
import { BIKES } from '../../src/core/model/presets.ts';
import { ChainRoute, joinByTangent, placeDuring, type Wheel } from '../../src/game/views/chainPath.ts';
import { acrossOf } from '../../src/game/views/chainTop.ts';
import { CHAIN_PITCH_MM, pitchRadiusMm, toothOutline } from '../../src/game/views/toothing.ts';

function radii(outline: Float64Array): number[] {
  return Array.from({ length: outline.length / 2 }, (_, i) =>
    Math.hypot(outline[i * 2] ?? 0, outline[i * 2 + 1] ?? 0),
  );
}

/** Stretches of the outline that stand outside the pitch circle. */
function countTeeth(outline: Float64Array, pitchRadius: number): number {
  const outside = radii(outline).map((radius) => radius > pitchRadius);
  return outside.filter((now, i) => now && !outside[(i + outside.length - 1) % outside.length]).length;
}

describe('a drawn sprocket', () => {
  it('has as many teeth as it says, from 9 to 53', () => {
    for (let teeth = 9; teeth <= 53; teeth++)
      expect(countTeeth(toothOutline(teeth), pitchRadiusMm(teeth))).toBe(teeth);
  });

  it('has its rollers one chain pitch apart', () => {
    for (const teeth of [11, 32, 50]) {
      const radius = pitchRadiusMm(teeth);
      expect(2 * radius * Math.sin(Math.PI / teeth)).toBeCloseTo(CHAIN_PITCH_MM, 9);
    }
  });

  it('has round crowns, not spikes: the top of a tooth is over 2 mm wide', () => {
    const outline = toothOutline(20);
    const all = radii(outline);
    const highest = Math.max(...all);
    const first = all.findIndex((radius) => radius > highest - 1e-6);
    const width = Math.hypot(
      (outline[first * 2] ?? 0) - (outline[first * 2 + 2] ?? 0),
      (outline[first * 2 + 1] ?? 0) - (outline[first * 2 + 3] ?? 0),
    );
    expect(width).toBeGreaterThan(2);
    expect(highest - pitchRadiusMm(20)).toBeLessThan(4);
  });
});

describe('a tangent', () => {
  const wheel = (x: number, y: number, radius: number, sense: 1 | -1): Wheel => ({
    x,
    y,
    radiusOn: radius,
    radiusOff: radius,
    sense,
    turnOn: 0,
    turnOff: 0,
  });

  it('touches both wheels at a right angle, open and crossed', () => {
    for (const sense of [1, -1] as const) {
      const from = wheel(0, 0, 60, 1);
      const to = wheel(300, 40, 20, sense);
      const run = joinByTangent(from, to);
      const start = {
        x: Math.cos(from.turnOff) * 60,
        y: Math.sin(from.turnOff) * 60,
      };
      const end = {
        x: to.x + Math.cos(to.turnOn) * 20,
        y: to.y + Math.sin(to.turnOn) * 20,
      };
      const dx = end.x - start.x;
      const dy = end.y - start.y;
      expect(Math.hypot(dx, dy)).toBeCloseTo(run, 9);
      expect(dx * Math.cos(from.turnOff) + dy * Math.sin(from.turnOff)).toBeCloseTo(0, 9);
      expect(dx * Math.cos(to.turnOn) + dy * Math.sin(to.turnOn)).toBeCloseTo(0, 9);
    }
  });

  it('of the upper run leaves the sprocket at its top', () => {
    const from = wheel(0, 0, 30, 1);
    const to = wheel(400, 0, 30, 1);
    joinByTangent(from, to);
    expect(from.turnOff).toBeCloseTo(-Math.PI / 2, 9);
  });
});

describe('the chain', () => {
  it('has whole pairs of links and keeps its length on the big ring of every bike with a cage, which takes up the slack', () => {
    for (const bike of BIKES) {
      // Behind a hub there is no cage: slack is taken up by where the wheel sits.
      if (bike.hub !== undefined) continue;
      const route = new ChainRoute(bike);
      const links = route.chainMm / CHAIN_PITCH_MM;
      expect(links).toBeCloseTo(Math.round(links), 6);
      expect(Math.round(links) % 2).toBe(0);
      const bigRing = bike.chainringsTeeth.length - 1;
      for (let sprocket = 0; sprocket < bike.sprocketsTeeth.length; sprocket++) {
        route.place(bigRing, bigRing, sprocket, sprocket);
        expect(Math.abs(route.lengthMm - route.chainMm), `${bike.id}, sprocket ${sprocket}`).toBeLessThan(
          0.5,
        );
      }
    }
  });

  it('hangs on a cage that swings back as the sprockets get smaller', () => {
    for (const bike of BIKES.filter((one) => one.sprocketsTeeth.length > 1)) {
      const route = new ChainRoute(bike);
      const ring = bike.chainringsTeeth.length - 1;
      let before = 0;
      for (let sprocket = bike.sprocketsTeeth.length - 1; sprocket >= 0; sprocket--) {
        route.place(ring, ring, sprocket, sprocket);
        expect(route.cageRad).toBeGreaterThan(before);
        before = route.cageRad;
      }
    }
  });

  it('is one closed line whose points lie on it at most 20 mm apart on the wheels', () => {
    const [bike] = BIKES;
    if (!bike) throw new Error('no bike');
    const route = new ChainRoute(bike);
    const last = route.count - 1;
    expect(route.xs[last]).toBe(route.xs[0]);
    expect(route.ys[last]).toBe(route.ys[0]);
    let length = 0;
    for (let i = 1; i <= last; i++) {
      length += Math.hypot(
        (route.xs[i] ?? 0) - (route.xs[i - 1] ?? 0),
        (route.ys[i] ?? 0) - (route.ys[i - 1] ?? 0),
      );
    }
    expect(length / route.lengthMm).toBeCloseTo(1, 2);
  });

  it('climbs on where it comes on first, and has arrived when the movement ends', () => {
    const half = placeDuring(4.5, true);
    expect(half).toEqual({ on: 5, off: 4 });
    expect(placeDuring(4.25, true)).toEqual({ on: 4.5, off: 4 });
    expect(placeDuring(4.5, false)).toEqual({ on: 4, off: 5 });
    expect(placeDuring(5, true)).toEqual({ on: 5, off: 5 });
  });

  it('lies on radii between those of two sprockets while it moves', () => {
    const [bike] = BIKES;
    if (!bike) throw new Error('no bike');
    const [first = 0, second = 0] = bike.sprocketsTeeth;
    const route = new ChainRoute(bike);
    route.place(0, 0, 1, 0.5);
    expect(route.sprocket.radiusOn).toBe(pitchRadiusMm(second));
    expect(route.sprocket.radiusOff).toBeCloseTo((pitchRadiusMm(first) + pitchRadiusMm(second)) / 2, 9);
    route.place(0, 0, 99, 99);
    expect(route.sprocket.radiusOn).toBe(pitchRadiusMm(bike.sprocketsTeeth.at(-1) ?? 0));
  });

  it('runs from above between the true places of ring and sprocket', () => {
    for (const bike of BIKES) {
      const across = acrossOf(bike);
      expect(across.rings).toHaveLength(bike.chainringsTeeth.length);
      expect(across.sprockets).toHaveLength(bike.sprocketsTeeth.length);
      const mean = across.sprockets.reduce((sum, place) => sum + place, 0) / across.sprockets.length;
      expect(mean).toBeCloseTo(bike.rearChainLineMm, 9);
      expect(across.sprockets[0] ?? 0).toBeGreaterThanOrEqual(across.sprockets.at(-1) ?? 0);
    }
  });
});
