/**
 * How a shift is drawn: its shape says how heavy it was (dot, half, triangle), so that it can be read without
 * colour and in print. The best ride's shifts are open rings.
 */
import type { JSX } from 'preact';
import type { ShiftReport } from '../core/coach/types.ts';
import { px } from './paths.ts';
import { Stroke } from '../ui/pictures/stroke.tsx';

/** Half the size of a mark (px). */
const MARK_PX = 5;

/** One shift at a place on the paper. */
export function ShiftMark(props: {
  readonly kind: ShiftReport['kind'];
  readonly x: number;
  readonly y: number;
}): JSX.Element {
  const { kind } = props;
  const x = px(props.x);
  const y = px(props.y);
  const halo = { stroke: 'var(--paper)', 'stroke-width': 1.5, 'paint-order': 'stroke' };
  if (kind === 'heavy')
    return (
      <path
        data-shift="heavy"
        d={`M${x} ${px(props.y - 6.5)}L${px(props.x + 6.5)} ${px(props.y + 5)}H${px(props.x - 6.5)}Z`}
        fill="var(--rider-deep)"
        {...halo}
      />
    );
  if (kind === 'clean')
    return <circle data-shift="clean" cx={x} cy={y} r={MARK_PX - 0.5} fill="var(--ink)" {...halo} />;
  return (
    <g data-shift="fair">
      <circle cx={x} cy={y} r={MARK_PX - 0.75} fill="var(--paper)" stroke="var(--ink)" stroke-width="1.5" />
      <path
        d={`M${px(props.x - MARK_PX)} ${y}a${MARK_PX} ${MARK_PX} 0 0 0 ${2 * MARK_PX} 0Z`}
        fill="var(--ink)"
      />
    </g>
  );
}

/** Mishaps that are drawn. */
export const MISHAPS = ['foot-down', 'chain-dropped'] as const;
type Mishap = (typeof MISHAPS)[number];

/** A foot on the ground (a cross) or a chain that fell off (a lozenge). */
export function MishapMark({
  kind,
  x,
  y,
}: {
  readonly kind: Mishap;
  readonly x: number;
  readonly y: number;
}): JSX.Element {
  const d =
    kind === 'foot-down'
      ? `M${px(x - 5)} ${px(y - 5)}l10 10m0 -10l-10 10`
      : `M${px(x)} ${px(y - 6)}l6 6l-6 6l-6 -6Z`;
  return <Stroke data-mishap={kind} d={d} colour="var(--rider-deep)" width={3} round />;
}

/** A shift of the best ride. */
export function BestMark({ x, y }: { readonly x: number; readonly y: number }): JSX.Element {
  return (
    <circle
      data-shift="best"
      cx={px(x)}
      cy={px(y)}
      r={MARK_PX - 1.25}
      fill="var(--paper)"
      stroke="var(--sand-dark)"
      stroke-width="2.5"
    />
  );
}
