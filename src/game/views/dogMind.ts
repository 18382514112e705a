/**
 * What the dog of the children's levels does: it runs beside a rider whose rhythm is good, and otherwise runs
 * ahead, sits down and waits for them. It never scolds. Pure numbers; drawing is `dog.ts`.
 */
import type { RideFrame } from '../../core/ride/types.ts';

/** What of a frame the dog notices. */
type DogSees = Pick<
  RideFrame,
  'distanceM' | 'speedMps' | 'cadenceRpm' | 'bandLowRpm' | 'bandHighRpm' | 'phase' | 'pressure'
>;

/** Where the dog keeps to (m of road ahead of the rider). */
interface DogPlaces {
  readonly besideM: number;
  readonly waitingM: number;
}

/** So long the rhythm may be away before the dog minds, and must be back before it comes (s). */
const LOST_S = 1.6;
const BACK_S = 0.7;
/** A cadence this little outside the band is still a good rhythm (rpm). */
const KIND_RPM = 4;
/** The dog is never slower than this when it wants to get somewhere, and gains this much on the rider (m/s). */
const TROT_MPS = 4;
const GAIN_MPS = 6;
const JUMPS_PER_S = 1.9;

/** The dog of one ride, changed in place. */
export class DogMind {
  /** Its place on the road (m) and pace along it (m/s). */
  distanceM: number;
  paceMps = 0;
  /** 0 on its legs, 1 sitting. */
  sitting = 0;
  /** Strides since the start, in whole and part strides. */
  strides = 0;
  /** Jumps for joy since the finish, in whole and part jumps. */
  jumps = 0;
  readonly #places: DogPlaces;
  #rhythmS = 0;
  #happy = true;
  #waits = false;

  constructor(places: DogPlaces) {
    this.#places = places;
    this.distanceM = places.besideM;
  }

  /** True while it runs beside the rider or comes back to them. */
  get happy(): boolean {
    return this.#happy;
  }

  update(sees: DogSees, elapsedS: number): void {
    this.#feel(sees, elapsedS);
    const aheadM = this.distanceM - sees.distanceM;
    // Once sat down, it stays until the rider has come up to it.
    if (this.#happy || aheadM < this.#places.besideM) this.#waits = false;
    const goalM = this.#goalM(sees);
    const leftM = sees.distanceM + goalM - this.distanceM;
    if (!this.#happy && leftM < 0.3) this.#waits = true;
    this.paceMps = this.#waits ? 0 : this.#pace(sees, leftM);
    this.distanceM += this.paceMps * elapsedS;
    // Far behind or ahead after a jump of the ride: begin anew beside the rider.
    if (aheadM < -30 || aheadM > 80) this.distanceM = sees.distanceM + this.#places.besideM;
    this.strides += this.paceMps * elapsedS * 0.42;
    const isOver = sees.phase === 'finished';
    if (isOver) this.jumps += elapsedS * JUMPS_PER_S;
    const sits = !isOver && (this.#waits || (this.paceMps < 0.4 && sees.speedMps < 0.4));
    this.sitting += ((sits ? 1 : 0) - this.sitting) * (1 - 1 / (1 + elapsedS * 7));
  }

  #goalM(sees: DogSees): number {
    if (sees.phase === 'finished' || this.#happy) return this.#places.besideM;
    return this.#places.waitingM;
  }

  /** Ahead of its place it lets the rider come; behind it, it hurries. */
  #pace(sees: DogSees, leftM: number): number {
    const wanted = sees.speedMps + leftM * 1.4;
    const most = Math.max(TROT_MPS, sees.speedMps + GAIN_MPS);
    return Math.max(0, Math.min(most, wanted));
  }

  /** Rolling without pedalling is no bad rhythm; neither is standing at a line. */
  #feel(sees: DogSees, elapsedS: number): void {
    if (sees.phase !== 'riding' || sees.pressure === 'coast') return;
    const inBand =
      sees.cadenceRpm >= sees.bandLowRpm - KIND_RPM && sees.cadenceRpm <= sees.bandHighRpm + KIND_RPM;
    this.#rhythmS = inBand === this.#happy ? 0 : this.#rhythmS + elapsedS;
    if (this.#rhythmS < (this.#happy ? LOST_S : BACK_S)) return;
    this.#happy = inBand;
    this.#rhythmS = 0;
  }
}
