/** A link as a code for a camera, drawn as one path. Links that make a code no camera likes are not drawn. */
import { correction, generate } from 'lean-qr';
import type { JSX } from 'preact';
import { words } from '../../words/words.ts';
import { useMemo } from 'preact/hooks';

const say = words('bench');

/** Longer links make codes that phones do not read from a screen (characters). */
const LONGEST_CODE_LINK = 1_400;
/** Empty border a camera needs (modules). */
const BORDER = 4;

export function LevelCode({ link }: { readonly link: string }): JSX.Element {
  const drawn = useMemo(() => (link.length > LONGEST_CODE_LINK ? null : codePath(link)), [link]);
  if (drawn === null) return <p data-no-code>{say('share-tooLong')}</p>;
  const side = drawn.size + 2 * BORDER;
  return (
    <svg
      class="level-code"
      viewBox={`${-BORDER} ${-BORDER} ${side} ${side}`}
      role="img"
      aria-label={say('share-code')}
      shape-rendering="crispEdges"
      data-code
    >
      <rect class="code-paper" x={-BORDER} y={-BORDER} width={side} height={side} />
      <path class="code-ink" d={drawn.path} />
    </svg>
  );
}

/** Every dark run of a row as a rectangle. */
function codePath(link: string): { readonly path: string; readonly size: number } | null {
  try {
    const bitmap = generate(link, { minCorrectionLevel: correction.L });
    const { size } = bitmap;
    let path = '';
    for (let y = 0; y < size; y += 1)
      for (let x = 0; x < size; x += 1) {
        if (!bitmap.get(x, y)) continue;
        let end = x + 1;
        while (end < size && bitmap.get(end, y)) end += 1;
        path += `M${x} ${y}h${end - x}v1h${x - end}z`;
        x = end;
      }
    return { path, size };
  } catch {
    return null;
  }
}
