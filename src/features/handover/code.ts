/**
 * A text as the squares of a QR code. Drawing them is left to `codeShow.tsx`, cutting long things into several
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

/** The code of a text; about one square in seven may be unreadable, for reflections and thumbs. */
export function codeOf(text: string): Code {
  const bitmap = generate(text, { minCorrectionLevel: correction.M });
  return { size: bitmap.size, path: toSvgPath(bitmap), isBlack: (x, y) => bitmap.get(x, y) };
}
