/** A number with its unit and limits. While somebody types, what is typed stays as it is; only good numbers count. */
import type { JSX } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import { benchWords } from './words.ts';
import { metric } from './say.ts';

let typings = 0;

export function NumberField(props: {
  readonly label: string;
  readonly unit: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  /** Name for tests and style sheets. */
  readonly name: string;
  readonly onValue: (value: number, gesture: string) => void;
}): JSX.Element {
  const { label, unit, value, low, high, step, name } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const gesture = useRef('');
  const given = useRef(value);
  // A value that comes from elsewhere, as by undoing, takes the place of what was typed.
  if (given.current !== value) {
    given.current = value;
    if (typed !== null && Number(typed) !== value) setTyped(null);
  }
  const id = useId();
  const number = Number(typed);
  const bad = typed !== null && (typed.trim() === '' || !(number >= low && number <= high));
  const shownLow = metric.number(low, Number.isInteger(low) ? 0 : 1);
  return (
    <div class="number-field">
      <label for={id}>{label}</label>
      <span class="number-box">
        <input
          id={id}
          type="number"
          inputMode="decimal"
          data-field={name}
          min={low}
          max={high}
          // Any number may be typed; the arrows go in sensible steps.
          step={step}
          value={typed ?? value}
          aria-invalid={bad}
          aria-describedby={bad ? `${id}-limits` : undefined}
          // What is typed and out of its limits is on no level yet.
          data-unread={bad ? '' : undefined}
          onFocus={() => {
            typings += 1;
            gesture.current = `typing ${typings}`;
          }}
          onInput={({ currentTarget }) => {
            const text = currentTarget.value;
            setTyped(text);
            const next = Number(text);
            if (text.trim() !== '' && next >= low && next <= high) props.onValue(next, gesture.current);
          }}
          onBlur={() => setTyped(null)}
        />
        <span aria-hidden="true">{unit}</span>
      </span>
      {bad && (
        <span id={`${id}-limits`} class="limits">
          {benchWords.edit.range(shownLow, metric.number(high, Number.isInteger(high) ? 0 : 1))}
        </span>
      )}
    </div>
  );
}
