/** A line of a drawing: ink unless it has another colour, and nothing filled. */
import type { JSX } from 'preact';

/** The line, with its width in the units of the drawing; `round` ends it like a brush. Other attributes can be given. */
export function Stroke(props: {
  readonly d: string;
  readonly width: number;
  readonly colour?: string;
  readonly round?: boolean;
  readonly class?: string;
}): JSX.Element {
  const { width, colour = 'var(--ink)', round = false, ...rest } = props;
  return (
    <path
      fill="none"
      stroke={colour}
      stroke-width={width}
      {...(round ? { 'stroke-linecap': 'round' } : {})}
      {...rest}
    />
  );
}
