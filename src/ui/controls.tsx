/**
 * What a person pushes, types into and chooses from. Controls hold no state: what is in them comes from the page, and
 * every attribute of the element itself can be given (`data-…`, `aria-…`, `disabled`).
 */
import type { ComponentChildren, JSX } from 'preact';

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

/** One of many in a list that folds out: pairs of value and name, and the language of a name of somebody's own. */
export function Select<Value extends string>(props: {
  readonly label: string;
  /** The label is only read aloud. */
  readonly quiet?: boolean;
  readonly look?: string;
  readonly name?: string;
  readonly value: Value;
  readonly options: readonly (readonly [Value, string, (string | undefined)?])[];
  readonly onChoose: (value: Value) => void;
}): JSX.Element {
  const { label, quiet = false, look = 'field', value, options, onChoose, ...rest } = props;
  return (
    <label class={look}>
      <span class={quiet ? 'unseen' : undefined}>{label}</span>
      <select {...rest} value={value} onChange={(event) => onChoose(event.currentTarget.value as Value)}>
        {options.map(([one, text, lang]) => (
          <option key={one} value={one} lang={lang} selected={one === value}>
            {text}
          </option>
        ))}
      </select>
    </label>
  );
}

/** One of a few, as radio buttons that look like paper tabs. */
export function Choice<Value extends string>(props: {
  readonly legend: string;
  readonly name: string;
  readonly value: Value;
  /** Values with their names and, where one is a colour, that too. */
  readonly options: readonly (readonly [Value, ComponentChildren, (string | null)?])[];
  readonly onChoose: (value: Value) => void;
}): JSX.Element {
  return (
    <fieldset class="choice">
      <legend>{props.legend}</legend>
      <div class="wrap choice-row">
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

const JSON_FILES = '.json,application/json';
/** What the reader of recorded roads takes, packed or not. */
export const RIDE_FILES = '.gpx,.gz,.zip,application/gpx+xml';

/**
 * A field for a file that looks like the buttons beside it; keyboards and screen readers find the field itself. `children`
 * is what stands on it, `name` the data attribute by which tests find the field.
 */
export function FileButton(props: {
  readonly name: string;
  /** Gets at least one file. */
  readonly onFiles: (files: readonly File[]) => void;
  readonly accept?: string;
  readonly multiple?: boolean;
  readonly class?: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { name, onFiles, accept = JSON_FILES, multiple = false, children } = props;
  return (
    <label class={`${props.class ?? 'button'} file-button`}>
      {children}
      <input
        type="file"
        accept={accept}
        multiple={multiple}
        {...{ [name]: true }}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // The same file can be chosen again.
          currentTarget.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
    </label>
  );
}
