/** The rider as drawn: who presses on a climb gets up from the saddle, over the pedals, and sits down again. */
import { describe, expect, it } from 'vitest';
import { BIKES } from '../../src/core/model/presets.ts';
import { bikeShapeFor, bodyFor } from '../../src/game/views/bikeShape.ts';
import { Poser } from '../../src/game/views/pose.ts';
import { frameWith } from '../audio/frames.ts';

describe.each(BIKES.map((bike) => [bike.id, bike] as const))('the rider of %s', (_id, bike) => {
  const body = bodyFor(bike.id.startsWith('kids'));
  const shape = bikeShapeFor(bike, body);
  const posed = (reduced: boolean) => {
    const poser = new Poser(shape, body, reduced);
    const go = (seconds: number, changes: Parameters<typeof frameWith>[0]): void => {
      for (let i = 0; i < seconds * 60; i += 1)
        poser.update(frameWith({ slopeRatio: 0.08, crankTurns: i / 45, ...changes }), -0.08, 1 / 60);
    };
    return { poser, go };
  };

  it('stands within a second and sits within another, with and without movement', () => {
    for (const reduced of [false, true]) {
      const { poser, go } = posed(reduced);
      go(2, { outOfSaddle: false });
      const seated = poser.pose.hip.y;
      expect(poser.pose.standing).toBeLessThan(0.01);
      go(1.5, { outOfSaddle: true, pressure: 'press', pressureRatio: 1.6 });
      expect(poser.pose.standing).toBeGreaterThan(0.85);
      // Up is a smaller y.
      expect(poser.pose.hip.y).toBeLessThan(seated - 0.03);
      go(2, { outOfSaddle: false });
      expect(poser.pose.standing).toBeLessThan(0.15);
    }
  });

  it('rocks the bike only where movement is welcome', () => {
    const rock = (reduced: boolean): number => {
      const { poser, go } = posed(reduced);
      go(1.5, { outOfSaddle: true, pressure: 'press', pressureRatio: 1.6 });
      let most = 0;
      for (let i = 0; i < 45; i += 1) {
        go(1 / 60, { outOfSaddle: true, pressure: 'press', pressureRatio: 1.6, crankTurns: i / 45 });
        most = Math.max(most, Math.abs(poser.pose.rockRad));
      }
      return most;
    };
    expect(rock(true)).toBe(0);
    expect(rock(false)).toBeGreaterThan(0.015);
  });

  it('ducks under a chain that hangs, and lets the shoulders drop when one has moved', () => {
    const shift = { derailleur: 'rear', direction: 'easier', hub: false } as const;
    const { poser, go } = posed(false);
    // At the same place of the crank, so that only the chain makes a difference.
    const at = (seconds: number, rate: number | null): { shoulderY: number; faceRad: number } => {
      go(seconds, { crankTurns: 0.25, shift: rate === null ? null : { ...shift, rate } });
      return { shoulderY: poser.pose.shoulder.y, faceRad: poser.pose.faceRad };
    };
    const before = at(2, null);
    const hanging = at(1, 0.2);
    expect(hanging.faceRad).toBeGreaterThan(before.faceRad + 0.15);
    const moving = at(2, 1);
    expect(moving.faceRad).toBeLessThan(before.faceRad + 0.08);
    const relieved = at(1 / 60, null);
    // A breath moves them by a centimetre.
    expect(relieved.shoulderY).toBeGreaterThan(before.shoulderY + 0.012);
    expect(Math.abs(at(3, null).shoulderY - before.shoulderY)).toBeLessThan(0.016);
  });
});
