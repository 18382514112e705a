/** Where things lie on the small picture of a foot: metres before and behind it as places on paper. Numbers only. */

/** From so far before the foot to so far behind it (m). */
const FROM_M = -100;
const TO_M = 60;

/** A place on the picture, held inside its edges. */
export function footX(atM: number, width: number, edge: number): number {
  const held = Math.min(TO_M, Math.max(FROM_M, atM));
  return edge + ((held - FROM_M) / (TO_M - FROM_M)) * (width - 2 * edge);
}
