/** What folds out below its title. It is filled while it is open: a page is painted before its small print. */
import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';

type FoldAttributes = Omit<
  JSX.IntrinsicElements['details'],
  'class' | 'title' | 'open' | 'onToggle' | 'children'
>;

/** The fold; every other attribute is that of the element. */
export function Fold(
  props: FoldAttributes & {
    readonly look: string;
    readonly title: ComponentChildren;
    readonly children: () => ComponentChildren;
  },
): JSX.Element {
  const { look, title, children, ...rest } = props;
  const [open, setOpen] = useState(false);
  return (
    <details class={look} {...rest} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{title}</summary>
      {open && children()}
    </details>
  );
}
