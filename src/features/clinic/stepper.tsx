/** A small whole number between two buttons. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';

/** The number; `fewer` and `more` name the buttons. */
export function Stepper(props: {
  readonly label: string;
  readonly fewer: string;
  readonly more: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly onChange: (value: number) => void;
}): JSX.Element {
  const { label, value, low, high, onChange } = props;
  return (
    <fieldset class="row stepper" aria-label={label}>
      <span class="stepper-label">{label}</span>
      <Button look="" aria-label={props.fewer} disabled={value <= low} onClick={() => onChange(value - 1)}>
        −
      </Button>
      <output>{value}</output>
      <Button look="" aria-label={props.more} disabled={value >= high} onClick={() => onChange(value + 1)}>
        +
      </Button>
    </fieldset>
  );
}
