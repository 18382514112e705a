/** Cuts a stretch that cannot be ridden off a recorded road: the longer part before or behind it is left. */
import { placedOnPart } from './part.ts';
import { type Level, SHORTEST_LEVEL_M } from './schema.ts';

/**
 * The level without the stretch (m from the start), or null where too little road would be left or the road is not one
 * recorded piece. Stop lines, winds and all else that lies on the part that stays goes with it.
 */
export function trimmed(level: Level, fromM: number, toM: number): Level | null {
  const [piece] = level.pieces;
  if (piece?.kind !== 'recorded' || level.pieces.length !== 1) return null;
  const { stepM, heightsM } = piece;
  const last = heightsM.length - 1;
  const before = Math.min(last, Math.max(0, Math.floor(fromM / stepM)));
  const after = Math.min(last, Math.ceil(toM / stepM));
  const [first, end] = before >= last - after ? [0, before] : [after, last];
  if ((end - first) * stepM < SHORTEST_LEVEL_M) return null;
  return withoutEnds(level, { stepM, heightsM, first, end });
}

function withoutEnds(
  level: Level,
  part: { stepM: number; heightsM: readonly number[]; first: number; end: number },
): Level {
  const { stepM, heightsM, first, end } = part;
  const startM = first * stepM;
  const lengthM = (end - first) * stepM;
  const base = heightsM[first] ?? 0;
  return {
    ...level,
    // Millimetres, as recorded heights are kept.
    pieces: [
      {
        kind: 'recorded',
        stepM,
        heightsM: heightsM.slice(first, end + 1).map((height) => Math.round((height - base) * 1000) / 1000),
      },
    ],
    ...placedOnPart(level, startM, lengthM),
  };
}
