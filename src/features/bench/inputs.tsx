/**
 * Fields of the bench: a line of text, and a number with its unit and limits, typed in the units of whoever is at the
 * bench. While somebody types, what is typed stays as it is; only good numbers count.
 */
import type { JSX } from 'preact';
import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { words } from '../../words/words.ts';
import type { LevelField } from './fields.ts';
import { typedIn, useFormat } from './say.ts';

const say = words('bench');

let typings = 0;

interface NumberFieldProps extends Pick<LevelField, 'unit' | 'value' | 'low' | 'high' | 'step'> {
  readonly label: string;
  /** Name for tests and style sheets. */
  readonly name: string;
  readonly onValue: (value: number, gesture: string) => void;
}

export function NumberField(props: NumberFieldProps): JSX.Element {
  const { label, unit, value, name } = props;
  const format = useFormat();
  const typing = typedIn(format, unit);
  const shown = (one: number, round = Math.round): number => {
    if (typing.perOne === 1) return one;
    const tens = typing.decimals === 0 ? 1 : 10;
    return round(one * typing.perOne * tens) / tens;
  };
  // Whatever is typed between these is between the limits themselves.
  const low = shown(props.low, Math.ceil);
  const high = shown(props.high, Math.floor);
  const { typed, begin, type, end } = useTyping(value, (text) => {
    const next = Number(text);
    return text.trim() === '' || !(next >= low && next <= high) ? null : next / typing.perOne;
  });
  const id = useId();
  const bad = typed !== null && typed.value === null;
  const limit = (one: number): string => format.number(one, Number.isInteger(one) ? 0 : 1);
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
          step={props.step * typing.stepPerOne}
          value={typed?.text ?? shown(value)}
          aria-invalid={bad}
          aria-describedby={bad ? `${id}-limits` : undefined}
          // What is typed and out of its limits is on no level yet.
          data-unread={bad ? '' : undefined}
          onFocus={begin}
          onInput={({ currentTarget }) => type(currentTarget.value, props.onValue)}
          onBlur={end}
        />
        <span aria-hidden="true">{typing.name}</span>
      </span>
      {bad && (
        <span id={`${id}-limits`} class="limits">
          {say('range', { low: limit(low), high: limit(high) })}
        </span>
      )}
    </div>
  );
}

/** What is being typed, until the field is left or its value comes from elsewhere, as by undoing. */
function useTyping(value: number, read: (text: string) => number | null) {
  const [text, setText] = useState<string | null>(null);
  const gesture = useRef('');
  const before = useRef(value);
  /** What is drawn next was typed here. The level may round it: that does not touch what is typed. */
  const mine = useRef(false);
  useLayoutEffect(() => {
    mine.current = false;
  });
  if (before.current !== value) {
    before.current = value;
    if (!mine.current && text !== null) setText(null);
  }
  return {
    typed: text === null ? null : { text, value: read(text) },
    begin: (): void => {
      typings += 1;
      gesture.current = `typing ${typings}`;
    },
    type: (next: string, onValue: NumberFieldProps['onValue']): void => {
      setText(next);
      mine.current = true;
      const good = read(next);
      if (good !== null) onValue(good, gesture.current);
    },
    end: (): void => setText(null),
  } as const;
}

/** A line of text on the bench, as its number fields are drawn. What may be typed is known to those who ask for it. */
export function TextField(props: {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  readonly lang?: string | undefined;
  /** Longest text that can be typed (characters). */
  readonly maxLength: number;
  readonly onType: (text: string) => void;
}): JSX.Element {
  const { label, hint, onType, ...rest } = props;
  return (
    <label class="text-field">
      <span>{label}</span>
      <input
        type="text"
        autocomplete="off"
        {...rest}
        onInput={({ currentTarget }) => onType(currentTarget.value)}
      />
      {hint !== undefined && <small>{hint}</small>}
    </label>
  );
}

/** A small button that is read aloud with what it does something to; other attributes can be given (`data-…`). */
export function DoingButton(props: {
  readonly doing: string;
  readonly what: string;
  readonly disabled?: boolean;
  readonly onClick: () => void;
}): JSX.Element {
  const { doing, what, ...rest } = props;
  return (
    <Button look="small-button" aria-label={say('named', { doing, what })} {...rest}>
      {doing}
    </Button>
  );
}
