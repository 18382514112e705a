/** A field with its name, a hint, and the sentence that says what is wrong in it; and such a field for a part of a bike. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { words } from '../../words/words.ts';
import type { BikeDraft, EditDraft } from './draft.ts';

const say = words('bike');

interface FieldProps {
  readonly name: string;
  readonly label: string;
  readonly hint: string;
  readonly value: string;
  /** What is wrong, or undefined. */
  readonly problem: string | undefined;
  readonly inputMode: 'text' | 'numeric' | 'decimal';
  readonly onType: (value: string) => void;
}

/** The field; hint and problem are read out with it. */
export function BikeField({ name, label, hint, value, problem, inputMode, onType }: FieldProps): JSX.Element {
  const id = useId();
  return (
    <div class="own-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        name={name}
        type="text"
        inputMode={inputMode}
        autocomplete="off"
        spellcheck={false}
        value={value}
        aria-invalid={problem !== undefined}
        aria-describedby={`${id}-hint ${id}-problem`}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      <span id={`${id}-hint`} class="hint">
        {hint}
      </span>
      <span id={`${id}-problem`} class="field-problem">
        {problem ?? ''}
      </span>
    </div>
  );
}

/** A field for what is typed of a bike under a name that its words have as well. */
export function DraftField(props: {
  readonly name: 'rings' | 'range' | 'tyre' | 'crank' | 'mass' | 'hubSprocket' | 'battery';
  readonly draft: BikeDraft;
  readonly problem: string | undefined;
  readonly inputMode: FieldProps['inputMode'];
  readonly onDraft: (edit: EditDraft) => void;
}): JSX.Element {
  const { name, draft, problem, inputMode, onDraft } = props;
  return (
    <BikeField
      {...{ name, problem, inputMode }}
      label={say(name)}
      hint={say(`${name}-hint`)}
      value={draft[name]}
      onType={(value) => onDraft((now) => ({ ...now, [name]: value }))}
    />
  );
}
