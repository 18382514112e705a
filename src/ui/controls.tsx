/**
 * What a person pushes, types into and chooses from. Controls hold no state: what is in them comes from the page, and
 * every attribute of the element itself can be given (`data-…`, `aria-…`, `disabled`).
 */
import type { ComponentChildren, JSX } from 'preact';
import { useId } from 'preact/hooks';

type ButtonAttributes = Omit<JSX.IntrinsicElements['button'], 'class' | 'type'>;

/** A button. `strong` is the one thing to do; `look` names another look than that of a plain button. */
export function Button(
  props: ButtonAttributes & {
    readonly strong?: boolean;
    readonly small?: boolean;
    readonly submit?: boolean;
    readonly look?: string;
  },
): JSX.Element {
  const { strong = false, small = false, submit = false, look = 'button', ...rest } = props;
  const looks = `${look}${strong ? ' strong' : ''}${small ? ' small' : ''}`;
  return <button type={submit ? 'submit' : 'button'} class={looks} {...rest} />;
}

/** Asks for a file; the same one can be chosen again. */
export function FileButton(props: {
  readonly label: string;
  readonly accept: string;
  readonly onFile: (file: File) => void;
}): JSX.Element {
  const { label, onFile, ...rest } = props;
  return (
    <label class="button file-button">
      {label}
      <input
        type="file"
        {...rest}
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file !== undefined) onFile(file);
          currentTarget.value = '';
        }}
      />
    </label>
  );
}

/** One of many in a list that folds out: pairs of value and name, in groups with a title where they have one. */
export function Select<Value extends string>(props: {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [Value, string])[];
  readonly groups?: readonly (readonly [string, readonly (readonly [Value, string])[]])[];
  readonly class?: string;
  readonly onChoose: (value: Value) => void;
}): JSX.Element {
  const { label, value, options, groups = [], onChoose } = props;
  const list = (pairs: readonly (readonly [Value, string])[]): JSX.Element[] =>
    pairs.map(([one, name]) => (
      <option key={one} value={one} selected={one === value}>
        {name}
      </option>
    ));
  return (
    <label class={`field ${props.class ?? ''}`}>
      <span>{label}</span>
      <select value={value} onChange={(event) => onChoose(event.currentTarget.value as Value)}>
        {list(options)}
        {groups.map(([title, pairs]) => (
          <optgroup key={title} label={title}>
            {list(pairs)}
          </optgroup>
        ))}
      </select>
    </label>
  );
}

/** A line to type into, with its name, a hint, and the sentence that says what is wrong in it. */
export function Field(props: {
  readonly label: string;
  readonly value: string;
  readonly onType: (value: string) => void;
  readonly name?: string;
  readonly inputMode?: 'text' | 'numeric' | 'decimal';
  readonly maxLength?: number;
  readonly hint?: string;
  readonly problem?: string | undefined;
  /** What stands beside the line, a button mostly. */
  readonly children?: ComponentChildren;
}): JSX.Element {
  const { label, hint, problem, onType, children, ...rest } = props;
  const id = useId();
  const input = (
    <input
      id={id}
      type="text"
      autocomplete="off"
      spellcheck={false}
      aria-invalid={problem !== undefined}
      aria-describedby={`${id}-hint ${id}-problem`}
      onInput={(event) => onType(event.currentTarget.value)}
      {...rest}
    />
  );
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {children === undefined ? (
        input
      ) : (
        <div class="field-row">
          {input}
          {children}
        </div>
      )}
      {hint !== undefined && (
        <span id={`${id}-hint`} class="hint">
          {hint}
        </span>
      )}
      <span id={`${id}-problem`} class="field-problem">
        {problem}
      </span>
    </div>
  );
}

/** One of a few, as radio buttons that look like paper tabs. */
export function Choice<Value extends string>(props: {
  readonly legend: string;
  readonly name: string;
  readonly value: Value;
  /** Values with their names and, where one is a colour, that too. */
  readonly options: readonly (readonly [Value, string, (string | null)?])[];
  readonly onChoose: (value: Value) => void;
}): JSX.Element {
  return (
    <fieldset class="choice">
      <legend>{props.legend}</legend>
      <div class="choice-row">
        {props.options.map(([value, label, tone = null]) => (
          <label key={value}>
            <input
              type="radio"
              name={props.name}
              value={value}
              checked={props.value === value}
              onChange={() => props.onChoose(value)}
            />
            <span>
              {tone !== null && <i class="swatch" style={{ backgroundColor: tone }} aria-hidden="true" />}
              {label}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** On or off. */
export function Tick(props: {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}): JSX.Element {
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={props.checked}
        onChange={(event) => props.onChange(event.currentTarget.checked)}
      />
      <span>{props.label}</span>
    </label>
  );
}

/** A number between two limits with what it means beside it; a share up to 1 in steps of 0.05 unless told. */
export function Slider(props: {
  readonly label: string;
  readonly value: number;
  readonly low: number;
  readonly high?: number;
  readonly step?: number;
  readonly shown: string;
  readonly onInput: (value: number) => void;
}): JSX.Element {
  return (
    <label class="slider">
      <span>{props.label}</span>
      <input
        type="range"
        min={props.low}
        max={props.high ?? 1}
        step={props.step ?? 0.05}
        value={props.value}
        aria-valuetext={props.shown}
        onInput={(event) => props.onInput(event.currentTarget.valueAsNumber)}
      />
      <output>{props.shown}</output>
    </label>
  );
}
