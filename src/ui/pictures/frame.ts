/**
 * Where the parts of a drawn bike are, in millimetres from the bottom bracket (x forward, y down), worked out
 * from wheel and chainstay. Frames of a size class are ordinary ones; only wheels and gears are measured.
 */
import { PI } from '../../core/math/numbers.ts';
import type { Bike } from '../../core/model/types.ts';

export type Point = readonly [x: number, y: number];

/** Points of a side view (mm). */
export interface BikeFrame {
  readonly wheelRadiusMm: number;
  readonly rimRadiusMm: number;
  readonly rear: Point;
  readonly front: Point;
  readonly seatTop: Point;
  readonly saddle: Point;
  readonly headTop: Point;
  readonly headLow: Point;
  readonly grip: Point;
  readonly stem: Point;
  readonly dropBar: boolean;
  readonly groundY: number;
}

const CHAIN_PITCH_MM = 12.7;

/** Radius of a wheel with so many teeth on a half-inch chain (mm). */
export function toothedRadiusMm(teeth: number): number {
  return (CHAIN_PITCH_MM * teeth) / (2 * PI);
}

/** Frame points of a bike. */
export function frameOfBike(bike: Bike): BikeFrame {
  const wheelRadiusMm = bike.beadSeatMm / 2 + bike.tyreWidthMm;
  const size = bike.beadSeatMm / 622;
  const dropMm = 70 * size * size - 5;
  const dropBar = /^(road|gravel)/.test(bike.id);
  const backMm = Math.sqrt(bike.chainstayMm * bike.chainstayMm - dropMm * dropMm);
  const rear: Point = [-backMm, -dropMm];
  const front: Point = [(dropBar ? 590 : 630) * (0.35 + 0.65 * size), -dropMm];
  const along = (from: Point, length: number, lean: number): Point => [
    from[0] - length * lean,
    from[1] - length * Math.sqrt(1 - lean * lean),
  ];
  const seatTop = along([0, 0], (dropBar ? 510 : 490) * size * size + 20, 0.292);
  const saddle = along([0, 0], 700 * (0.28 + 0.72 * size), 0.292);
  const headLow = along([front[0] - 42 * size, front[1]], wheelRadiusMm + 48 * size, 0.309);
  const headTop = along(headLow, dropBar ? 150 : 150 * size + 10, 0.309);
  const stem: Point = dropBar
    ? [headTop[0] + 62, headTop[1] - 34]
    : [headTop[0] - 4, headTop[1] - 88 * size - 30];
  const grip: Point = dropBar ? [stem[0] + 78, stem[1] + 10] : [stem[0] - 52 * size, stem[1] - 6];
  return {
    wheelRadiusMm,
    rimRadiusMm: bike.beadSeatMm / 2 - 8,
    rear,
    front,
    seatTop,
    saddle,
    headTop,
    headLow,
    grip,
    stem,
    dropBar,
    groundY: wheelRadiusMm - dropMm,
  };
}
