/** A code for cameras as a picture: black on white in every theme, because cameras want it so. */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { codeOf, QUIET_ZONE } from './code.ts';

/** One code with the white that belongs to it; `label` says what it carries, for those who cannot see it. */
export function CodePicture(props: {
  readonly text: string;
  readonly label: string;
  readonly look: string;
  readonly dense?: boolean;
}): JSX.Element {
  const { text, label, look, dense = false } = props;
  const code = useMemo(() => codeOf(text, dense), [text, dense]);
  const side = code.size + 2 * QUIET_ZONE;
  return (
    <svg
      class={look}
      viewBox={`${-QUIET_ZONE} ${-QUIET_ZONE} ${side} ${side}`}
      role="img"
      aria-label={label}
      shape-rendering="crispEdges"
    >
      <rect x={-QUIET_ZONE} y={-QUIET_ZONE} width={side} height={side} fill="#fff" />
      <path d={code.path} fill="#000" />
    </svg>
  );
}
