/**
 * A handle on a drawing: a range field that looks like two arrows, dragged with a finger or a mouse, or moved with
 * the keys every range field knows. What its number means is known to those who draw it.
 */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import type { LevelField } from './fields.ts';

/** What a handle moves. */
interface HandleProps extends Pick<LevelField, 'value' | 'low' | 'high' | 'step'> {
  readonly label: string;
  readonly shown: string;
  readonly axis: 'along' | 'up';
  /** Where it is in the drawing (px). */
  readonly x: number;
  readonly y: number;
  /** How much the value grows with each pixel to the right, or upwards. */
  readonly perPx: number;
  readonly kind: 'edge' | 'begin';
  /** Another value; edits of one gesture carry the same name. */
  readonly onValue: (value: number, gesture: string) => void;
  /** A drag begins or is over: meanwhile the drawing keeps its scale. */
  readonly onDrag?: (dragging: boolean) => void;
}

/** Key presses closer together than this are one gesture (ms). */
const TOGETHER_MS = 900;

let gestures = 0;

function newGesture(name: string): string {
  gestures += 1;
  return `${name} ${gestures}`;
}

export function Handle(props: HandleProps): JSX.Element {
  const { label, value, low, high, shown, axis, kind } = props;
  const keys = useRef({ atMs: Number.NEGATIVE_INFINITY, gesture: '' });
  return (
    <input
      type="range"
      class={`handle ${axis} ${kind}`}
      style={{ left: `${props.x.toFixed(1)}px`, top: `${props.y.toFixed(1)}px` }}
      aria-label={label}
      aria-valuetext={shown}
      aria-orientation={axis === 'along' ? 'horizontal' : 'vertical'}
      min={low}
      max={high}
      step="any"
      value={value}
      {...useDrag(props)}
      onKeyDown={(event) => {
        const next = afterKey(event.key, props);
        if (next === null) return;
        event.preventDefault();
        if (event.timeStamp - keys.current.atMs > TOGETHER_MS) keys.current.gesture = newGesture('keys');
        keys.current.atMs = event.timeStamp;
        if (next !== value) props.onValue(next, keys.current.gesture);
      }}
      // Other ways to change a range field, such as those of a screen reader.
      onInput={({ currentTarget }) => {
        const next = fitted(currentTarget.valueAsNumber, props);
        if (next !== value) props.onValue(next, newGesture('set'));
      }}
    />
  );
}

/** Dragging by distance, so that the handle stays under the finger wherever it was taken. */
function useDrag(props: HandleProps) {
  const { value, axis } = props;
  const drag = useRef<{ readonly from: number; readonly value: number; readonly gesture: string } | null>(
    null,
  );
  const place = (event: PointerEvent): number => (axis === 'along' ? event.clientX : -event.clientY);
  const stop = (): void => {
    if (drag.current === null) return;
    drag.current = null;
    props.onDrag?.(false);
  };
  return {
    // The field's own dragging would jump to the place of the click.
    onMouseDown: (event: MouseEvent) => event.preventDefault(),
    onTouchStart: (event: TouchEvent) => event.preventDefault(),
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0) return;
      const field = event.currentTarget as HTMLInputElement;
      field.setPointerCapture(event.pointerId);
      field.focus({ preventScroll: true });
      drag.current = { from: place(event), value, gesture: newGesture('drag') };
      props.onDrag?.(true);
    },
    onPointerMove: (event: PointerEvent) => {
      if (drag.current === null) return;
      const wanted = drag.current.value + (place(event) - drag.current.from) * props.perPx;
      const next = fitted(wanted, props);
      if (next !== value) props.onValue(next, drag.current.gesture);
    },
    onPointerUp: stop,
    onPointerCancel: stop,
    onLostPointerCapture: stop,
  };
}

/** A value on its step and within its limits. */
function fitted(wanted: number, { low, high, step }: HandleProps): number {
  const stepped = Math.round(wanted / step) * step;
  return Math.min(high, Math.max(low, Number(stepped.toFixed(4))));
}

const PAGE_STEPS = 10;
const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: PAGE_STEPS,
  PageDown: -PAGE_STEPS,
};

function afterKey(key: string, { value, low, high, step }: HandleProps): number | null {
  if (key === 'Home') return low;
  if (key === 'End') return high;
  const steps = STEPS[key];
  if (steps === undefined) return null;
  return Math.min(high, Math.max(low, Number((value + steps * step).toFixed(4))));
}
