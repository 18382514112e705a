/** A box for a table that may be wider or longer than the page: it scrolls by itself, by finger and by key. */
import type { ComponentChildren, JSX } from 'preact';

/** The box; `label` says what is in it, and must differ from the labels around it. */
export function ScrollBox(props: {
  readonly class: string;
  readonly label: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    // What scrolls must be reached by key; not every browser does that by itself.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section class={props.class} tabIndex={0} aria-label={props.label}>
      {props.children}
    </section>
  );
}
