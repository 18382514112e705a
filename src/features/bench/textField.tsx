/** A line of text on the bench, as its number fields are drawn. What may be typed is known to those who ask for it. */
import type { JSX } from 'preact';

/** The field, with a hint below it where there is one. */
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
