/**
 * What the friend of the children's roads does: stands at a place and waves until the rider has come, rides on to the next
 * one, and is at the finish first. Waits as long as it takes. Pure numbers; drawing is `company.ts`.
 */

/** A rider this near has come (m). */
const MET_M = 4.5;
/** Pace between two places: so much faster than the rider, within these (m/s). */
const GAIN_MPS = 2.2;
const LEAST_MPS = 4.2;
const MOST_MPS = 9;
/** Metres for one turn of the cranks. */
const TURN_M = 3.1;

/** The friend of one ride, changed in place. */
export class FriendMind {
  distanceM: number;
  /** Turned since the start, in whole and part turns. */
  crankTurns = 0;
  #next = 0;
  readonly #placesM: readonly number[];

  /** `placesM` ascending, the last one behind the finish. */
  constructor(placesM: readonly number[]) {
    this.#placesM = placesM;
    this.distanceM = placesM[0] ?? 0;
  }

  /** Stands and waits. */
  get waits(): boolean {
    return this.distanceM >= (this.#placesM[this.#next] ?? this.distanceM);
  }

  update(riderM: number, riderMps: number, elapsedS: number): void {
    const isLast = this.#next >= this.#placesM.length - 1;
    if (this.waits && !isLast && riderM > this.distanceM - MET_M) this.#next += 1;
    // After a jump of the ride: where the rider has been already nobody is waited for.
    while (this.#next < this.#placesM.length - 1 && (this.#placesM[this.#next] ?? 0) < riderM - MET_M) {
      this.#next += 1;
      this.distanceM = Math.max(this.distanceM, riderM);
    }
    const goalM = this.#placesM[this.#next] ?? this.distanceM;
    if (this.distanceM >= goalM) return;
    const pace = Math.max(LEAST_MPS, Math.min(MOST_MPS, riderMps + GAIN_MPS));
    const stepM = Math.min(goalM - this.distanceM, pace * elapsedS);
    this.distanceM += stepM;
    this.crankTurns += stepM / TURN_M;
  }
}
