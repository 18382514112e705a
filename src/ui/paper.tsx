/** A paper with a title, sentences in a list, the words on the card of a way: what most pages are laid out of. They hold no state. */
import type { ComponentChildren, JSX } from 'preact';
import { useId } from 'preact/hooks';

/** The paper; `look` is another class of it, and every attribute of the element can be given (`data-…`). */
export function Paper(props: {
  readonly title: string;
  readonly look?: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { title, look, children, ...rest } = props;
  const id = useId();
  return (
    <section class={look === undefined ? 'paper' : `paper ${look}`} aria-labelledby={id} {...rest}>
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  );
}

/** Sentences below one another, each with its mark. */
export function Lines({ lines }: { readonly lines: readonly string[] }): JSX.Element {
  return (
    <ul>
      {lines.map((line, index) => (
        <li key={index}>{line}</li>
      ))}
    </ul>
  );
}

/** Where a card leads, and what waits there. */
export function WayWords({ title, hint }: { readonly title: string; readonly hint: string }): JSX.Element {
  return (
    <span class="way-words">
      <strong>{title}</strong> <span>{hint}</span>
    </span>
  );
}
