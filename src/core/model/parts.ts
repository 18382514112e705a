/**
 * Cassettes and chainrings that are easy to get, as tooth counts (common practice, no source; no maker is
 * meant). They are what gear check tries out, and how a range such as `11-32` is completed.
 */
import { clamp, lastWhere } from '../math/numbers.ts';

/** Common cassettes by number of sprockets, smallest sprocket first. */
export const COMMON_CASSETTES: readonly (readonly number[])[] = [
  [11, 13, 15, 18, 21, 24, 28],
  [12, 14, 16, 18, 21, 26, 32],
  [14, 16, 18, 20, 22, 24, 28],
  [14, 16, 18, 20, 22, 24, 34],
  [12, 13, 15, 17, 19, 21, 23, 25],
  [11, 13, 15, 17, 19, 21, 24, 28],
  [11, 13, 15, 18, 21, 24, 28, 32],
  [12, 14, 16, 18, 21, 24, 28, 32],
  [11, 13, 15, 18, 21, 24, 28, 34],
  [11, 13, 15, 18, 22, 28, 34, 40],
  [11, 12, 14, 16, 18, 21, 24, 28, 32],
  [11, 13, 15, 17, 20, 23, 26, 30, 34],
  [12, 14, 16, 18, 21, 24, 28, 32, 36],
  [11, 12, 13, 14, 15, 17, 19, 21, 24, 28],
  [11, 12, 14, 16, 18, 20, 22, 25, 28, 32],
  [11, 13, 15, 17, 19, 21, 23, 26, 30, 34],
  [11, 13, 15, 17, 19, 21, 24, 28, 32, 36],
  [11, 13, 15, 18, 21, 24, 28, 32, 37, 42],
  [11, 12, 13, 14, 15, 17, 19, 21, 23, 25, 28],
  [11, 12, 13, 14, 15, 17, 19, 21, 24, 27, 30],
  [11, 12, 13, 14, 16, 18, 20, 22, 25, 28, 32],
  [11, 13, 15, 17, 19, 21, 23, 25, 27, 30, 34],
  [11, 13, 15, 17, 19, 21, 24, 28, 32, 37, 42],
  [11, 12, 13, 14, 15, 17, 19, 21, 24, 27, 30, 34],
  [11, 12, 13, 14, 15, 17, 19, 21, 24, 28, 32, 36],
  [10, 11, 13, 15, 17, 19, 21, 24, 28, 32, 38, 44],
  [10, 12, 14, 16, 18, 21, 24, 28, 33, 39, 45, 51],
];

/** Common sets of chainrings, smallest ring first. */
export const COMMON_RINGS: readonly (readonly number[])[] = [
  [28],
  [30],
  [32],
  [34],
  [36],
  [38],
  [40],
  [42],
  [44],
  [26, 40],
  [30, 46],
  [32, 48],
  [34, 50],
  [36, 46],
  [36, 52],
  [39, 53],
  [22, 32, 44],
  [26, 36, 48],
  [28, 38, 48],
  [30, 39, 50],
];

/** The commonest cassette of a range, or an evenly stepped one where none is listed. */
export function cassetteFor(smallTeeth: number, bigTeeth: number, count: number): readonly number[] {
  const known = COMMON_CASSETTES.find(
    (cassette) => cassette.length === count && cassette[0] === smallTeeth && cassette.at(-1) === bigTeeth,
  );
  return known ?? evenCassette(smallTeeth, bigTeeth, count);
}

/** Steps that grow in proportion: each sprocket about the same share bigger than the last, in whole teeth. */
function evenCassette(smallTeeth: number, bigTeeth: number, count: number): number[] {
  const step = lastWhere(1, bigTeeth / smallTeeth, 60, (ratio) => {
    let reached = smallTeeth;
    for (let k = 1; k < count; k += 1) reached *= ratio;
    return reached <= bigTeeth;
  });
  const teeth: number[] = [smallTeeth];
  let exact = smallTeeth;
  for (let k = 1; k < count; k += 1) {
    exact *= step;
    const least = (teeth[k - 1] as number) + 1;
    teeth.push(clamp(Math.round(exact), least, bigTeeth - (count - 1 - k)));
  }
  teeth[count - 1] = bigTeeth;
  return teeth;
}
