/** Facts about the two-bone geometry that moves the rider's limbs. */
import { describe, expect, it } from 'vitest';
import { BIKES } from '../../src/core/model/presets.ts';
import { bikeShapeFor, bodyFor } from '../../src/game/views/bikeShape.ts';
import { bendTwoBones, footAngle, pedalAt } from '../../src/game/views/legs.ts';

const distance = (a: { x: number; y: number }, b: { x: number; y: number }) =>
  Math.hypot(a.x - b.x, a.y - b.y);

describe('two bones', () => {
  it('keep their lengths wherever the foot is within reach', () => {
    const root = { x: 0, y: 0 };
    const joint = { x: 0, y: 0 };
    for (let turn = 0; turn < 6.28; turn += 0.21) {
      for (const reach of [0.1, 0.3, 0.6, 0.85]) {
        const end = { x: Math.cos(turn) * reach, y: Math.sin(turn) * reach };
        bendTwoBones(root, end, 0.44, 0.43, 1, joint);
        expect(distance(root, joint)).toBeCloseTo(0.44, 6);
        expect(distance(joint, end)).toBeCloseTo(0.43, 6);
      }
    }
  });

  it('bend the knee forwards and the elbow down', () => {
    const joint = { x: 0, y: 0 };
    bendTwoBones({ x: 0, y: 0 }, { x: 0, y: 0.7 }, 0.44, 0.43, 1, joint);
    expect(joint.x).toBeGreaterThan(0);
    bendTwoBones({ x: 0, y: 0 }, { x: 0.5, y: 0 }, 0.29, 0.28, -1, joint);
    expect(joint.y).toBeGreaterThan(0);
  });

  it('stretch out and say so when the end is too far', () => {
    const joint = { x: 0, y: 0 };
    const share = bendTwoBones({ x: 0, y: 0 }, { x: 2, y: 0 }, 0.5, 0.5, 1, joint);
    expect(share).toBeCloseTo(2, 6);
    expect(joint.x).toBeCloseTo(0.5, 2);
  });
});

describe('pedals', () => {
  it('start at the top, are in front after a quarter turn and come round again', () => {
    const pedal = { x: 0, y: 0 };
    pedalAt(0, 0.17, pedal);
    expect(pedal).toEqual({ x: 0, y: -0.17 });
    pedalAt(0.25, 0.17, pedal);
    expect(pedal.x).toBeCloseTo(0.17, 9);
    pedalAt(412.25, 0.17, pedal);
    expect(pedal.x).toBeCloseTo(0.17, 9);
  });

  it('are reached by both legs on every bike and at every place of the crank', () => {
    for (const bike of BIKES) {
      for (const child of [false, true]) {
        const body = bodyFor(child);
        const shape = bikeShapeFor(bike, body);
        const pedal = { x: 0, y: 0 };
        const knee = { x: 0, y: 0 };
        for (let turns = 0; turns < 1; turns += 0.02) {
          pedalAt(turns, shape.crank, pedal);
          const toe = footAngle(turns);
          const back = 0.112 * body.girth;
          const up = 0.088 * body.girth;
          const ankle = {
            x: pedal.x - back * Math.cos(toe) + up * Math.sin(toe),
            y: pedal.y - back * Math.sin(toe) - up * Math.cos(toe),
          };
          const share = bendTwoBones(shape.hip, ankle, body.thigh, body.shank, 1, knee);
          expect(share, `${bike.id} at ${turns}`).toBeLessThan(1);
          expect(distance(knee, ankle)).toBeCloseTo(body.shank, 6);
        }
      }
    }
  });
});

describe('a bike', () => {
  it('has the chainstay of its data, both axles on one height and the wheels apart', () => {
    for (const bike of BIKES) {
      const shape = bikeShapeFor(bike, bodyFor(false));
      expect(distance(shape.rear, { x: 0, y: 0 }) * 1000).toBeCloseTo(bike.chainstayMm, 6);
      expect(shape.front.y).toBe(shape.rear.y);
      expect(shape.wheelRadius * 2000).toBeCloseTo(bike.beadSeatMm + 2 * bike.tyreWidthMm, 6);
      expect(shape.front.x - shape.rear.x).toBeGreaterThan(shape.wheelRadius * 2);
      expect(shape.axleHeight - shape.rear.y).toBeCloseTo(shape.wheelRadius, 9);
      expect(shape.axleHeight).toBeGreaterThan(bike.crankLengthMm / 1000 + 0.04);
    }
  });
});
