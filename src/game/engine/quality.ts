/**
 * How much of the picture is drawn, by how punctual the frames are: when they come late for a while, less; when
 * they have been punctual for longer, more again. Pure numbers; what is left away is the views' choice.
 */

/** 2 everything, 1 without foreground and streaks and with slower instruments, 0 without clouds and far hills too. */
export type PictureQuality = 0 | 1 | 2;

/** A frame that took longer than this is late (s): one and a half pictures at 60 a second. */
const LATE_S = 0.025;
/** Share of late frames, smoothed, from which less is drawn, and below which more may be. */
const MANY_LATE = 0.35;
const FEW_LATE = 0.04;
/** So long nothing changes after a step down, and so long it must be good before a step up (s). */
const REST_S = 1.5;
const GOOD_S = 8;
/** A second step up that had to be taken back waits longer, so that the picture does not swing. */
const MOST_GOOD_S = 64;
/** A gap longer than this is no slowness: the page was hidden or paused (s). */
const GAP_S = 0.4;

/** Watches the frames of one picture. */
export class QualityWatch {
  #level: PictureQuality = 2;
  #late = 0;
  #restS = REST_S;
  #goodS = 0;
  #neededS = GOOD_S;

  get level(): PictureQuality {
    return this.#level;
  }

  /** Takes the raw time since the last frame (s). */
  frame(passedS: number): void {
    if (passedS <= 0 || passedS > GAP_S) return;
    this.#late += ((passedS > LATE_S ? 1 : 0) - this.#late) * Math.min(1, passedS * 1.5);
    this.#restS -= passedS;
    this.#goodS = this.#late < FEW_LATE ? this.#goodS + passedS : 0;
    if (this.#restS > 0) return;
    if (this.#late > MANY_LATE && this.#level > 0) this.#step(-1);
    else if (this.#goodS > this.#neededS && this.#level < 2) this.#step(1);
  }

  #step(by: 1 | -1): void {
    this.#level = (this.#level + by) as PictureQuality;
    if (by < 0) this.#neededS = Math.min(MOST_GOOD_S, this.#neededS * 2);
    this.#late = 0;
    this.#goodS = 0;
    this.#restS = REST_S;
  }
}
