/**
 * A handle on a drawing: dragged with a finger or a mouse, or moved with the arrow keys. It knows one number and its
 * limits; what the number means is known to those who draw it.
 */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';

/** What a handle moves. */
export interface HandleProps {
  readonly label: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly shown: string;
  readonly axis: 'along' | 'up';
  /** Where it is (px). */
  readonly x: number;
  readonly y: number;
  /** How much the value grows with each pixel to the right, or upwards. */
  readonly perPx: number;
  readonly kind?: 'edge' | 'flag';
  /** Another value; edits of one gesture carry the same name. */
  readonly onValue: (value: number, gesture: string) => void;
  /** A drag begins or is over: meanwhile the drawing keeps its scale. */
  readonly onDrag?: (dragging: boolean) => void;
}

/** Key presses closer together than this are one gesture (ms). */
const TOGETHER_MS = 900;
/** Half of the smallest thing a finger hits (px). */
const REACH_PX = 22;
const PAGE_STEPS = 10;

let gestures = 0;

export function Handle(props: HandleProps): JSX.Element {
  const { label, value, low, high, shown, axis, x, y } = props;
  const drag = useRef<{ readonly from: number; readonly value: number; readonly gesture: string } | null>(
    null,
  );
  const keys = useRef({ atMs: Number.NEGATIVE_INFINITY, gesture: '' });
  const place = (event: PointerEvent): number => (axis === 'along' ? event.clientX : -event.clientY);
  const stop = (): void => {
    if (drag.current === null) return;
    drag.current = null;
    props.onDrag?.(false);
  };
  return (
    <g
      class={`handle ${axis} ${props.kind ?? ''}`}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation={axis === 'along' ? 'horizontal' : 'vertical'}
      aria-valuemin={low}
      aria-valuemax={high}
      aria-valuenow={value}
      aria-valuetext={shown}
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        gestures += 1;
        drag.current = { from: place(event), value, gesture: `drag ${gestures}` };
        props.onDrag?.(true);
      }}
      onPointerMove={(event) => {
        if (drag.current === null) return;
        const wanted = drag.current.value + (place(event) - drag.current.from) * props.perPx;
        const next = fitted(wanted, props);
        if (next !== value) props.onValue(next, drag.current.gesture);
      }}
      onPointerUp={stop}
      onPointerCancel={stop}
      onLostPointerCapture={stop}
      onKeyDown={(event) => {
        const next = afterKey(event.key, props);
        if (next === null) return;
        event.preventDefault();
        event.stopPropagation();
        if (event.timeStamp - keys.current.atMs > TOGETHER_MS) {
          gestures += 1;
          keys.current.gesture = `keys ${gestures}`;
        }
        keys.current.atMs = event.timeStamp;
        if (next !== value) props.onValue(next, keys.current.gesture);
      }}
    >
      <circle class="reach" r={REACH_PX} />
      {props.kind === 'flag' ? (
        <path class="knob" d="M-1.5 16V-14H14L9 -8 14 -2H1.5V16Z" />
      ) : (
        <path
          class="knob"
          d={axis === 'along' ? 'M-4 -9-13 0-4 9ZM4 -9 13 0 4 9Z' : 'M-9 -4 0 -13 9 -4ZM-9 4 0 13 9 4Z'}
        />
      )}
    </g>
  );
}

/** A value on its step and within its limits. */
function fitted(wanted: number, { low, high, step }: HandleProps): number {
  const stepped = Math.round(wanted / step) * step;
  return Math.min(high, Math.max(low, Number(stepped.toFixed(4))));
}

function afterKey(key: string, props: HandleProps): number | null {
  const { value, low, high, step } = props;
  const by = (steps: number): number =>
    Math.min(high, Math.max(low, Number((value + steps * step).toFixed(4))));
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return by(1);
    case 'ArrowLeft':
    case 'ArrowDown':
      return by(-1);
    case 'PageUp':
      return by(PAGE_STEPS);
    case 'PageDown':
      return by(-PAGE_STEPS);
    case 'Home':
      return low;
    case 'End':
      return high;
    default:
      return null;
  }
}
