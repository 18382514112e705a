/**
 * Distances between places on the WGS-84 ellipsoid, by the straight line through the ground and a correction
 * for the curve. That has no weak spot at the poles or at the date line. How places make a road is not known here.
 */
import { cosDeg, sinDeg } from '../math/angles.ts';

const EQUATOR_RADIUS_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING);
const MEAN_RADIUS_M = 6_371_008.8;

/** A place as metres from the middle of the earth along three axes. */
export interface GlobePoint {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
}

/** The place of a latitude and longitude (degrees) on the ellipsoid. */
export function globePoint(latDeg: number, lonDeg: number): GlobePoint {
  const sinLat = sinDeg(latDeg);
  const cosLat = cosDeg(latDeg);
  const normalM = EQUATOR_RADIUS_M / Math.sqrt(1 - ECCENTRICITY_SQUARED * sinLat * sinLat);
  return {
    xM: normalM * cosLat * cosDeg(lonDeg),
    yM: normalM * cosLat * sinDeg(lonDeg),
    zM: normalM * (1 - ECCENTRICITY_SQUARED) * sinLat,
  };
}

/**
 * Distance over the ground (m). The arc over a chord c of a circle is c (1 + q/6 + 3q²/40 + …), q = (c/2R)²; with
 * the mean radius that is off by less than 1e-7 for steps below 20 km and by less than 0.3 % across a continent.
 */
export function distanceM(a: GlobePoint, b: GlobePoint): number {
  const x = a.xM - b.xM;
  const y = a.yM - b.yM;
  const z = a.zM - b.zM;
  const chordM = Math.sqrt(x * x + y * y + z * z);
  const half = chordM / (2 * MEAN_RADIUS_M);
  const q = half * half;
  return chordM * (1 + q * (1 / 6 + q * (3 / 40 + q * (5 / 112 + q * (35 / 1152)))));
}
