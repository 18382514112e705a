/** What is said once before the very first ride; the tap that confirms it also begins the ride. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { Dialog, Icon } from '../../ui/parts.tsx';
import type { Send } from '../../state/store.ts';
import { cautionsWords } from '../../words/cautions.ts';

export function Cautions({ send }: { readonly send: Send }): JSX.Element {
  const cautions = cautionsWords;
  return (
    <Dialog title={cautions.title} class="cautions" onClose={() => send({ kind: 'close-dialog' })}>
      <div class="buttons">
        <Button
          strong
          data-accept
          autofocus
          // The focus passes over the title; with the button its sentence is heard.
          aria-describedby="dialog-title"
          onClick={() => send({ kind: 'accept-cautions' })}
        >
          <Icon name="go" />
          {cautions.accept}
        </Button>
      </div>
      <details>
        <summary>{cautions.more}</summary>
        <ul>
          {cautions.short.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
        <a href="#about" onClick={() => send({ kind: 'close-dialog' })}>
          {cautions.all}
        </a>
      </details>
    </Dialog>
  );
}
