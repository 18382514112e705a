/**
 * The kinds of pieces a road is laid of: what each is made from, how long it is, and its slope for every metre. Joining
 * them and smoothing the joins is done by `build.ts`; what may stand in a level file is said by `level/schema.ts`.
 */
import { between, type Random, seededRandom } from '../math/random.ts';

interface Slope {
  readonly lengthM: number;
  readonly slopeRatio: number;
}

/** Building blocks of a road, laid end to end. */
export type Piece =
  | { readonly kind: 'flat'; readonly lengthM: number }
  | ({ readonly kind: 'climb' } & Slope)
  | ({ readonly kind: 'pitch' } & Slope)
  | ({ readonly kind: 'descent' } & Slope)
  /** Waves of ground; `steepestRatio` is not exceeded, `waveM` is about one up and down. */
  | {
      readonly kind: 'rollers';
      readonly lengthM: number;
      readonly waveM: number;
      readonly steepestRatio: number;
    }
  /**
   * Flat road with pitches whose place and steepness come from the seed; with `beforeM` they follow each other, and every
   * one of them has so much road before it, to a few metres.
   */
  | {
      readonly kind: 'random-pitches';
      readonly lengthM: number;
      readonly pitchCount: number;
      readonly gentlestRatio: number;
      readonly steepestRatio: number;
      readonly beforeM?: number | undefined;
    }
  /** Heights of a recorded road every `stepM` metres, relative to its start. */
  | { readonly kind: 'recorded'; readonly stepM: number; readonly heightsM: readonly number[] };

/** What chance has a hand in. */
const BY_CHANCE: Readonly<Record<Piece['kind'], boolean>> = {
  flat: false,
  climb: false,
  pitch: false,
  descent: false,
  rollers: true,
  'random-pitches': true,
  recorded: false,
};

/** Whether another seed makes another road of these pieces. */
export function isSeeded(pieces: readonly Piece[]): boolean {
  return pieces.some(({ kind }) => BY_CHANCE[kind]);
}

/** Length of a piece on the road (m). */
export function pieceLengthM(piece: Piece): number {
  if (piece.kind !== 'recorded') return Math.round(piece.lengthM);
  return Math.round(piece.stepM) * (piece.heightsM.length - 1);
}

/** Slopes of a piece, one per metre of road. */
export function pieceSlopes(piece: Piece, seed: number): number[] {
  const lengthM = pieceLengthM(piece);
  switch (piece.kind) {
    case 'flat':
      return new Array<number>(lengthM).fill(0);
    case 'climb':
    case 'pitch':
      return new Array<number>(lengthM).fill(piece.slopeRatio);
    case 'descent':
      return new Array<number>(lengthM).fill(-Math.abs(piece.slopeRatio));
    case 'rollers':
      return rollerSlopes(lengthM, piece.waveM, piece.steepestRatio, seededRandom(seed));
    case 'random-pitches':
      return randomPitchSlopes(lengthM, piece, seededRandom(seed));
    case 'recorded':
      return recordedSlopes(piece.heightsM, Math.round(piece.stepM));
  }
}

/** Shortest and longest seeded pitch (m). */
const PITCH_SHORTEST_M = 45;
const PITCH_LONGEST_M = 80;
/** Where the road before a pitch is given, it is longer or shorter by up to so much, so that nobody can count metres (m). */
const BEFORE_JITTER_M = 8;
/** Gentle fall that leads from a crest to the next foot. */
const BETWEEN_PITCHES_RATIO = -0.01;

/**
 * Waves of ground. Slope runs through knots of alternating sign, 0.55 to 1 times the steepest, about half a
 * wave apart, joined by smooth cubic steps; it starts and ends level.
 */
function rollerSlopes(lengthM: number, waveM: number, steepestRatio: number, random: Random): number[] {
  const knots: { atM: number; slope: number }[] = [{ atM: 0, slope: 0 }];
  let sign = random() < 0.5 ? -1 : 1;
  let atM = waveM * between(random, 0.2, 0.3);
  while (atM < lengthM - waveM * 0.2) {
    knots.push({ atM, slope: sign * steepestRatio * between(random, 0.55, 1) });
    sign = -sign;
    atM += waveM * between(random, 0.4, 0.6);
  }
  knots.push({ atM: lengthM, slope: 0 });
  const slopes: number[] = [];
  let k = 0;
  for (let i = 0; i < lengthM; i += 1) {
    const middle = i + 0.5;
    while (k < knots.length - 2 && middle > (knots[k + 1]?.atM ?? 0)) k += 1;
    const a = knots[k] as { atM: number; slope: number };
    const b = knots[k + 1] as { atM: number; slope: number };
    const t = (middle - a.atM) / (b.atM - a.atM);
    slopes.push(a.slope + (b.slope - a.slope) * t * t * (3 - 2 * t));
  }
  return slopes;
}

/**
 * Pitches whose steepness is spread evenly between gentlest and steepest and whose order, length and place
 * come from the seed. Every seed has the same set of steepnesses and, since long goes with gentle, nearly
 * the same work: equal difficulty by construction. With `beforeM` the road before each of them is the same as well, for what
 * a pitch asks depends on how one arrives.
 */
function randomPitchSlopes(
  lengthM: number,
  piece: Extract<Piece, { readonly kind: 'random-pitches' }>,
  random: Random,
): number[] {
  const { pitchCount, gentlestRatio, steepestRatio, beforeM } = piece;
  const slopes = new Array<number>(lengthM).fill(BETWEEN_PITCHES_RATIO);
  let endM = 0;
  const sectionM = lengthM / pitchCount;
  const order = shuffled(pitchCount, random);
  for (let section = 0; section < pitchCount; section += 1) {
    const share = shareOfPitch(order[section] as number, pitchCount);
    const slope = gentlestRatio + (steepestRatio - gentlestRatio) * share;
    const pitchM = seededPitchM(share, sectionM);
    const room = sectionM - pitchM;
    const from =
      beforeM === undefined
        ? Math.round(section * sectionM + room * between(random, 0.35, 0.75))
        : endM + Math.round(beforeM + between(random, -BEFORE_JITTER_M, BEFORE_JITTER_M));
    endM = from + pitchM;
    for (let i = from; i < Math.min(lengthM, from + pitchM); i += 1) slopes[i] = slope;
  }
  return slopes;
}

/** How much road random pitches need so that each has `beforeM` of it before it, whatever the seed makes of it (m). */
export function roadForPitches(lengthM: number, pitchCount: number, beforeM: number): number {
  let sumM = pitchCount * (beforeM + BEFORE_JITTER_M);
  for (let i = 0; i < pitchCount; i += 1)
    sumM += seededPitchM(shareOfPitch(i, pitchCount), lengthM / pitchCount);
  return Math.ceil(sumM);
}

/** Place of a pitch between the gentlest (0) and the steepest (1) of its piece. */
function shareOfPitch(index: number, pitchCount: number): number {
  return pitchCount === 1 ? 1 : index / (pitchCount - 1);
}

/** Length of a seeded pitch: the steeper, the shorter, and at most half of its share of the road (m). */
function seededPitchM(share: number, sectionM: number): number {
  const wanted = PITCH_LONGEST_M + (PITCH_SHORTEST_M - PITCH_LONGEST_M) * share;
  return Math.round(Math.min(wanted, sectionM * 0.5));
}

/** Slopes between recorded heights every `stepM` metres. */
function recordedSlopes(heightsM: readonly number[], stepM: number): number[] {
  const slopes: number[] = [];
  for (let k = 1; k < heightsM.length; k += 1) {
    const slope = ((heightsM[k] as number) - (heightsM[k - 1] as number)) / stepM;
    for (let i = 0; i < stepM; i += 1) slopes.push(slope);
  }
  return slopes;
}

/** The numbers 0 to n − 1 in a seeded order (Fisher–Yates). */
function shuffled(n: number, random: Random): number[] {
  const list = Array.from({ length: n }, (_, i) => i);
  for (let i = n - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    [list[i], list[j]] = [list[j] as number, list[i] as number];
  }
  return list;
}
