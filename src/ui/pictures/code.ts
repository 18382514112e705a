/**
 * A text as the squares of a QR code. Drawing them is left to `codePicture.tsx`, cutting long things into several
 * texts to the core.
 */
import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';

/** White squares round a code; readers need four to tell it from what is beside it. */
export const QUIET_ZONE = 4;

/** Squares of one code. */
interface Code {
  /** Squares along a side, without the white round it. */
  readonly size: number;
  /** The black squares as the path of an SVG, one unit a square. */
  readonly path: string;
  /** True where the square is black; white outside. */
  readonly isBlack: (x: number, y: number) => boolean;
}

/**
 * The code of a text. About one square in seven may be unreadable, for reflections and thumbs; half as many where
 * `dense`, so that a long text still gets squares a phone can tell apart.
 */
export function codeOf(text: string, dense = false): Code {
  const bitmap = generate(text, { minCorrectionLevel: dense ? correction.L : correction.M });
  return { size: bitmap.size, path: toSvgPath(bitmap), isBlack: (x, y) => bitmap.get(x, y) };
}
