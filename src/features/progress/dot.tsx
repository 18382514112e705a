/** One ride in a chart; its shape tells what kind of ride it was. */
import type { KeptResult } from '../../core/coach/results.ts';
import type { JSX } from 'preact';
import { px } from '../../charts/lines.ts';

/** Practice is an open ring, a check ride a full diamond, a clinic a full square. */
export function Dot(props: {
  readonly kind: KeptResult['kind'];
  readonly x: number;
  readonly y: number;
}): JSX.Element {
  const { kind, x, y } = props;
  const at = `translate(${px(x)} ${px(y)})`;
  if (kind === 'check') return <path transform={at} d="M0 -7L7 0L0 7L-7 0Z" fill="var(--rider-deep)" />;
  if (kind === 'clinic') return <path transform={at} d="M-4 -4H4V4H-4Z" fill="var(--ink)" />;
  return <circle transform={at} r="3.8" fill="var(--paper)" stroke="var(--ink)" stroke-width="1.8" />;
}
