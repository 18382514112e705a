/** Asks before something goes: keeping it is the easy answer, the other ones stand behind it. */
import type { ComponentChildren, JSX } from 'preact';
import { Button } from './controls.tsx';
import { Dialog } from './parts.tsx';

/** The dialog; `children` are the buttons of the other answers. */
export function Question(props: {
  readonly title: string;
  readonly text: string;
  readonly keep: string;
  readonly onKeep: () => void;
  /** Leaving without an answer; keeps where nothing else is said. */
  readonly onClose?: () => void;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { title, text, keep, onKeep, onClose = onKeep, children } = props;
  return (
    <Dialog title={title} onClose={onClose}>
      <p>{text}</p>
      <div class="buttons">
        <Button strong autofocus onClick={onKeep}>
          {keep}
        </Button>
        {children}
      </div>
    </Dialog>
  );
}
