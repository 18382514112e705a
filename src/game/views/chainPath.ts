/**
 * The way of the chain seen from the drive side: over sprocket and chainring, round both derailleur pulleys,
 * by tangents between oriented circles; the cage swings until the chain's own length fits. Pure geometry in
 * millimetres; origin is the rear axle, x forwards, y down.
 */
import { sampleAt } from '../../core/math/numbers.ts';
import type { Bike } from '../../core/model/types.ts';
import { remainder } from './tiles.ts';
import { CHAIN_PITCH_MM, pitchRadiusMm } from './toothing.ts';

export const PULLEY_TEETH = 11;
const MOST_POINTS = 260;
const ARC_STEP_RAD = 0.13;
/** The cage hangs between nearly forwards (chain stretched) and well backwards (slack), radians from forwards. */
const CAGE_FORWARD_RAD = 0.3;
const CAGE_BACK_RAD = 2.7;

/** A circle of the route; the chain may come on at one radius and leave at another during a shift. */
export type Wheel = ReturnType<typeof wheel>;

function wheel(sense: 1 | -1) {
  return {
    x: 0,
    y: 0,
    /** Radius (mm) where the chain comes on and where it leaves. */
    radiusOn: 1,
    radiusOff: 1,
    /** 1 turning clockwise on screen, -1 counter-clockwise. */
    sense,
    /** Angles (rad) of the first and last point of contact; written by the route. */
    turnOn: 0,
    turnOff: 0,
  };
}

/** Length of the straight run from `from` to `to`; writes both angles of contact. NaN if the circles nest. */
export function joinByTangent(from: Wheel, to: Wheel): number {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  const distance = Math.sqrt(square);
  const aside = from.sense * from.radiusOff - to.sense * to.radiusOn;
  const run = Math.sqrt(square - aside * aside);
  const nx = (dx / distance) * (aside / distance) + (dy / distance) * (run / distance);
  const ny = (dy / distance) * (aside / distance) - (dx / distance) * (run / distance);
  from.turnOff = Math.atan2(ny * from.sense, nx * from.sense);
  to.turnOn = Math.atan2(ny * to.sense, nx * to.sense);
  return run;
}

/** Angle the chain lies on a wheel, 0 to 2π, counted in the wheel's sense. */
function wrapAngle(on: Readonly<Wheel>): number {
  return remainder((on.turnOff - on.turnOn) * on.sense, Math.PI * 2);
}

/** Where in the cassette or on the rings the chain comes on and where it leaves, as fractional indices. */
interface ChainPlace {
  readonly on: number;
  readonly off: number;
}

/** The chain of one bike; behind a hub there is no cage, and it runs straight back. `place` moves it, then `xs`, `ys`, `count` hold its line and `lengthMm` its length. */
export class ChainRoute {
  readonly sprocket = wheel(1);
  readonly ring = wheel(1);
  readonly tension = wheel(1);
  readonly guide = wheel(-1);
  readonly xs = new Float64Array(MOST_POINTS);
  readonly ys = new Float64Array(MOST_POINTS);
  count = 0;
  lengthMm = 0;
  cageRad = 0;
  /** The chain's own length: whole pairs of links. */
  readonly chainMm: number;
  readonly cageMm: number;
  /** False behind a hub: nothing takes up slack there. */
  readonly hasCage: boolean;
  /** Pitch radii (mm), at fractional indices while the chain moves. */
  readonly #ringsMm: readonly number[];
  readonly #sprocketsMm: readonly number[];

  constructor(bike: Bike) {
    this.#ringsMm = bike.chainringsTeeth.map(pitchRadiusMm);
    this.#sprocketsMm = bike.sprocketsTeeth.map(pitchRadiusMm);
    this.hasCage = bike.hub === undefined;
    const rings = bike.chainringsTeeth;
    const sprockets = bike.sprocketsTeeth;
    const capacity = (rings.at(-1) ?? 0) - (rings[0] ?? 0) + (sprockets.at(-1) ?? 0) - (sprockets[0] ?? 0);
    this.cageMm = this.hasCage ? 46 + capacity * 1.05 : 0;
    this.ring.x = bike.chainstayMm;
    this.ring.y = bike.beadSeatMm > 500 ? 66 : 10;
    for (const pulley of [this.guide, this.tension]) {
      pulley.radiusOn = pitchRadiusMm(PULLEY_TEETH);
      pulley.radiusOff = pulley.radiusOn;
    }
    this.#setWheels(rings.length - 1, rings.length - 1, sprockets.length - 1, sprockets.length - 1);
    const stretched = this.#lengthAt(CAGE_FORWARD_RAD + 0.12);
    this.chainMm = Math.ceil(stretched / (2 * CHAIN_PITCH_MM)) * 2 * CHAIN_PITCH_MM;
    this.place(rings.length - 1, rings.length - 1, 0, 0);
  }

  /** Lays the chain on these (fractional) indices: coming on and leaving, ring then sprocket. */
  place(ringOn: number, ringOff: number, sprocketOn: number, sprocketOff: number): void {
    this.#setWheels(ringOn, ringOff, sprocketOn, sprocketOff);
    if (this.hasCage) {
      let forward = CAGE_FORWARD_RAD;
      let back = CAGE_BACK_RAD;
      for (let i = 0; i < 24; i++) {
        const middle = (forward + back) / 2;
        if (this.#lengthAt(middle) < this.chainMm) forward = middle;
        else back = middle;
      }
      this.cageRad = (forward + back) / 2;
    }
    this.lengthMm = this.#lengthAt(this.cageRad);
    this.#tracePoints();
  }

  #setWheels(ringOn: number, ringOff: number, sprocketOn: number, sprocketOff: number): void {
    this.ring.radiusOn = sampleAt(this.#ringsMm, ringOn);
    this.ring.radiusOff = sampleAt(this.#ringsMm, ringOff);
    this.sprocket.radiusOn = sampleAt(this.#sprocketsMm, sprocketOn);
    this.sprocket.radiusOff = sampleAt(this.#sprocketsMm, sprocketOff);
    this.guide.x = 10;
    this.guide.y = (this.sprocket.radiusOn + this.sprocket.radiusOff) / 2 + this.guide.radiusOn + 13;
  }

  #lengthAt(cageRad: number): number {
    if (!this.hasCage) {
      const runs = joinByTangent(this.sprocket, this.ring) + joinByTangent(this.ring, this.sprocket);
      return runs + arcMm(this.sprocket) + arcMm(this.ring);
    }
    this.tension.x = this.guide.x + Math.cos(cageRad) * this.cageMm;
    this.tension.y = this.guide.y + Math.sin(cageRad) * this.cageMm;
    const runs =
      joinByTangent(this.sprocket, this.ring) +
      joinByTangent(this.ring, this.tension) +
      joinByTangent(this.tension, this.guide) +
      joinByTangent(this.guide, this.sprocket);
    return runs + arcMm(this.sprocket) + arcMm(this.ring) + arcMm(this.tension) + arcMm(this.guide);
  }

  #tracePoints(): void {
    this.count = 0;
    this.#traceArc(this.sprocket);
    this.#traceArc(this.ring);
    if (this.hasCage) {
      this.#traceArc(this.tension);
      this.#traceArc(this.guide);
    }
    const x = this.xs[0] ?? 0;
    const y = this.ys[0] ?? 0;
    this.#put(x, y);
  }

  #traceArc(on: Wheel): void {
    const angle = wrapAngle(on);
    const steps = Math.max(2, Math.ceil(angle / ARC_STEP_RAD));
    for (let i = 0; i <= steps; i++) {
      const share = i / steps;
      const radius = on.radiusOn + (on.radiusOff - on.radiusOn) * share * share * (3 - 2 * share);
      const turn = on.turnOn + angle * share * on.sense;
      this.#put(on.x + Math.cos(turn) * radius, on.y + Math.sin(turn) * radius);
    }
  }

  #put(x: number, y: number): void {
    if (this.count >= MOST_POINTS) return;
    this.xs[this.count] = x;
    this.ys[this.count] = y;
    this.count++;
  }
}

function arcMm(on: Readonly<Wheel>): number {
  return (wrapAngle(on) * (on.radiusOn + on.radiusOff)) / 2;
}

/**
 * Splits a movement into where the chain comes on and where it leaves: the new wheel takes the chain first
 * where it comes on, and only in the second half of the movement where it leaves. `climbs` says whether the
 * index grows during the movement.
 */
export function placeDuring(chainAt: number, climbs: boolean): ChainPlace {
  const low = Math.floor(chainAt);
  const share = chainAt - low;
  if (share === 0) return { on: chainAt, off: chainAt };
  const done = climbs ? share : 1 - share;
  const first = Math.min(1, done * 2);
  const second = Math.max(0, done * 2 - 1);
  return climbs ? { on: low + first, off: low + second } : { on: low + 1 - first, off: low + 1 - second };
}
